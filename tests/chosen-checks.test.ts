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
  /** What would be found on vehicles that turn slowly. */
  const vehicles = [
    {
      fault: 'ground-cable',
      found: { 'battery-rest': 12.65, 'battery-crank': 11.3, 'drop-ground': 1.4 },
    },
    {
      fault: 'positive-cable',
      found: { 'battery-rest': 12.65, 'battery-crank': 11.3, 'drop-positive': 1.5 },
    },
    {
      fault: 'battery-connection',
      found: {
        terminals: 'corroded',
        'battery-rest': 12.6,
        'battery-crank': 11.2,
        'drop-clamps': 1.2,
      },
    },
  ] as const;
  const sound = {
    'charge-lamp': 'normal',
    'battery-age': 3,
    selector: 'park-neutral',
    'battery-look': 'sound',
    terminals: 'clean-tight',
    dash: 'dim',
    'battery-lamps': 12.1,
    'drop-clamps': 0.02,
    'drop-positive': 0.12,
    'drop-ground': 0.1,
    'drop-contacts': 0.05,
    'turn-engine': 'turns',
  } as const;

  test.each(vehicles)('comes to the proof of $fault', ({ fault, found }) => {
    const { verdict } = askedUntilVerdict(mechanic, slow, { ...sound, ...found });
    expect(verdict).toMatchObject({ fault, strength: 'proved' });
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

describe('a full charge', () => {
  const worn = {
    scene: 'safe',
    complaint: 'rapid-clicking',
    history: 'jumped-recently',
    'battery-age': 12,
    selector: 'park-neutral',
    terminals: 'clean-tight',
    'battery-look': 'sound',
    dash: 'dim',
    'battery-rest': 12.3,
    'battery-lamps': 11.48,
    'drop-clamps': 0.01,
  } as const;
  const charged = { 'battery-recharged': 12.5, 'battery-load-test': 8.2 } as const;
  const charger = { ...mechanic, kit: [...mechanic.kit, 'charger'] };

  test('is not waited for where nothing could be tested after it', () => {
    const { names } = askedUntilVerdict(charger, worn, charged);
    expect(names).not.toContain('battery-recharged');
  });

  test('is made before a battery is condemned that can be loaded after it', () => {
    const loading = { ...charger, kit: [...charger.kit, 'load-tester'] };
    const { names, verdict } = askedUntilVerdict(loading, worn, charged);
    expect(names).toContain('battery-recharged');
    expect(verdict).toMatchObject({ fault: 'battery-worn', remedy: 'fit-battery' });
    expect(verdict?.strength).toBe('proved');
  });
});

describe('the verdict', () => {
  test('fits nothing dear in an open case: somebody comes who looks for himself', () => {
    const silent = { scene: 'safe', complaint: 'silent', when: 'soon-after-stopping' } as const;
    const alone = { ...mechanic, place: 'workshop', kit: ['voltmeter', 'boost-source'] };
    const { verdict } = askedUntilVerdict(alone, silent, {
      history: 'none',
      dash: 'stays-bright',
      boost: 'silent',
      selector: 'park-neutral',
      clutch: 'down',
      'steering-wheel': 'no-change',
      'security-lamp': 'normal',
      'starter-fuse': 'intact',
      'relay-swap': 'no-change',
      'battery-look': 'sound',
      'battery-age': 1,
      'battery-rest': 12.59,
    });
    expect(verdict).toMatchObject({ strength: 'open', remedy: 'technician-visit' });
    const starters = ['starter-motor', 'solenoid'];
    expect(starters).toContain(verdict?.fault);
    const share = (verdict?.ranking ?? [])
      .filter(([fault]) => starters.includes(fault))
      .reduce((sum, [, one]) => sum + one, 0);
    // Together they are likely enough for a starter, but not for what it costs where it is wrong.
    expect(share).toBeGreaterThan(0.5);
  });

  test('finds no contacts burnt by what they show while the solenoid chatters', () => {
    const chatter = { ...slow, complaint: 'rapid-clicking' } as const;
    const clamped = { ...mechanic, kit: [...mechanic.kit, 'clamp-meter'] };
    const found = {
      dash: 'dim',
      selector: 'park-neutral',
      terminals: 'clean-tight',
      'battery-look': 'sound',
      'battery-rest': 12.56,
      'battery-lamps': 12.3,
      'battery-crank': 12.17,
      'drop-clamps': 0.02,
      'drop-positive': 0.19,
      'drop-contacts': 4.67,
      'crank-current': 147,
    } as const;
    const { verdict } = askedUntilVerdict(clamped, chatter, found);
    expect(verdict?.strength).not.toBe('proved');
    const ground = askedUntilVerdict(clamped, chatter, { ...found, 'drop-ground': 5.87 });
    expect(ground.verdict).toMatchObject({ fault: 'ground-cable' });
  });

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
  /** A sound battery by every other sign, that rests at what is still to be said. */
  const strong = {
    ...slow,
    'charge-lamp': 'normal',
    'battery-age': 1,
    selector: 'park-neutral',
    'battery-look': 'sound',
    terminals: 'clean-tight',
    'battery-lamps': 12.3,
    'battery-crank': 11.4,
  } as const;
  const told = (rest: number) => answers({ ...strong, 'battery-rest': rest });
  const doubtIn = (step: ReturnType<typeof take>) =>
    messagesOf(step, 'tell').filter(({ tell }) => tell === 'doubt');

  test('are named, and asked once more and no more than once', () => {
    const step = take(open(mechanic), told(9.6));
    expect(awaits(step)).toBe('answer battery-rest');
    expect(doubtIn(step)).toMatchObject([{ about: 'battery-rest' }]);
    expect(messagesOf(step, 'ask')).toMatchObject([{ check: 'battery-rest', time: 1 }]);
    const said = take(step, answers({ 'battery-rest': 9.6 }));
    expect(said.case.state.doubted).toEqual(['battery-rest']);
    expect(said.case.state.answers['battery-rest']).toHaveLength(1);
    expect(said.case.state.next).not.toMatchObject({ check: 'battery-rest' });
  });

  test('put right take the place of what was said first', () => {
    const right = take(open(mechanic), told(9.6), answers({ 'battery-rest': 12.6 }));
    expect(right.case.state.answers['battery-rest']).toEqual([{ value: 12.6, unit: 'V' }]);
    expect(doubtIn(right)).toEqual([]);
  });

  test('are none where all of them fit', () => {
    expect(doubtIn(take(open(mechanic), told(12.6)))).toEqual([]);
  });
});
