/**
 * What a careful observer would answer to each question with choices, by cause and state. The shares
 * are common practice, no source; what the circuit decides follows from it.
 */
import type { Cause } from './causes.ts';
import type { CircuitState } from './circuit-state.ts';
import { boostedAttempt, isCommanded } from './readings.ts';
import type { Chances } from './random.ts';

type Rule = (cause: Cause, state: CircuitState) => Chances | undefined;

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));

/** Most of it on one answer, the rest on another. */
function two(yes: string, chance: number, no: string): Chances {
  return { [yes]: chance, [no]: 1 - chance };
}

function has(cause: Cause, ...faults: readonly string[]): boolean {
  return cause.faults.some((fault) => faults.includes(fault));
}

const runsNot = [
  'fuel-empty',
  'fuel-wrong',
  'fuel-delivery',
  'ignition-spark',
  'position-sensor',
  'timing-lost',
  'flooded-engine',
  'glow-plugs',
  'immobiliser',
  'unlisted',
];

/** True where an engine that is cranked well would still not run. */
function cannotRun(cause: Cause): boolean {
  return has(cause, ...runsNot);
}

/** How a cranking engine sounds: slow or not, by its speed against the usual. */
function crankSound({ speed, usualSpeed }: CircuitState, normal: Chances): Chances {
  const ratio = speed / usualSpeed;
  const slow = logistic((0.62 - ratio) / 0.06);
  const groans = slow * logistic((0.2 - ratio) / 0.04) * 0.4;
  return { 'slow-crank': slow - groans, 'single-click': groans, ...scaledBy(normal, 1 - slow) };
}

function scaledBy(chances: Chances, factor: number): Chances {
  const scaled: Record<string, number> = {};
  for (const answer in chances) scaled[answer] = (chances[answer] ?? 0) * factor;
  return scaled;
}

function crankedAnswers(cause: Cause): Chances {
  const { mode } = cause;
  if (mode === 'stalls' || mode === 'stops') return two('starts-then-stops', 0.92, 'normal-crank');
  if (has(cause, 'fuel-wrong')) return two('starts-then-stops', 0.45, 'normal-crank');
  if (has(cause, 'fuel-delivery', 'fuel-empty'))
    return two('starts-then-stops', 0.18, 'normal-crank');
  if (has(cause, 'timing-lost')) return two('free-spin', 0.35, 'normal-crank');
  if (has(cause, 'immobiliser', 'position-sensor', 'flooded-engine')) {
    return two('starts-then-stops', 0.06, 'normal-crank');
  }
  return { 'normal-crank': 1 };
}

const complaint: Rule = (cause, state) => {
  const { ends } = cause;
  if (ends === 'key-held') return { 'key-stuck': 0.95, silent: 0.05 };
  if (has(cause, 'hybrid-not-ready')) return { silent: 0.93, 'starts-then-stops': 0.07 };
  if (!isCommanded(cause))
    return { silent: ends === 'relay' || ends === 'wire' ? 0.93 : 0.97, 'single-click': 0.03 };
  if (has(cause, 'starter-drive')) return two('free-spin', 0.75, 'grinding');
  if (has(cause, 'ring-gear')) return two('grinding', 0.6, 'free-spin');
  const { outcome } = state.attempt;
  return outcome === 'turning' ? crankSound(state, crankedAnswers(cause)) : { [outcome]: 1 };
};

/** What lamps do at so many volts, with soft edges. */
function lamp(state: CircuitState, [out, bright]: readonly [out: string, bright: string]): Chances {
  const volts = state.lampsHeldV / (state.setting.nominal / 12);
  const stays = logistic((volts - 9.6) / 0.4);
  const goes = logistic((5.8 - volts) / 0.5);
  return { [bright]: stays, [out]: goes, dim: Math.max(0, 1 - stays - goes) };
}

function restsDark({ lampsOnV, setting }: CircuitState): number {
  return logistic((5 - lampsOnV / (setting.nominal / 12)) / 0.5);
}

const dash: Rule = (cause, state) => {
  const { ends, mode } = cause;
  if (ends === 'no-supply') return two('off', 0.96, 'stays-bright');
  if (has(cause, 'key-fob')) return two('off', 0.6, 'stays-bright');
  if (has(cause, 'brake-switch') || mode === 'routine') return two('stays-bright', 0.8, 'off');
  if (ends === 'key-held') return two('off', 0.8, 'stays-bright');
  if (ends === 'ignition-switch') return { 'stays-bright': 0.75, off: 0.1, 'goes-out': 0.15 };
  if (!isCommanded(cause) && !state.setting.isFullHybrid) return { 'stays-bright': 1 };
  const dark = restsDark(state);
  const held = lamp(state, ['goes-out', 'stays-bright']);
  return { off: dark, ...scaledBy(held, 1 - dark) };
};

const headlamps: Rule = (cause, state) => {
  if (cause.ends === 'no-supply') return two('no-light', 0.97, 'stay-bright');
  if (!isCommanded(cause) && !state.setting.isFullHybrid) return { 'stay-bright': 1 };
  const dark = restsDark(state);
  const held = lamp(state, ['go-out', 'stay-bright']);
  return { 'no-light': dark, ...scaledBy(held, 1 - dark) };
};

const boost: Rule = (cause, state) => {
  if (state.setting.isFullHybrid) {
    return has(cause, 'battery-discharged', 'battery-worn', 'battery-connection')
      ? two('starts', 0.93, 'silent')
      : { silent: 0.97, starts: 0.03 };
  }
  if (cause.ends === 'key-held') return undefined;
  if (!isCommanded(cause)) return { silent: 0.97, clicks: 0.03 };
  const attempt = boostedAttempt(state);
  switch (attempt.outcome) {
    case 'silent':
      return { silent: 0.9, clicks: 0.1 };
    case 'rapid-clicking':
    case 'single-click':
      return { clicks: 0.93, silent: 0.05, 'cranks-slowly': 0.02 };
    case 'turning': {
      const { speed } = attempt.steady;
      const slow = logistic((0.55 - speed / state.usualSpeed) / 0.06);
      const runs = cannotRun(cause) ? 0.02 : 0.93 * logistic((speed - state.leastSpeed) / 8);
      return {
        starts: runs,
        'cranks-slowly': (1 - runs) * slow,
        'cranks-normally': (1 - runs) * (1 - slow),
      };
    }
  }
};

const when: Rule = (cause) => {
  const four = (standing: number, soon: number, driving: number, comes: number): Chances => ({
    'after-standing': standing,
    'soon-after-stopping': soon,
    'stopped-while-driving': driving,
    'comes-and-goes': comes,
  });
  const { mode } = cause;
  if (cause.faults.length > 1 && mode === 'cranked-flat') return four(0.5, 0.2, 0.2, 0.1);
  if (mode === 'lamp') return four(0.85, 0.1, 0.02, 0.03);
  if (mode === 'drain' || mode === 'short-trips') return four(0.91, 0.04, 0.02, 0.03);
  if (mode === 'charging') return four(0.45, 0.2, 0.3, 0.05);
  if (has(cause, 'battery-connection', 'ground-cable', 'positive-cable'))
    return four(0.37, 0.25, 0.08, 0.3);
  if (has(cause, 'battery-worn')) return four(0.67, 0.2, 0.05, 0.08);
  if (has(cause, 'main-fuse')) return four(0.45, 0.3, 0.15, 0.1);
  if (has(cause, 'starter-motor', 'solenoid', 'starter-drive', 'ring-gear'))
    return four(0.32, 0.26, 0.02, 0.4);
  if (has(cause, 'fuel-empty')) return four(0.35, 0.15, 0.48, 0.02);
  if (has(cause, 'fuel-delivery')) return four(0.42, 0.13, 0.33, 0.12);
  if (has(cause, 'fuel-wrong')) return four(0.15, 0.35, 0.48, 0.02);
  if (has(cause, 'position-sensor')) return four(0.15, 0.45, 0.2, 0.2);
  if (has(cause, 'timing-lost', 'engine-locked')) return four(0.28, 0.1, 0.6, 0.02);
  if (has(cause, 'flooded-engine')) return four(0.3, 0.65, 0.02, 0.03);
  if (has(cause, 'glow-plugs')) return four(0.95, 0.02, 0.01, 0.02);
  if (has(cause, 'operator', 'steering-lock')) return four(0.48, 0.45, 0.05, 0.02);
  if (
    has(
      cause,
      'selector-switch',
      'clutch-switch',
      'brake-switch',
      'ignition-switch',
      'starter-relay',
      'control-wiring',
    )
  ) {
    return four(0.35, 0.2, 0.03, 0.42);
  }
  return four(0.48, 0.24, 0.1, 0.18);
};

const glow: Rule = (cause, { setting }) =>
  setting.fuel !== 'diesel'
    ? undefined
    : cause.mode === 'relay' && has(cause, 'glow-plugs')
      ? two('absent', 0.6, 'normal')
      : two('normal', setting.temperatureC > 20 ? 0.75 : 0.93, 'absent');

const codes: Rule = (cause, state) => {
  const chances: Record<string, number> = {
    none: 0.62,
    voltage: 0.1,
    other: 0.15,
    fuel: 0.03,
    ignition: 0.03,
    'position-sensor': 0.02,
    immobiliser: 0.02,
  };
  const told = (answer: string, chance: number): void => {
    for (const one of Object.keys(chances)) chances[one]! *= 1 - chance;
    chances[answer]! += chance;
  };
  if (has(cause, 'position-sensor')) told('position-sensor', 0.72);
  if (has(cause, 'immobiliser')) told('immobiliser', 0.6);
  if (has(cause, 'ignition-spark')) told('ignition', 0.5);
  if (has(cause, 'fuel-delivery')) told('fuel', 0.4);
  if (has(cause, 'fuel-wrong', 'fuel-empty')) told('fuel', 0.15);
  if (has(cause, 'timing-lost')) told('position-sensor', 0.35);
  if (state.lampsOnV < 11.6 * (state.setting.nominal / 12)) told('voltage', 0.4);
  return chances;
};

const terminals: Rule = (cause) => {
  if (has(cause, 'battery-connection')) return { corroded: 0.42, loose: 0.3, 'clean-tight': 0.28 };
  if (has(cause, 'battery-worn')) return { 'clean-tight': 0.8, corroded: 0.17, loose: 0.03 };
  return { 'clean-tight': 0.86, corroded: 0.11, loose: 0.03 };
};

const look: Rule = (_, state) => {
  const { setting, charge, health } = state;
  const frozen = setting.temperatureC <= -10 && charge < 25 ? 0.35 : 0;
  const swollen = health < 0.3 ? 0.035 : 0.006;
  return { sound: 1 - frozen - swollen - 0.012, frozen, swollen, cracked: 0.004, leaking: 0.008 };
};

const pump: Rule = (cause, state) => {
  const dark =
    restsDark(state) > 0.5 ||
    cause.ends === 'no-supply' ||
    cause.ends === 'no-ignition' ||
    cause.ends === 'key-held';
  if (dark) return two('none', 0.97, 'heard');
  if (cause.mode === 'pump') return two('none', 0.88, 'heard');
  if (cause.mode === 'no-fuel') return two('none', 0.5, 'heard');
  return two('heard', state.setting.fuel === 'diesel' ? 0.72 : 0.83, 'none');
};

const rules: Readonly<Record<string, Rule>> = {
  scene: () => ({ safe: 1 }),
  complaint,
  when,
  dash,
  headlamps,
  boost,
  'charge-lamp': (cause) =>
    two(
      'was-lit',
      cause.mode === 'charging' ? 0.6 : has(cause, 'battery-connection') ? 0.1 : 0.05,
      'normal',
    ),
  selector: (cause, { setting }) =>
    setting.transmission === 'automatic' || has(cause, 'operator')
      ? two('in-gear', cause.mode === 'gear' ? 0.88 : 0.02, 'park-neutral')
      : two('in-gear', 0.03, 'park-neutral'),
  clutch: (cause, { setting }) =>
    setting.transmission === 'manual'
      ? two('up', cause.mode === 'clutch' ? 0.85 : 0.02, 'down')
      : undefined,
  'brake-lamps': (cause, state) => {
    if (state.setting.ignition !== 'button') return undefined;
    const dark =
      cause.ends === 'no-supply'
        ? 0.97
        : has(cause, 'brake-switch')
          ? 0.87
          : Math.max(0.03, restsDark(state));
    return two('dark', dark, 'light');
  },
  'steering-wheel': (cause, { setting }) =>
    setting.ignition === 'key'
      ? two('frees', has(cause, 'steering-lock') ? 0.62 : 0.02, 'no-change')
      : undefined,
  isolator: (cause, { setting }) =>
    setting.nominal === 24 ? two('off', cause.mode === 'isolator' ? 0.93 : 0.02, 'on') : undefined,
  'ready-lamp': (_, { setting }) =>
    setting.isFullHybrid ? two('not-ready', 0.97, 'ready') : undefined,
  'security-lamp': (cause) =>
    two('warning', has(cause, 'immobiliser') ? 0.8 : has(cause, 'key-fob') ? 0.45 : 0.04, 'normal'),
  'other-key': (cause) =>
    two(
      'starts',
      has(cause, 'key-fob') ? 0.9 : has(cause, 'immobiliser') ? 0.42 : 0.01,
      'no-change',
    ),
  'neutral-try': (cause, { setting }) =>
    setting.transmission === 'automatic' && !setting.isFullHybrid
      ? two(
          'cranks',
          has(cause, 'selector-switch') ? 0.65 : cause.mode === 'gear' ? 0.93 : 0.015,
          'no-change',
        )
      : undefined,
  'rev-counter': (cause, { attempt, setting }) => {
    if (!isCommanded(cause) || attempt.outcome !== 'turning' || setting.isFullHybrid)
      return undefined;
    const still = has(cause, 'position-sensor')
      ? 0.87
      : has(cause, 'starter-drive', 'ring-gear')
        ? 0.95
        : 0.15;
    return two('still', still, 'moves');
  },
  'crank-rhythm': (cause, { attempt }) => {
    if (!isCommanded(cause) || attempt.outcome !== 'turning') return undefined;
    if (has(cause, 'timing-lost')) return { 'fast-even': 0.72, even: 0.15, uneven: 0.13 };
    if (has(cause, 'starter-drive', 'ring-gear'))
      return { 'fast-even': 0.55, even: 0.1, uneven: 0.35 };
    return { even: 0.87, uneven: 0.1, 'fast-even': 0.03 };
  },
  'fuel-level': (cause) => {
    if (has(cause, 'fuel-empty')) return { empty: 0.76, 'has-fuel': 0.24 };
    if (has(cause, 'fuel-wrong')) return { 'wrong-fuel': 0.55, 'has-fuel': 0.45 };
    return { 'has-fuel': 0.965, empty: 0.03, 'wrong-fuel': 0.005 };
  },
  'pump-sound': pump,
  'glow-lamp': glow,
  'flooded-smell': (cause, { setting }) =>
    setting.fuel !== 'petrol'
      ? undefined
      : two(
          'yes',
          has(cause, 'flooded-engine') ? 0.82 : has(cause, 'ignition-spark') ? 0.3 : 0.04,
          'no',
        ),
  codes,
  terminals,
  'battery-look': look,
  'main-fuse': (cause) => two('open', has(cause, 'main-fuse') ? 0.97 : 0.003, 'intact'),
  'starter-fuse': (cause) => two('blown', has(cause, 'starter-fuse') ? 0.97 : 0.006, 'intact'),
  relay: (cause, state) => {
    if (
      [
        'no-supply',
        'no-ignition',
        'key-held',
        'ignition-switch',
        'position-switch',
        'refused',
      ].includes(cause.ends)
    ) {
      return two('silent', 0.95, 'clicks');
    }
    if (cause.mode === 'coil' && has(cause, 'starter-relay')) return two('silent', 0.95, 'clicks');
    return two('clicks', restsDark(state) > 0.5 ? 0.2 : 0.92, 'silent');
  },
  'relay-swap': (cause) => two('cranks', has(cause, 'starter-relay') ? 0.95 : 0.01, 'no-change'),
  tap: (cause) => {
    const moved =
      has(cause, 'starter-motor') && cause.mode !== 'armature'
        ? 0.55
        : has(cause, 'solenoid') && cause.mode.startsWith('contacts')
          ? 0.4
          : 0.02;
    return isCommanded(cause)
      ? two('cranks', moved, 'no-change')
      : two('cranks', 0.005, 'no-change');
  },
  'turn-engine': (cause) => {
    if (has(cause, 'engine-locked')) return { locked: 0.94, tight: 0.06 };
    if (has(cause, 'engine-drag')) return { tight: 0.75, locked: 0.08, turns: 0.17 };
    return { turns: 0.955, tight: 0.04, locked: 0.005 };
  },
  spark: (cause, { setting, attempt }) => {
    if (setting.fuel !== 'petrol' || !isCommanded(cause) || attempt.outcome !== 'turning')
      return undefined;
    return two(
      'absent',
      has(cause, 'ignition-spark')
        ? 0.9
        : has(cause, 'position-sensor')
          ? 0.87
          : cause.mode === 'no-fuel'
            ? 0.4
            : 0.04,
      'present',
    );
  },
};

/** The checks that are answered with one of some choices. */
export const choiceChecks: readonly string[] = Object.keys(rules);

/** How likely each answer of a careful observer is, or nothing where the check makes no sense. */
export function choiceChances(
  check: string,
  cause: Cause,
  state: CircuitState,
): Chances | undefined {
  return rules[check]?.(cause, state);
}

const usualHistory: Readonly<Record<string, number>> = {
  'lights-left-on': 0.04,
  'parked-long': 0.08,
  'jumped-recently': 0.06,
  'work-just-done': 0.05,
  'just-fuelled': 0.05,
  water: 0.003,
  damp: 0.08,
  impact: 0.008,
};

/** How likely each piece of history holds, each for itself. */
export function historyChances(cause: Cause): Readonly<Record<string, number>> {
  const { mode } = cause;
  const more: Readonly<Record<string, number>> =
    mode === 'lamp'
      ? { 'lights-left-on': 0.6, 'parked-long': 0.12 }
      : mode === 'drain'
        ? { 'parked-long': 0.58, 'jumped-recently': 0.2 }
        : mode === 'charging'
          ? { 'jumped-recently': 0.35 }
          : mode === 'short-trips'
            ? { 'parked-long': 0.15, 'jumped-recently': 0.1 }
            : has(cause, 'battery-worn')
              ? { 'jumped-recently': 0.33, 'parked-long': 0.17, 'lights-left-on': 0.07 }
              : has(cause, 'battery-connection')
                ? { 'jumped-recently': 0.15, 'work-just-done': 0.2 }
                : has(cause, 'fuel-wrong')
                  ? { 'just-fuelled': 0.87 }
                  : has(cause, 'main-fuse')
                    ? { 'work-just-done': 0.3, 'jumped-recently': 0.3 }
                    : has(cause, 'starter-fuse', 'control-wiring')
                      ? { 'work-just-done': 0.25, impact: 0.03 }
                      : has(cause, 'ignition-spark')
                        ? { damp: 0.32 }
                        : mode === 'liquid'
                          ? { water: 0.8, damp: 0.2 }
                          : has(cause, 'immobiliser')
                            ? { 'work-just-done': 0.1, 'jumped-recently': 0.1 }
                            : {};
  return { ...usualHistory, ...more };
}
