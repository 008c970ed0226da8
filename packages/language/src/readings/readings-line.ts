import {
  type LineContext,
  type SaidFigure,
  findFigures,
  isDeniedAlone,
  isVague,
  speaksOfEarlier,
  withoutDenied,
} from './line-figures.ts';
import { hasBoundOnly } from './bounds.ts';
import { betweenTwo } from './between-two.ts';
import { cutPieces, isKnownBeside, namedChecks, strangeUnit } from './line-pieces.ts';
import { type LineResult, mostLost, placePieces, unclear, unitOf } from './line-placing.ts';
import { judgeFigure } from '@keyturn/core';
import { leftOpen, withoutOthers, withoutThings } from './one-of-figures.ts';
import { readCells } from './of-cells.ts';
import { readOfTwo } from './of-two.ts';
import { readAtRestAndTurning, withoutBeside } from './told-beside.ts';
import type { SaidReading } from './doubtful.ts';
import { endsWithPhrase, hasPhrase, hasWord, phraseAt } from './word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import type { CheckPhrases } from '../understand/lexicon.ts';
import { durations } from '../numbers/unit.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import type { Token } from '../typed/token.ts';
import { isNear } from '../typed/typing-mistake.ts';

/**
 * Reads a line of one or several readings. Each figure is bound to the check that its words name,
 * else to the only check that its unit fits, else, for the first bare figure, to the check in hand.
 * A line of which anything cannot be placed is taken not at all.
 */
export function readLine(typed: readonly Token[], context: LineContext): LineResult {
  const likely = typed.map((token) => (token.kind === 'malformed' && token.likely) || token);
  const line = readFigureTokens(likely, context);
  if (line.type === 'doubtful' || likely.every((token, at) => token === typed[at])) return line;
  // "12.l" is asked back as 12.1.
  return line.type === 'readings'
    ? { type: 'doubtful', readings: line.readings }
    : unclear('not-a-number', typed);
}

function readFigureTokens(typed: readonly Token[], context: LineContext): LineResult {
  const spelled = inMillivolts(
    withTenths(spellNumbers(betweenTwo(typed, context.lexicon), context.lexicon.numbers), context),
    context,
  );
  const isWords = spelled.every(({ kind }) => kind === 'word' || kind === 'mark');
  if (isWords) return { type: 'none' };
  const meant = rightWayRound(spelled, context);
  const line = readLoaded(withoutRest(meant ?? spelled, context), context);
  const isDoubtful = meant !== undefined && line.type === 'readings';
  return isDoubtful ? { type: 'doubtful', readings: line.readings } : line;
}

/** Of a loss "six of ten" is so many tenths of a volt. */
function withTenths(tokens: readonly Token[], { inHand, lexicon }: LineContext): readonly Token[] {
  const form = inHand?.check.form;
  const { outOf } = lexicon.words.spelling ?? {};
  if (outOf === undefined || form?.kind !== 'reading' || form.range !== 'drop') return tokens;
  const isShare = (at: number): boolean => {
    const [part, of, ten] = tokens.slice(Math.max(at, 0), at + 3);
    const isOf = of?.kind === 'word' && of.text === outOf;
    return isOf && part?.kind === 'number' && /^[1-9]$/u.test(part.digits) && isTen(ten);
  };
  return tokens.flatMap((token, at): readonly Token[] => {
    if (isShare(at) && token.kind === 'number') {
      const value = token.value / 10;
      return [{ kind: 'number', value, decimals: 1, digits: String(value) }];
    }
    return isShare(at - 1) || isShare(at - 2) ? [] : [token];
  });
}

/** "80 mV the worse one, the other was 20": what is told beside millivolts is no volts. */
function inMillivolts(
  tokens: readonly Token[],
  { inHand, lexicon }: LineContext,
): readonly Token[] {
  const form = inHand?.check.form;
  if (form?.kind !== 'reading' || form.range !== 'drop') return tokens;
  const unitAt = (at: number): string | undefined => lexicon.readUnit(tokens, at + 1)?.code;
  const isInMilli = tokens.some(({ kind }, at) => kind === 'number' && unitAt(at) === 'mV');
  return tokens.flatMap((token, at): readonly Token[] =>
    isInMilli && token.kind === 'number' && token.value > mostLost && unitAt(at) === undefined
      ? [token, { kind: 'word', text: 'mv' }]
      : [token],
  );
}

function isTen(token: Token | undefined): boolean {
  return token?.kind === 'number' && token.value === 10;
}

/** A line, with the load under which a voltage was read. */
function readLoaded(tokens: readonly Token[], context: LineContext): LineResult {
  const load = loadIn(tokens, context);
  if (load === undefined) return readKept(tokens, context);
  const without = tokens.filter((_, index) => index < load.start || index >= load.end);
  const line = readKept(without, context);
  if (line.type !== 'readings') return line;
  const { value, unit = 'A' } = load;
  const { checks } = context.lexicon;
  const readings = line.readings.map((reading) => {
    const check = checks.get(reading.check);
    if (check === undefined || !isLoaded(check)) return reading;
    return { ...reading, value: { ...reading.value, under: { value, unit } } };
  });
  return { ...line, readings };
}

/** What figures below nought are likely to be where the meter's leads may have been swapped. */
function rightWayRound(
  tokens: readonly Token[],
  { inHand, lexicon }: LineContext,
): readonly Token[] | undefined {
  const isBelow = tokens.some((token) => token.kind === 'number' && token.value < 0);
  if (!isBelow || (inHand !== undefined && unitOf(inHand) === 'Cel')) return undefined;
  if (!hasWord(tokens, figureWordsOf(lexicon.words).swapped)) return undefined;
  return tokens.map((token) =>
    token.kind === 'number' ? { ...token, value: Math.abs(token.value) } : token,
  );
}

/** So many tokens name what was waited for: "three hours of rest". */
const mostOfRest = 3;

/**
 * The tokens without how long was waited, at a check that waits: "12.7 after three hours of rest"
 * names no other reading there.
 */
function withoutRest(tokens: readonly Token[], context: LineContext): readonly Token[] {
  const { inHand, lexicon } = context;
  if (inHand?.check.waitMinutes === undefined) return tokens;
  const { after } = figureWordsOf(lexicon.words);
  const isTime = (at: number): boolean =>
    tokens[at]?.kind === 'number' &&
    durations.includes(lexicon.readUnit(tokens, at + 1)?.code ?? '');
  const time = tokens.findIndex((_, at) => isTime(at) && endsWithPhrase(tokens, at, after));
  if (time < 0) return withoutNight(tokens, after);
  const from = time + 1 + (lexicon.readUnit(tokens, time + 1)?.length ?? 0);
  const behind = tokens.slice(from, from + mostOfRest);
  const end = behind.findIndex(({ kind }) => kind !== 'word');
  const length = end < 0 ? behind.length : end;
  return [...tokens.slice(0, time), comma, ...tokens.slice(from + length)];
}

const comma: Token = { kind: 'mark', text: ',' };

/** The tokens without what was over before, where it has no figure: "12.8 after the night at rest". */
function withoutNight(tokens: readonly Token[], after: readonly string[]): readonly Token[] {
  const isFigure = ({ kind }: Token): boolean => kind === 'number';
  const first = tokens.findIndex(isFigure);
  const start = tokens.findIndex((_, at) => at > first && phraseAt(tokens, at, after) > 0);
  if (first < 0 || start < 0) return tokens;
  const length = tokens.slice(start).findIndex(({ kind }) => kind === 'mark');
  const end = length < 0 ? tokens.length : start + length;
  const isPlain = !tokens.slice(start, end).some(isFigure);
  return isPlain ? [...tokens.slice(0, start), ...tokens.slice(end)] : tokens;
}

function readKept(given: readonly Token[], context: LineContext): LineResult {
  const typed = withoutThings(given, context);
  if (typed.some(({ kind }) => kind === 'malformed')) return unclear('not-a-number', typed);
  const cells = readCells(typed, context);
  if (cells !== undefined) return { type: 'readings', readings: [cells], earlier: undefined };
  if (speaksOfOther(typed, context)) return unclear('unknown-unit', typed);
  const pair = readAtRestAndTurning(typed, context);
  if (pair !== undefined) return { type: 'readings', readings: pair, earlier: undefined };
  const open = leftOpen(typed, context);
  if (open !== undefined) return readOwn(open, { context, isDenied: false });
  const ofTwo = readOfTwo(typed, context);
  if (ofTwo !== undefined)
    return 'type' in ofTwo ? ofTwo : { type: 'readings', readings: [ofTwo], earlier: undefined };
  const { kept: own, isDenied } = withoutDenied(withoutOthers(typed, context), context);
  const { kept, told } = withoutBeside(own, context);
  const line = readOwn(kept, { context, isDenied });
  if (line.type !== 'readings') return line;
  const isToldTwice = ({ check }: SaidReading): boolean =>
    line.readings.some((one) => one.check === check);
  return { ...line, readings: [...line.readings, ...told.filter((one) => !isToldTwice(one))] };
}

/** The line without what is told beside. */
function readOwn(
  kept: readonly Token[],
  { context, isDenied }: { readonly context: LineContext; readonly isDenied: boolean },
): LineResult {
  const figures = findFigures(kept, context);
  if (figures.length === 0) return { type: 'none' };
  if (figures.length > mostFigures) return unclear('two-numbers', kept.slice(0, shownTokens));
  if (figures.every((figure) => isOfClock(figure, kept, context)))
    return unclear('not-a-number', kept);
  if (hasShare(kept, figures, context)) return unclear('not-exact', kept);
  if (hasBoundOnly(kept, figures, context)) return unclear('not-exact', kept);
  if (isVague(kept, figures, context) || hasMore(kept, figures, context))
    return unclear('not-exact', kept);
  if (isDeniedAlone(kept, figures, context)) return unclear('not-exact', kept);
  const pieces = cutPieces(kept, figures, context);
  const strange = isPlainReading(figures, kept, context)
    ? []
    : pieces.flatMap((piece) => strangeUnit(kept, piece, context));
  if (strange.length > 0) {
    const count = figures.length;
    return { type: 'unclear', code: 'unknown-unit', pieces: strange, names: [], figures: count };
  }
  const was = speaksOfEarlier(kept, figures, context) ? 'was' : undefined;
  return placePieces(pieces, { kept, context, earlier: isDenied ? 'denied' : was });
}

/** True where the figures are those of another instrument: a hydrometer in the acid. */
function speaksOfOther(tokens: readonly Token[], { inHand, lexicon }: LineContext): boolean {
  const form = inHand?.check.form;
  if (form?.kind === 'reading' && densities.includes(form.range)) return false;
  return (
    tokens.some(({ kind }) => kind === 'number') &&
    hasPhrase(tokens, figureWordsOf(lexicon.words).otherMeters)
  );
}

const densities: readonly string[] = ['density', 'density-difference'];

/**
 * The amperes of a load beside the voltage that is read under it, which are no reading of their own:
 * "9.2 V at 270 A load".
 */
function loadIn(tokens: readonly Token[], context: LineContext): SaidFigure | undefined {
  const figures = findFigures(tokens, context);
  const { inHand } = context;
  if (figures.length < 2) return undefined;
  const spoken = [...namedChecks(tokens, context), ...(inHand === undefined ? [] : [inHand])];
  if (!spoken.some(isLoaded)) return undefined;
  const isOfOther = (words: readonly Token[]): boolean =>
    namedChecks(words, context).some(({ check }) => unitOf({ check }) === 'A');
  const [load] = cutPieces(tokens, figures, context).flatMap((piece) =>
    isOfOther(piece.words) ? [] : piece.figures.filter(isAmperes),
  );
  return load;
}

/** True for a voltage that is read under load. */
function isLoaded({ check }: CheckPhrases): boolean {
  return unitOf({ check }) === 'V' && check.does.includes('load');
}

/** No battery has so many volts under load: a figure without a unit above it is one of amperes. */
const mostVolts = 36;

function isAmperes({ unit, value }: SaidFigure): boolean {
  return unit === undefined ? value > mostVolts : unit === 'A';
}

/**
 * True where the only figure has decimals, or is one of a frost, and can be the reading in hand,
 * whatever is said behind it. With letters written on to it, or with nothing behind it but a letter or
 * two, they would have to be its unit: "12.4x", "12.4 kg".
 */
function isPlainReading(
  [figure, more]: readonly SaidFigure[],
  tokens: readonly Token[],
  { inHand, nominal, unitHere, lexicon }: LineContext,
): boolean {
  const form = inHand?.check.form;
  if (figure === undefined || more !== undefined || form?.kind !== 'reading') return false;
  const names = lexicon.words.units[form.unit] ?? [];
  if (hasLetters(figure, tokens, names) || isBeforeSign(figure, tokens)) return false;
  // "1.42 kV", "0.35 kA".
  const { thousand } = figureWordsOf(lexicon.words);
  if (figure.unit === undefined && phraseAt(tokens, figure.end, thousand) > 0) return false;
  const value = { value: figure.value, unit: unitHere(form.unit) };
  const isFrost = form.unit === 'Cel' && figure.value < 0;
  return (figure.decimals > 0 || isFrost) && judgeFigure(value, form, nominal).type === 'plausible';
}

/** True where letters are written on to a figure, before it or behind it, that are no mistyped unit of it. */
function hasLetters(
  { start, end }: SaidFigure,
  tokens: readonly Token[],
  names: readonly string[],
): boolean {
  const [first, behind] = [tokens[start], tokens[end]];
  if (first?.kind === 'number' && first.isWrittenOn === true) return true;
  if (behind?.kind !== 'word' || behind.isWrittenOn !== true) return false;
  return !names.some((name) => isNear(behind.text, name));
}

/** True where behind the figure stands nothing but a word that is no longer than the sign of a unit. */
function isBeforeSign({ end }: SaidFigure, tokens: readonly Token[]): boolean {
  const [sign, more] = tokens.slice(end);
  const isSign = sign?.kind === 'word' && sign.text.length <= longestSign;
  return isSign && sign.text !== directCurrent && more === undefined;
}

const longestSign = 2;

/** What the display of a meter shows beside the figure, in every language. */
const directCurrent = 'dc';

/** True for the time of day: "son las doce y media". */
function isOfClock(
  { start, unit }: SaidFigure,
  tokens: readonly Token[],
  { lexicon }: LineContext,
): boolean {
  const { clock, present, display } = figureWordsOf(lexicon.words);
  if (endsWithPhrase(tokens, start, display)) return false;
  const before = tokens[start - 1];
  const isNow = before?.kind === 'word' && present.includes(before.text);
  return unit === undefined && endsWithPhrase(tokens, isNow ? start - 1 : start, clock);
}

/** So many words behind "and" may say how much more it is. */
const mostOfMore = 3;

/** "Nine and odd", "dwanaście i ileś": whole volts and something that is no number known. */
function hasMore(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { inHand, lexicon }: LineContext,
): boolean {
  if (inHand === undefined || unitOf(inHand) !== 'V') return false;
  const { joins, articles, fillers, cardinals } = lexicon.words;
  // "And a good bit", "und ein gutes Stück", "y un buen trozo".
  const isOne = (token: Token | undefined): boolean =>
    token?.kind === 'word' &&
    (articles.includes(token.text) ||
      cardinals[token.text] === 1 ||
      Object.keys(cardinals).some((said) => said.startsWith(`${token.text} `)));
  return figures.some(({ start, end, decimals, unit }) => {
    const behind = tokens.slice(end);
    const length = behind.findIndex(({ kind }) => kind === 'mark');
    const [join, ...rest] = length < 0 ? behind : behind.slice(0, length);
    const isAnd = join?.kind === 'word' && joins.includes(join.text);
    if (!isAnd || decimals > 0 || tokens[start]?.kind !== 'number') return false;
    const more = rest.filter(
      (token) => token.kind !== 'word' || ![...articles, ...fillers].includes(token.text),
    );
    const isUnknown = (token: Token): boolean =>
      token.kind === 'word' && !isKnownBeside(token.text, lexicon);
    return (
      more.length > 0 &&
      rest.length <= mostOfMore &&
      // "Six volts and flickers" tells of no more of them.
      ((unit === undefined && more.every(isUnknown)) || (isOne(rest[0]) && more.some(isUnknown)))
    );
  });
}

/** "Eight of ten": no figure that can be taken as it stands. */
function hasShare(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  const { outOf } = lexicon.words.spelling ?? {};
  return figures.some(({ end }) => {
    const [word, ten] = tokens.slice(end, end + 2);
    return word?.kind === 'word' && word.text === outOf && ten?.kind === 'number';
  });
}

/** More figures than this on one line are no readings. */
const mostFigures = 12;

/** So many tokens of a line that is too long are said back. */
const shownTokens = 12;
