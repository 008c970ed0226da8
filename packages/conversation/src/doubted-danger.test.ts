/**
 * A danger that a line may tell beside an answer is asked about before anything else, and the answer
 * is not lost.
 */
import { openCase, positionOf, repeat } from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { createSpeaker, localeTags, type Speaker, type Understood } from '@keyturn/language';
import { beforeEach, expect, test } from 'vitest';
import { hearLine, type Standing } from './hear-line.ts';

const at = '2026-01-01T08:00:00.000Z';

const said: Readonly<Record<string, readonly [yes: string, no: string]>> = {
  en: ['yes', 'no'],
  es: ['sí', 'no'],
  de: ['ja', 'nein'],
  fr: ['oui', 'non'],
  pl: ['tak', 'nie'],
  ar: ['نعم', 'لا'],
};

/** The answer that is told beside the danger. */
let answer = 'parking';

beforeEach(() => {
  answer = 'parking';
});

const told = 'what tells an answer, and perhaps a danger';

/** Hears lines from the beginning of a case, the first of them what may tell of smoke. */
function hearing(locale: string, ...lines: readonly string[]) {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const doubting: Understood = {
    type: 'input',
    inputs: [{ type: 'answers', answers: [{ check: 'place', value: [answer] }] }],
    doubted: { interrupt: 'smoke', label: texts.interrupts['smoke']?.name ?? '' },
  };
  const understand: Speaker['understand'] = (line, waiting) =>
    line === told ? doubting : speaker.understand(line, waiting);
  const { case: opened } = openCase(chart, { id: 'k', at });
  const begun: Standing = { case: opened, offers: [] };
  const listener = { chart, speaker: { ...speaker, understand } };
  const first = hearLine(listener, begun, { at, line: told });
  const last = lines.reduce((heard, line) => hearLine(listener, heard, { at, line }), first);
  return { first, last, chart, speaker };
}

test.each(localeTags)('it is asked about in words that name it, in %s', (locale) => {
  const { first, speaker } = hearing(locale);
  const [asked] = first.unclear === undefined ? [] : speaker.askBack(first.unclear);
  expect(asked?.kind === 'refused' && asked.text).toContain(
    shippedFlow('no-start', locale).texts.interrupts['smoke']?.name,
  );
  expect(first.case.state.answers['place']).toEqual([['parking']]);
});

test.each(localeTags)('a yes raises it, and the answer stands, in %s', (locale) => {
  const { last } = hearing(locale, said[locale]?.[0] ?? '');
  expect(positionOf(last.case)).toEqual({ awaiting: 'resume', interrupt: 'smoke' });
  expect(last.case.state.answers['place']).toEqual([['parking']]);
});

test.each(localeTags)(
  'a no answers nothing else, and what comes next is asked, in %s',
  (locale) => {
    const { first, last, chart } = hearing(locale, said[locale]?.[1] ?? '');
    expect(last.events).toEqual([]);
    expect(last.offers).toEqual([]);
    expect(last.messages).toEqual(repeat(chart, first.case));
  },
);

test('that all are safe denies it, and does not say yes to it', () => {
  const { last } = hearing('en', 'all safe');
  expect(positionOf(last.case)).toMatchObject({ awaiting: 'answer' });
  expect(last.events).toEqual([]);
});

test('its letter raises it', () => {
  expect(positionOf(hearing('en', 'a').last.case)).toEqual({
    awaiting: 'resume',
    interrupt: 'smoke',
  });
});

test('before a caution was read, no number confirms it', () => {
  answer = 'live-lane';
  const { first, last } = hearing('en', '1');
  expect(positionOf(first.case)).toMatchObject({ awaiting: 'confirm' });
  expect(last.events).toEqual([]);
});
