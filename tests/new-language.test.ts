/**
 * Adding a language: general texts, words and a flow's texts are all that it takes. The language
 * here is made up: English with accents, stretched by a third, and "ja" and "nej" beside.
 */
import { openCase } from '@keyturn/core';
import { generalTexts, pseudoTexts, speakerOf, type Words } from '@keyturn/language';
import { layOutPage, plain, shippedTexts } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';

const { chart } = noStart;
const { checks, interrupts } = chart.flow;

const words: Words = {
  cardinals: { nol: 0, en: 1, to: 2, tolv: 12 },
  decimalZero: [],
  scales: { hundre: 100 },
  point: ['komma'],
  joins: ['og'],
  articles: [],
  fractions: { halv: 1 / 2 },
  minus: ['minus'],
  ordinals: {},
  grouping: '.',
  units: { V: ['v', 'volt'] },
  bareUnits: [],
  boundsOnly: [],
  nearly: [],
  vague: [],
  besideFigures: [],
  negators: ['ikke'],
  clauseBreaks: ['men'],
  fillers: ['det', 'er'],
  endings: [],
  optionWords: [],
  talk: {
    yes: ['ja'],
    no: ['nej'],
    done: ['klar'],
    over: ['forbi'],
    'false-alarm': ['falsk alarm'],
    'dont-know': ['ved ikke'],
    cannot: ['kan ikke'],
    why: ['hvorfor'],
    numbers: ['tal'],
    back: ['tilbage'],
    repeat: ['igen'],
    person: ['menneske'],
    stop: ['stop'],
    language: ['sprog'],
  },
  corrections: ['rettelse'],
  earlier: [],
  statements: [],
  accuracy: { meter: [], clamp: [], percent: [], counts: [] },
  speaking: [],
  having: [],
  days: {
    back: { 'i gaar': 1 },
    times: ['i gaar'],
    day: ['dag'],
    week: ['uge'],
    ago: ['siden'],
    last: [],
    seasons: [],
    weekdays: {},
  },
  kit: {},
};

const flowTexts = pseudoTexts(shippedTexts('no-start', 'en'));
const speaker = speakerOf(
  { texts: pseudoTexts(generalTexts('en')), words },
  { locale: 'da', flowTexts, checks },
);
const { messages } = openCase(chart, { id: 'k', at: '2026-01-01T08:00:00.000Z' });

describe('a made-up language', () => {
  test('is spoken, and nothing is said in English', () => {
    const said = speaker.render(messages).flatMap((one) => ('text' in one ? [one.text] : []));
    expect(said.length).toBeGreaterThan(0);
    for (const text of said) expect(text).toMatch(/^\[.*\]/);
  });

  test.each([
    ['ved ikke', { type: 'talk', talk: 'dont-know' }],
    ['hvorfor', { type: 'talk', talk: 'why' }],
    [
      'tolv komma to volt',
      { type: 'answers', answers: [{ check: 'battery-rest', value: { value: 12.2, unit: 'V' } }] },
    ],
    [
      'tolv og halv',
      { type: 'answers', answers: [{ check: 'battery-rest', value: { value: 12.5, unit: 'V' } }] },
    ],
  ])('"%s" is understood', (text, input) => {
    const understood = speaker.understand(text, {
      awaiting: 'answer',
      check: 'battery-rest',
      checks,
      interrupts: Object.keys(interrupts),
      answered: [],
      kit: [],
      nominal: 12,
      lamp: false,
    });
    expect(understood).toMatchObject({ type: 'input', inputs: [input] });
  });

  test.each([40, 60, 80])('is laid out in %d columns with nothing cut off', (width) => {
    const lines = layOutPage(speaker.render(messages), {
      width,
      emphasis: plain,
      direction: 'ltr',
      formatQuantity: speaker.formatQuantity,
      nameOf: speaker.checkName,
      expected: '[ëxpëctëd]',
      formatNumber: (value) => speaker.formatNumber(value, 2),
      formatRange: (low, high) => speaker.formatRange(low, high, 2),
    });
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(width);
    const shown = lines.join('');
    expect(shown.split('[').length).toBe(shown.split(']').length);
  });
});
