import type { Token } from '../typed/token.ts';
import type { Words } from '../words/words.ts';

type NumberToken = Extract<Token, { kind: 'number' }>;

/** A number found at some place, and the place behind it. */
interface Found {
  readonly number: NumberToken;
  readonly end: number;
}

/**
 * Puts numbers in words and mixed forms into figures: "twelve point four", "12 point 4",
 * "12 and a half", "12 1/2", "minus eight", "a hundred and eighty". The rest of the tokens stay.
 * The decimals are those of the number written out, so that "12 and a half" counts as 12.5.
 */
export function spellNumbers(tokens: readonly Token[], words: Words): Token[] {
  const spelled: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const found = readNumber(tokens, at, words);
    const token = tokens[at];
    if (found !== undefined) {
      spelled.push(found.number);
      at = found.end;
    } else {
      if (token !== undefined) spelled.push(token);
      at += 1;
    }
  }
  return spelled;
}

function readNumber(tokens: readonly Token[], at: number, words: Words): Found | undefined {
  const minus = wordAt(tokens, at);
  if (minus !== undefined && words.minus.includes(minus)) {
    const positive = readUnsigned(tokens, at + 1, words);
    if (positive === undefined) return undefined;
    const { number, end } = positive;
    return { number: { ...number, value: -Math.abs(number.value) }, end };
  }
  return readUnsigned(tokens, at, words);
}

function readUnsigned(tokens: readonly Token[], at: number, words: Words): Found | undefined {
  const whole = readFigure(tokens, at) ?? readCardinal(tokens, at, words);
  if (whole === undefined)
    return readFraction(tokens, at, words) ?? readPoint(zeroAt(at), tokens, words);
  const withPoint = readPoint(whole, tokens, words);
  if (withPoint !== undefined) return withPoint;
  if (whole.number.decimals > 0) return whole;
  return joinFraction(whole, tokens, words) ?? whole;
}

function wordAt(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'word' ? token.text : undefined;
}

function integer(value: number, digits: string = String(value)): NumberToken {
  return { kind: 'number', value, decimals: 0, digits };
}

const zeroAt = (end: number): Found => ({ number: integer(0), end });

function fractional(value: number): NumberToken {
  // Halves need one decimal, quarters two, eighths three; thirds stop there.
  const digits = String(Number(value.toFixed(3)));
  const decimals = digits.includes('.') ? digits.length - digits.indexOf('.') - 1 : 0;
  return { kind: 'number', value: Number(digits), decimals, digits };
}

/** A number in figures, where "1/2" is one number and so is "12 1/2". */
function readFigure(tokens: readonly Token[], at: number): Found | undefined {
  const token = tokens[at];
  if (token?.kind !== 'number') return undefined;
  const alone = readStroke(tokens, at);
  if (alone !== undefined) return { number: fractional(alone), end: at + 3 };
  const behind = token.decimals === 0 && token.value >= 0 ? readStroke(tokens, at + 1) : undefined;
  if (behind !== undefined) return { number: fractional(token.value + behind), end: at + 4 };
  return { number: token, end: at + 1 };
}

/** Only fractions that people use for a figure; "12/13" is two numbers. */
const denominators: readonly number[] = [2, 3, 4, 5, 8, 10];

function readStroke(tokens: readonly Token[], at: number): number | undefined {
  const [above, stroke, below] = tokens.slice(at, at + 3);
  if (above?.kind !== 'number' || stroke?.kind !== 'mark' || below?.kind !== 'number')
    return undefined;
  if (stroke.text !== '/' || !denominators.includes(below.value)) return undefined;
  return above.value > 0 && above.value < below.value && above.decimals === 0
    ? above.value / below.value
    : undefined;
}

/** "twelve", "ninety nine", "a hundred and eighty", "one thousand two hundred". */
function readCardinal(tokens: readonly Token[], start: number, words: Words): Found | undefined {
  let at = start;
  let total = 0;
  let group = 0;
  let last: 'none' | 'unit' | 'tens' | 'scale' = 'none';
  for (;;) {
    const isLinked = isLink(wordAt(tokens, at), last, words);
    const next = isLinked ? at + 1 : at;
    const word = wordAt(tokens, next);
    if (word === undefined) break;
    const value = ownValue(words.cardinals, word);
    const scale = ownValue(words.scales, word);
    if (value !== undefined && fits(value, last) && !(isLinked && last === 'none')) {
      group += value;
      last = value >= 20 ? 'tens' : 'unit';
    } else if (scale !== undefined && last !== 'scale') {
      const counted = last === 'none' ? 1 : group;
      if (scale >= 1000) total += counted * scale;
      group = scale >= 1000 ? 0 : counted * scale;
      last = 'scale';
    } else break;
    at = next + 1;
  }
  return at === start ? undefined : { number: integer(total + group), end: at };
}

/** "a" before a scale at the start, "and" after a scale. */
function isLink(word: string | undefined, last: string, words: Words): boolean {
  if (word === undefined) return false;
  if (last === 'none') return words.articles.includes(word);
  return last === 'scale' && words.joins.includes(word);
}

/** A unit follows tens or a scale, tens follow a scale, anything may come first. */
function fits(value: number, last: 'none' | 'unit' | 'tens' | 'scale'): boolean {
  if (last === 'none' || last === 'scale') return true;
  return last === 'tens' && value > 0 && value < 10;
}

function ownValue(values: Readonly<Record<string, number>>, word: string): number | undefined {
  return Object.hasOwn(values, word) ? values[word] : undefined;
}

/** The decimals behind a "point": digits one by one, a number in words, or figures. */
function readPoint(whole: Found, tokens: readonly Token[], words: Words): Found | undefined {
  const point = wordAt(tokens, whole.end);
  if (point === undefined || !words.point.includes(point) || whole.number.decimals > 0)
    return undefined;
  let at = whole.end + 1;
  let decimals = '';
  for (;;) {
    const token = tokens[at];
    const word = wordAt(tokens, at);
    const digit = word === undefined ? undefined : decimalDigit(word, words);
    if (token?.kind === 'number' && token.decimals === 0 && token.value >= 0 && decimals === '') {
      decimals = token.digits;
      at += 1;
      break;
    }
    if (digit === undefined) break;
    decimals += String(digit);
    at += 1;
  }
  if (decimals === '') {
    const spelled = readCardinal(tokens, at, words);
    if (spelled === undefined) return undefined;
    decimals = spelled.number.digits;
    at = spelled.end;
  }
  if (decimals.length > mostDecimals) return undefined;
  const digits = `${whole.number.digits}.${decimals}`;
  const value = (whole.number.value < 0 ? -1 : 1) * Number(digits);
  return { number: { kind: 'number', value, decimals: decimals.length, digits }, end: at };
}

function decimalDigit(word: string, words: Words): number | undefined {
  const digit =
    ownValue(words.cardinals, word) ?? (words.decimalZero.includes(word) ? 0 : undefined);
  return digit !== undefined && digit <= 9 ? digit : undefined;
}

/** More decimals than any meter shows. */
const mostDecimals = 8;

/** "half", "a quarter", "three quarters"; an article behind belongs to the unit: "half a volt". */
function readFraction(tokens: readonly Token[], start: number, words: Words): Found | undefined {
  let at = start;
  const first = wordAt(tokens, at);
  if (first === undefined) return undefined;
  let count = 1;
  if (words.articles.includes(first)) at += 1;
  else {
    const counted = ownValue(words.cardinals, first);
    if (counted !== undefined && counted > 0 && counted < 10) {
      count = counted;
      at += 1;
    }
  }
  const word = wordAt(tokens, at);
  const part = word === undefined ? undefined : ownValue(words.fractions, word);
  if (part === undefined || part * count >= 1) return undefined;
  at += 1;
  const article = wordAt(tokens, at);
  if (article !== undefined && words.articles.includes(article)) at += 1;
  return { number: fractional(part * count), end: at };
}

/** "and a half" behind a whole number; "three quarters" as a number of its own. */
function joinFraction(whole: Found, tokens: readonly Token[], words: Words): Found | undefined {
  const join = wordAt(tokens, whole.end);
  if (join === undefined) return undefined;
  const part = ownValue(words.fractions, join);
  const { value } = whole.number;
  if (part !== undefined && value * part < 1 && value > 1) {
    return { number: fractional(value * part), end: whole.end + 1 };
  }
  const from = words.joins.includes(join) ? whole.end + 1 : whole.end;
  const fraction = readFraction(tokens, from, words);
  if (
    fraction === undefined ||
    (part === undefined && from === whole.end && !words.articles.includes(join))
  ) {
    return undefined;
  }
  const sign = value < 0 ? -1 : 1;
  return { number: fractional(value + sign * fraction.number.value), end: fraction.end };
}
