/**
 * The hidden states of a set of faults, drawn evenly from what the flow declares and from what
 * `electrics` knows of the vehicle, and solved.
 */
import {
  openCircuitVoltageAt,
  vehicleKind,
  vehicleSpans,
  type Fuel,
  type LimitContext,
  type VehicleKind,
} from '@keyturn/electrics';
import type { CircuitMode } from '../flow/flow.ts';
import {
  circuitFigures,
  type knownFigures,
  quantile,
  type CircuitFigure,
  type CircuitFigures,
  type Quantiles,
} from './figures.ts';
import { evenPlaces } from './low-discrepancy.ts';
import { solveState, type CircuitState, type UndrawnSpread } from './solve-state.ts';

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

function knownOf(
  context: LimitContext,
  fuel: Fuel,
): Record<(typeof knownFigures)[number], Quantiles> {
  // What was measured is weighed against each state, and must not shape it beforehand.
  const unmeasured = {
    ...context,
    restVoltage: undefined,
    crankVoltage: undefined,
    crankCurrent: undefined,
  };
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

/** Parts whose sound resistance is not drawn: the readings over them, and their figures. */
const soundParts = {
  clamps: ['positive-clamp', 'negative-clamp'],
  positive: ['positive'],
  ground: ['ground'],
  contacts: ['contacts'],
} as const;

const undrawnFigures: readonly CircuitFigure[] = Object.values(soundParts).flat();

/** Of a normal distribution one deviation down and up: the shares below. */
const oneDown = 0.16;
const oneUp = 0.84;

/** How many equal steps of vehicles the usual rest voltage is taken from. */
const restSteps = 12;

/** What is spread about every state of a mode. */
function undrawnOf(
  mode: CircuitMode,
  usual: UsualFigures[Fuel],
  { technology, series }: VehicleKind,
): UndrawnSpread {
  const deviationOf = (figures: readonly CircuitFigure[]): number =>
    Math.max(
      ...figures.map((figure) => {
        const values = usual[figure];
        if (values === undefined || mode.figures[figure] !== undefined) return 0;
        return (quantile(values, oneUp) - quantile(values, oneDown)) / 2 / quantile(values, 0.5);
      }),
    );
  const isUsual = ['charge', 'emptied', 'dead-cells'].every(
    (figure) => mode.figures[figure as CircuitFigure] === undefined,
  );
  const charges = evenPlaces(restSteps, circuitFigures.indexOf('charge'));
  const surfaces = evenPlaces(restSteps, circuitFigures.indexOf('surface'));
  return {
    parts: {
      clamps: deviationOf(soundParts.clamps),
      positive: deviationOf(soundParts.positive),
      ground: deviationOf(soundParts.ground),
      contacts: deviationOf(soundParts.contacts),
    },
    rests: isUsual
      ? Array.from(
          charges,
          (place, step) =>
            (openCircuitVoltageAt(quantile(usual.charge ?? [100], place), technology) +
              quantile(usual.surface ?? [0], surfaces[step] ?? 0)) *
            series,
        )
      : [],
  };
}

/** Draws and solves the states of one mode. */
function statesOfMode(
  mode: CircuitMode,
  count: number,
  scope: { readonly context: LimitContext; readonly usual: UsualFigures },
): readonly CircuitState[] {
  const { context, usual } = scope;
  const fuels = evenPlaces(count, circuitFigures.length);
  const kinds = { petrol: vehicleKind(context, 'petrol'), diesel: vehicleKind(context, 'diesel') };
  const drawn = {
    petrol: drawnFigures(mode, count, usual.petrol),
    diesel: drawnFigures(mode, count, usual.diesel),
  };
  const undrawn = {
    petrol: undrawnOf(mode, usual.petrol, kinds.petrol),
    diesel: undrawnOf(mode, usual.diesel, kinds.diesel),
  };
  return Array.from({ length: count }, (_, point) => {
    const fuel = context.fuel ?? fuelAt(context, fuels[point] ?? 0);
    const figures: Record<CircuitFigure, number> = { ...noFigures };
    for (const { figure, values, places } of drawn[fuel]) {
      figures[figure] = quantile(values, places?.[point] ?? 0.5);
    }
    return solveState(figures, kinds[fuel], undrawn[fuel]);
  });
}

/** Every figure at 0: a copy of it is of one shape with every other. */
const noFigures = Object.fromEntries(
  circuitFigures.map((figure) => [figure, 0]),
) as unknown as CircuitFigures;

/** How a figure of a mode is distributed, and where its points lie; without them at the middle. */
interface DrawnFigure {
  readonly figure: CircuitFigure;
  readonly values: Quantiles;
  readonly places: Float64Array | undefined;
}

function drawnFigures(
  mode: CircuitMode,
  count: number,
  usual: UsualFigures[Fuel],
): readonly DrawnFigure[] {
  return circuitFigures.map((figure, dimension) => {
    const own = mode.figures[figure];
    const isDrawn = own !== undefined || !undrawnFigures.includes(figure);
    return {
      figure,
      values: own ?? usual[figure] ?? [0],
      places: isDrawn ? evenPlaces(count, dimension) : undefined,
    };
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
