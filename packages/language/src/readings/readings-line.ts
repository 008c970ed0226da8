import {
  type LineContext,
  type SaidFigure,
  findFigures,
  hasBoundOnly,
  isDeniedAlone,
  isVague,
  speaksOfEarlier,
  withoutDenied,
} from './line-figures.ts';
import { cutPieces, strangeUnit } from './line-pieces.ts';
import { type LineResult, placePieces, unclear } from './line-placing.ts';
import { judgeFigure } from '@keyturn/core';
import type { ReadingKind } from '@keyturn/electrics';
import { withoutOthers } from './one-of-figures.ts';
import { hasPhrase } from './word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import type { Token } from '../typed/token.ts';

/**
 * Reads a line of one or several readings. Each figure is bound to the check that its words name,
 * else to the only check that its unit fits, else, for the first bare figure, to the check in hand.
 * A line of which anything cannot be placed is taken not at all.
 */
export function readLine(typed: readonly Token[], context: LineContext): LineResult {
  if (typed.some(({ kind }) => kind === 'malformed')) return unclear('not-a-number', typed);
  const tokens = spellNumbers(typed, context.lexicon.numbers);
  if (speaksOfOther(tokens, context)) return unclear('unknown-unit', typed);
  const { kept, isDenied } = withoutDenied(withoutOthers(tokens, context), context);
  const figures = findFigures(kept, context);
  if (figures.length === 0) return { type: 'none' };
  if (figures.length > mostFigures) return unclear('two-numbers', kept.slice(0, shownTokens));
  if (hasShare(kept, figures, context)) return unclear('not-exact', kept);
  if (hasBoundOnly(kept, figures, context)) return unclear('not-exact', kept);
  if (isVague(kept, figures, context)) return unclear('not-exact', kept);
  if (isDeniedAlone(kept, figures, context)) return unclear('not-exact', kept);
  const pieces = cutPieces(kept, figures, context);
  const strange = isPlainReading(figures, context)
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

const densities: readonly ReadingKind[] = ['density', 'density-difference'];

/** True where the only figure has decimals and can be the reading in hand, whatever follows it. */
function isPlainReading(
  [figure, more]: readonly SaidFigure[],
  { inHand, nominal, unitHere }: LineContext,
): boolean {
  const form = inHand?.check.form;
  if (figure === undefined || more !== undefined || form?.kind !== 'reading') return false;
  const value = { value: figure.value, unit: unitHere(form.unit) };
  return figure.decimals > 0 && judgeFigure(value, form, nominal).type === 'plausible';
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
