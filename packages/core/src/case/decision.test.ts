import { describe, expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallTable } from '../flow/small-table.ts';
import type { Policy } from '../policy/policy.ts';
import type { DecisionMessage } from './message.ts';
import { positionOf } from './position.ts';
import { openCase, turn, type Step } from './turn.ts';
import { foldCase } from './case.ts';
import type { CaseEvent } from './event.ts';

const loaded = loadFlow(smallTable);
if (loaded.type === 'issues') throw new Error(JSON.stringify(loaded.issues));
const chart = compileFlow(loaded.flow);

const policy: Policy = {
  shop: 'Corner Parts',
  currency: 'EUR',
  'return-window': { days: 30 },
  warranty: { starter: { months: 24, 'pro-rata': 'by-month' } },
  'exchange-deposit': { starter: 4000 },
};
const bench = { kit: ['bench-tester'], 'part.nominal': 12, 'part.class': 'car' };
const at = '2026-03-31T10:00:00Z';

function open(context: Record<string, unknown> = bench, given: { policy?: Policy } = {}): Step {
  return openCase(chart, { id: 'r1', at, context, ...given });
}

/** Answers whatever is asked, as far as there is an answer; the rest can't be done. */
function play(
  step: Step,
  answers: Readonly<Record<string, unknown>>,
): { step: Step; asked: string[] } {
  const asked: string[] = [];
  const left = new Map(Object.entries(answers).map(([id, said]) => [id, [said].flat()]));
  let now = step;
  for (let turns = 0; turns < 60; turns += 1) {
    const position = positionOf(now.case);
    if (position.awaiting === 'nothing') break;
    if (position.awaiting === 'confirm') {
      now = turn(chart, now.case, { at, input: { type: 'confirm' } });
      continue;
    }
    if (!('check' in position)) break;
    const { check } = position;
    asked.push(check);
    const said = left.get(check)?.shift();
    now = turn(chart, now.case, { at, input: inputFor(check, said) });
  }
  return { step: now, asked };
}

function inputFor(check: string, said: unknown): unknown {
  if (said === undefined) return { type: 'talk', talk: 'cannot' };
  if (typeof said === 'string') return { type: 'answers', answers: [{ check, value: [said] }] };
  const form = chart.flow.checks[check]?.form;
  const unit = form?.kind === 'reading' ? form.unit : '';
  return { type: 'answers', answers: [{ check, value: { value: said, unit } }] };
}

const decisionOf = ({ case: kase }: Step): DecisionMessage | null => kase.state.decision;
const decided = (step: Step): string => {
  const decision = decisionOf(step);
  return decision === null ? 'open' : `${decision.decide} ${decision.reason}`;
};

const good = {
  'part-number': 'ours',
  'sale-date': 'warranty',
  stud: 'sound',
  look: 'sound',
  run: 'even',
  amperes: 70,
  recharged: 12.8,
  proof: 'elsewhere',
};

describe('a table of decisions', () => {
  test('is gone through from its top, and asks only what can change the decision', () => {
    const { step, asked } = play(open(), { 'part-number': 'other' });
    expect(decided(step)).toBe('decline not-ours');
    expect(asked).toEqual(['part-number']);
  });

  test('asks in the written order, and decides by the last line where none above it holds', () => {
    const { step, asked } = play(open(), good);
    expect(decided(step)).toBe('decline good');
    expect(asked).toEqual(Object.keys(good));
    expect(step.messages.map(({ kind }) => kind)).toEqual(['noted', 'decision', 'done']);
  });

  test.each([
    [{ stud: undefined }, 'test-further not-seen'],
    [{ stud: 'turns' }, 'decline misfitted'],
    [{ run: 'silent' }, 'accept silent'],
    [{ amperes: 150 }, 'accept drags'],
    [{ proof: 'against-part' }, 'accept vehicle'],
    // Neither a borderline figure nor one that was never read is high; neither is it normal.
    [{ amperes: 96 }, 'test-further too-close'],
    [{ amperes: undefined }, 'test-further too-close'],
  ])('with %j it comes to %s', (change, line) => {
    expect(decided(play(open(), { ...good, ...change }).step)).toBe(line);
  });

  test('what a check requires is asked before it, and it is left out where that is not so', () => {
    expect(play(open(), { ...good, look: 'cracked', wear: 'uneven' }).asked).toContain('wear');
    expect(play(open(), good).asked).not.toContain('wear');
  });

  test('nothing runs before the stud is known to be sound', () => {
    for (const stud of ['turns', undefined]) {
      const { asked } = play(open(), { ...good, stud });
      expect(asked).not.toContain('run');
    }
  });

  test('facts that limits go by are asked first, the kit where a line hangs on it', () => {
    const { asked, step } = play(open({}), {
      ...good,
      kit: 'bench-tester',
      nominal: 'high',
      amperes: 95,
    });
    expect(asked.indexOf('nominal')).toBeLessThan(asked.indexOf('amperes'));
    expect(asked.indexOf('kit')).toBeLessThan(asked.indexOf('run'));
    // 110 A at 24 V: 95 A is normal there.
    expect(decided(step)).toBe('decline good');
  });

  test('a maker’s figure for the part goes before the general one', () => {
    const context = {
      ...bench,
      part: { nominal: 12, limits: { amperes: { high: 150, unit: 'A' } } },
    };
    const { 'part.nominal': _, 'part.class': __, ...rest } = context;
    expect(decided(play(open(rest), { ...good, amperes: 120 }).step)).toBe('decline good');
    expect(decided(play(open(rest), { ...good, amperes: 175 }).step)).toBe('accept drags');
  });

  test('figures of another part are refused by their name', () => {
    const limits = { 'cell-spread': { high: 0.02, unit: '1' } };
    expect(() => open({ part: { limits } })).toThrow(/part\.limits\.cell-spread.*amperes/u);
    const wrongUnit = { amperes: { high: 90, unit: 'V' } };
    expect(() => open({ part: { limits: wrongUnit } })).toThrow(/figures in A/u);
    const upsideDown = { amperes: { low: 90, high: 40, unit: 'A' } };
    expect(() => open({ part: { limits: upsideDown } })).toThrow(/low below high/u);
  });
});

describe('a decision', () => {
  test('says what it rests on and which answers would have led elsewhere', () => {
    const message = decisionOf(play(open(), { ...good, run: 'silent' }).step);
    expect(message).toMatchObject({
      called: 'decision',
      rests: [['run', 'silent']],
      measure: ['battery'],
    });
    expect(message?.changes).toContainEqual({
      check: 'stud',
      answers: ['turns'],
      decide: 'decline',
      reason: 'misfitted',
    });
    // With an even run the questions would have gone on.
    expect(message?.changes.map(({ check }) => check)).not.toContain('run');
  });

  test('names what was not answered and what was too close to call', () => {
    expect(decisionOf(play(open(), { ...good, look: undefined }).step)?.rests).toContainEqual([
      'look',
      'unanswered',
    ]);
    expect(decisionOf(play(open(), { ...good, amperes: 96 }).step)?.rests).toEqual([
      ['amperes', 'borderline'],
    ]);
  });

  test('stays open for what it asks once more, and is weighed anew after it', () => {
    const once = play(open(), { ...good, recharged: 12.1 });
    expect(decided(once.step)).toBe('test-further charge-again');
    expect(once.asked.filter((check) => check === 'recharged')).toHaveLength(2);
    const twice = (second: number): string =>
      decided(play(open(), { ...good, recharged: [12.1, second] }).step);
    expect(twice(12.1)).toBe('accept worn');
    expect(twice(12.8)).toBe('decline good');
  });

  test('voids what did not count as soon as what it asks once more is answered', () => {
    const take = (step: Step, check: string, said: unknown): Step =>
      turn(chart, step.case, { at, input: inputFor(check, said) });
    const told = take(open(), 'proof', 'elsewhere');
    // That it can't be read once more leaves everything as it was.
    const once = play(take(told, 'recharged', 12.1), { ...good, recharged: undefined }).step;
    expect(once.case.state.decision).toMatchObject({ again: ['recharged'], voids: ['proof'] });
    expect(once.case.state.answers['proof']).toHaveLength(1);
    const again = take(once, 'recharged', 12.8);
    expect(again.case.state.answers['proof']).toBeUndefined();
    expect(positionOf(again.case)).toEqual({ awaiting: 'answer', check: 'proof' });
  });

  test('is told before the question that it asks once more, and gives way to its answer', () => {
    const first = turn(chart, open().case, { at, input: inputFor('part-number', 'ours') });
    const undated = turn(chart, first.case, { at, input: inputFor('sale-date', undefined) });
    expect(undated.messages.map(({ kind }) => kind)).toEqual(['noted', 'decision', 'ask']);
    expect(undated.messages.at(-1)).toMatchObject({ check: 'sale-date' });
    const dated = turn(chart, undated.case, { at, input: inputFor('sale-date', 'warranty') });
    expect(decided(dated)).toBe('open');
    expect(positionOf(dated.case)).toEqual({ awaiting: 'answer', check: 'stud' });
  });

  test('of a closed case is taken back by an answer, a correction or new kit', () => {
    const { step } = play(open({ ...bench, kit: [] }), good);
    expect(decided(step)).toBe('test-further no-bench');
    expect(positionOf(step.case).awaiting).toBe('nothing');
    const equipped = turn(chart, step.case, {
      at,
      input: { type: 'context', set: { kit: ['bench-tester'] } },
    });
    expect(positionOf(equipped.case)).toEqual({ awaiting: 'confirm', check: 'run' });
    const corrected = turn(chart, step.case, {
      at,
      input: { type: 'correction', answers: [{ check: 'stud', value: ['turns'] }] },
    });
    expect(decided(corrected)).toBe('decline misfitted');
    const back = turn(chart, step.case, { at, input: { type: 'talk', talk: 'back' } });
    expect(positionOf(back.case)).toEqual({ awaiting: 'answer', check: 'look' });
  });

  test('comes out the same from the events alone', () => {
    const events: CaseEvent[] = [];
    let step = open(bench, { policy });
    events.push(...step.events);
    for (const [check, said] of Object.entries(good)) {
      for (const input of [{ type: 'confirm' }, inputFor(check, said)]) {
        step = turn(chart, step.case, { at, input });
        events.push(...step.events);
      }
    }
    expect(decided(step)).toBe('decline good');
    expect(foldCase(chart, events)).toEqual(step.case);
  });

  test('why a check is asked tells where each answer leads', () => {
    const { case: kase } = open();
    const [why] = turn(chart, kase, { at, input: { type: 'talk', talk: 'why' } }).messages;
    expect(why).toMatchObject({
      kind: 'why',
      outcomes: [
        { answer: 'ours', faults: [] },
        { answer: 'other', decision: { decide: 'decline', reason: 'not-ours' } },
      ],
    });
  });
});

describe('the day of a sale', () => {
  const sold = (day: string, given: { policy?: Policy } = { policy }): Step =>
    turn(chart, play(open(bench, given), { 'part-number': 'ours' }).step.case, {
      at,
      input: { type: 'answers', answers: [{ check: 'sale-date', value: [day] }] },
    });
  const bandOf = (step: Step): unknown =>
    step.messages.flatMap((message) => (message.kind === 'noted' ? [message.answer] : []))[0];

  test.each([
    ['2026-03-31', 'return-window'],
    ['2026-03-01', 'return-window'],
    ['2026-02-28', 'warranty'],
    ['2024-03-31', 'warranty'],
    ['2024-03-30', 'expired'],
  ])('%s is %s on 31 March 2026', (day, band) => {
    expect(bandOf(sold(day))).toEqual([day, band]);
  });

  test('counts where the shop is, and from the day on which it came back', () => {
    const late = openCase(chart, {
      id: 'r2',
      at: '2026-03-31T22:30:00Z',
      context: bench,
      policy: { ...policy, 'time-zone': 'Europe/Berlin' },
    });
    const asked = play(late, {}).step;
    const at31 = turn(chart, asked.case, {
      at: '2026-05-31T10:00:00Z',
      input: { type: 'answers', answers: [{ check: 'sale-date', value: ['2026-03-02'] }] },
    });
    // 1 April in Berlin, 30 days after 2 March; that it is answered in May changes nothing.
    expect(bandOf(at31)).toEqual(['2026-03-02', 'return-window']);
  });

  test.each([
    ['2026-02-30', 'no-such-day'],
    ['2026-13-01', 'no-such-day'],
    ['2026-04-01', 'day-to-come'],
    // A century slipped: 60 years back nobody had sold it.
    ['1926-03-02', 'day-long-ago'],
    ['0026-03-02', 'day-long-ago'],
  ])('%s is refused: %s', (day, code) => {
    const step = sold(day);
    expect(step.messages).toMatchObject([
      { kind: 'refused', code, check: 'sale-date', given: day },
    ]);
    expect(step.events).toEqual([]);
  });

  test.each([
    // 30 days back it is 1 March: all of the month so far lies in the window, and February in none of it.
    ['2026-03', 'return-window'],
    ['2026-02', 'warranty'],
    ['2024-04', 'warranty'],
    ['2024-02', 'expired'],
  ])('the month %s is %s on 31 March 2026, whichever of its days it was', (month, band) => {
    expect(bandOf(sold(month))).toEqual([band]);
  });

  test.each([
    // The warranty of two years ends on its last but one day.
    ['2024-03', 'no-such-day'],
    ['2026-13', 'no-such-day'],
    ['2026-04', 'day-to-come'],
    ['1926-03', 'day-long-ago'],
  ])('the month %s is refused: %s', (month, code) => {
    expect(sold(month).messages).toMatchObject([
      { kind: 'refused', code, check: 'sale-date', given: month },
    ]);
  });

  test('without terms of the shop a day means nothing, and a band is chosen', () => {
    const step = sold('2026-03-20', {});
    expect(step.messages).toMatchObject([{ kind: 'refused', code: 'no-terms' }]);
    const chosen = sold('warranty', {});
    expect(bandOf(chosen)).toEqual(['warranty']);
    const forms = [open(bench), open(bench, { policy })].map((opened) =>
      turn(chart, opened.case, { at, input: inputFor('part-number', 'ours') }).messages.at(-1),
    );
    expect(forms).toMatchObject([{ form: 'choice' }, { form: 'date' }]);
  });
});

describe('what is paid back', () => {
  const paid = (context: Record<string, unknown>, answers: Record<string, unknown>): unknown =>
    decisionOf(play(open({ ...bench, ...context }, { policy }), { ...good, ...answers }).step)
      ?.refund;

  test('is told with the arithmetic where the terms and the sale say so', () => {
    // 12900 × 20 / 24 = 10750: four whole months were used of twenty-four.
    expect(paid({ 'sale.price': 12_900 }, { 'sale-date': '2025-11-30', run: 'silent' })).toEqual({
      currency: 'EUR',
      lines: [
        { line: 'price', amount: 12_900 },
        { line: 'used', months: 4, left: 20, of: 24, amount: -2150 },
      ],
      total: 10_750,
    });
  });

  test('is never told without the price, the day, the terms or a line that pays', () => {
    expect(paid({}, { 'sale-date': '2025-11-30', run: 'silent' })).toBeUndefined();
    expect(paid({ 'sale.price': 12_900 }, { run: 'silent' })).toBeUndefined();
    expect(paid({ 'sale.price': 12_900 }, { proof: 'elsewhere' })).toBeUndefined();
    const without = play(open({ ...bench, 'sale.price': 12_900 }), { ...good, run: 'silent' });
    expect(decisionOf(without.step)?.refund).toBeUndefined();
  });

  test('of the old unit is its deposit, where that is held', () => {
    const other = { 'part-number': 'other' };
    expect(paid({ 'sale.oldUnit': 'owed' }, other)).toEqual({
      currency: 'EUR',
      lines: [{ line: 'deposit', amount: 4000 }],
      total: 4000,
    });
    expect(paid({ 'sale.oldUnit': 'returned' }, other)).toBeUndefined();
  });
});
