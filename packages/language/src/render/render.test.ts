import type {
  AskMessage,
  DoneMessage,
  Message,
  NumbersMessage,
  ReadingMessage,
  RefusalCode,
  RefusedMessage,
  VerdictMessage,
} from '@keyturn/core';
import { describe, expect, test } from 'vitest';
import type { FlowTexts } from '../flow-texts.ts';
import { LanguageError } from '../language-error.ts';
import small from '../small-flow.test.json' with { type: 'json' };
import { createSpeaker } from '../create-speaker.ts';

const flowTexts: FlowTexts = small.texts;
const likes = { 'crank-after': { like: 'crank' } };
const { render } = createSpeaker({ locale: 'en', flowTexts, checks: likes });

/** All words of a message, a line each. */
function say(message: Message, role?: string): string[] {
  const speaker =
    role === undefined
      ? { render }
      : createSpeaker({ locale: 'en', flowTexts, checks: likes, role });
  return speaker.render([message]).flatMap((rendered): string[] => {
    switch (rendered.kind) {
      case 'verdict':
        return [
          rendered.title,
          rendered.strength,
          ...rendered.sections.flatMap(({ heading, lines }) => [`# ${heading}`, ...lines]),
        ];
      case 'ranking':
        return [rendered.heading, ...rendered.faults.map(({ name }) => name)];
      case 'numbers':
        return rendered.sections.flatMap(({ heading, lines }) => [heading, ...lines]);
      case 'caution':
        return [rendered.word, rendered.text];
      case 'question':
        return [
          rendered.text,
          ...rendered.how,
          ...rendered.options.map((o) => `${o.key} ${o.label}`),
        ];
      default:
        return [rendered.text];
    }
  });
}

const ask: AskMessage = {
  kind: 'ask',
  check: 'posts',
  form: 'choice',
  options: ['clean', 'crusted', 'loose'],
  lamp: [],
  minutes: 1,
  time: 1,
  remembered: false,
};

describe('a question', () => {
  test('has its steps and its answers under number keys', () => {
    expect(say(ask)).toEqual([
      'How do the battery posts look?',
      'Open the bonnet.',
      'Look at both posts.',
      '1 clean and tight',
      '2 crusted',
      '3 loose',
    ]);
  });

  test('says what was told of its list before it was asked', () => {
    expect(say({ ...ask, form: 'choices', mentioned: ['crusted', 'loose'] })[0]).toBe(
      'Told already: crusted and loose. How do the battery posts look?',
    );
  });

  test('is asked in other words once something was put right', () => {
    expect(say({ ...ask, time: 2 })[0]).toBe('How do the posts look now that they are cleaned?');
    expect(say({ ...ask, check: 'lamp', options: ['lit'], time: 2 })[0]).toBe(
      'Once more: Does the warning lamp light?',
    );
  });

  test('from memory has no steps to do', () => {
    expect(say({ ...ask, options: [], remembered: true })).toEqual([
      'How did the battery posts look when you last saw them?',
    ]);
    expect(say({ ...ask, check: 'lamp', options: [], remembered: true })[0]).toMatch(
      /^From memory/,
    );
  });

  const reading: AskMessage = {
    ...ask,
    check: 'rest',
    form: 'reading',
    options: ['flat', 'ready'],
    unit: 'V',
    probes: { red: 'plus-post', black: 'minus-post' },
  };

  test('for a reading has its unit, the steps that say where the leads go, and no keys', () => {
    expect(render([reading])).toEqual([
      {
        kind: 'question',
        check: 'rest',
        text: 'What does the battery read at rest?',
        how: ['Everything off.'],
        entry: 'reading',
        options: [],
        unit: 'V',
      },
    ]);
  });

  test('for a test lamp is answered in words', () => {
    const lamp = { ...reading, check: 'feed', lamp: ['dark', 'dim', 'bright'] };
    expect(render([lamp])[0]).toMatchObject({
      options: [
        { id: 'dark', key: 'dark', label: 'dark' },
        { id: 'dim', key: 'dim', label: 'dim' },
        { id: 'bright', key: 'bright', label: 'bright' },
      ],
    });
    expect(render([lamp])[0]).not.toHaveProperty('unit');
  });

  test('for work is answered when it is done', () => {
    expect(say({ ...ask, check: 'fitting', form: 'work', options: [] })).toEqual([
      'Fit the battery, and say when it is done.',
      '1 done',
    ]);
  });

  test('that takes long says how long', () => {
    expect(say({ ...ask, minutes: 20 })).toContain('This takes about 20 minutes.');
    expect(say({ ...ask, minutes: 4 }).join()).not.toMatch(/minutes/);
  });

  test('uses the words of the check that it is like', () => {
    expect(say({ ...ask, check: 'crank-after', options: ['low'] })).toEqual([
      'What does it read while the starter turns?',
      '1 low',
    ]);
  });
});

describe('a caution', () => {
  test.each([
    { word: 'danger', sign: 'DANGER' },
    { word: 'warning', sign: 'WARNING' },
    { word: 'caution', sign: 'CAUTION' },
    { word: 'notice', sign: 'NOTICE' },
  ] as const)('is said under $sign (ANSI Z535.4)', ({ word, sign }) => {
    expect(say({ kind: 'caution', caution: 'gas', word, confirm: true })).toEqual([
      sign,
      'Its gas explodes from a spark: no flame, eyes covered.',
    ]);
  });

  test.each([
    { cautions: ['gas'], says: /this caution/ },
    { cautions: ['gas', 'gas'], says: /these 2 cautions/ },
  ])('$cautions is confirmed', ({ cautions, says }) => {
    expect(say({ kind: 'confirm', check: 'rest', cautions })[0]).toMatch(says);
  });
});

describe('a reading', () => {
  const reading: ReadingMessage = {
    kind: 'reading',
    check: 'rest',
    quantity: { value: 12.41, unit: 'V', resolution: 0.01 },
    bands: ['flat', 'ready'],
    bounds: [{ low: 12.4, high: 12.4, source: { provenance: 'common practice', text: '' } }],
    unit: 'V',
    band: 'ready',
    weights: [
      ['flat', 0.38],
      ['ready', 0.62],
    ],
    uncertainty: 0.05,
    borderline: false,
  };

  test('says what it means', () => {
    expect(render([reading])).toEqual([
      {
        kind: 'scale',
        text: '12.41 V: charged enough to go on.',
        means: 'charged enough to go on.',
        reading,
        bandLabels: ['flat', 'ready'],
      },
    ]);
  });

  test('that nothing can be told of yet is noted all the same', () => {
    const unjudged = { ...reading, bounds: [], band: '', weights: [] };
    const text =
      '12.41 V: noted. What it means cannot be told without knowing more of this vehicle.';
    expect(render([unjudged])).toEqual([{ kind: 'text', text }]);
  });

  const expected = {
    low: 12.412,
    best: 12.6,
    high: 12.788,
    source: { provenance: 'common practice', text: '' },
  } as const;

  test('says what to expect, with no more decimals than mean something', () => {
    expect(say({ ...reading, expected })[0]).toBe(
      '12.41 V: charged enough to go on. Expected on this vehicle when nothing is wrong: 12.41 V to 12.79 V.',
    );
  });

  test.each([
    [{ by: 'repeat' }, /Read it once more, with clean and firm contact/],
    [{ by: 'time' }, /Let it rest for an hour/],
    [{ by: 'check', check: 'posts' }, /What can settle it: Battery posts\./],
    [{ by: 'nothing' }, /from here on\.$/],
  ] as const)('too close to a bound is settled by %j', (settling, says) => {
    expect(say({ ...reading, borderline: true, settling })[0]).toMatch(says);
  });

  test('too close to a bound says how likely each side is, likelier first', () => {
    expect(say({ ...reading, borderline: true })[0]).toMatch(
      /^12\.41 V: too close to call\. 62% that it is ready, 38% that it is flat\./,
    );
  });

  test.each([
    [0.94, /^12\.41 V: 94% that it is ready\. That is likely, but not certain\.( Expected|$)/],
    [0.79, /^12\.41 V: too close to call\. 79% that it is ready, 21% that it is flat\./],
  ])('of which one side has %d is said as surely as that', (share, says) => {
    const weights = [
      ['ready', share],
      ['flat', 1 - share],
    ] as const;
    const settling = { by: 'check', check: 'posts' } as const;
    expect(say({ ...reading, weights, borderline: true, settling })[0]).toMatch(says);
  });

  test('that was computed has its own words', () => {
    const resistance = { value: 12, unit: 'mOhm' } as const;
    expect(
      say({
        ...reading,
        check: 'resistance',
        quantity: resistance,
        bands: ['sound', 'worn'],
        band: 'worn',
        weights: [['worn', 1]],
      }),
    ).toEqual(['12 mΩ: The battery holds its current back.']);
  });

  test.each([
    { check: 'posts', answer: ['loose'], says: 'Battery posts: loose.' },
    {
      check: 'before',
      answer: ['left-on', 'worked-on'],
      says: 'What happened before: something was left on and somebody worked on it.',
    },
    { check: 'posts', answer: [], says: 'Battery posts: not known.' },
    { check: 'feed', answer: ['dim'], says: 'Supply at terminal 30: dim.' },
  ])('or an answer is said back: $says', ({ check, answer, says }) => {
    expect(say({ kind: 'noted', check, answer })).toEqual([says]);
  });
});

describe('the faults', () => {
  test('are ranked, with how they stood before', () => {
    expect(
      render([
        {
          kind: 'ranking',
          faults: [
            ['clamp', 0.2],
            ['worn', 0.798],
            ['cable', 0.002],
          ],
          before: [['worn', 0.5]],
        },
      ]),
    ).toEqual([
      {
        kind: 'ranking',
        heading: 'The 2 that fit best',
        faults: [
          { id: 'worn', name: 'Worn-out battery', share: 0.798, before: 0.5 },
          { id: 'clamp', name: 'Bad clamp', share: 0.2, before: 0 },
        ],
      },
    ]);
  });

  test('are one where one is left', () => {
    expect(say({ kind: 'ranking', faults: [['worn', 1]], before: [] })[0]).toBe('What fits best');
  });

  test.each([
    [0.15, 'it takes 10 seconds,'],
    [0.6, 'it takes 40 seconds,'],
    [3.4, 'it takes 3 minutes,'],
  ])(
    'are why a check of %f minutes comes now, in a time that anybody can picture',
    (minutes, said) => {
      const [, worth] = say({
        kind: 'why',
        check: 'rest',
        outcomes: [],
        bounds: [],
        worth: { minutes, saves: 7 },
      });
      expect(worth).toContain(said);
    },
  );

  test('are why a check is asked, with the sources of its bounds', () => {
    expect(
      say({
        kind: 'why',
        check: 'rest',
        outcomes: [
          {
            answer: 'flat',
            faults: [
              ['worn', 0.7],
              ['clamp', 0.3],
            ],
          },
          { answer: 'ready', faults: [] },
        ],
        bounds: [
          {
            low: 12.4,
            high: 12.4,
            source: { provenance: 'published', text: 'TM 5-3805-262-20 para 5-9' },
          },
          {
            low: 12.4,
            high: 12.6,
            source: { provenance: 'common practice', text: 'kind unknown' },
          },
        ],
        unit: 'V',
      }),
    ).toEqual([
      'It says how full the battery is.',
      'If the answer is “flat”: most likely Worn-out battery (70%) and Bad clamp (30%).',
      'If the answer is “ready”: it says nothing about the fault.',
      'Bound at 12.4 V: published (TM 5-3805-262-20 para 5-9).',
      'Bound between 12.4 V and 12.6 V: common practice, no source (kind unknown).',
    ]);
  });
});

test('answers that would mean the same are told together, and not at all where all do', () => {
  const why = (shares: readonly number[]): string[] =>
    say({
      kind: 'why',
      check: 'posts',
      outcomes: shares.map((share, at) => ({
        answer: ['clean', 'crusted', 'loose'][at] ?? '',
        faults: [['worn', share]],
      })),
      bounds: [],
    });
  expect(why([0.7, 0.4, 0.7]).slice(1)).toEqual([
    'If the answer is “clean and tight or loose”: most likely Worn-out battery (70%).',
    'If the answer is “crusted”: most likely Worn-out battery (40%).',
  ]);
  expect(why([0.7, 0.7, 0.7]).slice(1)).toEqual([]);
});

describe('the numbers', () => {
  const none = { losses: [] };

  test('of a case without a reading are none', () => {
    expect(say({ kind: 'numbers', readings: [], losses: none })).toEqual([
      'No reading has been taken by a meter so far.',
    ]);
  });

  test('of a reading are its spread, what to expect, its bounds, and the chance of each side', () => {
    const numbers: NumbersMessage = {
      kind: 'numbers',
      readings: [
        {
          kind: 'reading',
          check: 'rest',
          quantity: { value: 12.41, unit: 'V', resolution: 0.01 },
          bands: ['flat', 'ready'],
          bounds: [
            { low: 12.4, high: 12.4, source: { provenance: 'published', text: 'a manual' } },
          ],
          unit: 'V',
          band: 'ready',
          weights: [
            ['flat', 0.38],
            ['ready', 0.62],
          ],
          uncertainty: 0.0476,
          borderline: true,
          expected: {
            low: 12.4,
            best: 12.6,
            high: 12.8,
            source: { provenance: 'computed', text: 'a model' },
          },
        },
      ],
      losses: {
        losses: [
          {
            part: 'ground',
            loss: { low: 1180, best: 1200, high: 1220, unit: 'mV' },
            resistance: { low: 7.8, best: 8.04, high: 8.3, unit: 'mOhm' },
            share: 0.75,
          },
          { part: 'battery', loss: { low: 300, best: 400, high: 500, unit: 'mV' }, share: 0.25 },
        ],
        atMotor: { low: 10.1, best: 10.246, high: 10.4, unit: 'V' },
      },
    };
    expect(say(numbers)).toEqual([
      'Resting voltage: 12.41 V ± 0.10 V',
      'Expected when nothing is wrong: 12.4 V to 12.8 V, computed (a model).',
      'Bound at 12.4 V: published (a manual).',
      'That makes it: flat 38% and ready 62%.',
      'Where the volts are lost',
      'Ground side: 1,200 mV ± 20 mV, 8.0 mΩ, 75% of what was found lost',
      'Inside the battery: 400 mV ± 100 mV, 25% of what was found lost',
      '10.25 V reach the motor.',
    ]);
  });
});

describe('a verdict', () => {
  const verdict: VerdictMessage = {
    kind: 'verdict',
    fault: 'worn',
    strength: 'proved',
    probability: 0.97,
    ranking: [
      ['worn', 0.97],
      ['clamp', 0.03],
    ],
    remedy: 'fit',
    send: 'van',
    licensed: false,
    roots: ['age'],
    proof: [['crank', 'low']],
    settle: [],
    waits: false,
    stops: [],
  };

  test('that is proved names the fault, what proves it, what to do and why it happened', () => {
    expect(say(verdict)).toEqual([
      'At fault: Worn-out battery',
      'Proved by measurement.',
      '# What this rests on',
      'Cranking voltage: low',
      '# What to do',
      'Fit a new battery.',
      'Prove it.',
      '# Who should come',
      'A van with a battery.',
      '# Why it happened',
      'It is simply old.',
      '# What would change this',
      'Only a finding that contradicts the ones above.',
    ]);
  });

  test('that is likely names the check that would settle it, and the kit that it lacks', () => {
    const lines = say({
      ...verdict,
      strength: 'likely',
      probability: 0.72,
      proof: [],
      settle: [
        { check: 'crank', lacks: ['voltmeter', 'helper'] },
        { check: 'rest', lacks: [] },
      ],
    });
    expect(lines[0]).toBe('Most likely at fault: Worn-out battery');
    expect(lines[1]).toBe(
      'Likely, not proved: 72% with what is known now. Cranking voltage or Resting voltage would settle it.',
    );
    expect(lines).toContain('Cranking voltage: it needs a voltmeter and somebody to help.');
    expect(lines).toContain('Resting voltage.');
  });

  test('that is open gives the ranking and who should look next', () => {
    const lines = say({ ...verdict, strength: 'open', proof: [] });
    expect(lines[0]).toMatch(/^Not settled yet/);
    expect(lines[1]).toMatch(/Worn-out battery \(97%\) and Bad clamp \(3%\)/);
    expect(lines[1]).toMatch(/should look next/);
  });

  test('says what is forbidden and who must do licensed work', () => {
    const lines = say({ ...verdict, licensed: true, stops: ['unfit'] });
    expect(lines).toContain('Do not charge, boost or crank this battery.');
    expect(lines.join(' ')).toMatch(/# Who must do the work .*Local rules/);
  });

  test('names the second fault where both at once fit best, and what to do about it next', () => {
    const lines = say({ ...verdict, also: { fault: 'clamp', remedy: 'fit', probability: 0.61 } });
    expect(lines.slice(lines.indexOf('# What is wrong as well, to be put right next'))).toEqual(
      expect.arrayContaining(['Bad clamp. Both at once fit best (61%).', 'Fit a new battery.']),
    );
    expect(say(verdict).join(' ')).not.toContain('wrong as well');
  });

  test('sends nobody where nobody need come', () => {
    expect(say({ ...verdict, send: 'nothing' })).not.toContain('# Who should come');
  });

  test('gives a driver the driver’s words', () => {
    expect(say(verdict, 'driver')).toContain('Have a new battery fitted.');
    expect(say(verdict, 'driver')).not.toContain('Fit a new battery.');
  });
});

describe('a refusal', () => {
  const codes: Readonly<Record<RefusalCode, RegExp>> = {
    'unknown-check': /no check called “x”/,
    'unknown-choice': /“x” is not one of the answers/,
    'unknown-unit': /a unit that is not known/,
    'wrong-unit': /does not fit Resting voltage/,
    'not-a-number': /“x” is not a figure/,
    implausible: /cannot be right for Resting voltage/,
    'no-such-day': /“x” is no day of the calendar/,
    'day-to-come': /“x” is still to come/,
    'day-long-ago': /“x” is too long ago/,
    'no-terms': /terms of this shop are not known/,
    'one-choice': /Only one answer/,
    'not-this-kind': /does not answer Resting voltage/,
    'not-answered-yet': /Resting voltage has not been answered yet/,
    'unknown-interrupt': /not known as an emergency/,
    'unknown-context': /not known about a vehicle/,
    'nothing-to-confirm': /nothing to confirm/,
    'nothing-to-resume': /nothing to come back from/,
    'resume-first': /First things first/,
    'nothing-before': /first question/,
    'too-early': /too early for Resting voltage/,
    closed: /case is closed/,
    'not-an-input': /could not be read/,
    'clock-back': /clock .* backwards/,
    'wrong-load': /read it again/,
  };

  const refused = (code: RefusalCode, more: Partial<RefusedMessage> = {}): RefusedMessage => ({
    kind: 'refused',
    code,
    check: 'rest',
    given: 'x',
    possible: [],
    ...more,
  });

  test.each(Object.keys(codes) as RefusalCode[])('%s is a whole sentence', (code) => {
    const [text = ''] = say(refused(code));
    expect(text).toMatch(codes[code]);
    expect(text).toMatch(/[.?]$/);
    expect(text).not.toMatch(/\{\{|undefined/);
  });

  test.each([
    {
      message: refused('unknown-choice', { check: 'posts', possible: ['clean', 'loose'] }),
      says: /Possible: clean and tight or loose\.$/,
    },
    { message: refused('wrong-unit', { possible: ['V'] }), says: /Possible: a figure \(V\)\.$/ },
    {
      message: refused('wrong-unit', { given: 'Cel' }),
      says: /^“°C” has a unit that does not fit/,
    },
    {
      message: refused('wrong-load', { load: { told: 200, rating: 640, half: 320 } }),
      says: /^It was loaded with 200 A\. Half of the 640 A on the label is 320 A/,
    },
    { message: refused('unknown-check', { possible: ['rest'] }), says: /Resting voltage\.$/ },
    {
      message: refused('unknown-interrupt', { possible: ['smoke'] }),
      says: /Possible: Smoke or fire\.$/,
    },
  ])('of $message.code says what is possible', ({ message, says }) => {
    expect(say(message)[0]).toMatch(says);
  });

  const range = { low: 0, high: 16, unit: 'V' } as const;
  test.each([
    {
      more: { likely: { value: 12.4, unit: 'V', resolution: 0.1 } },
      says: '124 V cannot be right for Resting voltage: it lies between 0 V and 16 V. Did you mean 12.4 V?',
    },
    {
      more: { hint: 'nominal-24' },
      says: '124 V cannot be right for Resting voltage: it lies between 0 V and 16 V. If it is a 24 V vehicle, say “24 V vehicle” and give the figure again.',
    },
    {
      more: {},
      says: '124 V cannot be right for Resting voltage: it lies between 0 V and 16 V. Please read it again.',
    },
  ] as const)('of an implausible figure: $says', ({ more, says }) => {
    expect(say(refused('implausible', { given: '124 V', range, ...more }))).toEqual([says]);
  });
});

describe('what else is said', () => {
  test.each([
    { tell: 'opening', says: 'Let us look at it together.' },
    { tell: 'person', says: /person takes over/ },
    { tell: 'stopped', says: /Nothing is lost/ },
    { tell: 'resumed', says: /go on where we were/ },
    { tell: 'withdrawn', says: /taken back/ },
    { tell: 'returned', says: /question before/ },
    { tell: 'restored', says: /correction is undone/ },
    { tell: 'learned', says: /taken into account/ },
    { tell: 'check-again', about: 'rest', says: /Resting voltage/ },
    { tell: 'check-again', says: /second look/ },
  ] as const)('$tell $about', ({ says, ...message }) => {
    const [text] = say({ kind: 'tell', ...message });
    if (typeof says === 'string') expect(text).toBe(says);
    else expect(text).toMatch(says);
  });

  test.each(['proved-repaired', 'unproved', 'still-failing', 'handed-over', 'ended'] as const)(
    'the end: %s',
    (outcome: DoneMessage['outcome']) => {
      expect(render([{ kind: 'done', outcome }])).toMatchObject([
        { kind: 'done', text: expect.stringMatching(/\.$/) as unknown },
      ]);
    },
  );

  test('the end of a repair that is not proved: what is missing for the proof', () => {
    const lacks = ['rest', 'crank'];
    expect(say({ kind: 'done', outcome: 'unproved', lacks })).toEqual([
      'Done, but not proved. Still missing for the proof: Resting voltage and Cranking voltage.',
    ]);
  });

  test('answers of one question that may have been meant, with its name once', () => {
    const { askBack } = createSpeaker({ locale: 'en', flowTexts, checks: likes });
    const offer = (check: string, label: string) => ({ check, value: label, label });
    const asked = (...offers: readonly ReturnType<typeof offer>[]) =>
      askBack({ type: 'offers', offers }).map((one) =>
        'text' in one ? one.text.replaceAll(/[\u2066-\u2069]/gu, '') : '',
      );
    const name = flowTexts.checks['sound']?.name ?? '';
    expect(asked(offer('sound', 'it clicks'), offer('sound', 'it turns'))).toEqual([
      `Not quite sure which is meant (${name}): “it clicks” or “it turns”?`,
    ]);
    expect(asked(offer('sound', 'it clicks'), offer('lamp', 'it clicks'))[0]).toContain(
      `“it clicks” (${name})`,
    );
  });

  test('an interrupt: what to do at once, then how to go on', () => {
    const smoke = { kind: 'interrupt', interrupt: 'smoke', word: 'danger' } as const;
    expect(say({ ...smoke, then: 'return' })).toEqual([
      'DANGER',
      'Smoke or fire. Ignition off. Get well away.',
      'Say so when it is safe again.',
    ]);
    expect(say({ ...smoke, interrupt: 'leak', then: 'return' })[2]).toMatch(/it is over/);
  });

  test('a wait: how long, and for what', () => {
    const due = '2026-11-25T10:00:00Z';
    expect(say({ kind: 'wait', check: 'rest', minutes: 1, due })[0]).toMatch(
      /^Wait 1 minute before the next step: Resting voltage\./,
    );
    expect(say({ kind: 'wait', check: 'rest', minutes: 120, due })[0]).toMatch(/^Wait 120 minutes/);
  });

  test.each([
    { checks: ['rest'], says: /as it no longer holds .*: Resting voltage\.$/ },
    {
      checks: ['rest', 'crank'],
      says: /these 2 answers .*: Resting voltage and Cranking voltage\.$/,
    },
  ])('answers set aside: $checks', ({ checks, says }) => {
    expect(say({ kind: 'set-aside', checks })[0]).toMatch(says);
  });
});

describe('a text that the flow lacks is thrown by its key', () => {
  test.each([
    { message: { ...ask, check: 'nowhere' }, key: 'checks.nowhere' },
    { message: { ...ask, options: ['purple'] }, key: 'checks.posts.answers.purple.label' },
    { message: { ...ask, check: 'constructor' }, key: 'checks.constructor' },
    {
      message: { kind: 'caution', caution: 'x', word: 'danger', confirm: false },
      key: 'cautions.x',
    },
    { message: { kind: 'ranking', faults: [['x', 1]], before: [] }, key: 'faults.x' },
  ] as const)('$key', ({ message, key }) => {
    expect(() => render([message])).toThrow(new LanguageError('text-missing', key));
  });
});
