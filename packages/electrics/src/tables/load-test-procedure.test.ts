import { describe, expect, test } from 'vitest';
import { limit } from '../limits/limit.ts';
import {
  generatorSetLoadTest,
  loadTestProcedure,
  surfaceChargeRemovals,
} from './load-test-procedure.ts';

type Ends = { readonly low?: number; readonly high?: number; readonly unit: string };

describe('steps of the load test', () => {
  test.each<readonly [RegExp, Ends, RegExp]>([
    [/^rest voltage to begin/, { low: 12.4, unit: 'V' }, /TM 5-3805-262-20 para 5-9/],
    [/^specific gravity/, { low: 1.225, unit: '1' }, /TM 5-3805-281-24-2/],
    [/cold-cranking current$/, { low: 50, high: 50, unit: '%' }, /a vehicle maker's/],
    [/for each A\.h/, { low: 3, high: 3, unit: '1' }, /a vehicle maker's/],
    [/^time under load/, { low: 15, high: 15, unit: 's' }, /a vehicle maker's/],
    [/^recovery/, { low: 11.2, unit: 'V' }, /a vehicle maker's/],
    [/5 min after/, { low: 50, unit: '%' }, /a second vehicle maker's/],
    [/2 h after charging/, { low: 12.5, unit: 'V' }, /a vehicle maker's/],
  ])('%s: %j, published', (of, ends, text) => {
    const found = loadTestProcedure.rows.filter((row) => of.test(row.of));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ ...ends, source: { provenance: 'published' } });
    expect(found[0]!.source.text).toMatch(text);
  });

  test('each is a row of the table and there is no other', () => {
    expect(loadTestProcedure.rows).toHaveLength(8);
  });

  test('the limits of a rested and of a recharged flooded battery are those of the steps', () => {
    const context = { technology: 'flooded', temperature: 20 } as const;
    const [begin] = loadTestProcedure.rows;
    const again = loadTestProcedure.rows.at(-1);
    for (const [name, row] of [
      ['battery.rest.full', begin],
      ['battery.recharged.full', again],
    ] as const) {
      const result = limit(name, context);
      expect(result.type === 'bound' && result.bound.low).toBe(row?.low);
    }
  });
});

test.each([
  ['load', 550, 'A'],
  ['time under load', 15, 's'],
  ['voltage at its end', 9.6, 'V'],
])("TM 9-6115-730-24 WP 0050, a generator set's AGM battery, %s: %d %s", (of, low, unit) => {
  expect(generatorSetLoadTest.rows).toContainEqual(
    expect.objectContaining({ of, low, unit, source: expect.anything() as unknown }),
  );
});

describe('taking the surface charge off', () => {
  test.each([
    ["a vehicle maker's service manual", 'bench', '300 A', 15, 0],
    ["a vehicle maker's service manual", 'bench', 'half of the cold-cranking current', 15, 15],
    ['TM 5-3805-262-20 para 5-9, battery voltage test', 'vehicle', 'lamps', 15, 180],
    ["a vehicle maker's service manual", 'vehicle', 'lamps', 15, 300],
    ["parts supplier's battery warranty guidance", 'vehicle', 'main beam', 60, 0],
    ["parts supplier's battery warranty guidance", 'vehicle', 'none', 0, 6 * 3600],
  ])('%s, %s: %s for %d s, then %d s of rest', (text, place, load, loadS, restS) => {
    const source = { provenance: 'published', text };
    expect(surfaceChargeRemovals).toContainEqual({ place, load, loadS, restS, source });
  });
});
