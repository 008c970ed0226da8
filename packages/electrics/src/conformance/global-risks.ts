import { conformanceProbability, type Tolerance } from './conformance.ts';
import { ElectricsError } from '../electrics-error.ts';

/** A batch of things and how they are inspected, all in one unit. */
export type Inspection = {
  /** What is known of the true values before measuring: a normal distribution. */
  readonly prior: { readonly mean: number; readonly deviation: number };
  /** The standard uncertainty of one measurement. */
  readonly measurementUncertainty: number;
  /** Which true values conform. */
  readonly tolerance: Tolerance;
  /** Which measured values are accepted. */
  readonly acceptance: Tolerance;
};

/**
 * What is to be expected of one thing drawn from the batch: that it conforms, that it is accepted
 * though it does not conform (`consumersRisk`), that it is rejected though it conforms
 * (`producersRisk`).
 */
export type GlobalRisks = {
  readonly conformance: number;
  readonly consumersRisk: number;
  readonly producersRisk: number;
};

// Gauss-Legendre nodes above 0 and their weights, order 10: Abramowitz and Stegun, Table 25.4.
const gauss = [
  [0.148_874_338_981_631_2, 0.295_524_224_714_752_9],
  [0.433_395_394_129_247_2, 0.269_266_719_309_996_3],
  [0.679_409_568_299_024_4, 0.219_086_362_515_982],
  [0.865_063_366_688_984_5, 0.149_451_349_150_580_6],
  [0.973_906_528_517_171_7, 0.066_671_344_308_688_1],
] as const;

type Span = { readonly from: number; readonly to: number };

function integral(density: (value: number) => number, { from, to }: Span): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const [node, weight] of gauss) {
    sum += weight * (density(middle - half * node) + density(middle + half * node));
  }
  return sum * half;
}

// Beyond so many deviations a normal distribution has 1e-19 of its area.
const reach = 9;
const panels = 12;

/**
 * The spans over which to integrate, ascending. None holds a limit, and all are short beside the
 * prior's deviation and, where acceptance turns over, beside the uncertainty.
 */
function spansOf({ prior, measurementUncertainty, tolerance, acceptance }: Inspection): Span[] {
  const first = prior.mean - reach * prior.deviation;
  const last = prior.mean + reach * prior.deviation;
  const turns = [acceptance.low, acceptance.high].flatMap((limit) =>
    limit === undefined ? [] : [-reach, 0, reach].map((z) => limit + z * measurementUncertainty),
  );
  const limits = [tolerance.low, tolerance.high].flatMap((limit) => limit ?? []);
  const breaks = [...limits, ...turns].filter((value) => value > first && value < last);
  const ends = [first, ...breaks.sort((a, b) => a - b), last];
  return ends.slice(1).flatMap((end, index) => {
    const start = ends[index] ?? first;
    const step = (end - start) / panels;
    return Array.from({ length: panels }, (_, panel) => ({
      from: start + panel * step,
      to: start + (panel + 1) * step,
    }));
  });
}

function requireInspection({ prior, measurementUncertainty }: Inspection): void {
  const { mean, deviation } = prior;
  const sound = deviation > 0 && measurementUncertainty >= 0;
  if (!sound || !Number.isFinite(mean + deviation + measurementUncertainty)) {
    throw new ElectricsError('value-out-of-range', {
      mean: String(mean),
      deviation: String(deviation),
      measurementUncertainty: String(measurementUncertainty),
      low: 0,
    });
  }
}

/**
 * The consumer's and the producer's risk of an inspection, by quadrature, and the probability that
 * a thing of the batch conforms before anything is measured.
 *
 * The error of measurement is normal and does not depend on the thing measured. Source: JCGM
 * 106:2012, clause 9.5 (from memory). Throws `value-out-of-range` unless the deviation is above 0,
 * the uncertainty 0 or more, and no low end above its high end.
 */
export function globalRisks(inspection: Inspection): GlobalRisks {
  requireInspection(inspection);
  const { prior, measurementUncertainty: uncertainty, tolerance, acceptance } = inspection;
  const { low = -Infinity, high = Infinity } = tolerance;
  const accepted = (value: number): number =>
    conformanceProbability({ value, uncertainty }, acceptance);
  const prevalence = (value: number): number =>
    Math.exp(-(((value - prior.mean) / prior.deviation) ** 2) / 2) /
    (prior.deviation * Math.sqrt(2 * Math.PI));
  const conformance = conformanceProbability(
    { value: prior.mean, uncertainty: prior.deviation },
    tolerance,
  );
  let consumersRisk = 0;
  let producersRisk = 0;
  for (const span of spansOf(inspection)) {
    const middle = (span.from + span.to) / 2;
    if (middle < low || middle > high) {
      consumersRisk += integral((value) => prevalence(value) * accepted(value), span);
    } else {
      producersRisk += integral((value) => prevalence(value) * (1 - accepted(value)), span);
    }
  }
  return { conformance, consumersRisk, producersRisk };
}
