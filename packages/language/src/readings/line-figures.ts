import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import type { Terms } from '../typed/terms.ts';
import type { SaidNumber, Token } from '../typed/token.ts';
import { durations, isAlike } from '../numbers/unit.ts';
import { bareUnit } from '../numbers/units-said.ts';
import { figureWordsOf } from '../words/words.ts';
import { isOfBelow, noughtBefore, noughtBehind } from './side-of-nought.ts';
import { endsWithPhrase, phraseAt, textOf } from './word-run.ts';

/** A figure that was, or a figure put in the place of one that is denied. */
export type Earlier = 'was' | 'denied';

/** What the line is read against. */
export interface LineContext {
  readonly lexicon: Lexicon;
  /** The reading in hand, or what a correction without a name means. */
  readonly inHand: CheckPhrases | undefined;
  /** The kit of the case; empty where nothing is known of it. */
  readonly kit: readonly string[];
  /** The unit in which a bare figure of a unit is meant: °F for °C where the region uses it. */
  readonly unitHere: (unit: string) => string;
  /** What the vehicle's system is rated for, in volts. */
  readonly nominal: 12 | 24;
}

/** A figure with its unit and the place of its tokens. */
export interface SaidFigure {
  readonly value: number;
  readonly decimals: number;
  /** As typed, without sign and grouping. */
  readonly digits: string;
  /** The other way to read it: 12.65 for the "12.650" of a language that groups with a dot. */
  readonly other?: SaidNumber;
  /** True where it was said in words alone. */
  readonly inWords?: true;
  readonly unit: string | undefined;
  /** True where it has a unit that is a word for the check's own: `degrees`. */
  readonly isDegrees?: true;
  readonly start: number;
  readonly end: number;
}

/** So many things are counted in a word: "the two clamps". */
export const mostCounted = 4;

/** True for a small whole number in a word, without a unit: a count, where it may be one. */
export function isCount({ value, decimals, unit, inWords }: SaidFigure): boolean {
  const isBare = unit === undefined && inWords === true && decimals === 0;
  return isBare && value >= 1 && value <= mostCounted;
}

/** Leaves out what is only named to be denied: the "not 12.5" of "not 12.5, 12.1". */
export function withoutDenied(
  tokens: readonly Token[],
  { lexicon }: LineContext,
): { kept: readonly Token[]; isDenied: boolean } {
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  const { negators, talk, clauseBreaks } = lexicon.words;
  const at = tokens.findIndex(
    (token, index) =>
      token.kind === 'word' &&
      negators.includes(token.text) &&
      tokens[index + 1]?.kind === 'number',
  );
  if (at < 0 || numbers < 2) return { kept: tokens, isDenied: false };
  // "12.3 no 12.5": which of the two is denied nobody can tell.
  const negator = tokens[at];
  const before = tokens[at - 1];
  const isAnd = before?.kind === 'word' && clauseBreaks.includes(before.text);
  const no = negator?.kind === 'word' ? withoutJoin(negator.text, lexicon.words) : '';
  const isEither = talk.no.includes(no) && !isAnd;
  if (isEither && tokens.slice(0, at).some(({ kind }) => kind === 'number'))
    return { kept: tokens, isDenied: false };
  const unit = lexicon.readUnit(tokens, at + 2);
  const end = at + 2 + (unit?.length ?? 0);
  return { kept: [...tokens.slice(0, isAnd ? at - 1 : at), ...tokens.slice(end)], isDenied: true };
}

/** The `لا` of `ولا`, which may be "or". */
function withoutJoin(word: string, { joins, spelling }: Lexicon['words']): string {
  const join = joins.find((one) => spelling?.attached?.includes(one) && word.startsWith(one));
  return join === undefined ? word : word.slice(join.length);
}

/** Every figure with the unit behind it; a number that belongs to a name is none. */
export function findFigures(tokens: readonly Token[], context: LineContext): SaidFigure[] {
  const { lexicon } = context;
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  if (numbers === 0) return [];
  const inNames = numbersInNames(tokens, lexicon);
  const isSeveral = numbers > 1;
  const figures = tokens.flatMap((typed, start): SaidFigure[] => {
    if (typed.kind !== 'number' || inNames.has(start)) return [];
    if (isPartOfAnother(tokens, start, lexicon) || isOfBelow(tokens, start, lexicon)) return [];
    const unit = unitBehind(tokens, start, context);
    const token = unit?.code === 'mV' ? inThousands(typed) : typed;
    const end = start + 1 + (unit?.length ?? 0);
    // "0.3 V and 0.05 V" are two.
    const half = token.decimals === 0 ? fractionBehind(tokens, end, lexicon) : undefined;
    const behind = half?.end ?? end;
    const nought = noughtBehind(tokens, behind, lexicon);
    const isDegree = unit?.code === bareUnit || isAlike(unit?.code ?? unitHeld(context), 'Cel');
    const ahead = nought === undefined ? noughtBefore(tokens, start, lexicon) : undefined;
    // "Below zero by five" where nothing was asked.
    const isBy = context.inHand === undefined && unit === undefined && ahead?.end === start;
    const before = isDegree || isBy ? ahead : undefined;
    if (isDegree && unit === undefined && isPartInWords(token)) return [];
    const value = token.value + (half?.value ?? 0);
    const isBare = unit === undefined || unit.code === bareUnit;
    // Only a temperature is above or below nought, or has degrees beside another figure.
    const isNamed = nought?.isNamed === true || before !== undefined;
    const isBeside = unit?.code === bareUnit && context.inHand !== undefined && isSeveral;
    const bare = isNamed || isBeside ? context.unitHere('Cel') : undefined;
    return [
      {
        value: (nought ?? before)?.isBelow === true ? -Math.abs(value) : value,
        decimals: half?.decimals ?? token.decimals,
        digits: token.digits,
        ...(token.other === undefined ? {} : { other: token.other }),
        ...(token.inWords === undefined ? {} : { inWords: token.inWords }),
        unit: isBare ? bare : unit.code,
        ...(unit?.code === bareUnit ? { isDegrees: true } : {}),
        start: before?.start ?? start,
        end: behind + (nought?.length ?? 0),
      },
    ];
  });
  const joined = joinFigures(
    figures.map((figure) => withUnitBefore(figure, tokens, context)),
    tokens,
    context,
  );
  // "Half off", "half full": no figure where none is asked for.
  const isAsked = context.inHand?.check.form.kind === 'reading';
  return withoutDurations(
    joined.filter((figure) => isAsked || figure.unit !== undefined || !isPartInWords(figure)),
  );
}

/** "12.400 mV": no meter tells thousandths of a millivolt. */
function inThousands(said: Extract<Token, { kind: 'number' }>): Extract<Token, { kind: 'number' }> {
  const { value, decimals, digits } = said;
  if (decimals !== groupDigits || Math.abs(value) < 1 || said.inWords === true) return said;
  const whole = digits.replace(/\D/g, '');
  return { kind: 'number', value: Math.sign(value) * Number(whole), decimals: 0, digits: whole };
}

/** Digits of a group of thousands. */
const groupDigits = 3;

/**
 * The unit behind a number; the c of "0,05 c bon" is no degree where none is asked, and a word that
 * begins a clause as well is no thousandth of a volt: `ملي`.
 */
function unitBehind(
  tokens: readonly Token[],
  at: number,
  context: LineContext,
): ReturnType<Lexicon['readUnit']> {
  const { words, readUnit } = context.lexicon;
  const [unit, next] = tokens.slice(at + 1, at + 3);
  const isElided =
    words.spelling?.elides === true &&
    unit?.kind === 'word' &&
    unit.text === 'c' &&
    next?.kind === 'word' &&
    unitHeld(context) !== 'Cel';
  const form = context.inHand?.check.form;
  const isClause =
    form?.kind === 'reading' &&
    form.range === 'battery-voltage' &&
    unit?.kind === 'word' &&
    words.clauseBreaks.includes(unit.text) &&
    next?.kind === 'word';
  const said = readUnit(tokens, at + 1) ?? partitive(tokens, at, context.lexicon);
  // "10.3 second go" is no time.
  const isTry = phraseAt(tokens, at + 1, figureWordsOf(words).again) > (said?.length ?? 0);
  return isElided || isTry || (isClause && said?.length === 1) ? undefined : said;
}

/** The unit of a number in words that stands behind a small word: "une trentaine de mois". */
function partitive(
  tokens: readonly Token[],
  at: number,
  { words, readUnit }: Lexicon,
): ReturnType<Lexicon['readUnit']> {
  const [number, of] = tokens.slice(at, at + 2);
  const isOf = of?.kind === 'word' && words.partitive?.includes(of.text) === true;
  const isInWords = number?.kind === 'number' && number.inWords === true;
  const unit = isOf && isInWords ? readUnit(tokens, at + 2) : undefined;
  return unit === undefined ? undefined : { ...unit, length: unit.length + 1 };
}

/** How long was waited is no reading beside one: "12.4 after 15 seconds". */
function withoutDurations(figures: readonly SaidFigure[]): SaidFigure[] {
  const isDuration = ({ unit }: SaidFigure): boolean =>
    unit !== undefined && durations.includes(unit);
  const readings = figures.filter((figure) => !isDuration(figure));
  return readings.length > 0 ? readings : [...figures];
}

/** "A year and a half", "a year less a month": one of the unit that stands before, and so much more or less. */
function withUnitBefore(
  figure: SaidFigure,
  tokens: readonly Token[],
  { inHand, lexicon }: LineContext,
): SaidFigure {
  // "A month, maybe two".
  const isYears = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'a';
  if (isYears && figure.unit === undefined && isBehindMonth(figure, tokens, lexicon))
    return { ...figure, unit: 'mo' };
  const join = tokens[figure.start - 1];
  const isLess = isLessWord(join, lexicon.words);
  const isMore = join?.kind === 'word' && lexicon.words.joins.includes(join.text);
  if (!isLess && !isMore) return figure;
  const change = isLess ? -figure.value : figure.value;
  const at = figure.start - 2;
  const unit = at < 0 ? undefined : lexicon.readUnit(tokens, at);
  if (unit?.length !== 1 || !countedAlone.includes(unit.code)) return figure;
  if (tokens[at - 1]?.kind === 'number') return figure;
  if (figure.value > 0 && figure.value < 1 && figure.unit === undefined)
    return { ...figure, value: 1 + change, unit: unit.code, start: at };
  const parts = partsOf(unit.code, figure.unit);
  return parts === undefined ? figure : { ...figure, value: parts + change, start: at };
}

/** True where a month of which no number is said stands right before it. */
function isBehindMonth(
  { start }: SaidFigure,
  tokens: readonly Token[],
  { readUnit }: Lexicon,
): boolean {
  return [start - 1, start - 2, start - 3].some(
    (at) => at >= 0 && readUnit(tokens, at)?.code === 'mo' && tokens[at - 1]?.kind !== 'number',
  );
}

/** Units of which one is said without a number. */
const countedAlone = ['a', 'V', 'h'];

/** How many of a smaller unit of time one of a larger has, where people say both: a year, months. */
function partsOf(unit: string | undefined, smaller: string | undefined): number | undefined {
  return unit === 'a' && smaller === 'mo' ? monthsOfYear : undefined;
}

const monthsOfYear = 12;

/** Puts together what is one figure in two: "1 year 3 months", "douze volts quatre", "twelve four". */
function joinFigures(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  { inHand, lexicon }: LineContext,
): SaidFigure[] {
  const joined: SaidFigure[] = [];
  for (const figure of figures) {
    const before = joined.at(-1);
    const one =
      before === undefined
        ? undefined
        : (joinTimes([before, figure], tokens, { inHand, lexicon }) ??
          joinDecimals([before, figure], tokens, { inHand, lexicon }) ??
          joinFraction(before, figure) ??
          joinHundreds([before, figure], tokens, { inHand, lexicon }));
    if (one === undefined) joined.push(figure);
    else joined.splice(-1, 1, one);
  }
  return joined;
}

function joinTimes(
  [before, figure]: readonly [SaidFigure, SaidFigure],
  tokens: readonly Token[],
  { inHand, lexicon: { words } }: Pick<LineContext, 'inHand' | 'lexicon'>,
): SaidFigure | undefined {
  // "2h15".
  const isMinutes = before.unit === 'h' && figure.unit === undefined && figure.decimals === 0;
  if (isMinutes && before.end === figure.start) return { ...before, end: figure.end };
  // A year and its number may be one word: "un año".
  const isYears = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'a';
  const isOneWord = isYears && before.inWords === true;
  const parts = partsOf(before.unit ?? (isOneWord ? 'a' : undefined), figure.unit);
  const between = tokens.slice(before.end, figure.start);
  const isLess = between.length === 1 && isLessWord(between[0], words);
  const isNext = between.every(
    (token) => token.kind === 'word' && words.joins.includes(token.text),
  );
  if (parts === undefined || !(isNext || isLess) || before.decimals > 0) return undefined;
  const change = isLess ? -figure.value : figure.value;
  return { ...figure, value: before.value * parts + change, start: before.start };
}

/** Whole volts and their decimals: behind the unit, or both in words. */
function joinDecimals(
  [before, figure]: readonly [SaidFigure, SaidFigure],
  tokens: readonly Token[],
  { inHand, lexicon }: Pick<LineContext, 'inHand' | 'lexicon'>,
): SaidFigure | undefined {
  const form = inHand?.check.form;
  if (form?.kind !== 'reading' || form.unit !== 'V') return undefined;
  // "Twelve nought five" becomes 12.0 first.
  const isOpen = before.decimals === 0 || (before.inWords === true && before.digits.endsWith('.0'));
  const isDecimals = figure.decimals === 0 && figure.value >= 0 && figure.digits.length <= 2;
  if (!isOpen || !isDecimals) return undefined;
  // "10.7 on a 12 volt one".
  const { ratedAt } = figureWordsOf(lexicon.words);
  if (isCount(figure) && endsWithPhrase(tokens, before.start, ratedAt)) return undefined;
  const between = tokens.slice(before.end, figure.start);
  const isOh = isOnly(between, lexicon.words.decimalZero) && figure.digits.length === 1;
  const isJoined =
    lexicon.words.spelling?.joinsDecimals === true && isOnly(between, lexicon.words.joins);
  if (between.length > 0 && !isOh && !isJoined) return undefined;
  // "Six volts and eight", where nothing is counted: "12 volts and 3 tries".
  const isLast = tokens[figure.end]?.kind !== 'word';
  const isBehindUnit = before.unit === 'V' && figure.unit === undefined && (!isJoined || isLast);
  const isBare = before.unit === undefined && (figure.unit ?? 'V') === 'V';
  const isAlikeSaid = before.inWords === figure.inWords;
  // "Nought two" is so many tenths where less than a volt is read, and so is "one and seven".
  const isDrop = form.range === 'drop';
  const isVolts =
    before.value >= leastVolts ||
    (isDrop && (before.value === 0 || (isJoined && before.value <= mostDrop)));
  const isNoTeen = before.value === 0 || figure.value < 10 || figure.value >= 20;
  if (!isBehindUnit && !(isBare && isVolts && isNoTeen && (isAlikeSaid || isJoined)))
    return undefined;
  const digits = `${before.digits}${before.decimals > 0 ? '' : '.'}${isOh ? '0' : ''}${figure.digits}`;
  return {
    ...figure,
    value: Number(digits),
    decimals: digits.length - digits.indexOf('.') - 1,
    digits,
    unit: 'V',
    start: before.start,
  };
}

function isOnly([token, more]: readonly Token[], words: readonly string[]): boolean {
  return token?.kind === 'word' && more === undefined && words.includes(token.text);
}

/** Below that, two numbers are two numbers. */
const leastVolts = 8;

/** V. No more is lost where people tell the tenths apart from the volts. */
const mostDrop = 5;

/** "Zwölf dreiviertel", "tres voltios con dos": a whole number and a part of one in words. */
function joinFraction(before: SaidFigure, figure: SaidFigure): SaidFigure | undefined {
  const isPart = figure.inWords === true && figure.value !== 0 && Math.abs(figure.value) < 1;
  const isVolts = before.unit === 'V';
  const isWhole =
    before.decimals === 0 && (before.value >= leastVolts || (isVolts && before.inWords === true));
  const isInWords = before.inWords === true && before.unit === undefined;
  if (!isPart || !isWhole || !(isInWords || isVolts)) return undefined;
  if (before.end !== figure.start || (figure.unit ?? 'V') !== 'V') return undefined;
  const unit = figure.unit ?? before.unit;
  return { ...figure, value: before.value + figure.value, unit, start: before.start };
}

/** "One eighty", "two fifty": hundreds of amperes or millivolts and the rest, in words. */
function joinHundreds(
  [before, figure]: readonly [SaidFigure, SaidFigure],
  tokens: readonly Token[],
  { inHand, lexicon }: Pick<LineContext, 'inHand' | 'lexicon'>,
): SaidFigure | undefined {
  const isAmperes = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'A';
  const isInWords = before.inWords === true && figure.inWords === true;
  const between = tokens.slice(before.end, figure.start);
  const isOh = isOnly(between, lexicon.words.decimalZero) && figure.value > 0;
  const isNext = (before.end === figure.start || isOh) && before.unit === undefined;
  const isWhole = before.decimals === 0 && figure.decimals === 0;
  if (!(isAmperes || figure.unit === 'mV') || !isInWords || !isNext || !isWhole) return undefined;
  const isRest = isOh ? figure.value < 10 : figure.value >= 10 && figure.value <= 99;
  if (before.value < 1 || before.value > 9 || !isRest) return undefined;
  const value = before.value * 100 + figure.value;
  return { ...figure, value, digits: String(value), start: before.start };
}

/** "and a half" behind the unit: "three years and a half". */
function fractionBehind(
  tokens: readonly Token[],
  at: number,
  { words }: Lexicon,
): { readonly value: number; readonly decimals: number; readonly end: number } | undefined {
  const [join] = tokens.slice(at, at + 1);
  const isLess = isLessWord(join, words);
  const article = tokens[at + 1];
  const isArticle = article?.kind === 'word' && words.fillers.includes(article.text);
  const end = at + (isLess && isArticle ? 3 : 2);
  const part = tokens[end - 1];
  const isJoined = isAnd(join, words);
  const before = tokens[at - 1];
  if (!(isJoined || isLess) || !isFraction(part) || isOneApart(before, part)) return undefined;
  return { value: isLess ? -part.value : part.value, decimals: part.decimals, end };
}

/** True for "and", with its letters in another order as well: "three adn a half". */
function isAnd(token: Token | undefined, { joins }: Lexicon['words']): boolean {
  const inOrder = (word: string): string => Array.from(word).sort().join('');
  return token?.kind === 'word' && joins.some((join) => inOrder(join) === inOrder(token.text));
}

/** "Doce voltios menos cuarto". */
function isLessWord(token: Token | undefined, words: Lexicon['words']): boolean {
  return token?.kind === 'word' && figureWordsOf(words).less.includes(token.text);
}

/** "0.3 on one and 0.05 on the other" is no one and a part. */
function isOneApart(one: Token | undefined, part: Token | undefined): boolean {
  const isOne = one?.kind === 'number' && one.inWords === true && one.value === 1;
  return isOne && part?.kind === 'number' && part.inWords !== true;
}

function isFraction(token: Token | undefined): token is Extract<Token, { kind: 'number' }> {
  return token?.kind === 'number' && token.value > 0 && token.value < 1;
}

function isWhole(token: Token | undefined): boolean {
  return token?.kind === 'number' && token.decimals === 0;
}

/** True for the half of "three years and a half", which is no figure of its own. */
function isPartOfAnother(
  tokens: readonly Token[],
  at: number,
  { words, readUnit }: Lexicon,
): boolean {
  if (!isFraction(tokens[at])) return false;
  const [unit, join] = tokens.slice(Math.max(at - 2, 0), at);
  if (join?.kind !== 'word') return false;
  if ([join, unit].some((token) => isLessWord(token, words)))
    return tokens.slice(Math.max(at - 4, 0), at - 1).some(({ kind }) => kind === 'number');
  if (unit?.kind === 'number')
    return isWhole(unit) && isAnd(join, words) && !isOneApart(unit, tokens[at]);
  return (
    readUnit(tokens, at - 2)?.length === 1 &&
    words.joins.includes(join.text) &&
    isWhole(tokens[at - 3])
  );
}

function unitHeld({ inHand }: LineContext): string {
  const form = inHand?.check.form;
  return form?.kind === 'reading' ? form.unit : '';
}

/** True for a part in words: no temperature, as in "demi-saison". */
function isPartInWords({ inWords, value }: Pick<SaidFigure, 'inWords' | 'value'>): boolean {
  return inWords === true && value > 0 && value < 1;
}

/** Where numbers belong to a name, as in "terminal 50: 9.5". */
function numbersInNames(tokens: readonly Token[], { checks, reader }: Lexicon): Set<number> {
  const inside = new Set<number>();
  if (!tokens.some(({ kind }) => kind === 'number')) return inside;
  const named = namesWithNumbers(checks);
  tokens.forEach((token, at) => {
    if (token.kind !== 'number') return;
    for (const name of named) {
      const index = name.indexOf(token.digits);
      const start = at - index;
      if (index < 0 || start < 0) continue;
      const stretch = tokens.slice(start, start + name.length);
      if (reader.literally(stretch).join(' ') === name.join(' ') && stretch.length > 1)
        inside.add(at);
    }
  });
  return inside;
}

const numbered = new WeakMap<Lexicon['checks'], readonly Terms[]>();

/** The names of checks that hold a number. */
function namesWithNumbers(checks: Lexicon['checks']): readonly Terms[] {
  const known = numbered.get(checks);
  if (known !== undefined) return known;
  const named = [...checks.values()].flatMap(({ names }) => names.filter(hasNumber));
  numbered.set(checks, named);
  return named;
}

function hasNumber(name: readonly string[]): boolean {
  return name.length > 1 && name.some((term) => /^\d+$/.test(term));
}

/** "12 and a bit", "12 point something": more than the figure, nobody knows how much. */
export function isVague(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon, inHand }: LineContext,
): boolean {
  const { vague, point } = lexicon.words;
  return figures.some((figure) => {
    const { start, end, decimals } = figure;
    const from = tokens[end]?.kind === 'mark' ? end + 1 : end;
    // "A couple hundred", "a couple of decades".
    const before = tokens.slice(Math.max(start - 2, 0), start);
    const itself = tokens[start];
    const isScale = itself?.kind === 'number' && itself.isScale === true;
    if (isScale && before.some((token) => token.kind === 'word' && vague.includes(token.text)))
      return true;
    const behind = textOf(tokens.slice(from, from + mostVagueWords));
    const isOpen = decimals === 0 && from === tokens.length - 1 && point.includes(behind);
    // "9.3 for some 3 seconds" says it of the next.
    const isOfNext = (said: string): boolean =>
      tokens[from + said.split(' ').length]?.kind === 'number';
    // "12.3 and a bit" is 12.3 as near as it was read, and so are "350 amps odd".
    if (decimals > 0 || isCloseBy(figure, inHand)) return false;
    return (
      isOpen ||
      vague.some((said) => (behind === said || behind.startsWith(`${said} `)) && !isOfNext(said))
    );
  });
}

const mostVagueWords = 4;

/** True where a bit more makes no odds: of tens of amperes, of years, and of degrees. */
function isCloseBy({ value }: SaidFigure, inHand: CheckPhrases | undefined): boolean {
  const form = inHand?.check.form;
  if (form?.kind !== 'reading') return false;
  if (form.unit === 'A') return value > hundred && value % hundred !== 0;
  return form.unit === 'a' || form.unit === 'Cel';
}

const hundred = 100;

/** True where the only figure is denied: "not 12.4". */
export function isDeniedAlone(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  const [figure, more] = figures;
  const before = figure === undefined ? undefined : tokens[figure.start - 1];
  const { negators, besideFigures } = lexicon.words;
  if (more !== undefined || before?.kind !== 'word' || !negators.includes(before.text))
    return false;
  // "Nothing 0" denies no nought, and "not 0" does.
  return figure?.value !== 0 || !besideFigures.includes(before.text);
}

/** True where "was" stands before a figure and something named stands before that. */
export function speaksOfEarlier(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  return figures.some(({ start }) => {
    const before = textOf(tokens.slice(Math.max(start - 4, 0), start));
    return lexicon.words.earlier.some((word) => before.endsWith(` ${word}`));
  });
}
