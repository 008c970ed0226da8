import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJsonText } from './json-text.ts';

test('reads what JSON holds, and knows the line of each value', () => {
  const read = readJsonText('{\n "a": [1,\n  {"b": "x\\n\\u0041"}],\n "__proto__": null\n}\n');
  if (read.type === 'broken') throw new Error(read.reason);
  expect(read.data).toEqual(JSON.parse('{"a": [1, {"b": "x\\nA"}], "__proto__": null}'));
  expect(read.lineOf(['a', 1, 'b'])).toBe(3);
  expect(read.lineOf(['a', 1, 'missing'])).toBe(3);
  expect(read.lineOf(['__proto__'])).toBe(4);
  expect(read.lineOf([])).toBe(1);
});

test('reads whatever JSON is written, laid out or not', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.constantFrom(0, 2), (value, indent) => {
      const text = JSON.stringify(value, null, indent);
      expect(readJsonText(text)).toMatchObject({ type: 'json', data: JSON.parse(text) as unknown });
    }),
  );
});

describe('what is no JSON is told by its line:', () => {
  test.each([
    ['', 1, 'expected a value, found the end of the file'],
    ['{\n"a": 1,\n}', 3, 'expected a name in quotation marks, found "}"'],
    ['{\n"a" 1}', 2, 'expected a colon, found "1}"'],
    ['[1\n2]', 2, 'expected a comma or ], found "2]"'],
    ['{"a": 1\n"b": 2}', 2, 'expected a comma or }'],
    ['{"a": 1,\n"a": 2}', 2, '"a" is there twice'],
    ['[01]', 1, 'expected a comma or ]'],
    ['["a\nb"]', 1, 'is not written as a text is'],
    ['["\\x"]', 1, 'is not written as a text is'],
    ['["open', 1, 'expected a value'],
    ['1\n\nx', 3, 'expected the end, found "x"'],
    ['NaN', 1, 'expected a value'],
    ['['.repeat(100_000), 1, 'nested too deeply'],
  ])('%j', (text, line, reason) => {
    const read = readJsonText(text);
    expect(read).toMatchObject({ type: 'broken', line });
    expect(read).toHaveProperty('reason', expect.stringContaining(reason));
  });

  test('every text that is refused is refused by JSON.parse, and the other way round', () => {
    const pieces = fc.constantFrom(...Array.from('[]{},:"\\ \n01.-eEtrufalsn'));
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (parts) => {
        const text = parts.join('');
        expect(readJsonText(text).type === 'json').toBe(isJson(text));
      }),
      { numRuns: 2000 },
    );
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
