import { findPhrase, isContradicted, isPhrase, type Heard } from '../typed/heard.ts';
import type { CheckPhrases, OptionPhrases } from './lexicon.ts';
import type { Terms } from '../typed/terms.ts';

/** How well a text fits one answer, 0 to 1; below 0 where the text denies it. */
export interface Fit {
  readonly id: string;
  readonly label: string;
  readonly score: number;
  /** The phrase that fits best. */
  readonly phrase: Terms;
}

/** What came of holding a text against the answers of one check. */
export type Choice =
  | { readonly type: 'one'; readonly fit: Fit }
  /** Two or three that it may be. */
  | { readonly type: 'close'; readonly fits: readonly Fit[] }
  | { readonly type: 'none' };

/** Limits of the fit, common practice, no source: set so that the tables of the tests hold. */
const taken = 0.62;
const margin = 0.1;
const offered = 0.3;

/** How much of the phrase must be said, against how much of what was said is the phrase. */
const recallWeight = 0.7;

/** More terms than this are a story; which of the answers it denies is then left alone. */
const shortTerms = 4;

/** The answer that the text is word for word, or else undefined. */
export function exactChoice(heard: Heard, options: readonly OptionPhrases[]): string | undefined {
  const exact = options.filter(({ phrases }) => phrases.some((phrase) => isPhrase(heard, phrase)));
  return exact.length === 1 ? exact[0]?.id : undefined;
}

/** How well each answer fits, best first. */
export function fitOptions(heard: Heard, options: readonly OptionPhrases[]): Fit[] {
  return options
    .map(({ id, label, phrases }) => {
      const fits = phrases.map((phrase) => ({
        id,
        label,
        phrase,
        score: fitPhrase(heard, phrase),
      }));
      const best = fits.reduce<Fit>((one, other) => (other.score > one.score ? other : one), {
        id,
        label,
        phrase: [],
        score: 0,
      });
      const isDenied = best.score < offered && fits.some(({ score }) => score < 0);
      return isDenied ? { ...best, score: -1 } : best;
    })
    .sort((one, other) => other.score - one.score);
}

function fitPhrase(heard: Heard, phrase: Terms): number {
  if (isContradicted(heard, phrase)) return -1;
  const matched = countMatched(heard, phrase);
  if (matched === 0) return 0;
  const recall = matched / phrase.length;
  const precision = Math.min(matched / heard.at.length, 1);
  const score = recallWeight * recall + (1 - recallWeight) * precision;
  // Words in another order, or with others between them, say a little less.
  return recall === 1 && findPhrase(heard, phrase) < 0 ? score - margin / 2 : score;
}

/** A word that the phrase says three times must be said three times. */
function countMatched({ at, all }: Heard, phrase: Terms): number {
  const known = phrase.filter((term) => all.has(term));
  const distinct = [...new Set(known)];
  if (distinct.length === known.length) return known.length;
  return distinct.reduce((sum, term) => {
    const wanted = known.filter((one) => one === term).length;
    return sum + Math.min(wanted, at.filter((said) => said.has(term)).length);
  }, 0);
}

/** Which of a check's answers the text means. */
export function chooseOption(heard: Heard, { options }: CheckPhrases): Choice {
  const fits = fitOptions(heard, options);
  const [best, second] = fits;
  if (best === undefined) return { type: 'none' };
  if (best.score >= taken && best.score - Math.max(second?.score ?? 0, 0) >= margin) {
    return { type: 'one', fit: best };
  }
  const left = fits.filter(({ score }) => score >= 0);
  const isDenial = left.length < fits.length && heard.at.length <= shortTerms;
  // Of two answers the one that is not denied is meant; of more, one of the others.
  if (best.score < offered && isDenial) {
    const [only] = left;
    if (only !== undefined && left.length === 1) return { type: 'one', fit: only };
    return left.length <= mostOffers ? { type: 'close', fits: left } : { type: 'none' };
  }
  const close = fits.filter(({ score }) => score >= offered && best.score - score <= 3 * margin);
  return close.length === 0
    ? { type: 'none' }
    : { type: 'close', fits: close.slice(0, mostOffers) };
}

/** More than three are no help. */
const mostOffers = 3;

/** Every answer whose phrase stands whole in the text: for questions where several may hold. */
export function chooseSeveral(segments: readonly Heard[], check: CheckPhrases): string[] {
  const chosen = segments.flatMap((heard) => {
    const choice = chooseOption(heard, check);
    if (choice.type === 'one') return [choice.fit.id];
    return check.options
      .filter(({ phrases }) => phrases.some((phrase) => findPhrase(heard, phrase) >= 0))
      .map(({ id }) => id);
  });
  return check.options.map(({ id }) => id).filter((id) => chosen.includes(id));
}
