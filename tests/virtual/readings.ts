/**
 * What a perfect meter would show on a virtual vehicle, and how far the figure itself wavers.
 */
import { attemptStart, batteryModel, batteryVoltage, type StartAttempt } from '@keyturn/electrics';
import type { Cause } from './causes.ts';
import { hidden, type CircuitState } from './circuit-state.ts';

/** The true figure in V, A or years, how far it wavers by itself, and how it is measured. */
export type TrueFigure = {
  readonly value: number;
  readonly spread: number;
  readonly by: 'voltmeter' | 'clamp' | 'tester' | 'memory';
};

const volts = (value: number, spread = 0.01): TrueFigure => ({
  value: Math.max(0, value),
  spread,
  by: 'voltmeter',
});

/** Mean of the two states of a chatter, since a meter cannot follow it. */
const mean = (one: number, other: number): number => (one + other) / 2;

/** True where the start command reaches the solenoid. */
export function isCommanded({ ends }: Cause): boolean {
  return ends === 'none';
}

type Held = {
  readonly postV: number;
  readonly positiveClampV: number;
  readonly negativeClampV: number;
  readonly positiveV: number;
  readonly groundV: number;
  readonly contactsV: number;
  readonly controlV: number;
  readonly currentA: number;
};

/** Figures at the circuit while start is held. */
function heldFigures(cause: Cause, state: CircuitState): Held {
  const { attempt, circuit, restV } = state;
  const { battery } = circuit;
  const none: Held = {
    postV: restV - 0.05,
    positiveClampV: 0,
    negativeClampV: 0,
    positiveV: 0,
    groundV: 0,
    contactsV: restV - 0.1,
    controlV: 0,
    currentA: 2,
  };
  if (cause.ends === 'winding') return { ...none, controlV: restV - 0.2 };
  if (!isCommanded(cause)) return none;
  const { windingA } = attempt;
  const winding: Held = {
    ...none,
    postV: batteryVoltage(battery, windingA),
    positiveClampV: circuit.positiveClampOhm * windingA,
    negativeClampV: circuit.negativeClampOhm * windingA,
    positiveV: circuit.positiveClampOhm * windingA,
    groundV: (circuit.negativeClampOhm + circuit.groundCableOhm) * windingA,
    // The pull-in winding's current goes through the motor, which leaves most of it at the contacts.
    contactsV: attempt.controlV,
    controlV: attempt.controlV,
    currentA: windingA,
  };
  switch (attempt.outcome) {
    case 'silent':
      return winding;
    case 'rapid-clicking': {
      const collapsedV = Math.max(1.5, 0.3 * winding.postV);
      const stalled = Number.isFinite(motorPath(state)) ? stalledAt(state) : winding;
      return {
        postV: mean(winding.postV, Math.max(collapsedV, stalled.postV)),
        positiveClampV: mean(winding.positiveClampV, stalled.positiveClampV),
        negativeClampV: mean(winding.negativeClampV, stalled.negativeClampV),
        positiveV: mean(winding.positiveV, stalled.positiveV),
        groundV: mean(winding.groundV, stalled.groundV),
        contactsV: winding.contactsV / 2,
        controlV: mean(winding.controlV, stalled.controlV),
        currentA: mean(windingA, stalled.currentA),
      };
    }
    default:
      return attempt.steady;
  }
}

function motorPath({ circuit }: CircuitState): number {
  return (
    circuit.positiveClampOhm +
    circuit.negativeClampOhm +
    circuit.positiveCableOhm +
    circuit.groundCableOhm +
    circuit.contactsOhm +
    circuit.motor.resistanceOhm
  );
}

/** The first moment with the contacts closed, where the plunger lets go again. */
function stalledAt(state: CircuitState): Held {
  const { circuit } = state;
  const { battery, motor } = circuit;
  const path = motorPath(state);
  let low = 0;
  let high = battery.emfV / path;
  for (let step = 0; step < 30; step += 1) {
    const amperes = (low + high) / 2;
    if (batteryVoltage(battery, amperes) - path * amperes - motor.brushV > 0) low = amperes;
    else high = amperes;
  }
  const currentA = low;
  const postV = batteryVoltage(battery, currentA);
  const shared = circuit.positiveClampOhm + circuit.negativeClampOhm + circuit.groundCableOhm;
  return {
    postV,
    currentA,
    positiveClampV: circuit.positiveClampOhm * currentA,
    negativeClampV: circuit.negativeClampOhm * currentA,
    positiveV: (circuit.positiveClampOhm + circuit.positiveCableOhm) * currentA,
    groundV: (circuit.negativeClampOhm + circuit.groundCableOhm) * currentA,
    contactsV: circuit.contactsOhm * currentA,
    controlV: Math.max(0, postV - shared * currentA),
  };
}

const boosted = new WeakMap<CircuitState, StartAttempt>();

/** What a good booster makes of it: red on the positive clamp, black on engine metal. */
export function boostedAttempt(state: CircuitState): StartAttempt {
  const known = boosted.get(state);
  if (known !== undefined) return known;
  const made = attemptBoosted(state);
  boosted.set(state, made);
  return made;
}

function attemptBoosted(state: CircuitState): StartAttempt {
  const { circuit, setting, electrics, health, charge, vector } = state;
  const series = setting.nominal / 12;
  const helps = health > 0.5 && charge > 30;
  const leads = Math.exp(0.35 * vector[hidden.indexOf('boostLeads')]!);
  return attemptStart({
    ...circuit,
    battery: {
      emfV: (electrics === 'dead-cell' ? 12.2 : 12.7) * series,
      resistanceOhm: (helps ? 0.005 : 0.008) * leads * series,
      polarisationV: 0.25 * series,
      polarisationA: 120,
    },
    positiveClampOhm: 0,
    negativeClampOhm: 0,
    groundCableOhm: 0.0005,
  });
}

const fullV = { flooded: 12.68, efb: 12.72, agm: 12.88 } as const;

/** Half of the label's current from the battery, once it has been charged. */
function chargedUnderLoad(state: CircuitState): number {
  const { setting, electrics, health } = state;
  const { technology, temperatureC, ratingA } = setting;
  const restV = electrics === 'dead-cell' ? fullV[technology] : recharged(state);
  const charged = batteryModel({ ratingA, health, restV, technology, temperatureC, series: 1 });
  const lost = electrics === 'dead-cell' ? 2.1 : 0;
  return batteryVoltage(charged, ratingA / 2) - lost;
}

/** The battery's voltage under a load, as it stands. */
function underLoad(state: CircuitState, amperes: number): number {
  return batteryVoltage(state.circuit.battery, amperes);
}

const figures: Readonly<
  Record<string, (cause: Cause, state: CircuitState, held: () => Held) => TrueFigure | undefined>
> = {
  'battery-age': (_, { setting }) => ({
    value: setting.ageA,
    spread: 0.4 + 0.15 * setting.ageA,
    by: 'memory',
  }),
  'battery-rest': (_, { restV }) => volts(restV, 0.015),
  'battery-lamps': (_, state) => volts(underLoad(state, 28 * (12 / state.setting.nominal)), 0.12),
  'battery-load-test': (_, state) => {
    const { setting } = state;
    if (setting.temperatureC < -18 || setting.nominal === 24) return undefined;
    if (setting.kit.includes('charger')) return volts(chargedUnderLoad(state), 0.15);
    return volts(underLoad(state, setting.ratingA / 2), 0.15);
  },
  'battery-tester': (_, { setting, health, charge, electrics }) => {
    const known = setting.kit.includes('charger') ? 90 : charge;
    const seen = (0.72 + 0.28 * (known / 100)) * (electrics === 'dead-cell' ? 0.4 : 1);
    const value = setting.ratingA * Math.min(1.05, health) * seen;
    return { value, spread: 0.07 * value + 8, by: 'tester' };
  },
  'battery-recharged': (_, state) => volts(recharged(state), 0.05),
  'battery-halves': (cause, { setting, vector }) => {
    if (setting.nominal !== 24) return undefined;
    const isOdd = cause.electrics === 'dead-cell' || cause.electrics.startsWith('worn');
    const severity = vector[hidden.indexOf('severity')]!;
    return volts(
      cause.electrics === 'dead-cell' ? 2 : isOdd ? 0.4 * Math.exp(0.8 * severity) : 0.06,
      0.03,
    );
  },
  'battery-crank': (cause, { attempt }, held) =>
    volts(
      held().postV,
      isCommanded(cause) ? (attempt.outcome === 'rapid-clicking' ? 0.7 : 0.1) : 0.02,
    ),
  'drop-clamps': (_, state, held) =>
    volts(Math.max(held().positiveClampV, held().negativeClampV), waver(state, 0.012)),
  'drop-positive': (_, state, held) => volts(held().positiveV, waver(state, 0.02)),
  'drop-ground': (_, state, held) => volts(held().groundV, waver(state, 0.02)),
  'drop-contacts': ({ electrics }, state, held) =>
    volts(electrics === 'open-brushes' ? 0.05 : held().contactsV, waver(state, 0.02)),
  'control-signal': (_, state, held) => {
    const { groundV, controlV } = held();
    // The black probe is on the battery's negative post.
    return volts(controlV === 0 ? 0 : controlV + groundV, waver(state, 0.1));
  },
  'crank-current': (_, __, held) => {
    const { currentA } = held();
    return { value: currentA, spread: 0.04 * currentA + 2, by: 'clamp' };
  },
  'relay-feed': ({ ends }, { restV }) =>
    volts(ends === 'no-supply' || ends === 'starter-fuse' ? 0 : restV - 0.1, 0.05),
  'relay-command': ({ ends }, _, held) => {
    const stops: readonly string[] = [
      'no-supply',
      'no-ignition',
      'key-held',
      'ignition-switch',
      'position-switch',
      'refused',
    ];
    return volts(stops.includes(ends) ? 0 : held().postV - 0.35, 0.2);
  },
};

/** A figure taken while something chatters wavers by itself. */
function waver({ attempt, setting }: CircuitState, quiet: number): number {
  return quiet * (attempt.outcome === 'rapid-clicking' ? 8 : 1) * (setting.nominal / 12);
}

/** Two hours after a full charge: a worn battery stays low, one with a dead cell far lower. */
function recharged({ setting, electrics, health, vector, restV }: CircuitState): number {
  const full = fullV[setting.technology] * (setting.nominal / 12);
  if (electrics === 'dead-cell') return full - 2.1;
  const recovery = vector[hidden.indexOf('recovery')]!;
  return Math.max(restV, full - (health < 0.55 ? 0.12 * Math.exp(0.6 * recovery) : 0.01));
}

/** The checks that are answered with a figure. */
export const readingChecks: readonly string[] = Object.keys(figures);

/** What a perfect meter would show, or nothing where the check makes no sense there. */
export function trueFigure(
  check: string,
  cause: Cause,
  state: CircuitState,
): TrueFigure | undefined {
  const figure = figures[check];
  return figure?.(cause, state, () => heldFigures(cause, state));
}
