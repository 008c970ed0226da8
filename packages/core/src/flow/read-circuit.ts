/**
 * How faults shape the starting circuit, as an author writes it, written out.
 */
import {
  circuitFigures,
  declaredFigures,
  type CircuitFigure,
  type Quantiles,
} from '../circuit/figures.ts';
import { circuitChoices } from '../circuit/predict-choice.ts';
import type { CircuitEvidence, FigureRanges } from './flow.ts';
import type { FlowFile } from './flow-file.ts';
import { expectName, type Place } from './place.ts';
import type { ConditionReader } from './read-check.ts';
import { expectKey, rowFor } from './read-evidence.ts';

type CircuitSource = NonNullable<FlowFile['circuit']>;
type RangesSource = CircuitSource['usual'][number]['figures'];

/** What the section may name. */
export interface CircuitNames {
  readonly faults: readonly string[];
  readonly groups: Readonly<Record<string, readonly string[]>>;
  /** Check to its answers. */
  readonly answers: ReadonlyMap<string, readonly string[]>;
  readonly readings: ReadonlySet<string>;
}

/** Reads the section. */
export function readCircuit(
  source: CircuitSource,
  names: CircuitNames,
  scope: { readonly place: Place; readonly condition: ConditionReader },
): CircuitEvidence {
  const { place, condition } = scope;
  const ranged = (ranges: RangesSource, at: Place): FigureRanges => readRanges(ranges, at);
  const usual = source.usual.map(({ when, figures }, index) => ({
    ...(when ? { when: condition(when, place.in('usual', index, 'when')) } : {}),
    figures: ranged(figures, place.in('usual', index, 'figures')),
  }));
  const always = usual.filter(({ when }) => when === undefined);
  for (const figure of declaredFigures) {
    if (always.some(({ figures }) => figures[figure] !== undefined)) continue;
    place.in('usual').tell('missing', `what ${figure} any vehicle has`, { value: '' });
  }
  expectChecks(source, names, place);
  const keys = Object.keys(source.faults);
  for (const key of keys) expectKey(key, names, place.in('faults', key));
  const sets = Object.entries(source.faults).map(([key, { fails = false, states, modes }]) => ({
    fails,
    states: states ?? source.states,
    modes: modes.map((mode, index) => {
      const at = place.in('faults', key, 'modes', index);
      return {
        share: mode['of-100'] ?? 100,
        ...(mode.when ? { when: condition(mode.when, at.in('when')) } : {}),
        figures: ranged(mode.figures, at.in('figures')),
      };
    }),
  }));
  for (const [index, { modes }] of sets.entries()) {
    if (modes.every(({ when }) => when !== undefined)) {
      place.in('faults', keys[index] ?? '').tell('wrong-shape', 'a mode without a condition');
    }
  }
  const positions = Object.fromEntries(keys.map((key, index) => [key, index]));
  const setOf = names.faults.map((fault): readonly [string, number] => {
    const position = rowFor(fault, positions, names.groups);
    if (position === undefined) {
      place.in('faults').tell('missing', `modes of ${fault}, or otherwise`, { value: '' });
    }
    return [fault, position ?? 0];
  });
  return {
    usual,
    readings: Object.fromEntries(
      Object.entries(source.readings).map(
        ([check, { reads, spread, part = 0, rough = 0, odd }]) => [
          check,
          { reads, spread, part, rough: rough / 100, odd: odd / 100 },
        ],
      ),
    ),
    choices: source.choices,
    sets,
    setOf: Object.fromEntries(setOf),
    pairs: (source.pairs ?? []).map(({ faults: [first, second], times }, index) => {
      const at = place.in('pairs', index, 'faults');
      const known = { names: names.faults, what: 'a fault of the flow' };
      expectName(first, known, at.in(0));
      expectName(second, known, at.in(1));
      if (first === second) at.tell('wrong-shape', 'two faults');
      return { first, second, times };
    }),
  };
}

function expectChecks(source: CircuitSource, names: CircuitNames, place: Place): void {
  const readings = { names: [...names.readings], what: 'a reading of the flow', onKey: true };
  for (const check of Object.keys(source.readings)) {
    expectName(check, readings, place.in('readings', check));
  }
  const checks = { names: [...names.answers.keys()], what: 'a check of the flow', onKey: true };
  for (const [check, choice] of Object.entries(source.choices)) {
    const at = place.in('choices', check);
    expectName(check, checks, at);
    const answers = names.answers.get(check);
    const missing = circuitChoices[choice].filter((answer) => answers?.includes(answer) === false);
    if (missing.length > 0) at.tell('wrong-shape', `a check that has ${missing.join(', ')}`);
  }
}

/** Values of a figure ascend or descend, lie where it can be, and are open only at their end. */
function readRanges(source: RangesSource, place: Place): FigureRanges {
  const ranges: Partial<Record<CircuitFigure, Quantiles>> = {};
  for (const figure of circuitFigures) {
    const given = source[figure];
    if (given === undefined) continue;
    const values = [given].flat().map((value) => (value === 'open' ? Infinity : value));
    const [low, high] = bounds[figure] ?? [0, Infinity];
    if (values.some((value) => value < low || value > high)) {
      place.in(figure).tell('wrong-shape', `values from ${String(low)} to ${String(high)}`);
    }
    const steps = values.slice(1).map((value, index) => value - (values[index] ?? 0));
    if (!steps.every((step) => step >= 0) && !steps.every((step) => step <= 0)) {
      place.in(figure).tell('wrong-shape', 'values in order');
    }
    ranges[figure] = values;
  }
  return ranges;
}

const aboveZero = 1e-6;

/** Where figures can lie; resistances, and what is not named here, from 0 to open. */
const bounds: Readonly<Partial<Record<CircuitFigure, readonly [number, number]>>> = {
  rating: [50, 3000],
  health: [0.01, 1.2],
  temperature: [-60, 70],
  displacement: [0.1, 20],
  drag: [0, Infinity],
  charge: [0, 100],
  emptied: [0, 12],
  'dead-cells': [0, 6],
  taken: [0, 100],
  surface: [0, 3],
  field: [0.05, 2],
  windings: [0.5, Infinity],
  operate: [aboveZero, 12],
  release: [aboveZero, 12],
  starts: [0, 1],
};
