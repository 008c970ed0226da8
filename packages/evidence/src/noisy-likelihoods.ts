import { EvidenceError } from './evidence-error.ts';
import { requireInRange } from './require-numbers.ts';

/** How far a row of probabilities may be from 1 in all: room for figures written to six digits. */
const SUM_TOLERANCE = 1e-6;

/**
 * The probability of each answer a person gives, allowing for mistakes: (1 - e) L + e U.
 *
 * U is where a mistaken answer lands: evenly on the neighbours of the right one, or evenly on all
 * answers, the right one too, where none are named. The result sums to 1 as the row does.
 *
 * @param row - P(each answer of one check | one hypothesis), 0 to 1, sum 1 within 1e-6
 * @param errorRate - e, how often the answer is mistaken, 0 to 1
 * @param neighbours - for each answer the positions of those it is mistaken for; an answer with
 *   none is never mistaken
 * @throws EvidenceError `out-of-range`, or `not-a-distribution` when the row does not sum to 1
 */
export function noisyLikelihoods(
  row: readonly number[],
  errorRate: number,
  neighbours?: readonly (readonly number[])[],
): readonly number[] {
  requireInRange(errorRate, { what: 'the error rate', least: 0, greatest: 1 });
  requireDistribution(row);
  const noisy = row.map((probability) => (1 - errorRate) * probability);
  row.forEach((probability, answer) => {
    const targets = neighbours === undefined ? [...row.keys()] : (neighbours[answer] ?? []);
    const mistaken = errorRate * probability;
    for (const target of targets.length === 0 ? [answer] : targets) {
      requireInRange(target, {
        what: 'the position of a neighbour',
        least: 0,
        greatest: row.length - 1,
        whole: true,
        facts: { answer },
      });
      noisy[target] = (noisy[target] ?? 0) + mistaken / Math.max(1, targets.length);
    }
  });
  return noisy;
}

function requireDistribution(row: readonly number[]): void {
  row.forEach((probability, answer) => {
    requireInRange(probability, {
      what: 'the probability of an answer',
      least: 0,
      greatest: 1,
      facts: { answer },
    });
  });
  const total = row.reduce((sum, probability) => sum + probability, 0);
  if (Math.abs(total - 1) <= SUM_TOLERANCE) return;
  throw new EvidenceError(
    'not-a-distribution',
    `the answers of a check sum to ${total}: give every answer, so that they sum to 1`,
    { total },
  );
}
