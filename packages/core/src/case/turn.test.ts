import { describe, expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallFlow } from '../flow/small-flow.ts';
import { assess } from './assessment.ts';
import { CaseError, foldCase, type Case } from './case.ts';
import type { CaseEvent } from './event.ts';
import type { Input } from './input.ts';
import type { Message, ReadingMessage, RefusalCode, RefusedMessage } from './message.ts';
import { positionOf } from './position.ts';
import { ContextError, openCase, repeat, turn, type Step } from './turn.ts';

const loaded = loadFlow(smallFlow);
if (loaded.type === 'issues') throw new Error('the small flow has issues');
const { flow } = loaded;
const chart = compileFlow(flow);

const eight = '2026-01-01T08:00:00.000Z';
const nine = '2026-01-01T09:00:00.000Z';
const ten = '2026-01-01T10:00:00.000Z';

const open = (context: Record<string, unknown> = {}): Step =>
  openCase(chart, { id: 'k1', at: eight, context });
const next = (kase: Case, input: unknown, at = kase.state.at): Step =>
  turn(chart, kase, { at, input });
const take = (step: Step, ...inputs: readonly Input[]): Step =>
  inputs.reduce<Step>((before, input) => next(before.case, input), step);

type Value = string | readonly string[] | number | { value: number; unit: string };

/** Answers as a channel gives them; a bare number is in the check's unit. */
function list(
  given: Readonly<Record<string, Value>>,
): Extract<Input, { answers: unknown }>['answers'] {
  return Object.entries(given).map(([check, value]) => {
    if (typeof value === 'number') return { check, value: { value, unit: 'V' } };
    return { check, value: typeof value === 'string' ? [value] : value };
  });
}
const answers = (given: Readonly<Record<string, Value>>): Input => ({
  type: 'answers',
  answers: list(given),
});
const correct = (given: Readonly<Record<string, Value>>): Input => ({
  type: 'correction',
  answers: list(given),
});
const talk = (what: Extract<Input, { type: 'talk' }>['talk']): Input => ({
  type: 'talk',
  talk: what,
});
const context = (set: Record<string, unknown>): Input => ({ type: 'context', set });
const confirm: Input = { type: 'confirm' };

/** A turn's messages, each by its kind and what it is about. */
function said({ messages }: Step): readonly string[] {
  return messages.map((message) => `${message.kind} ${about(message)}`.trim());
}

function about(message: Message): string {
  switch (message.kind) {
    case 'ask':
    case 'noted':
    case 'reading':
    case 'confirm':
    case 'wait':
    case 'why':
      return message.check;
    case 'caution':
      return message.caution;
    case 'verdict':
      return `${message.fault} ${message.strength}`;
    case 'decision':
      return `${message.decide} ${message.reason}`;
    case 'interrupt':
      return message.interrupt;
    case 'refused':
      return message.code;
    case 'set-aside':
      return message.checks.join(' ');
    case 'tell':
      return message.tell;
    case 'done':
      return message.outcome;
    case 'weights':
      return message.fault;
    case 'numbers':
      return message.readings.map(({ check }) => check).join(' ');
    case 'ranking':
      return '';
  }
}

/** What the case waits for: `answer complaint`, `confirm battery-crank`, `nothing`. */
function awaits({ case: kase }: Step): string {
  return Object.values(positionOf(kase)).join(' ');
}

const belief = ({ case: kase }: Step): readonly (readonly [string, number])[] =>
  assess(flow, kase.state).ranking;

const equipped = {
  kit: ['voltmeter', 'helper', 'charger'],
  vehicle: { transmission: 'automatic' },
};
const started = answers({ scene: 'safe', complaint: 'slow-crank', history: 'none' });
const looked = answers({ 'battery-look': 'sound' });
const measuring = (context: object = {}): Step =>
  take(open({ ...equipped, ...context }), started, looked);

describe('a case', () => {
  test('asks its first question when it is opened', () => {
    const step = open();
    expect(said(step)).toEqual(['tell opening', 'ask scene']);
    expect(step.case.events).toBe(1);
    expect(step.events).toMatchObject([{ type: 'opened', id: 'k1', at: eight }]);
  });

  test('goes on in the written order', () => {
    const one = take(open(), answers({ scene: 'safe' }));
    expect(said(one)).toEqual(['noted scene', 'ask complaint']);
    expect(said(take(one, answers({ complaint: 'silent' })))).toContain('ask history');
  });

  test('takes several answers in one turn', () => {
    const step = take(open(), started);
    expect(awaits(step)).toBe('answer transmission');
    expect(step.events).toHaveLength(3);
    expect(said(step).slice(0, 3)).toEqual(['noted scene', 'noted complaint', 'noted history']);
  });

  test('takes an answer that was not asked for and does not ask for it again', () => {
    const step = take(open(equipped), answers({ 'battery-rest': 12.7 }));
    expect(awaits(step)).toBe('answer scene');
    expect(awaits(take(step, started, looked))).toBe('confirm battery-crank');
  });

  test('leaves out what is known to be beside the point', () => {
    expect(awaits(take(open(equipped), started))).toBe('answer battery-look');
    expect(awaits(take(open({ kit: [] }), started))).toBe('answer transmission');
  });

  test('writes into the context what an answer says of it', () => {
    const manual = take(open({ kit: [] }), started, answers({ transmission: 'manual' }));
    expect(manual.case.state.context['vehicle.transmission']).toBe('manual');
    expect(awaits(take(manual, looked))).toBe('answer clutch');
    const kit = take(manual, answers({ kit: ['helper', 'voltmeter'] }));
    expect(kit.case.state.context['kit']).toEqual(['helper', 'voltmeter']);
  });

  test.each(['dont-know', 'cannot'] as const)('takes no evidence from "%s" and goes on', (way) => {
    const before = take(open(equipped), answers({ scene: 'safe' }));
    const after = take(before, talk(way));
    expect(awaits(after)).toBe('answer history');
    expect(belief(after)).toEqual(belief(before));
    expect(said(after)).not.toContain('ranking');
  });

  test('asks no reading for which the kit is lacking', () => {
    const step = take(open({ ...equipped, kit: [] }), started, looked);
    expect(step.case.state.verdict).not.toBe(null);
    expect(said(step)).not.toContain('ask battery-rest');
  });

  test('asks once more after something was put right, and only once', () => {
    const one = take(open(), answers({ scene: 'unsafe' }));
    expect(said(one)).toContain('ask scene');
    expect(one.messages.at(-1)).toMatchObject({ kind: 'ask', check: 'scene', time: 2 });
    expect(awaits(take(one, answers({ scene: 'safe' })))).toBe('answer complaint');
    expect(take(one, answers({ scene: 'unsafe' })).case.state.verdict).not.toBe(null);
  });

  test('asks no check that nobody is there to answer', () => {
    const step = openCase(chart, { id: 'k', at: eight, context: {}, notAsked: ['scene'] });
    expect(said(step)).toEqual(['tell opening', 'ask complaint']);
  });

  test('shows how the ranking moved, with what it was', () => {
    const before = take(open(), answers({ scene: 'safe' }));
    const ranking = take(before, answers({ complaint: 'silent' })).messages.find(
      (message) => message.kind === 'ranking',
    );
    // By hand: 60 × 0.2, 30 × 0.2 and 10 × 0.7, in all 25.
    expect(ranking?.faults.map(([fault, share]) => [fault, Number(share.toFixed(3))])).toEqual([
      ['battery-discharged', 0.48],
      ['unlisted', 0.28],
      ['ground-cable', 0.24],
    ]);
    expect(ranking?.before.map(([, share]) => Number(share.toFixed(3)))).toEqual([0.6, 0.1, 0.3]);
  });

  test('takes what is not the case as telling too', () => {
    const step = take(open(), answers({ scene: 'safe', history: 'none' }));
    // By hand: 60 × 0.6 × 0.98, 30 × 0.95 × 0.96 and 10 × 0.95 × 0.96, in all 71.76.
    expect(belief(step).map(([fault, share]) => [fault, Number(share.toFixed(4))])).toEqual([
      ['battery-discharged', 0.4916],
      ['ground-cable', 0.3813],
      ['unlisted', 0.1271],
    ]);
  });

  test('says of each outcome of the check in hand what it would mean', () => {
    const step = take(measuring(), talk('why'));
    const [why] = step.messages;
    expect(why).toMatchObject({ kind: 'why', check: 'battery-rest', unit: 'V' });
    if (why?.kind !== 'why') return;
    expect(why.outcomes.map(({ answer, faults }) => [answer, faults[0]?.[0]])).toEqual([
      ['flat', 'battery-discharged'],
      ['discharged', 'battery-discharged'],
      ['ready', 'ground-cable'],
    ]);
    expect(why.bounds).toHaveLength(2);
    expect(step.events).toEqual([]);
    expect(step.case).toEqual(measuring().case);
  });

  test('says again where it stands', () => {
    const step = measuring();
    expect(repeat(chart, step.case)).toEqual([step.messages.at(-1)]);
    expect(said(take(step, talk('repeat')))).toEqual(['ask battery-rest']);
    expect(said(take(step, talk('person')))).toContain('tell person');
    expect(said(take(step, talk('stop')))).toContain('tell stopped');
  });

  test('shows a reading on its scale', () => {
    const step = take(measuring(), answers({ 'battery-rest': 11.5 }));
    expect(step.messages[0]).toMatchObject({
      kind: 'reading',
      check: 'battery-rest',
      band: 'flat',
      bands: ['flat', 'discharged', 'ready'],
      bounds: [
        { low: 12, high: 12 },
        { low: 12.4, high: 12.6 },
      ],
      unit: 'V',
      borderline: false,
    });
  });

  test('takes a reading in millivolts, and one given by its band', () => {
    const inMillivolts = take(measuring(), {
      type: 'answers',
      answers: [{ check: 'battery-rest', value: { value: 11_500, unit: 'mV' } }],
    });
    expect(inMillivolts.messages[0]).toMatchObject({ kind: 'reading', band: 'flat' });
    const byBand = take(measuring(), answers({ 'battery-rest': 'flat' }));
    expect(belief(byBand)).toEqual(belief(inMillivolts));
  });

  test('takes a test lamp’s answer for its band', () => {
    const lamp = { kit: ['test-lamp'], vehicle: { transmission: 'automatic' } };
    const silent = answers({ scene: 'safe', complaint: 'silent', history: 'none' });
    const step = take(open(lamp), silent, looked);
    expect(step.messages.at(-1)).toMatchObject({ check: 'feed', lamp: ['dark', 'dim', 'bright'] });
    expect(said(take(step, answers({ feed: 'dim' })))).toContain('noted feed');
  });

  test('holds every answer that it says it has taken', () => {
    const all = { 'drop-ground': 1.2, repair: 'done', 'start-after': 'starts' } as const;
    const step = take(measuring(), answers({ ...all, 'drop-ground-after': 0.1, kit: ['helper'] }));
    const noted = step.messages.flatMap((one) => (one.kind === 'noted' ? [one.check] : []));
    expect(noted.filter((check) => step.case.state.answers[check] === undefined)).toEqual([]);
  });

  test('leaves the case before a turn as it was', () => {
    const before = measuring();
    const text = JSON.stringify(before.case);
    take(before, answers({ 'battery-rest': 11.5 }), confirm, talk('back'));
    expect(JSON.stringify(before.case)).toBe(text);
  });
});

describe('a reading', () => {
  const read = (value: number, more: object = {}, context: object = {}): Step =>
    take(measuring(context), {
      type: 'answers',
      answers: [{ check: 'battery-rest', value: { value, unit: 'V', ...more } }],
    });
  const reading = (step: Step): ReadingMessage => {
    const found = step.messages.find((one) => one.kind === 'reading');
    if (found === undefined) throw new Error('no reading was told');
    return found;
  };
  const flooded = { 'vehicle.battery.technology': 'flooded' } as const;

  test('keeps the meter that the context tells of, its own figures before its class', () => {
    const fine = reading(read(12.45, {}, { meter: { class: 'fine' } }));
    expect(fine.quantity.meter).toMatchObject({ percent: 0.1, digits: 2 });
    const own = { meter: { class: 'fine', percent: 0.8, digits: 3, counts: 4000 } };
    const figures = reading(read(12.45, {}, own));
    expect(figures.quantity.meter).toEqual({ percent: 0.8, digits: 3, counts: 4000 });
    expect(figures.uncertainty).toBeGreaterThan(fine.uncertainty);
  });

  test('keeps the meter that came with it before any other', () => {
    const meter = { percent: 2, digits: 1 };
    const step = read(12.45, { meter }, { meter: { class: 'fine' } });
    expect(reading(step).quantity.meter).toEqual(meter);
    expect(step.case.state.answers['battery-rest']).toEqual([{ value: 12.45, unit: 'V', meter }]);
  });

  test('keeps its meter when another is taken up', () => {
    const step = take(read(12.45, {}, { meter: { class: 'fine' } }), {
      type: 'context',
      set: { 'meter.class': 'simple' },
    });
    const [kept] = step.case.state.answers['battery-rest'] ?? [];
    expect(kept).toMatchObject({ meter: { percent: 0.1 } });
  });

  test.each([
    ['the usual meter leaves open', {}, true],
    ['a fine meter decides', { meter: { class: 'fine' } }, false],
  ])('of 12.44 V at a bound of 12.4 V %s', (_, context, borderline) => {
    const told = reading(read(12.44, { resolution: 0.01 }, { ...flooded, ...context }));
    expect(told.borderline).toBe(borderline);
  });

  test('clearly on one side needs nothing to settle it', () => {
    expect(reading(read(11.5)).settling).toBeUndefined();
  });

  test.each([
    ['coarse, is to be read once more', 12.4, 0.1, ['voltmeter', 'helper'], { by: 'repeat' }],
    [
      'is settled by the check that can still be made',
      12.41,
      0.01,
      ['voltmeter', 'helper'],
      { by: 'check', check: 'battery-crank' },
    ],
    ['is only kept in mind where none can', 12.41, 0.01, ['voltmeter'], { by: 'nothing' }],
  ])('too close to call %s', (_, value, resolution, kit, settling) => {
    const step = read(value, { resolution }, { ...flooded, kit });
    expect(reading(step)).toMatchObject({ borderline: true, settling });
  });

  test('that time settles says so', () => {
    const step = take(read(11.5, {}, { kit: ['voltmeter', 'charger'] }), {
      type: 'answers',
      answers: [{ check: 'battery-recharged', value: { value: 12.51, unit: 'V' } }],
    });
    expect(reading(step)).toMatchObject({ borderline: true, settling: { by: 'time' } });
  });

  test('too close to call carries both sides into the evidence', () => {
    const sure = (value: number) => belief(read(value, { resolution: 0.01 }, flooded));
    const middle = sure(12.4).find(([fault]) => fault === 'battery-discharged')?.[1] ?? NaN;
    const [low, high] = [12.1, 12.7].map(
      (value) => sure(value).find(([fault]) => fault === 'battery-discharged')?.[1] ?? NaN,
    );
    expect(middle).toBeLessThan(low ?? NaN);
    expect(middle).toBeGreaterThan(high ?? NaN);
  });

  test('comes with what a sound vehicle would show, where that can be told', () => {
    const { expected } = reading(read(12.45, {}, flooded));
    expect(expected).toMatchObject({ source: { provenance: 'common practice' } });
    expect(expected?.low).toBeGreaterThanOrEqual(12.3);
    expect(expected?.high).toBeLessThanOrEqual(13);
    const why = take(measuring(), talk('why'));
    expect(why.messages[0]).toMatchObject({ kind: 'why', check: 'battery-rest', expected: {} });
  });

  test('has its numbers told on request, with where the volts are lost', () => {
    const none = take(measuring(), talk('numbers'));
    expect(none.messages[0]).toMatchObject({ kind: 'numbers', readings: [] });
    const step = take(
      measuring(),
      answers({ 'battery-rest': 12.6, 'battery-crank': 10.6, 'drop-ground': 1.2 }),
      talk('numbers'),
    );
    expect(said(step)[0]).toBe('numbers battery-rest battery-crank drop-ground');
    const [numbers] = step.messages;
    const losses = numbers?.kind === 'numbers' ? numbers.losses.losses : [];
    expect(losses.map(({ part, loss }) => [part, Math.round(loss.best)])).toEqual([
      ['battery', 2000],
      ['ground', 1200],
    ]);
    expect(step.case.state).toBe(take(step).case.state);
  });
});

describe('cautions', () => {
  const toCrank = (): Step => take(measuring(), answers({ 'battery-rest': 12.8 }));

  test('are shown before the check that they cover and wait to be confirmed', () => {
    expect(said(toCrank()).slice(-2)).toEqual(['caution vehicle-moves', 'confirm battery-crank']);
    expect(said(take(toCrank(), confirm))).toEqual(['ask battery-crank']);
  });

  test('that need no confirming are said with the question', () => {
    const step = take(toCrank(), confirm, answers({ 'battery-crank': 11 }));
    expect(said(step).slice(-2)).toEqual(['caution short-circuit', 'ask drop-ground']);
  });

  test('once confirmed are not asked for again', () => {
    const step = take(toCrank(), confirm, answers({ 'battery-crank': 11 }));
    expect(awaits(step)).toBe('answer drop-ground');
    expect(said(step)).not.toContain('caution vehicle-moves');
  });

  test('may be left unconfirmed by not doing the check', () => {
    expect(awaits(take(toCrank(), talk('cannot')))).toBe('confirm drop-ground');
  });

  test.each<readonly [string, Input]>([
    ['the place changes', context({ place: 'home' })],
    ['the person changes', context({ role: 'mechanic' })],
    ['the selector is moved', answers({ clutch: 'down' })],
    ['an earlier answer is corrected', correct({ history: 'water' })],
  ])('lapse when %s', (_, change) => {
    expect(awaits(take(toCrank(), confirm, change))).toBe('confirm battery-crank');
  });

  test('that hold wherever one goes on stand through a correction, but not in another place', () => {
    const roadside = take(
      open({ ...equipped, place: 'shoulder' }),
      confirm,
      answers({ scene: 'safe' }),
    );
    const corrected = take(roadside, answers({ complaint: 'silent' }), correct({ scene: 'safe' }));
    expect(awaits(corrected)).toBe('answer history');
    expect(said(corrected)).not.toContain('caution traffic');
    const moved = take(corrected, context({ place: 'live-lane' }), context({ place: 'shoulder' }));
    expect(awaits(moved)).toBe('confirm history');
  });

  test('lapse at an interrupt', () => {
    const step = take(toCrank(), confirm, { type: 'interrupt', interrupt: 'smoke' });
    expect(awaits(take(step, { type: 'resume' }))).toBe('confirm battery-crank');
  });

  test('stand through what does not touch them', () => {
    const same = take(toCrank(), confirm, context({ kit: ['voltmeter', 'helper', 'charger'] }));
    expect(awaits(same)).toBe('answer battery-crank');
    const told = take(toCrank(), confirm, talk('why'), { type: 'tick' });
    expect(awaits(told)).toBe('answer battery-crank');
  });

  test('cover everything where their condition holds, the gravest first', () => {
    const step = open({ ...equipped, place: 'shoulder' });
    expect(said(step)).toEqual(['tell opening', 'caution traffic', 'confirm scene']);
    expect(awaits(take(step, confirm, started))).toBe('answer battery-look');
  });
});

describe('hard stops', () => {
  test('forbid what they cover, for as long as they are in force', () => {
    const leaking = take(open(equipped), started, answers({ 'battery-look': 'leaking' }));
    const measured = take(leaking, answers({ 'battery-rest': 11.5 }));
    expect(measured.case.state.verdict?.stops).toEqual(['battery-unfit']);
    expect(awaits(take(measured, correct({ 'battery-look': 'sound' })))).toBe(
      'confirm battery-crank',
    );
  });

  test('say what is to be done whatever the fault is', () => {
    const step = take(open({ ...equipped, place: 'shoulder' }), confirm, started);
    expect(step.messages.at(-1)).toMatchObject({ check: 'battery-look', remembered: true });
    expect(take(step, looked).case.state.verdict).toMatchObject({
      remedy: 'call-emergency',
      send: 'police',
      stops: ['shoulder'],
    });
  });
});

describe('going back', () => {
  test('asks the last one again and believes exactly as before', () => {
    const before = take(open(), answers({ scene: 'safe' }));
    const step = take(before, answers({ complaint: 'silent' }), talk('back'));
    expect(said(step)).toEqual(['tell returned', 'ranking', 'ask complaint']);
    expect(belief(step)).toEqual(belief(before));
    expect(step.case.state.answers).toEqual(before.case.state.answers);
    expect(step.case.state.order).toEqual(before.case.state.order);
  });

  test('asks a volunteered one again out of turn', () => {
    const step = take(open(equipped), answers({ 'battery-look': 'leaking' }), talk('back'));
    expect(awaits(step)).toBe('answer battery-look');
    expect(awaits(take(step, looked))).toBe('answer scene');
  });

  test('takes back what the answer said of the context', () => {
    const step = take(open(), answers({ transmission: 'manual' }), talk('back'));
    expect(step.case.state.context).toEqual({});
  });

  test('takes back the second of two answers alone', () => {
    const once = take(open(), answers({ scene: 'unsafe' }));
    const step = take(once, answers({ scene: 'safe' }), talk('back'));
    expect(step.case.state.answers).toEqual(once.case.state.answers);
    expect(awaits(step)).toBe('answer scene');
  });

  test('can be done to the very beginning', () => {
    const step = take(open(), started, talk('back'), talk('back'), talk('back'));
    expect(step.case.state.answers).toEqual({});
    expect(awaits(step)).toBe('answer scene');
  });

  test('gives the context back as it was known before', () => {
    const before = open(equipped);
    const step = take(before, answers({ kit: ['test-lamp'] }), talk('back'));
    expect(step.case.state.context).toEqual(before.case.state.context);
  });
});

describe('a correction', () => {
  test.each([
    ['dont-know', 'unknown'],
    ['cannot', 'cannot'],
  ] as const)('may take an answer back: %s', (talk, answer) => {
    const step = take(clutchDown(), { type: 'unanswered', check: 'clutch', talk });
    expect(step.case.state.answers['clutch']).toEqual([answer]);
    expect(step.messages).toContainEqual({ kind: 'noted', check: 'clutch', answer: [] });
  });

  test('of a check that nobody knows is refused', () => {
    const step = take(clutchDown(), { type: 'unanswered', check: 'colour', talk: 'dont-know' });
    expect(step.messages).toMatchObject([{ kind: 'refused', code: 'unknown-check' }]);
  });

  const clutchDown = (): Step =>
    take(
      open({ kit: [] }),
      started,
      answers({ transmission: 'manual', 'battery-look': 'sound', clutch: 'down' }),
    );

  test('is undone by going back, and what it had set aside counts again', () => {
    const before = clutchDown();
    const corrected = take(before, correct({ transmission: 'automatic' }));
    expect(corrected.case.state.answers['clutch']).toBeUndefined();
    const step = take(corrected, talk('back'));
    expect(said(step)[0]).toBe('tell restored');
    expect(step.case.state).toEqual(before.case.state);
    expect(awaits(step)).toBe(awaits(before));
    expect(awaits(take(step, talk('back')))).toBe('answer clutch');
  });

  test('is not undone by going back from what was answered after it', () => {
    const corrected = take(clutchDown(), correct({ transmission: 'automatic' }));
    const step = take(corrected, talk('dont-know'), talk('back'));
    expect(said(step)[0]).toBe('tell returned');
    expect(step.case.state.context['vehicle.transmission']).toBe('automatic');
  });

  test('keeps what still holds and sets aside what does not', () => {
    const step = take(clutchDown(), correct({ transmission: 'automatic' }));
    expect(said(step).slice(0, 2)).toEqual(['noted transmission', 'set-aside clutch']);
    expect(step.case.state.order).toEqual([
      'scene',
      'complaint',
      'history',
      'transmission',
      'battery-look',
    ]);
    expect(step.case.state.context['vehicle.transmission']).toBe('automatic');
  });

  test('believes as if the answer had been right from the first', () => {
    const wrong = take(open(equipped), started, correct({ complaint: 'silent' }));
    const right = take(
      open(equipped),
      answers({ scene: 'safe', complaint: 'silent', history: 'none' }),
    );
    expect(belief(wrong)).toEqual(belief(right));
    expect(awaits(wrong)).toBe(awaits(right));
  });

  const verdict = (): Step =>
    take(measuring(), answers({ 'battery-rest': 12.8, 'battery-crank': 11, 'drop-ground': 1.2 }));

  test('reopens the verdict', () => {
    expect(verdict().case.state.verdict).toMatchObject({
      fault: 'ground-cable',
      strength: 'proved',
    });
    const step = take(verdict(), correct({ 'drop-ground': 0.1 }));
    expect(step.case.state.verdict?.fault).not.toBe('ground-cable');
    const open = take(verdict(), correct({ 'battery-rest': 11.2, 'drop-ground': 0.1 }));
    expect(open.case.state.verdict).toBe(null);
    expect(awaits(open)).toBe('confirm battery-recharged');
  });

  test('after the verdict takes with it the work that was done on it', () => {
    const step = take(verdict(), answers({ repair: 'done' }), correct({ 'drop-ground': 0.1 }));
    expect(step.case.state.answers['repair']).toBe(undefined);
  });

  test('that reopens the verdict lets no proof of a repair in beside it', () => {
    const mixed = take(verdict(), answers({ complaint: 'silent', 'start-after': 'starts' }));
    expect(mixed.case.state.answers['start-after']).toBe(undefined);
  });

  test('reopens a closed case', () => {
    const closed = take(
      verdict(),
      answers({ repair: 'done', 'start-after': 'starts', 'drop-ground-after': 0.1 }),
    );
    expect(closed.case.state.outcome).toBe('proved-repaired');
    const step = take(closed, correct({ 'start-after': 'no-change' }));
    expect(step.case.state.outcome).toBe('still-failing');
    expect(take(closed, correct({ complaint: 'silent' })).case.state.outcome).toBe(null);
    expect(awaits(take(closed, talk('back')))).toBe('confirm drop-ground-after');
  });
});

describe('the kit', () => {
  test('once it grows opens the checks again that could not be done', () => {
    const bare = take(measuring(), talk('cannot'));
    expect(bare.case.state.answers['battery-rest']).toHaveLength(1);
    const lacking = take(open({ ...equipped, kit: ['helper'] }), started, looked);
    expect(lacking.case.state.verdict).not.toBe(null);
    const step = take(lacking, context({ kit: ['helper', 'voltmeter'] }));
    expect(awaits(step)).toBe('answer battery-rest');
  });

  test('told in passing is a part of it, and is asked for all the same', () => {
    const told = take(open(), answers({ kit: ['charger'], scene: 'safe' }));
    expect(told.messages).toContainEqual({ kind: 'noted', check: 'kit', answer: ['charger'] });
    const asked = take(told, answers({ complaint: 'slow-crank', history: ['none'] }));
    const question = take(asked, answers({ transmission: 'automatic' }));
    expect(awaits(question)).toBe('answer kit');
    expect(question.messages.at(-1)).toMatchObject({ check: 'kit', mentioned: ['charger'] });
    const kitAfter = (...kit: readonly string[]): unknown =>
      take(question, answers({ kit })).case.state.context['kit'];
    expect(kitAfter('voltmeter', 'helper')).toEqual(['charger', 'voltmeter', 'helper']);
    expect(kitAfter('none')).toEqual(['charger']);
  });

  test('told in passing counts for nothing before it is asked, and none at all is an answer', () => {
    const told = take(open(), answers({ kit: ['voltmeter'] }));
    expect(told.case.state.context['kit']).toBeUndefined();
    expect(told.case.state.answers['kit']).toBeUndefined();
    const none = take(open(), answers({ kit: ['none'] }));
    expect(none.case.state.context['kit']).toEqual([]);
  });

  test('told in passing later is added to what is known', () => {
    const told = take(open({ kit: ['voltmeter'] }), answers({ kit: ['charger'] }));
    expect(told.case.state.context['kit']).toEqual(['voltmeter', 'charger']);
    const again = take(told, answers({ kit: ['helper'] }));
    expect(again.case.state.context['kit']).toEqual(['voltmeter', 'charger', 'helper']);
    const right = take(again, correct({ kit: ['test-lamp'] }));
    expect(right.case.state.context['kit']).toEqual(['test-lamp']);
  });

  test('told anew is said back, and so is that any other new fact was taken', () => {
    const told = take(measuring(), context({ kit: ['charger'], temperature: -5 }));
    expect(told.messages).toContainEqual({ kind: 'noted', check: 'kit', answer: ['charger'] });
    expect(told.messages).toContainEqual({ kind: 'tell', tell: 'learned' });
    const nothing = take(measuring(), context({ kit: [] }));
    expect(nothing.messages).toContainEqual({ kind: 'noted', check: 'kit', answer: ['none'] });
    expect(nothing.messages).not.toContainEqual({ kind: 'tell', tell: 'learned' });
  });

  test('opens again what was answered with "can’t" for want of it, not what nobody knows', () => {
    const declined = take(
      open({ vehicle: { transmission: 'automatic' } }),
      started,
      talk('cannot'),
      looked,
      talk('cannot'),
    );
    expect(declined.case.state.order).toContain('battery-rest');
    const step = take(declined, context({ kit: ['voltmeter'] }));
    expect(awaits(step)).toBe('answer battery-rest');
  });
});

describe('a verdict', () => {
  test('is likely where no proof can be had, with what would settle it', () => {
    const step = take(
      open({ ...equipped, kit: ['voltmeter'] }),
      answers({ scene: 'safe', complaint: 'slow-crank', history: 'lights-left-on' }),
      looked,
      answers({ 'battery-rest': 11.4 }),
    );
    expect(step.case.state.verdict).toMatchObject({
      fault: 'battery-discharged',
      strength: 'likely',
      remedy: 'recharge-then-prove',
      send: 'boost-van',
      roots: ['left-on-load'],
      proof: [],
      settle: [{ check: 'battery-recharged', lacks: ['charger'] }],
    });
    expect(said(step)).toContain('caution battery-gas');
  });

  test('is proved by what was measured, and says by what', () => {
    const step = take(measuring(), answers({ 'drop-ground': 1.2 }));
    expect(step.case.state.verdict).toMatchObject({
      fault: 'ground-cable',
      strength: 'proved',
      proof: [['drop-ground', 'high']],
      settle: [],
    });
    expect(said(step).slice(-2)).toEqual(['verdict ground-cable proved', 'ask repair']);
  });

  test('that is not proved gives way to what is found afterwards', () => {
    const unmeasured = take(open({ ...equipped, kit: [] }), started, looked);
    expect(unmeasured.case.state.verdict?.strength).not.toBe('proved');
    const step = take(unmeasured, answers({ 'drop-ground': 1.2 }));
    expect(step.case.state.verdict).toMatchObject({ fault: 'ground-cable', strength: 'proved' });
  });

  test('is the same in whatever order one turn gives the answers', () => {
    const bare = open({ ...equipped, kit: [] });
    const all = { scene: 'safe', complaint: 'slow-crank', 'battery-look': 'sound' } as const;
    const last = take(bare, answers({ ...all, history: 'none', 'battery-rest': 'flat' }));
    const first = take(bare, answers({ 'battery-rest': 'flat', ...all, history: 'none' }));
    const { verdict } = first.case.state;
    expect(last.case.state.verdict).toMatchObject({
      fault: verdict?.fault,
      strength: verdict?.strength,
    });
    expect(last.case.state.verdict?.probability).toBeCloseTo(verdict?.probability ?? NaN, 9);
  });

  test('is open where the leading fault is less than likely', () => {
    const silentCase = answers({ scene: 'safe', complaint: 'silent', history: 'none' });
    const step = take(open({ ...equipped, kit: [] }), silentCase, looked);
    const { verdict } = step.case.state;
    expect(verdict?.probability).toBeLessThan(0.6);
    expect(verdict).toMatchObject({ strength: 'open', proof: [] });
  });

  test('stays open where nothing is listed', () => {
    const step = take(
      open({ ...equipped, kit: [] }),
      answers({ scene: 'safe', complaint: 'silent', history: 'none', 'battery-rest': 'ready' }),
      looked,
      answers({ 'drop-ground': 'good' }),
    );
    expect(step.case.state.verdict).toMatchObject({ strength: 'open' });
  });

  test.each<readonly [string, Record<string, Value>, string]>([
    [
      'that started and measures good',
      { 'start-after': 'starts', 'drop-ground-after': 0.1 },
      'proved-repaired',
    ],
    [
      'that did not start',
      { 'start-after': 'no-change', 'drop-ground-after': 0.1 },
      'still-failing',
    ],
    ['that measures bad', { 'start-after': 'starts', 'drop-ground-after': 0.9 }, 'still-failing'],
  ])('after a repair %s', (_, proof, outcome) => {
    const step = take(measuring(), answers({ 'drop-ground': 1.2 }), answers({ repair: 'done' }));
    expect(awaits(step)).toBe('confirm start-after');
    const done = take(step, answers(proof));
    expect(said(done).at(-1)).toBe(`done ${outcome}`);
    expect(awaits(done)).toBe('nothing');
  });

  test('whose repair was not measured is unproved, and whose work is left is handed over', () => {
    const step = take(measuring(), answers({ 'drop-ground': 1.2 }));
    const unmeasured = take(step, answers({ repair: 'done' }), talk('cannot'), talk('cannot'));
    expect(unmeasured.case.state.outcome).toBe('unproved');
    expect(unmeasured.messages.at(-1)).toMatchObject({
      kind: 'done',
      lacks: ['start-after', 'drop-ground-after'],
    });
    const halfway = take(
      step,
      answers({ repair: 'done', 'start-after': 'starts' }),
      talk('cannot'),
    );
    expect(halfway.messages.at(-1)).toMatchObject({ kind: 'done', lacks: ['drop-ground-after'] });
    const left = take(step, talk('cannot'), talk('cannot'), talk('cannot'));
    expect(left.case.state.outcome).toBe('handed-over');
  });
});

describe('an interrupt', () => {
  const smoke: Input = { type: 'interrupt', interrupt: 'smoke' };

  test('holds the case until it is over, and comes back to the same question', () => {
    const step = take(measuring(), smoke);
    expect(said(step)).toEqual(['interrupt smoke']);
    expect(awaits(step)).toBe('resume smoke');
    expect(said(take(step, { type: 'resume' }))).toEqual(['tell resumed', 'ask battery-rest']);
  });

  test('may come on top of another', () => {
    const step = take(measuring(), smoke, { type: 'interrupt', interrupt: 'starts-now' });
    expect(awaits(step)).toBe('resume starts-now');
    expect(step.case.state.raised).toEqual(['smoke', 'starts-now']);
  });

  test('that never was is taken back, with what it forbade', () => {
    const step = take(measuring(), smoke, { type: 'withdraw', interrupt: 'smoke' });
    expect(said(step)).toEqual(['tell withdrawn', 'ask battery-rest']);
    expect(step.case.state.raised).toEqual([]);
  });

  test('that never was is taken back as well once it is over', () => {
    const over = take(measuring(), smoke, { type: 'resume' });
    const step = take(over, { type: 'withdraw', interrupt: 'smoke' });
    expect(said(step)).toEqual(['tell withdrawn', 'ask battery-rest']);
    expect(step.case.state.raised).toEqual([]);
  });

  test('that never was leaves the one that is in hand', () => {
    const starts: Input = { type: 'interrupt', interrupt: 'starts-now' };
    const step = take(measuring(), smoke, starts, { type: 'withdraw', interrupt: 'smoke' });
    expect(awaits(step)).toBe('resume starts-now');
    expect(step.case.state.raised).toEqual(['starts-now']);
  });

  test('lets new facts in meanwhile', () => {
    const step = take(measuring(), smoke, context({ place: 'home' }), { type: 'tick' });
    expect(awaits(step)).toBe('resume smoke');
    expect(take(step, { type: 'resume' }).case.state.context['place']).toBe('home');
  });

  test('by which the vehicle starts goes on to the proof', () => {
    const step = take(
      measuring(),
      { type: 'interrupt', interrupt: 'starts-now' },
      { type: 'resume' },
    );
    expect(step.case.state.verdict).not.toBe(null);
    expect(awaits(step)).toBe('confirm start-after');
  });
});

describe('that the vehicle starts', () => {
  const starts: Input = { type: 'interrupt', interrupt: 'starts-now' };

  test('is taken back by going back, as if it had not been said', () => {
    const step = take(measuring(), starts, talk('back'));
    expect(said(step)).toEqual(['tell resumed', 'ask battery-rest']);
    expect(step.case.state.raised).toEqual([]);
  });

  test('leads back to the danger that was raised before, which may not be over', () => {
    const smoke: Input = { type: 'interrupt', interrupt: 'smoke' };
    const step = take(measuring(), smoke, starts, talk('back'));
    expect(awaits(step)).toBe('resume smoke');
    expect(said(take(step, talk('back')))).toEqual(['refused resume-first']);
  });
});

describe('a wait', () => {
  const waiting = (): Step =>
    take(
      measuring(),
      answers({ 'battery-rest': 11.2, 'battery-crank': 'low', 'drop-ground': 'good' }),
      confirm,
    );

  test('begins once its cautions are confirmed, and its end is a part of the case', () => {
    expect(said(waiting())).toEqual(['wait battery-recharged']);
    expect(waiting().messages[0]).toMatchObject({ minutes: 120, due: ten });
    expect(waiting().case.state.due).toEqual({ 'battery-recharged': ten });
  });

  test('outlives saving and restoring', () => {
    const restored = JSON.parse(JSON.stringify(waiting().case)) as Case;
    expect(awaits(next(restored, { type: 'tick' }, nine))).toBe('wait battery-recharged');
    expect(awaits(next(restored, { type: 'tick' }, ten))).toBe('answer battery-recharged');
  });

  test('does not begin again after an interrupt', () => {
    const step = next(waiting().case, { type: 'interrupt', interrupt: 'smoke' }, nine);
    const back = take(step, { type: 'resume' });
    expect(awaits(back)).toBe('confirm battery-recharged');
    expect(take(back, confirm).case.state.due).toEqual({ 'battery-recharged': ten });
  });

  test('that is over is not waited again on going back', () => {
    const step = next(waiting().case, { type: 'waited' }, nine);
    const read = take(step, answers({ 'battery-recharged': 12.1 }), talk('back'));
    expect(awaits(read)).toBe('answer battery-recharged');
  });

  test('is over sooner by the word of who waits', () => {
    const step = next(waiting().case, { type: 'waited' }, nine);
    expect(said(step)).toEqual(['ask battery-recharged']);
  });
});

describe('what cannot be taken', () => {
  const closed = (): Step =>
    take(
      measuring(),
      answers({ 'drop-ground': 1.2 }),
      talk('cannot'),
      talk('cannot'),
      talk('cannot'),
    );
  const reading = (value: number, unit = 'V'): unknown => ({
    type: 'answers',
    answers: [{ check: 'battery-rest', value: { value, unit } }],
  });

  interface Refusal {
    readonly code: RefusalCode;
    readonly what: string;
    readonly at: () => Step;
    readonly input: unknown;
    readonly told?: Partial<RefusedMessage>;
  }

  test.each<Refusal>([
    { code: 'not-an-input', what: 'nothing', at: open, input: null },
    { code: 'not-an-input', what: 'a text', at: open, input: 'yes' },
    { code: 'not-an-input', what: 'no answers', at: open, input: { type: 'answers', answers: [] } },
    { code: 'not-an-input', what: 'a figure that is none', at: open, input: reading(NaN) },
    {
      code: 'unknown-check',
      what: 'a check that is none',
      at: open,
      input: answers({ oil: 'low' }),
      told: { given: 'oil', possible: Object.keys(flow.checks) },
    },
    {
      code: 'unknown-choice',
      what: 'a choice that is none',
      at: open,
      input: answers({ scene: 'fine' }),
      told: { check: 'scene', given: 'fine', possible: ['safe', 'unsafe'] },
    },
    {
      code: 'one-choice',
      what: 'two of which one holds',
      at: open,
      input: answers({ scene: ['safe', 'unsafe'] }),
      told: { check: 'scene', possible: ['safe', 'unsafe'] },
    },
    {
      code: 'one-choice',
      what: 'none of these and one of them',
      at: open,
      input: answers({ history: ['none', 'water'] }),
      told: { check: 'history' },
    },
    {
      code: 'not-this-kind',
      what: 'a figure for a choice',
      at: open,
      input: answers({ scene: 12 }),
      told: { check: 'scene', given: '12 V', possible: ['safe', 'unsafe'] },
    },
    {
      code: 'not-a-number',
      what: 'a word for a figure',
      at: open,
      input: answers({ 'battery-rest': 'good' }),
      told: { check: 'battery-rest', given: 'good', possible: ['flat', 'discharged', 'ready'] },
    },
    {
      code: 'unknown-unit',
      what: 'a unit that is none',
      at: open,
      input: reading(12, 'volts'),
      told: { check: 'battery-rest', given: 'volts', possible: ['V'] },
    },
    {
      code: 'wrong-unit',
      what: 'a unit of something else',
      at: open,
      input: reading(12, 'A'),
      told: { check: 'battery-rest', given: 'A', possible: ['V'] },
    },
    {
      code: 'implausible',
      what: 'a missing point',
      at: open,
      input: reading(124),
      told: {
        check: 'battery-rest',
        given: '124 V',
        range: { low: 1, high: 18, unit: 'V' },
        likely: { value: 12.4, unit: 'V' },
      },
    },
    {
      code: 'implausible',
      what: 'leads the wrong way round',
      at: open,
      input: reading(-12.4),
      told: { likely: { value: 12.4, unit: 'V' } },
    },
    {
      code: 'implausible',
      what: 'the volts of a lorry',
      at: open,
      input: reading(25.2),
      told: { hint: 'nominal-24' },
    },
    {
      code: 'not-answered-yet',
      what: 'a correction of nothing',
      at: open,
      input: correct({ complaint: 'silent' }),
      told: { check: 'complaint', possible: [] },
    },
    {
      code: 'unknown-interrupt',
      what: 'an interrupt that is none',
      at: open,
      input: { type: 'interrupt', interrupt: 'rain' },
      told: { given: 'rain', possible: ['smoke', 'starts-now'] },
    },
    {
      code: 'unknown-context',
      what: 'a field that is none',
      at: open,
      input: context({ colour: 'red' }),
      told: { given: 'colour red' },
    },
    { code: 'nothing-to-confirm', what: 'a confirmation too many', at: open, input: confirm },
    {
      code: 'nothing-to-resume',
      what: 'a return from nothing',
      at: open,
      input: { type: 'resume' },
    },
    { code: 'nothing-to-resume', what: 'no wait', at: open, input: { type: 'waited' } },
    {
      code: 'nothing-to-resume',
      what: 'a danger taken back that nobody told of',
      at: open,
      input: { type: 'withdraw', interrupt: 'smoke' },
    },
    {
      code: 'resume-first',
      what: 'an answer during an interrupt',
      at: () => take(open(), { type: 'interrupt', interrupt: 'smoke' }),
      input: answers({ scene: 'safe' }),
    },
    { code: 'nothing-before', what: 'a step before the first', at: open, input: talk('back') },
    {
      code: 'closed',
      what: 'an answer to a closed case',
      at: closed,
      input: answers({ scene: 'safe' }),
    },
  ])('$code: $what', ({ code, at, input, told = {} }) => {
    const before = at();
    const step = next(before.case, input);
    expect(step.messages).toHaveLength(1);
    expect(step.messages[0]).toMatchObject({ kind: 'refused', code, ...told });
    expect(step.case).toBe(before.case);
    expect(step.events).toEqual([]);
  });

  test('clock-back: a turn before the last one', () => {
    const later = next(open().case, started, nine);
    const step = next(later.case, { type: 'tick' }, eight);
    expect(said(step)).toEqual(['refused clock-back']);
    expect(step.case).toBe(later.case);
  });

  test('not-an-input: a turn at no time', () => {
    const { case: kase } = open();
    expect(said(next(kase, { type: 'tick' }, 'noon'))).toEqual(['refused not-an-input']);
  });

  test('nothing of an input of which one part is wrong is taken', () => {
    const before = open();
    const step = next(before.case, answers({ scene: 'safe', complaint: 'loud' }));
    expect(said(step)).toEqual(['refused unknown-choice']);
    expect(step.case).toBe(before.case);
  });

  test.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])(
    'a name that every object has: %s',
    (name) => {
      const { case: kase } = open();
      const inputs: readonly unknown[] = [
        answers({ [name === '__proto__' ? 'valueOf' : name]: 'x' }),
        { type: 'answers', answers: [{ check: name, value: ['x'] }] },
        { type: 'correction', answers: [{ check: name, value: { value: 12, unit: 'V' } }] },
        { type: 'interrupt', interrupt: name },
      ];
      for (const input of inputs) {
        const step = next(kase, input);
        expect(step.messages.map(({ kind }) => kind)).toEqual(['refused']);
        expect(step.case).toBe(kase);
      }
    },
  );

  test('what was given is cut to 80 characters', () => {
    const step = next(open().case, { type: 'x'.repeat(10_000) });
    expect((step.messages[0] as RefusedMessage).given.length).toBeLessThanOrEqual(80);
  });

  test('an opening whose context is none', () => {
    expect(() => open({ place: 'moon' })).toThrow(ContextError);
    expect(() => open({ place: 'moon' })).toThrow(
      'the context has place: "moon"; expected live-lane, shoulder, parking, home, workshop',
    );
  });
});

describe('events', () => {
  const log = (): { events: readonly CaseEvent[]; kase: Case } => {
    const inputs = [
      started,
      looked,
      answers({ 'battery-rest': 11.2 }),
      correct({ complaint: 'silent' }),
      talk('back'),
      talk('dont-know'),
      confirm,
      { type: 'interrupt', interrupt: 'smoke' } as const,
      { type: 'resume' } as const,
      context({ place: 'home', callback: '07700 900123' }),
    ];
    let step = open(equipped);
    const events = [...step.events];
    for (const input of inputs) {
      step = take(step, input);
      events.push(...step.events);
    }
    return { events, kase: step.case };
  };

  test('make the case again', () => {
    const { events, kase } = log();
    expect(events.length).toBe(kase.events);
    expect(foldCase(chart, events)).toEqual(kase);
    expect(foldCase(chart, JSON.parse(JSON.stringify(events)) as CaseEvent[])).toEqual(kase);
  });

  test('hold nothing personal', () => {
    const { events, kase } = log();
    expect(JSON.stringify([events, kase])).not.toContain('07700');
  });

  test.each<readonly [string, CaseError['code'], (events: readonly CaseEvent[]) => unknown]>([
    ['are none', 'not-opened', () => []],
    ['lack their opening', 'not-opened', (all) => all.slice(1)],
    ['open the case twice', 'not-a-case', (all) => [...all, all[0]]],
    ['are of another format', 'other-format', (all) => [{ ...all[0], format: 0 }, ...all.slice(1)]],
    [
      'belong to another flow',
      'other-flow',
      (all) => [{ ...all[0], flow: { id: 'large', version: '1' } }, ...all.slice(1)],
    ],
    [
      'belong to another version of the flow',
      'other-flow',
      (all) => [{ ...all[0], flow: { id: 'small', version: '0' } }, ...all.slice(1)],
    ],
  ])('that %s are refused', (_, code, spoil) => {
    const { events } = log();
    let thrown: unknown;
    try {
      foldCase(chart, spoil(events) as CaseEvent[]);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(CaseError);
    expect((thrown as CaseError).code).toBe(code);
  });

  test('of a case of another version are not added to', () => {
    const { case: kase } = open();
    const other = { ...kase, flow: { id: 'small', version: '2' } };
    expect(() => next(other, { type: 'tick' })).toThrow(CaseError);
  });
});
