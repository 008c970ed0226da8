/**
 * What people see and hear of a vehicle in a hidden state, by what its circuit does.
 */
import { normalProbability, type BatteryModel, type CrankingCircuit } from '@keyturn/electrics';
import { circuitOf, holdStart, type CircuitState, type Held } from './solve-state.ts';

/** Every choice that the circuit model knows, with the answers that it gives. */
export const circuitChoices = {
  complaint: ['silent', 'single-click', 'rapid-clicking', 'slow-crank', 'normal-crank'],
  dash: ['off', 'dim', 'goes-out', 'stays-bright'],
  headlamps: ['no-light', 'dim', 'go-out', 'stay-bright'],
  'brake-lamps': ['dark', 'light'],
  relay: ['silent', 'clicks'],
  boost: ['silent', 'clicks', 'cranks-slowly', 'cranks-normally', 'starts'],
} as const;

/** The name of a choice of the circuit model. */
export type CircuitChoice = keyof typeof circuitChoices;

/** The names of the choices. */
export const circuitChoiceNames: readonly CircuitChoice[] = Object.keys(
  circuitChoices,
) as CircuitChoice[];

/** How likely each answer is, in the order of `circuitChoices`. */
export type Chances = readonly number[];

/** What each choice is in a state. No side effects. */
export function predictChoice(state: CircuitState, choice: CircuitChoice): Chances {
  switch (choice) {
    case 'complaint':
      return heard(state.held.held, state.held.speed, state);
    case 'dash':
    case 'headlamps':
      return lamps(state);
    case 'brake-lamps': {
      const light = between(state.bodyRest, 5 * state.kind.series, 1);
      return [1 - light, light];
    }
    case 'relay': {
      const isCommanded = Number.isFinite(state.figures.control + state.figures.supply);
      const clicks = isCommanded ? between(state.bodyRest, 7 * state.kind.series, 0.6) : 0;
      return [1 - clicks, clicks];
    }
    case 'boost':
      return boosted(state);
  }
}

/** The chance that a figure counts as above a bound that people and parts place differently. */
function between(value: number, bound: number, spread: number): number {
  return normalProbability((value - bound) / spread);
}

/**
 * Speeds, /min, about which people call cranking slow: two thirds of what they are used to from a
 * warm engine, and 1 /min less for each degree below 20 Cel, since they allow for cold. Common
 * practice, no source.
 */
const slowBelow = { petrol: { speed: 170, spread: 35 }, diesel: { speed: 145, spread: 32 } };

function isUsual(speed: number, { kind, figures }: CircuitState): number {
  const { speed: warm, spread } = slowBelow[kind.fuel];
  const bound = warm - Math.max(0, 20 - figures.temperature);
  return between(speed, kind.series === 2 ? 0.75 * bound : bound, spread);
}

function heard(held: Held, speed: number, state: CircuitState): Chances {
  switch (held) {
    case 'silent':
      return [1, 0, 0, 0, 0];
    case 'single-click':
      return [0, 1, 0, 0, 0];
    case 'rapid-clicking':
      // A relay may tick where the solenoid no longer does, it may let go just once, and a battery
      // almost empty turns the engine a little first. Common practice, no source.
      return [0.07, 0.09, 0.79, 0.05, 0];
    case 'turning': {
      const usual = isUsual(speed, state);
      return [0, 0, 0, 1 - usual, usual];
    }
  }
}

/** Volts at which lamps are out, and above which nobody sees them dim, of 12 V. */
const darkBelow = { volts: 5, spread: 1 };
const brightFrom = { volts: 9.6, spread: 0.8 };
/** With nothing heavy switched on people know how bright their lamps are. */
const brightAtRest = { volts: 11, spread: 0.5 };

/** None, dim, going out, bright: by what reaches the lamps before and while start is held. */
function lamps({ bodyRest, held, kind }: CircuitState): Chances {
  const { series } = kind;
  const isLit = between(bodyRest / series, darkBelow.volts, darkBelow.spread);
  const stays = between(held.body / series, darkBelow.volts, darkBelow.spread);
  const bright = Math.min(
    between(held.body / series, brightFrom.volts, brightFrom.spread),
    between(bodyRest / series, brightAtRest.volts, brightAtRest.spread),
  );
  return [1 - isLit, isLit * (stays - stays * bright), isLit * (1 - stays), isLit * stays * bright];
}

/** A running donor, its cables of 6 to 10 mOhm: common practice, no source. */
const donor = { volts: 13.4, ohm: 0.009 };

/**
 * With a donor at the posts and the engine's ground: the flat battery draws on it too, and the
 * joints and the ground cable are by-passed for the most part.
 */
function withDonor(state: CircuitState): CrankingCircuit {
  const { battery, kind, figures } = state;
  const circuit = circuitOf(state);
  const own = 1 / battery.resistanceOhm;
  const other = 1 / (donor.ohm * kind.series);
  const boostedBattery: BatteryModel = {
    ...battery,
    emfV: (battery.emfV * own + donor.volts * kind.series * other) / (own + other),
    resistanceOhm: 1 / (own + other),
    polarisationA: battery.polarisationA + figures.rating / 4,
  };
  return {
    ...circuit,
    battery: boostedBattery,
    positiveClampOhm: byPassed(circuit.positiveClampOhm, 0.004),
    negativeClampOhm: 0,
    groundCableOhm: byPassed(circuit.groundCableOhm, 0.002),
  };
}

function byPassed(ohm: number, other: number): number {
  return Number.isFinite(ohm) ? 1 / (1 / Math.max(ohm, 1e-6) + 1 / other) : other;
}

function boosted(state: CircuitState): Chances {
  const circuit = withDonor(state);
  const { held, speed } = holdStart(state.figures, circuit, state.kind);
  switch (held) {
    case 'silent':
      return [1, 0, 0, 0, 0];
    case 'single-click':
    case 'rapid-clicking':
      return [0.02, 0.94, 0.04, 0, 0];
    case 'turning': {
      const usual = isUsual(speed, state);
      const { starts } = state.figures;
      return [0, 0, 1 - usual, usual * (1 - starts), usual * starts];
    }
  }
}
