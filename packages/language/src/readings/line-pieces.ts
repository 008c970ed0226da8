import { findPhrase, hear, type Heard, partOf } from '../typed/heard.ts';
import { onceFor, onceWith } from '../once.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { type LineContext, type SaidFigure } from './line-figures.ts';
import type { Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import { endsWithPhrase, hasPhrase, textOf } from './word-run.ts';

/** One figure with the words about it. */
export interface Piece {
  readonly figures: readonly SaidFigure[];
  readonly words: readonly Token[];
}

/**
 * Cuts at commas and line ends where each part has one figure; a part with several is cut figure
 * by figure, with the words before them or after them, as the part begins.
 */
export function cutPieces(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  context: LineContext,
): Piece[] {
  const parts: { start: number; end: number }[] = [];
  let start = 0;
  tokens.forEach((token, index) => {
    const isInside = figures.some((figure) => index >= figure.start && index < figure.end);
    if (token.kind !== 'mark' || isInside || !separators.includes(token.text)) return;
    parts.push({ start, end: index });
    start = index + 1;
  });
  parts.push({ start, end: tokens.length });
  let pending: Token[] = [];
  const pieces: Piece[] = [];
  for (const part of parts) {
    const inside = figures.filter((figure) => figure.start >= part.start && figure.end <= part.end);
    if (inside.length === 0) pending.push(...tokens.slice(part.start, part.end));
    else {
      pieces.push(...cutPart(tokens, { ...part, inside, pending }, context));
      pending = [];
    }
  }
  const last = pieces.pop();
  if (last !== undefined) {
    // "Rest 11.3, when starting just a click": what is behind a named figure is told of another thing.
    const isNamed = namedChecks(last.words, context).length > 0;
    pieces.push(isNamed ? last : { ...last, words: [...last.words, ...pending] });
  }
  return pieces;
}

const separators = ',;\n.!?:|';

interface Part {
  readonly start: number;
  readonly end: number;
  readonly inside: readonly SaidFigure[];
  /** Words of parts before that had no figure. */
  readonly pending: readonly Token[];
}

function cutPart(tokens: readonly Token[], part: Part, context: LineContext): Piece[] {
  const { start, end, inside, pending } = part;
  const [first] = inside;
  const wordsOf = (from: number, to: number): Token[] =>
    tokens
      .slice(from, to)
      .filter(
        (_, index) => !inside.some((one) => from + index >= one.start && from + index < one.end),
      );
  if (inside.length === 1 || first === undefined) {
    return [{ figures: inside, words: [...pending, ...wordsOf(start, end)] }];
  }
  const isNamed = (words: readonly Token[]): boolean => namedChecks(words, context).length > 0;
  const leads = [...pending, ...wordsOf(start, first.start)];
  const isBefore = isNamed(leads);
  const cut = inside.map((figure, index): Piece => {
    const from = isBefore ? (inside[index - 1]?.end ?? start) : figure.end;
    const to = isBefore ? figure.start : (inside[index + 1]?.start ?? end);
    const own = wordsOf(from, to);
    return { figures: [figure], words: index === 0 && isBefore ? [...pending, ...own] : own };
  });
  // Figures that nothing tells apart are several figures for one reading.
  const isApart = cut.every(
    ({ words, figures }) => isNamed(words) || figures[0]?.unit !== undefined,
  );
  return isApart ? cut : [{ figures: inside, words: [...pending, ...wordsOf(start, end)] }];
}

/**
 * The words right behind a figure that ought to be its unit and are not known at all, and letters
 * that are written on to the beginning of a figure and are no word: "x12".
 */
export function strangeUnit(
  tokens: readonly Token[],
  { figures }: Piece,
  context: LineContext,
): string[] {
  return figures.flatMap((figure) => {
    const next = tokens[figure.end];
    if (isBehindLetters(tokens, figure, context))
      return [textOf(tokens.slice(figure.start - 1, figure.end))];
    if (figure.unit !== undefined || figure.end > figure.start + 1 || next?.kind !== 'word')
      return [];
    return isKnownBeside(next.text, context.lexicon)
      ? []
      : [textOf(tokens.slice(figure.start, figure.end + 1))];
  });
}

function isBehindLetters(
  tokens: readonly Token[],
  { start }: SaidFigure,
  { inHand, lexicon }: LineContext,
): boolean {
  const [before, first] = tokens.slice(Math.max(start - 1, 0), start + 1);
  const isWrittenOn = first?.kind === 'number' && first.isWrittenOn === true;
  if (inHand === undefined || !isWrittenOn || before?.kind !== 'word') return false;
  const { words, readUnit } = lexicon;
  const small = [...words.articles, ...words.joins, ...(words.spelling?.beforeNumbers ?? [])];
  return (
    !small.includes(before.text) &&
    readUnit(tokens, start - 1) === undefined &&
    !isKnownBeside(before.text, lexicon)
  );
}

/** True for a word that may stand beside a figure and is no unit. */
export function isKnownBeside(word: string, { words, reader, checks }: Lexicon): boolean {
  const { besideFigures, fillers, negators, clauseBreaks, boundsOnly, earlier, vague } = words;
  const { label, expected, past, present } = figureWordsOf(words);
  const small = [besideFigures, fillers, negators, clauseBreaks, boundsOnly, earlier, vague];
  const known = [...small, label, expected, past, present];
  if (known.some((list) => list.includes(word))) return true;
  const [term = ''] = reader.literally(reader.unjoined(word));
  return [...checks.values()].some(
    ({ check, names }) =>
      check.form.kind === 'reading' && names.some((name) => name.includes(term)),
  );
}

/**
 * The readings that these words name, those with the longest name only. What is denied is not named
 * ("no load"), and neither is another reading than the one in hand by a word that is its own as well,
 * or by a unit that stands apart from the figure: "a year old, it says 12.4".
 */
export function namedChecks(
  tokens: readonly Token[],
  { lexicon, inHand }: LineContext,
): CheckPhrases[] {
  const { reader, vocabulary, words } = lexicon;
  const heard = hear(reader.literally(withoutDeniedWords(tokens, words.negators)), vocabulary);
  // What came before is not what goes on: "after cranking, 12.1".
  const { after } = figureWordsOf(words);
  const isBehind = (at: number): boolean =>
    [at, at - 1].some((end) => endsWithPhrase(tokens, end, after));
  // The "and" that is written on to a name: `والأرضي`.
  const typed = new Set(
    tokens.flatMap((token, at) =>
      token.kind === 'word' && !isBehind(at) ? [token.text, reader.unjoined(token.text)] : [],
    ),
  );
  const spoken = hasPhrase(tokens, figureWordsOf(words).battery);
  const ofOther = (entry: CheckPhrases, name: Terms): boolean => {
    if (inHand === undefined || entry === inHand) return true;
    if (isTheSame(entry, inHand, name) || isOfMoment(entry, inHand, spoken)) return false;
    if (isLoadOf(entry, inHand)) return false;
    if (name.length === 1 && !isTyped(entry, name, { typed, lexicon })) return false;
    return !name.every((term) => isOwn(term, inHand)) && !isUnitName(name, lexicon);
  };
  let longest = 1;
  let named: CheckPhrases[] = [];
  for (const entry of lexicon.checks.values()) {
    if (entry.check.form.kind !== 'reading') continue;
    const names = inHand === undefined ? [...entry.names, ...entry.moments] : entry.names;
    const found = names.filter((name) => isNamedIn(heard, name, lexicon) && ofOther(entry, name));
    const length = Math.max(0, ...found.map((name) => name.length));
    if (length > longest) named = [];
    if (length >= longest) {
      named.push(entry);
      longest = length;
    }
  }
  return named;
}

/** True where a name is said, with small words between its own or none: "drop on ground". */
function isNamedIn(heard: Heard, name: Terms, lexicon: Lexicon): boolean {
  return (
    findPhrase(heard, name) >= 0 ||
    (name.length > 1 && findPhrase(withoutSmall(heard, lexicon), name) >= 0)
  );
}

const withoutSmall = onceWith((heard: Heard, lexicon: Lexicon) =>
  partOf(heard, (term) => !smallTerms(lexicon).has(term)),
);

/** What may stand beside any figure, and so within any name. */
const smallTerms = onceFor(({ words, reader }: Lexicon): ReadonlySet<string> => {
  const { besideFigures, articles } = words;
  return new Set([...besideFigures, ...articles].flatMap((word) => reader.literally(word)));
});

function withoutDeniedWords(
  tokens: readonly Token[],
  negators: readonly string[],
): readonly Token[] {
  const isNegator = (token: Token | undefined): boolean =>
    token?.kind === 'word' && negators.includes(token.text);
  return tokens.filter((_, at) => !isNegator(tokens[at - 1]));
}

/**
 * True where the name of another reading is a word for the one in hand: the one that is read again
 * later, and, once it was charged, a voltage with nothing done: "10.5 and I was charging it all night".
 */
function isTheSame({ id, check }: CheckPhrases, inHand: CheckPhrases, name: Terms): boolean {
  const { like, does } = inHand.check;
  const isCharged = does.includes('charge') && check.does.length === 0 && name.length === 1;
  return like === id || isCharged;
}

/**
 * "9.6 when starting" says when a signal was read, which is asked for while start is held, and is no
 * voltage of the battery where that is not spoken of.
 */
function isOfMoment(
  { check: { form, does } }: CheckPhrases,
  inHand: CheckPhrases,
  isBattery: boolean,
): boolean {
  const asked = inHand.check;
  const isSignal = asked.form.kind === 'reading' && asked.form.range === 'signal-voltage';
  const isTurning =
    form.kind === 'reading' && form.range === 'battery-voltage' && does.includes('starter');
  return isSignal && asked.does.includes('held-start') && isTurning && !isBattery;
}

/** "13.1 with the lamps on": a load while the engine charges is no voltage without it. */
function isLoadOf({ check: { does } }: CheckPhrases, { check: { form } }: CheckPhrases): boolean {
  return form.kind === 'reading' && form.expect === 'charging' && does.includes('load');
}

/** True where a name of one word is typed as it is written: "charged" is not "charging". */
function isTyped(
  { said }: CheckPhrases,
  [name = '']: Terms,
  { typed, lexicon }: { readonly typed: ReadonlySet<string>; readonly lexicon: Lexicon },
): boolean {
  const words = said.flatMap(([token, more]) =>
    token?.kind === 'word' && more === undefined ? [token.text] : [],
  );
  const own = words.filter((word) => lexicon.reader.literally(word)[0] === name);
  return own.some((word) => typed.has(word));
}

/** True where a term is one of the check's own, or the end of one: the "charge" of "recharge". */
function isOwn(term: string, { topic, names }: CheckPhrases): boolean {
  return [...topic, ...names.flat()].some((own) => own.endsWith(term));
}

/** True for a name that is no more than a unit: "years". */
function isUnitName(name: Terms, lexicon: Lexicon): boolean {
  return unitNames(lexicon).has(name.join(' '));
}

const unitNames = onceFor(
  ({ words, reader }: Lexicon): ReadonlySet<string> =>
    new Set(
      Object.values(words.units).flatMap((said) =>
        said.map((unit) => reader.literally(unit).join(' ')),
      ),
    ),
);
