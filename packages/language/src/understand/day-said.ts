import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { phraseAt } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import type { Lexicon } from './lexicon.ts';
import type { Span } from './spans.ts';
import type { SubjectHeard } from './taught.ts';

/** A part of a text in which a day or a time of day is said of something. */
interface DaySaid {
  readonly from: number;
  readonly to: number;
  /** Which of its tokens say the day. */
  readonly days: ReadonlySet<number>;
  /** What the part speaks of beside the day. */
  readonly beside: ReturnType<SubjectHeard>;
  /** What the day speaks of by itself. */
  readonly alone: ReturnType<SubjectHeard>;
}

/** A part of a text speaks of a check from here on, and a day by itself. */
const [leastShare, leastAlone] = [0.3, 0.2];

/** What stands beside a day may speak of a check from here on: "a jump" is leads, or what was done with them. */
const leastBeside = 0.3;

/** What stands beside a day tells something else from here on: "after the night outside". */
const sureBeside = 0.9;

/** The parts of a text that say a day of something: "jumped yesterday", "the lamp was lit last night". */
export function daysSaid(tokens: readonly Token[], lexicon: Lexicon): readonly DaySaid[] {
  const { times } = lexicon.words.days;
  if (!lexicon.isHeard) return [];
  const speaksOf = (some: readonly Token[]): ReturnType<SubjectHeard> =>
    lexicon.subject()(hearTokens(some, lexicon));
  return partsOf(tokens, lexicon).flatMap(({ from, to }) => {
    const days = new Set<number>();
    for (let at = from; at < to; at += 1) {
      const length = phraseAt(tokens, at, times);
      for (let own = at; own < at + length; own += 1) days.add(own);
    }
    const own = tokens.slice(from, to);
    const rest = own.filter((_, at) => !days.has(from + at));
    if (days.size === 0 || rest.length === 0) return [];
    const beside = speaksOf(rest);
    const alone = speaksOf(own.filter((_, at) => days.has(from + at)));
    return beside.share < leastShare ? [] : [{ from, to, days, beside, alone }];
  });
}

/**
 * The spans that may say an answer to a check, if that check is what a day by itself speaks of: none
 * with a day that is said of something else. Who was jumped yesterday has not said that it stood.
 */
export function withoutDays(
  spans: readonly Span[],
  said: readonly DaySaid[],
  check: string,
): readonly Span[] {
  const others = said.filter(
    ({ beside, alone }) =>
      beside.check !== check &&
      (beside.shareOf(check) ?? 0) < leastBeside &&
      (alone.shareOf(check) ?? 0) >= leastAlone,
  );
  if (others.length === 0) return spans;
  return spans.filter((span) => {
    const isSure = (span.subject.shareOf(check) ?? 0) >= sureBeside;
    return !others.some(
      ({ from, to, days }) =>
        span.from < to &&
        from < span.to &&
        (!isSure || [...days].some((at) => at >= span.from && at < span.to)),
    );
  });
}

/** The parts of a text between marks and joining words; "when I drove back" is of what it stands with. */
function partsOf(
  tokens: readonly Token[],
  { words }: Lexicon,
): readonly { readonly from: number; readonly to: number }[] {
  const { clauseBreaks, joins } = words;
  const { moments } = figureWordsOf(words);
  const breaks = [...clauseBreaks, ...joins].filter((word) => !moments.includes(word));
  const isEnd = (token: Token | undefined): boolean =>
    token === undefined ||
    token.kind === 'mark' ||
    (token.kind === 'word' && breaks.includes(token.text));
  const ends = [...tokens, undefined].flatMap((token, at) => (isEnd(token) ? [at] : []));
  return ends.map((to, at) => ({ from: (ends[at - 1] ?? -1) + 1, to }));
}
