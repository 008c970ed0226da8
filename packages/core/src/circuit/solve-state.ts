/**
 * One hidden state of a starting circuit, solved: what would be read and seen on that vehicle.
 */
import {
  attemptStart,
  batteryModel,
  batteryVoltage,
  openCircuitVoltageAt,
  solveStanding,
  vehicleCircuit,
  type BatteryModel,
  type CrankingCircuit,
  type CrankingSolution,
  type VehicleKind,
} from '@keyturn/electrics';
import type { CircuitFigures } from './figures.ts';

/** What the starter does while start is held. */
export type Held = 'silent' | 'rapid-clicking' | 'single-click' | 'turning';

/** Figures of the circuit while start is held, in V and A; `swing` tells a chattering solenoid. */
export interface HeldReadings {
  readonly held: Held;
  /** Speed of the engine, /min. */
  readonly speed: number;
  readonly current: number;
  readonly post: number;
  readonly clamps: number;
  readonly positive: number;
  readonly ground: number;
  readonly contacts: number;
  readonly control: number;
  /** At the lamps and the start circuit. */
  readonly body: number;
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
  /** The battery after a full charge, or the nearest to it that it can reach. */
  readonly recharged: BatteryModel;
  readonly circuit: CrankingCircuit;
  /** Volts at the posts, at rest. */
  readonly rest: number;
  /** Volts at the lamps with the ignition on. */
  readonly bodyRest: number;
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
  const battery = batteryOf(figures, kind);
  const charge = figures.taken;
  const circuit = circuitOf(figures, kind, battery);
  const bodyOhm = circuit.positiveClampOhm + circuit.negativeClampOhm + figures.supply / 1000;
  return {
    figures,
    kind,
    battery,
    circuit,
    rest: battery.emfV + figures.surface * kind.series,
    recharged: batteryOf({ ...figures, charge, emptied: 0 }, kind),
    bodyRest: bodyVolts(Math.max(0, batteryVoltage(battery, bodyAmperes)), bodyOhm, kind),
    held: holdStart(figures, circuit, kind),
    undrawn,
  };
}

/** A lamp's resistance rather than its current, so that a bad joint leaves what it must. */
function bodyVolts(postV: number, ohm: number, { series }: VehicleKind): number {
  const lampOhm = (12.5 * series) / bodyAmperes;
  return Number.isFinite(ohm) ? (postV * lampOhm) / (lampOhm + ohm) : 0;
}

/** An empty battery that goes on being drained loses volts and conducts less and less. */
function batteryOf(figures: CircuitFigures, kind: VehicleKind): BatteryModel {
  const { technology, series } = kind;
  const restV = openCircuitVoltageAt(figures.charge, technology);
  const { health, rating: ratingA, temperature: temperatureC } = figures;
  const model = batteryModel({ ratingA, health, restV, technology, temperatureC, series });
  const lost = figures.emptied * series + figures['dead-cells'] * cellV;
  return {
    ...model,
    emfV: Math.max(0.1, model.emfV - lost),
    resistanceOhm: model.resistanceOhm * (1 + 0.3 * figures.emptied),
  };
}

const cellV = 2.1;

function circuitOf(
  figures: CircuitFigures,
  kind: VehicleKind,
  battery: BatteryModel,
): CrankingCircuit {
  const { series } = kind;
  const usual = vehicleCircuit(
    {
      restV: 12.6,
      ratingA: figures.rating,
      health: figures.health,
      temperatureC: figures.temperature,
      displacementL: figures.displacement,
      drag: Math.min(figures.drag, lockedDrag),
      clampMohm: 0,
      positiveMohm: figures.positive,
      groundMohm: figures.ground,
      contactsMohm: figures.contacts,
    },
    kind,
  );
  const { motor, solenoid } = usual;
  const windings = Math.min(figures.windings, openWindings);
  return {
    ...usual,
    battery,
    positiveClampOhm: figures['positive-clamp'] / 1000,
    negativeClampOhm: figures['negative-clamp'] / 1000,
    controlOhm: (figures.control + figures.supply) / 1000,
    solenoid: {
      pullInOhm: solenoid.pullInOhm * windings,
      holdInOhm: solenoid.holdInOhm * windings,
      // Ampere-turns decide, so that windings of more resistance need more volts.
      operateV: figures.operate * series * windings,
      releaseV: figures.release * series,
    },
    motor: {
      ...motor,
      resistanceOhm: motor.resistanceOhm + figures.brushes / 1000,
      emfPerSpeed: motor.emfPerSpeed * figures.field,
      frictionA: figures.friction / series,
    },
  };
}

// So much that nothing moves or flows, and yet a number to reckon with.
const lockedDrag = 1e6;
const openWindings = 1e6;

/** Holds start on a circuit. */
export function holdStart(
  figures: CircuitFigures,
  circuit: CrankingCircuit,
  kind: VehicleKind,
): HeldReadings {
  const attempt = attemptStart(circuit);
  const before = beforeClosing(circuit, attempt);
  const withBody = (readings: Omit<HeldReadings, 'body'>): HeldReadings => ({
    ...readings,
    body: bodyVolts(
      Math.max(0, readings.post - readings.clamps),
      circuit.negativeClampOhm + figures.supply / 1000,
      kind,
    ),
  });
  switch (attempt.outcome) {
    case 'silent':
      return withBody({ ...before, held: 'silent' });
    case 'rapid-clicking': {
      // A meter shows the mean of both moments.
      const closed = fromSolution(solveStanding(circuit), 'rapid-clicking');
      return withBody({
        held: 'rapid-clicking',
        speed: 0,
        current: (before.current + closed.current) / 2,
        post: (before.post + closed.post) / 2,
        clamps: (before.clamps + closed.clamps) / 2,
        positive: (before.positive + closed.positive) / 2,
        ground: (before.ground + closed.ground) / 2,
        contacts: (before.contacts + closed.contacts) / 2,
        control: (before.control + closed.control) / 2,
        isOhmic: false,
      });
    }
    default: {
      const { steady } = attempt;
      if (steady.state === 'open') {
        return withBody({
          ...before,
          held: 'single-click',
          positive: Number.isFinite(circuit.positiveCableOhm) ? before.positive : before.post,
        });
      }
      if (steady.state === 'turning' && steady.speed >= figures.stall) {
        return withBody(fromSolution(steady, 'turning'));
      }
      return withBody(fromSolution(solveStanding(circuit), 'single-click'));
    }
  }
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
    isOhmic: held !== 'rapid-clicking',
  };
}
