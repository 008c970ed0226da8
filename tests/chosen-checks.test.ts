/**
 * How the shipped flow chooses what to ask next, and how it says why.
 */
import type { Input } from '@keyturn/core';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';
import { answers, awaits, messagesOf, open, playOut, take, type Answers } from './support/play.ts';

const { flow } = noStart.chart;

const mechanic = {
  vehicle: { fuel: 'petrol', transmission: 'manual', ignition: 'key', nominal: 12 },
  temperature: 18,
  role: 'mechanic',
  place: 'home',
  kit: ['voltmeter', 'helper', 'hand-tools'],
};
const why: Input = { type: 'talk', talk: 'why' };
const slow: Answers = { scene: 'safe', complaint: 'slow-crank', history: 'none' };

/** The checks asked up to the verdict when nothing but what is given can be answered. */
function askedUntilVerdict(context: Record<string, unknown>, first: Answers, later: Answers) {
  const played = playOut(take(open(context), answers(first)), later);
  const names = played.asked.map(({ check }) => check);
  return {
    names: names.slice(0, names.indexOf('repair')),
    verdict: played.step.case.state.verdict,
  };
}

describe('the next check', () => {
  test('is asked with no more minutes than the written order takes, and comes to the same fault', () => {
    const found = {
      'charge-lamp': 'normal',
      'battery-age': 3,
      selector: 'park-neutral',
      'battery-look': 'sound',
      terminals: 'clean-tight',
      dash: 'dim',
      'battery-rest': 12.65,
      'battery-crank': 11.3,
      'drop-clamps': 0.02,
      'drop-positive': 0.12,
      'drop-ground': 1.4,
      'drop-contacts': 0.05,
      'turn-engine': 'turns',
    } as const;
    const { names, verdict } = askedUntilVerdict(mechanic, slow, found);
    expect(verdict).toMatchObject({ fault: 'ground-cable', strength: 'proved' });
    const minutes = (checks: readonly string[]): number =>
      checks.reduce((sum, id) => sum + (flow.checks[id]?.minutes ?? 0), 0);
    const written = flow.stages.flatMap(({ checks }) => checks);
    const until = written.indexOf('drop-ground') + 1;
    const all = written.slice(0, until).filter((id) => Object.hasOwn(found, id));
    const made = names.filter((id) => Object.hasOwn(found, id));
    expect(minutes(made)).toBeLessThanOrEqual(minutes(all));
  });

  test('is the same for the same case', () => {
    const once = askedUntilVerdict(mechanic, slow, { 'battery-rest': 12.6 });
    const again = askedUntilVerdict(mechanic, slow, { 'battery-rest': 12.6 });
    expect(again).toEqual(once);
  });

  test('comes after what a hard stop hangs on that would forbid it', () => {
    const played = playOut(take(open(mechanic), answers(slow)), { selector: 'park-neutral' });
    const names = played.asked.map(({ check }) => check);
    const firstStart = names.findIndex((id) => flow.checks[id]?.does.includes('held-start'));
    expect(firstStart).toBeGreaterThan(-1);
    expect(names.indexOf('selector')).toBeLessThan(firstStart);
    expect(names.indexOf('battery-look')).toBeLessThan(firstStart);
  });

  test('says why it comes now, and what it saves', () => {
    const step = take(open(mechanic), answers(slow), why);
    const [told] = messagesOf(step, 'why');
    expect(told?.worth?.minutes).toBeGreaterThan(0);
    expect(told?.worth?.saves).toBeGreaterThan(1);
    expect(told?.outcomes.every(({ faults }) => faults.length === 3)).toBe(true);
  });

  test('has no worth where the flow asks as it is written', () => {
    const step = take(open({}), why);
    expect(messagesOf(step, 'why')[0]).not.toHaveProperty('worth');
  });
});

describe('the verdict', () => {
  test('says what each finding weighs for it and against it, the heaviest first', () => {
    const later = { 'battery-rest': 12.6, 'battery-crank': 8.1, 'battery-lamps': 10.2 } as const;
    let step = take(open(mechanic), answers(slow));
    while (!awaits(step).endsWith('repair')) {
      const [state = '', check = ''] = awaits(step).split(' ');
      const value = (later as Answers)[check];
      step = take(
        step,
        state === 'confirm'
          ? { type: 'confirm' }
          : value === undefined
            ? { type: 'talk', talk: 'cannot' }
            : answers({ [check]: value }),
      );
    }
    expect(step.case.state.verdict?.fault).toBe('battery-worn');
    const [weights] = messagesOf(take(step, why), 'weights');
    const told = weights?.findings ?? [];
    expect(told.length).toBeGreaterThan(2);
    const sizes = told.map(({ decibans }) => Math.abs(decibans));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    // What one finding weighs beside the others depends on what was asked before it.
    expect(told.find(({ check }) => check === 'battery-crank')?.decibans).toBeGreaterThan(2);
  });
});

describe('answers that hardly fit together', () => {
  /** A battery that holds all lamps and a start, and rests at what is still to be said. */
  const strong = {
    ...slow,
    complaint: 'single-click',
    'charge-lamp': 'was-lit',
    selector: 'park-neutral',
    'battery-look': 'sound',
    headlamps: 'stay-bright',
    terminals: 'loose',
    'battery-lamps': 12.2,
    'battery-crank': 11.4,
    boost: 'cranks-normally',
    'drop-clamps': 0.02,
    'drop-ground': 0.1,
    'turn-engine': 'turns',
    tap: 'cranks',
  } as const;
  const told = (rest: number) => answers({ ...strong, 'battery-rest': rest });
  const doubtIn = (step: ReturnType<typeof take>) =>
    messagesOf(step, 'tell').filter(({ tell }) => tell === 'doubt');

  test('are named, and asked once more and no more than once', () => {
    const step = take(open(mechanic), told(11.4));
    expect(awaits(step)).toBe('answer battery-rest');
    expect(doubtIn(step)).toMatchObject([{ about: 'battery-rest' }]);
    expect(messagesOf(step, 'ask')).toMatchObject([{ check: 'battery-rest', time: 1 }]);
    const said = take(step, answers({ 'battery-rest': 11.4 }));
    expect(said.case.state.doubted).toEqual(['battery-rest']);
    expect(said.case.state.answers['battery-rest']).toHaveLength(1);
    expect(said.case.state.next).not.toMatchObject({ check: 'battery-rest' });
  });

  test('put right take the place of what was said first', () => {
    const right = take(open(mechanic), told(11.4), answers({ 'battery-rest': 12.6 }));
    expect(right.case.state.answers['battery-rest']).toEqual([{ value: 12.6, unit: 'V' }]);
    expect(doubtIn(right)).toEqual([]);
  });

  test('are none where all of them fit', () => {
    expect(doubtIn(take(open(mechanic), told(12.6)))).toEqual([]);
  });
});
