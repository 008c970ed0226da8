import { vehicleKind, type LimitContext } from '@keyturn/electrics';
import { describe, expect, test } from 'vitest';
import type { FigureRanges } from '../flow/flow.ts';
import { statesOfSet, usualFigures } from './draw-states.ts';
import { predictChoice } from './predict-choice.ts';
import { predictReading } from './predict-reading.ts';
import type { CircuitState } from './solve-state.ts';

const context: LimitContext = { fuel: 'petrol', displacement: 1.6, temperature: 20 };

const usual = usualFigures(context, {
  charge: [90],
  emptied: [0],
  'dead-cells': [0],
  taken: [100],
  surface: [0],
  supply: [2],
  control: [8],
  brushes: [0],
  field: [1],
  windings: [1],
  friction: [25],
  operate: [7],
  release: [3.5],
  stall: [30],
  starts: [0.7],
});

/** The middle one of the states of a vehicle with these figures. */
function vehicle(figures: FigureRanges): CircuitState {
  const drawn = statesOfSet([{ share: 1, figures }], 9, { context, usual });
  const [first] = drawn
    .map(({ state }) => state)
    .sort((one, other) => one.figures.health - other.figures.health)
    .slice(4);
  return first!;
}

describe('a vehicle in a hidden state', () => {
  test('that is sound cranks as usual with its usual current, and its lamps stay bright', () => {
    const sound = vehicle({});
    expect(sound.held.held).toBe('turning');
    // Petrol of 1.0 to 2.0 L, warm: 120 to 200 A (common practice, trade facts T12).
    expect(sound.held.current).toBeGreaterThan(120);
    expect(sound.held.current).toBeLessThan(200);
    expect(predictChoice(sound, 'complaint').at(-1)).toBeGreaterThan(0.9);
    expect(predictChoice(sound, 'dash').at(-1)).toBeGreaterThan(0.8);
    expect(vehicleKind(context, 'petrol')).toEqual(sound.kind);
  });

  test('with an empty battery clicks and its lamps give way; long drained it is silent and dark', () => {
    const empty = vehicle({ charge: [2] });
    expect(empty.held.held).toBe('rapid-clicking');
    expect(predictChoice(empty, 'headlamps').at(-1)).toBeLessThan(0.3);
    const drained = vehicle({ charge: [0], emptied: [7] });
    expect(drained.held.held).toBe('silent');
    expect(drained.rest).toBeLessThan(6);
    expect(predictChoice(drained, 'dash')[0]).toBeGreaterThan(0.5);
  });

  test('whose contacts are open gives one click, and the whole voltage stands across them', () => {
    const { held } = vehicle({ contacts: [Infinity] });
    expect(held.held).toBe('single-click');
    expect(held.contacts).toBeGreaterThan(10);
    expect(held.current).toBeLessThan(110);
  });

  test('whose brushes do not touch is silent, and its motor stud floats up', () => {
    const { held } = vehicle({ brushes: [Infinity] });
    expect(held.held).toBe('silent');
    expect(held.contacts).toBeLessThan(0.5);
  });

  test('whose engine is locked clicks once, with several times the usual current', () => {
    const { held } = vehicle({ drag: [Infinity] });
    expect(held.held).toBe('single-click');
    expect(held.current).toBeGreaterThan(500);
  });

  test('without a start signal draws nothing, and neither does one whose main fuse is open', () => {
    for (const figures of [{ control: [Infinity] }, { supply: [Infinity] }]) {
      const { held } = vehicle(figures);
      expect(held.held).toBe('silent');
      expect(held.current).toBe(0);
      expect(held.control).toBe(0);
    }
    expect(predictChoice(vehicle({ supply: [Infinity] }), 'dash')[0]).toBeGreaterThan(0.99);
  });

  test('with a bad ground cable is helped by a donor clipped to the engine, one with drag is not', () => {
    const helped = predictChoice(vehicle({ ground: [60] }), 'boost');
    expect((helped[3] ?? 0) + (helped[4] ?? 0)).toBeGreaterThan(0.7);
    const dragging = predictChoice(vehicle({ drag: [6] }), 'boost');
    expect((dragging[3] ?? 0) + (dragging[4] ?? 0)).toBeLessThan(0.5);
  });
});

describe('a reading', () => {
  test('of a drop follows the current that was measured', () => {
    const cable = vehicle({ positive: [15] });
    const at = (current: number) => predictReading(cable, 'positive', { current }).mean;
    expect(at(200) / at(100)).toBeCloseTo(2, 9);
    expect(at(100)).toBeCloseTo(1.5, 0);
  });

  test('of the battery under load starts from the rest voltage that was measured', () => {
    const worn = vehicle({ health: [0.3], charge: [80] });
    const low = predictReading(worn, 'load-test', { rest: 12.3 }).mean;
    const high = predictReading(worn, 'load-test', { rest: 12.6 }).mean;
    expect(high - low).toBeCloseTo(0.3, 1);
  });

  test('of a load test after a full charge goes by the charge that was reached', () => {
    const flat = vehicle({ charge: [5], taken: [100] });
    const before = predictReading(flat, 'load-test', {}).mean;
    const after = predictReading(flat, 'load-test', { isRecharged: true }).mean;
    expect(before).toBeLessThan(9);
    expect(after).toBeGreaterThan(9.6);
  });

  test('of a battery with a dead cell is some 2 V low, before and after a charge', () => {
    const dead = vehicle({ 'dead-cells': [1] });
    expect(predictReading(dead, 'rest', {}).mean).toBeGreaterThan(10.2);
    expect(predictReading(dead, 'rest', {}).mean).toBeLessThan(10.7);
    expect(predictReading(dead, 'recharged', {}).mean).toBeLessThan(10.8);
  });
});
