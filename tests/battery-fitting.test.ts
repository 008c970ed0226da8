/**
 * The fitting of a battery: its cards, every combination of steps against the plain rules, and what
 * must never happen on any path. Common practice, no source, unless a source is named.
 */
import { describe, expect, test } from 'vitest';
import {
  batteryFittingAnswers,
  batteryFittingRepeated,
  judgeBatteryFitting,
  type BatteryFitting,
  type BatteryVehicle,
} from './support/battery-fitting-rules.ts';
import {
  chance,
  pick,
  playFitting,
  type Given,
  type PlayedFitting,
} from './support/fitting-play.ts';
import { testFittingCards } from './support/fitting-cards.ts';
import { testWhatIsSaid } from './support/said-of-steps.ts';

const { chart, texts, speaker } = testFittingCards('battery-fitting');

type Words = Readonly<Record<string, readonly string[]>>;

const listed: Words = { ...batteryFittingAnswers, ...batteryFittingRepeated };

/** What is wanted of each step. */
const wanted: Readonly<Record<string, string>> = {
  ...Object.fromEntries(Object.entries(listed).map(([step, ids]) => [step, ids[0]!])),
  'clamps-tight': 'right',
  'battery-rest': 'ready',
  'battery-crank': 'good',
  charging: 'right',
};

/** What a 12 V meter shows for each band, and between two, in a workshop at 22 Cel. */
const figures: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'clamps-tight': {
    under: 3,
    'under~right': 5,
    right: 6.5,
    'right~over': 8,
    over: 12,
    'no-bound': 6.5,
  },
  'battery-rest': {
    flat: 11.5,
    'flat~discharged': 12,
    discharged: 12.2,
    'discharged~ready': 12.4,
    ready: 12.64,
    'ready~surface-charged': 12.9,
    'surface-charged': 13.1,
    'surface-charged~over': 13.6,
    over: 14.4,
  },
  'battery-crank': { collapsed: 5, low: 8.8, 'low~good': 9.6, good: 10.6 },
  charging: {
    none: 12.4,
    'none~low': 13,
    low: 13.25,
    'low~right': 13.5,
    right: 14.2,
    'right~high': 14.8,
    high: 15.6,
    'no-bound': 12.7,
  },
  'drop-clamps': { good: 0.02, 'good~high': 0.1, high: 0.6 },
};

/** The same for the difference between the two batteries of a 24 V pair, which does not double. */
const halves: Readonly<Record<string, number>> = {
  equal: 0.02,
  'equal~unequal': 0.3,
  unequal: 0.9,
};

/** What an AGM or gel battery rests at in the bands that begin later than those of a wet one. */
const sealedRest: Readonly<Record<string, number>> = {
  'discharged~ready': 12.6,
  ready: 12.8,
  'ready~surface-charged': 13.1,
  'surface-charged': 13.25,
};

/** What is answered once more after the first of two answers. */
const putRight: Words = {
  'hold-down': ['loose'],
  'vent-tube': ['missing'],
  'clamps-tight': ['under', 'under~right'],
  'battery-rest': ['flat', 'flat~discharged', 'discharged', 'discharged~ready'],
  charging: ['low', 'none~low', 'low~right'],
};

interface Drawn {
  readonly vehicle: BatteryVehicle;
  readonly context: Readonly<Record<string, unknown>>;
  readonly answers: Words;
}

const kit = ['voltmeter', 'torque-wrench', 'helper', 'charger'];

/** A battery change by chance, most of it as it should be, on a vehicle of one kind or another. */
function drawFitting(draw: () => number): Drawn {
  const some = <Item>(of: readonly Item[]): Item => pick(draw, of);
  const known = { 'clamps-tight': draw() < 0.8, charging: draw() < 0.8 };
  const vehicle = {
    nominal: some([12, 12, 24] as const),
    hybrid: some(['none', 'none', 'mild', 'full'] as const),
    startStop: draw() < 0.2,
    oldKind: some(['flooded', 'efb', 'agm'] as const),
    kind: some(['flooded', 'efb', 'agm', 'agm', 'gel'] as const),
    location: some(['engine-bay', 'engine-bay', 'boot', 'seat'] as const),
  };
  const { nominal, hybrid, startStop, oldKind, kind, location } = vehicle;
  const context = {
    place: 'workshop',
    temperature: 22,
    kit,
    vehicle: {
      fuel: 'petrol',
      nominal,
      hybrid,
      startStop,
      smartCharging: !known.charging,
      battery: { technology: oldKind, location },
    },
    part: { battery: { technology: kind } },
    ...(known['clamps-tight'] ? { post: { kind: 'tapered' } } : {}),
  };
  const drawn = (step: string, ids: readonly string[]): readonly string[] => {
    const hasBound = (known as Readonly<Record<string, boolean>>)[step] ?? true;
    const possible = hasBound ? ids.filter((id) => id !== 'no-bound') : ['no-bound'];
    const good = hasBound ? wanted[step]! : 'no-bound';
    const first = draw() < 0.92 ? good : some(possible);
    if (draw() < 0.02) return [];
    const isAgain = putRight[step]?.includes(first) === true && draw() < 0.7;
    return isAgain ? [first, draw() < 0.6 ? good : some(possible)] : [first];
  };
  const answers = Object.fromEntries(
    Object.entries(listed).map(([step, ids]) => [step, drawn(step, ids)]),
  );
  return { vehicle, context, answers };
}

/** Figures of the meter for the bands that were drawn; on 24 V they double. */
function asGiven(answers: Words, { nominal = 12, kind }: BatteryVehicle): Record<string, Given[]> {
  const isSealed = kind === 'agm' || kind === 'gel';
  const figure = (step: string, id: string): Given => {
    if (step === 'battery-halves') return halves[id] ?? id;
    const wet = figures[step]?.[id];
    if (wet === undefined) return id;
    const one = step === 'battery-rest' && isSealed ? (sealedRest[id] ?? wet) : wet;
    return step === 'clamps-tight' ? one : (one * nominal) / 12;
  };
  return Object.fromEntries(
    Object.entries(answers).map(([step, ids]) => [step, ids.map((id) => figure(step, id))]),
  );
}

const asRules = (answers: Words): BatteryFitting =>
  Object.fromEntries(
    Object.entries(answers).map(([step, ids]) => [
      step,
      step in batteryFittingRepeated ? ids : (ids.at(-1) ?? 'unanswered'),
    ]),
  ) as unknown as BatteryFitting;

/** What must hold on any path, whatever was answered. */
function expectSafe({ asked, saidBefore }: PlayedFitting, { vehicle, answers }: Drawn): void {
  const order = asked.map(({ check }) => check);
  const said = (check: string): readonly string[] => saidBefore.get(check) ?? [];
  const latest = (step: string): string | undefined => answers[step]?.at(-1);
  for (const check of ['first-crank', 'battery-crank', 'drop-clamps']) {
    if (!order.includes(check)) continue;
    expect(said(check), check).toEqual(expect.arrayContaining(['vehicle-moves', 'crank-limit']));
    expect(vehicle.hybrid).not.toBe('full');
    expect(latest('battery-look')).toBe('sound');
  }
  for (const check of ['battery-crank', 'drop-clamps', 'charging']) {
    if (order.includes(check)) expect(said(check), check).toContain('moving-parts');
  }
  for (const check of ['ground-lead-off', 'ground-lead-on']) {
    if (!order.includes(check)) continue;
    expect(said(check), check).toEqual(expect.arrayContaining(['short-circuit', 'battery-gas']));
  }
  if (order.includes('battery-out')) {
    expect(said('battery-out')).toEqual(expect.arrayContaining(['battery-acid', 'heavy-acid']));
  }
  if (vehicle.hybrid === 'mild' || vehicle.hybrid === 'full') {
    expect(said(order[0] ?? '')).toContain('high-voltage');
  }
  // Minus off first and on last; nothing is loosened before everything is off and the part is right.
  if (order.includes('positive-lead-off')) {
    expect(order.indexOf('ground-lead-off')).toBeLessThan(order.indexOf('positive-lead-off'));
    expect(['secured', 'ignition-off', 'ground-lead-off'].map(latest)).toEqual([
      'done',
      'done',
      'done',
    ]);
  }
  if (order.includes('positive-lead-on')) expect(latest('polarity')).toBe('same-side');
  if (order.includes('ground-lead-on')) {
    expect(order.indexOf('positive-lead-on')).toBeLessThan(order.indexOf('ground-lead-on'));
    expect(latest('leads-clear')).not.toBe('touching');
  }
}

test(
  'any battery change comes to what the plain rules say, and none goes past what is safe',
  { timeout: 240_000 },
  () => {
    const draw = chance(2027);
    const met = new Set<string>();
    for (let run = 0; run < 600; run += 1) {
      const drawn = drawFitting(draw);
      const { vehicle, context, answers } = drawn;
      const played = playFitting(chart, context, asGiven(answers, vehicle));
      const judged = judgeBatteryFitting(asRules(answers), vehicle);
      const shown = JSON.stringify({ context, answers });
      expect(played.outcome, shown).toBe(judged.outcome);
      if ('reason' in judged) expect(played.reason, shown).toBe(judged.reason);
      expectSafe(played, drawn);
      met.add(`${played.outcome} ${played.reason}`);
    }
    // Every line of the table was met on the way.
    const lines = chart.flow.decisions.map(({ decide, reason }) => `${decide} ${reason}`);
    expect([...met].sort()).toEqual([...new Set(lines)].sort());
  },
);

const car = {
  place: 'workshop',
  temperature: 22,
  kit,
  vehicle: { fuel: 'petrol', nominal: 12, smartCharging: false, startStop: false },
  part: { battery: { technology: 'flooded' } },
  post: { kind: 'tapered' },
};
const good = Object.fromEntries(Object.entries(wanted).map(([step, id]) => [step, [id]]));

function played(
  answers: Readonly<Record<string, readonly Given[]>>,
  context: Readonly<Record<string, unknown>> = car,
): PlayedFitting {
  return playFitting(chart, context, { ...asGiven(good, {}), ...answers });
}

describe('the steps', () => {
  test('come in the order of the work, and only they are asked of a car that is known', () => {
    const steps = `fault-proved secured settings-kept ignition-off battery-look part-compare polarity
      rating-compare technology ground-lead-off positive-lead-off battery-out tray battery-in
      hold-down vent-tube positive-lead-on clamps-tight leads-clear ground-lead-on registration
      battery-rest first-crank battery-crank drop-clamps charging lamps-clear`;
    const { asked, outcome } = played({});
    expect(outcome).toBe('proved');
    expect(asked.map(({ check }) => check)).toEqual(steps.split(/\s+/u));
  });

  test('an AGM battery is ready later than a wet one', () => {
    const agm = { ...car, part: { battery: { technology: 'agm' } } };
    expect(played({ 'battery-rest': [12.48] }, agm)).toMatchObject({ reason: 'battery-rest' });
    expect(played({ 'battery-rest': [12.48] })).toMatchObject({ outcome: 'proved' });
  });

  test.each([
    ['a wet one where AGM was', 'agm', 'flooded', false],
    ['an EFB where AGM was', 'agm', 'efb', false],
    ['a wet one where EFB was', 'efb', 'flooded', false],
    ['a wet one with start-stop', 'flooded', 'flooded', true],
  ])('%s stops, whatever was said of it', (_, old, fitted, startStop) => {
    const context = {
      ...car,
      vehicle: { ...car.vehicle, startStop, battery: { technology: old } },
      part: { battery: { technology: fitted } },
    };
    expect(played({}, context)).toMatchObject({ outcome: 'stopped', reason: 'technology' });
  });

  test.each([
    ['flooded', 'boot', 'not-needed', 'stopped'],
    ['efb', 'seat', 'not-needed', 'stopped'],
    ['flooded', 'boot', 'connected', 'proved'],
    ['agm', 'seat', 'not-needed', 'proved'],
    ['flooded', 'engine-bay', 'not-needed', 'proved'],
  ])('%s, %s, vent tube %s: %s', (kind, location, tube, outcome) => {
    const context = {
      ...car,
      vehicle: { ...car.vehicle, battery: { location } },
      part: { battery: { technology: kind } },
    };
    const end = played({ 'vent-tube': [tube], 'battery-rest': [12.8] }, context);
    expect(end).toMatchObject({ outcome });
  });

  test('both of a 24 V pair are looked at; a full hybrid is proved by getting ready', () => {
    const truck = { ...car, vehicle: { ...car.vehicle, fuel: 'diesel', nominal: 24 } };
    const double = asGiven(good, { nominal: 24 });
    expect(played(double, truck)).toMatchObject({ outcome: 'proved' });
    const unequal = played({ ...double, 'battery-halves': [0.8] }, truck);
    expect(unequal).toMatchObject({ outcome: 'unproved', reason: 'battery-halves' });
    const hybrid = { ...car, vehicle: { ...car.vehicle, hybrid: 'full' } };
    const { outcome, asked } = played({}, hybrid);
    expect(outcome).toBe('proved');
    expect(asked.map(({ check }) => check)).not.toContain('first-crank');
  });
});

describe('torque at the terminals', () => {
  test.each([
    // Common practice, no source: clamps on tapered posts 5 to 8 N.m.
    ['tapered', 6.5, 10],
    // A battery maker's installation manual: inserts M6 4.5 to 7.9, M8 6.6 to 10.7, M10 10.4 to 16.
    ['insert-m6', 6, 9.5],
    ['insert-m8', 8.5, 13],
    ['insert-m10', 13, 20],
  ])('%s: %d N.m is right, %d N.m too much', (kind, right, over) => {
    const context = { ...car, post: { kind } };
    expect(played({ 'clamps-tight': [right] }, context)).toMatchObject({ outcome: 'proved' });
    const stopped = { outcome: 'stopped', reason: 'clamps-tight' };
    expect(played({ 'clamps-tight': [over] }, context)).toMatchObject(stopped);
  });

  test("the maker's figure goes first", () => {
    const part = { ...car.part, limits: { 'clamps-tight': { low: 9, high: 11, unit: 'N.m' } } };
    expect(played({ 'clamps-tight': [10] }, { ...car, part })).toMatchObject({ outcome: 'proved' });
  });
});

describe('where nobody may work', () => {
  test.each([
    ['a live lane', { place: 'live-lane' }, []],
    ['the shoulder', { place: 'shoulder' }, ['fault-proved']],
    ['an electric vehicle', { vehicle: { ...car.vehicle, fuel: 'electric' } }, []],
  ])('%s: nothing is asked at the vehicle', (_, context, asked) => {
    const end = played({}, { ...car, ...context });
    expect(end.outcome).toBe('stopped');
    expect(end.asked.map(({ check }) => check)).toEqual(asked);
  });
});

describe('in words', () => {
  test('every step, answer, reason and caution has its words', () => {
    const draw = chance(8);
    for (let run = 0; run < 60; run += 1) {
      const { vehicle, context, answers } = drawFitting(draw);
      const { messages } = playFitting(chart, context, asGiven(answers, vehicle));
      expect(() => speaker.render(messages)).not.toThrow();
    }
    expect(() => speaker.render(played({}, {}).messages)).not.toThrow();
  });

  testWhatIsSaid({ chart, texts, speaker }, 'battery-out');
});
