import type { AnswerInput } from '@keyturn/core';
import type { Token } from '../typed/token.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { onceFor } from '../once.ts';
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
const leastRating = 30;
const mostRating = 2500;

/** Without its unit a figure below this is no rating: "3 on the label". */
const leastBare = 100;

/**
 * The rating on the battery's label: "the label says 540 A EN", and beside what was measured "312,
 * label 540", "420 out of 640".
 */
export function readLabel(tokens: readonly Token[], context: LineContext): SaidLabel | undefined {
  const { words } = context.lexicon;
  const { label } = figureWordsOf(words);
  if (!tokens.some(({ kind }) => kind === 'number')) return undefined;
  // A flow that asks for the label's rating has it as an answer.
  if (ratingCheck(context.lexicon) !== undefined) return undefined;
  const hasLabel = hasPhrase(tokens, label);
  if (!hasLabel && !isAmperes(context)) return undefined;
  const figures = findFigures(tokens, context);
  const said = wordsOfEach(figures, tokens, { telling: label, words });
  // "295 A, label 600": the word right before a figure is its own.
  const isNext = figures.map(({ start }) => endsWithPhrase(tokens, start, label));
  const isLabelled = (index: number): boolean =>
    isNext.includes(true) ? isNext[index] === true : hasPhrase(said[index] ?? [], label);
  const ratings = figures
    .map((rating, index) => ({ rating, index }))
    .filter(({ rating }) => isRating(rating));
  const outOf = ratings.flatMap(({ rating, index }) => {
    const measured = figures[index - 1];
    return isOutOf([measured, rating], tokens, context)
      ? [{ rating, from: measured?.end ?? rating.start }]
      : [];
  });
  const labelled = ratings
    .filter(({ index }) => isLabelled(index))
    .map(({ rating }) => ({ rating, from: rating.start }));
  const found = outOf.length > 0 ? outOf : labelled;
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

/** The standard of a label where a flow asks for it, and the tokens without it. */
export interface SaidStandard {
  /** The check whose figure it belongs to. */
  readonly of: string;
  readonly answer: AnswerInput;
  readonly rest: readonly Token[];
}

/** The standard that is named behind the rating of the label: the EN of "640 A EN", "640 (EN)". */
export function readStandard(
  tokens: readonly Token[],
  context: LineContext,
): SaidStandard | undefined {
  const { lexicon } = context;
  const rating = ratingCheck(lexicon);
  const asking = standardCheck(lexicon);
  if (rating === undefined || asking === undefined) return undefined;
  for (const figure of findFigures(tokens, context)) {
    const at = isRating(figure) ? standardAt(figure, tokens) : undefined;
    const option = asking.options.find(({ id }) => id === wordAt(tokens, at));
    if (option === undefined) continue;
    return {
      of: rating.id,
      answer: { check: asking.id, value: [option.id] },
      rest: tokens.filter((_, index) => index !== at),
    };
  }
  return undefined;
}

/** The check that asks for the rating on the label. */
const ratingCheck = onceFor(({ checks, words }: Lexicon): CheckPhrases | undefined => {
  const { label } = figureWordsOf(words);
  return [...checks.values()].find(
    ({ check: { form, needs }, said }) =>
      form.kind === 'reading' &&
      form.unit === 'A' &&
      needs.length === 0 &&
      said.some((name) => hasPhrase(name, label)),
  );
});

/** The check that asks for the standard on the label. */
const standardCheck = onceFor(({ checks }: Lexicon): CheckPhrases | undefined =>
  [...checks.values()].find(({ check }) => setsStandard(check)),
);

function setsStandard({ sets }: CheckPhrases['check']): boolean {
  return Object.values(sets).some((set) =>
    Object.keys(set).some((path) => path.endsWith('.battery.standard')),
  );
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
    between.every(({ kind }) => kind === 'word') &&
    hasPhrase(between, figureWordsOf(context.lexicon.words).outOf) &&
    !hasPhrase(between, context.lexicon.words.vague)
  );
}

const standards: readonly string[] = ['sae', 'din', 'iec', 'jis', 'mca', 'en'];

/** The standard named with the unit or right behind it; "en" is a word of its own elsewhere. */
function standardOf(figure: SaidFigure, tokens: readonly Token[]): string | undefined {
  return wordAt(tokens, standardAt(figure, tokens));
}

/** The place of that standard. */
function standardAt({ start, end }: SaidFigure, tokens: readonly Token[]): number | undefined {
  // A bracket may stand before it, and an A that is a word of its own elsewhere.
  const isBetween = tokens[end]?.kind === 'mark' || wordAt(tokens, end) === 'a';
  const last = isBetween ? end + 1 : end;
  for (let at = start + 1; at <= last; at += 1) {
    const behind = tokens[at + 1];
    const isLast = behind === undefined || behind.kind === 'mark';
    const word = wordAt(tokens, at);
    if (word !== undefined && standards.includes(word) && (isLast || word !== 'en')) return at;
  }
  return undefined;
}

function wordAt(tokens: readonly Token[], at: number | undefined): string | undefined {
  const token = at === undefined ? undefined : tokens[at];
  return token?.kind === 'word' ? token.text : undefined;
}
