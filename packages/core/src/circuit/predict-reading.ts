/**
 * What a meter shows on a vehicle in a hidden state: a mean and how far it spreads, given what was
 * measured beside it. A current that was measured tells what flows through that very circuit, and a
 * rest voltage where that very battery starts from.
 */
import { batteryModel, batteryVoltage, type BatteryModel } from '@keyturn/electrics';
import { rechargedBattery, type CircuitState, type HeldFigures } from './solve-state.ts';

/** Every reading that the circuit model knows. */
export const circuitReadings = [
  'rest',
  'lamps',
  'load-test',
  'tester',
  'recharged',
  'crank',
  'current',
  'clamps',
  'positive',
  'ground',
  'contacts',
  'control',
  'feed',
  'command',
] as const;

/** The name of a reading of the circuit model. */
export type CircuitReading = (typeof circuitReadings)[number];

/** What was measured, as it bears on other readings. */
export interface Measured {
  readonly rest?: number;
  readonly crank?: number;
  readonly current?: number;
  /** The label's current, A, as printed. */
  readonly label?: number;
  /** True where the battery has been charged fully since it rested. */
  readonly isRecharged?: boolean;
}

/** What a reading goes by of what was measured beside it. */
const goesBy: Readonly<Record<CircuitReading, readonly (keyof Measured)[]>> = {
  rest: [],
  lamps: ['rest'],
  'load-test': ['rest', 'label', 'isRecharged'],
  tester: ['label', 'isRecharged'],
  recharged: [],
  crank: ['rest', 'current'],
  current: [],
  clamps: ['current'],
  positive: ['current'],
  ground: ['current'],
  contacts: ['current'],
  control: ['crank'],
  feed: ['rest'],
  command: [],
};

/** Of what was measured the part that a reading goes by. */
export function bearingOn(reading: CircuitReading, measured: Measured): Measured {
  return Object.fromEntries(
    goesBy[reading].flatMap((key) => (measured[key] === undefined ? [] : [[key, measured[key]]])),
  );
}

/** A mean, in V or A, and what a relative spread goes by. */
export interface Predicted {
  readonly mean: number;
  /** V or A that a part of spread is taken of: a drop, or what a battery falls by. */
  readonly load: number;
  /** V or A that a meter swings between while the solenoid chatters, or that is not drawn. */
  readonly swing: number;
  /** Where they differ among vehicles in this state: equally likely means in place of the one. */
  readonly means?: readonly number[];
}

/**
 * A rest voltage measured further than this from what a state allows, V of 12 V, is a slip: it tells
 * nothing of other readings.
 */
const mostShift = 1;

/** All lamps and the windows on, A, of equally many vehicles. Common practice, no source. */
const lampsAmperes = [25, 38, 52];

/** What a battery loses in 15 s under half of its cold-cranking current, beyond the first moment. */
const loadTestSag = 0.3;

/** The same while cranking, which is shorter. Both are common practice, no source. */
const crankSag = 0.3;

function sagOf({ held, kind }: CircuitState): number {
  return held.isOhmic ? crankSag * kind.series : 0;
}

function sagging(predicted: Predicted, volts: number): Predicted {
  return { ...predicted, mean: Math.max(0, predicted.mean - volts) };
}

/** Predicts one reading. No side effects. */
export function predictReading(
  state: CircuitState,
  reading: CircuitReading,
  measured: Measured,
): Predicted {
  const { held, figures, battery, kind } = state;
  switch (reading) {
    case 'rest': {
      const { rests } = state.undrawn;
      return rests.length > 0 ? { ...steady(state.rest), means: rests } : steady(state.rest);
    }
    case 'lamps':
      return anyOf(lampsAmperes.map((amperes) => underLoad(state, amperes, measured)));
    case 'load-test': {
      const amperes = (measured.label ?? figures.rating) / 2;
      const loaded = measured.isRecharged
        ? loadedBattery(rechargedBattery(state), amperes)
        : underLoad(state, amperes, measured);
      return sagging(loaded, loadTestSag * kind.series);
    }
    case 'tester': {
      const label = measured.label ?? figures.rating;
      return anyOf(
        testersAllowances.map((allowance) => {
          const amperes = label * conductance(state, measured, allowance);
          return { mean: amperes, load: amperes, swing: 0 };
        }),
      );
    }
    case 'recharged':
      return steady(rechargedBattery(state).emfV);
    case 'crank': {
      if (held.isOhmic && measured.current !== undefined && measured.current > 0) {
        return sagging(underLoad(state, measured.current, measured), crankSag * kind.series);
      }
      const shift = shiftOf(state, measured) - sagOf(state);
      const shown = heldReading(state, ({ post }) => Math.max(0, post + shift));
      const load = Math.max(0, battery.emfV - held.post);
      // With no current to speak of lamps and ignition, which vary, are what the battery gives.
      const swing = held.held === 'silent' ? 0.015 * battery.emfV : shown.swing;
      return { ...shown, load, swing };
    }
    case 'current': {
      const shown = heldReading(state, ({ current }) => current);
      return { ...shown, load: shown.mean };
    }
    case 'clamps':
    case 'positive':
    case 'ground':
    case 'contacts':
      return drop(state, reading, measured);
    // Some hold the black probe on the starter's body, some on the battery's negative post.
    case 'control':
      return anyOf(
        [0, 1].map((post) =>
          heldReading(state, (at) => {
            const against = at.control + (at.control > 0 ? post * at.ground : 0);
            return Math.max(0, (measured.crank ?? at.post) - at.post + against);
          }),
        ),
      );
    case 'feed': {
      const shift = shiftOf(state, measured);
      return anyOf(
        [state.feedRest, state.bodyRest].map((volts) => steady(volts > 0 ? volts + shift : 0)),
      );
    }
    case 'command':
      return figures.control === Infinity
        ? steady(0)
        : anyOf([
            heldReading(state, ({ feed }) => 0.97 * feed),
            heldReading(state, () => 0.97 * held.body),
          ]);
  }
}

/** Equally many vehicles each. */
function anyOf(all: readonly Predicted[]): Predicted {
  const means = all.flatMap((one) => one.means ?? [one.mean]);
  const meanOf = (read: (one: Predicted) => number): number =>
    all.reduce((sum, one) => sum + read(one), 0) / all.length;
  return {
    mean: meanOf(({ mean }) => mean),
    load: meanOf(({ load }) => load),
    swing: meanOf(({ swing }) => swing),
    means,
  };
}

function steady(mean: number): Predicted {
  return { mean, load: 0, swing: 0 };
}

/** Of the difference between the moments of a chatter, how far a meter swings about what it shows. */
const chatterSwing = 0.35;

/** A figure while start is held; of a chatter a meter may show either moment, or what is between. */
function heldReading({ held }: CircuitState, read: (at: HeldFigures) => number): Predicted {
  const { moments } = held;
  if (moments === undefined) return steady(read(held));
  const [before, closed] = moments.map(read) as [number, number];
  const mean = (before + closed) / 2;
  const swing = chatterSwing * Math.abs(before - closed);
  return { mean, load: 0, swing, means: [before, mean, closed] };
}

/** How far the battery was measured from where this state has it. */
function shiftOf({ rest, kind }: CircuitState, { rest: found }: Measured): number {
  if (found === undefined || Math.abs(found - rest) > mostShift * kind.series) return 0;
  return found - rest;
}

function underLoad(state: CircuitState, amperes: number, measured: Measured): Predicted {
  const rested = restedBattery(state, measured);
  if (rested !== undefined) return loadedBattery(rested, amperes);
  const loaded = loadedBattery(state.battery, amperes);
  return { ...loaded, mean: Math.max(0, loaded.mean + shiftOf(state, measured)) };
}

/** Where the charge is as on any vehicle, a measured rest voltage tells it, and so the resistance. */
function restedBattery(
  { undrawn, figures, kind }: CircuitState,
  { rest }: Measured,
): BatteryModel | undefined {
  const { technology, series } = kind;
  const isAllowed = undrawn.rests.some(
    (usual) => rest !== undefined && Math.abs(rest - usual) <= mostShift * series,
  );
  if (rest === undefined || !isAllowed) return undefined;
  const { rating: ratingA, health, temperature: temperatureC } = figures;
  return batteryModel({ ratingA, health, restV: rest / series, technology, temperatureC, series });
}

function loadedBattery(battery: BatteryModel, amperes: number): Predicted {
  const mean = Math.max(0, batteryVoltage(battery, amperes));
  return { mean, load: battery.emfV - mean, swing: 0 };
}

/** A drop follows the current that was measured, where one current explains all. */
function drop(
  state: CircuitState,
  part: keyof CircuitState['undrawn']['parts'],
  { current }: Measured,
): Predicted {
  const { held, battery, undrawn } = state;
  const isScaled = held.isOhmic && current !== undefined && current > 0 && held.current > 0;
  const scale = isScaled ? current / held.current : 1;
  const shown = heldReading(state, (at) => at[part] * scale);
  // Over what is open stands all there is, whatever its resistance was taken for.
  const load = Math.min(Math.abs(shown.mean), 0.3 * battery.emfV);
  return { ...shown, load, swing: Math.hypot(shown.swing, undrawn.parts[part] * load) };
}

/**
 * What testers make up for of what a low charge hides, of equally many testers: nothing, or all of it,
 * as those do that call a battery good and to be charged. For a battery that was drained beyond empty
 * none of them does. Common practice, no source.
 */
const testersAllowances = [0, 1];

/** Part of the label that an electronic tester finds: it conducts less as it is worn and empty. */
function conductance(
  { figures }: CircuitState,
  { isRecharged }: Measured,
  allowance: number,
): number {
  const charge = isRecharged ? figures.taken : figures.charge;
  const charged = 1 - (1 - allowance) * 0.45 * (1 - Math.min(1, charge / 75));
  const drained = isRecharged ? 1 : 1 / (1 + 2 * figures.emptied);
  return (figures.health * charged * drained) / (1 + 0.3 * figures['dead-cells']);
}
