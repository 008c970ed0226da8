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
function undrawnOf(mode: CircuitMode, usual: UsualFigures[Fuel], kind: VehicleKind): UndrawnSpread {
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
  return {
    parts: {
      clamps: deviationOf(soundParts.clamps),
      positive: deviationOf(soundParts.positive),
      ground: deviationOf(soundParts.ground),
      contacts: deviationOf(soundParts.contacts),
    },
    rests: isUsual ? usualRests(usual, kind) : [],
  };
}

/** They are the same for all modes of a vehicle. */
const restsKept = new WeakMap<UsualFigures[Fuel], readonly number[]>();

/** Rest voltages, V, of equally many vehicles whose charge is as usual. */
function usualRests(
  usual: UsualFigures[Fuel],
  { technology, series }: VehicleKind,
): readonly number[] {
  const known = restsKept.get(usual);
  if (known !== undefined) return known;
  const charges = evenPlaces(restSteps, circuitFigures.indexOf('charge'));
  const surfaces = evenPlaces(restSteps, circuitFigures.indexOf('surface'));
  const rests = Array.from(
    charges,
    (place, step) =>
      (openCircuitVoltageAt(quantile(usual.charge ?? [100], place), technology) +
        quantile(usual.surface ?? [0], surfaces[step] ?? 0)) *
      series,
  );
  restsKept.set(usual, rests);
  return rests;
}

/** Draws and solves the states of one mode. */
function statesOfMode(
  mode: CircuitMode,
  count: number,
  scope: { readonly context: LimitContext; readonly usual: UsualFigures },
): readonly CircuitState[] {
  const { context, usual } = scope;
  const fuels = evenPlaces(count, circuitFigures.length);
  const drawing = (fuel: Fuel): Drawing => {
    const kind = vehicleKind(context, fuel);
    return {
      kind,
      ...drawnFigures(mode, count, usual[fuel]),
      undrawn: undrawnOf(mode, usual[fuel], kind),
    };
  };
  const made: Partial<Record<Fuel, Drawing>> = {};
  return Array.from({ length: count }, (_, point) => {
    const fuel = context.fuel ?? fuelAt(context, fuels[point] ?? 0);
    const { kind, steady, varying, undrawn } = (made[fuel] ??= drawing(fuel));
    const figures = { ...steady };
    for (const { figure, values } of varying) figures[figure] = values[point] ?? 0;
    return solveState(figures, kind, undrawn);
  });
}

/** How the states of a mode are drawn for a fuel. */
interface Drawing {
  readonly kind: VehicleKind;
  /** Every figure; those that vary have any value. */
  readonly steady: Record<CircuitFigure, number>;
  /** What differs from state to state: the value at each point. */
  readonly varying: readonly { readonly figure: CircuitFigure; readonly values: Float64Array }[];
  readonly undrawn: UndrawnSpread;
}

/** Every figure at 0: a copy of it is of one shape with every other. */
const noFigures = Object.fromEntries(
  circuitFigures.map((figure) => [figure, 0]),
) as unknown as CircuitFigures;

function drawnFigures(
  mode: CircuitMode,
  count: number,
  usual: UsualFigures[Fuel],
): Pick<Drawing, 'steady' | 'varying'> {
  const steady: Record<CircuitFigure, number> = { ...noFigures };
  const varying: { figure: CircuitFigure; values: Float64Array }[] = [];
  for (const [dimension, figure] of circuitFigures.entries()) {
    const own = mode.figures[figure];
    const points = own ?? usual[figure] ?? nothing;
    const isDrawn = own !== undefined || !undrawnFigures.includes(figure);
    if (isDrawn && points.length > 1) {
      varying.push({ figure, values: valuesAt(points, count, dimension) });
    } else {
      steady[figure] = quantile(points, 0.5);
    }
  }
  return { steady, varying };
}

const nothing: Quantiles = [0];

/** What is usual on a vehicle is drawn for many modes. */
const valuesKept = new WeakMap<Quantiles, Map<string, Float64Array>>();

/** The value of a figure at each of so many points along a dimension. */
function valuesAt(points: Quantiles, count: number, dimension: number): Float64Array {
  const kept = valuesKept.get(points) ?? new Map<string, Float64Array>();
  valuesKept.set(points, kept);
  const key = `${String(count)}/${String(dimension)}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const values = evenPlaces(count, dimension).map((place) => quantile(points, place));
  kept.set(key, values);
  return values;
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
