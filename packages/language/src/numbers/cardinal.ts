import type { Token } from '../typed/token.ts';
import { type Found, fractional, integer, wordAt } from './found-number.ts';
import type { NumberWords } from './number-words.ts';

/** What the last word of a number was: it decides what may follow. */
type Last = 'none' | 'unit' | 'tens' | 'hundreds' | 'scale';

/** A number on its way: what has been counted up to the last scale, and since. */
interface Count {
  readonly total: number;
  readonly group: number;
  readonly last: Last;
  /** The last value taken, which says what may be added to it. */
  readonly value: number;
}

/**
 * The number in words that begins at a place: "twelve", "ninety nine", "a hundred and eighty",
 * "soixante et onze", "خمسة وعشرون".
 */
export function readCardinal(
  tokens: readonly Token[],
  start: number,
  said: NumberWords,
): Found | undefined {
  let at = start;
  let count: Count = { total: 0, group: 0, last: 'none', value: 0 };
  for (;;) {
    const step = readStep(tokens, { at, count }, said);
    if (step === undefined) break;
    ({ at, count } = step);
  }
  if (at === start) return undefined;
  const value = count.total + count.group;
  const number = Number.isInteger(value) ? integer(value) : fractional(value);
  const isScale = at === start + 1 && Object.hasOwn(said.words.scales, wordAt(tokens, start) ?? '');
  return { number: isScale ? { ...number, isScale } : number, end: at };
}

function readStep(
  tokens: readonly Token[],
  { at, count }: { readonly at: number; readonly count: Count },
  said: NumberWords,
): { readonly at: number; readonly count: Count } | undefined {
  const isLinked = isLink(wordAt(tokens, at), count.last, said);
  const next = isLinked ? at + 1 : at;
  const found = said.cardinalAt(tokens, next);
  if (found !== undefined && !(isLinked && count.last === 'none')) {
    const added = add(count, found.value, { isLinked, said });
    if (added !== undefined) return { at: next + found.length, count: added };
  }
  const word = wordAt(tokens, next);
  const { scales } = said.words;
  const scale = word !== undefined && Object.hasOwn(scales, word) ? scales[word] : undefined;
  if (scale === undefined || count.last === 'scale') return undefined;
  if (scale < 1000 && count.last === 'hundreds') return undefined;
  const counted = count.group === 0 ? 1 : count.group;
  const scaled =
    scale >= 1000
      ? { total: count.total + counted * scale, group: 0, last: 'scale' as const }
      : { total: count.total, group: counted * scale, last: 'hundreds' as const };
  return { at: next + 1, count: { ...scaled, value: scale } };
}

function add(
  count: Count,
  value: number,
  { isLinked, said }: { readonly isLinked: boolean; readonly said: NumberWords },
): Count | undefined {
  const { spelling = {} } = said.words;
  const isUnit = value > 0 && value < 10;
  const fits = {
    none: true,
    scale: value < 1000,
    hundreds: value < 100,
    // Where a unit stands before its ten, "zwanzig fünfundzwanzig" is two numbers.
    tens:
      (isUnit && (isLinked || spelling.unitsFirst !== true)) ||
      (spelling.vigesimal === true &&
        (count.value === 60 || count.value === 80) &&
        value > 0 &&
        value < 20),
    unit:
      spelling.unitsFirst === true &&
      isLinked &&
      count.value > 0 &&
      count.value < 10 &&
      count.group % 100 === count.value &&
      value >= 20 &&
      value % 10 === 0 &&
      value < 100,
  }[count.last];
  if (!fits) return undefined;
  return {
    total: count.total,
    group: count.group + value,
    value,
    last: count.last === 'unit' ? 'scale' : kindOf(value),
  };
}

function kindOf(value: number): Last {
  if (value >= 100) return 'hundreds';
  return value >= 20 && value % 10 === 0 ? 'tens' : 'unit';
}

/** "a" before a scale at the start, "and" within a number. */
function isLink(word: string | undefined, last: Last, { words }: NumberWords): boolean {
  if (word === undefined) return false;
  return last === 'none' ? words.articles.includes(word) : words.joins.includes(word);
}
