/**
 * The code of a case: every case card, and cases with interrupts and odd readings, go into a code
 * and come back as the same case.
 */
import { foldCase, openCase, turn, type Case } from '@keyturn/core';
import { CodeError, decodeFindings, encodeFindings, replayFindings } from '@keyturn/sheets';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { caseOfCard } from './support/card-case.ts';
import { cards, noStart } from './support/no-start.ts';
import { answers, next, open, playOut, start, take } from './support/play.ts';

const { chart } = noStart;
const { flow } = chart;

function throughCode(kase: Case): Case {
  return replayFindings(chart, decodeFindings([flow], encodeFindings(flow, kase))).case;
}

/** What a case has found, and what follows from it. */
function found({ state }: Case): unknown {
  const { answers: given, order, verdict, outcome, raised } = state;
  return { given, order, verdict, outcome, raised };
}

/** Every ninth card: a card takes a second or so, and all of them would take minutes. */
const some = cards.filter((_, index) => index % 9 === 0);

describe('a case comes back from its code with the same answers, verdict and end', () => {
  test.each(some.map((card) => [card.id, card] as const))('%s', (_, card) => {
    const kase = caseOfCard(card);
    expect(found(throughCode(kase))).toEqual(found(kase));
  });

  test('in which somebody smelled fuel meanwhile', () => {
    const begun = take(open(), answers({ complaint: 'slow-crank', terminals: 'clean-tight' }));
    const raised = next(begun.case, { type: 'interrupt', interrupt: 'fuel-leak' });
    const kase = next(raised.case, { type: 'resume' }).case;
    expect(kase.state.raised).toEqual(['fuel-leak']);
    expect(found(throughCode(kase))).toEqual(found(kase));
  });

  test('that ended since it started', () => {
    const begun = take(open(), answers({ complaint: 'slow-crank', 'battery-rest': 12.2 }));
    const started = next(begun.case, { type: 'interrupt', interrupt: 'started' });
    const { step } = playOut(started, { charging: 14.2, 'start-after': 'starts' });
    expect(found(throughCode(step.case))).toEqual(found(step.case));
  });

  test('with what is known of its vehicle, and its id and time', () => {
    const context = {
      kit: ['voltmeter', 'helper'],
      temperature: -7.5,
      vehicle: { nominal: 24, fuel: 'diesel', startStop: false, battery: { age: 3.5 } },
      meter: { percent: 0.8, digits: 3 },
    };
    const id = '0b6c1d2e-3f40-4a51-8b62-7c8d9eafb0c1';
    const kase = openCase(chart, { id, at: '2026-03-04T05:06:07.890Z', context }).case;
    const back = decodeFindings([flow], encodeFindings(flow, kase));
    expect(back.id).toBe(id);
    expect(back.at).toBe('2026-03-04T05:06:00.000Z');
    expect(back.context).toEqual(kase.state.given);
  });

  test('without the free text that was told of it', () => {
    const context = { vehicle: { fuel: 'petrol', notes: { relay: 'left of the grey box' } } };
    const kase = open(context).case;
    const back = decodeFindings([flow], encodeFindings(flow, kase));
    expect(back.context).toEqual({ 'vehicle.fuel': 'petrol' });
  });

  test('with readings of every form', () => {
    const kase = take(
      open({ meter: { percent: 1, digits: 2, counts: 6000 } }),
      answers({
        'battery-rest': { value: 12.4, unit: 'V', resolution: 0.01 },
        'drop-ground': { value: 250, unit: 'mV', resolution: 0.25 },
        'battery-crank': { value: 9.123456789, unit: 'V' },
        'crank-current': { value: 170, unit: 'A', resolution: 10 },
      }),
    ).case;
    expect(throughCode(kase).state.answers).toEqual(kase.state.answers);
  });

  test('of which a reading was given by its band, and a check was not known', () => {
    const begun = take(open(), answers({ complaint: 'silent', 'battery-rest': 'ready' })).case;
    const kase = next(begun, { type: 'talk', talk: 'dont-know' }).case;
    expect(throughCode(kase).state.answers).toEqual(kase.state.answers);
  });
});

describe('a code', () => {
  const kase = take(
    open({ role: 'mechanic', place: 'home' }),
    answers({
      complaint: 'slow-crank',
      terminals: 'clean-tight',
      'battery-rest': { value: 12.64, unit: 'V', resolution: 0.01 },
      'drop-ground': { value: 1.42, unit: 'V', resolution: 0.01 },
    }),
  ).case;
  const code = encodeFindings(flow, kase);

  test('is the same for the same case, short, and of letters that a QR code holds densely', () => {
    expect(encodeFindings(flow, kase)).toBe(code);
    expect(code).toMatch(/^KT1[0-9A-HJKMNP-TV-Z]+$/);
    expect(code.length).toBeLessThan(90);
  });

  test('is read as people type it', () => {
    const typed = (code.toLowerCase().match(/.{1,5}/g) ?? []).join('-').replaceAll('0', 'o');
    expect(decodeFindings([flow], ` ${typed}\n`)).toEqual(decodeFindings([flow], code));
  });

  test('with one letter changed, two exchanged, some missing or some too many is refused', () => {
    const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: code.length - 1 }),
        fc.constantFrom(...Array.from(alphabet)),
        (at, letter) => {
          const changed = code.slice(0, at) + letter + code.slice(at + 1);
          fc.pre(changed !== code && at < code.length - 1);
          expect(codeOf(() => decodeFindings([flow], changed))).toBe('damaged');
        },
      ),
    );
    fc.assert(
      fc.property(fc.integer({ min: 3, max: code.length - 3 }), (at) => {
        const [one = '', other = ''] = code.slice(at, at + 2);
        fc.pre(one !== other);
        const exchanged = code.slice(0, at) + other + one + code.slice(at + 2);
        expect(codeOf(() => decodeFindings([flow], exchanged))).toBe('damaged');
      }),
    );
    for (let length = 3; length < code.length - 1; length += 1) {
      expect(codeOf(() => decodeFindings([flow], code.slice(0, length)))).toBe('damaged');
    }
    expect(codeOf(() => decodeFindings([flow], `${code}00`))).toBe('damaged');
  });

  test.each([
    ['', 'empty'],
    ['  - ', 'empty'],
    ['4006381333931', 'foreign'],
    ['https://example.org/case/1', 'foreign'],
    ['KT', 'foreign'],
    ['KT1', 'damaged'],
    [`KT1${'U'.repeat(20)}`, 'damaged'],
    ['KT2ABCDEF', 'too-new'],
    ['x'.repeat(100_000), 'foreign'],
  ])('that is “%.20s” is refused as %s', (text, why) => {
    expect(codeOf(() => decodeFindings([flow], text))).toBe(why);
  });

  test('of a flow that is not there, or of a finding that this version lacks, says so', () => {
    const other = { ...flow, id: 'other' };
    expect(() => decodeFindings([other], code)).toThrow(/flow that is not known here: other/);
    const { terminals, ...checks } = flow.checks;
    expect(terminals).toBeDefined();
    expect(codeOf(() => decodeFindings([{ ...flow, checks }], code))).toBe('unknown-finding');
    expect(() => encodeFindings(other, kase)).toThrow(RangeError);
  });

  test('of any text never throws anything else', () => {
    fc.assert(
      fc.property(fc.string(), fc.boolean(), (text, isCode) => {
        const why = codeOf(() => decodeFindings([flow], isCode ? `KT1${text}` : text));
        expect(['empty', 'foreign', 'too-new', 'damaged']).toContain(why);
      }),
    );
  });

  test('goes on as any case does', () => {
    const { case: again, events } = replayFindings(chart, decodeFindings([flow], code));
    expect(foldCase(chart, events)).toEqual(again);
    const step = turn(chart, again, { at: start, input: { type: 'talk', talk: 'numbers' } });
    expect(step.messages[0]?.kind).toBe('numbers');
  });
});

function codeOf(act: () => unknown): string | undefined {
  try {
    act();
    return undefined;
  } catch (error) {
    if (error instanceof CodeError) return error.code;
    throw error;
  }
}
