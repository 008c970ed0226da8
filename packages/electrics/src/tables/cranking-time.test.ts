import { expect, test } from 'vitest';
import { crankingTimes } from './cranking-time.ts';

test.each([
  ['longest at a stretch', undefined, 30, 's', 'published'],
  ['cooling after it', 2, undefined, 'min', 'published'],
  ['longest at a stretch, cars', 10, 15, 's', 'published'],
  ['one try', undefined, 10, 's', 'common practice'],
  ['between tries', 60, undefined, 's', 'common practice'],
  ['after three tries', 2, undefined, 'min', 'common practice'],
])(
  'cranking time, TM 10-3930-671-24, TM 9-4940-568-34 and service manuals, %s: %s to %s %s (%s)',
  (of, low, high, unit, provenance) => {
    const found = crankingTimes.rows.filter((row) => row.of === of);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ unit, source: { provenance } });
    expect(found[0]?.low).toBe(low);
    expect(found[0]?.high).toBe(high);
  },
);
