import { EvidenceError } from '../evidence-error.ts';
import { requireInRange } from '../require-numbers.ts';

/** How far a forecast may be from 1 in all. */
const SUM_TOLERANCE = 1e-6;

/**
 * The Brier score of one forecast: the sum over all classes of (forecast - outcome) squared, the
 * outcome being 1 for the class that came true and 0 for the others. 0 is perfect, 2 the worst.
 *
 * This is the form of Brier 1950, Monthly Weather Review 78 (from memory). Another form in use,
 * for two classes, takes one of them only and gives half of it.
 *
 * @param forecast - a probability for each class, 0 to 1, sum 1 within 1e-6
 * @param came - the position of the class that came true
 * @throws EvidenceError `out-of-range`, `not-a-distribution`
 */
export function brierScore(forecast: readonly number[], came: number): number {
  requireForecast(forecast, came);
  return forecast.reduce(
    (sum, probability, index) => sum + (probability - (index === came ? 1 : 0)) ** 2,
    0,
  );
}

/**
 * The logarithmic score of one forecast: minus the natural logarithm of what was forecast for the
 * class that came true, in nats. 0 is perfect; infinite where it was held to be impossible.
 *
 * Source: Good 1952, Journal of the Royal Statistical Society B 14 (from memory). Written there
 * as the logarithm itself, of which more is better; here with its sign turned, so that less is.
 *
 * @param forecast - a probability for each class, 0 to 1, sum 1 within 1e-6
 * @param came - the position of the class that came true
 * @throws EvidenceError `out-of-range`, `not-a-distribution`
 */
export function logScore(forecast: readonly number[], came: number): number {
  requireForecast(forecast, came);
  // Adding 0 turns the -0 of a perfect forecast into 0.
  return -Math.log(forecast[came] ?? 0) + 0;
}

function requireForecast(forecast: readonly number[], came: number): void {
  forecast.forEach((probability, index) => {
    requireInRange(probability, {
      what: 'the forecast of a class',
      least: 0,
      greatest: 1,
      facts: { index },
    });
  });
  const total = forecast.reduce((sum, probability) => sum + probability, 0);
  if (Math.abs(total - 1) > SUM_TOLERANCE) {
    throw new EvidenceError(
      'not-a-distribution',
      `the classes of a forecast sum to ${total}: give every class, so that they sum to 1`,
      { total },
    );
  }
  requireInRange(came, {
    what: 'the class that came true',
    least: 0,
    greatest: forecast.length - 1,
    whole: true,
  });
}
