/**
 * What holds for every case of the shipped flow, whatever comes in and in whatever order.
 */
import {
  foldCase,
  optionsOf,
  positionOf,
  type AskMessage,
  type Case,
  type CaseEvent,
  type Check,
  type Input,
  type Step,
} from '@keyturn/core';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
// What is believed is told rounded; its last digits are only to be had within.
import { assess } from '../packages/core/src/case/assessment.ts';
import { noStart } from './support/no-start.ts';
import { awaits, messagesOf, next, open, start, take } from './support/play.ts';

// Each test plays many cases through, which a machine busy with other tests may take longer over.
vi.setConfig({ testTimeout: 300_000 });

const { chart } = noStart;
const { flow } = chart;
const checks = Object.values(flow.checks);

const pick = <Value>(values: readonly Value[]): fc.Arbitrary<Value> => fc.constantFrom(...values);

const context = fc.record(
  {
    vehicle: fc.record(
      {
        fuel: pick(['petrol', 'diesel']),
        transmission: pick(['manual', 'automatic']),
        ignition: pick(['key', 'button']),
        nominal: pick([12, 24]),
        hybrid: pick(['none', 'none', 'mild', 'full']),
        smartCharging: fc.boolean(),
      },
      { requiredKeys: [] },
    ),
    temperature: fc.integer({ min: -40, max: 50 }),
    coldest: fc.integer({ min: -40, max: 50 }),
    kit: fc.subarray([
      'voltmeter',
      'test-lamp',
      'clamp-meter',
      'load-tester',
      'electronic-tester',
      'boost-source',
      'charger',
      'code-reader',
      'second-key',
      'helper',
      'hand-tools',
    ]),
    place: pick(['live-lane', 'shoulder', 'parking', 'home', 'workshop', 'home', 'workshop']),
    role: pick(['driver', 'dispatcher', 'mechanic', 'technician']),
  },
  { requiredKeys: [] },
);

/** Figures that a meter can show, and those near the bounds of the trade. */
const figures: Readonly<Record<string, fc.Arbitrary<number>>> = {
  V: fc.oneof(fc.double({ min: 0, max: 18, noNaN: true }), pick([0.2, 0.5, 9.6, 12, 12.4, 12.6])),
  A: fc.integer({ min: 0, max: 900 }),
  Cel: fc.integer({ min: -50, max: 60 }),
  a: fc.integer({ min: 0, max: 20 }),
};

function answerTo(
  check: Check,
): fc.Arbitrary<Extract<Input, { type: 'answers' }>['answers'][number]> {
  const { id, form } = check;
  const options = optionsOf(check);
  const one = pick(options).map((option) => ({ check: id, value: [option] }));
  if (form.kind === 'choice' && form.several) {
    return fc.subarray([...options], { minLength: 1 }).map((some) => ({
      check: id,
      value: some.length > 1 ? some.filter((x) => x !== 'none') : some,
    }));
  }
  if (form.kind !== 'reading') return one;
  const { unit } = form;
  const figure = figures[unit] ?? fc.double({ min: 0, max: 20, noNaN: true });
  const read = fc
    .tuple(figure, fc.option(pick([0.01, 0.1]), { nil: undefined }))
    .map(([value, resolution]) => ({
      check: id,
      value: { value, unit, ...(resolution === undefined ? {} : { resolution }) },
    }));
  return fc.oneof({ weight: 3, arbitrary: read }, { weight: 1, arbitrary: one });
}

const anyAnswer = pick(checks).chain(answerTo);
const valid: fc.Arbitrary<Input> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc
      .array(anyAnswer, { minLength: 1, maxLength: 3 })
      .map((answers) => ({ type: 'answers' as const, answers })),
  },
  {
    weight: 2,
    arbitrary: anyAnswer.map((answer) => ({ type: 'correction' as const, answers: [answer] })),
  },
  {
    weight: 3,
    arbitrary: pick([
      'dont-know',
      'cannot',
      'why',
      'back',
      'repeat',
      'person',
      'stop',
    ] as const).map((talk) => ({ type: 'talk' as const, talk })),
  },
  {
    weight: 4,
    arbitrary: pick<Input>([
      { type: 'confirm' },
      { type: 'resume' },
      { type: 'tick' },
      { type: 'waited' },
    ]),
  },
  {
    weight: 1,
    arbitrary: pick(Object.keys(flow.interrupts)).map((interrupt) => ({
      type: 'interrupt' as const,
      interrupt,
    })),
  },
  {
    weight: 1,
    arbitrary: pick(Object.keys(flow.interrupts)).map((interrupt) => ({
      type: 'withdraw' as const,
      interrupt,
    })),
  },
  { weight: 1, arbitrary: context.map((set) => ({ type: 'context' as const, set })) },
);

/** Names that every object has, and the like: what a table must not take for one of its own. */
const name = fc.oneof(
  pick(['constructor', 'toString', '__proto__', 'valueOf', '', ' ', 'scene', 'battery-rest']),
  fc.string({ maxLength: 90 }),
);
/** Inputs of the right shape that say nothing right. */
const nonsense: fc.Arbitrary<unknown> = fc.oneof(
  fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
  fc.record({
    type: pick(['answers', 'correction']),
    answers: fc.array(
      fc.record({
        check: name,
        value: fc.oneof(
          fc.array(name, { minLength: 1, maxLength: 3 }),
          fc.record({
            value: fc.double(),
            unit: fc.oneof(name, pick(['V', 'A', 'mV', '[degF]', 'Cel', 'Ohm'])),
            resolution: fc.oneof(fc.constant(undefined), fc.double()),
          }),
        ),
      }),
      { maxLength: 3 },
    ),
  }),
  fc.record({ type: fc.constant('interrupt'), interrupt: name }),
  fc.record({ type: fc.constant('context'), set: fc.dictionary(name, fc.anything()) }),
  fc.record({ type: fc.constant('talk'), talk: name }),
);

/** Minutes that pass before each turn. */
const pause = fc.oneof({ weight: 5, arbitrary: fc.constant(0) }, fc.integer({ min: 0, max: 300 }));
const anyTurn = fc.record({
  input: fc.oneof({ weight: 4, arbitrary: valid }, { weight: 1, arbitrary: nonsense }),
  pause,
});

interface Told {
  readonly step: Step;
  readonly input: unknown;
}

/** Every turn of a case, with the events of all of them. */
function playAll(
  opened: Step,
  turns: readonly { readonly input: unknown; readonly pause: number }[],
): { readonly told: readonly Told[]; readonly events: readonly CaseEvent[]; readonly last: Case } {
  let step = opened;
  let time = Date.parse(start);
  const told: Told[] = [{ step, input: undefined }];
  const events = [...step.events];
  for (const { input, pause: minutes } of turns) {
    time += minutes * 60_000;
    step = next(step.case, input, new Date(time).toISOString());
    told.push({ step, input });
    events.push(...step.events);
  }
  return { told, events, last: step.case };
}

describe('whatever comes in', () => {
  test('a turn never throws, and a refused one leaves the case as it is', () => {
    fc.assert(
      fc.property(context, fc.array(anyTurn, { maxLength: 25 }), (known, turns) => {
        let before: Case | undefined;
        for (const { step } of playAll(open(known), turns).told) {
          if (messagesOf(step, 'refused').length > 0) {
            expect(step.case).toBe(before);
            expect(step.events).toEqual([]);
          }
          before = step.case;
        }
      }),
      { numRuns: 300 },
    );
  });

  test('an input that is nothing of the kind is refused', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        const { case: kase } = open();
        const step = next(kase, input);
        expect(step.messages.map(({ kind }) => kind)).toEqual(['refused']);
        expect(step.case).toBe(kase);
      }),
      { numRuns: 1000 },
    );
  });

  test('a name that nothing has is refused', () => {
    fc.assert(
      fc.property(nonsense, (input) => {
        const { case: kase } = open();
        const step = next(kase, input);
        if (step.case !== kase) expect(step.events).not.toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });

  test('the events make the same case again, and saving it changes nothing', () => {
    fc.assert(
      fc.property(context, fc.array(anyTurn, { maxLength: 25 }), (known, turns) => {
        const { events, last } = playAll(open(known), turns);
        expect(foldCase(chart, events)).toEqual(last);
        expect(JSON.parse(JSON.stringify(last))).toEqual(last);
        expect(foldCase(chart, JSON.parse(JSON.stringify(events)) as CaseEvent[])).toEqual(last);
      }),
      { numRuns: 200 },
    );
  });

  test('a case restored from JSON goes on as if it had never been put away', () => {
    fc.assert(
      fc.property(context, fc.array(valid, { maxLength: 15 }), valid, (known, inputs, input) => {
        const { case: kase } = take(open(known), ...inputs);
        const restored = JSON.parse(JSON.stringify(kase)) as Case;
        const [kept, again] = [next(kase, input), next(restored, input)];
        expect(again.messages).toEqual(kept.messages);
        expect(again.case).toEqual(kept.case);
      }),
      { numRuns: 200 },
    );
  });

  test('going back at once gives the answers, and what is believed, as they were', () => {
    fc.assert(
      fc.property(
        context,
        fc.array(valid, { maxLength: 12 }),
        anyAnswer,
        (known, inputs, answer) => {
          const before = take(open(known), ...inputs);
          if (before.case.state.verdict !== null) return;
          const after = next(before.case, { type: 'answers', answers: [answer] });
          const [event] = after.events;
          if (event?.type !== 'answered' && event?.type !== 'corrected') return;
          // What is told of a list in passing answers nothing, and going back keeps it.
          if (event.type === 'answered' && event.isPart) return;
          const back = next(after.case, { type: 'talk', talk: 'back' });
          expect(back.case.state.answers).toEqual(before.case.state.answers);
          expect(back.case.state.context).toEqual(before.case.state.context);
          expect(back.case.state.leaders).toEqual(before.case.state.leaders);
        },
      ),
      { numRuns: 200 },
    );
  });
});

/** More turns than any case needs: each check twice, each with a confirmation and a wait. */
const most = 4 * checks.length;

/** One input that answers, declines, confirms or waits for whatever stands before the case. */
function onward(step: Step, given: { readonly answer: (check: Check) => Input }): Input {
  const position = positionOf(step.case);
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting === 'wait') return { type: 'waited' };
  if (position.awaiting === 'resume') return { type: 'resume' };
  const check = position.awaiting === 'answer' ? flow.checks[position.check] : undefined;
  return check === undefined ? { type: 'tick' } : given.answer(check);
}

describe('every case', () => {
  test('comes to its end, however its questions are answered or declined', () => {
    fc.assert(
      fc.property(context, fc.gen(), (known, gen) => {
        let step = open(known);
        for (let turns = 0; awaits(step) !== 'nothing'; turns += 1) {
          expect(turns).toBeLessThan(most);
          step = take(
            step,
            onward(step, {
              answer: (check) =>
                gen(fc.integer, { min: 0, max: 3 }) === 0
                  ? {
                      type: 'talk',
                      talk: gen(pick<'dont-know' | 'cannot'>, ['dont-know', 'cannot']),
                    }
                  : { type: 'answers', answers: [gen(answerTo, check)] },
            }),
          );
          expect(messagesOf(step, 'refused').filter(({ code }) => code !== 'implausible')).toEqual(
            [],
          );
          if (messagesOf(step, 'refused').length > 0) {
            step = take(step, { type: 'talk', talk: 'cannot' });
          }
        }
        expect(step.case.state.outcome).not.toBe(null);
        expect(step.case.state.verdict).not.toBe(null);
      }),
      { numRuns: 300 },
    );
  });

  test('believes the same in whatever order unasked answers come', () => {
    // What is asked after the verdict follows the work; what is done again follows a change.
    const until = flow.stages.findIndex(({ id }) => id === flow.verdictAfter) + 1;
    const diagnosing = new Set(flow.stages.slice(0, until).flatMap(({ checks: ids }) => ids));
    const free = checks.filter(
      ({ id, again, writes, sets }) =>
        diagnosing.has(id) &&
        again.length === 0 &&
        writes === undefined &&
        Object.keys(sets).length === 0,
    );
    const some = fc
      .uniqueArray(pick(free), { minLength: 2, maxLength: 6, selector: ({ id }) => id })
      .chain((chosen) => fc.tuple(...chosen.map(answerTo)))
      .chain((given) =>
        fc.tuple(
          fc.constant(given),
          fc.shuffledSubarray(given, { minLength: given.length, maxLength: given.length }),
        ),
      );
    fc.assert(
      fc.property(context, some, (known, [one, other]) => {
        const asAnswers = (answers: typeof one): Input => ({ type: 'answers', answers });
        const first = take(open({ ...known, place: 'home' }), asAnswers(one));
        const second = take(open({ ...known, place: 'home' }), asAnswers(other));
        if (first.events.length === 0) return;
        const believed = beliefs(second);
        for (const [fault, share] of beliefs(first)) {
          expect(Math.abs(share - (believed.get(fault) ?? NaN))).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 300 },
    );
  });
});

/** The share of each fault, to the last digit: the messages round it. */
function beliefs({ case: kase }: Step): ReadonlyMap<string, number> {
  return new Map(assess(flow, kase.state).ranking);
}

type Answers = Readonly<Record<string, readonly unknown[]>>;

/** What was last said of a check: choices, a figure, or nothing. */
function lastSaid(answers: Answers, check: string): unknown {
  return (answers[check] ?? []).findLast((answer) => typeof answer === 'object');
}

/**
 * The hard stops once more, from what was said alone and without the conditions of the flow: what
 * a check does and where it is done is all that is taken from there.
 */
function mayNotAsk(kase: Case, { id, does, at }: Check): boolean {
  const { answers, context: known, raised } = kase.state;
  const said = (check: string, ...among: string[]): boolean => {
    const last = lastSaid(answers, check);
    return Array.isArray(last) && last.some((choice) => among.includes(choice as string));
  };
  const isSaid = (check: string): boolean => lastSaid(answers, check) !== undefined;
  const is = (path: string, ...among: unknown[]): boolean => among.includes(known[path]);
  const held = does.includes('held-start');
  const loads = does.some((what) => ['boost', 'charge', 'load'].includes(what));
  const toVehicle = at !== 'memory' && !['dash', 'headlamps'].includes(id);

  if (is('place', 'live-lane') || said('scene', 'unsafe')) return !['scene', 'place'].includes(id);
  if (is('place', 'shoulder') && toVehicle) return true;
  const stranded = is('role', 'driver') && !is('place', 'home', 'workshop');
  if (id === 'tap' && (is('role', 'dispatcher') || stranded)) return true;
  const smelt = said('flooded-smell', 'yes') || raised.includes('fuel-leak');
  if (smelt && ['spark', 'tap'].includes(id)) return true;
  if (said('fuel-level', 'wrong-fuel') && (held || id === 'pump-sound') && toVehicle) return true;
  const hybrid = is('vehicle.hybrid', 'full') || raised.includes('high-voltage');
  if (hybrid && does.includes('starter')) return true;

  const unfit =
    said('battery-look', 'frozen', 'swollen', 'cracked', 'leaking') ||
    raised.includes('swollen-or-leaking-battery');
  // 11.8 V of a 12 V battery; a tenth below it no meter errs.
  const rest = lastSaid(answers, 'battery-rest') as { value?: number; unit?: string } | undefined;
  const batteries = is('vehicle.nominal', 24) ? 2 : 1;
  const flat = rest?.unit === 'V' && (rest.value ?? Infinity) < 11.7 * batteries;
  const cold = Number(known['coldest'] ?? known['temperature'] ?? Infinity) <= -5;
  const frozen = !isSaid('battery-look') && (flat || said('headlamps', 'no-light')) && cold;
  if ((unfit || frozen) && (loads || (held && toVehicle))) return true;
  const water = said('history', 'water') && !said('turn-engine', 'turns');
  const stuck = said('selector', 'in-gear') || said('turn-engine', 'locked') || water;
  return stuck && held && toVehicle;
}

describe('on no path', () => {
  test('is a check asked that a hard stop forbids, or before its hazardous cautions are confirmed', () => {
    let stopped = 0;
    fc.assert(
      fc.property(context, fc.array(valid, { maxLength: 30 }), (known, inputs) => {
        let step = open(known);
        // Confirmed since the last lapse: what a person has been told and has agreed to.
        let agreed = new Set<string>();
        // What waits to be confirmed still waits after an input that was refused.
        let waited: readonly string[] = [];
        for (const input of inputs) {
          const asked = messagesOf(step, 'confirm').flatMap(({ cautions }) => cautions);
          const wasRefused = messagesOf(step, 'refused').length > 0;
          waited = wasRefused && asked.length === 0 ? waited : asked;
          step = take(step, input);
          if (input.type === 'confirm') waited.forEach((caution) => agreed.add(caution));
          if (input.type === 'interrupt' && step.events.length > 0) agreed = new Set();
          for (const { check } of messagesOf(step, 'ask')) {
            expect({ check, may: !mayNotAsk(step.case, flow.checks[check]!) }).toEqual({
              check,
              may: true,
            });
            const hazards = hazardsOf(flow.checks[check]!, messagesOf(step, 'ask')[0]!);
            expect(hazards.filter((caution) => !agreed.has(caution))).toEqual([]);
          }
          if (checks.some((check) => mayNotAsk(step.case, check))) stopped += 1;
        }
      }),
      { numRuns: 500 },
    );
    // The stops must have been in force often, else this proves nothing.
    expect(stopped).toBeGreaterThan(1000);
  });
});

/** The cautions to be confirmed before a check is done, whatever else is known. */
function hazardsOf({ id, does }: Check, { remembered }: AskMessage): readonly string[] {
  if (remembered) return [];
  return [
    ...(does.includes('held-start') ? ['vehicle-moves'] : []),
    ...(id === 'turn-engine' ? ['moving-parts'] : []),
    ...(does.some((what) => ['boost', 'charge', 'load'].includes(what)) ? ['battery-gas'] : []),
    ...(does.includes('boost') ? ['boost-order'] : []),
    ...(does.includes('spark') ? ['spark-voltage'] : []),
  ];
}
