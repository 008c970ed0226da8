/**
 * The cards of the counter and of fitting against the plain rules, and the rules themselves: every
 * line is reached, nothing is left undecided, nothing decided twice. No flow is asked.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bandOf, figureOf, loadLimit, type CounterContext } from './support/counter-readings.ts';
import {
  batteryRepeatedAnswers,
  batteryReturnAnswers,
  fittingRepeatedAnswers,
  judgeBattery,
  judgeFitting,
  judgeStarter,
  starterFittingAnswers,
  starterReturnAnswers,
  type BatteryReturn,
  type StarterFitting,
  type StarterReturn,
} from './support/counter-rules.ts';

interface CounterCard {
  readonly id: string;
  readonly flow: string;
  readonly locale: string;
  readonly context: CounterContext;
  readonly answers: Readonly<Record<string, string | readonly string[]>>;
  readonly accept: {
    readonly decision?: readonly string[];
    readonly outcome?: readonly string[];
    readonly reason?: readonly string[];
  };
  readonly forbid?: readonly string[];
}

type Listed = Readonly<Record<string, readonly string[]>>;

const cardsOf = (flow: string): readonly CounterCard[] =>
  JSON.parse(
    readFileSync(new URL(`cards/${flow}.json`, import.meta.url), 'utf8'),
  ) as readonly CounterCard[];

const starters = cardsOf('starter-return');
const batteries = cardsOf('battery-return');
const fittings = cardsOf('starter-fitting');
const named = (cards: readonly CounterCard[]): (readonly [string, CounterCard])[] =>
  cards.map((card) => [card.id, card] as const);

/** What is wanted for a check; what is not listed here needs only eyes and hands. */
const needs: Readonly<Record<string, readonly string[]>> = {
  plunger: ['bench-tester'],
  'bench-run': ['bench-tester'],
  'bench-supply': ['bench-tester'],
  'no-load-current': ['bench-tester'],
  'no-load-speed': ['speed-meter'],
  'warm-repeat': ['bench-tester'],
  'case-temperature': ['thermometer'],
  'received-volts': ['voltmeter'],
  'charge-take': ['charger'],
  'battery-recharged': ['voltmeter', 'charger'],
  'battery-load-test': ['load-tester'],
  'battery-tester': ['electronic-tester'],
  'cell-spread': ['hydrometer'],
  'stand-loss': ['voltmeter'],
  'bolts-tight': ['torque-wrench'],
  'stud-nuts': ['torque-wrench'],
};

/** Every answer of a check in order, as ids. */
function answersOf(card: CounterCard, check: string, listed: readonly string[]): string[] {
  const given = card.answers[check];
  const typed = given === undefined ? [] : typeof given === 'string' ? [given] : given;
  const celsius = card.answers['case-temperature'];
  return typed.flatMap((one) => {
    if (listed.includes(one)) return [one];
    // A date that has not come yet is refused, and nothing is known.
    if (check === 'sale-date') return [];
    const band = bandOf(
      check,
      one,
      card.context,
      typeof celsius === 'string' ? figureOf(celsius) : undefined,
    );
    // Without the label's rating a tester's figure says nothing.
    return check === 'battery-tester' && band === 'no-bound' ? [] : [band];
  });
}

/** A card's answers, the latest of each check, or `unanswered`. */
const once = (card: CounterCard, listed: Listed): Record<string, string> =>
  Object.fromEntries(
    Object.entries(listed).map(([check, ids]) => [
      check,
      answersOf(card, check, ids).at(-1) ?? 'unanswered',
    ]),
  );

/** Every answer of the checks that are answered again. */
const again = (card: CounterCard, listed: Listed): Record<string, readonly string[]> =>
  Object.fromEntries(
    Object.entries(listed).map(([check, ids]) => [check, answersOf(card, check, ids)]),
  );

const judgements = {
  'starter-return': (card: CounterCard) =>
    judgeStarter(once(card, starterReturnAnswers) as unknown as StarterReturn, {
      benchTester: card.context.kit?.includes('bench-tester') ?? false,
    }),
  'battery-return': (card: CounterCard) =>
    judgeBattery({
      ...once(card, batteryReturnAnswers),
      ...again(card, batteryRepeatedAnswers),
    } as unknown as BatteryReturn),
};

const fittingOf = (card: CounterCard): StarterFitting =>
  ({
    ...once(card, starterFittingAnswers),
    ...again(card, fittingRepeatedAnswers),
  }) as unknown as StarterFitting;

describe('what a card answers is an answer of the trade, with the kit at hand', () => {
  const listed: Readonly<Record<string, Listed>> = {
    'starter-return': starterReturnAnswers,
    'battery-return': { ...batteryReturnAnswers, ...batteryRepeatedAnswers },
    'starter-fitting': { ...starterFittingAnswers, ...fittingRepeatedAnswers },
  };
  test.each(named([...starters, ...batteries, ...fittings]))('%s', (_, card) => {
    const known = listed[card.flow]!;
    for (const check of Object.keys(card.answers)) {
      expect(Object.keys(known)).toContain(check);
      for (const id of answersOf(card, check, known[check]!)) {
        if (id !== 'no-bound') expect(known[check]).toContain(id);
      }
      const kit = card.context.kit ?? [];
      expect(needs[check]?.filter((tool) => !kit.includes(tool)) ?? [], check).toEqual([]);
    }
    for (const check of card.forbid ?? []) expect(Object.keys(known)).toContain(check);
  });
});

test('no id is given to two cards', () => {
  const cards = [...starters, ...batteries, ...fittings, ...cardsOf('battery-fitting')];
  const ids = cards.map(({ id }) => id);
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});

describe('every returned part is judged as the plain rules judge it', () => {
  test.each(named([...starters, ...batteries]))('%s', (_, card) => {
    const { decision, reason } = judgements[card.flow as keyof typeof judgements](card);
    expect(card.accept.decision).toEqual([decision]);
    expect(card.accept.reason).toEqual(expect.arrayContaining([...reason]));
  });
});

describe('every fitting comes to what the plain rules say', () => {
  test.each(named(fittings))('%s', (_, card) => {
    const judged = judgeFitting(fittingOf(card));
    expect(card.accept.outcome).toEqual([judged.outcome]);
    expect(card.accept.reason).toEqual('reason' in judged ? [judged.reason] : undefined);
  });
});

describe('no card lets a damaged or unseen part be run or charged', () => {
  const unfit = starters.filter(
    ({ answers }) => answers['stud'] !== 'sound' || answers['housing'] !== 'sound',
  );
  test.each(named(unfit))('%s', (_, card) => {
    expect(card.forbid).toEqual(expect.arrayContaining(['plunger', 'bench-run']));
    expect(card.answers).not.toHaveProperty('bench-run');
  });
  const harmed = batteries.filter(({ answers }) => answers['battery-look'] !== 'sound');
  test.each(named(harmed))('%s', (_, card) => {
    expect(card.forbid).toEqual(expect.arrayContaining(['charge-take', 'battery-load-test']));
    expect(card.answers).not.toHaveProperty('charge-take');
  });
});

/** One of each, by a fixed sequence of chance. */
function chance(seed: number): <T>(of: readonly T[]) => T {
  let state = seed;
  return (of) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return of[Math.floor((state / 2 ** 32) * of.length)]!;
  };
}

const anyOf = (pick: ReturnType<typeof chance>, listed: Listed): Record<string, string> =>
  Object.fromEntries(
    Object.entries(listed).map(([check, ids]) => [check, pick([...ids, 'unanswered'])]),
  );

/** A part as sold and sound, one thing after another made otherwise. */
const soundStarter: StarterReturn = {
  'part-number': 'matches-sale',
  'sale-proof': 'shown',
  'sale-date': 'warranty',
  claim: 'no-crank',
  handling: 'fitted',
  stud: 'sound',
  housing: 'sound',
  pinion: 'clean',
  soiling: 'dry',
  'suits-vehicle': 'suits',
  'heat-marks': 'none',
  'cranked-for': 'unanswered',
  'ring-teeth': 'unanswered',
  'drive-turn': 'one-way',
  plunger: 'throws-and-holds',
  'bench-run': 'even',
  'bench-supply': 'ready',
  'no-load-current': 'normal',
  'no-load-speed': 'normal',
  'warm-repeat': 'unanswered',
  'vehicle-proof': 'incomplete',
};

describe('the rules of a returned starter', () => {
  test('every combination of bench figures, and of what the vehicle shows, is decided', () => {
    const checks = [
      'plunger',
      'bench-run',
      'bench-supply',
      'no-load-current',
      'no-load-speed',
      'warm-repeat',
      'vehicle-proof',
    ] as const;
    const combinations = checks.reduce<Record<string, string>[]>(
      (all, check) =>
        all.flatMap((one) =>
          [...starterReturnAnswers[check], 'unanswered'].map((id) => ({ ...one, [check]: id })),
        ),
      [{}],
    );
    expect(combinations).toHaveLength(4 * 5 * 4 * 8 * 4 * 3 * 4);
    for (const one of combinations) {
      const { decision, reason } = judgeStarter({ ...soundStarter, ...one });
      expect(reason.length).toBeGreaterThan(0);
      const seen = Object.values(one);
      const borderline = seen.some((id) => id.includes('~'));
      // A part is declined on the bench for nothing but being good there.
      if (decision === 'decline') {
        expect(borderline).toBe(false);
        expect(one).toMatchObject({
          plunger: 'throws-and-holds',
          'bench-run': 'even',
          'bench-supply': 'ready',
          'no-load-current': 'normal',
        });
      }
    }
  });

  test('a reading too close to tell never fails a part by itself', () => {
    for (const check of ['no-load-current', 'no-load-speed', 'bench-supply'] as const) {
      for (const id of starterReturnAnswers[check].filter((one) => one.includes('~'))) {
        const { decision } = judgeStarter({ ...soundStarter, [check]: id });
        expect(decision).toBe('test-further');
      }
    }
  });

  test('each reason is given by some card', () => {
    const given = new Set(starters.flatMap(({ accept }) => accept.reason));
    const pick = chance(8);
    for (let turn = 0; turn < 20_000; turn += 1) {
      const part = { ...soundStarter, ...some(pick, starterReturnAnswers, 3) } as StarterReturn;
      for (const reason of judgeStarter(part, { benchTester: pick([true, true, false]) }).reason) {
        expect(given).toContain(reason);
      }
    }
  });
});

/** A few checks of a table answered by chance. */
function some(pick: ReturnType<typeof chance>, listed: Listed, count: number): object {
  const drawn = anyOf(pick, listed);
  const checks = Array.from({ length: count }, () => pick(Object.keys(listed)));
  return Object.fromEntries(checks.map((check) => [check, drawn[check]]));
}

describe('the rules of a returned battery', () => {
  const soundBattery: BatteryReturn = {
    'part-number': 'matches-sale',
    'sale-proof': 'shown',
    'sale-date': 'warranty',
    claim: 'goes-flat',
    handling: 'fitted',
    'battery-look': 'sound',
    posts: 'sound',
    electrolyte: 'covered',
    'suits-vehicle': 'suits',
    'case-temperature': 'usable',
    'received-volts': 'discharged',
    'charge-take': 'takes',
    'stand-loss': 'unanswered',
    'vehicle-proof': 'incomplete',
    'battery-recharged': ['full'],
    'battery-load-test': ['passed'],
    'battery-tester': ['strong'],
    'cell-spread': ['even'],
  };

  test('each reason is given by some card', () => {
    const given = new Set(batteries.flatMap(({ accept }) => accept.reason));
    const pick = chance(12);
    for (let turn = 0; turn < 20_000; turn += 1) {
      const repeats = Object.entries(batteryRepeatedAnswers).map(([check, ids]) => [
        check,
        Array.from({ length: pick([0, 1, 2]) }, () => pick<string>(ids)),
      ]);
      const part = {
        ...soundBattery,
        ...some(pick, batteryReturnAnswers, 3),
        ...(pick([true, false]) ? Object.fromEntries(repeats) : {}),
      } as BatteryReturn;
      const { reason } = judgeBattery(part);
      expect(reason.length).toBeGreaterThan(0);
      for (const one of reason) expect(given).toContain(one);
    }
  });

  test('a reading too close to tell never fails a battery by itself', () => {
    const borderline = {
      'battery-load-test': ['failed~passed'],
      'battery-recharged': ['low~full', 'low~full'],
      'cell-spread': ['even~recheck', 'recheck~uneven'],
    };
    for (const [check, read] of Object.entries(borderline)) {
      const { decision } = judgeBattery({ ...soundBattery, [check]: read });
      expect(decision).not.toBe('accept');
    }
    const loss = judgeBattery({ ...soundBattery, 'stand-loss': 'normal~high' });
    expect(loss).toEqual({ decision: 'decline', reason: ['no-fault-found'] });
  });

  test('the limit under load goes by the temperature of the case', () => {
    expect(loadLimit(40)).toBe(9.6);
    expect(loadLimit(21)).toBe(9.6);
    expect(loadLimit(13)).toBeCloseTo(9.45, 3);
    expect(loadLimit(-1)).toBeCloseTo(9.1, 3);
    expect(loadLimit(-18)).toBe(8.5);
  });
});

describe('the rules of a fitting', () => {
  const proved = fittingOf(fittings.find(({ id }) => id === 'fitted-and-proved')!);

  test('a safety step undone, and each answer that stops, stops there', () => {
    for (const step of ['fault-proved', 'secured', 'ground-lead-off', 'support', 'stud-dead']) {
      const undone = { ...proved, [step]: 'unanswered' } as StarterFitting;
      expect(judgeFitting(undone)).toEqual({ outcome: 'stopped', reason: step });
    }
    const stops = new Set(fittings.flatMap(({ accept }) => accept.reason ?? []));
    expect([...stops].sort()).toEqual([
      'bolts-by-hand',
      'bolts-tight',
      'fault-proved',
      'first-crank',
      'ground-lead-off',
      'leads-clear',
      'mating-face',
      'part-compare',
      'ring-teeth',
      'secured',
      'stud-dead',
      'stud-nuts',
      'support',
    ]);
  });

  test('nothing is proved with a proof reading left out', () => {
    const readings = ['first-crank', 'battery-crank', 'drop-positive', 'drop-ground', 'charging'];
    for (const step of [...readings, 'repeat-starts', 'lamps-clear']) {
      const left = { ...proved, [step]: 'unanswered' } as StarterFitting;
      expect(judgeFitting(left)).toEqual({ outcome: 'unproved' });
    }
    expect(judgeFitting({ ...proved, 'battery-rest': [] })).toEqual({ outcome: 'unproved' });
  });
});
