/**
 * A way of finding the fault that nobody has: it knows the fault at once, asks nothing, and does what
 * the flow has for it, as surely as the trade allows. No bound: a battery that is worn, and not known
 * to be, is charged, which costs less here than the new one that it needs.
 */
import { openCase, type Chart } from '@keyturn/core';
import { assess } from '../../packages/core/src/case/assessment.ts';
import { remedyFor, sendFor } from '../../packages/core/src/case/remedy.ts';
import type { Chooser } from './measure.ts';

/** Knows the fault; of two at once that which is put right first. */
export function knownAtOnce(chart: Chart): Chooser {
  const { flow } = chart;
  return ({ card, cause }) => {
    const at = '2026-01-01T08:00:00.000Z';
    const { state } = openCase(chart, { id: card.id, at, context: card.context }).case;
    const [first] = cause.faults;
    const fault = flow.faults[first];
    if (fault === undefined) throw new Error(`the flow has no fault ${first}`);
    const judged = { flow, fault, strength: fault.best };
    const assessment = assess(flow, state);
    return {
      fault: first,
      strength: fault.best,
      remedy: remedyFor(judged, assessment),
      send: sendFor(judged, assessment),
      ranking: [[first, 1]],
      asked: [],
      minutes: 0,
    };
  };
}
