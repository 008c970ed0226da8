import { describe, expect, test } from 'vitest';
import { stateOfCharge } from '../battery/state-of-charge.ts';
import { restVoltageRises } from './rest-voltage-temperature.ts';

describe('rest voltage by temperature: three texts that differ in sign', () => {
  const [makers, cell, article] = restVoltageRises;

  test("a battery maker's questions and answers take 0.192 V off at 0 degF, 4.3 mV/K", () => {
    expect(makers?.low).toBe(makers?.high);
    // 0.024 V for every 10 degF, from 80 to 0 degF.
    expect(((makers?.low ?? 0) * (80 / 1.8)) / 1000).toBeCloseTo(-0.192, 9);
    expect(makers?.source.provenance).toBe('published');
  });

  test('it is six times the correction of the hydrometer', () => {
    expect((6 * 0.004) / (10 / 1.8)).toBeCloseTo(-(makers?.low ?? 0) / 1000, 9);
  });

  test('the cell itself rises by 0.20 to 0.23 mV/K, six of them by 1.2 to 1.4 (from memory)', () => {
    expect(cell?.low).toBeCloseTo(6 * 0.2, 9);
    expect(cell?.high).toBeCloseTo(6 * 0.23, 9);
    expect(cell?.source.provenance).toBe('from memory');
  });

  test('an article of the battery trade has 2.5 mV/K, of battery or cell', () => {
    expect(article).toMatchObject({ low: 2.5, high: 2.5, source: { provenance: 'published' } });
    expect(restVoltageRises).toHaveLength(3);
  });

  test('so no reading is corrected: the best figure is that of a warm battery', () => {
    expect(stateOfCharge(12.45, 'flooded', -18).best).toBe(stateOfCharge(12.45, 'flooded').best);
  });

  test.each([
    [0, 65],
    [40, 65],
    // 12.45 V less 0.06 V is 59 % in the workshop trade table.
    [-0.1, 59],
    [40.1, 59],
  ])('at %d Cel 12.45 V is %d %% at least', (temperatureC, low) => {
    expect(stateOfCharge(12.45, 'flooded', temperatureC).low).toBeCloseTo(low, 9);
  });

  test('outside 0 to 40 Cel it reaches up by 0.06 V as well, and no farther', () => {
    // 12.51 V is 82.5 % by the maker and 86.25 % by TM 5-3805-262-20.
    expect(stateOfCharge(12.45, 'flooded', -18).high).toBeCloseTo(88.75, 9);
    expect(stateOfCharge(12.45, 'flooded').high).toBeCloseTo(85, 9);
  });
});
