import { describe, expect, test } from 'vitest';
import { interpolate } from '../interpolate.ts';
import {
  highestUsualCrankingVoltage,
  highStartVoltages,
  leastCrankingVoltages,
  lowestUsualCrankingVoltage,
  usualCrankingVoltage,
} from './cranking-voltage.ts';

describe('usual cranking voltage: TM 5-3895-382-24, Table 29', () => {
  test.each([
    [50, 80, 10, 27, 8, 10],
    [20, 50, -7, 10, 7, 9],
    [-10, 20, -23, -7, 6, 8],
  ])('%d to %d degF (%d to %d Cel): %d to %d V', (coldF, warmF, coldest, warmest, low, high) => {
    expect(usualCrankingVoltage.rows).toContainEqual({ coldest, warmest, low, high });
    expect(Math.round((coldF - 32) / 1.8)).toBe(coldest);
    expect(Math.round((warmF - 32) / 1.8)).toBe(warmest);
    const middle = (coldest + warmest) / 2;
    expect(interpolate(lowestUsualCrankingVoltage.rows, middle)).toBe(low);
    expect(interpolate(highestUsualCrankingVoltage.rows, middle)).toBe(high);
  });
});

describe('least voltages while cranking', () => {
  test.each([
    ['after 15 s of cranking, 21 to 27 Cel', 9.6, undefined, 'TM 10-3930-671-24'],
    ['below which something is done', 9.5, 9.7, 'TM 10-3930-671-24'],
    ['at a solenoid of the 1.4 kW class', 8, undefined, "a vehicle maker's service manual"],
  ])('%s: %d V (to %s V), %s', (of, low, high, text) => {
    const row = leastCrankingVoltages.rows.find((one) => one.of.includes(of));
    expect(row?.low).toBe(low);
    expect(row?.high).toBe(high);
    expect(row?.source.provenance).toBe('published');
    expect(row?.source.text).toContain(text);
    expect(leastCrankingVoltages.rows).toHaveLength(3);
  });
});

describe("a high battery voltage with the start signal given: a vehicle maker's service manual", () => {
  test.each([
    [12.5, 'still', 'any', 'control circuit'],
    [12.5, 'very slow', 'any', 'feed circuit'],
    [9.6, 'any', 'low', 'feed circuit'],
  ])('from %d V, engine %s, current %s: %s', (low, engine, current, blames) => {
    const found = highStartVoltages.rows.filter(
      (row) => row.engine === engine && row.current === current,
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ low, blames, source: { provenance: 'published' } });
  });
});
