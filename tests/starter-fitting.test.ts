/**
 * The fitting of a starter: its cards, every combination of steps against the plain rules, and what
 * must never happen on any path. Common practice, no source, unless a source is named.
 */
import { replayDecision } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import {
  fittingRepeatedAnswers,
  judgeFitting,
  starterFittingAnswers,
  type StarterFitting,
} from './support/counter-rules.ts';
import {
  chance,
  pick,
  playFitting,
  type Given,
  type PlayedFitting,
} from './support/fitting-play.ts';
import { testFittingCards } from './support/fitting-cards.ts';
import { testWhatIsSaid } from './support/said-of-steps.ts';

const { chart, texts, speaker } = testFittingCards('starter-fitting');
const { checks } = chart.flow;

/** A petrol car with a flooded battery, M10 bolts of class 8.8 into steel, a copper stud M8. */
const car = {
  place: 'workshop',
  temperature: 22,
  kit: ['voltmeter', 'torque-wrench', 'helper', 'stands', 'charger'],
  vehicle: {
    fuel: 'petrol',
    nominal: 12,
    cylinders: 4,
    displacement: 1.6,
    smartCharging: false,
    battery: { technology: 'flooded' },
  },
  bolt: { size: 'M10', class: '8.8', material: 'steel' },
  stud: { size: 'M8', material: 'copper' },
};

/** What a meter shows on that car for each band, and between two. */
const figures: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'stud-dead': { dead: 0.01, 'dead~live': 0.5, live: 12.5 },
  'bolts-tight': {
    under: 20,
    'under~right': 37.8,
    right: 45,
    'right~over': 50.5,
    over: 88,
    'no-bound': 45,
  },
  'stud-nuts': {
    under: 4,
    'under~right': 8,
    right: 10,
    'right~over': 12,
    over: 22,
    'no-bound': 10,
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
  'battery-crank': { collapsed: 5, 'collapsed~low': 7.5, low: 8.8, 'low~good': 9.6, good: 10.6 },
  'drop-positive': { good: 0.12, 'good~high': 0.3, high: 1.1 },
  'drop-ground': { good: 0.12, 'good~high': 0.3, high: 1.1 },
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
};

const listed: Readonly<Record<string, readonly string[]>> = {
  ...starterFittingAnswers,
  ...fittingRepeatedAnswers,
};

/** What is answered once more after the first of two answers. */
const putRight: Readonly<Record<string, readonly string[]>> = {
  'bolts-tight': ['under', 'under~right'],
  'stud-nuts': ['under', 'under~right'],
  'battery-rest': ['flat', 'flat~discharged', 'discharged', 'discharged~ready'],
};

/** Bands of a reading where there is a figure to hold it to, or where there is none. */
const isBounded = (id: string, hasBound: boolean): boolean => (id === 'no-bound') !== hasBound;

/** A fitting by chance, most of it as it should be, on a car of which more or less is known. */
function drawFitting(draw: () => number): {
  readonly context: Readonly<Record<string, unknown>>;
  readonly answers: Readonly<Record<string, readonly string[]>>;
} {
  const { bolt, stud, ...shared } = car;
  const known = { 'bolts-tight': draw() < 0.8, 'stud-nuts': draw() < 0.8, charging: draw() < 0.8 };
  const context = {
    ...shared,
    vehicle: { ...car.vehicle, smartCharging: !known.charging },
    ...(known['bolts-tight'] ? { bolt } : {}),
    ...(known['stud-nuts'] ? { stud } : {}),
  };
  const drawn = (step: string, ids: readonly string[]): readonly string[] => {
    const hasBound = (known as Readonly<Record<string, boolean>>)[step] ?? true;
    const possible = ids.filter((id) => isBounded(id, hasBound) || !ids.includes('no-bound'));
    const good = wanted[step]!;
    const one = (share: number): string =>
      draw() < share ? (hasBound ? good : (possible[0] ?? good)) : pick(draw, possible);
    const first = one(0.9);
    if (draw() < 0.03) return [];
    const isAgain = putRight[step]?.includes(first) === true && draw() < 0.7;
    return isAgain ? [first, one(0.6)] : [first];
  };
  const answers = Object.fromEntries(
    Object.entries(listed).map(([step, ids]) => [step, drawn(step, ids)]),
  );
  return { context, answers };
}

/** What is wanted of each step. */
const wanted: Readonly<Record<string, string>> = {
  ...Object.fromEntries(Object.entries(listed).map(([step, ids]) => [step, ids[0]!])),
  support: 'stands',
  'bolts-tight': 'right',
  'stud-nuts': 'right',
  'battery-rest': 'ready',
  'battery-crank': 'good',
  charging: 'right',
};

const asGiven = (answers: Readonly<Record<string, readonly string[]>>) =>
  Object.fromEntries(
    Object.entries(answers).map(([step, ids]) => [
      step,
      ids.map((id): Given => figures[step]?.[id] ?? id),
    ]),
  );

const asRules = (answers: Readonly<Record<string, readonly string[]>>): StarterFitting =>
  Object.fromEntries(
    Object.entries(answers).map(([step, ids]) => [
      step,
      step in fittingRepeatedAnswers ? ids : (ids.at(-1) ?? 'unanswered'),
    ]),
  ) as unknown as StarterFitting;

const heldStart = ['first-crank', 'battery-crank', 'drop-positive', 'drop-ground', 'repeat-starts'];

/** What must hold on any path, whatever was answered. */
function expectSafe(
  { asked, saidBefore }: PlayedFitting,
  answers: Readonly<Record<string, readonly string[]>>,
): void {
  const order = asked.map(({ check }) => check);
  const said = (check: string): readonly string[] => saidBefore.get(check) ?? [];
  for (const check of order) {
    if (heldStart.includes(check)) {
      expect(said(check), check).toEqual(expect.arrayContaining(['vehicle-moves', 'crank-limit']));
    }
    const isBelow = checks[check]?.at === 'below';
    if (isBelow && answers['support']?.[0] !== 'not-needed') {
      expect(said(check), check).toContain('under-vehicle');
    }
  }
  for (const check of ['battery-crank', 'drop-positive', 'drop-ground', 'charging']) {
    if (order.includes(check)) expect(said(check), check).toContain('moving-parts');
  }
  for (const check of ['ground-lead-off', 'leads-off']) {
    if (order.includes(check)) expect(said(check), check).toContain('short-circuit');
  }
  if (order.includes('starter-out')) expect(said('starter-out')).toContain('hot-heavy');
  if (order.includes('stud-nuts')) expect(said('stud-nuts')).toContain('soft-stud');
  if (order.filter((check) => check === 'battery-rest').length > 1) {
    expect(said('battery-rest')).toContain('battery-gas');
  }
  // Nobody goes beneath it, no nut is touched and nothing is started before that is safe.
  const latest = (step: string): string | undefined => answers[step]?.at(-1);
  if (order.includes('stud-dead')) {
    expect(['not-needed', 'stands', 'ramps', 'lift']).toContain(latest('support'));
  }
  if (order.includes('leads-off')) {
    expect([latest('secured'), latest('ground-lead-off'), latest('stud-dead')]).toEqual([
      'done',
      'done',
      'dead',
    ]);
  }
  if (order.includes('first-crank')) expect(latest('leads-clear')).not.toBe('touching');
}

test(
  'any fitting comes to what the plain rules say, and none goes past what is safe',
  { timeout: 240_000 },
  () => {
    const draw = chance(2026);
    const outcomes = new Map<string, number>();
    for (let run = 0; run < 400; run += 1) {
      const { context, answers } = drawFitting(draw);
      const played = playFitting(chart, context, asGiven(answers));
      const judged = judgeFitting(asRules(answers));
      const shown = JSON.stringify({ context, answers });
      expect(played.outcome, shown).toBe(judged.outcome);
      if ('reason' in judged) expect(played.reason, shown).toBe(judged.reason);
      expectSafe(played, answers);
      const key = `${played.outcome} ${played.reason}`;
      outcomes.set(key, (outcomes.get(key) ?? 0) + 1);
    }
    // Every line of the table was met on the way.
    const lines = chart.flow.decisions.map(({ decide, reason }) => `${decide} ${reason}`);
    expect([...outcomes.keys()].sort()).toEqual([...new Set(lines)].sort());
  },
);

const good = Object.fromEntries(Object.entries(wanted).map(([step, id]) => [step, [id]]));
const played = (
  answers: Readonly<Record<string, readonly Given[]>>,
  context: Readonly<Record<string, unknown>> = car,
) => playFitting(chart, context, { ...asGiven(good), ...answers });

describe('torque', () => {
  test('a reading is shown between the bounds of its bolt, with where they come from', () => {
    const { messages } = played({});
    const reading = messages.find(
      (message) => message.kind === 'reading' && message.check === 'bolts-tight',
    );
    // ISO 898-1 (from memory): 33.6 kN of proof load, nut factor 0.15 to 0.20.
    expect(reading).toMatchObject({ band: 'right', borderline: false });
    const bounds = reading?.kind === 'reading' ? reading.bounds : [];
    expect(bounds.map(({ low }) => Math.round(low * 10) / 10)).toEqual([37.8, 50.5]);
    expect(bounds[0]?.source.text).toContain('ISO 898-1');
  });

  test.each([
    ['33 ft-lb', 'right'],
    ['400 lbf in', 'right'],
    ['45 Nm', 'right'],
    ['15 ft lb', 'under'],
    ['70 lb ft', 'over'],
  ])('typed as %s it is %s', (typed, band) => {
    const card = {
      id: 'typed',
      flow: 'starter-fitting',
      locale: 'en',
      context: car,
      answers: { ...asCard({}), 'bolts-tight': typed },
      accept: {},
      forbid: [],
    };
    const { outcome, reason } = replayDecision(chart, speaker, card);
    expect(outcome === 'proved' ? 'right' : reason).toBe(
      band === 'right' ? 'right' : 'bolts-tight',
    );
  });

  test("the maker's figure goes before the computed one, also where the bolt is not known", () => {
    const { bolt, ...unknown } = car;
    const limits = { 'bolts-tight': { low: 65, high: 80, unit: 'N.m' } };
    for (const context of [car, unknown]) {
      const own = { ...context, part: { limits } };
      expect(played({ 'bolts-tight': [72] }, own)).toMatchObject({ outcome: 'proved' });
      expect(played({ 'bolts-tight': [45, 46] }, own)).toMatchObject({ reason: 'bolts-tight' });
      expect(played({ 'bolts-tight': [95] }, own)).toMatchObject({ reason: 'bolts-tight' });
    }
    const inPounds = { 'stud-nuts': { low: 140, high: 180, unit: '[lbf_av].[in_i]' } };
    const own = { ...car, part: { limits: inPounds } };
    expect(bolt.size).toBe('M10');
    expect(played({ 'stud-nuts': [18] }, own)).toMatchObject({ outcome: 'proved' });
    expect(played({ 'stud-nuts': [10, 11] }, own)).toMatchObject({ reason: 'stud-nuts' });
  });

  test('into aluminium what is right for steel stops', () => {
    const aluminium = { ...car, bolt: { ...car.bolt, material: 'aluminium' } };
    expect(played({ 'bolts-tight': [40] }, aluminium)).toMatchObject({ outcome: 'proved' });
    expect(played({ 'bolts-tight': [49] }, aluminium)).toMatchObject({ reason: 'bolts-tight' });
  });

  test('of a bolt nobody knows, a figure counts as good and is said to be so', () => {
    const { bolt, ...unknown } = car;
    const { outcome, messages } = played(
      { 'bolts-tight': [bolt.size === 'M10' ? 48 : 0] },
      unknown,
    );
    expect(outcome).toBe('proved');
    const reading = messages.filter(
      (message) => message.kind === 'reading' && message.check === 'bolts-tight',
    );
    expect(speaker.render(reading)).toEqual([
      expect.objectContaining({ text: expect.stringContaining('counts as good') as unknown }),
    ]);
  });
});

/** The same answers as a card holds them: figures with their unit. */
function asCard(answers: Readonly<Record<string, readonly Given[]>>): Record<string, string> {
  const all = { ...asGiven(good), ...answers };
  return Object.fromEntries(
    Object.entries(all).map(([step, given]) => {
      const form = checks[step]?.form;
      const unit = form?.kind === 'reading' ? ` ${form.unit}` : '';
      return [step, `${String(given[0])}${unit}`];
    }),
  );
}

describe('charging that the vehicle steers', () => {
  const { smartCharging, ...vehicle } = car.vehicle;
  const unknown = { ...car, vehicle };

  test('is asked about only where the figure is not right for a plain regulator', () => {
    expect(smartCharging).toBe(false);
    const right = played({}, unknown);
    expect(right.asked.map(({ check }) => check)).not.toContain('charging-kind');
    const low = played({ charging: [12.8], 'charging-kind': ['steered'] }, unknown);
    expect(low.asked.map(({ check }) => check)).toContain('charging-kind');
    expect(low.outcome).toBe('proved');
    const plain = played({ charging: [12.8], 'charging-kind': ['plain'] }, unknown);
    expect(plain).toMatchObject({ outcome: 'unproved', reason: 'charging' });
    const nobodyKnows = played({ charging: [12.8] }, unknown);
    expect(nobodyKnows).toMatchObject({ outcome: 'unproved', reason: 'charging' });
  });

  test('low just after a charge is read again after 20 minutes', () => {
    expect(played({ charging: [13.2, 14.1] })).toMatchObject({ outcome: 'proved' });
    expect(played({ charging: [13.2, 13.2] })).toMatchObject({ reason: 'charging' });
  });
});

describe('what is known already is not asked, and what is not is', () => {
  test('of a car of which everything is known only the steps themselves are asked', () => {
    expect(played({}).asked.map(({ check }) => check)).toEqual(Object.keys(starterFittingSteps()));
  });

  test('of one of which nothing is known, voltage, fuel, bolts, stud and air are asked', () => {
    const asked = played({}, {}).asked.map(({ check }) => check);
    for (const fact of ['place', 'drive', 'vehicle-voltage', 'bolt-size', 'stud-size']) {
      expect(asked).toContain(fact);
    }
    expect(asked).toContain('air-temperature');
    // Of a bolt whose size nobody knows its class says nothing.
    expect(asked).not.toContain('bolt-class');
  });
});

/** The steps in the order of the work, as the trade lists them. */
function starterFittingSteps(): Readonly<Record<string, true>> {
  const steps = `fault-proved secured settings-kept ground-lead-off support stud-dead leads-off
    starter-out ring-teeth part-compare mating-face bolts-by-hand bolts-tight stud-nuts leads-clear
    ground-lead-on battery-rest first-crank battery-crank drop-positive drop-ground charging
    repeat-starts lamps-clear`;
  return Object.fromEntries(steps.split(/\s+/u).map((step) => [step, true]));
}

describe('where nobody may work', () => {
  test.each([
    ['a live lane', { place: 'live-lane' }, []],
    ['the shoulder', { place: 'shoulder' }, ['fault-proved']],
    ['a full hybrid', { vehicle: { ...car.vehicle, hybrid: 'full' } }, []],
    ['an electric vehicle', { vehicle: { ...car.vehicle, fuel: 'electric' } }, []],
  ])('%s: nothing is asked at the vehicle, and it says why', (_, context, asked) => {
    const end = played({}, { ...car, ...context });
    expect(end.outcome).toBe('stopped');
    expect(end.asked.map(({ check }) => check)).toEqual(asked);
    const [decision] = end.messages.filter((message) => message.kind === 'decision');
    expect(decision?.stops).toHaveLength(1);
    const rendered = JSON.stringify(speaker.render(decision ? [decision] : []));
    expect(rendered).toContain(texts.stops[decision?.stops[0] ?? '']!);
  });

  test('a nearly empty battery in frost is neither charged nor cranked with until it was seen', () => {
    const frost = { ...car, temperature: -9 };
    const unseen = played({ 'battery-rest': [11.5, 12.7] }, frost);
    expect(unseen).toMatchObject({ outcome: 'unproved', reason: 'battery-rest' });
    const asked = unseen.asked.map(({ check }) => check);
    expect(asked.at(-1)).toBe('battery-look');
    expect(asked.filter((check) => check === 'battery-rest')).toHaveLength(1);
    const frozen = played({ 'battery-rest': [11.5, 12.7], 'battery-look': ['frozen'] }, frost);
    expect(frozen).toMatchObject({ outcome: 'unproved', reason: 'battery-rest' });
    const seen = played({ 'battery-rest': [11.5, 12.7], 'battery-look': ['sound'] }, frost);
    expect(seen.outcome).toBe('proved');
  });

  test('what is half a volt or more on the stud of a truck is not halved away', () => {
    const truck = { ...car, vehicle: { ...car.vehicle, fuel: 'diesel', nominal: 24 } };
    expect(played({ 'stud-dead': [0.8] }, truck)).toMatchObject({ reason: 'stud-dead' });
    expect(played({ 'stud-dead': [0.5] }, truck)).toMatchObject({ reason: 'stud-dead' });
  });
});

describe('in words', () => {
  test('every step, answer, reason and caution has its words', () => {
    const draw = chance(7);
    for (let run = 0; run < 60; run += 1) {
      const { context, answers } = drawFitting(draw);
      const { messages } = playFitting(chart, context, asGiven(answers));
      expect(() => speaker.render(messages)).not.toThrow();
    }
    expect(() => speaker.render(played({}, {}).messages)).not.toThrow();
  });

  testWhatIsSaid({ chart, texts, speaker }, 'leads-off');
});
