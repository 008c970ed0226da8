import { expect, test } from 'vitest';
import { pseudoText, pseudoTexts } from './pseudo.ts';

test('a text is stretched by a third, accented and fenced, and keeps its placeholders', () => {
  const text = pseudoText('Wait {{time}} now');
  expect(text).toBe('[Wáït {{time}} ñöw~~~~~~]');
  expect(text.length).toBeGreaterThan('Wait {{time}} now'.length * 1.3);
});

test('every text of a tree is, lists and all', () => {
  expect(pseudoTexts({ a: 'on', b: ['up', { c: 'no' }] })).toEqual({
    a: '[öñ~]',
    b: ['[üp~]', { c: '[ñö~]' }],
  });
});
