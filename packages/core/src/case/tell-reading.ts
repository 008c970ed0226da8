/**
 * What is said of readings: each on its scale, what settles it where it is too close to a bound,
 * and the numbers behind a case.
 */
import {
  circuitLosses,
  expectedReading,
  standardUncertainty,
  type Bound,
  type ExpectedReading,
  type LimitContext,
  type Quantity,
} from '@keyturn/electrics';
import { certain } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { likeliest, type Findings, type Placed } from './findings.ts';
import type { NumbersMessage, ReadingMessage, ScaleBound, ScaleSpan, Settling } from './message.ts';
import { isAskable, isToReadAgain } from './open-checks.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** The latest reading of a check on its scale; nothing where none was taken by a meter. */
export function readingMessage(
  flow: Flow,
  state: CaseState,
  check: string,
): readonly ReadingMessage[] {
  const { findings } = assess(flow, state);
  const placed = findings.placed.get(check);
  if (placed === undefined) return [];
  const best = likeliest(placed.weights);
  const borderline = best !== undefined && best[1] < certain;
  const expected = expectedOf(flow, findings, check);
  return [
    {
      kind: 'reading',
      check,
      quantity: placed.quantity,
      uncertainty: standardUncertainty(placed.quantity),
      unit: placed.bounds?.[0]?.unit ?? placed.quantity.unit,
      bands: placed.bands.map(({ id }) => id),
      bounds: (placed.bounds ?? []).map(scaleBound),
      band: best?.[0] ?? '',
      weights: Object.entries(placed.weights),
      borderline,
      ...(borderline ? { settling: settlingOf(flow, state, placed) } : {}),
      ...(expected === undefined ? {} : { expected }),
    },
  ];
}

/** Probability from which a band counts as one of those between which a reading lies. */
const leastShare = 1 - certain;

function settlingOf(flow: Flow, state: CaseState, placed: Placed): Settling {
  const check = flow.checks[placed.check];
  if (check?.form.kind !== 'reading') return { by: 'nothing' };
  if (isToReadAgain(flow, state, check)) return { by: 'repeat' };
  const { settledInTime, settledBy } = check.form;
  if (settledInTime.some((band) => (placed.weights[band] ?? 0) >= leastShare)) {
    return { by: 'time' };
  }
  const other = settledBy.find((id) => {
    const one = flow.checks[id];
    return one !== undefined && isAskable(flow, state, one);
  });
  return other === undefined ? { by: 'nothing' } : { by: 'check', check: other };
}

/** A bound as it is drawn. */
export function scaleBound({ low, high, source }: Bound): ScaleBound {
  return { low, high, source };
}

/** What a reading should show on this vehicle when nothing is wrong with it. */
export function expectedOf(flow: Flow, findings: Findings, id: string): ScaleSpan | undefined {
  const check = flow.checks[id];
  const name = check?.form.kind === 'reading' ? check.form.expect : flow.computed[id]?.expect;
  if (name === undefined) return undefined;
  const limits = check?.like === undefined ? findings.limits : withoutMeasured(findings.limits);
  const expected = expectedReading(name, forExpected(name, limits));
  if (expected === undefined) return undefined;
  const { low, best, high, source } = expected;
  return { low, best, high, source };
}

/** After a repair what was measured before it no longer holds. */
function withoutMeasured(limits: LimitContext): LimitContext {
  return { ...limits, restVoltage: undefined, crankVoltage: undefined, crankCurrent: undefined };
}

/** What a sound battery rests at, and a sound starter draws, does not go by what was measured. */
function forExpected(name: ExpectedReading, limits: LimitContext): LimitContext {
  return name === 'battery.rest' ? { ...limits, restVoltage: undefined } : limits;
}

/** Every reading taken so far, those worked out from others too, and where the volts are lost. */
export function numbersMessage(flow: Flow, state: CaseState): NumbersMessage {
  const { placed } = assess(flow, state).findings;
  return {
    kind: 'numbers',
    readings: [...placed.keys()].flatMap((check) => readingMessage(flow, state, check)),
    losses: lossesOf(flow, state),
  };
}

/** Where the missing volts are. */
export function lossesOf(flow: Flow, state: CaseState): NumbersMessage['losses'] {
  const reading = (quantity: string): Quantity | undefined => {
    const answer = state.answers[flow.measured[quantity] ?? '']?.findLast(isSaid);
    return isReading(answer) ? answer : undefined;
  };
  const current = reading('crankCurrent');
  return circuitLosses({
    rest: reading('restVoltage'),
    crank: reading('crankVoltage'),
    positive: reading('positiveDrop'),
    ground: reading('groundDrop'),
    contacts: reading('contactsDrop'),
    current: current !== undefined && current.value > 0 ? current : undefined,
  });
}
