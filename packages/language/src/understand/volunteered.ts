import type { Heard } from '../typed/heard.ts';
import { says } from '../typed/heard.ts';
import { fitOptions } from './fit.ts';
import type { FoundAnswer } from './found-answer.ts';
import type { CheckPhrases } from './lexicon.ts';
import type { Turn } from './turn.ts';

/** The least that an answer to a question that was not asked must fit. */
const sureFit = 0.78;

/** The least that it must fit while another question in words is in hand. */
const plainFit = 0.88;

/** The least that it must fit where it is found only by going to look, and is not named. */
const wholeFit = 0.93;

/** How much better than the check's next answer it must fit. */
const answerMargin = 0.1;

/** How much better than another check's answer it must fit, so as not to be asked about. */
const checkMargin = 0.05;

/** What naming the check adds. */
const namedBonus = 0.1;

/** What is known without going to look is told first. */
const placeBonus = { memory: 0.04, seat: 0.02, bonnet: -0.06, below: -0.06 } as const;

/**
 * Answers to checks that were not asked, in a text that says one of them plainly: the best one, or
 * several where it may be either. `among` limits the checks. What is found only by opening the
 * bonnet must be named; while a question in words is in hand everything must be, short of a phrase.
 */
export function volunteered(heard: Heard, turn: Turn, among?: readonly string[]): FoundAnswer[] {
  const { lexicon } = turn.listener;
  const { inHand } = turn;
  const ranked = [...lexicon.checks.values()]
    .filter(({ id, options }) => options.length > 0 && (among?.includes(id) ?? true))
    .flatMap((check): (FoundAnswer & { readonly rank: number })[] => {
      const [fit, second] = fitOptions(heard, check.options, lexicon.weights, check.topic);
      if (fit === undefined || fit.score < sureFit) return [];
      if (fit.score - Math.max(second?.score ?? 0, 0) < answerMargin) return [];
      const isNamed = namesCheck(heard, check, fit.phrase);
      const { at } = check.check;
      if (!isNamed && among === undefined) {
        const isAway = at === 'bonnet' || at === 'below';
        if (isAway && (heard.at.length < 2 || fit.score < wholeFit)) return [];
        if (inHand !== undefined && (at === 'seat' || heard.at.length < 2)) return [];
      }
      // Beside a question in words only what is plain is about another one.
      const isInWords = inHand !== undefined && inHand.options.length > 0 && among === undefined;
      if (isInWords && (!isNamed || heard.at.length < 2 || fit.score < plainFit)) return [];
      return [{ check, fit, rank: fit.score + placeBonus[at] + (isNamed ? namedBonus : 0) }];
    })
    .sort((one, other) => other.rank - one.rank);
  return ranked.filter(({ rank }) => (ranked[0]?.rank ?? 0) - rank < checkMargin);
}

/** True where the text names what the check is about, or its phrase does. */
function namesCheck(heard: Heard, { topic }: CheckPhrases, phrase: readonly string[]): boolean {
  return (
    [...topic].some((term) => says(heard, term) || says(heard, `!${term}`)) ||
    phrase.some((term) => topic.has(term))
  );
}
