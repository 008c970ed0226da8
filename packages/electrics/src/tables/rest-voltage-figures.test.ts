import { describe, expect, test } from 'vitest';
import type { Provenance } from '../source.ts';
import { stateOfCharge } from '../battery/state-of-charge.ts';
import { restVoltageFigures } from './rest-voltage-figures.ts';

type Ends = { readonly low?: number; readonly high?: number; readonly unit: string };

describe('single rest voltages, each with the text that prints it', () => {
  test.each<readonly [RegExp, Ends, Provenance, RegExp]>([
    [/^AGM, full/, { low: 12.8, high: 13, unit: 'V' }, 'published', /TM 9-6115-730-24/],
    [/^AGM, 95 to 100 %/, { low: 12.9, high: 12.9, unit: 'V' }, 'published', /TB 43-PS-665/],
    [/^AGM, empty/, { low: 11.4, high: 11.4, unit: 'V' }, 'published', /TB 43-PS-665/],
    [/fit again 8 h/, { low: 12.65, unit: 'V' }, 'published', /TB 9-6140-252-13/],
    [/fit again: measured/, { low: 90, unit: '%' }, 'published', /TB 9-6140-252-13/],
    [/before it is fitted$/, { low: 12.65, unit: 'V' }, 'published', /TB 9-6140-252-13/],
    [/to the charger/, { high: 1, unit: 'A' }, 'published', /TB 9-6140-252-13/],
    [/in a string/, { low: 12.85, unit: 'V' }, 'published', /TB 9-6140-252-13/],
    [/deep discharge/, { low: 10.5, unit: 'V' }, 'published', /TM 9-6140-200-14/],
    [/^enhanced/, { low: 12.7, high: 12.8, unit: 'V' }, 'common practice', /1\.280 to 1\.300/],
  ])('%s: %j, %s', (of, ends, provenance, text) => {
    const found = restVoltageFigures.rows.filter((row) => of.test(row.of));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject(ends);
    expect(found[0]!.source.provenance).toBe(provenance);
    expect(found[0]!.source.text).toMatch(text);
  });

  test('each is a row of the table and there is no other', () => {
    expect(restVoltageFigures.rows).toHaveLength(10);
  });

  test('a full AGM battery is taken for one over the whole window of TM 9-6115-730-24', () => {
    expect(stateOfCharge(12.8, 'agm').high).toBe(100);
    expect(stateOfCharge(13, 'agm').best).toBe(100);
  });
});
