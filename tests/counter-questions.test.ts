/**
 * What a clerk is asked at the counter, in which order and in which words: what a new one met there.
 */
import {
  openCase,
  positionOf,
  turn,
  type AnswerInput,
  type Case,
  type Chart,
  type Message,
} from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { createSpeaker, localeTags, type Speaker } from '@keyturn/language';
import { describe, expect, test } from 'vitest';

type FlowName = 'starter-return' | 'battery-return';
type Said = Readonly<Record<string, string | number | readonly string[]>>;

const at = '2026-03-31T10:00:00.000Z';

function speakerOf(name: FlowName, locale = 'en'): Speaker {
  const { chart, texts } = shippedFlow(name, locale);
  return createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
}

interface Played {
  readonly case: Case;
  /** Checks in the order in which they were asked. */
  readonly asked: readonly string[];
  /** What was said last. */
  readonly messages: readonly Message[];
}

/** Answers what is asked, as far as it is known, up to a check; the rest can't be done. */
function play(name: FlowName, context: object, said: Said, until?: string): Played {
  const { chart } = shippedFlow(name, 'en');
  const asked: string[] = [];
  const left = new Map(Object.entries(said));
  let step = openCase(chart, { id: 'q', at, context: { role: 'clerk', ...context } });
  for (let turns = 0; turns < 100; turns += 1) {
    const position = positionOf(step.case);
    if (position.awaiting === 'nothing' || !('check' in position)) break;
    const { check } = position;
    if (position.awaiting === 'answer') {
      if (check === until) break;
      asked.push(check);
    }
    const input =
      position.awaiting === 'confirm' ? { type: 'confirm' } : inputFor(chart, check, left);
    step = turn(chart, step.case, { at, input });
  }
  return { case: step.case, asked, messages: step.messages };
}

function inputFor(chart: Chart, check: string, left: Map<string, Said[string]>): unknown {
  const said = left.get(check);
  left.delete(check);
  if (said === undefined) return { type: 'talk', talk: 'cannot' };
  const form = chart.flow.checks[check]?.form;
  const unit = form?.kind === 'reading' ? form.unit : '';
  const value: AnswerInput['value'] =
    typeof said === 'number' ? { value: said, unit } : typeof said === 'string' ? [said] : said;
  return { type: 'answers', answers: [{ check, value }] };
}

/** What a question says of how to do it, where a case waits for its answer. */
function howOf(name: FlowName, { messages }: Played, locale = 'en'): string {
  const rendered = speakerOf(name, locale).render([...messages]);
  const question = rendered.find((one) => one.kind === 'question');
  return question?.kind === 'question'
    ? question.how
        .join(' ')
        .replaceAll(/[\u2066-\u2069]/gu, '')
        .replaceAll('\u00a0', ' ')
    : '';
}

const looked: Said = {
  'sale-proof': 'shown',
  'part-number': 'matches-sale',
  'sale-date': 'warranty',
  handling: 'fitted',
  'suits-vehicle': 'suits',
};

const starter: Said = {
  ...looked,
  claim: 'slow-crank',
  stud: 'sound',
  housing: 'sound',
  pinion: 'clean',
  soiling: 'dry',
  'heat-marks': 'none',
  'drive-turn': 'one-way',
  plunger: 'throws-and-holds',
  'bench-run': 'even',
  'bench-supply': 11.6,
  'no-load-current': 44,
  'no-load-speed': 3200,
  'warm-repeat': 'same',
  'vehicle-proof': 'incomplete',
};
const direct = {
  kit: ['bench-tester', 'speed-meter'],
  part: { nominal: 12, build: 'direct', class: 'car' },
};

const battery: Said = {
  ...looked,
  claim: 'goes-flat',
  'battery-look': 'sound',
  posts: 'sound',
  electrolyte: 'covered',
  'received-volts': 12.1,
  'case-temperature': 20,
  'charge-take': 'takes',
  'battery-recharged': 12.7,
};
const kit = ['voltmeter', 'charger', 'load-tester', 'electronic-tester', 'thermometer'];
const labelled = (technology: string, standard = 'en'): object => ({
  kit,
  part: { battery: { technology, rating: 640, standard } },
});

describe('a starter on the bench', () => {
  test('too slow beside a right current is not called too near to a limit, and measured again', () => {
    const played = play('starter-return', direct, starter);
    const { decision } = played.case.state;
    expect(decision).toMatchObject({
      decide: 'test-further',
      reason: 'too-close-to-call',
      says: 'only-speed-low',
      again: ['no-load-speed'],
    });
    const [told] = decision === null ? [] : speakerOf('starter-return').render([decision]);
    const strength = told?.kind === 'verdict' ? told.strength : '';
    expect(strength).toMatch(/speed was measured too low.*ran even and strong/u);
    expect(strength).not.toMatch(/near/u);
    expect(played.asked.filter((check) => check === 'no-load-speed')).toHaveLength(2);
  });

  test('drawing too little at a right speed has its current measured again', () => {
    const given = { ...starter, 'no-load-current': 20, 'no-load-speed': 6500 };
    expect(play('starter-return', direct, given).case.state.decision).toMatchObject({
      reason: 'too-close-to-call',
      says: 'only-current-low',
      again: ['no-load-current'],
    });
  });

  test('near to a limit is still said to be', () => {
    const { decision } = play('starter-return', direct, { ...starter, 'no-load-speed': 5500 }).case
      .state;
    expect(decision).toMatchObject({ reason: 'too-close-to-call' });
    expect(decision?.says).toBeUndefined();
  });

  test('has its speed read, where there is a meter for it, before anybody calls it slow', () => {
    const { asked } = play('starter-return', direct, { ...starter, 'bench-run': 'slow' });
    expect(asked.filter((check) => check.startsWith('no-load') || check === 'bench-run')).toEqual([
      'no-load-current',
      'no-load-speed',
      'bench-run',
    ]);
  });
});

describe('a battery', () => {
  test('has its volts read before its temperature', () => {
    const { asked } = play('battery-return', labelled('flooded'), battery);
    expect(asked.indexOf('received-volts')).toBeLessThan(asked.indexOf('case-temperature'));
    expect(asked.indexOf('case-temperature')).toBeLessThan(asked.indexOf('charge-take'));
  });

  test.each([
    ['flooded', true],
    ['efb', true],
    ['sealed', false],
    ['agm', false],
    ['gel', false],
  ])('of the kind %s is looked into: %s', (kind, isOpened) => {
    const said = { ...battery, 'battery-kind': kind, 'cell-spread': 0.01 };
    const { asked } = play('battery-return', { kit: [...kit, 'hydrometer'] }, said);
    expect(asked.indexOf('battery-kind')).toBeGreaterThan(0);
    expect(asked.includes('electrolyte')).toBe(isOpened);
    expect(asked.includes('cell-spread')).toBe(isOpened);
    expect(asked.indexOf('electrolyte') > asked.indexOf('battery-kind')).toBe(isOpened);
  });

  test('of a kind that nobody knows is looked into where it opens', () => {
    const { asked } = play('battery-return', { kit }, battery);
    expect(asked).toContain('electrolyte');
  });

  test.each([
    ['flooded', /2 hr or more/u, /8/u],
    ['agm', /8 hr or more/u, /2 hr/u],
  ])('of the kind %s is told how long it rests', (kind, said, other) => {
    const how = howOf(
      'battery-return',
      play('battery-return', labelled(kind), battery, 'battery-recharged'),
    );
    expect(how).toMatch(said);
    expect(how).not.toMatch(other);
  });

  test('of a kind that nobody knows is told both', () => {
    const played = play('battery-return', { kit }, battery, 'battery-recharged');
    expect(howOf('battery-return', played)).toMatch(/2 hours or more, an AGM battery 8 hours/u);
  });

  test('low after a charge rests as long as its kind asks for', () => {
    const { decision } = play('battery-return', labelled('agm'), {
      ...battery,
      'battery-recharged': 12.3,
    }).case.state;
    const [told] = decision === null ? [] : speakerOf('battery-return').render([decision]);
    const lines = told?.kind === 'verdict' ? told.sections.flatMap((section) => section.lines) : [];
    expect(lines.join(' ')).toMatch(/rest for 8\shr\./u);
    expect(lines.join(' ')).not.toMatch(/2\sh/u);
  });

  test.each(localeTags)('in %s is loaded with half of its label, reckoned and said', (locale) => {
    const load = play('battery-return', labelled('flooded'), battery, 'battery-load-test');
    expect(howOf('battery-return', load, locale)).toMatch(/320 A.*640 A EN/u);
    const said = { ...battery, 'battery-load-test': 10.2 };
    const tester = play('battery-return', labelled('flooded'), said, 'battery-tester');
    expect(howOf('battery-return', tester, locale)).toMatch(/640 A EN/u);
  });

  test('without its label is loaded with half of whatever stands there', () => {
    const unlabelled = { kit, part: { battery: { technology: 'flooded' } } };
    const load = play('battery-return', unlabelled, battery, 'battery-load-test');
    expect(howOf('battery-return', load)).toMatch(/half of the label’s amperes/u);
  });

  test('whose cells differ is not said to have been charged, where it came full', () => {
    const { decision } = play(
      'battery-return',
      { ...labelled('flooded'), kit: [...kit, 'hydrometer'] },
      { ...battery, 'received-volts': 12.7, 'cell-spread': 0.035 },
    ).case.state;
    expect(decision).toMatchObject({ reason: 'charge-again', says: 'cells-apart' });
  });
});

describe.each(['starter-return', 'battery-return'] as const)('the flow %s', (name) => {
  const { chart, texts } = shippedFlow(name, 'en');

  test('asks for the proof of the sale before the part is held against it', () => {
    expect(play(name, {}, {}).asked.slice(0, 2)).toEqual(['sale-proof', 'part-number']);
  });

  test('has “not measured” first of what was measured on the vehicle', () => {
    const { form } = chart.flow.checks['vehicle-proof']!;
    expect(form.kind === 'choice' && form.choices[0]).toBe('incomplete');
  });

  test('says of no day how it is written where it is asked in words', () => {
    const played = play(name, {}, looked, 'sale-date');
    expect(howOf(name, played)).not.toMatch(/\d/u);
  });

  test('says how to do a thing in some twenty words', () => {
    for (const [check, { how = [] }] of Object.entries(texts.checks)) {
      for (const line of how) {
        for (const said of typeof line === 'string' ? [line] : [line.knowing, line.else]) {
          expect(said.split(/\s+/u).length, `${check}: ${said}`).toBeLessThanOrEqual(26);
        }
      }
    }
  });

  test.each(localeTags)('names in %s no figure that there is not', (locale) => {
    const said = JSON.stringify(shippedFlow(name, locale).texts);
    const named = [...said.matchAll(/\{\{(\w+)\}\}/gu)].map(([, figure]) => figure);
    // Beside those of the part, the names of the ones that are too close to call.
    const known = ['load', 'rating', 'standard', 'rest', 'figures'];
    expect(named.filter((figure = '') => !known.includes(figure))).toEqual([]);
  });
});
