import type { AnswerInput } from '@keyturn/core';
import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { isOfVehicle } from './fact-runs.ts';
import type { Lexicon } from './lexicon.ts';
import { answerShare, type Span, spansOf } from './spans.ts';

/** Less than this part of some words is few of them; words that are as sure as that tell something. */
const [few, leastSure] = [0.5, 0.5];

/** What is told, and by which words. */
interface Said {
  readonly one: AnswerInput;
  readonly by: readonly Span[];
  /** Those that tell it most surely. */
  readonly best: Span | undefined;
}

/**
 * What is told without what only a few words of a clause say, of which most tell nothing: the ice of
 * "the ice cream is a lost cause". What no words of the text say by themselves is kept.
 */
export function withoutStray(
  told: readonly AnswerInput[],
  tokens: readonly Token[],
  lexicon: Lexicon,
): readonly AnswerInput[] {
  const spans = spansOf(tokens, lexicon);
  const said = told.map((one) => saidBy(one, spans, lexicon));
  const isTelling = tokens.map((_, at) =>
    said.some(({ by }) => by.some(({ from, to }) => at >= from && at < to)),
  );
  const isStray = ({ one, best }: Said): boolean => {
    const check = lexicon.checks.get(one.check);
    // What the vehicle is a word tells: "diesel".
    if (best === undefined || check === undefined || isOfVehicle(check)) return false;
    const places = wordsAround(best, tokens, lexicon);
    const telling = places.filter((at) => isTelling[at] === true);
    return telling.length < places.length * few;
  };
  return said.filter((one) => !isStray(one)).map(({ one }) => one);
}

function saidBy(one: AnswerInput, spans: readonly Span[], { checks }: Lexicon): Said {
  const { value } = one;
  const check = checks.get(one.check);
  if (check === undefined || 'value' in value) return { one, by: [], best: undefined };
  const sure = spans.flatMap((span) => {
    const subject = span.subject.shareOf(check.id) ?? 0;
    if (subject < leastSure) return [];
    const share = subject * Math.max(...value.map((id) => answerShare(span.heard, check, id)));
    return share >= leastSure ? [{ span, share }] : [];
  });
  const [best] = sure.toSorted((one, other) => other.share - one.share);
  return { one, by: sure.map(({ span }) => span), best: best?.span };
}

/** So many words on each side of what is told are looked at. */
const near = 4;

/** The places of the words that say anything in the clause around a span, and near it. */
function wordsAround({ from, to }: Span, tokens: readonly Token[], lexicon: Lexicon): number[] {
  const { joins, clauseBreaks } = lexicon.words;
  const isCut = (token: Token): boolean =>
    token.kind !== 'word' || [...joins, ...clauseBreaks].includes(token.text);
  const start = tokens.slice(0, from).findLastIndex(isCut) + 1;
  const length = tokens.slice(to).findIndex(isCut);
  const end = length < 0 ? tokens.length : to + length;
  const saying = (first: number, last: number): number[] =>
    tokens
      .slice(first, last)
      .flatMap((token, at) =>
        token.kind === 'word' && hearTokens([token], lexicon).at.length > 0 ? [first + at] : [],
      );
  return [
    ...saying(start, from).slice(-near),
    ...saying(from, to),
    ...saying(to, end).slice(0, near),
  ];
}
