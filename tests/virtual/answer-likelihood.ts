/**
 * How likely the answers of a case are, for a cause and a hidden state.
 */
import { causeChances, type Cause } from './causes.ts';
import { choiceChances, historyChances } from './choices.ts';
import { at, hidden, type CircuitState } from './circuit-state.ts';
import { grossError, grossRange, personChance, recallChance, type Meter } from './person.ts';
import { readingsLogDensity, type Fit } from './reading-likelihood.ts';
import { trueFigure } from './readings.ts';
import { figuresFrom, untold, type Setting, type Untold } from './setting.ts';
import { lampGlow, type Given, type VirtualVehicle } from './vehicle.ts';

/** What is known of a vehicle: everything but its cause and its state. */
export type Evidence = Pick<VirtualVehicle, 'setting' | 'told' | 'meter'> & {
  readonly given: ReadonlyMap<string, Given>;
};

type Figure = Extract<Given, { kind: 'lamp' | 'reading' }>;

/** The same, sorted by what the answers hang on. */
export type SortedEvidence = {
  readonly whole: Evidence;
  /** Places of a state's vector that the answers tell something about. */
  readonly sought: readonly number[];
  readonly choices: readonly (readonly [check: string, choice: string])[];
  readonly figures: readonly (readonly [check: string, given: Figure])[];
  readonly meter: Meter;
  readonly chancesIn: (setting: Setting) => Float64Array;
};

/** A vector holds a state's places, and after them those of the figures that were not told. */
export const places: number = hidden.length + untold.length;

/** Answers that the model of a cause has no place for are still given now and then. */
const leastChance = 0.0002;

/** Checks whose answers hang on the state and not on the cause alone. */
const byState: readonly string[] = [
  'complaint',
  'dash',
  'headlamps',
  'boost',
  'battery-look',
  'codes',
  'pump-sound',
  'glow-lamp',
  'relay',
  'rev-counter',
  'crank-rhythm',
  'spark',
  'brake-lamps',
];

const whileHeld: readonly string[] = [
  'battery-crank',
  'crank-current',
  'drop-clamps',
  'drop-positive',
  'drop-ground',
  'drop-contacts',
  'control-signal',
  'relay-command',
];
const underLoad: readonly string[] = ['battery-lamps', 'battery-load-test', 'battery-tester'];

function soughtPlaces({ given, told }: Evidence): readonly number[] {
  const has = (...checks: readonly string[]): boolean => checks.some((check) => given.has(check));
  const isHeld = has(...whileHeld);
  const isLoaded = isHeld || has(...underLoad);
  const isUntold = (figure: Untold): boolean => !told.has(figure);
  const placeOf = (figure: Untold): number => hidden.length + untold.indexOf(figure);
  const wanted: readonly (readonly [place: number, isWanted: boolean])[] = [
    [at.charge, true],
    [at.health, true],
    [at.severity, true],
    [at.secondSeverity, isHeld],
    [at.rest, isLoaded || has('battery-rest', 'battery-recharged')],
    [at.drag, isHeld],
    [at.motor, isHeld],
    [at.positiveCable, has('drop-positive')],
    [at.groundCable, has('drop-ground')],
    [at.contacts, has('drop-contacts')],
    [at.recovery, has('battery-recharged', 'battery-load-test')],
    [at.rating, isLoaded],
    [placeOf('ageA'), isUntold('ageA')],
    [placeOf('displacementL'), isUntold('displacementL') && isHeld],
    [placeOf('ratingA'), isUntold('ratingA') && isLoaded],
    [placeOf('temperatureC'), isUntold('temperatureC')],
  ];
  return wanted.flatMap(([place, isWanted]) => (isWanted ? [place] : []));
}

/** Of one case only age and temperature may be unknown among what the chances go by. */
function rememberedChances(): (setting: Setting) => Float64Array {
  const known = new Map<number, Float64Array>();
  return (setting) => {
    const key = Math.round(setting.ageA * 2) * 1000 + setting.temperatureC;
    const chances = known.get(key) ?? causeChances(setting);
    known.set(key, chances);
    return chances;
  };
}

/** Sorts what is known. */
export function sortedEvidence(whole: Evidence): SortedEvidence {
  const all = [...whole.given];
  return {
    whole,
    sought: soughtPlaces(whole),
    chancesIn: rememberedChances(),
    meter: whole.meter,
    choices: all.flatMap(([check, one]) =>
      one.kind === 'choice' && byState.includes(check) ? [[check, one.choice] as const] : [],
    ),
    figures: all.flatMap(([check, one]) =>
      (one.kind === 'lamp' || one.kind === 'reading') && check !== 'battery-age'
        ? [[check, one] as const]
        : [],
    ),
  };
}

/** The setting that a vector makes, with what was told as told. */
export function settingFrom({ setting, told }: Evidence, vector: Float64Array): Setting {
  if (told.size === untold.length) return setting;
  const drawn = figuresFrom(setting, vector.subarray(hidden.length));
  return {
    ...setting,
    displacementL: told.has('displacementL') ? setting.displacementL : drawn.displacementL,
    technology: told.has('technology') ? setting.technology : drawn.technology,
    ratingA: told.has('ratingA') ? setting.ratingA : drawn.ratingA,
    location: told.has('location') ? setting.location : drawn.location,
    ageA: told.has('ageA') ? setting.ageA : drawn.ageA,
    temperatureC: told.has('temperatureC') ? setting.temperatureC : drawn.temperatureC,
  };
}

/** Log density of the age that was told when asked, for a setting's. */
export function ageLog({ given }: Evidence, { ageA }: Setting): number {
  const said = given.get('battery-age');
  if (said?.kind !== 'reading') return 0;
  const spread = Math.hypot(0.4 + 0.15 * ageA, said.resolution / Math.sqrt(12));
  const fit: Fit = { shown: said.value, figure: ageA, spread, range: grossRange.a };
  return readingsLogDensity([fit], { gain: 0, offset: 0 }, grossError);
}

/** A cause together with a state of its circuit. */
export type Supposed = { readonly cause: Cause; readonly state: CircuitState };

function choiceLog(check: string, choice: string, { cause, state }: Supposed): number {
  const careful = choiceChances(check, cause, state);
  if (careful === undefined) return Math.log(leastChance);
  const chance = personChance(check, { careful, answer: choice }, state.setting);
  return Math.log(Math.max(leastChance, chance));
}

function historyLog(choices: readonly string[], cause: Cause, setting: Setting): number {
  const recall = recallChance(setting);
  return Object.entries(historyChances(cause)).reduce((sum, [event, chance]) => {
    const told = chance * recall;
    return sum + Math.log(choices.includes(event) ? told : 1 - told);
  }, 0);
}

/** Log chance of the answers that hang on the cause alone; the state is any. */
export function causeLog(evidence: Evidence, supposed: Supposed): number {
  let log = 0;
  for (const [check, given] of evidence.given) {
    if (given.kind === 'several') {
      log += historyLog(given.choices, supposed.cause, evidence.setting);
    } else if (given.kind === 'choice' && !byState.includes(check)) {
      log += choiceLog(check, given.choice, supposed);
    }
  }
  return log;
}

/** Log chance of the choices that hang on the state as well. */
export function choicesLog({ choices }: SortedEvidence, supposed: Supposed): number {
  return choices.reduce((sum, [check, choice]) => sum + choiceLog(check, choice, supposed), 0);
}

/** Log density of the readings. */
export function figuresLog({ figures, meter }: SortedEvidence, supposed: Supposed): number {
  const { cause, state } = supposed;
  let log = 0;
  const volts: Fit[] = [];
  for (const [check, given] of figures) {
    const figure = trueFigure(check, cause, state);
    if (figure === undefined) {
      log += Math.log(leastChance);
      continue;
    }
    if (given.kind === 'lamp') {
      const glow = lampGlow(figure.value / (state.setting.nominal / 12))[given.glow] ?? 0;
      log += Math.log(Math.max(leastChance, glow));
      continue;
    }
    const spread = Math.hypot(figure.spread, given.resolution / Math.sqrt(12));
    const range = grossRange[given.unit];
    const fit: Fit = { shown: given.value, figure: figure.value, spread, range };
    if (figure.by === 'voltmeter') volts.push(fit);
    else log += readingsLogDensity([fit], ammeterOf(figure.by, meter), grossError);
  }
  const { gain, offsetV } = meter;
  return log + readingsLogDensity(volts, { gain, offset: offsetV }, grossError);
}

function ammeterOf(
  by: 'clamp' | 'tester' | 'memory',
  { clampGain, clampOffsetA }: Meter,
): { readonly gain: number; readonly offset: number } {
  return by === 'clamp' ? { gain: clampGain, offset: clampOffsetA } : { gain: 0, offset: 0 };
}
