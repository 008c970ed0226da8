import type { Check, Input } from '@keyturn/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FlowTexts } from '../flow-texts.ts';
import { createLexicon } from './lexicon.ts';
import small from '../small-flow.test.json' with { type: 'json' };
import { createSpeaker } from '../create-speaker.ts';
import { understandText } from './understand.ts';
import type { Hearing, Understood } from './understood.ts';
import { enWords } from '../words/en.ts';

const flowTexts: FlowTexts = small.texts;
const checks = small.checks as unknown as Record<string, Check>;
const speaker = createSpeaker({ locale: 'en', flowTexts, checks });

function hearing(check: string | null, more: Partial<Hearing> = {}): Hearing {
  const interrupts = Object.keys(flowTexts.interrupts);
  const answered: string[] = [];
  return {
    awaiting: 'answer',
    check,
    checks,
    interrupts,
    answered,
    kit: [],
    nominal: 12,
    lamp: false,
    ...more,
  };
}

function inputs(text: string, to: Hearing): readonly Input[] {
  const understood = speaker.understand(text, to);
  return understood.type === 'input' ? understood.inputs : [];
}

/** What was understood as one line: `rest=12.4 V/0.1`, `posts=loose`, `correction …`. */
function show(understood: Understood): string {
  if (understood.type === 'unclear') return `unclear ${understood.code}`;
  if (understood.type === 'language') return `language ${understood.locale}`;
  if (understood.type === 'offers') {
    return `offers ${understood.offers
      .filter((one) => 'check' in one)
      .map(
        ({ check, value }) =>
          `${check}=${typeof value === 'string' ? value : `${value.value} ${value.unit}`}`,
      )
      .join(' ')}`;
  }
  return understood.inputs.map(showInput).join(' then ');
}

function showInput(input: Input): string {
  switch (input.type) {
    case 'answers':
    case 'correction': {
      const answers = input.answers.map(({ check, value }) => {
        if (!('value' in value)) return `${check}=${value.join('+')}`;
        return `${check}=${value.value} ${value.unit}/${value.resolution}`;
      });
      return `${input.type === 'correction' ? 'correction ' : ''}${answers.join(' ')}`;
    }
    case 'talk':
      return `talk ${input.talk}`;
    case 'interrupt':
      return `interrupt ${input.interrupt}`;
    case 'context':
      return `context ${JSON.stringify(input.set)}`;
    default:
      return input.type;
  }
}

type Row = readonly [check: string | null, text: string, means: string];

function hold(rows: readonly Row[], more: Partial<Hearing> = {}): void {
  test.each(rows)('at %s "%s" is %s', (check, text, means) => {
    expect(show(speaker.understand(text, hearing(check, more)))).toBe(means);
  });
}

describe('the number of an option picks it', () => {
  hold([
    ['sound', '2', 'sound=one-knock'],
    ['sound', ' 2. ', 'sound=one-knock'],
    ['sound', 'option 3', 'sound=fast-knocks'],
    ['sound', 'the second one', 'sound=one-knock'],
    ['sound', 'four', 'sound=slow-turn'],
    ['sound', '5', 'unclear unknown-choice'],
    ['sound', '0', 'unclear unknown-choice'],
    ['sound', '1, 2', 'unclear one-choice'],
    ['sound', '1 1', 'sound=quiet'],
    ['sound', '1.2', 'unclear unknown-choice'],
    ['before', '1, 3', 'before=left-on+worked-on'],
    ['before', '1 3', 'before=left-on+worked-on'],
    ['before', '1,3', 'before=left-on+worked-on'],
    ['before', '3 and 1', 'before=worked-on+left-on'],
    ['before', '1, 9', 'unclear unknown-choice'],
    ['fitting', '1', 'fitting=done'],
    ['rest', '2', 'rest=2 V/1'],
  ]);
});

describe('an answer in words is its id, its label or another way to say it', () => {
  hold([
    ['sound', 'one-knock', 'sound=one-knock'],
    ['sound', 'One knock', 'sound=one-knock'],
    ['sound', 'ONE KNOCK!!!', 'sound=one-knock'],
    ['sound', 'it only knocks once', 'sound=one-knock'],
    ['sound', 'knoock knock knock', 'sound=fast-knocks'],
    ['sound', 'it is completely silent', 'sound=quiet'],
    ['sound', 'it turns really slowly', 'sound=slow-turn'],
    ['sound', 'turning slow', 'sound=slow-turn'],
    ['sound', 'slugish', 'sound=slow-turn'],
    ['sound', 'ratlting', 'sound=fast-knocks'],
    ['posts', 'clean', 'posts=clean'],
    ['posts', 'there is white powder on them', 'posts=crusted'],
    ['lamp', 'yes', 'lamp=lit'],
    ['lamp', 'no', 'lamp=dark'],
    ['before', 'lights were left on, and it was serviced', 'before=left-on+worked-on'],
    ['before', 'nothing', 'before=nothing-special'],
  ]);
});

describe('a denied answer is not taken for the answer', () => {
  hold([
    ['sound', 'no knock at all', 'sound=quiet'],
    ['sound', 'it does not knock', 'sound=quiet'],
    ['posts', 'not corroded', 'offers posts=clean posts=loose'],
    ['posts', 'not corroded but loose', 'posts=loose'],
    ['posts', 'loose, not corroded', 'posts=loose'],
    ['lamp', 'it does not light', 'lamp=dark'],
    ['lamp', 'not dark', 'lamp=lit'],
  ]);
});

describe('what is close but not certain is offered', () => {
  hold([
    ['sound', 'knocking', 'offers sound=one-knock sound=fast-knocks'],
    ['posts', 'clean but loose', 'offers posts=clean posts=loose'],
    ['sound', 'purple', 'unclear unknown-choice'],
  ]);
});

describe('a reading is read as people type it', () => {
  hold([
    ['rest', '12.4', 'rest=12.4 V/0.1'],
    ['rest', '12,4', 'rest=12.4 V/0.1'],
    ['rest', '12.40 V', 'rest=12.4 V/0.01'],
    ['rest', '12.5 volts', 'rest=12.5 V/0.1'],
    ['rest', '12V', 'rest=12 V/1'],
    ['rest', '12V4', 'rest=12.4 V/0.1'],
    ['rest', 'twelve four', 'rest=12.4 V/0.1'],
    ['rest', '12,650', 'rest=12.65 V/0.001'],
    ['rest', 'this one reads 12.4', 'rest=12.4 V/0.1'],
    ['rest', 'about 12 and a half', 'rest=12.5 V/0.1'],
    ['rest', 'roughly twelve point four', 'rest=12.4 V/0.1'],
    ['feed', '0.25V', 'feed=0.25 V/0.01'],
    ['feed', '240 mV', 'feed=240 mV/1'],
    ['rest', '1,200 mV', 'rest=1200 mV/1'],
    ['feed', '1/2', 'feed=0.5 V/0.1'],
    ['rest', 'the meter says 12.4 at the moment', 'rest=12.4 V/0.1'],
    ['rest', 'it is 12.4v I think', 'rest=12.4 V/0.1'],
    ['draw', '180 amps', 'draw=180 A/1'],
    ['draw', '180A', 'draw=180 A/1'],
    ['draw', 'a hundred and eighty', 'draw=180 A/1'],
    ['air', '-8', 'air=-8 Cel/1'],
    ['air', '-8 degrees', 'air=-8 Cel/1'],
    ['air', 'minus eight celsius', 'air=-8 Cel/1'],
    ['air', '70F', 'air=70 [degF]/1'],
    ['air', '70 °F', 'air=70 [degF]/1'],
    ['age', '3', 'age=3 a/1'],
    ['age', 'about three years', 'age=3 a/1'],
    ['age', '18 months', 'age=18 mo/1'],
    ['feed', 'terminal 30: 12.1', 'feed=12.1 V/0.1'],
  ]);
});

describe('what a test lamp shows is answered in words', () => {
  hold([
    ['feed', 'dim', 'feed=dim'],
    ['feed', 'it is bright', 'feed=bright'],
    ['feed', 'off', 'feed=dark'],
    ['feed', '12.1', 'feed=12.1 V/0.1'],
  ]);
});

describe('a figure that is no reading is asked back about', () => {
  hold([
    ['rest', '12 bananas', 'unclear unknown-unit'],
    ['rest', '12.4 12.6', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', '12.4, 12.6', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', '12.4 to 12.6', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', '12.4-12.6 V', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', '12.4 V - 12.6 V', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', 'between 12.4 and 12.6', 'offers rest=12.4 V rest=12.6 V'],
    ['rest', '12.4, 12.5, 12.6, 12.7', 'unclear two-numbers'],
    ['rest', '12 13', 'offers rest=12.13 V'],
    ['rest', '124', 'offers rest=12.4 V'],
    ['rest', '12400', 'offers rest=12.4 V'],
    ['rest', '-12.4', 'offers rest=12.4 V'],
    ['rest', '0.012', 'offers '],
    ['rest', 'less than 12', 'unclear not-exact'],
    ['rest', 'over 12 V', 'unclear not-exact'],
    ['rest', '12.4.5', 'unclear not-a-number'],
    ['rest', '99999999999999999999', 'unclear not-a-number'],
    ['rest', 'flat', 'unclear not-a-number'],
    ['rest', 'yes', 'unclear not-a-number'],
    [null, '12.4', 'unclear which-check'],
    [null, '12.4 V', 'unclear which-check'],
    ['sound', '12.4 V', 'unclear unknown-choice'],
  ]);
});

describe('several readings on one line are each bound to their check, or none is taken', () => {
  const all = 'rest=12.5 V/0.1 crank=9.8 V/0.1 draw=170 A/1';
  hold([
    ['rest', '12.5 rest, 9.8 crank, 170 A', all],
    ['sound', '12.5 rest, 9.8 crank, 170 A', all],
    [null, '12.5 rest, 9.8 crank, 170 A', all],
    ['rest', '12.5, 9.8 crank, 170 draw', all],
    ['rest', 'rest 12.5 crank 9.8 draw 170', all],
    ['rest', '12.5 rest 9.8 crank 170 draw', all],
    ['rest', 'rest: 12.5; cranking: 9.8; current: 170', all],
    ['rest', '12.5 resting\n9.8 cranking\n170 amps draw', all],
    ['crank', 'rest 12.5', 'rest=12.5 V/0.1'],
    ['sound', 'rest 12.5', 'rest=12.5 V/0.1'],
    ['crank', 'crank after 10.2', 'crank-after=10.2 V/0.1'],
    ['rest', 'battery age 3 years', 'age=3 a/1'],
    ['rest', 'it stood for 3 weeks', 'unclear which-check'],
    ['rest', '12.5 rest, 12.1 rest', 'unclear two-numbers'],
    ['rest', '12.5 rest, 9.8', 'unclear which-check'],
    ['rest', '12.5, 9.8 wibble', 'unclear unknown-unit'],
    ['rated', '520 A', 'rated=520 A/1'],
    ['rest', '520 A tester', 'rated=520 A/1'],
  ]);

  test('the kit tells two readings of one unit apart', () => {
    const to = hearing('rest', { kit: ['voltmeter', 'clamp-meter'] });
    expect(show(speaker.understand('170 A', to))).toBe('draw=170 A/1');
    expect(show(speaker.understand('170 A', hearing('rest')))).toBe('unclear which-check');
    const volts = hearing('rest', { kit: ['voltmeter'] });
    expect(show(speaker.understand('11.6 A', volts))).toBe('unclear which-check');
  });

  test('what could not be placed is named, with the readings that it may be', () => {
    expect(speaker.understand('12.5 rest, 9.8', hearing('rest'))).toMatchObject({
      given: '“9.8”',
      possible: expect.arrayContaining(['Cranking voltage']) as unknown,
    });
  });
});

describe('talk is understood at any question', () => {
  const rows = [
    ["I don't know", 'talk dont-know'],
    ['no idea', 'talk dont-know'],
    ["hmm, I'm really not sure", 'talk dont-know'],
    ["can't", 'talk cannot'],
    ["I can't do that", 'talk cannot'],
    ['skip it', 'talk cannot'],
    ['why?', 'talk why'],
    ['why do you need to know that', 'talk why'],
    ['go back', 'talk back'],
    ['repeat', 'talk repeat'],
    ['I want to talk to a person', 'talk person'],
    ['please can I speak to someone', 'talk person'],
    ['stop', 'talk stop'],
    ['quit', 'talk stop'],
    ['change language', 'unclear which-language'],
  ] as const;
  for (const check of ['sound', 'rest', 'before', 'fitting', null]) {
    hold(rows.map(([text, means]): Row => [check, text, means]));
  }

  test('what was heard is named beside what became of it', () => {
    expect(speaker.understand('why', hearing('rest'))).toHaveProperty('talk', 'why');
    expect(speaker.understand('yes', hearing('rest'))).toHaveProperty('talk', 'yes');
    expect(speaker.understand('language', hearing('rest'))).toHaveProperty('talk', 'language');
  });
});

describe('a language is changed by its name, in any language', () => {
  hold([
    ['rest', 'Deutsch', 'language de'],
    ['sound', 'in English please', 'language en'],
    ['sound', 'po polsku', 'language pl'],
    ['rest', 'en español', 'language es'],
    ['rest', 'French', 'language fr'],
    ['rest', 'بالعربي', 'language ar'],
    ['rest', 'niemiecki', 'language de'],
    ['rest', 'Deutsch bitte', 'language de'],
    ['sound', 'عربي لو سمحت', 'language ar'],
    ['rest', 'українською будь ласка', 'unclear which-language'],
    ['sound', 'it was fixed by an English mechanic on Friday', 'unclear unknown-choice'],
  ]);
});

describe('work, confirmation, wait and interrupt are ended in words', () => {
  hold([
    ['fitting', 'done', 'fitting=done'],
    ['fitting', 'all finished', 'fitting=done'],
    ['fitting', 'perhaps', 'unclear not-done'],
  ]);
  hold(
    [
      ['rest', 'yes', 'confirm'],
      ['rest', 'OK, but is it safe', 'unclear not-confirmed'],
      ['rest', 'ok', 'confirm'],
      ['rest', 'correct', 'confirm'],
      ['rest', 'no', 'talk cannot'],
      ['rest', 'not safe', 'talk cannot'],
      ['rest', 'why', 'talk why'],
      ['rest', 'numbers', 'talk numbers'],
      ['rest', 'how accurate is that?', 'talk numbers'],
      ['sound', 'show me the numbers', 'talk numbers'],
      ['rest', 'purple', 'unclear not-confirmed'],
    ],
    { awaiting: 'confirm' },
  );
  hold(
    [
      ['rest', 'done', 'waited'],
      ['rest', 'time is up', 'waited'],
      ['rest', 'yes', 'unclear waiting'],
      ['rest', 'purple', 'unclear waiting'],
    ],
    { awaiting: 'wait' },
  );
  hold(
    [
      ['rest', "it's over", 'resume'],
      ['rest', 'the smoke is gone', 'resume'],
      ['rest', 'ok, we are all safe', 'resume'],
      ['rest', 'yes', 'unclear not-over'],
      ['rest', 'ok', 'unclear not-over'],
      ['rest', 'got it', 'unclear not-over'],
      ['rest', 'done', 'unclear not-over'],
      ['rest', 'thanks', 'unclear not-over'],
      ['rest', '👍', 'unclear not-over'],
      ['rest', 'is it over?', 'unclear not-over'],
      ['rest', 'no', 'unclear not-over'],
      ['rest', 'it is all over now, we are safe', 'resume'],
      ['rest', 'more smoke', 'interrupt smoke'],
      ['rest', 'smoke all over the engine', 'interrupt smoke'],
      ['rest', 'smoke is coming out', 'interrupt smoke'],
      ['rest', 'it is over, but the battery is leaking', 'interrupt leak'],
      ['rest', 'the smoke is not gone', 'interrupt smoke'],
    ],
    { awaiting: 'resume' },
  );
  hold([[null, 'hello there', 'unclear closed']], { awaiting: 'nothing' });
});

describe('an interrupt is heard whatever is asked', () => {
  for (const awaiting of ['answer', 'confirm', 'wait', 'resume', 'nothing'] as const) {
    hold(
      [
        ['rest', 'there is smoke', 'interrupt smoke'],
        ['rest', 'SMOKE!!', 'interrupt smoke'],
        ['rest', 'smok coming out', 'interrupt smoke'],
        ['rest', "I don't know, there is smoke", 'interrupt smoke'],
        ['rest', "I can't get out because of the smoke", 'interrupt smoke'],
        ['rest', 'it smells strongly of burning', 'interrupt smoke'],
        ['rest', 'the battery is leaking', 'interrupt leak'],
        ['rest', 'it started', 'interrupt starts-now'],
        ['rest', 'engine is running with smoke', 'interrupt smoke'],
      ],
      { awaiting },
    );
  }
  // Where a figure was asked for it is taken with the danger; else the danger alone.
  hold([['rest', '12.4 and it smells of burning', 'rest=12.4 V/0.1 then interrupt smoke']]);
  hold([['rest', '12.4 and it smells of burning', 'interrupt smoke']], { awaiting: 'confirm' });
  hold([['rest', '12.4 and it smells of burning', 'interrupt smoke']], { awaiting: 'resume' });
  hold([
    ['sound', 'no smoke, it just knocks once', 'sound=one-knock'],
    ['sound', 'it started rattling', 'sound=fast-knocks'],
    ['sound', 'rattling and there is smoke', 'sound=fast-knocks then interrupt smoke'],
    ['rest', 'fine', 'unclear not-a-number'],
  ]);

  test('only the interrupts of the case are raised', () => {
    expect(inputs('there is smoke', hearing('rest', { interrupts: [] }))).toEqual([]);
  });
});

describe('an earlier answer is corrected', () => {
  hold(
    [
      ['crank', 'correct: rest 12.1', 'correction rest=12.1 V/0.1'],
      ['crank', 'sorry, I meant rest 12.1', 'correction rest=12.1 V/0.1'],
      ['crank', 'rest was 12.1', 'correction rest=12.1 V/0.1'],
      ['crank', 'correction: posts loose', 'correction posts=loose'],
      ['crank', 'no, I meant the posts were loose', 'correction posts=loose'],
      ['crank', 'correction', 'talk back'],
      ['crank', 'that was wrong', 'talk back'],
      ['sound', 'no wait, that was wrong', 'talk back'],
    ],
    { answered: ['posts', 'rest'] },
  );
  hold([['rest', 'rest was 12.1', 'rest=12.1 V/0.1']]);
  hold([['rest', 'that was wrong', 'unclear which-check']]);
  hold([['rest', 'sorry, I meant 12.4', 'rest=12.4 V/0.1']], { answered: ['posts'] });
  hold(
    [
      ['crank', 'not 12.5, 12.1', 'correction rest=12.1 V/0.1'],
      ['crank', '12.1, not 12.5', 'correction rest=12.1 V/0.1'],
      ['crank', 'I meant 12.1', 'correction rest=12.1 V/0.1'],
      ['crank', 'crank was 9.8', 'crank=9.8 V/0.1'],
    ],
    { answered: ['sound', 'rest'] },
  );
});

describe('what is told in passing takes the place of no choice that stands', () => {
  hold(
    [
      ['rest', 'the posts are loose', 'offers posts=loose'],
      ['rest', 'the posts are clean and tight', 'unclear not-a-number'],
      ['rest', '12.4, the posts are loose', 'rest=12.4 V/0.1'],
      ['posts', 'loose', 'posts=loose'],
      ['rest', 'correction: posts loose', 'correction posts=loose'],
    ],
    { answered: ['posts'], said: { posts: ['clean'] } },
  );
});

describe('what is said of the vehicle or the kit goes to the context', () => {
  hold([
    ['rest', '24 V vehicle', 'context {"vehicle.nominal":24}'],
    ['sound', "it's a 24 volt truck", 'context {"vehicle.nominal":24}'],
    ['rest', 'I have a voltmeter now', 'context {"kit":["voltmeter"]}'],
    ['rest', 'cheap meter', 'context {"meter.class":"simple"}'],
    ['rest', 'my meter is 0.8 % + 3', 'context {"meter.percent":0.8,"meter.digits":3}'],
    ['rest', 'meter ±(0.5% + 2 digits)', 'context {"meter.percent":0.5,"meter.digits":2}'],
    [
      'crank',
      'clamp meter 2 percent plus 5, 4000 counts',
      'context {"clamp.percent":2,"clamp.digits":5,"clamp.counts":4000}',
    ],
    ['rest', 'the meter reads 12.5', 'rest=12.5 V/0.1'],
    [
      'sound',
      'I have a voltmeter, 12.5 rest',
      'context {"kit":["voltmeter"]} then rest=12.5 V/0.1',
    ],
  ]);
  hold(
    [
      ['rest', 'got a helper', 'context {"kit":["voltmeter","helper"]}'],
      ['rest', "I don't have a voltmeter", 'context {"kit":[]}'],
    ],
    { kit: ['voltmeter'] },
  );
});

describe('what was not asked is taken where it is plain', () => {
  hold([
    [null, 'it turns slowly', 'sound=slow-turn'],
    ['rest', 'white powder', 'posts=crusted'],
    [null, 'it turns slowly, lights left on', 'sound=slow-turn before=left-on'],
  ]);
});

describe('any text at all', () => {
  const anyHearing = fc
    .tuple(
      fc.constantFrom(null, ...Object.keys(checks)),
      fc.constantFrom('answer', 'confirm', 'wait', 'resume', 'nothing'),
    )
    .map(([check, awaiting]) => hearing(check, { awaiting: awaiting }));
  const words = fc.constantFrom(
    ...'12.4 12,4 -8 1/2 V mV amps a not no rest crank was correct , . ; smoke knock and half point'.split(
      ' ',
    ),
    ...'twelve hundred thousand minus 9999999999999999 dim yes why 2 ½ between less than to'.split(
      ' ',
    ),
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme', maxLength: 2100 }),
    fc.array(words, { maxLength: 30 }).map((list) => list.join(' ')),
    fc.array(words, { maxLength: 30 }).map((list) => list.join('')),
  );

  test('is understood, offered or asked back about, and never throws', () => {
    fc.assert(
      fc.property(texts, anyHearing, (text, to) => {
        const understood = speaker.understand(text, to);
        expect(['input', 'language', 'offers', 'unclear']).toContain(understood.type);
        const asked = speaker.askBack(understood);
        expect(asked).toHaveLength(
          understood.type === 'input' || understood.type === 'language' ? 0 : 1,
        );
        expect(speaker.understand(text, to)).toEqual(understood);
      }),
      { numRuns: 1000 },
    );
  });

  test('never gives a figure that is not finite or an answer that does not exist', () => {
    fc.assert(
      fc.property(texts, anyHearing, (text, to) => {
        for (const input of inputs(text, to)) {
          if (input.type !== 'answers' && input.type !== 'correction') continue;
          for (const { check, value } of input.answers) {
            const { form } = checks[check]!;
            if ('value' in value) {
              expect(form.kind).toBe('reading');
              expect(Number.isFinite(value.value)).toBe(true);
              // A bare "0" is said of a display that shows nothing, however fine it is.
              if (value.value !== 0 || value.resolution !== undefined)
                expect(value.resolution).toBeGreaterThan(0);
            } else if (form.kind === 'choice')
              expect(form.choices).toEqual(expect.arrayContaining([...value]));
          }
        }
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    { text: '', code: 'empty' },
    { text: ' \n\t', code: 'empty' },
    { text: '?!', code: 'not-understood' },
    { text: 'x'.repeat(2001), code: 'too-long' },
    { text: '1'.repeat(10_000), code: 'too-long' },
    { text: 'smoke '.repeat(2000), code: 'too-long' },
  ])('is asked back about where nothing can be in it: $code', ({ text, code }) => {
    const understood = speaker.understand(text, hearing('rest'));
    expect(understood).toMatchObject({ type: 'unclear', code });
    expect(understood.type === 'unclear' && understood.given.length).toBeLessThanOrEqual(80);
  });
});

describe('the work grows with the length of the text, and no faster', () => {
  const lexicon = createLexicon({ words: enWords, texts: flowTexts, checks });

  /** How often words and units are looked up while a text is understood. */
  function steps(text: string): number {
    let count = 0;
    understandText(text, hearing('rest'), {
      lexicon: {
        ...lexicon,
        vocabulary: (term) => {
          count += 1;
          return lexicon.vocabulary(term);
        },
        readUnit: (tokens, at) => {
          count += 1;
          return lexicon.readUnit(tokens, at);
        },
      },
      locale: 'en',
      formatDay: (day) => day,
      figureIn: (unit) => unit,
      formatQuantity: ({ value, unit }) => `${value} ${unit}`,
      unitHere: (unit) => unit,
      languages: ['English'],
      locales: ['en'],
      languageNamed: () => undefined,
    });
    return count;
  }

  test.each([
    'smoke ',
    'no smoke, ',
    '12.4 ',
    '1,',
    'not ',
    'correct ',
    'x1 ',
    '12 rest, ',
    'a and ',
  ])('%s over and over', (piece) => {
    const half = steps(piece.repeat(Math.floor(990 / piece.length)));
    const whole = steps(piece.repeat(Math.floor(1980 / piece.length)));
    expect(whole).toBeLessThanOrEqual(2.5 * half + 50);
  });
});
