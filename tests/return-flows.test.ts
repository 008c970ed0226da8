/**
 * The flows of the counter, asked question by question, against the plain rules of
 * `support/counter-rules.ts`, over pairs of answers and at random; and what holds whatever comes
 * back. Their tables alone, over every combination: `decision-tables.test.ts`.
 */
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import {
  batteryRepeatedAnswers,
  batteryReturnAnswers,
  judgeBattery,
  judgeStarter,
  starterReturnAnswers,
  type BatteryReturn,
  type Decision,
  type StarterReturn,
} from './support/counter-rules.ts';
import { Counter, type Judged, type Returned } from './support/return-case.ts';

// Every two answers are some thousand cases, which a busy machine takes its time for.
vi.setConfig({ testTimeout: 240_000 });

type Listed = Readonly<Record<string, readonly string[]>>;

const starterAnswers: Listed = starterReturnAnswers;
const batteryAnswers: Listed = { ...batteryReturnAnswers, ...batteryRepeatedAnswers };
const repeated = Object.keys(batteryRepeatedAnswers);

const starters = new Counter('starter-return');
const batteries = new Counter('battery-return');

const last = (part: Returned, check: string): string => part[check]?.at(-1) ?? 'unanswered';

/** What the plain rules say of a starter; number that nobody read is one that can't be read. */
function ruleForStarter(part: Returned, benchTester = true): Decision {
  const latest = Object.keys(starterAnswers).map((check) => [check, last(part, check)]);
  return withNumber(part, () =>
    judgeStarter(Object.fromEntries(latest) as StarterReturn, { benchTester }),
  );
}

function ruleForBattery(part: Returned): Decision {
  const answers = Object.keys(batteryAnswers).map((check) => [
    check,
    repeated.includes(check) ? (part[check] ?? []) : last(part, check),
  ]);
  return withNumber(part, () => judgeBattery(Object.fromEntries(answers) as BatteryReturn));
}

function withNumber(part: Returned, judge: () => Decision): Decision {
  return last(part, 'part-number') === 'unanswered'
    ? { decision: 'test-further', reason: ['part-unidentified'] }
    : judge();
}

function expectAsRuled({ decision }: Judged, rule: Decision, part: Returned): void {
  const { decide, reason } = decision;
  expect(
    { decide, isRight: rule.reason.includes(reason) },
    `${reason}: ${JSON.stringify(part)}`,
  ).toEqual({ decide: rule.decision, isRight: true });
}

const goodStarter: Returned = {
  'part-number': ['matches-sale'],
  'sale-proof': ['shown'],
  'sale-date': ['warranty'],
  claim: ['no-crank'],
  handling: ['fitted'],
  stud: ['sound'],
  housing: ['sound'],
  pinion: ['clean'],
  soiling: ['dry'],
  'suits-vehicle': ['suits'],
  'heat-marks': ['none'],
  'drive-turn': ['one-way'],
  plunger: ['throws-and-holds'],
  'bench-run': ['even'],
  'bench-supply': ['ready'],
  'no-load-current': ['normal'],
  'no-load-speed': ['normal'],
  'warm-repeat': ['same'],
  'vehicle-proof': ['incomplete'],
};

const goodBattery: Returned = {
  'part-number': ['matches-sale'],
  'sale-proof': ['shown'],
  'sale-date': ['warranty'],
  claim: ['goes-flat'],
  handling: ['fitted'],
  'battery-look': ['sound'],
  posts: ['sound'],
  electrolyte: ['covered'],
  'suits-vehicle': ['suits'],
  'case-temperature': ['usable'],
  'received-volts': ['discharged'],
  'charge-take': ['takes'],
  'battery-recharged': ['full'],
  'battery-load-test': ['passed'],
  'battery-tester': ['strong'],
  'cell-spread': ['even'],
  'stand-loss': ['normal'],
  'vehicle-proof': ['incomplete'],
};

/** A part with some answers changed; `unanswered` takes one away. */
function changed(part: Returned, changes: readonly (readonly [string, string])[]): Returned {
  const others = changes.map(([check, answer]): [string, readonly string[]] => [
    check,
    answer === 'unanswered' ? [] : [answer],
  ]);
  return { ...part, ...Object.fromEntries(others) };
}

/** A part, and every other that differs from it in the answers to one check or two, each once. */
function* pairsFrom(base: Returned, listed: Listed): Generator<Returned> {
  const others = Object.entries(listed).map(([check, answers]) =>
    [...answers, 'unanswered']
      .filter((answer) => answer !== (base[check]?.[0] ?? 'unanswered'))
      .map((answer): readonly [string, string] => [check, answer]),
  );
  yield base;
  for (const one of others.flat()) yield changed(base, [one]);
  for (const [index, ones] of others.entries()) {
    for (const one of ones) {
      for (const other of others.slice(index + 1).flat()) yield changed(base, [one, other]);
    }
  }
}

describe('a starter', () => {
  test('good in everything, and every two answers that may differ from that', () => {
    const decided = new Set<number>();
    for (const part of pairsFrom(goodStarter, starterAnswers)) {
      const judged = starters.judgeAsked(part);
      expectAsRuled(judged, ruleForStarter(part), part);
      decided.add(judged.decision.line);
    }
    expectEveryLine(starters, decided, fc.sample(partOf(starterAnswers, goodStarter), byChance));
  });

  test('at random', () => {
    fc.assert(
      fc.property(partOf(starterAnswers, goodStarter), (part) => {
        expectAsRuled(starters.judgeTold(part), ruleForStarter(part), part);
      }),
      { numRuns: 500 },
    );
  });

  test('asked question by question comes to the same, with no question that changes nothing', () => {
    fc.assert(
      fc.property(partOf(starterAnswers, goodStarter), fc.boolean(), (part, benchTester) => {
        const kit = benchTester ? {} : { kit: ['speed-meter'] };
        const judged = starters.judgeAsked(part, kit);
        expectAsRuled(judged, ruleForStarter(part, benchTester), part);
        expectSound(starters, judged, ['handling', 'stud', 'housing', 'pinion', 'soiling']);
        const isSeenSound = last(part, 'stud') === 'sound' && last(part, 'housing') === 'sound';
        const ran = runs(starters, judged);
        if (!isSeenSound) expect(ran).toEqual([]);
        if (ran.length > 0) {
          const first = judged.asked.findIndex((check) => ran.includes(check));
          expect(judged.asked.slice(0, first)).toEqual(expect.arrayContaining(['stud', 'housing']));
          expect([...judged.cautions]).toContain('bench-jump');
          // What smells or looks burnt may smoke or burn once it is fed.
          const isBurnt = last(part, 'heat-marks') === 'burnt';
          expect(judged.cautions.has('burnt-winding')).toBe(isBurnt);
        }
      }),
      { numRuns: 800 },
    );
  });
});

describe('a starter on a bench that sags', () => {
  test('is judged by nothing that the weak bench showed of its motor', () => {
    const weak: Returned = {
      ...goodStarter,
      'bench-supply': ['low', 'ready'],
      'no-load-current': ['high', 'normal'],
    };
    const judged = starters.judgeTold(weak);
    expect(judged.decision).toMatchObject({ decide: 'decline', reason: 'no-fault-found' });
    expect(judged.asked).toEqual(expect.arrayContaining(['bench-supply', 'no-load-current']));
    // With nothing measured on the bench that was put right it is not taken back either.
    const unmeasured = starters.judgeTold({ ...weak, 'no-load-current': ['high'] });
    expect(unmeasured.decision.decide).toBe('test-further');
  });
});

describe('a battery', () => {
  test('good in everything, and every two answers that may differ from that', () => {
    const decided = new Set<number>();
    for (const one of pairsFrom(goodBattery, batteryAnswers)) {
      const part = asCharged(one);
      const judged = batteries.judgeAsked(part);
      expectAsRuled(judged, ruleForBattery(part), part);
      decided.add(judged.decision.line);
    }
    expectEveryLine(batteries, decided, fc.sample(batteryParts, byChance));
  });

  test('at random, with a second answer where one is asked for', () => {
    fc.assert(
      fc.property(batteryParts, (part) => {
        const rule = ruleForBattery(asWouldBeAsked(asTold(part)));
        expectAsRuled(batteries.judgeTold(part), rule, part);
      }),
      { numRuns: 500 },
    );
  });

  test('asked question by question comes to the same, with no question that changes nothing', () => {
    fc.assert(
      fc.property(batteryParts, (part) => {
        const consistent = asCharged(part);
        const judged = batteries.judgeAsked(consistent);
        expectAsRuled(judged, ruleForBattery(asWouldBeAsked(consistent)), consistent);
        expectSound(batteries, judged, ['handling', 'battery-look', 'posts']);
        const unfit = last(part, 'battery-look') !== 'sound';
        const strained = judged.asked.filter((check) =>
          batteries.chart.flow.checks[check]?.does.some((one) => ['charge', 'load'].includes(one)),
        );
        if (unfit) expect(strained).toEqual([]);
        if (strained.length > 0) expect([...judged.cautions]).toContain('battery-gas');
        if (judged.asked.includes('battery-load-test')) expectCharged(consistent);
      }),
      { numRuns: 800 },
    );
  });
});

describe('a battery of which nobody knows how warm it is', () => {
  const unknown: Returned = { ...goodBattery, 'case-temperature': [] };

  test('waits until it is known, whatever it shows under load, and is told why', () => {
    const waits = {
      decide: 'test-further',
      says: 'temperature-unknown',
      again: ['case-temperature'],
    };
    for (const load of ['passed', 'failed', 'failed~passed', 'unanswered']) {
      const part = changed(unknown, [['battery-load-test', load]]);
      expect(batteries.judgeAsked(part).decision).toMatchObject(waits);
    }
    // What was not charged is not loaded to find out.
    const low = batteries.judgeAsked({ ...unknown, 'battery-recharged': ['low'] });
    expect(low.decision).toMatchObject(waits);
    expect(low.asked).not.toContain('battery-load-test');
  });

  test('is not spared the wait that its temperature was found to need', () => {
    for (const warmth of ['too-cold', 'too-hot', 'too-cold~usable']) {
      const { decision, asked } = batteries.judgeAsked({
        ...unknown,
        'case-temperature': [warmth],
      });
      expect(decision.reason).toBe('wrong-temperature');
      expect(decision.says).toBeUndefined();
      expect(asked).not.toContain('battery-load-test');
    }
  });
});

/** Parts that are mostly good, so that the lines far down are reached as well. */
function partOf(listed: Listed, good: Returned): fc.Arbitrary<Returned> {
  return fc.record(
    Object.fromEntries(
      Object.entries(listed).map(([check, answers]) => [
        check,
        fc.oneof(
          { weight: 10, arbitrary: fc.constant(good[check] ?? []) },
          { weight: 3, arbitrary: fc.constantFrom(...answers).map((answer) => [answer]) },
          { weight: 1, arbitrary: fc.constant([]) },
        ),
      ]),
    ),
  );
}

const batteryParts = fc
  .tuple(
    partOf(batteryAnswers, goodBattery),
    fc.record(
      Object.fromEntries(
        Object.entries(batteryRepeatedAnswers).map(([check, answers]) => [
          check,
          fc.option(fc.constantFrom(...(answers as readonly string[])), { nil: undefined }),
        ]),
      ),
    ),
  )
  .map(([part, second]): Returned => {
    const twice = repeated.flatMap((check): [string, readonly string[]][] => {
      const [first] = part[check] ?? [];
      const again = second[check];
      return first === undefined || again === undefined ? [] : [[check, [first, again]]];
    });
    return { ...part, ...Object.fromEntries(twice) };
  });

/**
 * A second answer counts only where it is asked for: after a second charge that the first made
 * necessary, or after two tests that disagree.
 */
function asWouldBeAsked(part: Returned): Returned {
  let known: Returned = {
    ...part,
    ...Object.fromEntries(repeated.map((check) => [check, (part[check] ?? []).slice(0, 1)])),
  };
  for (;;) {
    const rule = ruleForBattery(known);
    const again = askedAgain(known, rule).find(
      (check) => (part[check]?.length ?? 0) > (known[check]?.length ?? 0),
    );
    if (again === undefined) return known;
    known = { ...known, [again]: part[again] ?? [] };
  }
}

/** What was told of a battery under load before it had to be charged again does not count. */
function asTold(part: Returned): Returned {
  if ((asWouldBeAsked(part)['battery-recharged']?.length ?? 0) < 2) return part;
  const anew = ['battery-load-test', 'battery-tester'].map((check) => [
    check,
    (part[check] ?? []).slice(1),
  ]);
  return { ...part, ...(Object.fromEntries(anew) as Returned) };
}

/** The checks that a decision asks for once more, in their order. */
function askedAgain(part: Returned, { decision, reason }: Decision): readonly string[] {
  if (decision !== 'test-further') return [];
  if (reason.includes('results-disagree')) return ['battery-load-test', 'battery-tester'];
  if (!reason.includes('charge-again')) return [];
  const isLow = last(part, 'charge-take') === 'takes' && last(part, 'battery-recharged') !== 'full';
  return isLow && (part['battery-recharged']?.length ?? 0) < 2
    ? ['battery-recharged']
    : ['cell-spread'];
}

/** What nobody asks of a battery is not answered either: a charged one is not charged. */
function asCharged(part: Returned): Returned {
  const isLeftOut =
    last(part, 'received-volts') === 'charged' || last(part, 'case-temperature') === 'too-cold';
  return isLeftOut ? { ...part, 'charge-take': [], 'battery-recharged': [] } : part;
}

/** A battery is only loaded when it came charged or was charged. */
function expectCharged(part: Returned): void {
  const isCharged = last(part, 'received-volts') === 'charged';
  expect(isCharged || last(part, 'charge-take') === 'takes').toBe(true);
}

function runs({ chart }: Counter, { asked }: Judged): readonly string[] {
  return asked.filter((check) => chart.flow.checks[check]?.does.includes('run'));
}

const paperReasons = ['not-the-part-sold', 'part-unidentified', 'no-proof-of-sale', 'out-of-term'];

/** What holds of every return: the look is taken, and nothing is asked twice but on purpose. */
function expectSound({ chart }: Counter, judged: Judged, look: readonly string[]): void {
  const { asked, decision, case: kase } = judged;
  for (const check of new Set(asked)) {
    const times = asked.filter((one) => one === check).length;
    const isAgain = chart.flow.decisions.some(({ again }) => again.includes(check));
    expect(times, check).toBeLessThanOrEqual(isAgain ? 3 : 1);
  }
  const said = (check: string): boolean => Array.isArray(kase.state.answers[check]?.at(-1));
  const isDated = kase.state.answers['sale-date']?.some(Array.isArray) === true;
  if (decision.decide === 'test-further' || !isDated) return;
  const isPaper = paperReasons.includes(decision.reason) && !asked.includes('claim');
  if (isPaper || decision.reason === 'wrong-advice') return;
  for (const check of look) {
    expect(asked, `${decision.reason} without ${check}`).toContain(check);
    expect(said(check) || typeof kase.state.answers[check]?.at(-1) === 'object', check).toBe(true);
  }
}

/** Further parts for the lines that two answers do not reach. */
const byChance = { numRuns: 3000, seed: 8 };

/** Every line of the table decides some part that is asked about, with or without the kit. */
function expectEveryLine(
  counter: Counter,
  decided: ReadonlySet<number>,
  further: readonly Returned[],
): void {
  const lines = counter.chart.flow.decisions.map((_, index) => index + 1);
  const left = new Set(lines.filter((line) => !decided.has(line)));
  for (const part of further) {
    if (left.size === 0) break;
    for (const kit of [{}, { kit: [] }]) left.delete(counter.judgeAsked(part, kit).decision.line);
  }
  expect([...left]).toEqual([]);
}
