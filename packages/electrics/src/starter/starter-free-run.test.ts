import { describe, expect, test } from 'vitest';
import type { Provenance } from '../source.ts';
import { freeRunVerdict } from './starter-free-run.ts';
import {
  freeRunVerdicts,
  starterFreeRun,
  type FreeRunBand,
  type FreeRunSpan,
  type FreeRunVerdict,
} from '../tables/starter-free-run.ts';

type Row = readonly [
  starter: string,
  volts: readonly [number, number],
  amperes: FreeRunSpan,
  speed: FreeRunSpan | undefined,
  provenance: Provenance,
  text: string,
];

const manual = "a vehicle maker's service manual";

describe('free-running starters', () => {
  test.each<Row>([
    ['12 V, machine', [11.5, 11.5], { high: 130 }, { low: 7000 }, 'published', 'TM 5-3895-382-24'],
    ['12 V, car, 1.4 kW', [11.5, 11.5], { high: 90 }, undefined, 'published', manual],
    ['12 V, car, V6', [11, 11], { high: 90 }, undefined, 'published', manual],
    // The least speed is misprinted as 360 and left out.
    [
      '24 V, engine',
      [20, 20],
      { low: 75, high: 90 },
      { high: 5400 },
      'published',
      'TM 9-4940-568-34',
    ],
    [
      '24 V, crane',
      [20, 20],
      { low: 70, high: 110 },
      { low: 5500, high: 9000 },
      'published',
      'TM 5-3810-303-24',
    ],
    ['24 V, truck', [23, 23], { high: 90 }, { low: 7000 }, 'published', 'TM 9-2920-242-35'],
    ['24 V, machine', [23, 23], { high: 85 }, { low: 7000 }, 'published', 'TM 5-3895-382-24'],
    // Common practice, no source.
    [
      '12 V, car, permanent magnets and reduction gear',
      [11, 12],
      { low: 50, high: 95 },
      { low: 2500, high: 3500 },
      'common practice',
      'free running',
    ],
    [
      '12 V, car, wound field and direct drive',
      [10, 11],
      { low: 50, high: 90 },
      { low: 6000, high: 12_000 },
      'common practice',
      'free running',
    ],
  ])('%s: at %j V %j A, %j /min (%s, %s)', (starter, volts, amperes, speed, provenance, text) => {
    const row = starterFreeRun.rows.find((each) => each.starter === starter)!;
    expect(row.voltageV).toEqual({ low: volts[0], high: volts[1] });
    expect(row.currentA).toEqual(amperes);
    expect(row.speedPerMin).toEqual(speed);
    expect(row.source.provenance).toBe(provenance);
    expect(row.source.text).toContain(text);
  });

  test('there are nine of them', () => {
    expect(starterFreeRun.rows).toHaveLength(9);
  });
});

describe('what current and speed say (TM 10-3930-671-24 and TM 5-3810-303-24, published)', () => {
  test.each<readonly [FreeRunBand, FreeRunBand, FreeRunVerdict, string]>([
    ['normal', 'normal', 'good', 'good'],
    ['high', 'low', 'friction-or-short', 'dragging pole shoe'],
    ['high', 'none', 'ground-or-seized', 'seized bearings'],
    ['none', 'none', 'open-circuit', 'brushes that do not touch'],
    ['low', 'low', 'high-internal-resistance', 'dirty commutator'],
    ['high', 'high', 'shorted-field', 'shorted field'],
  ])('current %s, speed %s: %s', (current, speed, verdict, part) => {
    const result = freeRunVerdict(current, speed);
    expect(result).toMatchObject({ type: 'verdict', verdict, source: { provenance: 'published' } });
    expect(result.type === 'verdict' && result.meaning).toContain(part);
  });

  test.each<readonly [FreeRunBand, FreeRunBand]>([
    ['normal', 'low'],
    ['normal', 'high'],
    ['low', 'normal'],
    ['none', 'normal'],
    ['high', 'normal'],
    ['low', 'none'],
  ])('current %s, speed %s is in no text', (current, speed) => {
    expect(freeRunVerdict(current, speed)).toEqual({ type: 'not-in-table' });
  });

  test('no pair is listed twice', () => {
    const pairs = freeRunVerdicts.rows.map(({ current, speed }) => `${current} ${speed}`);
    expect(new Set(pairs).size).toBe(pairs.length);
  });
});
