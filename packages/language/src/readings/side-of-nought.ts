/** On which side of nought a temperature is: "5 below zero", "unter null, so drei grad". */
import type { Token } from '../typed/token.ts';
import { onceFor } from '../once.ts';
import type { Lexicon } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';

/** True for the nought of "5 below zero". */
export function isOfBelow(tokens: readonly Token[], at: number, lexicon: Lexicon): boolean {
  const [figure] = tokens.slice(at, at + 1);
  if (figure?.kind !== 'number' || figure.value !== 0) return false;
  const isNext = (start: number): boolean => (noughtBefore(tokens, start, lexicon)?.end ?? 0) > at;
  if (
    [at + 1, at + 2, at + 3, at + 4].some(
      (start) => tokens[start]?.kind === 'number' && isNext(start),
    )
  )
    return true;
  return [at - 1, at - 2, at - 3].some(
    (from) =>
      from + (noughtBehind(tokens, from, lexicon)?.length ?? 0) > at &&
      [tokens[from - 1], tokens[from - 2]].some((token) => token?.kind === 'number'),
  );
}

/** Words behind a figure that say on which side of nought it is. */
interface Nought {
  readonly length: number;
  readonly isBelow: boolean;
  /** True where they name the nought: "bajo cero", but not "degrees below". */
  readonly isNamed: boolean;
}

/** "Degrees below zero": what stands behind a figure to say it. */
export function noughtBehind(
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
): Nought | undefined {
  const { words } = lexicon;
  // With what is written on to it: `الصفر`.
  const isNought = (word: string): boolean =>
    ['', ...(words.spelling?.beforeNumbers ?? [])].some(
      (before) => word.startsWith(before) && words.cardinals[word.slice(before.length)] === 0,
    );
  const longest = (phrases: readonly (readonly string[])[]): readonly string[] =>
    phrases
      .filter((phrase) =>
        phrase.every((word, index) => {
          const token = tokens[at + index];
          if (token?.kind === 'number') return token.value === 0 && isNought(word);
          return token?.kind === 'word' && token.text === word;
        }),
      )
      .reduce<readonly string[]>((one, other) => (other.length > one.length ? other : one), []);
  const sides = sidesOf(lexicon);
  const below = longest(sides.below);
  const above = longest(sides.above);
  const said = below.length > above.length ? below : above;
  if (said.length === 0) return undefined;
  return { length: said.length, isBelow: said === below, isNamed: said.some(isNought) };
}

/** What says each side, word by word. */
const sidesOf = onceFor(({ words }: Lexicon) => {
  const wordsOf = (phrase: string): readonly string[] => phrase.split(' ');
  return {
    below: (words.below ?? []).map(wordsOf),
    above: figureWordsOf(words).above.map(wordsOf),
  };
});

/** So many small words may stand between the nought and its degrees: "unter null, so drei grad". */
const mostToDegrees = 3;

/** "Below zero by three": the side of nought, said before the figure. */
export function noughtBefore(
  tokens: readonly Token[],
  start: number,
  lexicon: Lexicon,
): (Nought & { readonly start: number; readonly end: number }) | undefined {
  const { fillers, nearly, besideFigures } = lexicon.words;
  const small = [...fillers, ...nearly, ...besideFigures, ...figureWordsOf(lexicon.words).roughly];
  const isSmall = (token: Token): boolean =>
    token.kind === 'mark' || (token.kind === 'word' && small.includes(token.text));
  for (let from = start - 2; from >= 0 && from > start - mostNought; from -= 1) {
    const nought = noughtBehind(tokens, from, lexicon);
    const isOfOther = [from - 1, from - 2].some((at) => tokens[at]?.kind === 'number');
    if (nought?.isNamed !== true || isOfOther) continue;
    const end = from + nought.length;
    const between = tokens.slice(end, start);
    if (end <= start && between.length <= mostToDegrees && between.every(isSmall))
      return { ...nought, start: from, end };
  }
  return undefined;
}

/** So many tokens before a figure its side of nought may begin. */
const mostNought = 8;
