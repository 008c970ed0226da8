/**
 * The hidden state of a virtual vehicle and what its circuit does with it.
 *
 * A state is a vector of independent standard normals; the figures below make resistances, charge
 * and wear of it. Their sizes are common practice, no source. The circuit itself is the model of
 * `electrics`; what that has no part for (a dead cell, open windings, a slipping drive) is put
 * around it here.
 */
import {
  attemptStart,
  batteryModel,
  batteryVoltage,
  engineLoad,
  type BatteryModel,
  type CrankingCircuit,
  type Solenoid,
  type StartAttempt,
  type StarterMotor,
} from '@keyturn/electrics';
import type { Electrics } from './causes.ts';
import { usualRating, type Setting, type Technology } from './setting.ts';

/** What each place of a state's vector decides. */
export const hidden = [
  'charge',
  'health',
  'rating',
  'drag',
  'positiveClamp',
  'negativeClamp',
  'positiveCable',
  'groundCable',
  'contacts',
  'motor',
  'severity',
  'secondSeverity',
  'rest',
  'lamps',
  'boostLeads',
  'recovery',
] as const;

/** The places of a state's vector, by name. */
export const at = Object.fromEntries(hidden.map((name, index) => [name, index])) as Record<
  (typeof hidden)[number],
  number
>;

/** Figures of a state for one kind of electrics, in V, A, Ohm. Of both batteries at 24 V. */
export type CircuitState = {
  readonly electrics: Electrics;
  readonly setting: Setting;
  readonly charge: number;
  readonly health: number;
  readonly restV: number;
  readonly circuit: CrankingCircuit;
  readonly attempt: StartAttempt;
  /** /min; 0 where it does not turn. */
  readonly speed: number;
  readonly usualSpeed: number;
  readonly leastSpeed: number;
  /** At the lamps while start is held, and with the lamps alone on. */
  readonly lampsHeldV: number;
  readonly lampsOnV: number;
  readonly vector: Float64Array;
};

type Curve = readonly (readonly [number, number])[];
const floodedRest: Curve = [
  [0, 11.89],
  [25, 12.06],
  [50, 12.24],
  [75, 12.45],
  [100, 12.65],
];
const restCurves: Readonly<Record<Technology, Curve>> = {
  flooded: floodedRest,
  efb: floodedRest,
  agm: [
    [0, 11.8],
    [20, 12],
    [50, 12.4],
    [60, 12.5],
    [70, 12.55],
    [90, 12.8],
    [100, 12.85],
  ],
};

function along(curve: Curve, x: number): number {
  for (let index = 1; index < curve.length; index += 1) {
    const [high, highValue] = curve[index]!;
    const [low, lowValue] = curve[index - 1]!;
    if (x <= high) return lowValue + ((highValue - lowValue) * (x - low)) / (high - low);
  }
  return curve.at(-1)![1];
}

type StarterCurves = { readonly emfPerSpeed: Curve; readonly resistanceOhm: Curve };

/** Starters as the circuit model scales them, by engine. */
const starters: Readonly<Record<'petrol' | 'diesel' | 'truck', StarterCurves>> = {
  petrol: {
    emfPerSpeed: [
      [1, 0.33],
      [2, 0.37],
      [3.5, 0.42],
      [6, 0.5],
    ],
    resistanceOhm: [
      [1, 0.0056],
      [2, 0.0051],
      [3.5, 0.0046],
      [6, 0.0041],
    ],
  },
  diesel: {
    emfPerSpeed: [
      [1.5, 0.38],
      [2.2, 0.4],
      [6, 0.52],
      [7.5, 0.55],
    ],
    resistanceOhm: [
      [1.5, 0.0043],
      [2.2, 0.0041],
      [6, 0.0032],
      [7.5, 0.003],
    ],
  },
  truck: {
    emfPerSpeed: [
      [4, 0.8],
      [7, 1.05],
      [13, 1.45],
    ],
    resistanceOhm: [
      [4, 0.012],
      [7, 0.009],
      [13, 0.007],
    ],
  },
};

function startersOf({ fuel, nominal }: Setting): StarterCurves {
  return starters[nominal === 24 ? 'truck' : fuel];
}

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
const cellV = 2.1;

/** Rest voltage of one battery: below some 4 % of charge it falls away. */
function restVoltage(technology: Technology, charge: number): number {
  const table = along(restCurves[technology], charge);
  return charge >= 4 ? table : table - 6 * (1 - charge / 4) ** 1.5;
}

const healthByAge: Curve = [
  [0, 1],
  [2, 0.95],
  [5, 0.8],
  [8, 0.68],
  [14, 0.62],
];

function usualHealth(ageA: number): number {
  return along(healthByAge, ageA);
}

type BatteryFigures = { readonly charge: number; readonly health: number };

function batteryFigures(electrics: Electrics, vector: Float64Array, ageA: number): BatteryFigures {
  const charge = vector[at.charge]!;
  const health = vector[at.health]!;
  const cared = Math.min(1.08, usualHealth(ageA) * Math.exp(0.07 * health));
  const isWorn =
    electrics.startsWith('worn-and') || electrics === 'worn' || electrics === 'dead-cell';
  const isFlat = electrics.startsWith('discharged');
  if (isWorn) {
    return {
      charge: 100 * logistic(0.5 + 1.2 * charge),
      health: 0.08 + 0.5 * logistic(-0.1 + 0.9 * health),
    };
  }
  if (isFlat) return { charge: 100 * logistic(-1.7 + 1.4 * charge), health: cared };
  return { charge: 100 * logistic(1.7 + 0.8 * charge), health: cared };
}

/** Where a joint that is not sound stands between a trace of resistance and none left of it. */
function bad(mohm: number, spread: number, severity: number): number {
  return (mohm / 1000) * Math.exp(spread * severity);
}

type Battery = BatteryModel & BatteryFigures & { readonly restV: number };

function batteryOf(setting: Setting, electrics: Electrics, vector: Float64Array): Battery {
  const { technology, temperatureC, ratingA, nominal, ageA } = setting;
  const { charge, health } = batteryFigures(electrics, vector, ageA);
  const series = nominal / 12;
  // A cold battery reads up to 0.05 V less; publishers of the curve differ by some 0.04 V.
  const cold = temperatureC < 10 ? Math.min(0.05, (10 - temperatureC) * 0.0015) : 0;
  const restV = restVoltage(technology, charge) - cold + 0.035 * vector[at.rest]!;
  const model = batteryModel({
    ratingA: ratingA * Math.exp(0.06 * vector[at.rating]!),
    health,
    restV,
    technology,
    temperatureC,
    series,
  });
  const lost = electrics === 'dead-cell' ? cellV * (0.9 + 0.05 * vector[at.recovery]!) : 0;
  return { ...model, emfV: model.emfV - lost, charge, health, restV: restV * series - lost };
}

const truckSolenoid: Solenoid = { pullInOhm: 0.18, holdInOhm: 1.55, operateV: 14, releaseV: 7 };
const carSolenoid: Solenoid = { pullInOhm: 0.16, holdInOhm: 0.72, operateV: 7, releaseV: 3.5 };

/** Rest voltage of a state, without solving its circuit. */
export function restOf(setting: Setting, electrics: Electrics, vector: Float64Array): number {
  return batteryOf(setting, electrics, vector).restV;
}

// Both windings draw some 75 A, and a sound circuit loses less than 1 V of them (TM 5-2420-230-24-2).
const soundControlOhm = 0.01;

function clampOhms(
  electrics: Electrics,
  vector: Float64Array,
): { readonly positive: number; readonly negative: number } {
  const positive = 0.0001 * Math.exp(0.5 * vector[at.positiveClamp]!);
  const negative = 0.0001 * Math.exp(0.5 * vector[at.negativeClamp]!);
  switch (electrics) {
    case 'positive-clamp':
      return { positive: bad(25, 1.5, vector[at.severity]!), negative };
    case 'negative-clamp':
      return { positive, negative: bad(25, 1.5, vector[at.severity]!) };
    case 'worn-and-clamp':
    case 'discharged-and-clamp':
      return { positive, negative: bad(8, 1.5, vector[at.secondSeverity]!) };
    default:
      return { positive, negative };
  }
}

function contactsOhm(electrics: Electrics, vector: Float64Array): number {
  if (electrics === 'open-contacts') return Infinity;
  const sound = 0.0004 * Math.exp(0.35 * vector[at.contacts]!);
  return electrics === 'burnt-contacts' ? sound + bad(40, 0.9, vector[at.severity]!) : sound;
}

function groundOhm(electrics: Electrics, vector: Float64Array): number {
  const sound = 0.0005 * Math.exp(0.3 * vector[at.groundCable]!);
  if (electrics === 'ground-cable') return sound + bad(22, 0.9, vector[at.severity]!);
  return electrics === 'worn-and-ground' ? sound + bad(5, 0.5, vector[at.secondSeverity]!) : sound;
}

function motorOf(setting: Setting, electrics: Electrics, vector: Float64Array): StarterMotor {
  const { displacementL, nominal } = setting;
  const curves = startersOf(setting);
  const severity = vector[at.severity]!;
  const sound = along(curves.resistanceOhm, displacementL) * Math.exp(0.08 * vector[at.motor]!);
  const friction =
    electrics === 'dragging-armature'
      ? 350 * Math.exp(0.4 * severity)
      : electrics === 'worn-and-armature'
        ? 200 * Math.exp(0.45 * vector[at.secondSeverity]!)
        : 25;
  return {
    emfPerSpeed: along(curves.emfPerSpeed, displacementL),
    resistanceOhm:
      electrics === 'open-brushes'
        ? Infinity
        : electrics === 'worn-brushes'
          ? sound + bad(35, 0.6, severity)
          : sound,
    brushV: electrics === 'worn-brushes' ? 1.1 : 0.6,
    frictionA: friction * (nominal === 24 ? 0.8 : 1),
    efficiency: 0.9,
  };
}

function circuitOf(
  setting: Setting,
  electrics: Electrics,
  vector: Float64Array,
): CrankingCircuit & { readonly battery: Battery } {
  const { fuel, nominal, displacementL, temperatureC, location } = setting;
  const severity = vector[at.severity]!;
  const clamps = clampOhms(electrics, vector);
  const cable =
    (location === 'boot' ? 0.0019 : 0.0009) * Math.exp(0.22 * vector[at.positiveCable]!);
  const engine = engineLoad({
    fuel,
    displacementL,
    oil: '5W-30',
    temperatureC,
    drag: Math.exp(0.13 * vector[at.drag]!) * dragOf(electrics, severity),
  });
  return {
    battery: batteryOf(setting, electrics, vector),
    positiveClampOhm: clamps.positive,
    negativeClampOhm: clamps.negative,
    positiveCableOhm: electrics === 'positive-cable' ? cable + bad(40, 0.7, severity) : cable,
    groundCableOhm: groundOhm(electrics, vector),
    contactsOhm: contactsOhm(electrics, vector),
    controlOhm:
      electrics === 'control-resistance'
        ? soundControlOhm + bad(250, 0.7, severity)
        : soundControlOhm,
    solenoid: nominal === 24 ? truckSolenoid : carSolenoid,
    motor: motorOf(setting, electrics, vector),
    engine: electrics === 'locked-engine' ? { ...engine, constantNm: Infinity } : engine,
  };
}

function dragOf(electrics: Electrics, severity: number): number {
  if (electrics === 'hard-engine') return 1.8 + 2.2 * Math.exp(0.5 * severity);
  if (electrics === 'no-compression') return 0.5 * Math.exp(0.15 * severity);
  return electrics === 'slipping-drive' ? 0.08 : 1;
}

const usualSpeeds = new Map<number, number>();

/** The speed of the same engine, warm and sound. */
function usualSpeedOf(setting: Setting): number {
  const { fuel, nominal, displacementL } = setting;
  const key = displacementL + (nominal === 24 ? 1000 : fuel === 'diesel' ? 100 : 0);
  const known = usualSpeeds.get(key);
  if (known !== undefined) return known;
  // Without the temperature and the battery's own figures, so that the key is all that it hangs on.
  const usual: Setting = { ...setting, temperatureC: 18, ageA: 2, ratingA: usualRating(setting) };
  const attempt = attemptStart(circuitOf(usual, 'sound', new Float64Array(hidden.length)));
  const speed = attempt.outcome === 'turning' ? attempt.steady.speed : 200;
  usualSpeeds.set(key, speed);
  return speed;
}

/** Solves the circuit of a state. */
export function circuitState(
  setting: Setting,
  electrics: Electrics,
  vector: Float64Array,
): CircuitState {
  const circuit = circuitOf(setting, electrics, vector);
  const { battery } = circuit;
  const solved = setting.isFullHybrid ? quietAttempt : attemptStart(circuit);
  // An open hold-in winding: the plunger pulls in, its contacts short the other one, and it drops out.
  const attempt: StartAttempt =
    electrics === 'hold-in-open' && solved.outcome !== 'silent'
      ? { ...solved, outcome: 'rapid-clicking' }
      : solved;
  const speed = attempt.outcome === 'turning' ? attempt.steady.speed : 0;
  const clampOhm = circuit.positiveClampOhm + circuit.negativeClampOhm;
  const lampsOnV = voltsAcross(battery, clampOhm, 9 * Math.exp(0.2 * vector[at.lamps]!));
  return {
    electrics,
    setting,
    charge: battery.charge,
    health: battery.health,
    restV: battery.restV,
    circuit,
    attempt,
    speed,
    usualSpeed: usualSpeedOf(setting),
    // From memory: a petrol engine wants 60 to 100 /min, a diesel with glow plugs 80 to 150.
    leastSpeed: setting.fuel === 'petrol' ? 85 : setting.nominal === 24 ? 90 : 115,
    lampsHeldV: setting.isFullHybrid
      ? voltsAcross(battery, clampOhm, 25)
      : heldVoltage(circuit, attempt, lampsOnV),
    lampsOnV,
    vector,
  };
}

const quietAttempt: StartAttempt = { outcome: 'silent', windingA: 0, controlV: 0 };

/** Volts at the clamps with a load on them. */
function voltsAcross(battery: BatteryModel, clampOhm: number, amperes: number): number {
  return Math.max(0, batteryVoltage(battery, amperes) - clampOhm * amperes);
}

/** Volts at the clamps while start is held, as lamps show them: in the mean of a chatter. */
function heldVoltage(
  { battery, positiveClampOhm, negativeClampOhm }: CrankingCircuit,
  attempt: StartAttempt,
  lampsOnV: number,
): number {
  const clampOhm = positiveClampOhm + negativeClampOhm;
  const across = (amperes: number): number => voltsAcross(battery, clampOhm, amperes);
  switch (attempt.outcome) {
    case 'silent':
      return across(attempt.windingA + 6);
    case 'rapid-clicking':
      return (across(attempt.windingA) + Math.max(2, 0.35 * lampsOnV)) / 2;
    default:
      return across(attempt.steady.currentA + 6);
  }
}

/** Whether a state with these electrics is one of a vehicle that does not start. */
export function isNoStart(state: CircuitState): boolean {
  const { electrics, attempt, speed, leastSpeed, usualSpeed, setting, lampsHeldV } = state;
  const turns = attempt.outcome === 'turning';
  const volts = lampsHeldV / (setting.nominal / 12);
  switch (electrics) {
    case 'sound':
      return setting.isFullHybrid ? volts > 11.3 : turns && speed > 1.15 * leastSpeed;
    case 'no-compression':
      return turns && speed > usualSpeed;
    case 'slipping-drive':
    case 'locked-engine':
    case 'open-brushes':
    case 'open-contacts':
    case 'hold-in-open':
      return attempt.outcome !== 'silent' && volts > 0;
    default:
      return setting.isFullHybrid ? volts < 10.8 : !turns || speed < leastSpeed;
  }
}
