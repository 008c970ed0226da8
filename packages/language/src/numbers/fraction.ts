import type { Token } from '../typed/token.ts';
import { readCardinal } from './cardinal.ts';
import { type Found, fractional, wordAt } from './found-number.ts';
import type { NumberWords } from './number-words.ts';
import { figureWordsOf } from '../words/words.ts';

/** A number in figures, where "1/2" is one number and so is "12 1/2". */
export function readFigure(tokens: readonly Token[], at: number): Found | undefined {
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
  if (above?.kind !== 'number' || below?.kind !== 'number') return undefined;
  const isStroke = stroke?.kind === 'mark' && stroke.text === '/';
  if (!isStroke || !denominators.includes(below.value)) return undefined;
  return above.value > 0 && above.value < below.value && above.decimals === 0
    ? above.value / below.value
    : undefined;
}

/** "half", "a quarter", "three quarters"; an article behind belongs to the unit: "half a volt". */
export function readFraction(
  tokens: readonly Token[],
  start: number,
  said: NumberWords,
): Found | undefined {
  const { articles } = said.words;
  const first = wordAt(tokens, start);
  if (first === undefined) return undefined;
  let at = start;
  let count = 1;
  if (articles.includes(first)) at += 1;
  else {
    const counted = readCount(tokens, start, said);
    if (counted !== undefined) {
      count = counted.number.value;
      at = counted.end;
    }
  }
  const part = partAt(tokens, at, said);
  // "Una décima" is one word for it.
  if (part === undefined && count < 1) return { number: fractional(count), end: at };
  if (part === undefined || part * count >= 1) return undefined;
  at += 1;
  const article = wordAt(tokens, at);
  if (article !== undefined && articles.includes(article)) {
    // "La moitié d'un volt": one of what is halved.
    const isOne = said.words.cardinals[wordAt(tokens, at + 1) ?? ''] === 1;
    at += isOne ? 2 : 1;
  }
  return { number: fractional(part * count), end: at };
}

/** "Four out of ten", "twenty of a hundred", where a language says tenths and hundredths so. */
export function readTenths(
  tokens: readonly Token[],
  start: number,
  said: NumberWords,
): Found | undefined {
  const { outOf } = said.words.spelling ?? {};
  const count = readFigure(tokens, start) ?? readCardinal(tokens, start, said);
  if (outOf === undefined || count === undefined || wordAt(tokens, count.end) !== outOf)
    return undefined;
  const ten = readFigure(tokens, count.end + 1) ?? readCardinal(tokens, count.end + 1, said);
  const { value } = count.number;
  const parts = ten?.number.value ?? 0;
  const isParts =
    [10, 100].includes(parts) && value > 0 && value < parts && Number.isInteger(value);
  return isParts ? { number: fractional(value / parts), end: ten?.end ?? start } : undefined;
}

/** So many parts: "sixty five hundredths". */
function readCount(tokens: readonly Token[], at: number, said: NumberWords): Found | undefined {
  const found = readCardinal(tokens, at, said);
  return found !== undefined && found.number.value > 0 && found.number.value < 100
    ? found
    : undefined;
}

function partAt(tokens: readonly Token[], at: number, { words }: NumberWords): number | undefined {
  const word = wordAt(tokens, at);
  return word !== undefined && Object.hasOwn(words.fractions, word)
    ? words.fractions[word]
    : undefined;
}

/** "and a half" behind a whole number; "three quarters" as a number of its own. */
export function joinFraction(
  whole: Found,
  tokens: readonly Token[],
  said: NumberWords,
): Found | undefined {
  const { words } = said;
  const join = wordAt(tokens, whole.end);
  if (join === undefined) return undefined;
  const { value } = whole.number;
  const part = partAt(tokens, whole.end, said);
  // "three quarters", "one half", but never "twelve half", which is twelve and a half.
  if (part !== undefined && value > 0 && value < 100 && value * part < 1)
    return { number: fractional(value * part), end: whole.end + 1 };
  const isJoined = words.joins.includes(join);
  const isLess = figureWordsOf(words).less.includes(join);
  if (!isJoined && !isLess && part === undefined && !words.articles.includes(join))
    return undefined;
  const isThe = isLess && words.fillers.includes(wordAt(tokens, whole.end + 1) ?? '');
  const from = whole.end + (isJoined || isLess ? 1 : 0) + (isThe ? 1 : 0);
  const fraction =
    (isJoined ? readTenths(tokens, from, said) : undefined) ?? readFraction(tokens, from, said);
  if (fraction === undefined) return undefined;
  const sign = value < 0 === isLess ? 1 : -1;
  return { number: fractional(value + sign * fraction.number.value), end: fraction.end };
}
