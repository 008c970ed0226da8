/**
 * What a case of the shipped flow does, in the trade's words.
 */
import type { Input, Step } from '@keyturn/core';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';
import {
  answers,
  awaits,
  correct,
  messagesOf,
  next,
  open,
  playOut,
  take,
  type Answers,
} from './support/play.ts';

const { flow } = noStart.chart;

const wholeKit = [
  'voltmeter',
  'clamp-meter',
  'load-tester',
  'electronic-tester',
  'boost-source',
  'charger',
  'second-key',
  'helper',
  'hand-tools',
];
const car = {
  vehicle: { fuel: 'petrol', transmission: 'manual', ignition: 'key', nominal: 12 },
  temperature: 15,
  role: 'mechanic',
  place: 'home',
  kit: wholeKit,
};
const lorry = { ...car, vehicle: { fuel: 'diesel', transmission: 'manual', nominal: 24 } };

/** Everything that is done while start is held. */
const heldStart = [
  'dash',
  'headlamps',
  'neutral-try',
  'retry',
  'other-key',
  'rev-counter',
  'battery-crank',
  'boost',
  'relay',
  'relay-swap',
  'relay-command',
  'control-signal',
  'drop-clamps',
  'drop-positive',
  'drop-ground',
  'drop-contacts',
  'crank-current',
  'tap',
  'spark',
  'start-after',
];
/** Everything that loads, charges or boosts a battery. */
const loading = ['boost', 'battery-load-test', 'battery-lamps', 'battery-recharged'];
const starterChecks = [
  'neutral-try',
  'retry',
  'rev-counter',
  'battery-crank',
  'starter-fuse',
  'relay',
  'relay-swap',
  'relay-feed',
  'relay-command',
  'control-signal',
  'drop-clamps',
  'drop-positive',
  'drop-ground',
  'drop-contacts',
  'crank-current',
  'tap',
  'turn-engine',
  'spark',
];
const byMemory = [
  'place',
  'scene',
  'drive',
  'complaint',
  'when',
  'history',
  'charge-lamp',
  'battery-age',
  'fuel-level',
  'flooded-smell',
  'crank-rhythm',
  'kit',
  'transmission',
  'ignition',
  'air-temperature',
];

const slow: Answers = { scene: 'safe', complaint: 'slow-crank', when: 'after-standing' };
const silent: Answers = { scene: 'safe', complaint: 'silent', when: 'after-standing' };
const cranks: Answers = { scene: 'safe', complaint: 'normal-crank', when: 'after-standing' };

/** The checks that a case asks in all, once some answers have been given at its beginning. */
function askedWith(
  context: Record<string, unknown>,
  first: Answers,
  later: Answers = {},
): readonly string[] {
  return playOut(take(open(context), answers(first)), later).asked.map(({ check }) => check);
}

function among(asked: readonly string[], names: readonly string[]): readonly string[] {
  return [...new Set(asked)].filter((check) => names.includes(check));
}

describe('the shipped flow', () => {
  test('asks first where the vehicle stands', () => {
    expect(messagesOf(open(), 'ask').map(({ check }) => check)).toEqual(['place']);
    expect(messagesOf(open(car), 'ask').map(({ check }) => check)).toEqual(['scene']);
  });

  test('takes from one line what a professional has measured', () => {
    const step = take(
      open(car),
      answers({ ...slow, history: 'none', 'battery-rest': 12.7, 'battery-crank': 11.2 }),
      answers({ 'drop-clamps': 0.03, 'drop-positive': 0.12, 'drop-ground': 1.3 }),
    );
    expect(step.case.state.verdict).toMatchObject({
      fault: 'ground-cable',
      strength: 'proved',
      remedy: 'replace-cable',
    });
  });

  test('goes back over every answer to where it began', () => {
    const first = open(car);
    const trail = [first];
    // Each is what is asked, since going back asks again what is taken back.
    const told = { ...slow, history: 'none', selector: 'park-neutral', 'battery-look': 'sound' };
    while (trail.length < 9) {
      const [, check = ''] = awaits(trail.at(-1)!).split(' ');
      const input: Input = Object.hasOwn(told, check)
        ? answers({ [check]: told[check as keyof typeof told] })
        : { type: 'talk', talk: 'dont-know' };
      if (awaits(trail.at(-1)!).startsWith('answer')) trail.push(take(trail.at(-1)!, input));
      else trail.push(take(trail.pop()!, { type: 'confirm' }));
    }
    let step = trail.at(-1)!;
    for (const before of trail.toReversed().slice(1)) {
      step = take(step, { type: 'talk', talk: 'back' });
      expect(step.case.state.answers).toEqual(before.case.state.answers);
      expect(step.case.state.leaders).toEqual(before.case.state.leaders);
      expect(awaits(step)).toBe(awaits(before));
    }
  });

  test('sets the clutch aside once the gearbox turns out to be automatic', () => {
    const { vehicle, ...rest } = car;
    const unknown = { ...rest, vehicle: { fuel: vehicle.fuel, ignition: vehicle.ignition } };
    const step = take(
      open(unknown),
      answers({ ...silent, history: 'none', transmission: 'manual' }),
      answers({ selector: 'park-neutral', clutch: 'down', 'battery-look': 'sound' }),
      correct({ transmission: 'automatic' }),
    );
    expect(messagesOf(step, 'set-aside')).toEqual([{ kind: 'set-aside', checks: ['clutch'] }]);
    expect(step.case.state.order).toContain('battery-look');
    expect(step.case.state.context['vehicle.transmission']).toBe('automatic');
  });

  test('says of a check what each outcome would point to', () => {
    const why = take(open(car), answers({ ...slow, history: 'none', 'charge-lamp': 'normal' }));
    const [told] = messagesOf(take(why, { type: 'talk', talk: 'why' }), 'why');
    expect(told?.check).toBe('battery-age');
    expect(told?.outcomes.map(({ answer }) => answer)).toEqual(['new', 'middle', 'old']);
    for (const { faults } of told?.outcomes ?? []) expect(faults).toHaveLength(3);
  });

  test('asks a check again once the kit for it is there', () => {
    const bare = playOut(take(open({ ...car, kit: [] }), answers({ ...slow, history: 'none' })));
    expect(bare.asked.map(({ check }) => check)).not.toContain('battery-rest');
    const before = take(
      open({ ...car, kit: ['helper'] }),
      answers({ ...slow, history: 'none', 'battery-look': 'sound' }),
    );
    const { asked } = playOut(
      take(before, { type: 'context', set: { kit: ['helper', 'voltmeter'] } }),
    );
    expect(asked.map(({ check }) => check)).toContain('battery-rest');
  });
});

describe('a hard stop forbids', () => {
  test.each(['frozen', 'swollen', 'cracked', 'leaking'])(
    'every load, charge, boost and start of a battery that is %s',
    (look) => {
      const first = { ...slow, history: 'none', 'battery-rest': 11.5 } as const;
      const sound = askedWith(car, { ...first, 'battery-look': 'sound' });
      expect(among(sound, [...loading, ...heldStart])).not.toEqual([]);
      const unfit = askedWith(car, { ...first, 'battery-look': look });
      expect(among(unfit, [...loading, ...heldStart])).toEqual([]);
    },
  );

  test('the same of a battery that is seen to swell or leak at any moment', () => {
    const step = take(
      open(car),
      answers({ ...slow, history: 'none', 'battery-rest': 11.5, 'battery-look': 'sound' }),
      { type: 'interrupt', interrupt: 'swollen-or-leaking-battery' },
    );
    const { asked } = playOut(step);
    expect(
      among(
        asked.map(({ check }) => check),
        [...loading, ...heldStart],
      ),
    ).toEqual([]);
  });

  interface Frost {
    readonly what: string;
    readonly air?: number;
    readonly coldest?: number;
    readonly found: Answers;
    readonly frozen: boolean;
  }
  test.each<Frost>([
    { what: 'flat and cold', air: -10, found: { 'battery-rest': 11.5 }, frozen: true },
    {
      what: 'flat, and it was cold',
      air: 4,
      coldest: -8,
      found: { 'battery-rest': 11.5 },
      frozen: true,
    },
    { what: 'without light and cold', air: -5, found: { headlamps: 'no-light' }, frozen: true },
    {
      what: 'flat, and it was never that cold',
      air: -10,
      coldest: 1,
      found: { 'battery-rest': 11.5 },
      frozen: false,
    },
    { what: 'charged and cold', air: -10, found: { 'battery-rest': 12.6 }, frozen: false },
    { what: 'flat and warm', air: 10, found: { 'battery-rest': 11.5 }, frozen: false },
  ])(
    'the same of a battery not looked at that is $what: $frozen',
    ({ air, coldest, found, frozen }) => {
      const context = { ...car, temperature: air, coldest };
      const unseen = askedWith(context, { ...slow, history: 'none', ...found });
      expect(among(unseen, [...loading, ...heldStart]).length === 0).toBe(frozen);
      const seen = askedWith(context, {
        ...slow,
        history: 'none',
        ...found,
        'battery-look': 'sound',
      });
      expect(among(seen, [...loading, ...heldStart])).not.toEqual([]);
    },
  );

  test('a held start in gear, until it is moved and confirmed anew', () => {
    const first = {
      ...silent,
      history: 'none',
      'charge-lamp': 'normal',
      'battery-age': 3,
      'flooded-smell': 'no',
      'battery-look': 'sound',
    } as const;
    const step = take(open(car), answers({ ...first, selector: 'in-gear' }));
    expect(messagesOf(step, 'ask')).toMatchObject([{ check: 'selector', time: 2 }]);
    const left = playOut(take(step, answers({ selector: 'in-gear' })));
    expect(
      among(
        left.asked.map(({ check }) => check),
        heldStart,
      ),
    ).toEqual([]);
    const moved = take(
      step,
      answers({ selector: 'park-neutral', clutch: 'down', terminals: 'clean-tight' }),
      {
        type: 'talk',
        talk: 'cannot',
      },
    );
    expect(
      among(
        playOut(moved).asked.map(({ check }) => check),
        heldStart,
      ),
    ).not.toEqual([]);
    const confirmed = take(
      open(car),
      answers({ ...first, selector: 'park-neutral', clutch: 'down', 'battery-rest': 12.6 }),
      answers({ 'security-lamp': 'normal', terminals: 'clean-tight' }),
      { type: 'confirm' },
    );
    const [, check = ''] = awaits(confirmed).split(' ');
    expect(heldStart).toContain(check);
    expect(awaits(confirmed)).toBe(`answer ${check}`);
    expect(awaits(take(confirmed, answers({ selector: 'park-neutral' })))).toBe(`confirm ${check}`);
  });

  test('a held start of a locked engine, after the verdict too', () => {
    const first = {
      ...slow,
      complaint: 'single-click',
      history: 'none',
      'battery-look': 'sound',
    } as const;
    expect(among(askedWith(car, { ...first, 'turn-engine': 'turns' }), heldStart)).not.toEqual([]);
    const locked = playOut(take(open(car), answers({ ...first, 'turn-engine': 'locked' })), {
      repair: 'done',
    });
    expect(locked.step.case.state.verdict).toMatchObject({
      fault: 'engine-locked',
      licensed: true,
    });
    expect(
      among(
        locked.asked.map(({ check }) => check),
        heldStart,
      ),
    ).toEqual([]);
  });

  test('a held start after water, until the engine has turned by hand', () => {
    const first = { ...slow, history: 'water', 'battery-look': 'sound' } as const;
    expect(among(askedWith(car, first), heldStart)).toEqual([]);
    expect(among(askedWith(car, { ...first, 'turn-engine': 'tight' }), heldStart)).toEqual([]);
    expect(among(askedWith(car, { ...first, 'turn-engine': 'turns' }), heldStart)).not.toEqual([]);
  });

  test('a spark where fuel is smelt or leaks', () => {
    const first = { ...cranks, history: 'none', 'fuel-level': 'has-fuel' } as const;
    expect(askedWith(car, { ...first, 'flooded-smell': 'no' })).toContain('spark');
    expect(askedWith(car, { ...first, 'flooded-smell': 'yes' })).not.toContain('spark');
    const leak = take(open(car), answers({ ...first, 'flooded-smell': 'no' }), {
      type: 'interrupt',
      interrupt: 'fuel-leak',
    });
    expect(playOut(leak).asked.map(({ check }) => check)).not.toContain('spark');
  });

  test('a knock on the starter where fuel is smelt', () => {
    const first = { ...slow, complaint: 'single-click', history: 'none', 'battery-look': 'sound' };
    const found = { 'battery-rest': 12.7, 'control-signal': 12 };
    expect(askedWith(car, { ...first, 'flooded-smell': 'no' }, found)).toContain('tap');
    expect(askedWith(car, { ...first, 'flooded-smell': 'yes' }, found)).not.toContain('tap');
  });

  test('the pump and any start with the wrong fuel in the tank', () => {
    const first = { ...cranks, history: 'just-fuelled' } as const;
    const pump = [...heldStart, 'pump-sound'];
    expect(among(askedWith(car, { ...first, 'fuel-level': 'has-fuel' }), pump)).toContain(
      'pump-sound',
    );
    expect(among(askedWith(car, { ...first, 'fuel-level': 'wrong-fuel' }), pump)).toEqual([]);
  });

  test('everything but the scene in a live lane', () => {
    const { place: _, ...elsewhere } = car;
    const played = playOut(open({ ...elsewhere, place: 'live-lane' }), slow);
    expect([...new Set(played.asked.map(({ check }) => check))]).toEqual(['scene']);
    expect(played.step.case.state.verdict).toMatchObject({
      remedy: 'call-emergency',
      send: 'police',
    });
  });

  test('everything in a place that is not safe', () => {
    const played = playOut(open(car), { ...slow, scene: 'unsafe' });
    expect(played.asked.map(({ check }) => check)).toEqual(['scene', 'scene']);
    expect(played.step.case.state.verdict).toMatchObject({ remedy: 'call-emergency' });
  });

  test('everything on the shoulder that is not known by heart', () => {
    const { asked } = playOut(open({ ...car, kit: ['helper'], place: 'shoulder' }), {
      ...slow,
      history: 'none',
    });
    const names = asked.map(({ check }) => check);
    expect(names.filter((check) => ![...byMemory, 'dash', 'headlamps'].includes(check))).toEqual(
      [],
    );
    expect(names).toEqual(expect.arrayContaining(['dash', 'headlamps']));
    for (const { check, remembered } of asked) {
      expect({ check, remembered }).toEqual({
        check,
        remembered: ['dash', 'headlamps'].includes(check),
      });
    }
  });

  test.each(['driver', 'dispatcher'])(
    'what is at hand, where nothing may be done with it: %s on the shoulder',
    (role) => {
      const { kit: _, ...unknown } = car;
      const clicks: Answers = { ...slow, complaint: 'rapid-clicking' };
      expect(askedWith({ ...unknown, role, place: 'parking' }, clicks)).toContain('kit');
      expect(askedWith({ ...unknown, role, place: 'shoulder' }, clicks)).not.toContain('kit');
    },
  );

  test('every starter check of a full hybrid', () => {
    const hybrid = { ...car, vehicle: { ...car.vehicle, hybrid: 'full' } };
    const first = { ...slow, history: 'none', 'battery-look': 'sound' } as const;
    expect(among(askedWith(car, first), starterChecks)).not.toEqual([]);
    expect(among(askedWith(hybrid, first), starterChecks)).toEqual([]);
    const { vehicle: _, ...unknown } = car;
    const told = askedWith(unknown, { drive: 'petrol-hybrid', ...first });
    expect(among(told, starterChecks)).toEqual([]);
  });

  test.each<readonly [string, Record<string, unknown>, boolean]>([
    ['a mechanic at home', { role: 'mechanic', place: 'home' }, true],
    ['a technician on a car park', { role: 'technician', place: 'parking' }, true],
    ['a driver on a car park', { role: 'driver', place: 'parking' }, false],
    ['a driver on the shoulder', { role: 'driver', place: 'shoulder' }, false],
    ['a driver in a place that nobody told', { role: 'driver', place: undefined }, false],
    ['a dispatcher', { role: 'dispatcher', place: 'home' }, false],
  ])('or not the knock on the starter, asked of %s: asked %s', (_, who, isAsked) => {
    const first = { ...slow, complaint: 'single-click', history: 'none', 'battery-look': 'sound' };
    const found = { 'battery-rest': 12.7, 'control-signal': 12 };
    expect(askedWith({ ...car, ...who }, first, found).includes('tap')).toBe(isAsked);
  });
});

describe('an interrupt', () => {
  test.each(Object.values(flow.interrupts).filter(({ then }) => then === 'return'))(
    '$id holds the case until it is over',
    ({ id, word }) => {
      const before = take(open(car), answers({ ...slow, history: 'none' }));
      const step = take(before, { type: 'interrupt', interrupt: id });
      expect(step.messages).toEqual([{ kind: 'interrupt', interrupt: id, word, then: 'return' }]);
      const reopened = flow.interrupts[id]?.reopens ?? [];
      const then = reopened.length > 0 ? 'answer scene' : awaits(before);
      expect(awaits(take(step, { type: 'resume' }))).toBe(then);
    },
  );

  test('that the vehicle starts now goes on to prove the charging', () => {
    const step = take(
      open(car),
      answers({ ...slow, history: 'none' }),
      { type: 'interrupt', interrupt: 'starts-now' },
      { type: 'resume' },
    );
    expect(awaits(step)).toBe('confirm charging');
    const proved = take(step, answers({ charging: 14.3 }));
    expect(proved.case.state.outcome).toBe('proved-repaired');
  });

  test('that the vehicle starts now is not undone by new kit', () => {
    const step = take(
      open({ ...car, kit: ['helper'] }),
      answers({ ...slow, history: 'none' }),
      { type: 'interrupt', interrupt: 'starts-now' },
      { type: 'resume' },
      { type: 'context', set: { kit: ['helper', 'voltmeter'] } },
    );
    expect(awaits(step)).toBe('confirm charging');
  });
});

describe('a wait', () => {
  const first = {
    ...slow,
    history: 'none',
    'battery-look': 'sound',
    'battery-rest': 11.9,
  } as const;

  /** Declines one question after another until the charged battery is left to rest. */
  function waiting() {
    let step = take(open({ ...car, kit: ['voltmeter', 'charger', 'load-tester'] }), answers(first));
    for (let turns = 0; turns < 60 && !awaits(step).startsWith('wait'); turns += 1) {
      const input: Input = awaits(step).startsWith('confirm')
        ? { type: 'confirm' }
        : { type: 'talk', talk: 'cannot' };
      step = take(step, input);
    }
    return step;
  }

  test('for the battery to rest after its charge is two hours, and outlives a restart', () => {
    const step = waiting();
    const due = '2026-01-01T10:00:00.000Z';
    expect(step.messages).toEqual([
      { kind: 'wait', check: 'battery-recharged', minutes: 120, due },
    ]);
    const stored = JSON.parse(JSON.stringify(step.case)) as typeof step.case;
    const early = next(stored, { type: 'tick' }, '2026-01-01T09:59:59.000Z');
    expect(awaits(early)).toBe('wait battery-recharged');
    expect(awaits(next(early.case, { type: 'tick' }, due))).toBe('answer battery-recharged');
  });

  test('is over by the word of who waits', () => {
    expect(awaits(take(waiting(), { type: 'waited' }))).toBe('answer battery-recharged');
  });
});

describe('a reading', () => {
  const before = () =>
    take(open(car), answers({ ...slow, history: 'none', 'battery-look': 'sound' }));
  const read = (check: string, value: number, context: Record<string, unknown> = {}) =>
    messagesOf(
      take(open({ ...car, ...context }), answers({ ...slow, [check]: value })),
      'reading',
    ).at(-1)!;

  test.each([
    [12, 12.1, 'discharged'],
    [24, 24.2, 'discharged'],
    [24, 25.4, 'ready'],
    [24, 23.4, 'flat'],
  ])('of a battery of %s V that rests at %s V is %s', (nominal, value, band) => {
    const vehicle = { ...car.vehicle, nominal };
    expect(read('battery-rest', value, { vehicle }).band).toBe(band);
  });

  test('of 25 V is questioned on a car and taken on a lorry', () => {
    const onCar = take(open(car), answers({ 'battery-rest': 25.2 }));
    expect(messagesOf(onCar, 'refused')).toMatchObject([
      { code: 'implausible', hint: 'nominal-24' },
    ]);
    expect(messagesOf(take(open(lorry), answers({ 'battery-rest': 25.2 })), 'refused')).toEqual([]);
  });

  test('of the halves is asked of 24 V alone', () => {
    const first = { ...slow, history: 'none', 'battery-look': 'sound', 'battery-rest': 'ready' };
    expect(askedWith(lorry, first)).toContain('battery-halves');
    expect(askedWith(car, first)).not.toContain('battery-halves');
  });

  // TM 9-6140-200-13, the load test: 9.6 V at 70 degF, 9.1 V at 32 degF and 8.5 V at 0 degF.
  test.each([
    [21, 9.3, 'failed'],
    [0, 9.3, 'passed'],
    [0, 8.8, 'failed'],
    [-18, 8.8, 'passed'],
  ])('under load at %s Cel of %s V has %s', (temperature, value, band) => {
    expect(read('battery-load-test', value, { temperature }).band).toBe(band);
  });

  test('near a bound is borderline, proves nothing, and lies on both sides', () => {
    const technology = { vehicle: { ...car.vehicle, battery: { technology: 'flooded' } } };
    const near = read('battery-rest', 12.41, technology);
    expect(near.borderline).toBe(true);
    const shares = Object.fromEntries(near.weights);
    expect(shares['ready']).toBeGreaterThan(0.4);
    expect(shares['discharged']).toBeGreaterThan(0.2);
    expect(read('battery-rest', 12.7, technology).borderline).toBe(false);
  });

  test('too near to a bound leaves a cable that drops too much unproved', () => {
    const found = { 'battery-rest': 12.7, 'battery-crank': 11.2, 'drop-clamps': 0.03 } as const;
    const verdict = (drop: number) => {
      const step = take(before(), answers({ ...found, 'drop-positive': 0.1, 'drop-ground': drop }));
      return playOut(step).step.case.state.verdict;
    };
    expect(verdict(1.3)).toMatchObject({ fault: 'ground-cable', strength: 'proved' });
    const bound = messagesOf(
      take(before(), answers({ ...found, 'drop-ground': 0.3 })),
      'reading',
    ).at(-1)!.bounds[0]!;
    const middle = Number(((bound.low + bound.high) / 2).toFixed(3));
    expect(verdict(middle)?.strength).not.toBe('proved');
  });

  test('in steps of a tenth of a volt near a bound is asked once more, and only once', () => {
    const coarse = { value: 12.4, unit: 'V', resolution: 0.1 };
    const fine = { value: 12.41, unit: 'V', resolution: 0.01 };
    const known = { ...slow, history: 'none', 'charge-lamp': 'normal', 'battery-age': 3 } as const;
    const timesAsked = (value: Answers[string]) => {
      const from = take(open({ ...car, kit: ['voltmeter'] }), answers(known));
      const { asked } = playOut(from, { 'battery-rest': value });
      return asked.filter(({ check }) => check === 'battery-rest').length;
    };
    expect(timesAsked(coarse)).toBe(2);
    expect(timesAsked(fine)).toBe(1);
    expect(timesAsked({ ...coarse, value: 11.2 })).toBe(1);
  });

  test('is not asked once more where that would take another full charge', () => {
    const kit = ['voltmeter', 'charger', 'load-tester'];
    const flat = {
      ...slow,
      history: 'none',
      'charge-lamp': 'normal',
      'battery-rest': 11.6,
    } as const;
    const from = take(open({ ...car, kit, role: 'mechanic', place: 'workshop' }), answers(flat));
    const charged = { value: 12.5, unit: 'V', resolution: 0.1 };
    const { asked } = playOut(from, { 'battery-recharged': charged, 'battery-load-test': 10.4 });
    expect(asked.filter(({ check }) => check === 'battery-recharged')).toHaveLength(1);
  });
});

describe('a dispatcher', () => {
  const desk = { role: 'dispatcher', place: 'parking', vehicle: car.vehicle };

  const asked = (role: string, first: Answers, later: Answers) => {
    const from = take(open({ ...desk, role, kit: [] }), answers(first));
    const played = playOut(from, later);
    const names = played.asked.map(({ check }) => check);
    const end = names.indexOf('repair');
    return { names: names.slice(0, end), send: played.step.case.state.verdict?.send };
  };

  test.each<readonly [string, Answers, Answers, readonly string[]]>([
    ['boost-van', { history: 'lights-left-on', ...slow }, {}, ['battery-age', 'battery-look']],
    ['flatbed', { history: 'none', ...slow, complaint: 'free-spin' }, {}, []],
    ['fuel-van', { history: 'none', ...cranks }, { 'fuel-level': 'empty' }, ['fuel-level']],
  ])('is asked no more once it is settled to send the %s', (send, first, later, needed) => {
    const dispatcher = asked('dispatcher', first, later);
    expect(dispatcher).toEqual({ names: needed, send });
    expect(asked('technician', first, later).names.length).toBeGreaterThan(needed.length);
  });

  test('asks nobody to look below the vehicle', () => {
    const played = playOut(take(open({ ...desk, kit: [] }), answers(silent)));
    const places = played.asked.map(({ check }) => flow.checks[check]?.at);
    expect(places).not.toContain('below');
  });
});

describe('a verdict', () => {
  /** Played on to the verdict; what is not given is not known. */
  const decided = (from: Step, later: Answers = {}): Step => {
    let step = from;
    for (let turns = 0; step.case.state.verdict === null && turns < 60; turns += 1) {
      const [word, check = ''] = awaits(step).split(' ');
      const value = later[check];
      step =
        word === 'confirm'
          ? take(step, { type: 'confirm' })
          : take(
              step,
              value === undefined
                ? { type: 'talk', talk: 'dont-know' }
                : answers({ [check]: value }),
            );
    }
    return step;
  };
  const told = (context: Record<string, unknown>, first: Answers, later?: Answers): Step =>
    decided(take(open({ ...car, kit: [], ...context }), answers(first)), later);
  const cautionsOf = (step: Step) => messagesOf(step, 'caution').map(({ caution }) => caution);
  const clicks: Answers = {
    scene: 'safe',
    complaint: 'rapid-clicking',
    when: 'after-standing',
    history: 'lights-left-on',
  };

  test.each(['driver', 'dispatcher', 'mechanic', 'clerk'])(
    'on the shoulder leaves the work to those who come, and says nothing of how it is done: %s',
    (role) => {
      const step = told({ role, place: 'shoulder', kit: ['boost-source', 'voltmeter'] }, clicks);
      expect(step.case.state.verdict).toMatchObject({
        fault: 'battery-discharged',
        send: 'boost-van',
        waits: true,
      });
      expect(cautionsOf(step)).toEqual([]);
      expect(awaits(step)).toBe('nothing');
    },
  );

  test('in a parking place is for whoever is there, who hears first what can hurt', () => {
    const step = told({ role: 'driver', place: 'parking' }, clicks);
    expect(step.case.state.verdict).toMatchObject({ remedy: 'boost', waits: false });
    const kinds = step.messages.map(({ kind }) => kind);
    expect(cautionsOf(step)).toEqual(
      expect.arrayContaining(['battery-gas', 'boost-order', 'vehicle-moves']),
    );
    expect(kinds.lastIndexOf('caution')).toBeLessThan(kinds.indexOf('verdict'));
  });

  test('is found anew once the vehicle turns out to stand off the shoulder', () => {
    const waiting = told({ role: 'driver', place: undefined }, { place: 'shoulder', ...clicks });
    expect(waiting.case.state).toMatchObject({ verdict: { waits: true }, outcome: 'handed-over' });
    const moved = take(waiting, correct({ place: 'parking' }));
    expect(moved.case.state.outcome).toBe(null);
    expect(decided(moved).case.state.verdict).toMatchObject({ waits: false });
  });

  test('says nothing of the leads where the battery must not be boosted', () => {
    const step = told(
      { role: 'driver', place: 'parking', coldest: -12 },
      { ...clicks, 'battery-look': 'frozen' },
    );
    expect(step.case.state.verdict?.remedy).not.toBe('boost');
    expect(cautionsOf(step)).not.toContain('boost-order');
  });

  test('speaks of a knock on the starter only where the starter is suspected', () => {
    const flat = told({ role: 'driver', place: 'parking' }, clicks);
    expect(flat.case.state.verdict?.stops).toEqual([]);
    const starter = told(
      { role: 'driver', place: 'parking', kit: ['voltmeter', 'helper'] },
      { ...clicks, complaint: 'single-click', history: 'none' },
      {
        'battery-look': 'sound',
        terminals: 'clean-tight',
        'battery-rest': 12.7,
        'battery-crank': 12.3,
        'control-signal': 12.2,
        'drop-contacts': 0.1,
        'drop-positive': 0.1,
        'drop-ground': 0.05,
      },
    );
    expect(starter.case.state.verdict).toMatchObject({
      fault: 'starter-motor',
      stops: ['driver-tap'],
    });
  });
});

describe('the caution on battery acid', () => {
  test.each<readonly [string, readonly string[]]>([
    ['battery-rest', ['voltmeter']],
    ['boost', ['boost-source']],
  ])('comes with the first that is done at the battery, be it %s', (check, kit) => {
    // Whoever told at once what the battery looks like was warned of nothing yet.
    const looked: Answers = { 'battery-look': 'sound', terminals: 'clean-tight' };
    let step = take(open({ ...car, kit }), answers({ ...slow, history: 'none', ...looked }));
    const said: string[] = [];
    for (let turns = 0; !said.includes(`ask ${check}`) && turns < 60; turns += 1) {
      const isRead = awaits(step).startsWith('confirm');
      step = next(step.case, isRead ? { type: 'confirm' } : { type: 'talk', talk: 'dont-know' });
      for (const one of step.messages) {
        if (one.kind === 'caution') said.push(`caution ${one.caution}`);
        if (one.kind === 'ask') said.push(`ask ${one.check}`);
      }
    }
    expect(said).toContain(`ask ${check}`);
    expect(said.slice(0, said.indexOf(`ask ${check}`))).toContain('caution battery-acid');
  });
});

describe('the end of a case', () => {
  test('of a vehicle that no check here covers comes at once', () => {
    const played = playOut(open({ ...car, vehicle: { fuel: 'electric' } }));
    expect(played.asked.map(({ check }) => check).filter((check) => check !== 'repair')).toEqual(
      [],
    );
    expect(played.step.case.state.verdict).toMatchObject({ remedy: 'technician-visit' });
  });

  test('is asked to stop no vehicle that was boosted, and proves it by its charging', () => {
    const step = take(
      open({ ...car, role: 'driver', place: 'parking' }),
      answers({ ...slow, complaint: 'rapid-clicking', history: 'lights-left-on' }),
      answers({ 'battery-look': 'sound', 'battery-rest': 11.6 }),
    );
    const boosted = playOut(step, {
      repair: 'done',
      'start-after': 'starts',
      charging: 14.2,
    });
    expect(boosted.step.case.state.verdict).toMatchObject({ remedy: 'boost' });
    const asked = boosted.asked.map(({ check }) => check);
    expect(asked.slice(asked.indexOf('repair'))).toEqual(['repair', 'start-after', 'charging']);
    expect(boosted.step.case.state.outcome).toBe('proved-repaired');
  });

  test('tells to switch it off before anything is measured while starting', () => {
    const { checks } = noStart.texts;
    expect(checks['start-after']?.how?.at(-1)).toMatch(
      /running until you are asked to switch it off/u,
    );
    for (const id of [
      'crank-after',
      'drop-clamps-after',
      'drop-positive-after',
      'drop-ground-after',
    ]) {
      expect(checks[id]?.how?.[0], id).toMatch(/^If it runs, switch it off first\./u);
    }
  });

  test.each([
    [
      'proved-repaired',
      { repair: 'done', 'start-after': 'starts', 'drop-ground-after': 0.05, charging: 14.3 },
    ],
    [
      'still-failing',
      { repair: 'done', 'start-after': 'no-change', 'drop-ground-after': 0.05, charging: 14.3 },
    ],
    ['unproved', { repair: 'done', 'start-after': 'starts' }],
    ['handed-over', {}],
  ] as const)('is %s', (outcome, proof) => {
    const step = take(
      open(car),
      answers({ ...slow, history: 'none', 'battery-look': 'sound', 'battery-rest': 12.7 }),
      answers({ 'battery-crank': 11.2, 'drop-clamps': 0.03 }),
      answers({ 'drop-positive': 0.1, 'drop-ground': 1.3 }),
    );
    expect(playOut(step, proof).step.case.state.outcome).toBe(outcome);
  });
});
