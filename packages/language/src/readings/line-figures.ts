import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import type { Terms } from '../typed/terms.ts';
import type { SaidNumber, Token } from '../typed/token.ts';
import { durations } from '../numbers/unit.ts';
import { bareUnit } from '../numbers/units-said.ts';

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
  readonly start: number;
  readonly end: number;
}

/** Tokens as a line of text. */
export function textOf(tokens: readonly Token[]): string {
  return tokens
    .map((token) =>
      token.kind === 'number' ? `${token.value < 0 ? '-' : ''}${token.digits}` : token.text,
    )
    .join(' ')
    .trim();
}

/** Leaves out what is only named to be denied: the "not 12.5" of "not 12.5, 12.1". */
export function withoutDenied(
  tokens: readonly Token[],
  { lexicon }: LineContext,
): { kept: readonly Token[]; isDenied: boolean } {
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  const at = tokens.findIndex(
    (token, index) =>
      token.kind === 'word' &&
      lexicon.words.negators.includes(token.text) &&
      tokens[index + 1]?.kind === 'number',
  );
  if (at < 0 || numbers < 2) return { kept: tokens, isDenied: false };
  const unit = lexicon.readUnit(tokens, at + 2);
  const end = at + 2 + (unit?.length ?? 0);
  return { kept: [...tokens.slice(0, at), ...tokens.slice(end)], isDenied: true };
}

/** Every figure with the unit behind it; a number that belongs to a name is none. */
export function findFigures(tokens: readonly Token[], context: LineContext): SaidFigure[] {
  const { lexicon } = context;
  const inNames = numbersInNames(tokens, lexicon);
  const figures = tokens.flatMap((token, start): SaidFigure[] => {
    if (token.kind !== 'number' || inNames.has(start)) return [];
    if (isPartOfAnother(tokens, start, lexicon) || isOfBelow(tokens, start, lexicon)) return [];
    const unit = lexicon.readUnit(tokens, start + 1);
    const end = start + 1 + (unit?.length ?? 0);
    const half = fractionBehind(tokens, end, lexicon);
    const minus = minusBehind(tokens, half?.end ?? end, lexicon);
    const value = token.value + (half?.value ?? 0);
    return [
      {
        value: minus > 0 ? -Math.abs(value) : value,
        decimals: half === undefined ? token.decimals : 1,
        digits: token.digits,
        ...(token.other === undefined ? {} : { other: token.other }),
        ...(token.inWords === undefined ? {} : { inWords: token.inWords }),
        unit: unit === undefined || unit.code === bareUnit ? undefined : unit.code,
        start,
        end: (half?.end ?? end) + minus,
      },
    ];
  });
  return withoutDurations(
    joinFigures(
      figures.map((figure) => withUnitBefore(figure, tokens, lexicon)),
      tokens,
      context,
    ),
  );
}

/** How long was waited is no reading beside one: "12.4 after 15 seconds". */
function withoutDurations(figures: readonly SaidFigure[]): SaidFigure[] {
  const isDuration = ({ unit }: SaidFigure): boolean =>
    unit !== undefined && durations.includes(unit);
  const readings = figures.filter((figure) => !isDuration(figure));
  return readings.length > 0 ? readings : [...figures];
}

/** "A year and a half", "volt y medio": one of the unit that stands before, and so much more. */
function withUnitBefore(
  figure: SaidFigure,
  tokens: readonly Token[],
  lexicon: Lexicon,
): SaidFigure {
  const join = tokens[figure.start - 1];
  if (join?.kind !== 'word' || !lexicon.words.joins.includes(join.text)) return figure;
  const at = figure.start - 2;
  const unit = at < 0 ? undefined : lexicon.readUnit(tokens, at);
  if (unit?.length !== 1 || !countedAlone.includes(unit.code)) return figure;
  if (tokens[at - 1]?.kind === 'number') return figure;
  if (figure.value > 0 && figure.value < 1 && figure.unit === undefined)
    return { ...figure, value: figure.value + 1, unit: unit.code, start: at };
  const parts = partsOf(unit.code, figure.unit);
  return parts === undefined ? figure : { ...figure, value: figure.value + parts, start: at };
}

/** Units of which one is said without a number. */
const countedAlone = ['a', 'V'];

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
          joinDecimals(before, figure, inHand) ??
          joinHundreds(before, figure, inHand));
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
  // A year and its number may be one word: "سنتين".
  const isYears = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'a';
  const isOneWord = isYears && before.inWords === true;
  const parts = partsOf(before.unit ?? (isOneWord ? 'a' : undefined), figure.unit);
  const between = tokens.slice(before.end, figure.start);
  const isNext = between.every(
    (token) => token.kind === 'word' && words.joins.includes(token.text),
  );
  return parts === undefined || !isNext || before.decimals > 0
    ? undefined
    : { ...figure, value: before.value * parts + figure.value, start: before.start };
}

/** Whole volts and their decimals: behind the unit, or both in words. */
function joinDecimals(
  before: SaidFigure,
  figure: SaidFigure,
  inHand: CheckPhrases | undefined,
): SaidFigure | undefined {
  const isVolts = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'V';
  const isApart = isVolts && before.end === figure.start && before.decimals === 0;
  const isDecimals = figure.decimals === 0 && figure.value >= 0 && figure.digits.length <= 2;
  if (!isApart || !isDecimals || before.value < leastVolts) return undefined;
  const isBehindUnit = before.unit === 'V' && figure.unit === undefined;
  const isInWords =
    before.inWords === true &&
    figure.inWords === true &&
    before.unit === undefined &&
    (figure.unit ?? 'V') === 'V' &&
    (figure.value < 10 || figure.value >= 20);
  if (!isBehindUnit && !isInWords) return undefined;
  const digits = `${before.digits}.${figure.digits}`;
  return {
    ...figure,
    value: Number(digits),
    decimals: figure.digits.length,
    digits,
    unit: 'V',
    start: before.start,
  };
}

/** Below that, two numbers in words are two numbers. */
const leastVolts = 8;

/** "One eighty", "two fifty": hundreds of amperes and the rest, in words. */
function joinHundreds(
  before: SaidFigure,
  figure: SaidFigure,
  inHand: CheckPhrases | undefined,
): SaidFigure | undefined {
  const isAmperes = inHand?.check.form.kind === 'reading' && inHand.check.form.unit === 'A';
  const isInWords = before.inWords === true && figure.inWords === true;
  const isNext = before.end === figure.start && before.unit === undefined;
  const isWhole = before.decimals === 0 && figure.decimals === 0;
  if (!isAmperes || !isInWords || !isNext || !isWhole) return undefined;
  if (before.value < 1 || before.value > 9 || figure.value < 10 || figure.value > 99)
    return undefined;
  const value = before.value * 100 + figure.value;
  return { ...figure, value, digits: String(value), start: before.start };
}

/** "and a half" behind the unit: "three years and a half". */
function fractionBehind(
  tokens: readonly Token[],
  at: number,
  { words }: Lexicon,
): { readonly value: number; readonly end: number } | undefined {
  const [join, part] = tokens.slice(at, at + 2);
  const isJoined = join?.kind === 'word' && words.joins.includes(join.text);
  return isJoined && isFraction(part) ? { value: part.value, end: at + 2 } : undefined;
}

function isFraction(token: Token | undefined): token is Extract<Token, { kind: 'number' }> {
  return token?.kind === 'number' && token.value > 0 && token.value < 1;
}

/** True for the half of "three years and a half", which is no figure of its own. */
function isPartOfAnother(tokens: readonly Token[], at: number, { words }: Lexicon): boolean {
  if (!isFraction(tokens[at])) return false;
  const [unit, join] = tokens.slice(Math.max(at - 2, 0), at);
  if (join?.kind !== 'word') return false;
  if (unit?.kind === 'number') return words.joins.includes(join.text);
  return (
    unit?.kind === 'word' && words.joins.includes(join.text) && tokens[at - 3]?.kind === 'number'
  );
}

/** True for the nought of "5 below zero". */
function isOfBelow(tokens: readonly Token[], at: number, lexicon: Lexicon): boolean {
  const [figure] = tokens.slice(at, at + 1);
  if (figure?.kind !== 'number' || figure.value !== 0) return false;
  return [at - 1, at - 2, at - 3].some((from) => from + minusBehind(tokens, from, lexicon) > at);
}

/** How many words behind a figure put it below zero: "8 degrees below", "8 bajo cero". */
function minusBehind(tokens: readonly Token[], at: number, { words }: Lexicon): number {
  const said = (words.below ?? []).map((phrase) => phrase.split(' '));
  const found = said.find((phrase) =>
    phrase.every((word, index) => {
      const token = tokens[at + index];
      if (token?.kind === 'number') return token.value === 0 && words.cardinals[word] === 0;
      return token?.kind === 'word' && token.text === word;
    }),
  );
  return found?.length ?? 0;
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
  { lexicon }: LineContext,
): boolean {
  const { vague, point } = lexicon.words;
  return figures.some(({ end, decimals }) => {
    const from = tokens[end]?.kind === 'mark' ? end + 1 : end;
    const behind = textOf(tokens.slice(from, from + mostVagueWords));
    const isOpen = decimals === 0 && from === tokens.length - 1 && point.includes(behind);
    return isOpen || vague.some((said) => behind === said || behind.startsWith(`${said} `));
  });
}

const mostVagueWords = 4;

/** True where the only figure is denied: "not 12.4". */
export function isDeniedAlone(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  const [figure, more] = figures;
  const before = figure === undefined ? undefined : tokens[figure.start - 1];
  return (
    more === undefined && before?.kind === 'word' && lexicon.words.negators.includes(before.text)
  );
}

/** "less than 12": no figure, only a bound; "just under 12" is close to it. */
export function hasBoundOnly(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  const before = figures.map(({ start }) => textOf(tokens.slice(Math.max(start - 4, 0), start)));
  const { boundsOnly, nearly } = lexicon.words;
  const isBound = (said: string, word: string): boolean => {
    if (said === word) return true;
    if (!said.endsWith(` ${word}`)) return false;
    const rest = said.slice(0, -word.length - 1);
    return !nearly.some((one) => rest === one || rest.endsWith(` ${one}`));
  };
  return before.some((said) => boundsOnly.some((word) => isBound(said, word)));
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
