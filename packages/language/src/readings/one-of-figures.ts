import { type Words, figureWordsOf } from '../words/words.ts';
import type { Token } from '../typed/token.ts';
import { isAlike } from '../numbers/unit.ts';
import { type Stretch, asides, numbersOfThings, unitInHand } from './figures-aside.ts';
import { type LineContext, type SaidFigure, findFigures, isCount } from './line-figures.ts';
import { namedChecks } from './line-pieces.ts';
import { isVehiclesAge } from './vehicle-age.ts';
import { wordsOfEach } from './words-of-each.ts';
import {
  endsWithPhrase,
  hasPhrase,
  hasStem,
  hasWord,
  phraseAt,
  withoutPhrases,
} from './word-run.ts';

/** A text is gone through as often as this. */
const mostRounds = 4;

/** With more figures than this nothing is told apart. */
const mostFigures = 6;

/**
 * Leaves out the figures that are not what was read: the time of day, a price, the number of tries;
 * the one that is taken back ("12.3, no wait 12.5"), the one that was ("12.4 yesterday, now 11.9")
 * and the one that became another ("dropped from 12.5 to 9.8"). Where nothing tells, all are kept.
 */
export function withoutOthers(tokens: readonly Token[], context: LineContext): readonly Token[] {
  let kept = withoutVehiclesAge(tokens, context);
  for (let round = 0; round < mostRounds; round += 1) {
    const figures = findFigures(kept, context);
    if (figures.length < 2 || figures.length > mostFigures) return kept;
    if (isEither(figures, kept, context) || isUnsteady(figures, kept, context)) return kept;
    const found = othersOf(figures, kept, context);
    if (found.length === 0) return kept;
    kept = without(kept, found);
  }
  return kept;
}

/** Leaves out how many times it was tried, or how many people wait, beside what was measured. */
export function withoutThings(tokens: readonly Token[], context: LineContext): readonly Token[] {
  const things = numbersOfThings(findFigures(tokens, context), tokens, context);
  return things.length === 0 ? tokens : without(tokens, things);
}

/** Where no years are asked for, those of the vehicle are told of nothing that has a reading. */
function withoutVehiclesAge(tokens: readonly Token[], context: LineContext): readonly Token[] {
  if (unitInHand(context) === 'a') return tokens;
  const ages = findFigures(tokens, context).filter((one) => isVehiclesAge(one, tokens, context));
  return without(tokens, ages);
}

/** True where the words name another reading than the one in hand. */
function namesOther(tokens: readonly Token[], context: LineContext): boolean {
  const words = tokens.filter(({ kind }) => kind !== 'number');
  return namedChecks(words, context).some((check) => check !== context.inHand);
}

/** What puts the figure behind it in the place of the one before. */
function takingPlace(words: Words): readonly string[] {
  const { instead, settles } = figureWordsOf(words);
  return [...instead, ...settles];
}

/** "12.1 or was it 12.7": which of the two it is nobody knows. */
function isEither(
  [one, other, more]: readonly SaidFigure[],
  tokens: readonly Token[],
  { lexicon: { words } }: LineContext,
): boolean {
  if (one === undefined || other === undefined || more !== undefined) return false;
  const between = tokens.slice(one.end, other.start);
  const { round } = figureWordsOf(words);
  const instead = takingPlace(words);
  return (
    isOfOneKind(one, other) &&
    one.value !== other.value &&
    hasPhrase(between, words.alternatives ?? []) &&
    !hasPhrase(between, [...instead, ...round])
  );
}

/** "Bouncing from 12.9 to 15.6": the meter shows both; or nobody knows which of them it is. */
function isUnsteady(
  [one, other, more]: readonly SaidFigure[],
  tokens: readonly Token[],
  { lexicon: { words } }: LineContext,
): boolean {
  if (one === undefined || other === undefined || more !== undefined) return false;
  const { unsteady, undecided } = figureWordsOf(words);
  return isOfOneKind(one, other) && hasPhrase(tokens, [...unsteady, ...undecided]);
}

/**
 * The tokens without the figures of something else, where two are left that were measured one after
 * the other, and no word says which holds: "measured twice, 12.7 and then 11.8", "first 12.5, then
 * 11.1, which one".
 */
export function leftOpen(
  tokens: readonly Token[],
  context: LineContext,
): readonly Token[] | undefined {
  const { again, present } = figureWordsOf(context.lexicon.words);
  const instead = takingPlace(context.lexicon.words);
  if (!hasPhrase(tokens, again) || hasPhrase(tokens, present)) return undefined;
  const figures = findFigures(tokens, context);
  if (figures.length < 2 || figures.length > mostFigures) return undefined;
  const others = asides(figures, tokens, context);
  const [one, other, more] = figures.filter((figure) => !others.includes(figure));
  if (one === undefined || other === undefined || more !== undefined) return undefined;
  const isOpen =
    isOfOneKind(one, other) &&
    one.value !== other.value &&
    !hasPhrase(tokens.slice(one.end, other.start), instead);
  return isOpen ? without(tokens, others) : undefined;
}

function othersOf(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const ways = [
    concluded,
    asides,
    limits,
    takenBack,
    rounded,
    ofVehicle,
    nominal,
    recovered,
    before,
    became,
    repeated,
  ];
  for (const way of ways) {
    const found = way(figures, tokens, context);
    if (found.length > 0) return found;
  }
  return [];
}

/** A comma is left in their place, so that what stood before and behind is not one. */
function without(tokens: readonly Token[], stretches: readonly Stretch[]): Token[] {
  return tokens.flatMap((token, at): Token[] => {
    if (stretches.some(({ start }) => start === at)) return [{ kind: 'mark', text: ',' }];
    return stretches.some(({ start, end }) => at >= start && at < end) ? [] : [token];
  });
}

/** True where two figures may be of one reading. */
function isOfOneKind(one: SaidFigure, other: SaidFigure): boolean {
  if (one.unit !== undefined && other.unit !== undefined) return isAlike(one.unit, other.unit);
  const [amperes, bare] = one.unit === 'A' ? [one, other] : [other, one];
  // "It pulls 240 A and the battery falls to 9.6": no current falls so far.
  if (amperes.unit !== 'A' || bare.value === 0) return true;
  return bare.value * farBelow >= amperes.value;
}

/** So many times smaller a figure beside amperes is none of them. */
const farBelow = 10;

/** "12.3, no wait 12.5": the first of two, where what stands between takes it back. */
function takenBack(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const { unsteady } = figureWordsOf(context.lexicon.words);
  return figures.flatMap((figure, index): Stretch[] => {
    const next = figures[index + 1];
    if (next === undefined || !isOfOneKind(figure, next)) return [];
    const between = tokens.slice(figure.end, next.start);
    // "12.6, no wait, 11.2, it keeps changing" takes nothing back.
    const behind = tokens.slice(next.end);
    // "Five years, a moment ago 12.1 at rest" tells two.
    const isOfOther = figure.unit !== next.unit && namesOther(behind, context);
    return takesBack(between, context) && !isOfOther && !hasPhrase(behind, unsteady)
      ? [{ start: figure.start, end: next.start }]
      : [];
  });
}

function takesBack(between: readonly Token[], context: LineContext): boolean {
  const { words } = context.lexicon;
  const instead = takingPlace(words);
  // "Fourteen point something, call it 14.4".
  const isRough = (at: number): number => phraseAt(between, at, words.vague);
  const small = [words.fillers, words.besideFigures, words.clauseBreaks, words.courtesies ?? []];
  // "No" may deny the figure behind it, where nothing parts them.
  const isNo = (at: number): boolean => {
    const [word, next] = between.slice(at, at + 2);
    if (word?.kind !== 'word' || !words.talk.no.includes(word.text)) return false;
    const isTwice = next?.kind === 'word' && next.text === word.text;
    return next?.kind === 'mark' || isTwice || phraseAt(between, at + 1, instead) > 0;
  };
  const spoken = between.filter(({ kind }) => kind !== 'mark');
  const isAtEnd =
    endsWithPhrase(spoken, spoken.length, instead) &&
    !hasPhrase(spoken, figureWordsOf(words).expected);
  let isSaid = false;
  let reasons = 0;
  let at = 0;
  while (at < between.length) {
    const token = between[at];
    const length = phraseAt(between, at, instead);
    const isSmall = token?.kind === 'word' && small.some((list) => list.includes(token.text));
    const isAgain = isSaid && token?.kind === 'word' && words.talk.no.includes(token.text);
    const rough = length > 0 ? 0 : isRough(at);
    if (length > 0 || isNo(at)) isSaid = true;
    else if (token?.kind !== 'mark' && !isSmall && !isAgain && rough === 0) {
      // "24.8, no sorry, wrong truck, 12.3", "4 years, her husband corrects: 5".
      if (!(isSaid || isAtEnd) || token?.kind !== 'word') return false;
      reasons += 1;
    }
    at += Math.max(length, rough, 1);
  }
  return isSaid && (reasons === 0 || (reasons <= mostReasons && !tellsMoment(between, context)));
}

/** So many words may say why a figure is taken back. */
const mostReasons = 3;

/** True where words name another reading, or what is done while it is taken. */
function tellsMoment(tokens: readonly Token[], context: LineContext): boolean {
  const { moments, cranking, changes } = figureWordsOf(context.lexicon.words);
  const isOfMeter = ['V', 'A'].includes(unitInHand(context) ?? '');
  const isMoment = hasPhrase(tokens, [...moments, ...changes]) || hasStem(tokens, cranking);
  return (isOfMeter && isMoment) || namesOther(tokens, context);
}

/**
 * "0.3 here, 0.5 there, so 0.5", "14 and 32 hundredths, 14.32": what is said again at the end, after
 * a word for what follows, or in figures behind words, is what is meant.
 */
function concluded(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const before = figures.slice(0, -1);
  const last = figures.at(-1);
  const [first] = before;
  if (last === undefined || first === undefined || context.inHand === undefined) return [];
  const unit = unitInHand(context) ?? '';
  // "That is, a year", of which nothing but the one is left.
  if (isCount(last) && before.some(({ decimals }) => decimals > 0)) return [];
  if (!isAlike(last.unit ?? unit, unit) || namesOther(tokens, context)) return [];
  const { alternatives } = context.lexicon.words;
  const { concludes, unsteady } = figureWordsOf(context.lexicon.words);
  const isSaidBefore = before.some((one) => inVolts(one) === inVolts(last));
  const isAgain =
    before.length > 1 && isSaidBefore && !hasPhrase(tokens, [...unsteady, ...(alternatives ?? [])]);
  const isWritten =
    last.decimals > 0 &&
    last.inWords !== true &&
    before.every(({ inWords }) => inWords === true) &&
    digitsOf(before) === digitsOf([last]);
  // Of two losses the worse is what follows, and nothing else.
  const form = context.inHand.check.form;
  const isLoss = form.kind === 'reading' && form.range === 'drop';
  const isSo = endsWithPhrase(tokens, last.start, concludes) && (!isLoss || isSaidBefore);
  const isConcluded = isAgain || isWritten || isSo;
  return isConcluded ? before : [];
}

function inVolts({ value, unit }: SaidFigure): number {
  return unit === 'mV' ? value / 1000 : value;
}

/** What the digits say one behind the other: the same of 14 and 400 as of 14.4. */
function digitsOf(figures: readonly SaidFigure[]): number {
  return Number(`0.${figures.map(({ digits }) => digits.replace('.', '')).join('')}`);
}

/** "10.3, want more than 9.6": a bound beside a figure is what it ought to keep to. */
function limits(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const { boundsOnly, nearly } = context.lexicon.words;
  const { roughly, until } = figureWordsOf(context.lexicon.words);
  const bounded = figures.filter(({ start }) =>
    [start, start - 1].some((end) => {
      if (end < start && !isHedged(tokens[end], context)) return false;
      const bound = boundsOnly.find((one) => endsWithPhrase(tokens, end, [one]));
      if (bound === undefined || [...roughly, ...until].includes(bound)) return false;
      return !endsWithPhrase(tokens, end - bound.split(' ').length, nearly);
    }),
  );
  if (bounded.length === 0 || bounded.length !== figures.length - 1) return [];
  return tellsMoment(tokens, context) ? [] : bounded;
}

function isHedged(token: Token | undefined, { lexicon: { words } }: LineContext): boolean {
  return token?.kind === 'word' && words.fillers.includes(token.text);
}

/**
 * "Just under 9, say 8.9", "twelve volts flat, 12.1", "just above zero, 2 degrees": the rougher of
 * two for one thing.
 */
function rounded(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const { words } = context.lexicon;
  const { roughly, round, less } = figureWordsOf(words);
  const instead = takingPlace(words);
  const hedges = [...roughly, ...round, ...words.nearly, ...words.boundsOnly];
  const isRough = ({ start, end }: SaidFigure): boolean =>
    endsWithPhrase(tokens, start, hedges) ||
    phraseAt(tokens, end, [...words.vague, ...words.point, ...roughly, ...round, ...less]) > 0;
  // Of volts nought is a reading of its own.
  const isWhole = ['Cel', 'A'].includes(unitInHand(context) ?? '');
  const isRounder = (one: SaidFigure, other: SaidFigure): boolean =>
    (isWhole && one.value === 0) || isRoundOf(one, other);
  return figures.flatMap((figure, index): Stretch[] => {
    const next = figures[index + 1];
    if (next === undefined || !isOfOneKind(figure, next)) return [];
    const isFirst = figure.decimals < next.decimals || isRounder(figure, next);
    const [rough, exact] = isFirst ? [figure, next] : [next, figure];
    const between = tokens.slice(figure.end, next.start);
    const isApart =
      between.some(({ kind }) => kind === 'mark') ||
      hasPhrase(between, [...instead, ...words.vague]);
    const isNear = Math.abs(rough.value - exact.value) < 10 ** -rough.decimals;
    const isRougher = (rough.decimals !== exact.decimals && isNear) || isRounder(rough, exact);
    if (!isRougher || !isApart || !isRough(rough)) return [];
    const told = withoutPhrases(between, words.vague);
    return tellsMoment(told, context) ? [] : [{ start: rough.start, end: rough.end }];
  });
}

/** "Eight hundred and something, 840": hundreds or tens of which the rest is told behind. */
function isRoundOf(rough: SaidFigure, exact: SaidFigure): boolean {
  if (rough.decimals > 0 || exact.decimals > 0) return false;
  const step = [100, 10].find((one) => rough.value % one === 0) ?? 0;
  return rough.value >= step && exact.value > rough.value && exact.value < rough.value + step;
}

/** V. What a system, a battery and a vehicle are called by. */
const nominals: readonly number[] = [6, 12, 24];

/** So many tokens may stand between the volts and the Ah of a battery. */
const mostToHours = 2;

/** "The label says 12 V 60 Ah but I measure 10.6": what the battery or the vehicle is called by. */
function nominal(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  if (unitInHand(context) !== 'V' || !figures.some(({ decimals }) => decimals > 0)) return [];
  const { words } = context.lexicon;
  const { label, vehicle, battery, ratedAt } = figureWordsOf(words);
  const said = wordsOfEach(figures, tokens, { telling: [...label, ...vehicle], words });
  return figures.filter((figure, index) => {
    const { value, unit = 'V', end } = figure;
    const next = figures[index + 1];
    const isByHours = next?.unit === 'A.h' && next.start - end <= mostToHours;
    const names = [...label, ...vehicle];
    const isBehind = index > 0 && endsWithPhrase(tokens, figure.start, [...ratedAt, ...battery]);
    const isNamed =
      isBehind || hasPhrase(said[index] ?? [], names) || phraseAt(tokens, end, battery) > 0;
    return unit === 'V' && nominals.includes(value) && (isByHours || isNamed);
  });
}

/** "The car is 14, the battery only 2": the years of the vehicle, where the battery's are asked. */
function ofVehicle(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  if (unitInHand(context) !== 'a') return [];
  const { words } = context.lexicon;
  const { vehicle } = figureWordsOf(words);
  const said = wordsOfEach(figures, tokens, { telling: vehicle, words });
  const found = figures.filter((_, index) => hasPhrase(said[index] ?? [], vehicle));
  return found.length < figures.length ? found : [];
}

/** "12.4 yesterday, now 11.9", "10.4, it used to sink to 8.5": those that were, where one is. */
function before(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const { words } = context.lexicon;
  const { past, present, felt, allOff, ...more } = figureWordsOf(words);
  // What it ought to be, and what it feels like, is not what was read.
  const isDone = context.inHand?.check.does.includes('starter') === true;
  const expected = [...more.expected, ...felt, ...(isDone ? allOff : [])];
  const [first] = figures;
  if (first === undefined || !figures.every((figure) => isOfOneKind(first, figure))) return [];
  const telling = [...past, ...words.earlier, ...present, ...expected];
  const said = wordsOfEach(figures, tokens, { telling, words });
  // "0.15 instead of the 0.9 before": it is said of the figure behind it.
  const isRightBehind = ({ start }: SaidFigure): boolean =>
    [start, start - 1, start - 2].some(
      (end) =>
        end > 0 && endsWithPhrase(tokens, end, expected) && isWords(tokens.slice(end, start)),
    );
  const isExpected = figures.some(isRightBehind)
    ? figures.map(isRightBehind)
    : said.map((own) => hasPhrase(own, expected));
  if (isExpected.includes(true) && isExpected.filter((one) => !one).length === 1)
    return figures.filter((_, index) => isExpected[index] === true);
  const asked = unitInHand(context) ?? '';
  const isNext = figures.map(({ start }) => endsWithPhrase(tokens, start, present));
  const isNow = isNext.includes(true) ? isNext : said.map((own) => hasPhrase(own, present));
  const was = said.map((own) => hasPhrase(own, past) || hasPhrase(own, words.earlier));
  if (!isNow.includes(true)) return former(figures, tokens, { said, was, context });
  if (isNow.filter((one) => one).length !== 1) return [];
  const isPlain = figures.every((_, index) => isNow[index] === true || was[index] === true);
  const isAsked = figures.every(({ unit }) => isAlike(unit ?? asked, asked));
  const isOfOne = context.inHand !== undefined && isAsked && !tellsMoment(tokens, context);
  return isPlain || isOfOne ? figures.filter((_, index) => isNow[index] !== true) : [];
}

function isWords(tokens: readonly Token[]): boolean {
  return tokens.every(({ kind }) => kind === 'word');
}

/** Those that were, where nothing says what is: of another reading, or of a fall, none is. */
function former(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  by: {
    readonly said: readonly (readonly Token[])[];
    readonly was: readonly boolean[];
    readonly context: LineContext;
  },
): readonly Stretch[] {
  const { said, was, context } = by;
  const { inHand, lexicon } = context;
  const { past, changes } = figureWordsOf(lexicon.words);
  const isRightBefore = ({ start }: SaidFigure): boolean =>
    endsWithPhrase(tokens, start, [...past, ...lexicon.words.earlier]);
  const isPast = figures.some(isRightBefore) ? figures.map(isRightBefore) : was;
  const found = figures.filter((_, index) => isPast[index] === true);
  const words = tokens.filter(({ kind }) => kind !== 'number');
  const isOfOther = [words, ...said].some((own) =>
    namedChecks(own, context).some((check) => check !== inHand),
  );
  // "Drops to 9.8, was 12.6": of a battery at rest that tells none.
  const isFall =
    hasPhrase(tokens.slice(0, figures[0]?.start), changes) &&
    (inHand === undefined || inHand.check.does.length === 0 || !figures.some(isRightBefore));
  return found.length === figures.length - 1 && !isOfOther && !isFall ? found : [];
}

/** V. So much less is told as a fall and not as a range. */
const leastFall = 1;

/** V. A battery comes back to as much at least once the starter is let go. */
const leastRecovered = 11.5;

/** "Dips to 9.6, back to 12.3 when I let go": while the starter turns it is the lower. */
function recovered(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const { inHand, nominal: system, lexicon } = context;
  const form = inHand?.check.form;
  const isTurning = form?.kind === 'reading' && form.range === 'battery-voltage';
  if (!isTurning || inHand?.check.does.includes('starter') !== true) return [];
  const [low, high, more] = figures;
  if (low === undefined || high === undefined || more !== undefined) return [];
  if (!isOfOneKind(low, high) || high.value - low.value < leastFall) return [];
  if (high.value < (leastRecovered * system) / 12) return [];
  const { recovers } = figureWordsOf(lexicon.words);
  const behind = [...tokens.slice(low.end, high.start), ...tokens.slice(high.end)];
  return hasWord(behind, recovers) ? [{ start: low.end, end: tokens.length }] : [];
}

/** "Dropped from 12.5 to 9.8": what it was before; of two checks each has its own. */
function became(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const [was, is, more] = figures;
  if (was === undefined || is === undefined || more !== undefined || !isOfOneKind(was, is))
    return [];
  const { changes, from, onto } = figureWordsOf(context.lexicon.words);
  const lead = tokens.slice(0, was.start);
  const between = tokens.slice(was.end, is.start);
  const isFrom = endsWithPhrase(tokens, was.start, from);
  // "De 12,6 a 9,5": no range, where the starter pulls it down.
  const isFall =
    isFrom &&
    between.length === 1 &&
    hasPhrase(between, onto) &&
    was.value - is.value >= leastFall &&
    context.inHand?.check.does.includes('starter') === true;
  const isOnto = isFrom && hasPhrase(between, onto);
  // "11.4 -> 10.1".
  const isArrow =
    between.length > 0 &&
    between.every(({ kind }) => kind === 'mark') &&
    between.some((token) => token.kind === 'mark' && arrows.includes(token.text));
  // "9.9, up from 6", "down to 40 mV from 600".
  const isBack = !isFrom && endsWithPhrase(tokens, is.start, from);
  const isChange =
    isFall ||
    isArrow ||
    (isBack && hasPhrase(lead, changes)) ||
    (isFrom && hasPhrase(lead, changes)) ||
    (isOnto && phraseAt(tokens, is.end, changes) > 0) ||
    hasPhrase(between, changes);
  if (!isChange) return [];
  const { inHand } = context;
  // "Positive drop 0.2, ground drop 1.1": a loss of each.
  const form = inHand?.check.form;
  const isLoss = form?.kind === 'reading' && form.range === 'drop';
  if (isLoss && namedChecks(between, context).some((one) => one !== inHand)) return [];
  if (isBack) return inHand === undefined || namesOther(tokens, context) ? [] : [is];
  const words = [...lead, ...between, ...tokens.slice(is.end)].filter(
    ({ kind }) => kind !== 'number',
  );
  const named = namedChecks(words, context);
  const former = { start: isFrom ? was.start - 1 : was.start, end: was.end };
  if (inHand === undefined) return named.length === 1 ? [former] : [];
  if (named.length === 0 || named.includes(inHand)) return [former];
  // What it was before anything was done is what is asked; the other has a name of its own.
  const isUndone = inHand.check.does.length === 0;
  const isDone = named.every(({ check }) => check.does.length > 0);
  const isApart = between.some(({ kind }) => kind === 'mark');
  return isUndone && isDone && !isApart && between.length > 0
    ? [{ start: was.end, end: was.end + 1 }]
    : [];
}

const arrows: readonly string[] = ['→', '>', '➔', '⇒'];

/** The same figure said twice is one, where the words name no other reading. */
function repeated(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): readonly Stretch[] {
  const [first, ...more] = figures;
  if (first === undefined || context.inHand === undefined) return [];
  const isAgain = more.every(
    (figure) => figure.value === first.value && isOfOneKind(first, figure),
  );
  const words = tokens.filter(({ kind }) => kind !== 'number');
  if (!isAgain || namedChecks(words, context).some((check) => check !== context.inHand)) return [];
  // "Eight winters, so 8 years": the one with its unit.
  const kept = figures.find(({ unit }) => unit !== undefined) ?? first;
  return figures.filter((figure) => figure !== kept);
}
