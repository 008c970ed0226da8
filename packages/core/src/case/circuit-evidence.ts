/**
 * How likely a reading, or what is seen, is in each hidden state of the circuit.
 */
import {
  batteriesInSeries,
  normalProbability,
  readingRange,
  standardUncertainty,
  type Bound,
  type LimitContext,
} from '@keyturn/electrics';
import { bearingOn, predictReading, type Measured } from '../circuit/predict-reading.ts';
import type { CircuitState } from '../circuit/solve-state.ts';
import type { AnswerForm, Flow } from '../flow/flow.ts';
import { boundsOf, type Findings, type Placed } from './findings.ts';
import { choiceChances, type AnswerChances, type Hypotheses } from './hypotheses.ts';

type ReadingForm = Extract<AnswerForm, { kind: 'reading' }>;
type ReadingModel = NonNullable<Flow['circuit']>['readings'][string];

/** A reading, as its check and the circuit's model have it. */
interface ModelledReading {
  readonly form: ReadingForm;
  readonly model: ReadingModel;
}

function modelled(flow: Flow, check: string): ModelledReading | undefined {
  const form = flow.checks[check]?.form;
  const model = flow.circuit?.readings[check];
  return form?.kind === 'reading' && model !== undefined ? { form, model } : undefined;
}

/** True where the circuit's state tells of a check. */
export function isOfCircuit({ circuit }: Flow, check: string): boolean {
  return circuit?.readings[check] !== undefined || circuit?.choices[check] !== undefined;
}

/** What was measured, as far as a reading goes by it. */
function measuredFor({ reads }: ReadingModel, flow: Flow, { limits, all }: Findings): Measured {
  const recharged = Object.entries(flow.circuit?.readings ?? {}).some(
    ([check, model]) => model.reads === 'recharged' && all.has(check),
  );
  return bearingOn(reads, {
    ...(limits.restVoltage === undefined ? {} : { rest: limits.restVoltage }),
    ...(limits.crankVoltage === undefined ? {} : { crank: limits.crankVoltage }),
    ...(limits.crankCurrent === undefined ? {} : { current: limits.crankCurrent }),
    ...(limits.rating === undefined ? {} : { label: limits.rating }),
    ...(recharged ? { isRecharged: true } : {}),
  });
}

/** Width of the figures that a meter can show there, in the check's unit. */
function widthOf({ form }: ModelledReading, limits: LimitContext): number {
  const { low, high } = readingRange(form.range, batteriesInSeries(limits) === 2 ? 24 : 12);
  return high - low;
}

/** Mean and standard deviation of a reading in a state, with a meter of this uncertainty. */
function spreadIn(
  state: CircuitState,
  model: ReadingModel,
  given: { readonly measured: Measured; readonly uncertainty: number },
): { readonly means: readonly number[]; readonly deviation: number } {
  const { mean, means, load, swing } = predictReading(state, model.reads, given.measured);
  const own = model.spread * state.kind.series;
  const deviation = Math.hypot(own, model.part * load, swing, given.uncertainty);
  return { means: means ?? [mean], deviation };
}

/** Where the model is only roughly right of a vehicle, it lies so many times as far from it. */
const roughTimes = 3;

const perRoot = 1 / Math.sqrt(2 * Math.PI);

/** Density at so many deviations from the mean, for each deviation; `rough` is a share. */
function bell(away: number, rough: number): number {
  const squared = away * away;
  const far = (rough / roughTimes) * Math.exp((-0.5 * squared) / roughTimes ** 2);
  return perRoot * ((1 - rough) * Math.exp(-0.5 * squared) + far);
}

/** The probability to lie below so many deviations from the mean. */
function below(away: number, rough: number): number {
  return (1 - rough) * normalProbability(away) + rough * normalProbability(away / roughTimes);
}

/** The same, below the middle of a zone, of vehicles of which equally many have each mean. */
function belowAll(
  means: readonly number[],
  zone: { readonly middle: number; readonly deviation: number },
  { deviation, rough }: { readonly deviation: number; readonly rough: number },
): number {
  const whole = Math.hypot(deviation, zone.deviation);
  let sum = 0;
  for (const mean of means) sum += below((zone.middle - mean) / whole, rough);
  return sum / means.length;
}

/** A figure that was read. */
interface ReadFigure {
  readonly check: string;
  readonly placed: Placed;
  readonly value: number;
  readonly findings: Findings;
}

/** Density of a figure that was read, in each solved state, for each unit of the check. */
export interface ReadDensities {
  /** What these were worked out from: on one vehicle nothing else has this name. */
  readonly name: string;
  readonly row: Float64Array;
}

/** The densities of a reading; undefined where the circuit tells nothing of it. */
export function densities(
  flow: Flow,
  hypotheses: Hypotheses,
  reading: ReadFigure,
): ReadDensities | undefined {
  const odd = oddDensity(flow, reading);
  const likely = likelyDensities(flow, hypotheses, reading);
  return odd === undefined || likely === undefined
    ? undefined
    : { name: likely.name, row: likely.row.map((density) => density + odd) };
}

/** In each solved state the chance that a figure that was read is odd: that it says nothing. */
export function oddChances(
  flow: Flow,
  hypotheses: Hypotheses,
  reading: ReadFigure,
): Float64Array | undefined {
  const odd = oddDensity(flow, reading);
  return odd === undefined
    ? undefined
    : likelyDensities(flow, hypotheses, reading)?.row.map((density) => odd / (density + odd));
}

/** Density of a figure that is odd, of all figures that are read. */
function oddDensity(flow: Flow, { check, findings }: ReadFigure): number | undefined {
  const known = modelled(flow, check);
  return known && known.model.odd / widthOf(known, findings.limits);
}

/** Density of a figure that is as the state has it, of all figures that are read. */
function likelyDensities(
  flow: Flow,
  hypotheses: Hypotheses,
  reading: ReadFigure,
): ReadDensities | undefined {
  const { check, placed, value, findings } = reading;
  const known = modelled(flow, check);
  if (known === undefined) return undefined;
  const { model } = known;
  const scale = placed.quantity.value === 0 ? 1 : value / placed.quantity.value;
  const uncertainty = standardUncertainty(placed.quantity) * Math.abs(scale);
  const measured = measuredFor(model, flow, findings);
  const name = JSON.stringify([check, value, uncertainty, measured]);
  const row = hypotheses.densities.of(name, () =>
    densitiesOf(model, hypotheses.states(), { value, uncertainty, measured }),
  );
  return { name, row };
}

function densitiesOf(
  model: ReadingModel,
  states: readonly CircuitState[],
  given: { readonly value: number; readonly uncertainty: number; readonly measured: Measured },
): Float64Array {
  const row = new Float64Array(states.length);
  for (const [index, state] of states.entries()) {
    const { means, deviation } = spreadIn(state, model, given);
    let sum = 0;
    for (const mean of means) sum += bell((given.value - mean) / deviation, model.rough);
    row[index] = ((1 - model.odd) * sum) / means.length / deviation;
  }
  return row;
}

/** Density of a figure that might be anything. */
export function anyDensity(flow: Flow, check: string, limits: LimitContext): number {
  const known = modelled(flow, check);
  return known === undefined ? 0 : 1 / widthOf(known, limits);
}

/** The standard uncertainty of a usual meter in the middle of its range, by unit: to plan with. */
const usualUncertainty = { V: 0.04, A: 4 };

/**
 * How likely each answer of a check is in each solved state; undefined where the circuit tells
 * nothing of it, or its bands cannot be given.
 */
export function answerChances(
  flow: Flow,
  hypotheses: Hypotheses,
  asked: { readonly check: string; readonly findings: Findings },
): AnswerChances | undefined {
  const { check, findings } = asked;
  const choice = flow.circuit?.choices[check];
  if (choice !== undefined) return choiceChances(hypotheses, choice);
  const known = modelled(flow, check);
  if (known === undefined) return undefined;
  const { bands, unit } = known.form;
  const bounds = boundsOf(bands, unit, findings.limits);
  if (bounds === undefined) return undefined;
  const measured = measuredFor(known.model, flow, findings);
  const name = JSON.stringify([check, bounds.map(({ low, high }) => [low, high]), measured]);
  return hypotheses.chances.of(name, () => {
    const rows = bandRows(known, hypotheses.states(), { bounds, measured });
    return {
      name,
      rows: new Map(bands.map(({ id }, index) => [id, rows[index] ?? new Float64Array()])),
    };
  });
}

/** A zone is a normal limit whose 5 % and 95 % points are its ends. */
const zoneDeviations = 2 * 1.645;

function bandRows(
  { form, model }: ModelledReading,
  states: readonly CircuitState[],
  given: { readonly bounds: readonly Bound[]; readonly measured: Measured },
): readonly Float64Array[] {
  const { bounds, measured } = given;
  const count = form.bands.length;
  const rows = form.bands.map(() => new Float64Array(states.length));
  const uncertainty = form.unit === 'A' ? usualUncertainty.A : usualUncertainty.V;
  const zones = bounds.map(({ low, high }) => ({
    middle: (low + high) / 2,
    deviation: (high - low) / zoneDeviations,
  }));
  for (const [index, state] of states.entries()) {
    const { means, deviation } = spreadIn(state, model, { measured, uncertainty });
    let passed = 0;
    for (let band = 0; band < count; band += 1) {
      const zone = zones[band];
      const reached =
        zone === undefined
          ? 1
          : Math.max(passed, belowAll(means, zone, { deviation, rough: model.rough }));
      const row = rows[band];
      if (row) row[index] = (1 - model.odd) * (reached - passed) + model.odd / count;
      passed = reached;
    }
  }
  return rows;
}
