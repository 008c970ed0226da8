import { hasPhrase, hasStem, textOf } from './word-run.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { type Earlier, type LineContext, type SaidFigure, isCount } from './line-figures.ts';
import { type Doubtful, judgeReading, meantByFigures, type SaidReading } from './doubtful.ts';
import { type Piece, namedChecks } from './line-pieces.ts';
import type { Token } from '../typed/token.ts';
import type { UnclearCode } from '../understand/understood.ts';
import { isAlike } from '../numbers/unit.ts';
import { figureWordsOf } from '../words/words.ts';

/** What a line of readings means. */
export type LineResult =
  | {
      readonly type: 'readings';
      readonly readings: readonly SaidReading[];
      /** How the line speaks of an earlier answer: "rest was 12.1", "not 12.5, 12.1". */
      readonly earlier: Earlier | undefined;
    }
  | {
      readonly type: 'unclear';
      readonly code: UnclearCode;
      readonly pieces: readonly string[];
      /** The names of the readings that the pieces may belong to, and how many figures there are. */
      readonly names: readonly string[];
      readonly figures: number;
    }
  | Doubtful
  /** There is no figure in it. */
  | { readonly type: 'none' };

/** A line of which nothing is taken. */
export function unclear(code: UnclearCode, tokens: readonly Token[]): LineResult {
  const figures = tokens.filter(({ kind }) => kind === 'number').length;
  return { type: 'unclear', code, pieces: [textOf(tokens)], names: [], figures };
}

/** The unit of a reading; empty for what is answered in words. */
export function unitOf({ check }: Pick<CheckPhrases, 'check'>): string {
  return check.form.kind === 'reading' ? check.form.unit : '';
}

interface Placing {
  readonly kept: readonly Token[];
  readonly context: LineContext;
  readonly earlier: Earlier | undefined;
}

/** Binds every piece to its check; where one cannot be placed nothing is taken. */
export function placePieces(
  pieces: readonly Piece[],
  { kept, context, earlier }: Placing,
): LineResult {
  if (pieces.some(({ figures }) => figures.length > 1))
    return severalFigures(pieces, kept, context);
  const readings: SaidReading[] = [];
  const doubtful: Doubtful[] = [];
  const taken: string[] = [];
  const lost: string[] = [];
  const candidates: CheckPhrases[] = [];
  const named = pieces.map((piece) =>
    namedChecks(pieces.length > 1 ? piece.words : wordsNaming(piece, kept, context), context),
  );
  pieces.forEach(({ figures, words }, index) => {
    const [figure] = figures;
    if (figure === undefined) return;
    const check = placeFigure(figure, { index, named, taken, words }, context);
    if (check === undefined) {
      lost.push(textOf([...kept.slice(figure.start, figure.end), ...words]));
      candidates.push(...readingsOf(figure, context));
    } else {
      const judged = judgeReading(check, figure, context);
      if ('type' in judged) doubtful.push(judged);
      else readings.push(judged);
      taken.push(check.id);
    }
  });
  // Figures that could all be the reading in hand, with nothing to tell them apart.
  const isOfOne = pieces.every(
    ({ figures: [figure] }) => figure !== undefined && isInHand(figure, context),
  );
  if (lost.length > 0 && isOfOne && named.every((those) => those.length === 0)) {
    return severalFigures(pieces, kept, context);
  }
  if (lost.length > 0) {
    const names = [...new Set(candidates.map(({ name }) => name))];
    return { type: 'unclear', code: 'which-check', pieces: lost, names, figures: pieces.length };
  }
  const isTwice = new Set(taken).size < taken.length;
  const [first] = doubtful;
  if (first !== undefined) return first;
  return isTwice ? unclear('two-numbers', kept) : { type: 'readings', readings, earlier };
}

/**
 * The words by which the only figure may be of another check. Where something is done for the reading
 * in hand, what is told in a clause behind it is told beside: "4.5, and the solenoid only twitches".
 */
function wordsNaming(
  { figures: [figure], words }: Piece,
  kept: readonly Token[],
  context: LineContext,
): readonly Token[] {
  const { inHand, lexicon } = context;
  if (figure === undefined) return words;
  const { clauseBreaks } = lexicon.words;
  const isBreak = (token: Token): boolean =>
    token.kind === 'mark' || (token.kind === 'word' && clauseBreaks.includes(token.text));
  const before = kept.slice(0, figure.start);
  const behind = kept.slice(figure.end);
  const length = behind.findIndex(isBreak);
  const next = length < 0 ? behind : behind.slice(0, length);
  // "School bus 9, diesel, the coil lamp is dark": a bare number needs its name beside it.
  if (inHand === undefined)
    return figure.unit === undefined && figure.decimals === 0
      ? [...before.slice(before.findLastIndex(isBreak) + 1), ...next]
      : words;
  if (inHand.check.does.length === 0 || !isInHand(figure, context)) return words;
  return 'type' in judgeReading(inHand, figure, context) ? words : [...before, ...next];
}

/** Several figures for one reading: what they may mean, or else that there are too many. */
function severalFigures(
  pieces: readonly Piece[],
  kept: readonly Token[],
  context: LineContext,
): LineResult {
  const figures = pieces.flatMap((piece) => piece.figures);
  const [check, more] = [
    ...new Set(pieces.flatMap(({ words }) => namedChecks(words, context))),
    ...(context.inHand === undefined ? [] : [context.inHand]),
  ];
  const isOfOne = check !== undefined && (more === undefined || more === check);
  if (!isOfOne || figures.length > 3) return unclear('two-numbers', kept);
  const [first, second] = figures;
  const between = kept.slice(first?.end, second?.start);
  const isEither = hasPhrase(between, context.lexicon.words.alternatives ?? []);
  const readings = meantByFigures(check, figures, { ...context, isEither });
  return readings.length === 0 ? unclear('two-numbers', kept) : { type: 'doubtful', readings };
}

function isInHand({ unit }: SaidFigure, { inHand }: LineContext): boolean {
  return inHand !== undefined && (unit === undefined || isAlike(unit, unitOf(inHand)));
}

interface Line {
  readonly index: number;
  readonly named: readonly (readonly CheckPhrases[])[];
  /** The words about the figure. */
  readonly words: readonly Token[];
  /** The checks that have their figure already. */
  readonly taken: readonly string[];
}

function placeFigure(
  figure: SaidFigure,
  line: Line,
  context: LineContext,
): CheckPhrases | undefined {
  const { inHand } = context;
  const { unit } = figure;
  // "Degrees" are of a temperature, or of what is asked.
  const fitsUnit = (entry: CheckPhrases): boolean =>
    figure.isDegrees === true
      ? entry === inHand || unitOf(entry) === 'Cel'
      : unit === undefined || isAlike(unit, unitOf(entry));
  // An age has its unit: "the battery, 12.4" tells none; nor is "12.4 outside" a temperature.
  const isOfUnit = (entry: CheckPhrases): boolean =>
    isAge(entry) || (unitOf(entry) === 'Cel' && figure.decimals > 0);
  // "Clamps tight, the meter shows 12.7" tells no loss.
  const isOfMore = (entry: CheckPhrases): boolean =>
    inHand === undefined && isLoss(entry) && isTooMuchLost(figure);
  const spoken = line.named[line.index] ?? [];
  // "Two batteries, 0.6 apart" tells no years of them either.
  const isUnlike = (entry: CheckPhrases): boolean =>
    isOfUnit(entry) && (inHand !== undefined || figure.decimals > 0);
  const own = (spoken.every(isOfMore) ? [] : spoken).filter(
    (entry) => entry === inHand || unit !== undefined || !isUnlike(entry),
  );
  // "There are two clamps" counts them.
  if (inHand === undefined && isCount(figure)) return undefined;
  const named = own.filter(fitsUnit);
  const [first] = named;
  if (first !== undefined && !(isAge(first) && first !== inHand && isOfStanding(line, context))) {
    if (inHand !== undefined && named.includes(inHand)) return inHand;
    // "0.15 with the helper cranking" is no voltage of the battery.
    if (isMomentOnly(figure, { named, line }, context)) return inHand;
    return named.length === 1 ? first : only(preferred(named, line, context));
  }
  if (own.length > 0 && unit === undefined) return undefined;
  const inHandIsFree = inHand !== undefined && !line.taken.includes(inHand.id);
  if (unit === undefined) return line.index === 0 && inHandIsFree ? inHand : undefined;
  if (inHandIsFree && fitsUnit(inHand)) return inHand;
  const fitting = readingsOf(figure, context).filter(
    (entry) =>
      !line.taken.includes(entry.id) &&
      (!isAge(entry) ||
        ((isSpokenOf(entry, line, context) || line.named.some((those) => those.includes(entry))) &&
          !isOfStanding(line, context))),
  );
  const isOnly = line.named.length === 1;
  // A wrong unit for the only reading meant is for the case to refuse, which says what would fit.
  if (fitting.length === 0 && isOnly && !readingsOf(figure, context).some(isAge)) return inHand;
  // A single figure in another unit is no answer to another question, unless the kit says so.
  if (inHand !== undefined && isOnly && !fitting.some((entry) => isInKit(entry, context)))
    return undefined;
  // An ampere is printed on a fuse as well: with nothing named it is no reading unasked.
  const isTold = inHand !== undefined || line.named.some((those) => those.length > 0);
  return only(fitting) ?? (isTold ? only(preferred(fitting, line, context)) : undefined);
}

/** V. What is told of a loss unasked is less, where another voltage is in hand. */
export const mostLost = 6;

function isLoss({ check: { form } }: CheckPhrases): boolean {
  return form.kind === 'reading' && form.range === 'drop';
}

function isDifference({ check: { form } }: CheckPhrases): boolean {
  return form.kind === 'reading' && form.expect === 'battery.halves';
}

/** So much is lost nowhere. */
export function isTooMuchLost({ value, unit }: SaidFigure): boolean {
  return unit !== 'mV' && value > mostLost;
}

/** True where the figure can be the reading in hand, and none of those that the words name. */
function isMomentOnly(
  figure: SaidFigure,
  { named, line }: { readonly named: readonly CheckPhrases[]; readonly line: Line },
  context: LineContext,
): boolean {
  const { inHand } = context;
  if (inHand === undefined || line.taken.includes(inHand.id) || !isInHand(figure, context))
    return false;
  // "12.1 between the socket and ground" is no loss on the ground side, nor "10.9 between the two
  // studs" what two batteries differ by.
  const isTooMuch = (entry: CheckPhrases): boolean =>
    isTooMuchLost(figure) && isLoss(entry) && (!isLoss(inHand) || isDifference(entry));
  const isReading = (entry: CheckPhrases): boolean =>
    !('type' in judgeReading(entry, figure, context)) && !isTooMuch(entry);
  return isReading(inHand) && !named.some(isReading);
}

/** The readings that a figure may be by its unit. */
function readingsOf({ unit }: SaidFigure, { lexicon }: LineContext): CheckPhrases[] {
  return [...lexicon.checks.values()].filter(
    (entry) =>
      entry.check.form.kind === 'reading' && (unit === undefined || isAlike(unit, unitOf(entry))),
  );
}

/** True where the kit is known to have what a reading needs. */
function isInKit({ check }: CheckPhrases, { kit }: Pick<LineContext, 'kit'>): boolean {
  return kit.length > 0 && check.needs.every((any) => any.some((one) => kit.includes(one)));
}

/** An age must be named: people tell how long they waited and how long it stood. */
function isAge(entry: CheckPhrases): boolean {
  return unitOf(entry) === 'a';
}

/** True where the words speak of what has the age: the battery. */
export function isSpokenOf(
  { topic }: CheckPhrases,
  { words }: Pick<Line, 'words'>,
  { lexicon }: LineContext,
): boolean {
  const { battery } = figureWordsOf(lexicon.words);
  return (
    lexicon.reader.fromTokens(words).some((term) => topic.has(term)) || hasPhrase(words, battery)
  );
}

/** True where the words say how long something stood, which is no age. */
function isOfStanding({ words }: Pick<Line, 'words'>, { lexicon }: LineContext): boolean {
  return hasStem(words, figureWordsOf(lexicon.words).standing);
}

function only(entries: readonly CheckPhrases[]): CheckPhrases | undefined {
  return entries.length === 1 ? entries[0] : undefined;
}

/**
 * Of several readings that would fit: those that the kit allows; of these the ones that go by the
 * unit's own name ("amps"); of these the ones whose names share a word with what else is named on
 * the line ("9.8 crank, 170 A" is the cranking current).
 */
function preferred(
  entries: readonly CheckPhrases[],
  { named }: Line,
  { kit, lexicon }: LineContext,
): readonly CheckPhrases[] {
  const isUnitName = ({ said, check }: CheckPhrases): boolean =>
    said.some((tokens) => {
      const unit = lexicon.readUnit(tokens, 0);
      return unit?.length === tokens.length && isAlike(unit.code, unitOf({ check }));
    });
  const shared = new Set(named.flatMap((those) => those.flatMap(({ names }) => names.flat())));
  const narrowings: readonly ((entry: CheckPhrases) => boolean)[] = [
    (entry) => kit.length === 0 || isInKit(entry, { kit }),
    isUnitName,
    ({ names }) => names.flat().some((term) => shared.has(term) && !isGeneral(term, lexicon)),
  ];
  return narrowings.reduce<readonly CheckPhrases[]>((pool, keep) => {
    const kept = pool.filter(keep);
    return kept.length > 0 ? kept : pool;
  }, entries);
}

/** Words in the names of many readings tell nothing apart. */
function isGeneral(term: string, { checks }: Lexicon): boolean {
  const holders = [...checks.values()].filter(
    ({ check, names }) => check.form.kind === 'reading' && names.flat().includes(term),
  );
  return holders.length > mostHolders;
}

const mostHolders = 3;
