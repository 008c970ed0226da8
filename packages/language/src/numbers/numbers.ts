import type { Token } from '../typed/token.ts';
import { readCardinal } from './cardinal.ts';
import { type Found, fractional, integer, wordAt } from './found-number.ts';
import { onceWith } from '../once.ts';
import { joinFraction, readFigure, readFraction, readTenths } from './fraction.ts';
import type { Words } from '../words/words.ts';
import type { NumberWords } from './number-words.ts';

/**
 * Puts numbers in words and mixed forms into figures: "twelve point four", "12 point 4",
 * "12 and a half", "12 1/2", "minus eight", "a hundred and eighty". The rest of the tokens stay.
 * The decimals are those of the number written out, so that "12 and a half" counts as 12.5.
 */
export const spellNumbers: typeof spell = onceWith(spell);

function spell(typed: readonly Token[], said: NumberWords): readonly Token[] {
  const tokens = said.takeApart(typed);
  const spelled: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const found = readNumber(tokens, at, said);
    const token = tokens[at];
    if (found !== undefined) {
      const isInWords = tokens.slice(at, found.end).every(({ kind }) => kind === 'word');
      spelled.push(isInWords ? { ...found.number, inWords: true } : found.number);
      at = found.end;
    } else {
      if (token !== undefined) spelled.push(token);
      at += 1;
    }
  }
  return spelled;
}

/** True where some tokens hold a figure, in words or in digits. */
export function hasFigure(some: readonly Token[], said: NumberWords): boolean {
  return spellNumbers(some, said).some(({ kind }) => kind === 'number');
}

function readNumber(tokens: readonly Token[], at: number, said: NumberWords): Found | undefined {
  const minus = wordAt(tokens, at);
  if (minus !== undefined && said.words.minus.includes(minus) && !endsBound(tokens, at, said)) {
    const positive = readUnsigned(tokens, at + 1, said);
    if (positive === undefined) return undefined;
    const { number, end } = positive;
    return { number: { ...number, value: -Math.abs(number.value) }, end };
  }
  return readUnsigned(tokens, at, said);
}

/** True for the end of a bound, which is no sign: "au moins", "por lo menos". */
function endsBound(tokens: readonly Token[], at: number, { words }: NumberWords): boolean {
  const end = ` ${wordAt(tokens, at - 1) ?? ''} ${wordAt(tokens, at) ?? ''}`;
  return words.boundsOnly.some((bound) => ` ${bound}`.endsWith(end));
}

function readUnsigned(tokens: readonly Token[], at: number, said: NumberWords): Found | undefined {
  const either = readEither(tokens, at, said);
  if (either !== undefined) return either;
  const tenths = readTenths(tokens, at, said);
  // With its unit only: "eight of ten" alone is a share.
  if (
    tenths !== undefined &&
    (isVolts(wordAt(tokens, tenths.end), said) || isBehindVolts(tokens, at, said))
  )
    return tenths;
  const whole =
    readFigure(tokens, at) ?? readDigits(tokens, at, said) ?? readSaid(tokens, at, said);
  if (whole === undefined) {
    const isPoint = tokens[at]?.kind === 'word' && !isWith(tokens, at, said);
    return (
      readFraction(tokens, at, said) ??
      (isPoint ? readPoint({ number: integer(0), end: at }, tokens, said) : undefined)
    );
  }
  const withPoint = readPoint(whole, tokens, said);
  if (withPoint !== undefined) return withPoint;
  if (whole.number.decimals > 0) return whole;
  return joinFraction(whole, tokens, said) ?? whole;
}

/** "Con 3 grados": a point that is with as well, where nothing stands before it. */
function isWith(tokens: readonly Token[], at: number, said: NumberWords): boolean {
  return (
    said.words.fillers.includes(wordAt(tokens, at) ?? '') && !isVolts(wordAt(tokens, at - 1), said)
  );
}

function isVolts(word: string | undefined, { words }: NumberWords): boolean {
  return word !== undefined && words.units['V']?.includes(word) === true;
}

/** True behind whole volts and an "and": `عشرة فولت وستة من عشرة`. */
function isBehindVolts(tokens: readonly Token[], at: number, said: NumberWords): boolean {
  const join = wordAt(tokens, at - 1) ?? '';
  return said.words.joins.includes(join) && isVolts(wordAt(tokens, at - 2), said);
}

/** `عشر فولت`: a word before its volts that is a whole number as well as a part of one. */
function readEither(
  tokens: readonly Token[],
  at: number,
  { words, cardinalAt }: NumberWords,
): Found | undefined {
  const word = wordAt(tokens, at) ?? '';
  const part = Object.hasOwn(words.fractions, word) ? words.fractions[word] : undefined;
  const whole = cardinalAt(tokens, at);
  if (part === undefined || whole?.length !== 1 || whole.value < 1) return undefined;
  const next = wordAt(tokens, at + 1) ?? '';
  // `عشر واحد`: one of them.
  if (words.cardinals[next] === 1) return { number: fractional(part), end: at + 2 };
  if (words.units['V']?.includes(next) !== true) return undefined;
  return { number: { ...integer(whole.value), other: fractional(part) }, end: at + 1 };
}

/** "One two point four": the digits before a point, one by one. */
function readDigits(tokens: readonly Token[], at: number, said: NumberWords): Found | undefined {
  let end = at;
  let digits = '';
  while (digits.length <= mostWhole) {
    const found = said.cardinalAt(tokens, end);
    if (found === undefined || found.value > 9 || !Number.isInteger(found.value)) break;
    digits += String(found.value);
    end += found.length;
  }
  const isPoint = said.words.point.includes(wordAt(tokens, end) ?? '');
  if (digits.length < 2 || digits.length > mostWhole || !isPoint) return undefined;
  return { number: integer(Number(digits)), end };
}

/** No voltage has more digits before its point. */
const mostWhole = 2;

/** A number in words; "one" alone may be an article or a pronoun: "this one reads 12.4". */
function readSaid(tokens: readonly Token[], at: number, said: NumberWords): Found | undefined {
  const found = readCardinal(tokens, at, said);
  const isOne = found?.number.value === 1 && found.end === at + 1;
  // At the end of a sentence it is a particle or a pronoun: "bricht auf sieben ein", "that one".
  const isParticle = isAtEnd(tokens, at) && at > 1 && !isTenth(tokens, at, said);
  if (isOne && (isBehindWhole(tokens, at, said) || isBelow(tokens, at, said))) return found;
  return isOne && (isParticle || !standsAlone(tokens, at, said)) ? undefined : found;
}

/** "Diez uno ya", "twelve one here": one tenth right behind whole volts in a word. */
function isBehindWhole(tokens: readonly Token[], at: number, said: NumberWords): boolean {
  const { fillers, besideFigures } = said.words;
  const [before, next] = [said.cardinalAt(tokens, at - 1), tokens[at + 1]];
  const isVolts = before !== undefined && before.value >= leastVolts && before.value <= mostVolts;
  const isSmall =
    next?.kind === 'word' && (fillers.includes(next.text) || besideFigures.includes(next.text));
  // A pronoun is a small word: "bricht auf elf ein".
  const one = wordAt(tokens, at) ?? '';
  const isEnd = next === undefined && ![...fillers, ...besideFigures].includes(one);
  return isVolts && (isSmall || next?.kind === 'mark' || isEnd);
}

/** "Minus one I think": no pronoun, where nothing was read of it. */
function isBelow(tokens: readonly Token[], at: number, { words }: NumberWords): boolean {
  const next = tokens[at + 1];
  return (
    words.minus.includes(wordAt(tokens, at - 1) ?? '') &&
    (next === undefined ||
      ((next.kind !== 'word' || words.fillers.includes(next.text)) &&
        !tokens.some(({ kind }) => kind === 'number')))
  );
}

/** V. Whole volts to which tenths are said in a word of their own. */
const leastVolts = 8;
const mostVolts = 30;

/** "Douze volts un", "czternaście i jedna": one tenth behind whole volts. */
function isTenth(tokens: readonly Token[], at: number, said: NumberWords): boolean {
  const { units, joins, spelling } = said.words;
  const before = wordAt(tokens, at - 1) ?? '';
  const isJoined = spelling?.joinsDecimals === true && joins.includes(before);
  if (!isJoined && units['V']?.includes(before) !== true) return false;
  return [at - 2, at - 3].some(
    (from) => tokens[from]?.kind === 'number' || said.cardinalAt(tokens, from) !== undefined,
  );
}

/** True where "one" is no article and no pronoun: a unit, a fraction or nothing follows. */
function standsAlone(tokens: readonly Token[], at: number, { words }: NumberWords): boolean {
  const next = wordAt(tokens, at + 1);
  // "10,7 pour une 12 volts": an article before a figure.
  if (next === undefined) return tokens[at + 1]?.kind !== 'number';
  return (
    words.joins.includes(next) ||
    words.point.includes(next) ||
    Object.hasOwn(words.fractions, next) ||
    words.bareUnits.includes(next) ||
    ((words.cardinals[next] ?? 0) >= leastBehindOne && !isUnitBehind(tokens, at + 2, words)) ||
    (words.below ?? []).some((said) => said === next || said.startsWith(`${next} `)) ||
    Object.values(words.units).some((said) => said.includes(next))
  );
}

/** "Eine sechsjährige": an article before a number with its unit in one word. */
function isUnitBehind(tokens: readonly Token[], at: number, { spelling }: Words): boolean {
  return spelling?.unitsBehind?.includes(wordAt(tokens, at) ?? '') === true;
}

/** "One eighty" and "eins zwei": a one before another number is none of the little words. */
const leastBehindOne = 2;

/** So many marks may stand before the point. */
const mostMarks = 3;

/** More decimals than any meter shows. */
const mostDecimals = 8;

/** More decimals are not told by a point that is with as well. */
const mostBehindWith = 2;

/** The decimals behind a "point": figures, digits one by one, or a number in words. */
function readPoint(whole: Found, tokens: readonly Token[], said: NumberWords): Found | undefined {
  // "Twelve... point four".
  let at = whole.end;
  while (at > 0 && tokens[at]?.kind === 'mark' && at < whole.end + mostMarks) at += 1;
  const point = wordAt(tokens, at);
  if (point === undefined || !said.words.point.includes(point) || whole.number.decimals > 0)
    return undefined;
  const decimals = readDecimals(tokens, at + 1, said);
  if (decimals === undefined || decimals.digits.length > mostDecimals) return undefined;
  // "0.15, con 310 A", "9 con 180 A": with so many amperes.
  const isCut = tokens
    .slice(whole.end, at)
    .some((token) => token.kind === 'mark' && token.text !== '.');
  const isWithMore = isCut || decimals.digits.length > mostBehindWith;
  if (isWithMore && said.words.fillers.includes(point)) return undefined;
  const digits = `${whole.number.digits}.${decimals.digits}`;
  const value = (whole.number.value < 0 ? -1 : 1) * Number(digits);
  const number = { kind: 'number', value, decimals: decimals.digits.length, digits } as const;
  return { number, end: decimals.end };
}

function readDecimals(
  tokens: readonly Token[],
  start: number,
  said: NumberWords,
): { readonly digits: string; readonly end: number } | undefined {
  const figure = tokens[start];
  if (figure?.kind === 'number' && (figure.decimals > 0 || figure.value < 0)) return undefined;
  if (figure?.kind === 'number' && figure.digits.length > 1)
    return { digits: figure.digits, end: start + 1 };
  let at = start;
  let digits = '';
  for (;;) {
    // "12 point 6 5", but no minutes behind it.
    const digit = digitAt(tokens, at);
    if (digit !== undefined && (digits === '' || wordAt(tokens, at + 1) === undefined)) {
      digits += digit;
      at += 1;
      continue;
    }
    const word = wordAt(tokens, at);
    const isNought = word !== undefined && said.words.decimalZero.includes(word);
    // "forty five" is two decimals; "four five" is as well, and is read digit by digit.
    const found = isNought ? { value: 0, end: at + 1 } : readWhole(tokens, at, said);
    // "Bricht auf 5 komma 5 ein".
    if (
      found === undefined ||
      (digits !== '' && endsAsParticle(tokens, at, said)) ||
      (digits !== '' && found.value > 9 && !isNoughts(digits))
    )
      break;
    digits += String(found.value);
    at = found.end;
    if (found.value > 9) break;
  }
  return digits === '' ? undefined : { digits, end: at };
}

function isAtEnd(tokens: readonly Token[], at: number): boolean {
  return at === tokens.length - 1 || tokens[at + 1]?.kind === 'mark';
}

/** True for a one at the end of a clause that stands beside figures as another word: `ein`. */
function endsAsParticle(tokens: readonly Token[], at: number, { words }: NumberWords): boolean {
  return isAtEnd(tokens, at) && words.besideFigures.includes(wordAt(tokens, at) ?? '');
}

function digitAt(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'number' && token.decimals === 0 && /^\d$/.test(token.digits)
    ? token.digits
    : undefined;
}

function isNoughts(digits: string): boolean {
  return Number(digits) === 0;
}

function readWhole(
  tokens: readonly Token[],
  at: number,
  said: NumberWords,
): { readonly value: number; readonly end: number } | undefined {
  const found = readCardinal(tokens, at, said);
  return found?.number.decimals === 0 ? { value: found.number.value, end: found.end } : undefined;
}
