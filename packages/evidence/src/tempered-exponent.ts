import { requireInRange } from './require-numbers.ts';

/**
 * The exponent for each of several findings that measure one cause, so that they are not counted
 * as if they were independent: 1 / (1 + (count - 1) correlation).
 *
 * It is the effective-sample-size factor of equally correlated observations (Kish 1965, Survey
 * Sampling, the design effect; from memory). A hidden state in the hypotheses is better where the
 * cause can be modelled.
 *
 * @param count - findings that share the cause, a whole number, 1 or more
 * @param correlation - their mean correlation, 0 (independent) to 1 (one finding repeated)
 * @returns above 0 to 1
 * @throws EvidenceError `out-of-range`
 */
export function temperedExponent(count: number, correlation: number): number {
  requireInRange(count, {
    what: 'the count of findings',
    least: 1,
    greatest: Number.MAX_SAFE_INTEGER,
    whole: true,
  });
  requireInRange(correlation, { what: 'the correlation', least: 0, greatest: 1 });
  return 1 / (1 + (count - 1) * correlation);
}
