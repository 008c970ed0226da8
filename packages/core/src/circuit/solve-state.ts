/**
 * One hidden state of a starting circuit, solved: what would be read and seen on that vehicle.
 */
import {
  attemptStart,
  batteryModel,
  batteryVoltage,
  engineLoad,
  openCircuitVoltageAt,
  usualStarter,
  type BatteryModel,
  type CrankingCircuit,
  type CrankingSolution,
  type VehicleKind,
} from '@keyturn/electrics';
import type { CircuitFigures } from './figures.ts';

/** What the starter does while start is held. */
export type Held = 'silent' | 'rapid-clicking' | 'single-click' | 'turning';

/** Figures of the circuit at one moment while start is held, in V and A. */
export interface HeldFigures {
  readonly current: number;
  readonly post: number;
  readonly clamps: number;
  readonly positive: number;
  readonly ground: number;
  readonly contacts: number;
  readonly control: number;
  /** At the positive clamp, against the negative post. */
  readonly feed: number;
}

/** The same as a meter shows it, which is slower than a chattering solenoid. */
export interface HeldReadings extends HeldFigures {
  readonly held: Held;
  /** Speed of the engine, /min. */
  readonly speed: number;
  /** At the lamps and the start circuit, against the body. */
  readonly body: number;
  /** Where the solenoid chatters: before its contacts close, and with them closed. */
  readonly moments?: readonly [HeldFigures, HeldFigures];
  /** True where the drops follow the current by resistance, so that one current explains all. */
  readonly isOhmic: boolean;
}

/**
 * What is spread about a state instead of drawn with it: figures that are as on any vehicle, and
 * hardly bear on anything but their own reading.
 */
export interface UndrawnSpread {
  /** Of the resistance of each part that is sound, its standard deviation. */
  readonly parts: Readonly<Record<'clamps' | 'positive' | 'ground' | 'contacts', number>>;
  /** Where the charge is as usual: rest voltages, V, of equally many vehicles. */
  readonly rests: readonly number[];
}

/** A solved state. */
export interface CircuitState {
  readonly figures: CircuitFigures;
  readonly kind: VehicleKind;
  readonly battery: BatteryModel;
  /** Volts at the posts, at rest. */
  readonly rest: number;
  /** Volts at the lamps with the ignition on. */
  readonly bodyRest: number;
  /** The same against the negative post. */
  readonly feedRest: number;
  readonly held: HeldReadings;
  readonly undrawn: UndrawnSpread;
}

/** Amperes of lamps and ignition. Common practice, no source. */
const bodyAmperes = 10;

/** Solves one state. No side effects. */
export function solveState(
  figures: CircuitFigures,
  kind: VehicleKind,
  undrawn: UndrawnSpread,
): CircuitState {
  const battery = batteryOf(figures, kind, figures);
  const circuit = circuitOf({ figures, kind, battery });
  const feedOhm = circuit.positiveClampOhm + figures.supply / 1000;
  const postOn = Math.max(0, batteryVoltage(battery, bodyAmperes));
  return {
    figures,
    kind,
    battery,
    rest: battery.emfV + figures.surface * kind.series,
    bodyRest: bodyVolts(postOn, feedOhm + circuit.negativeClampOhm, kind),
    feedRest: bodyVolts(postOn, feedOhm, kind),
    held: holdStart(figures, circuit, kind),
    undrawn,
  };
}

/** A lamp's resistance rather than its current, so that a bad joint leaves what it must. */
function bodyVolts(postV: number, ohm: number, { series }: VehicleKind): number {
  const lampOhm = (12.5 * series) / bodyAmperes;
  return Number.isFinite(ohm) ? (postV * lampOhm) / (lampOhm + ohm) : 0;
}

/** The battery after a full charge, or the nearest to it that it can reach. */
export function rechargedBattery({ figures, kind }: CircuitState): BatteryModel {
  return batteryOf(figures, kind, { charge: figures.taken, emptied: 0 });
}

/** An empty battery that goes on being drained loses volts and conducts less and less. */
function batteryOf(
  figures: CircuitFigures,
  { technology, series }: VehicleKind,
  { charge, emptied }: Pick<CircuitFigures, 'charge' | 'emptied'>,
): BatteryModel {
  const { emfV, resistanceOhm, polarisationV, polarisationA } = batteryModel({
    ratingA: figures.rating,
    health: figures.health,
    restV: openCircuitVoltageAt(charge, technology),
    technology,
    temperatureC: figures.temperature,
    series,
  });
  const lost = emptied * series + figures['dead-cells'] * cellV;
  return {
    emfV: Math.max(0.1, emfV - lost),
    resistanceOhm: resistanceOhm * (1 + 0.3 * emptied),
    polarisationV,
    polarisationA,
  };
}

const cellV = 2.1;

/** The whole circuit of a state: worked out anew, since so many states are kept. */
export function circuitOf({
  figures,
  kind,
  battery,
}: Pick<CircuitState, 'figures' | 'kind' | 'battery'>): CrankingCircuit {
  const { fuel, series } = kind;
  const { displacement, temperature } = figures;
  const { motor, solenoid } = usualStarter(displacement, kind);
  const windings = Math.min(figures.windings, openWindings);
  return {
    battery,
    positiveClampOhm: figures['positive-clamp'] / 1000,
    negativeClampOhm: figures['negative-clamp'] / 1000,
    positiveCableOhm: figures.positive / 1000,
    groundCableOhm: figures.ground / 1000,
    contactsOhm: figures.contacts / 1000,
    controlOhm: (figures.control + figures.supply) / 1000,
    solenoid: {
      pullInOhm: solenoid.pullInOhm * windings,
      holdInOhm: solenoid.holdInOhm * windings,
      // Ampere-turns decide, so that windings of more resistance need more volts.
      operateV: figures.operate * series * windings,
      releaseV: figures.release * series,
    },
    motor: {
      emfPerSpeed: motor.emfPerSpeed * figures.field,
      resistanceOhm: motor.resistanceOhm + figures.brushes / 1000,
      brushV: motor.brushV,
      frictionA: figures.friction / series,
      efficiency: motor.efficiency,
    },
    engine: engineLoad({
      fuel,
      displacementL: displacement,
      oil: usualOil,
      temperatureC: temperature,
      drag: Math.min(figures.drag, lockedDrag),
    }),
  };
}

const usualOil = '5W-30';

// So much that nothing moves or flows, and yet a number to reckon with.
const lockedDrag = 1e6;
const openWindings = 1e6;

/** Holds start on a circuit. */
export function holdStart(
  figures: CircuitFigures,
  circuit: CrankingCircuit,
  kind: VehicleKind,
): HeldReadings {
  const readings = whileHeld(figures, circuit);
  const bodyOhm = circuit.negativeClampOhm + figures.supply / 1000;
  const body = bodyVolts(Math.max(0, readings.post - readings.clamps), bodyOhm, kind);
  return { ...readings, body };
}

function whileHeld(figures: CircuitFigures, circuit: CrankingCircuit): Omit<HeldReadings, 'body'> {
  const attempt = attemptStart(circuit);
  if (figures.wake > 0 && !Number.isFinite(circuit.controlOhm)) {
    return { ...beforeClosing(circuit, woken(figures.wake)), held: 'silent' };
  }
  switch (attempt.outcome) {
    case 'silent':
      return { ...beforeClosing(circuit, attempt), held: 'silent' };
    case 'rapid-clicking': {
      const before = beforeClosing(circuit, attempt);
      const closed = fromSolution(attempt.standing, 'rapid-clicking');
      return {
        held: 'rapid-clicking',
        speed: 0,
        current: (before.current + closed.current) / 2,
        post: (before.post + closed.post) / 2,
        clamps: (before.clamps + closed.clamps) / 2,
        positive: (before.positive + closed.positive) / 2,
        ground: (before.ground + closed.ground) / 2,
        contacts: (before.contacts + closed.contacts) / 2,
        control: (before.control + closed.control) / 2,
        feed: (before.feed + closed.feed) / 2,
        isOhmic: false,
        moments: [before, closed],
      };
    }
    default: {
      const { standing, steady } = attempt;
      if (steady.state === 'open') {
        const before = beforeClosing(circuit, attempt);
        return {
          ...before,
          held: 'single-click',
          positive: Number.isFinite(circuit.positiveCableOhm) ? before.positive : before.post,
        };
      }
      return steady.state === 'turning' && steady.speed >= figures.stall
        ? fromSolution(steady, 'turning')
        : fromSolution(standing, 'single-click');
    }
  }
}

/** No winding draws, but the drive's computers and what they wake. */
function woken(amperes: number): { readonly windingA: number; readonly controlV: number } {
  return { windingA: amperes, controlV: 0 };
}

/** Both windings draw, the contacts are open, and the motor's stud is at ground through the motor. */
function beforeClosing(
  circuit: CrankingCircuit,
  { windingA, controlV }: { readonly windingA: number; readonly controlV: number },
): Omit<HeldReadings, 'held' | 'body'> {
  const post = Math.max(0, batteryVoltage(circuit.battery, windingA));
  const positive = ohmic(circuit.positiveClampOhm, windingA, post);
  const ground = ohmic(circuit.negativeClampOhm + circuit.groundCableOhm, windingA, post);
  // The motor's stud hangs between the pull-in winding and the motor: worn brushes let it rise.
  const { pullInOhm } = circuit.solenoid;
  const { resistanceOhm } = circuit.motor;
  const stud = Number.isFinite(resistanceOhm)
    ? (controlV * resistanceOhm) / (resistanceOhm + pullInOhm)
    : controlV;
  return {
    speed: 0,
    current: windingA,
    post,
    clamps: Math.max(positive, ohmic(circuit.negativeClampOhm, windingA, post)),
    positive: Number.isFinite(circuit.positiveCableOhm) ? positive : post,
    ground,
    contacts: Number.isFinite(circuit.positiveCableOhm)
      ? Math.max(0, post - positive - ground - stud)
      : 0,
    control: controlV,
    feed: Math.max(0, post - positive),
    isOhmic: false,
  };
}

/** The drop over a resistance; over an open one stands all there is. */
function ohmic(ohm: number, current: number, whole: number): number {
  return Number.isFinite(ohm) ? ohm * current : whole;
}

function fromSolution(solution: CrankingSolution, held: Held): Omit<HeldReadings, 'body'> {
  return {
    held,
    speed: solution.speed,
    current: solution.currentA,
    post: Math.max(0, solution.postV),
    clamps: Math.max(solution.positiveClampV, solution.negativeClampV),
    positive: solution.positiveV,
    ground: solution.groundV,
    contacts: solution.contactsV,
    control: solution.controlV,
    feed: Math.max(0, solution.postV - solution.positiveClampV),
    isOhmic: held !== 'rapid-clicking',
  };
}
