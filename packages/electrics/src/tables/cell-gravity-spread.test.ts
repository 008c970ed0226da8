import { expect, test } from 'vitest';
import { cellGravitySpread } from './cell-gravity-spread.ts';

test.each([
  ['TM 55-2210-224-12', 0.02],
  ['TM 9-6140-200-14 (1998)', 0.025],
  ['TM 5-3805-281-24-2; TM 5-3740-214-14', 0.05],
])('cells of a full battery may differ by so much in specific gravity, %s: %d', (text, high) => {
  const [row, ...others] = cellGravitySpread.rows.filter(({ source }) => source.text === text);
  expect(others).toEqual([]);
  expect(row).toMatchObject({ high, unit: '1', source: { provenance: 'published' } });
});
