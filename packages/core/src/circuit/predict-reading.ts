/**
 * What a meter shows on a vehicle in a hidden state: a mean and how far it spreads, given what was
 * measured beside it. A current that was measured tells what flows through that very circuit, and a
 * rest voltage where that very battery starts from.
 */
import { batteryModel, batteryVoltage, type BatteryModel } from '@keyturn/electrics';
import { rechargedBattery, type CircuitState } from './solve-state.ts';

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

/** A measured rest voltage moves the battery's own by this much at the most; beyond it is odd. */
const mostShift = 1;

/** All lamps and the windows on, A. Common practice, no source. */
const lampsAmperes = 50;

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
      return underLoad(state, lampsAmperes, measured);
    case 'load-test': {
      const amperes = (measured.label ?? figures.rating) / 2;
      const loaded = measured.isRecharged
        ? loadedBattery(rechargedBattery(state), amperes)
        : underLoad(state, amperes, measured);
      return sagging(loaded, loadTestSag * kind.series);
    }
    case 'tester': {
      const amperes = (measured.label ?? figures.rating) * conductance(state, measured);
      return { mean: amperes, load: amperes, swing: 0 };
    }
    case 'recharged':
      return steady(rechargedBattery(state).emfV);
    case 'crank':
      return held.isOhmic && measured.current !== undefined && measured.current > 0
        ? sagging(underLoad(state, measured.current, measured), crankSag * kind.series)
        : {
            mean: Math.max(0, held.post + shiftOf(state, measured) - sagOf(state)),
            load: Math.max(0, battery.emfV - held.post),
            swing: swingOf(state) * battery.emfV,
          };
    case 'current':
      return { mean: held.current, load: held.current, swing: chatter(state) * held.current };
    case 'clamps':
    case 'positive':
    case 'ground':
    case 'contacts':
      return drop(state, reading, measured);
    case 'control': {
      const lost = held.post - held.control;
      const post = measured.crank ?? held.post;
      return { mean: Math.max(0, post - lost), load: 0, swing: chatter(state) * battery.emfV };
    }
    case 'feed':
      return steady(state.bodyRest + (state.bodyRest > 0 ? shiftOf(state, measured) : 0));
    case 'command':
      return steady(figures.control === Infinity ? 0 : 0.97 * held.body);
  }
}

/** With no current to speak of lamps and ignition, which vary, are what the battery gives. */
function swingOf(state: CircuitState): number {
  return state.held.held === 'silent' ? 0.015 : chatter(state);
}

function steady(mean: number): Predicted {
  return { mean, load: 0, swing: 0 };
}

/** Of the figure, how far a meter swings about it while the solenoid chatters. */
function chatter({ held }: CircuitState): number {
  return held.held === 'rapid-clicking' ? 0.15 : 0;
}

/** How far the battery was measured from where this state has it. */
function shiftOf({ rest }: CircuitState, { rest: found }: Measured): number {
  return found === undefined ? 0 : Math.max(-mostShift, Math.min(mostShift, found - rest));
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
  if (rest === undefined || undrawn.rests.length === 0) return undefined;
  const { technology, series } = kind;
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
  const volts = held[part];
  const isScaled = held.isOhmic && current !== undefined && current > 0 && held.current > 0;
  const mean = isScaled ? (volts * current) / held.current : volts;
  // Over what is open stands all there is, whatever its resistance was taken for.
  const load = Math.min(Math.abs(mean), 0.3 * battery.emfV);
  const swing = Math.hypot(chatter(state) * battery.emfV, undrawn.parts[part] * load);
  return { mean, load, swing };
}

/** Part of the label that an electronic tester finds: it conducts less as it is worn and empty. */
function conductance({ figures }: CircuitState, { isRecharged }: Measured): number {
  const charge = isRecharged ? figures.taken : figures.charge;
  const charged = 0.55 + 0.45 * Math.min(1, charge / 75);
  const drained = isRecharged ? 1 : 1 / (1 + 2 * figures.emptied);
  return (figures.health * charged * drained) / (1 + 0.3 * figures['dead-cells']);
}
