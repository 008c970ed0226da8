import { expect, test } from 'vitest';
import { inventedShop } from '../demo/invented-shop.ts';
import { lookUp } from './scanned.ts';
import { readShop } from './shop.ts';

const shop = inventedShop('2026-03-31');

test('the invented shop is one that could be read from a file', () => {
  const { isInvented, ...asFile } = shop;
  expect(isInvented).toBe(true);
  expect(readShop(JSON.stringify(asFile))).toMatchObject({ type: 'shop' });
});

test('terms alone are a file as well', () => {
  expect(readShop(JSON.stringify(shop.policy))).toMatchObject({ type: 'shop' });
});

test.each([
  ['{', '', 'JSON'],
  [JSON.stringify({ policy: { ...shop.policy, currency: 'euro' } }), 'policy.currency', 'ISO 4217'],
  [JSON.stringify({ policy: shop.policy, kit: ['hammer'] }), 'kit', 'bench-tester'],
  [
    JSON.stringify({
      policy: shop.policy,
      sales: [{ receipt: 'A', number: 'none', sold: '2026-01-01' }],
    }),
    'sales.0.number',
    'one of the parts',
  ],
  [
    JSON.stringify({
      policy: shop.policy,
      parts: shop.parts,
      sales: [{ receipt: 'A', number: 'ST-2140', sold: 'in spring' }],
    }),
    'sales.0.sold',
    '2026-01-31',
  ],
])('names what is wrong in a file: %#', (text, at, expected) => {
  const read = readShop(text);
  const found = read.type === 'faults' ? read.faults : [];
  expect(found.map((fault) => fault.at)).toContain(at);
  expect(found.find((fault) => fault.at === at)?.expected).toContain(expected);
});

test.each([
  ['W-10482', 'sale'],
  ['w 10482', 'sale'],
  ['st-2140', 'part'],
  ['KT1ABCDEF0123456789XYZ', 'case'],
  ['https://example.org/case#KT1ABCDEF0123456789XYZ', 'case'],
  ['4006381333931', 'unknown'],
])('looks “%s” up as a %s', (text, type) => {
  expect(lookUp(text, shop).type).toBe(type);
});
