import type { Token } from '../typed/token.ts';
import { isMistyped } from '../typed/typing-mistake.ts';
import { figureWordsOf } from '../words/words.ts';
import { wordAt } from './found-number.ts';
import type { NumberWords } from './number-words.ts';

/** Puts right what was mistyped beside figures: "ten piont one vlts". */
export type WordMender = (tokens: readonly Token[]) => readonly Token[];

/** Shorter words are not mended: too many others are a letter away. */
const shortest = 4;

/** The part behind "and" may be shorter: the `haf` of "eleven and a haf". */
const shortestPart = 3;

/**
 * The mender of one language, whose words are spelled as typed words are. Only a word that is not
 * known at all is mended, and only where a figure stands beside it: between two figures it is the
 * word for the point, behind one a unit, and beside a point, a unit or another number a number.
 * Where it may be two of them it stays.
 */
export function createWordMender(
  { words, takeApart }: NumberWords,
  known: (word: string) => boolean,
): WordMender {
  const single = (said: readonly string[]): string[] =>
    said.filter((word) => !word.includes(' ') && word.length >= shortest);
  const points = new Set(words.point);
  const pointWords = single(words.point);
  const units = single([...Object.values(words.units).flat(), ...words.bareUnits]);
  const ofUnit = new Map(
    Object.entries(words.units).flatMap(([code, said]) => said.map((word) => [word, code])),
  );
  const numbers = { ...words.cardinals, ...words.scales, ...words.fractions };
  const numberWords = single(Object.keys(numbers));
  const minusWords = single(words.minus);
  const parts = Object.keys(words.fractions).filter((word) => word.length >= shortestPart);
  const figureWords = new Set([...Object.keys(numbers), ...words.decimalZero]);
  const ours = new Set([
    ...figureWords,
    ...words.point,
    ...Object.values(words.units).flat(),
    ...words.bareUnits,
    ...words.joins,
    ...words.articles,
    ...words.minus,
    ...words.besideFigures,
    ...words.negators,
    ...words.vague,
    ...words.clauseBreaks,
    ...Object.values({ ...figureWordsOf(words), ...words.talk, fillers: words.fillers }).flatMap(
      (said: readonly string[]) => said.flatMap((phrase) => phrase.split(' ')),
    ),
  ]);

  const isFigure = (token: Token | undefined): boolean =>
    token?.kind === 'number' ||
    (token?.kind === 'word' && (figureWords.has(token.text) || takeApart([token]).length > 1));
  const like = (word: string, candidates: readonly string[]): readonly string[] =>
    candidates.filter((candidate) => isMistyped(word, candidate));
  const asNumber = (word: string): string | undefined => {
    const found = like(word, numberWords);
    const [value, more] = new Set(found.map((one) => numbers[one]));
    return value === undefined || more !== undefined ? undefined : found[0];
  };
  const asPart = (word: string): string | undefined => {
    const found = like(word, parts);
    const [value, more] = new Set(found.map((one) => words.fractions[one]));
    return value === undefined || more !== undefined ? undefined : found[0];
  };
  const isJoin = (word: string | undefined): boolean =>
    word !== undefined && words.joins.includes(word);
  const isArticle = (word: string | undefined): boolean =>
    word !== undefined && !isJoin(word) && [...words.articles, ...words.fillers].includes(word);
  // "Eleven and a": a part comes next.
  const isBehindAnd = (tokens: readonly Token[], at: number): boolean => {
    const from = isArticle(wordAt(tokens, at - 1)) ? at - 2 : at - 1;
    return isJoin(wordAt(tokens, from)) && isFigure(tokens[from - 1]);
  };
  const asUnit = (word: string): string | undefined => {
    const found = like(word, units);
    const [code, more] = new Set(found.map((one) => ofUnit.get(one)));
    return code === undefined || more !== undefined ? undefined : found[0];
  };

  return (tokens) => {
    const mended = [...tokens];
    tokens.forEach((token, at) => {
      if (token.kind !== 'word' || token.text.length < shortestPart) return;
      if (ours.has(token.text) || known(token.text) || takeApart([token]).length > 1) return;
      const part = isBehindAnd(mended, at) ? asPart(token.text) : undefined;
      if (part !== undefined) mended[at] = { kind: 'word', text: part };
      if (part !== undefined || token.text.length < shortest) return;
      const before = mended[at - 1];
      const behind = wordAt(tokens, at + 1);
      const isBehind = isFigure(before);
      const isJoined = isJoin(behind);
      const next = at + (isJoined ? 2 : 1);
      const isBefore =
        isFigure(tokens[isJoined && isArticle(wordAt(tokens, next)) ? next + 1 : next]) ||
        (behind !== undefined && asNumber(behind) !== undefined);
      const [point] = isBehind && isBefore ? like(token.text, pointWords) : [];
      const unit = isBehind ? asUnit(token.text) : undefined;
      const isByPoint =
        (before?.kind === 'word' && points.has(before.text)) ||
        (behind !== undefined &&
          (points.has(behind) || ofUnit.has(behind) || like(behind, pointWords).length > 0));
      const isNumber = isBehind || isBefore || isByPoint || tokens.length === 1;
      const [minus] = isFigure(tokens[at + 1]) ? like(token.text, minusWords) : [];
      const text = minus ?? point ?? unit ?? (isNumber ? asNumber(token.text) : undefined);
      if (text !== undefined) mended[at] = { kind: 'word', text };
    });
    return mended;
  };
}
