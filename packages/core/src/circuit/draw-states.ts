/**
 * The hidden states of a set of faults, drawn evenly from what the flow declares and from what
 * `electrics` knows of the vehicle, and solved.
 */
import { vehicleKind, vehicleSpans, type Fuel, type LimitContext } from '@keyturn/electrics';
import type { CircuitMode } from '../flow/flow.ts';
import {
  circuitFigures,
  knownFigures,
  quantile,
  type CircuitFigure,
  type CircuitFigures,
  type Quantiles,
} from './figures.ts';
import { evenPlaces } from './low-discrepancy.ts';
import { solveState, type CircuitState } from './solve-state.ts';

/** A state and how likely it is within its set. */
export interface WeightedState {
  readonly state: CircuitState;
  readonly weight: number;
}

/** How figures are distributed on a vehicle, by its fuel. */
export type UsualFigures = Readonly<Record<Fuel, Partial<Record<CircuitFigure, Quantiles>>>>;

/** Of vehicles whose fuel is not known, the part that burns petrol. Common practice, no source. */
const petrolPart = 0.6;

/** What is usual on the vehicle of a context: the figures that `electrics` knows, then `declared`. */
export function usualFigures(
  context: LimitContext,
  declared: Partial<Record<CircuitFigure, Quantiles>>,
): UsualFigures {
  const of = (fuel: Fuel): UsualFigures[Fuel] => ({ ...knownOf(context, fuel), ...declared });
  return { petrol: of('petrol'), diesel: of('diesel') };
}

function knownOf(context: LimitContext, fuel: Fuel): Record<(typeof knownFigures)[number], Quantiles> {
  // What was measured is weighed against each state, and must not shape it beforehand.
  const unmeasured = { ...context, restVoltage: undefined, crankVoltage: undefined, crankCurrent: undefined };
  const spans = vehicleSpans(unmeasured, fuel);
  const points = ({ low, best, high }: { low: number; best: number; high: number }): Quantiles => [
    low,
    best,
    high,
  ];
  return {
    rating: points(spans.ratingA),
    health: points(spans.health),
    temperature: points(spans.temperatureC),
    displacement: points(spans.displacementL),
    drag: points(spans.drag),
    'positive-clamp': points(spans.clampMohm),
    'negative-clamp': points(spans.clampMohm),
    positive: points(spans.positiveMohm),
    ground: points(spans.groundMohm),
    contacts: points(spans.contactsMohm),
  };
}

/** Draws and solves the states of one mode. */
function statesOfMode(
  mode: CircuitMode,
  count: number,
  scope: { readonly context: LimitContext; readonly usual: UsualFigures },
): readonly CircuitState[] {
  const { context, usual } = scope;
  const places = circuitFigures.map((_, dimension) => evenPlaces(count, dimension));
  const fuels = evenPlaces(count, circuitFigures.length);
  return Array.from({ length: count }, (_, point) => {
    const fuel = context.fuel ?? fuelAt(context, fuels[point] ?? 0);
    const figures: Partial<Record<CircuitFigure, number>> = {};
    for (const [dimension, figure] of circuitFigures.entries()) {
      const values = mode.figures[figure] ?? usual[fuel][figure] ?? [0];
      figures[figure] = quantile(values, places[dimension]?.[point] ?? 0);
    }
    return solveState(figures as CircuitFigures, vehicleKind(context, fuel));
  });
}

function fuelAt({ nominal }: LimitContext, place: number): Fuel {
  return nominal === 24 || place >= petrolPart ? 'diesel' : 'petrol';
}

const leastStates = 3;

/** The states of a set: each mode has as many as its share asks for, and a few at the least. */
export function statesOfSet(
  modes: readonly CircuitMode[],
  count: number,
  scope: { readonly context: LimitContext; readonly usual: UsualFigures },
): readonly WeightedState[] {
  const total = modes.reduce((sum, { share }) => sum + share, 0);
  return modes.flatMap((mode) => {
    const part = mode.share / total;
    const states = statesOfMode(mode, Math.max(leastStates, Math.round(count * part)), scope);
    return states.map((state) => ({ state, weight: part / states.length }));
  });
}
