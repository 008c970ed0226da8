import { hasFigure } from '../numbers/numbers.ts';
import { hearTokens, wordsOf } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import { startsAnswer, startsNow } from './alarms.ts';
import { likeliest } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import type { Turn } from './turn.ts';

/** What says it to so many checks says it by itself. */
const leastChecks = 2;

/**
 * True where a text says no more than that it starts, as people answer it to what was tried, or a
 * clause of it surely says so, and nothing of that kind was asked: "springt an" in place of how the
 * lamps look, "five years. but wait, it just fired up".
 */
export function saysStart(turn: Turn): boolean {
  const { tokens, heard, inHand, listener } = turn;
  const { lexicon } = listener;
  if (inHand !== undefined && isOfTrying(inHand)) return false;
  const isWhole =
    !hasFigure(tokens, lexicon.numbers) && waysOf(lexicon).has(bareOf(wordsOf(tokens), lexicon));
  if (!isWhole && !isSaidBeside(turn)) return false;
  // "Runs" of a pump.
  return inHand === undefined || !isAnswer(heard.terms, inHand);
}

/** A clause of so many terms, that sounds so as surely as this, and answers what was asked less than that. */
const [leastTerms, surely, hardlyAnswered] = [3, 0.8, 0.5];

/** True where one clause of several says that it has started. */
function isSaidBeside({ clauses, hearing, inHand, listener: { lexicon } }: Turn): boolean {
  if (hearing.awaiting !== 'answer' || clauses.length < 2) return false;
  return clauses.some((clause) => {
    const heard = hearTokens(clause, lexicon);
    if (heard.terms.length < leastTerms) return false;
    const { interrupt, share } = lexicon.alarmed()(heard);
    if (interrupt !== startsNow || share < surely) return false;
    return inHand === undefined || likeliest(heard, inHand).share < hardlyAnswered;
  });
}

/** True for what answers the question in hand, said with the name of the thing or without. */
function isAnswer(terms: Terms, { topic, options }: CheckPhrases): boolean {
  return options
    .flatMap(({ spoken, heard }) => [...spoken, ...heard()])
    .some((one) => one.terms.filter((term) => !topic.has(term)).join(' ') === terms.join(' '));
}

/** What says so, without small words; none that answers anything else as well, such as a pump. */
const waysOf = onceFor((lexicon: Lexicon): ReadonlySet<string> => {
  const checks = new Map<string, number>();
  const others = new Set<string>();
  for (const check of lexicon.checks.values()) {
    const isTrial = isOfTrying(check);
    for (const { id, spoken, heard } of check.options) {
      const ways = [...spoken, ...heard()].map(({ words }) => bareOf(words, lexicon));
      for (const way of new Set(ways)) {
        if (isTrial && id === startsAnswer) checks.set(way, (checks.get(way) ?? 0) + 1);
        else if (!isTrial) others.add(way);
      }
    }
  }
  return new Set(
    [...checks].flatMap(([way, count]) =>
      count >= leastChecks && way !== '' && !others.has(way) ? [way] : [],
    ),
  );
});

/** True for a check of something that was tried to start it. */
function isOfTrying({ options }: CheckPhrases): boolean {
  return options.some(({ id }) => id === startsAnswer || id === 'cranks');
}

function bareOf(words: readonly string[], { words: { fillers, exclaims = [] } }: Lexicon): string {
  return words.filter((word) => !fillers.includes(word) && !exclaims.includes(word)).join(' ');
}
