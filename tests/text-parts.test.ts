/**
 * How many text messages a text takes, by the default alphabet and its extension table (3GPP TS
 * 23.038, sections 6.2.1 and 6.2.1.1) and the room that joined parts leave each other (3GPP TS
 * 23.040, section 9.2.3.24.1); both from memory.
 */
import { expect, test } from 'vitest';
import { countParts } from '../examples/text-messages.ts';

const parts = (text: string): string => {
  const { alphabet, parts: count } = countParts(text);
  return `${alphabet} ${String(count)}`;
};

test('160 characters of the 7-bit alphabet are one part, one more are two of 153', () => {
  expect(parts('a'.repeat(160))).toBe('GSM-7 1');
  expect(parts('a'.repeat(161))).toBe('GSM-7 2');
  expect(parts('ñ'.repeat(306))).toBe('GSM-7 2');
  expect(parts('à'.repeat(307))).toBe('GSM-7 3');
});

test('a character of the extension table takes two places', () => {
  expect(parts('€'.repeat(80))).toBe('GSM-7 1');
  expect(parts(`a${'€'.repeat(80)}`)).toBe('GSM-7 2');
});

test('one other character makes all of them UCS-2: 70 are one part, one more are two of 67', () => {
  expect(parts(`${'a'.repeat(69)}ł`)).toBe('UCS-2 1');
  expect(parts(`${'a'.repeat(70)}ł`)).toBe('UCS-2 2');
  expect(parts('ب'.repeat(134))).toBe('UCS-2 2');
  expect(parts('ب'.repeat(135))).toBe('UCS-2 3');
});

test('what takes two places is not cut in two between parts', () => {
  expect(parts('€'.repeat(152))).toBe('GSM-7 2');
  expect(parts('€'.repeat(153))).toBe('GSM-7 3');
  expect(parts('🔋'.repeat(66))).toBe('UCS-2 2');
  expect(parts('🔋'.repeat(67))).toBe('UCS-2 3');
});
