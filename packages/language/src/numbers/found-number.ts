import type { Token } from '../typed/token.ts';

/** A number among tokens. */
export type NumberToken = Extract<Token, { kind: 'number' }>;

/** A number found at some place, and the place behind it. */
export interface Found {
  readonly number: NumberToken;
  readonly end: number;
}

/** The word at a place, where there is one. */
export function wordAt(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' ? token.text : undefined;
}

/** A whole number, as it would be typed. */
export function integer(value: number): NumberToken {
  return { kind: 'number', value, decimals: 0, digits: String(value) };
}

/** A number with the decimals that write it: halves one, quarters two; thirds stop at three. */
export function fractional(value: number): NumberToken {
  const digits = String(Number(value.toFixed(3)));
  const decimals = digits.includes('.') ? digits.length - digits.indexOf('.') - 1 : 0;
  return { kind: 'number', value: Number(digits), decimals, digits };
}
