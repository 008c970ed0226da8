/**
 * Figures of something else beside the one that was read: the time of day, a price, the number of
 * tries, what the meter is set to, the size of an engine.
 */
import { isAlike } from '../numbers/unit.ts';
import type { Token } from '../typed/token.ts';
import { type Words, figureWordsOf } from '../words/words.ts';
import { type LineContext, type SaidFigure, isCount, mostCounted } from './line-figures.ts';
import { namedChecks } from './line-pieces.ts';
import { endsWithPhrase, hasPhrase, hasStem, phraseAt } from './word-run.ts';

/** Tokens that are left out, the end not included. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Figures of something else, where another is left that is not. */
export function asides(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const hasDecimals = figures.some(({ decimals, inWords }) => decimals > 0 && inWords !== true);
  // "25.1 over the two": no count, where the battery's age is asked.
  const isMeasured = unitInHand(context) !== 'a' && figures.some(({ decimals }) => decimals > 0);
  const found = figures.filter(
    (figure) =>
      isAside(figure, tokens, context) ||
      (hasDecimals && isPartSaid(figure, tokens)) ||
      (isMeasured && (isCount(figure) || isNought(figure, context))),
  );
  return found.length < figures.length ? found : [];
}

/** Numbers of things beside what was measured: "7.9 V on the 2nd go", "12.6, 2 kids in the car". */
export function numbersOfThings(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  if (unitInHand(context) === 'a' || !figures.some(({ decimals }) => decimals > 0)) return [];
  return figures.filter((figure) => isNumberOfThings(figure, tokens, context));
}

/**
 * A small whole number that is counted by the word behind it; hours, where there was a wait
 * ("charged 8 hours and rested 3"); what ends a text in which nothing was asked. While it is loaded
 * a battery may fall as low, and so it may have where it was another figure before.
 */
function isNumberOfThings(
  { value, unit, decimals, inWords, start, end }: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): boolean {
  if (unit !== undefined || inWords === true || decimals > 0 || value > mostCounted) return false;
  const { inHand, lexicon } = context;
  const [before, behind] = [tokens[start - 1], tokens[end]];
  if (behind?.kind === 'word' && behind.isWrittenOn === true)
    return countSigns.includes(behind.text);
  const { past, present, changes } = figureWordsOf(lexicon.words);
  if (hasPhrase(tokens, [...past, ...present]) || endsWithPhrase(tokens, start, changes))
    return false;
  const clause = clauseAround(tokens, { start, end });
  const words = clause.filter(({ kind }) => kind !== 'number');
  if (namedChecks(words, context).length > 0) return false;
  const isThing = (token: Token | undefined): boolean =>
    token?.kind === 'word' && !isSmall(token.text, lexicon.words);
  if (inHand?.check.waitMinutes !== undefined) return isThing(before) || isThing(behind);
  if (hasPhrase(clause, changes)) return false;
  if (inHand === undefined)
    return isThing(behind) || (behind === undefined && clause.some(isThing));
  const { form, does } = inHand.check;
  const isAtRest = form.kind === 'reading' && form.range === 'battery-voltage' && does.length === 0;
  return isAtRest && isThing(behind);
}

/** Written on to how many times, and to the how manieth: `3x`, `2nd`, `2e`. */
const countSigns: readonly string[] = ['x', 'st', 'nd', 'rd', 'th', 'e'];

/** True for a word that is said beside a figure and counts nothing. */
function isSmall(word: string, words: Words): boolean {
  const {
    fillers,
    articles,
    joins,
    nearly,
    besideFigures,
    clauseBreaks,
    alternatives = [],
  } = words;
  return [fillers, articles, joins, nearly, besideFigures, clauseBreaks, alternatives].some(
    (some) => some.includes(word),
  );
}

/** "I misread the zero", where no loss is asked. */
function isNought({ value, inWords, unit }: SaidFigure, { inHand }: LineContext): boolean {
  const form = inHand?.check.form;
  const isVoltage = form?.kind === 'reading' && form.range === 'battery-voltage';
  return isVoltage && value === 0 && inWords === true && unit === undefined;
}

function isAside(figure: SaidFigure, tokens: readonly Token[], context: LineContext): boolean {
  const { start, end, unit, decimals, value } = figure;
  const { asideBefore, asideBehind, engine } = figureWordsOf(context.lexicon.words);
  if (unit !== undefined && !isOfReading(unit, context)) return true;
  // "Peaked near 600": a word may stand between.
  const isBefore = (phrases: readonly string[]): boolean =>
    endsWithPhrase(tokens, start, phrases) ||
    (isHedge(tokens[start - 1], context) && endsWithPhrase(tokens, start - 1, phrases));
  // "Mal 90, mal 260" tells two.
  // "2nd attempt", "im 2. Versuch", "10-Euro-Messgerät": a sign or an ending may stand between.
  const isBehind = (phrases: readonly string[]): boolean =>
    (phraseAt(tokens, end, phrases) > 0 && !isAlikeWord(tokens[start - 1], tokens[end])) ||
    (isOrdinalSign(tokens[end]) && phraseAt(tokens, end + 1, phrases) > 0);
  const isMarked = [tokens[start - 1], tokens[end]].some(
    (token) => token?.kind === 'mark' && currencies.includes(token.text),
  );
  if (isMarked || isYear(figure) || isClock(figure, tokens)) return true;
  if (isMeterRange(figure, context) && !isJoined(tokens[start - 1], context)) return true;
  if (unit === undefined && isPin(figure, context)) return true;
  if (isStanding(figure, tokens, context)) return true;
  if (unit !== undefined && isLoad(unit, context)) return true;
  if (decimals === 0 && (isBefore(asideBefore) || isBehind(asideBehind))) return true;
  const isEngine = value >= smallestEngine && value <= largestEngine && decimals <= 1;
  return unit === undefined && isEngine && (isBefore(engine) || isBehind(engine));
}

function isHedge(token: Token | undefined, { lexicon: { words } }: LineContext): boolean {
  return token?.kind === 'word' && [...words.fillers, ...words.nearly].includes(token.text);
}

/** `اتناشر وعشرين`: twelve and twenty is no range of the meter. */
function isJoined(before: Token | undefined, { lexicon: { words } }: LineContext): boolean {
  return before?.kind === 'word' && words.joins.includes(before.text);
}

/** The dot, the dash or the letters that make an ordinal of a figure: `2nd`, `2.`, `2e`. */
function isOrdinalSign(token: Token | undefined): boolean {
  return token !== undefined && token.kind !== 'number' && ordinalSigns.includes(token.text);
}

const ordinalSigns: readonly string[] = ['.', '-', 'st', 'nd', 'rd', 'th', 'e'];

function isAlikeWord(one: Token | undefined, other: Token | undefined): boolean {
  return one?.kind === 'word' && other?.kind === 'word' && one.text === other.text;
}

const currencies = '£$€¥';

/** Litres. */
const smallestEngine = 0.6;
const largestEngine = 8.5;

/** True for a unit in which some reading of the flow is given. */
function isOfReading(unit: string, { lexicon }: LineContext): boolean {
  return [...lexicon.checks.values()].some(
    ({ check: { form } }) => form.kind === 'reading' && isAlike(unit, form.unit),
  );
}

function isYear({ value, decimals, unit, digits }: SaidFigure): boolean {
  const isBare = unit === undefined || unit === 'a';
  return isBare && decimals === 0 && digits.length === 4 && value >= 1950 && value < 2100;
}

/** "Half dead", "halb acht": no figure beside one. */
function isPartSaid(
  { value, inWords, unit, start }: SaidFigure,
  tokens: readonly Token[],
): boolean {
  const isPart = (one: number): boolean => one > 0 && one < 1;
  const before = tokens[start - 1];
  if (inWords !== true || unit !== undefined) return false;
  return isPart(value) || (before?.kind === 'number' && isPart(before.value));
}

/** What a load is set to is no reading beside its own: "9.9 V with 300 A". */
function isLoad(unit: string, { inHand }: LineContext): boolean {
  const { form, does } = inHand?.check ?? {};
  return form?.kind === 'reading' && does?.includes('load') === true && !isAlike(unit, form.unit);
}

/** "8:15", but not "pin 30: 12.4". */
function isClock({ start, end }: SaidFigure, tokens: readonly Token[]): boolean {
  const isOf = (hour: number): boolean => {
    const [hours, colon, minutes] = tokens.slice(Math.max(hour, 0), hour + 3);
    const isColon = colon?.kind === 'mark' && colon.text === ':';
    return isColon && isWholeNumber(hours) && isWholeNumber(minutes);
  };
  return isOf(end - 1) || isOf(start - 2);
}

function isWholeNumber(token: Token | undefined): boolean {
  return token?.kind === 'number' && token.decimals === 0;
}

/** True for how long it stood: days and weeks, or more where that is said, where no age is asked. */
function isStanding(
  { unit = '', start, end }: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): boolean {
  if (!isAlike(unit, 'a')) return false;
  const { inHand, lexicon } = context;
  if (inHand?.check.form.kind === 'reading' && isAlike(unit, inHand.check.form.unit)) return false;
  const clause = clauseAround(tokens, { start, end });
  if (hasStem(clause, figureWordsOf(lexicon.words).standing)) return true;
  const words = tokens.filter(({ kind }) => kind !== 'number');
  return (
    standing.includes(unit) &&
    !namedChecks(words, context).some(
      ({ check: { form } }) => form.kind === 'reading' && isAlike(unit, form.unit),
    )
  );
}

/** What stands around a figure between two marks. */
function clauseAround(tokens: readonly Token[], { start, end }: Stretch): readonly Token[] {
  const isMark = ({ kind }: Token): boolean => kind === 'mark';
  const from = tokens.slice(0, start).findLastIndex(isMark) + 1;
  const length = tokens.slice(end).findIndex(isMark);
  return tokens.slice(from, length < 0 ? tokens.length : end + length);
}

const standing: readonly string[] = ['d', 'wk'];

/** Terminals of a relay and a starter. Source: DIN 72552, from memory. */
const pins: readonly string[] = ['15', '30', '50', '85', '86', '87'];

function isPin({ digits }: SaidFigure, { inHand }: LineContext): boolean {
  const form = inHand?.check.form;
  if (form?.kind !== 'reading' || form.range !== 'signal-voltage') return false;
  return pins.includes(digits);
}

/** V. Ranges of a meter that no reading of a vehicle reaches. */
const meterRanges: readonly number[] = [200, 600, 1000, 2000];

/** V. One that only a system of 24 V may show. */
const rangeOf12 = 20;

/** "It says 12.58, on the 20 range": what the meter is set to, beside a voltage. */
function isMeterRange({ value, unit = 'V' }: SaidFigure, context: LineContext): boolean {
  if (unitInHand(context) !== 'V' || unit !== 'V') return false;
  return meterRanges.includes(value) || (value === rangeOf12 && context.nominal === 12);
}

/** The unit of the reading in hand. */
export function unitInHand({ inHand }: LineContext): string | undefined {
  const form = inHand?.check.form;
  return form?.kind === 'reading' ? form.unit : undefined;
}
