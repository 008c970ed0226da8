import type { Fit } from './fit.ts';
import type { CheckPhrases } from './lexicon.ts';
import type { Understood } from './understood.ts';

/** An answer that a text fits, and the check that it answers. */
export interface FoundAnswer {
  readonly check: CheckPhrases;
  readonly fit: Fit;
}

/** Offers at most three answers to pick from. */
export function offersOf(found: readonly FoundAnswer[]): Understood {
  const offers = found
    .slice(0, mostOffers)
    .map(({ check, fit }) => ({ check: check.id, value: fit.id, label: fit.label }));
  return { type: 'offers', offers };
}

/** More than three are no help. */
const mostOffers = 3;
