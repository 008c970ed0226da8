import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import { type LineContext, type SaidFigure, findFigures } from './line-figures.ts';
import { endsWithPhrase, hasPhrase } from './word-run.ts';
import { wordsOfEach } from './words-of-each.ts';

/** What a battery's label says, and the tokens that tell the rest. */
export interface SaidLabel {
  /** `vehicle.battery.rating` in A, and `vehicle.battery.standard` where it is said. */
  readonly set: Readonly<Record<string, unknown>>;
  readonly rest: readonly Token[];
}

/** A. No starter battery is rated below or above. */
const leastRating = 50;
const mostRating = 2500;

/** Without its unit a figure below this is no rating: "3 on the label". */
const leastBare = 100;

/**
 * The rating on the battery's label: "the label says 540 A EN", and beside what was measured "312,
 * label 540", "420 out of 640".
 */
export function readLabel(tokens: readonly Token[], context: LineContext): SaidLabel | undefined {
  const { words, checks } = context.lexicon;
  const { label } = figureWordsOf(words);
  if (!tokens.some(({ kind }) => kind === 'number')) return undefined;
  // A flow that asks for the label's rating has it as an answer.
  const isAsked = [...checks.values()].some(
    ({ check: { form, needs }, said }) =>
      form.kind === 'reading' &&
      form.unit === 'A' &&
      needs.length === 0 &&
      said.some((name) => hasPhrase(name, label)),
  );
  if (isAsked) return undefined;
  const hasLabel = hasPhrase(tokens, label);
  if (!hasLabel && !isAmperes(context)) return undefined;
  const figures = findFigures(tokens, context);
  const said = wordsOfEach(figures, tokens, { telling: label, words });
  // "295 A, label 600": the word right before a figure is its own.
  const isNext = figures.map(({ start }) => endsWithPhrase(tokens, start, label));
  const isLabelled = (index: number): boolean =>
    isNext.includes(true) ? isNext[index] === true : hasPhrase(said[index] ?? [], label);
  const found = figures.flatMap((figure, index) => {
    const measured = figures[index - 1];
    if (!isRating(figure)) return [];
    if (isOutOf([measured, figure], tokens, context))
      return [{ rating: figure, from: measured?.end ?? figure.start }];
    return isLabelled(index) ? [{ rating: figure, from: figure.start }] : [];
  });
  const [only, more] = found;
  if (only === undefined || more !== undefined) return undefined;
  const { rating, from } = only;
  const standard = standardOf(rating, tokens);
  return {
    set: {
      'vehicle.battery.rating': { value: rating.value, unit: 'A' },
      ...(standard === undefined ? {} : { 'vehicle.battery.standard': standard }),
    },
    rest: tokens.flatMap((token, at): Token[] => {
      if (at === from) return [{ kind: 'mark', text: ',' }];
      return at > from && at < rating.end ? [] : [token];
    }),
  };
}

function isAmperes({ inHand }: LineContext): boolean {
  const form = inHand?.check.form;
  return form?.kind === 'reading' && form.unit === 'A';
}

function isRating({ value, unit, decimals }: SaidFigure): boolean {
  const least = unit === undefined ? leastBare : leastRating;
  return (unit ?? 'A') === 'A' && decimals === 0 && value >= least && value <= mostRating;
}

/** So many tokens may stand between the two: "420 A out of the 640". */
const mostBetween = 4;

/** The 640 of "420 out of 640". */
function isOutOf(
  [measured, figure]: readonly [measured: SaidFigure | undefined, figure: SaidFigure],
  tokens: readonly Token[],
  context: LineContext,
): boolean {
  if (measured === undefined || !isAmperes(context) || measured.value >= figure.value) return false;
  const between = tokens.slice(measured.end, figure.start);
  return (
    between.length > 0 &&
    between.length <= mostBetween &&
    hasPhrase(between, figureWordsOf(context.lexicon.words).outOf)
  );
}

const standards: readonly string[] = ['sae', 'din', 'iec', 'jis', 'mca', 'en'];

/** The standard named with the unit or right behind it; "en" is a word of its own elsewhere. */
function standardOf({ start, end }: SaidFigure, tokens: readonly Token[]): string | undefined {
  const named = (from: number, to: number, among: readonly string[]): string | undefined =>
    tokens
      .slice(from, to)
      .flatMap((token) => (token.kind === 'word' ? [token.text] : []))
      .find((word) => among.includes(word));
  return (
    named(start + 1, end, standards) ??
    named(end, end + 1, tokens.length === end + 1 ? standards : standards.slice(0, -1))
  );
}
