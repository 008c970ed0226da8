/**
 * What is believed in: each fault with each hidden state of the vehicle's starting circuit. Drawn
 * and solved once for a vehicle and kept; of a vehicle that others have followed, only what was
 * worked out from its states, which takes a quarter of the room. They are drawn again, the same as
 * before, where more is to be worked out from them.
 */
import { defineLatentSpace, type LatentSpace } from '@keyturn/evidence';
import { normalProbability, type LimitContext } from '@keyturn/electrics';
import { statesOfSet, usualFigures } from '../circuit/draw-states.ts';
import {
  circuitChoices,
  predictChoice,
  type Chances,
  type CircuitChoice,
} from '../circuit/predict-choice.ts';
import type { CircuitState } from '../circuit/solve-state.ts';
import { holds, type Condition, type Known } from '../flow/condition.ts';
import type { CircuitEvidence, CircuitMode, FigureRanges, Flow } from '../flow/flow.ts';
import { pairsOf } from './fault-pairs.ts';
import type { Findings } from './findings.ts';
import { Kept } from './kept.ts';

/** How likely each answer of a check is in each state. */
export interface AnswerChances {
  /** What these were worked out from: on one vehicle nothing else has this name. */
  readonly name: string;
  /** Answer by answer, in the check's or the model's order. */
  readonly rows: ReadonlyMap<string, Float64Array>;
}

/** Faults with their states. */
export interface Hypotheses {
  readonly space: LatentSpace;
  /** The solved states of every set, one set after the other; none where the flow has no circuit. */
  readonly states: () => readonly CircuitState[];
  /** For each solved state whether it is of a fault whose circuit is why the engine won't start. */
  readonly failing: readonly boolean[];
  /** For each state of the space which solved state it is. */
  readonly solved: Int32Array;
  /** Of the answers of a check, over the solved states. */
  readonly chances: Kept<AnswerChances>;
  /** The same, over the states of the space. */
  readonly laidOut: Kept<AnswerChances>;
  /** For a figure that was read a row over the solved states. */
  readonly densities: Kept<Float64Array>;
  /** For a finding a row of logarithms over the states of the space. */
  readonly logs: Kept<Float64Array>;
}

/** Vehicles of which what was worked out is kept for each flow, some 0.4 MB each. */
const mostVehicles = 300;

/** Vehicles whose states are kept as well, some 1.3 MB each. */
const mostDrawn = 24;

/** What is kept of one vehicle: some cases' worth of answers. */
const mostRows = 200;

/** What is kept for a flow. */
interface KeptOfFlow {
  readonly vehicles: Kept<Hypotheses>;
  readonly drawn: Kept<readonly DrawnSet[]>;
}

const flows = new WeakMap<Flow, KeptOfFlow>();
const found = new WeakMap<Known, Hypotheses>();

/** The hypotheses on the vehicle of a case. */
export function hypothesesOf(flow: Flow, findings: Findings): Hypotheses {
  const { limits, known } = findings;
  // What is only supposed to be found changes nothing of the vehicle.
  const drawn = found.get(known);
  if (drawn !== undefined) return drawn;
  const kept = flows.get(flow) ?? { vehicles: new Kept(mostVehicles), drawn: new Kept(mostDrawn) };
  flows.set(flow, kept);
  const key = keyOf(flow, limits, known);
  const sets = (): readonly DrawnSet[] =>
    kept.drawn.of(key, () => drawSets(flow, vehicleOf(limits), known));
  const made = kept.vehicles.of(key, () => ({
    ...hypothesesFrom(flow, sets()),
    states: () => sets().flatMap(({ states }) => states),
  }));
  found.set(known, made);
  return made;
}

/** What the states hang on: the vehicle as it is known, but nothing that was measured on it. */
function vehicleOf({
  turning: _,
  restVoltage: _r,
  crankVoltage: _v,
  crankCurrent: _c,
  ...vehicle
}: LimitContext): LimitContext {
  return vehicle;
}

function keyOf({ circuit }: Flow, limits: LimitContext, known: Known): string {
  if (circuit === undefined) return '';
  const conditions = [
    ...circuit.usual.map(({ when }) => when),
    ...circuit.sets.flatMap(({ modes }) => modes.map(({ when }) => when)),
  ];
  const held = conditions.map((when) => (isMet(when, known) ? '1' : '0')).join('');
  return JSON.stringify([Object.values(vehicleOf(limits)).map((value) => value ?? null), held]);
}

function isMet(when: Condition | undefined, known: Known): boolean {
  return when === undefined || holds(when, known) === true;
}

/** The states that were drawn, as those of each fault. */
function hypothesesFrom(flow: Flow, sets: readonly DrawnSet[]): Omit<Hypotheses, 'states'> {
  const faults = Object.keys(flow.faults);
  const { circuit } = flow;
  if (circuit === undefined) {
    const space = defineLatentSpace(faults.map(() => [1]));
    return { space, failing: [], solved: new Int32Array(faults.length), ...nothingKept() };
  }
  const starts = sets.map((_, index) =>
    sets.slice(0, index).reduce((sum, { states }) => sum + states.length, 0),
  );
  const positions = [
    ...faults.map((fault) => circuit.setOf[fault] ?? 0),
    ...pairsOf(flow).map((_, index) => circuit.sets.length + index),
  ];
  const weights = positions.map((position) => sets[position]?.weights ?? []);
  return {
    space: defineLatentSpace(weights),
    failing: sets.flatMap(({ states, fails }) => states.map(() => fails)),
    solved: Int32Array.from(
      positions.flatMap((position) =>
        (sets[position]?.states ?? []).map((_, index) => (starts[position] ?? 0) + index),
      ),
    ),
    ...nothingKept(),
  };
}

function nothingKept(): Pick<Hypotheses, 'chances' | 'laidOut' | 'densities' | 'logs'> {
  return {
    chances: new Kept(mostRows),
    laidOut: new Kept(mostRows),
    densities: new Kept(mostRows),
    logs: new Kept(mostRows),
  };
}

type CircuitSet = CircuitEvidence['sets'][number];

const soundSet: CircuitSet = { fails: false, states: 8, modes: [{ share: 1, figures: {} }] };

function setOf({ sets, setOf: positions }: CircuitEvidence, fault = ''): CircuitSet {
  return sets[positions[fault] ?? 0] ?? soundSet;
}

/** A pair's joint modes, both deviations at once, need not be drawn as finely as a fault's own. */
const statesOfPair = 32;

/** Both faults at once, in every way that each may have. */
function setOfPair(one: CircuitSet, other: CircuitSet): CircuitSet {
  const modes = one.modes.flatMap((first) =>
    other.modes.map((second): CircuitMode => {
      const conditions = [first.when, second.when].flatMap((when) => when ?? []);
      return {
        share: first.share * second.share,
        ...(conditions.length > 0 ? { when: { kind: 'all', of: conditions } } : {}),
        figures: { ...second.figures, ...first.figures },
      };
    }),
  );
  return { fails: one.fails || other.fails, states: statesOfPair, modes };
}

/**
 * A circuit in which an engine would crank as usual is seldom why it does not start, though an
 * engine may need more than usual. Common practice, no source.
 */
const leastFailing = 0.06;

/** Computers that nothing but the battery's weakness keeps from starting: V, of 12 V, once awake. */
const computersFrom = { volts: 9.6, spread: 0.4, least: 0.005 };

/** How likely it is that this circuit is why the vehicle does not start, up to a factor. */
function failing(state: CircuitState): number {
  const { figures, held, kind } = state;
  if (Number.isFinite(figures.control)) {
    return 1 - (1 - leastFailing) * (predictChoice(state, 'complaint').at(-1) ?? 0);
  }
  const { volts, spread, least } = computersFrom;
  return 1 - (1 - least) * normalProbability((held.body / kind.series - volts) / spread);
}

/** The states of a set, solved. */
interface DrawnSet {
  readonly fails: boolean;
  readonly states: readonly CircuitState[];
  readonly weights: readonly number[];
}

/** Draws the states of every set, those of pairs last; none where the flow has no circuit. */
function drawSets(flow: Flow, context: LimitContext, known: Known): readonly DrawnSet[] {
  const { circuit } = flow;
  if (circuit === undefined) return [];
  const faults = Object.keys(flow.faults);
  const setsOfPairs = pairsOf(flow).map(({ first, second }) =>
    setOfPair(setOf(circuit, faults[first]), setOf(circuit, faults[second])),
  );
  const declared = circuit.usual
    .filter(({ when }) => isMet(when, known))
    .reduce<FigureRanges>((all, { figures }) => ({ ...all, ...figures }), {});
  const usual = usualFigures(context, declared);
  return [...circuit.sets, ...setsOfPairs].map(({ fails, states, modes }) => {
    const met = modes.filter(({ when }) => isMet(when, known));
    const drawn = statesOfSet(met, states, { context, usual });
    return {
      fails,
      states: drawn.map(({ state }) => state),
      weights: drawn.map(({ state, weight }) => (fails ? weight * failing(state) : weight)),
    };
  });
}

/** Of engines that crank almost as usual and yet too slowly to start, how many are called usual. */
const takenForUsual = 0.1;

/** An engine that does not start for its slow cranking is hardly ever said to crank as usual. */
function heardFailing(chances: Chances): Chances {
  const usual = chances.at(-1) ?? 0;
  const slow = chances.at(-2) ?? 0;
  return [...chances.slice(0, -2), slow + (1 - takenForUsual) * usual, takenForUsual * usual];
}

/** How likely each answer of a choice is in each solved state. */
export function choiceChances(
  { states, failing, chances }: Hypotheses,
  choice: CircuitChoice,
): AnswerChances {
  return chances.of(choice, () => {
    const seen = states().map((state, index): Chances => {
      const said = predictChoice(state, choice);
      return choice === 'complaint' && failing[index] === true ? heardFailing(said) : said;
    });
    const rows = circuitChoices[choice].map(
      (answer, index) => [answer, Float64Array.from(seen, (one) => one[index] ?? 0)] as const,
    );
    return { name: choice, rows: new Map(rows) };
  });
}
