import { brierScore, logScore } from './forecast-scores.ts';
import type { Outcome } from './outcome.ts';
import { reliabilityTable, type ReliabilityBin } from './reliability-table.ts';

/** What a verdict had said, to be held against what was confirmed. */
export interface Forecast {
  /** The fault that it named. */
  readonly fault: string;
  /** How likely it was held to be, 0 to 1. */
  readonly probability: number;
  /** The likeliest faults with their probabilities; the rest, up to 1, is that of all others. */
  readonly ranking: readonly (readonly [fault: string, probability: number])[];
}

/** An outcome, and what had been said before it was known. */
export interface ForecastOutcome extends Outcome {
  readonly forecast: Forecast;
}

/** How some verdicts fared. */
export interface ForecastRecord {
  readonly cases: number;
  /** How many named the confirmed cause. */
  readonly right: number;
  /** Mean scores; NaN where there is no case, the second also Infinity: `logScore` says when. */
  readonly brier: number;
  readonly log: number;
}

/** The fault that each verdict named, held against the confirmed cause. */
export function verdictTable(outcomes: readonly ForecastOutcome[]): readonly ReliabilityBin[] {
  return reliabilityTable(
    outcomes.map(({ cause, forecast }) => ({
      probability: forecast.probability,
      came: forecast.fault === cause,
    })),
  );
}

/**
 * How verdicts fared. Faults behind those of a ranking are scored as one.
 */
export function forecastRecord(outcomes: readonly ForecastOutcome[]): ForecastRecord {
  return {
    cases: outcomes.length,
    right: outcomes.filter(({ cause, forecast }) => cause === forecast.fault).length,
    brier: mean(outcomes.map((outcome) => brierScore(...classesOf(outcome)))),
    log: mean(outcomes.map((outcome) => logScore(...classesOf(outcome)))),
  };
}

/** The ranking as a forecast over its faults and all others together, and which of them came. */
function classesOf({ cause, forecast }: ForecastOutcome): [readonly number[], number] {
  const shares = forecast.ranking.map(([, share]) => share);
  const rest = Math.max(0, 1 - shares.reduce((sum, share) => sum + share, 0));
  const place = forecast.ranking.findIndex(([fault]) => fault === cause);
  return [[...shares, rest], place < 0 ? shares.length : place];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
