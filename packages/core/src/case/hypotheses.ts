/**
 * What is believed in: each fault with each hidden state of the vehicle's starting circuit. Drawn
 * and solved once for a vehicle and kept.
 */
import { defineLatentSpace, type LatentSpace } from '@keyturn/evidence';
import { normalProbability, type LimitContext } from '@keyturn/electrics';
import { statesOfSet, usualFigures } from '../circuit/draw-states.ts';
import { predictChoice, type Chances, type CircuitChoice } from '../circuit/predict-choice.ts';
import type { CircuitState } from '../circuit/solve-state.ts';
import { holds, type Condition, type Known } from '../flow/condition.ts';
import type { CircuitEvidence, CircuitMode, FigureRanges, Flow } from '../flow/flow.ts';
import { pairsOf } from './fault-pairs.ts';
import type { Findings } from './findings.ts';

/** Faults with their states. */
export interface Hypotheses {
  readonly space: LatentSpace;
  /** The solved states of every set, one set after the other; none where the flow has no circuit. */
  readonly states: readonly CircuitState[];
  /** For each solved state whether it is of a fault whose circuit is why the engine won't start. */
  readonly failing: readonly boolean[];
  /** For each state of the space which solved state it is. */
  readonly solved: Int32Array;
  /** What has been worked out for the solved states, by what it was worked out from. */
  readonly kept: Map<string, readonly Float64Array[]>;
}

/** Vehicles whose states are kept for each flow; the oldest goes. */
const mostKept = 12;

const keptOf = new WeakMap<Flow, Map<string, Hypotheses>>();

/** The hypotheses on the vehicle of a case. */
export function hypothesesOf(flow: Flow, { limits, known }: Findings): Hypotheses {
  const kept = keptOf.get(flow) ?? new Map<string, Hypotheses>();
  keptOf.set(flow, kept);
  const key = keyOf(flow, limits, known);
  const found = kept.get(key);
  if (found !== undefined) return found;
  const made = drawHypotheses(flow, limits, known);
  const [oldest] = kept.keys();
  if (kept.size >= mostKept && oldest !== undefined) kept.delete(oldest);
  kept.set(key, made);
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

function drawHypotheses(flow: Flow, limits: LimitContext, known: Known): Hypotheses {
  const faults = Object.keys(flow.faults);
  const { circuit } = flow;
  if (circuit === undefined) {
    const space = defineLatentSpace(faults.map(() => [1]));
    return {
      space,
      states: [],
      failing: [],
      solved: new Int32Array(faults.length),
      kept: new Map(),
    };
  }
  const pairs = pairsOf(flow);
  const setsOfPairs = pairs.map(({ first, second }) =>
    setOfPair(setOf(circuit, faults[first]), setOf(circuit, faults[second])),
  );
  const all = [...circuit.sets, ...setsOfPairs];
  const sets = drawSets({ ...circuit, sets: all }, vehicleOf(limits), known);
  const starts = sets.map((_, index) =>
    sets.slice(0, index).reduce((sum, { states }) => sum + states.length, 0),
  );
  const positions = [
    ...faults.map((fault) => circuit.setOf[fault] ?? 0),
    ...pairs.map((_, index) => circuit.sets.length + index),
  ];
  const weights = positions.map((position) => sets[position]?.weights ?? []);
  return {
    space: defineLatentSpace(weights),
    states: sets.flatMap(({ states }) => states),
    failing: sets.flatMap(({ states }, index) => states.map(() => all[index]?.fails === true)),
    solved: Int32Array.from(
      positions.flatMap((position) =>
        (sets[position]?.states ?? []).map((_, index) => (starts[position] ?? 0) + index),
      ),
    ),
    kept: new Map(),
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

/** Computers that nothing but the battery's weakness keeps from starting: V, of 12 V. */
const computersFrom = { volts: 10.4, spread: 0.4, least: 0.005 };

/** How likely it is that this circuit is why the vehicle does not start, up to a factor. */
function failing(state: CircuitState): number {
  const { figures, bodyRest, kind } = state;
  if (Number.isFinite(figures.control)) {
    return 1 - (1 - leastFailing) * (predictChoice(state, 'complaint').at(-1) ?? 0);
  }
  const { volts, spread, least } = computersFrom;
  return 1 - (1 - least) * normalProbability((bodyRest / kind.series - volts) / spread);
}

function drawSets(circuit: CircuitEvidence, context: LimitContext, known: Known) {
  const declared = circuit.usual
    .filter(({ when }) => isMet(when, known))
    .reduce<FigureRanges>((all, { figures }) => ({ ...all, ...figures }), {});
  const usual = usualFigures(context, declared);
  return circuit.sets.map(({ fails, states, modes }) => {
    const met = modes.filter(({ when }) => isMet(when, known));
    const drawn = statesOfSet(met, states, { context, usual });
    return {
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

/** For each answer of a choice, in the model's order, how likely it is in each solved state. */
export function choiceChances(
  { states, failing, kept }: Hypotheses,
  choice: CircuitChoice,
): readonly Float64Array[] {
  const known = kept.get(choice);
  if (known !== undefined) return known;
  const chances = states.map((state, index): Chances => {
    const seen = predictChoice(state, choice);
    return choice === 'complaint' && failing[index] === true ? heardFailing(seen) : seen;
  });
  const answers = chances[0]?.length ?? 0;
  const made = Array.from({ length: answers }, (_, answer) =>
    Float64Array.from(chances, (one) => one[answer] ?? 0),
  );
  kept.set(choice, made);
  return made;
}
