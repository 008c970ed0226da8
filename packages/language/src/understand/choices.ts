import { type Heard, isPhrase, findPhrase } from '../typed/heard.ts';
import { type Fit, fitOptions } from './fit.ts';
import type { CheckPhrases, OptionPhrases } from './lexicon.ts';

/** What came of holding a text against the answers of one check. */
export type Choice =
  | { readonly type: 'one'; readonly fit: Fit }
  /** Two or three that it may be. */
  | { readonly type: 'close'; readonly fits: readonly Fit[] }
  | { readonly type: 'none' };

/** Limits of the fit, common practice, no source: set so that each phrase left out is still found. */
const taken = 0.56;
const margin = 0.14;
const offered = 0.25;

/** More terms than this are a story; which of the answers it denies is then left alone. */
const shortTerms = 4;

/** More than three are no help. */
const mostOffers = 3;

/** The answer that the text is word for word, or else undefined. */
export function exactChoice(heard: Heard, options: readonly OptionPhrases[]): string | undefined {
  const exact = options.filter(({ phrases }) => phrases.some((phrase) => isPhrase(heard, phrase)));
  return exact.length === 1 ? exact[0]?.id : undefined;
}

/** Which of a check's answers the text means. */
export function chooseOption(heard: Heard, check: CheckPhrases): Choice {
  const fits = fitOptions(heard, check);
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

/** Every answer whose phrase stands whole in the text: for questions where several may hold. */
export function chooseSeveral(segments: readonly Heard[], check: CheckPhrases): string[] {
  const chosen = segments.flatMap((heard) => {
    const choice = chooseOption(heard, check);
    if (choice.type === 'one') return [choice.fit.id];
    return check.options
      .filter(({ phrases }) => phrases.some((phrase) => findPhrase(heard, phrase) >= 0))
      .map(({ id }) => id);
  });
  const ids = check.options.map(({ id }) => id).filter((id) => chosen.includes(id));
  // "Apart from that nothing" is not "none of these".
  return ids.length > 1 ? ids.filter((id) => id !== 'none') : ids;
}
