import { requireInRange } from '../require-numbers.ts';

/** What was said of one thing, and whether it came true. */
export interface Claim {
  /** The probability that was stated, 0 to 1. */
  readonly probability: number;
  /** True where it came true. */
  readonly came: boolean;
}

/** Claims of about the same probability. */
export interface ReliabilityBin {
  /** Least probability, included; a tenth. */
  readonly from: number;
  /** Greatest probability, excluded but for 1. */
  readonly to: number;
  /** How many claims. */
  readonly count: number;
  /** How many of them came true. */
  readonly came: number;
  /** The mean of the probabilities stated; null where there is no claim. */
  readonly meanForecast: number | null;
  /** The share of the claims that came true; null where there is no claim. */
  readonly observedFrequency: number | null;
}

const BINS = 10;

/**
 * Claims in ten bins of equal width, each with the mean of what was said and how often it came
 * true. Where the two are alike the probabilities can be taken at their word; a bin of few claims
 * says little.
 *
 * @returns ten bins, from the least probability to the greatest
 * @throws EvidenceError `out-of-range`
 */
export function reliabilityTable(claims: readonly Claim[]): readonly ReliabilityBin[] {
  const bins: Claim[][] = Array.from({ length: BINS }, () => []);
  claims.forEach((claim, index) => {
    requireInRange(claim.probability, {
      what: 'a stated probability',
      least: 0,
      greatest: 1,
      facts: { index },
    });
    bins[Math.min(BINS - 1, Math.floor(claim.probability * BINS))]?.push(claim);
  });
  return bins.map((inside, index) => {
    const count = inside.length;
    const came = inside.filter((claim) => claim.came).length;
    const sum = inside.reduce((total, { probability }) => total + probability, 0);
    return {
      from: index / BINS,
      to: (index + 1) / BINS,
      count,
      came,
      meanForecast: count === 0 ? null : sum / count,
      observedFrequency: count === 0 ? null : came / count,
    };
  });
}
