import { expect, test } from 'vitest';
import { fuseColour } from './fuse-colour.ts';

test.each([
  // A trade page of blade-fuse colours; 20 A a trade page on the 15 A fuse.
  [1, 'black', 'published'],
  [2, 'grey', 'published'],
  [3, 'violet', 'published'],
  [10, 'red', 'published'],
  [15, 'blue', 'published'],
  [20, 'yellow', 'published'],
  // ISO 8820-3 and SAE J1284, from memory.
  [5, 'tan', 'from memory'],
  [7.5, 'brown', 'from memory'],
  [25, 'clear', 'from memory'],
  [30, 'green', 'from memory'],
  [35, 'blue-green', 'from memory'],
  [40, 'orange', 'from memory'],
])('a blade fuse of %d A is %s (%s)', (ratingA, colour, provenance) => {
  const row = fuseColour(ratingA)!;
  expect(row.colour).toBe(colour);
  expect(row.source.provenance).toBe(provenance);
});

test('one trade page has tan for 1 A, so that the number decides', () => {
  expect(fuseColour(1)?.rivalColour).toBe('tan');
});

test('a rating that the table lacks has no colour', () => {
  expect(fuseColour(12)).toBeUndefined();
});
