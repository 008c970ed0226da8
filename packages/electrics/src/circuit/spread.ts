import type { LimitContext } from '../limits/limit-context.ts';
import type { Fuel } from './possible-displacement.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import {
  bestValues,
  vehicleCircuit,
  vehicleFigures,
  vehicleKind,
  vehicleSpans,
  type Span,
} from './vehicle-circuit.ts';

function spreadFor(
  context: LimitContext,
  fuel: Fuel,
  read: (circuit: CrankingCircuit) => number,
): Span {
  const kind = vehicleKind(context, fuel);
  const spans = vehicleSpans(context, fuel);
  const usual = bestValues(spans);
  const best = read(vehicleCircuit(usual, kind));
  let down = 0;
  let up = 0;
  for (const figure of vehicleFigures) {
    const { low, high } = spans[figure];
    if (low === high) continue;
    const one = read(vehicleCircuit({ ...usual, [figure]: low }, kind)) - best;
    const other = read(vehicleCircuit({ ...usual, [figure]: high }, kind)) - best;
    down = Math.hypot(down, Math.min(0, one, other));
    up = Math.hypot(up, Math.max(0, one, other));
  }
  return { low: best - down, best, high: best + up };
}

/**
 * What `read` gives for the sound vehicle of a context, with its spread: every figure that is not
 * known is put to its ends in turn, and their effects add as squares (JCGM 100:2008, 5.1.2 and
 * 5.1.3, note 2). Where the fuel is not known the spread reaches over both.
 */
export function spreadOver(
  context: LimitContext,
  read: (circuit: CrankingCircuit) => number,
): Span {
  const { fuel, nominal } = context;
  if (fuel !== undefined || nominal === 24) return spreadFor(context, fuel ?? 'diesel', read);
  const petrol = spreadFor(context, 'petrol', read);
  const diesel = spreadFor(context, 'diesel', read);
  return {
    low: Math.min(petrol.low, diesel.low),
    best: (petrol.best + diesel.best) / 2,
    high: Math.max(petrol.high, diesel.high),
  };
}
