import { wordsOf } from '../typed/heard.ts';
import { hasFigure } from '../numbers/numbers.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import type { Terms } from '../typed/terms.ts';
import type { Turn } from './turn.ts';

/** The answer that it starts by what was tried. */
const starts = 'starts';

/** What says it to so many checks says it by itself. */
const leastChecks = 2;

/**
 * True where a text says no more than that it starts, as people answer it to what was tried, and
 * nothing of that kind was asked: "springt an" in place of how the lamps look.
 */
export function saysStart({ tokens, heard, inHand, listener: { lexicon } }: Turn): boolean {
  if (hasFigure(tokens, lexicon.numbers)) return false;
  if (inHand !== undefined && isOfTrying(inHand)) return false;
  // "Runs" of a pump.
  if (inHand !== undefined && isAnswer(heard.terms, inHand)) return false;
  return waysOf(lexicon).has(bareOf(wordsOf(tokens), lexicon));
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
        if (isTrial && id === starts) checks.set(way, (checks.get(way) ?? 0) + 1);
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
  return options.some(({ id }) => id === starts || id === 'cranks');
}

function bareOf(words: readonly string[], { words: { fillers, exclaims = [] } }: Lexicon): string {
  return words.filter((word) => ![...fillers, ...exclaims].includes(word)).join(' ');
}
