/**
 * What figures tell by the way, beside any answer or in a first message: the degrees outside, and
 * of the battery its age and its voltage at rest, where it is named ("batterie is 7 jahre alt",
 * "battery's at 12.3"). Common practice, no source.
 */
import { judgeFigure } from '@keyturn/core';
import { isAlike } from '../numbers/unit.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import { readTokens } from '../typed/read-tokens.ts';
import type { Token } from '../typed/token.ts';
import { hearTokens } from '../typed/heard.ts';
import { likeliest } from '../understand/choices.ts';
import { cutClauses } from '../understand/talk.ts';
import type { CheckPhrases } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import { type SaidReading, judgeReading } from './doubtful.ts';
import { type LineContext, type SaidFigure, findFigures } from './line-figures.ts';
import { namedChecks } from './line-pieces.ts';
import { unitOf } from './line-placing.ts';
import { isVehiclesAge } from './vehicle-age.ts';
import { endsWithPhrase, hasPhrase, hasStem, phraseAt } from './word-run.ts';

/** What is told by the way, and the tokens that tell the rest. */
export interface ToldAside {
  readonly told: readonly SaidReading[];
  readonly rest: readonly Token[];
}

/** A figure told by the way, with the check that it answers and the tokens that say it. */
interface Aside {
  readonly reading: SaidReading;
  readonly start: number;
  readonly end: number;
}

/** Takes out what figures tell by the way; what was asked is left to be read as an answer. */
export function readAside(typed: readonly Token[], context: LineContext): ToldAside {
  const tokens = spellNumbers(typed, context.lexicon.numbers);
  // "Minus one is loose" speaks of a pole.
  const isPronoun = ({ value, unit }: SaidFigure): boolean =>
    value === -1 && unit === undefined && typed.every(({ kind }) => kind !== 'number');
  const figures = [...findFigures(tokens, context), ...onesIn(tokens, context)].filter(
    (figure) =>
      (context.inHand === undefined || !isPronoun(figure)) &&
      !isVehiclesAge(figure, tokens, context),
  );
  const plainly = figures.map(
    (figure) => ofAir(figure, tokens, context) ?? ofBattery(figure, tokens, context),
  );
  // A line of several voltages is read as one; "one click, 12.6" is none.
  const isVolts = ({ unit, decimals, value }: SaidFigure, at: number): boolean =>
    (unit === undefined ? decimals > 0 || value >= leastTurning : isAlike(unit, 'V')) &&
    plainly[at] === undefined;
  const isLone = figures.filter(isVolts).length === 1;
  const asides = figures.flatMap((figure, at): readonly Aside[] => {
    const aside =
      plainly[at] ??
      (isLone ? (atRest(figure, tokens, context) ?? ofMoment(figure, tokens, context)) : undefined);
    return aside === undefined ? [] : [aside];
  });
  const isTwice = ({ reading }: Aside): boolean =>
    asides.filter((one) => one.reading.check === reading.check).length > 1;
  const plain = asides.filter((aside) => !isTwice(aside));
  if (plain.length === 0) return { told: [], rest: typed };
  const rest = tokens.flatMap((token, at): readonly Token[] => {
    if (plain.some(({ start }) => start === at)) return [comma];
    return plain.some(({ start, end }) => at > start && at < end) ? [] : [token];
  });
  return { told: plain.map(({ reading }) => reading), rest };
}

const comma: Token = { kind: 'mark', text: ',' };

/** "A year": a span of time of which there is one. */
function onesIn(tokens: readonly Token[], { lexicon }: LineContext): readonly SaidFigure[] {
  const { articles } = lexicon.words;
  const { oneBefore, oneBehind } = figureWordsOf(lexicon.words);
  return tokens.flatMap((_, at): readonly SaidFigure[] => {
    const unit = lexicon.readUnit(tokens, at);
    if (unit?.code !== 'a' || tokens[at - 1]?.kind === 'number') return [];
    const end = at + unit.length;
    const isOne =
      endsWithPhrase(tokens, at, [...articles, ...oneBefore]) ||
      phraseAt(tokens, end, oneBehind) > 0;
    return isOne ? [{ value: 1, decimals: 0, digits: '1', unit: 'a', start: at, end }] : [];
  });
}

/** °C. No air is warmer than this, and no frost has more degrees. */
const mostDegrees = 45;

/**
 * "Minus 6", "3 degrees": a whole number of degrees, or one below nought where no voltage is asked,
 * is the temperature.
 */
function ofAir(
  figure: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): Aside | undefined {
  const { inHand, lexicon, unitHere } = context;
  const { value, decimals, unit, start, end, isDegrees } = figure;
  const check = readingIn(lexicon.checks, (one) => unitOf(one) === 'Cel');
  if (check === undefined || inHand === check) return undefined;
  const isSaid = isDegrees === true || (unit !== undefined && isAlike(unit, 'Cel'));
  if (unit !== undefined && !isSaid) return undefined;
  if (Math.abs(value) > mostDegrees) return undefined;
  if (value >= 0) return isSaid ? mild(figure, tokens, { check, context }) : undefined;
  if (decimals > 0) return undefined;
  const isVolts = inHand !== undefined && unitOf(inHand) === 'V';
  const { asideBefore } = figureWordsOf(lexicon.words);
  // "Floor -2".
  if (endsWithPhrase(tokens, start, asideBefore)) return undefined;
  // "12.1 and it's minus 5 here": no volts, where those of a battery are told.
  const isToldElse = (): boolean =>
    findFigures(tokens, context).some((one) => one.start !== start && one.decimals > 0);
  const isOfMeter = isVolts && !(isOfBattery(inHand) && isToldElse());
  if (!isSaid && (isOfMeter || isBetweenPoles(start, tokens, context))) return undefined;
  const said = withClause(withTime({ start, end }, tokens, context), tokens, context);
  return asideOf(check, { ...figure, unit: unit ?? unitHere('Cel') }, { ...said, context });
}

/** What is left of a clause about the air is as sure as this of nothing. */
const saysLittle = 0.5;

/** The temperature with all of its clause, where the rest of that says nothing: "and it's minus 9 out here". */
function withClause(
  said: Pick<Aside, 'start' | 'end'>,
  tokens: readonly Token[],
  context: LineContext,
): Pick<Aside, 'start' | 'end'> {
  const { lexicon, inHand } = context;
  const { joins } = lexicon.words;
  const isAnd = (token: Token): boolean => token.kind === 'word' && joins.includes(token.text);
  const clause = clauseOf(said, tokens, context);
  const from = Math.max(clause.from, tokens.slice(0, said.start).findLastIndex(isAnd));
  const { to } = clause;
  const left = [...tokens.slice(from, said.start), ...tokens.slice(said.end, to)];
  const whole = { start: from, end: to };
  const [term, more] = lexicon.reader.fromTokens(left);
  if (left.length === 0 || (from === 0 && to === tokens.length) || more !== undefined) return said;
  if (term === undefined) return whole;
  const heard = hearTokens(left, lexicon);
  const isFact = !lexicon.isHeard || lexicon.subject()(heard).share >= saysLittle;
  const isAnswer = inHand !== undefined && likeliest(heard, inHand).share >= saysLittle;
  return isFact || isAnswer ? said : whole;
}

/** "Nippy at 4 degrees": what is told of the air beside an answer, and of no engine or key. */
function mild(
  figure: SaidFigure,
  tokens: readonly Token[],
  { check, context }: { readonly check: CheckPhrases; readonly context: LineContext },
): Aside | undefined {
  const { lexicon, inHand, unitHere } = context;
  const { engine, vehicle } = figureWordsOf(lexicon.words);
  // Of what is turned by hand degrees are how far.
  const isAside =
    inHand === undefined || (inHand.check.form.kind === 'choice' && inHand.isToldUnasked);
  if (!isAside) return undefined;
  const { from, to } = clauseOf(figure, tokens, context);
  const clause = tokens.slice(from, to);
  if (hasPhrase(clause, [...engine, ...vehicle]) || speaksOfStart(clause, context))
    return undefined;
  const unit = figure.unit ?? unitHere('Cel');
  return asideOf(check, { ...figure, unit }, { ...withClause(figure, tokens, context), context });
}

/** A frost with the night in which it was: "minus 15 last night" does not tell that it stood. */
function withTime(
  { start, end }: Pick<Aside, 'start' | 'end'>,
  tokens: readonly Token[],
  { lexicon: { words } }: LineContext,
): Pick<Aside, 'start' | 'end'> {
  const { past, present, asideBehind } = figureWordsOf(words);
  const times = [...past, ...present, ...asideBehind];
  let from = start;
  for (let at = start - 1; at >= start - mostBetween; at -= 1)
    if (phraseAt(tokens, at, times) === from - at) from = at;
  return { start: from, end: end + phraseAt(tokens, end, times) };
}

/** "Between plus and minus 12": the minus of the battery. */
function isBetweenPoles(
  start: number,
  tokens: readonly Token[],
  { lexicon: { words } }: LineContext,
): boolean {
  const { sides } = figureWordsOf(words);
  return hasPhrase(tokens.slice(Math.max(start - mostToPole, 0), start), sides);
}

const mostToPole = 3;

/** So many small words may stand between the battery and its figure. */
const mostBetween = 5;

/** The age of a battery, or its voltage, where it is named right before or behind. */
function ofBattery(
  figure: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): Aside | undefined {
  const { inHand, lexicon } = context;
  const { unit, start, end } = figure;
  const isAge = unit === 'a' || unit === 'mo';
  const check = readingIn(lexicon.checks, isAge ? (one) => unitOf(one) === 'a' : isRestVoltage);
  if (check === undefined || check === inHand) return undefined;
  const { battery } = figureWordsOf(lexicon.words);
  const isBattery = (at: number): boolean => phraseAt(tokens, at, battery) > 0;
  const isSmall = smallTo(check, context, tokens);
  let from = start - 1;
  while (from >= start - mostBetween && !isBattery(from) && isSmall(from)) from -= 1;
  let to = end;
  while (to < end + mostBetween && !isBattery(to) && isSmall(to)) to += 1;
  const isBefore = from >= 0 && isBattery(from);
  const isBehind = isAge && isBattery(to);
  if (!isBefore && !isBehind) {
    if (!isAge) return undefined;
    return isOfSame(figure, tokens, { check, context })
      ? asideOf(check, figure, { start, end, context })
      : heardOf(figure, tokens, { check, context });
  }
  const stretch = isBefore
    ? { start: from, end }
    : { start, end: to + phraseAt(tokens, to, battery) };
  const isPlain = isAge
    ? isOfItself(stretch, tokens, context)
    : inHand !== undefined &&
      isOfWords(inHand) &&
      isVoltage(figure, check, context) &&
      isAtRest(stretch, tokens, context);
  return isPlain ? asideOf(check, figure, { ...stretch, context }) : undefined;
}

/** "Battery 12.4, 4 years old": its age too, in a clause of its own, where no vehicle is named. */
function isOfSame(
  figure: SaidFigure,
  tokens: readonly Token[],
  { check, context }: { readonly check: CheckPhrases; readonly context: LineContext },
): boolean {
  const { inHand, lexicon } = context;
  const { battery, vehicle } = figureWordsOf(lexicon.words);
  const { start, end } = figure;
  if (hasPhrase(tokens, vehicle)) return false;
  const { from, to } = clauseOf(figure, tokens, context);
  const isSmall = smallTo(check, context, tokens);
  const isBare = tokens.every(
    (_, at) => at < from || at >= to || (at >= start && at < end) || isSmall(at),
  );
  const asked = readTokens(inHand?.name ?? '', lexicon.words);
  return isBare && hasPhrase([...asked, ...tokens.slice(0, from)], battery);
}

/** A clause speaks as surely as this of an age. */
const sureAge = 0.8;

/** "It's been in there 3 years", "bought 18 months back" of a battery: a clause that tells an age as people do. */
function heardOf(
  figure: SaidFigure,
  tokens: readonly Token[],
  { check, context }: { readonly check: CheckPhrases; readonly context: LineContext },
): Aside | undefined {
  const { inHand, lexicon } = context;
  const { battery, vehicle } = figureWordsOf(lexicon.words);
  const { from, to } = clauseOf(figure, tokens, context);
  const clause = tokens.slice(from, to);
  const asked = readTokens(inHand?.name ?? '', lexicon.words);
  const isOfIt = hasPhrase([...asked, ...clause], battery) && !hasPhrase(clause, vehicle);
  if (!lexicon.isHeard || !isOfIt) return undefined;
  const heard = hearTokens(clause, lexicon);
  // Of a battery that "has its years" nobody tells one.
  const { form } = check.check;
  const isYoung = form.kind === 'reading' && likeliest(heard, check).id === form.bands[0]?.id;
  if (tokens[figure.start]?.kind !== 'number' && !isYoung) return undefined;
  const subject = lexicon.subject()(heard);
  return subject.check === check.id && subject.share >= sureAge
    ? asideOf(check, figure, { start: from, end: to, context })
    : undefined;
}

/** True for a word that says nothing between a battery and a figure of it. */
function smallTo(
  { topic }: CheckPhrases,
  { lexicon: { words, reader, readUnit } }: LineContext,
  tokens: readonly Token[],
): (at: number) => boolean {
  const { oneBefore, roughly } = figureWordsOf(words);
  const { fillers, articles, joins, nearly, besideFigures } = words;
  const small = new Set([
    ...[fillers, articles, joins, nearly, besideFigures].flat(),
    ...[oneBefore, roughly].flat(),
  ]);
  // "The 12 V battery": what it is called by.
  const isVolts = (at: number): boolean =>
    tokens[at]?.kind === 'number' && readUnit(tokens, at + 1)?.code === 'V';
  return (at) => {
    const token = tokens[at];
    if (isVolts(at) || (readUnit(tokens, at)?.code === 'V' && isVolts(at - 1))) return true;
    return (
      token?.kind === 'word' &&
      (small.has(token.text) || reader.fromTokens([token]).some((term) => topic.has(term)))
    );
  };
}

/** True where the clause speaks of no standing and of no time that went by. */
function isOfItself(
  { start, end }: Pick<Aside, 'start' | 'end'>,
  tokens: readonly Token[],
  { lexicon }: LineContext,
): boolean {
  const { standing } = figureWordsOf(lexicon.words);
  const [before = []] = cutClauses(tokens.slice(0, start), lexicon).slice(-1);
  const isOpen = tokens[start - 1]?.kind === 'word';
  return !hasStem([...(isOpen ? before : []), ...tokens.slice(start, end)], standing);
}

function isRestVoltage(entry: CheckPhrases): boolean {
  return isOfBattery(entry) && entry.check.does.length === 0;
}

function isOfBattery({ check: { form } }: CheckPhrases): boolean {
  return form.kind === 'reading' && form.range === 'battery-voltage';
}

/**
 * The battery's voltage at rest, where its clause says so, or tells no more than what the meter
 * shows: "reading 11.9 with everything off", "the meter says 12.5".
 */
function atRest(
  figure: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): Aside | undefined {
  const { inHand, lexicon } = context;
  const check = readingIn(lexicon.checks, isRestVoltage);
  if (check === undefined || (inHand?.check.form.kind ?? 'choice') !== 'choice') return undefined;
  if (figure.decimals === 0 || !isVoltage(figure, check, context)) return undefined;
  const { display, measured, battery, allOff } = figureWordsOf(lexicon.words);
  const { from, to } = clauseOf(figure, tokens, context);
  const clause = tokens.slice(from, to);
  if (speaksOfStart(clause, context) || isWhileStarting(figure, tokens, context)) return undefined;
  const named = namedChecks(clause, { ...context, inHand: undefined });
  const isSaid = named.includes(check) || hasPhrase(clause, allOff);
  if (!isSaid && inHand !== undefined && !isOfWords(inHand)) return undefined;
  // "Loose clamp, got 12.3 volts"; "loose, measured 12.3".
  const isAsked =
    inHand !== undefined && hasPhrase(readTokens(inHand.name, lexicon.words), battery);
  const isPart = clause.length < tokens.length;
  const isPlain =
    hasPhrase(clause, [...display, ...battery]) ||
    (isAsked && figure.unit === 'V') ||
    (isPart && hasPhrase(clause, measured));
  if (!isSaid && (named.length > 0 || !isPlain)) return undefined;
  return asideOf(check, figure, { start: from, end: to, context });
}

/** V. No alternator gives more, and a starter that turns leaves a battery as much. */
const mostCharged = 15.5;
const leastTurning = 4;

/**
 * A voltage of another moment than the battery's rest, beside an answer in words: "runs sweet, 14.3 at
 * the battery", "I measured 7.5 volts while she held the key".
 */
function ofMoment(
  figure: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): Aside | undefined {
  const { inHand, lexicon, nominal } = context;
  const { value, unit, decimals } = figure;
  if (inHand?.check.form.kind !== 'choice' || (unit ?? 'V') !== 'V') return undefined;
  const volts = (value * 12) / nominal;
  const isCharged = volts > mostAtRest && volts <= mostCharged && decimals > 0;
  if (!isCharged && (unit !== 'V' || volts < leastTurning || volts > mostAtRest)) return undefined;
  const check = readingIn(lexicon.checks, ({ check: { form, does } }) =>
    isCharged
      ? form.kind === 'reading' && form.expect === 'charging'
      : form.kind === 'reading' && form.range === 'battery-voltage' && does.includes('starter'),
  );
  if (check === undefined) return undefined;
  const { from, to } = clauseOf(figure, tokens, context);
  const clause = tokens.slice(from, to);
  const { moments, cranking, display, battery } = figureWordsOf(lexicon.words);
  const named = namedChecks(clause, { ...context, inHand: undefined });
  const isSaid = isCharged
    ? (named.includes(check) || hasPhrase(clause, [...display, ...battery])) &&
      !speaksOfStart(clause, context)
    : named.every((one) => one === check) &&
      hasPhrase(clause, moments) &&
      hasStem(clause, cranking);
  return isSaid ? asideOf(check, figure, { start: from, end: to, context }) : undefined;
}

/** V. No battery has as much while the starter pulls on it. */
const leastAtRest = 12;

/** "While cranking, battery 9.8 V": what is said of the moment may be meant of any figure. */
function isWhileStarting(
  { value }: SaidFigure,
  tokens: readonly Token[],
  context: LineContext,
): boolean {
  const { moments } = figureWordsOf(context.lexicon.words);
  const isLow = value < (leastAtRest * context.nominal) / 12;
  return isLow && hasPhrase(tokens, moments) && speaksOfStart(tokens, context);
}

/** The words about a figure up to the next mark or break, with what is said of the moment. */
function clauseOf(
  { start, end }: Pick<Aside, 'start' | 'end'>,
  tokens: readonly Token[],
  { lexicon: { words } }: LineContext,
): { readonly from: number; readonly to: number } {
  const { moments, battery, display, measured: verbs } = figureWordsOf(words);
  // The "and" that is written on to what was measured: `والبطارية`.
  const measured = [...battery, ...display, ...verbs];
  const isJoined = (word: string): boolean =>
    words.joins.some((join) => words.spelling?.attached?.includes(join) && word.startsWith(join)) &&
    measured.includes(word);
  const isBreak = (token: Token, at: number): boolean =>
    token.kind === 'mark' ||
    (token.kind === 'word' &&
      (words.clauseBreaks.includes(token.text) || isJoined(token.text)) &&
      phraseAt(tokens, at, moments) === 0);
  const cut = tokens.slice(0, start).findLastIndex(isBreak);
  const before = tokens[cut];
  const from = before?.kind === 'word' && isJoined(before.text) ? cut : cut + 1;
  const length = tokens.slice(end).findIndex((token, at) => isBreak(token, end + at));
  return { from, to: length < 0 ? tokens.length : end + length };
}

/** V. A battery at rest has no more: what is more is charged. */
export const mostAtRest = 13.2;

/** True for a question answered in words, of which nothing is done to the battery. */
function isOfWords({ check: { form, does } }: CheckPhrases): boolean {
  return form.kind === 'choice' && does.length === 0;
}

function isVoltage(figure: SaidFigure, { check }: CheckPhrases, context: LineContext): boolean {
  const { nominal } = context;
  const { value, unit = 'V', decimals } = figure;
  const isLikely = unit === 'V' && (decimals > 0 || figure.unit !== undefined);
  return (
    isLikely &&
    value <= (mostAtRest * nominal) / 12 &&
    check.form.kind === 'reading' &&
    judgeFigure({ value, unit }, check.form, nominal).type === 'plausible'
  );
}

/** True where nothing is said of the starter beside a voltage. */
function isAtRest(
  { start, end }: Pick<Aside, 'start' | 'end'>,
  tokens: readonly Token[],
  context: LineContext,
): boolean {
  const { lexicon } = context;
  const { moments } = figureWordsOf(lexicon.words);
  const [behind = []] = cutClauses(tokens.slice(end), lexicon);
  const isOpen = tokens[end]?.kind === 'word';
  const said = [...tokens.slice(start, end), ...(isOpen ? behind : [])];
  return !speaksOfStart(said, context) && !hasPhrase(said, moments);
}

function speaksOfStart(words: readonly Token[], { lexicon }: LineContext): boolean {
  const { cranking, changes } = figureWordsOf(lexicon.words);
  return hasStem(words, cranking) || hasPhrase(words, changes);
}

function readingIn(
  checks: LineContext['lexicon']['checks'],
  is: (check: CheckPhrases) => boolean,
): CheckPhrases | undefined {
  return [...checks.values()].find(
    (one) => one.check.form.kind === 'reading' && one.check.like === undefined && is(one),
  );
}

function asideOf(
  check: CheckPhrases,
  figure: SaidFigure,
  { start, end, context }: Pick<Aside, 'start' | 'end'> & { readonly context: LineContext },
): Aside | undefined {
  const reading = judgeReading(check, figure, context);
  return 'type' in reading ? undefined : { reading, start, end };
}
