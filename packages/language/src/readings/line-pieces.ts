import { findPhrase, hear } from '../typed/heard.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { type LineContext, type SaidFigure, textOf } from './line-figures.ts';
import type { Token } from '../typed/token.ts';

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
  if (last !== undefined) pieces.push({ ...last, words: [...last.words, ...pending] });
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

/** The words right behind a figure that ought to be its unit and are not known at all. */
export function strangeUnit(
  tokens: readonly Token[],
  { figures }: Piece,
  context: LineContext,
): string[] {
  return figures.flatMap((figure) => {
    const next = tokens[figure.end];
    if (figure.unit !== undefined || figure.end > figure.start + 1 || next?.kind !== 'word')
      return [];
    return isKnownBeside(next.text, context.lexicon)
      ? []
      : [textOf(tokens.slice(figure.start, figure.end + 1))];
  });
}

function isKnownBeside(word: string, { words, reader, checks }: Lexicon): boolean {
  const { besideFigures, fillers, negators, clauseBreaks, boundsOnly, earlier } = words;
  const known = [besideFigures, fillers, negators, clauseBreaks, boundsOnly, earlier];
  if (known.some((list) => list.includes(word))) return true;
  const [term = ''] = reader.literally(word);
  return [...checks.values()].some(
    ({ check, names }) =>
      check.form.kind === 'reading' && names.some((name) => name.includes(term)),
  );
}

/** The readings that these words name, those with the longest name only. */
export function namedChecks(
  tokens: readonly Token[],
  { lexicon, inHand }: LineContext,
): CheckPhrases[] {
  const heard = hear(lexicon.reader.literally(tokens), lexicon.vocabulary);
  let longest = 1;
  let named: CheckPhrases[] = [];
  for (const entry of lexicon.checks.values()) {
    if (entry.check.form.kind !== 'reading') continue;
    const names = inHand === undefined ? [...entry.names, ...entry.moments] : entry.names;
    const found = names.filter((name) => findPhrase(heard, name) >= 0);
    const length = Math.max(0, ...found.map((name) => name.length));
    if (length > longest) named = [];
    if (length >= longest) {
      named.push(entry);
      longest = length;
    }
  }
  return named;
}
