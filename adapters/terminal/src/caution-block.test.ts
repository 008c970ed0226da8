import { expect, test } from 'vitest';
import { cautionBlock } from './caution-block.ts';
import { plain, styled } from './emphasis.ts';

const gas = { word: 'WARNING', text: 'Battery gas explodes from a spark. No flame, no smoking.' };

test('a caution stands in a fence under its signal word', () => {
  expect(cautionBlock([gas], 40, plain)).toEqual([
    '!!! WARNING !!!!!!!!!!!!!!!!!!!!!!!!!!!!',
    '!  Battery gas explodes from a spark. No',
    '!  flame, no smoking.',
    '!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!!',
  ]);
});

test('several cautions each keep their signal word', () => {
  const rails = cautionBlock([gas, { ...gas, word: 'NOTICE' }], 40, plain).filter((line) =>
    line.startsWith('!!!'),
  );
  expect(rails.map((rail) => rail.replaceAll('!', '').trim())).toEqual(['WARNING', 'NOTICE', '']);
});

test('emphasis changes nothing that is read', () => {
  const shown = cautionBlock([gas], 40, styled).join('\n');
  expect(shown).not.toBe(cautionBlock([gas], 40, plain).join('\n'));
  // eslint-disable-next-line no-control-regex -- the control sequences are what is taken out
  expect(shown.replace(/\u001b\[[\d;]*m/g, '')).toBe(cautionBlock([gas], 40, plain).join('\n'));
});

test('without a caution there is no fence', () => {
  expect(cautionBlock([], 40, plain)).toEqual([]);
});
