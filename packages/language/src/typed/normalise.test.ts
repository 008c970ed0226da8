import fc from 'fast-check';
import { expect, test } from 'vitest';
import { collapseRepeats, normalise } from './normalise.ts';

test.each([
  { typed: 'Décharge', one: 'decharge' },
  { typed: 'DON’T', one: 'dont' },
  { typed: "can't", one: 'cant' },
  { typed: '12½', one: '12 1/2 ' },
  { typed: '−8 ℃', one: '-8 °c' },
  { typed: '8 ºC', one: '8 °c' },
  { typed: '１２.４', one: '12.4' },
  { typed: '١٢٫٤', one: '12.4' },
  { typed: '१२', one: '12' },
  { typed: '12²', one: '12 ' },
  { typed: 'mΩ', one: 'mω' },
])('$typed is spelled "$one"', ({ typed, one }) => {
  expect(normalise(typed)).toBe(one);
});

test.each([
  { word: 'noooo', one: 'no' },
  { word: 'dimmed', one: 'dimed' },
  { word: '1100', one: '1100' },
])('$word and its doubled letters are $one', ({ word, one }) => {
  expect(collapseRepeats(word)).toBe(one);
});

test('spelling once is enough', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const once = normalise(text);
      expect(normalise(once).trim()).toBe(once.trim());
    }),
  );
});
