import { findPhrase, hasOtherNumber, type Heard, isContradicted } from '../typed/heard.ts';
import { again, flip, type Terms } from '../typed/terms.ts';
import type { Meanings } from '../typed/vocabulary.ts';
import type { OptionPhrases } from './lexicon.ts';
import type { Weights } from './weights.ts';

/** How well a text fits one answer, 0 to 1; below 0 where the text denies it. */
export interface Fit {
  readonly id: string;
  readonly label: string;
  readonly score: number;
  /** The phrase that fits best, and how much of it was said, 0 to 1. */
  readonly phrase: Terms;
  readonly recall: number;
  /** How much of what was said the answer accounts for, 0 to 1. */
  readonly coverage: number;
}

/** Limits of the fit, common practice, no source: set so that each phrase left out is still found. */
const recallShare = 0.5;

/** What a word says that no answer has. */
const strangeWeight = 0.42;

/** So much weight of words of one answer, from whichever phrases, is as good as a phrase. */
const enoughWeight = 1.6;

/** Less weight than this of words that are said is little to go by, whatever the phrase. */
const leastEvidence = 0.5;

/** What is left of the fit of an answer of which the text denies a word. */
const deniedShare = 0.6;

/** What is left of it where the text denies something that no answer says. */
const strangeDenialShare = 0.85;

/** What is left of the fit of an answer said once, where the text says it over and over. */
const onceShare = 0.7;

/** Words in another order, or with others between them, say a little less. */
const outOfOrder = 0.04;

/** What a text is held against. */
export interface Answerable {
  readonly options: readonly OptionPhrases[];
  readonly weights: Weights;
  /** Terms that name what is asked about. */
  readonly topic: ReadonlySet<string>;
}

/** How well each answer fits, best first. */
export function fitOptions(heard: Heard, { options, weights, topic }: Answerable): Fit[] {
  const said = heard.at.map((meanings) => weightOf(meanings, weights, topic));
  const whole = said.reduce((sum, weight) => sum + weight, 0);
  const denied = heard.terms.filter((term) => term.startsWith('!')).map(flip);
  const isAgain = heard.terms.includes(again);
  return options
    .map((option) => fitOption(heard, option, { weights, topic, said, whole, denied, isAgain }))
    .sort((one, other) => other.score - one.score);
}

interface Scale {
  readonly weights: Weights;
  readonly topic: ReadonlySet<string>;
  /** What each term of the text weighs. */
  readonly said: readonly number[];
  readonly whole: number;
  /** What the text denies, and whether it says something over and over. */
  readonly denied: readonly string[];
  readonly isAgain: boolean;
}

function fitOption(heard: Heard, option: OptionPhrases, scale: Scale): Fit {
  const { id, label, phrasesIn, isNegative, terms } = option;
  const { weights, topic, said, whole, isAgain } = scale;
  let best: { score: number; phrase: Terms } = { score: 0, phrase: [] };
  let isDenied = false;
  for (const phrase of phrasesIn(heard)) {
    if (hasOtherNumber(heard, phrase)) continue;
    if (isContradicted(heard, phrase)) {
      isDenied = !isNegative;
      continue;
    }
    const recall = recallOf(heard, phrase, weights);
    if (recall > best.score) best = { score: recall, phrase };
  }
  if (best.score === 0 && isDenied)
    return { id, label, phrase: [], recall: 0, coverage: 0, score: -1 };
  let covered = 0;
  let distinct = 0;
  heard.at.forEach((meanings, index) => {
    let share = 0;
    let own = 0;
    for (const [term, like] of meanings) {
      const isOwn = terms.has(term);
      if (isOwn || topic.has(term)) share = Math.max(share, like);
      if (isOwn) own = Math.max(own, like * (weights.get(term) ?? 0));
    }
    covered += share * (said[index] ?? 0);
    distinct += own;
  });
  const coverage = whole === 0 ? 0 : covered / whole;
  const isInOrder = best.score < 1 || findPhrase(heard, best.phrase) >= 0;
  const byPhrase =
    recallShare * best.score + (1 - recallShare) * coverage - (isInOrder ? 0 : outOfOrder);
  const byWords = coverage * Math.min(1, distinct / enoughWeight);
  const score =
    Math.max(byPhrase, byWords) *
    Math.min(1, distinct / leastEvidence) *
    (isNegative ? 1 : againstShare(scale, terms)) *
    (isAgain && !terms.has(again) ? onceShare : 1);
  return {
    id,
    label,
    phrase: best.phrase,
    recall: best.score,
    coverage,
    score: isDenied && score < offeredDenied ? -1 : score,
  };
}

/**
 * What is left of the fit of an answer that is said without denying, where the text denies: all of
 * it where only other answers are denied ("not corroded but loose").
 */
function againstShare({ denied, weights }: Scale, own: ReadonlySet<string>): number {
  if (denied.some((term) => own.has(term))) return deniedShare;
  return denied.some((term) => !weights.has(term)) ? strangeDenialShare : 1;
}

/** An answer that is denied in some other way of saying it must fit this well. */
const offeredDenied = 0.35;

function weightOf(meanings: Meanings, weights: Weights, topic: ReadonlySet<string>): number {
  let weight = 0;
  for (const [term, likeness] of meanings) {
    const known =
      weights.get(term) ?? weights.get(flip(term)) ?? (topic.has(term) ? strangeWeight : 0);
    weight = Math.max(weight, known * likeness);
  }
  return weight === 0 ? strangeWeight : Math.max(weight, lightest);
}

/** Even a word that all answers have is a word that was said. */
const lightest = 0.1;

/** How much of a phrase is said, by weight. */
function recallOf({ all }: Heard, phrase: Terms, weights: Weights): number {
  let whole = 0;
  let matched = 0;
  for (const term of phrase) {
    const weight = Math.max(weights.get(term) ?? strangeWeight, lightest);
    whole += weight;
    matched += weight * (all.get(term) ?? 0);
  }
  return whole === 0 ? 0 : matched / whole;
}
