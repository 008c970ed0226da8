import { openCase, positionOf, type Case } from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import { expect, test } from 'vitest';
import { hearLine, type Standing } from './hear-line.ts';

const at = '2026-01-01T08:00:00.000Z';

const yes: Readonly<Record<string, string>> = {
  en: 'yes',
  es: 'sí',
  de: 'ja',
  fr: 'oui',
  pl: 'tak',
  ar: 'نعم',
};

const parking = { check: 'place', value: 'parking', label: 'parking' };
const home = { check: 'place', value: 'home', label: 'home' };

/** A case whose first question was answered with what may have meant these. */
function offering(locale: string, offers: Standing['offers']) {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const { case: kase } = openCase(chart, { id: 'k', at });
  return hearLine({ chart, speaker }, { case: kase, offers }, { at, line: yes[locale] ?? '' });
}

test.each(localeTags)('a yes takes what alone may have been meant, in %s', (locale) => {
  expect(offering(locale, [parking]).case.state.answers['place']).toEqual([['parking']]);
});

test('a yes takes neither of two, nor anything where nothing was offered', () => {
  for (const offers of [[parking, home], []]) {
    const heard = offering('en', offers);
    expect(heard.events).toEqual([]);
    expect(positionOf(heard.case)).toEqual({ awaiting: 'answer', check: 'place' });
  }
});

/** A case of its own after a line that answers its first question, heard as a page hears it. */
function after(locale: string, line: string): Case {
  const { chart, texts } = shippedFlow('no-start', locale);
  const { heard: _, ...flowTexts } = texts;
  const speaker = createSpeaker({ locale, flowTexts, checks: chart.flow.checks });
  const { case: kase } = openCase(chart, { id: 'k', at });
  return hearLine({ chart, speaker }, { case: kase, offers: [] }, { at, line }).case;
}

test.each([
  [
    'en',
    'in a car park, diesel, automatic, we left the lights on, nothing happens at all',
    {
      place: [['parking']],
      drive: [['diesel']],
      transmission: [['automatic']],
      history: [['lights-left-on']],
      complaint: [['silent']],
    },
  ],
  [
    'de',
    'Steht auf dem Parkplatz, Diesel, dreht ganz langsam',
    {
      place: [['parking']],
      drive: [['diesel']],
      complaint: [['slow-crank']],
    },
  ],
  [
    'ar',
    'شاحنتي لا تعمل وأنا في موقف السيارات، ديزل، يدور ببطء',
    {
      place: [['parking']],
      drive: [['diesel']],
      complaint: [['slow-crank']],
    },
  ],
])('what is told beside where the vehicle is, is taken: %s: %s', (locale, line, answers) => {
  expect(after(locale, line).state.answers).toEqual(answers);
});

test.each([
  ['one answer in two parts', 'in a car park, in a parking place'],
  ['what is no answer', 'in a car park, nobody hurt, thank you'],
  ['two answers to one question', 'in a car park, it turns slowly, fast clicking'],
])('nothing but the place is taken of %s: %s', (_, line) => {
  expect(after('en', line).state.answers).toEqual({ place: [['parking']] });
});

test('a danger comes before whatever else is told beside it', () => {
  const kase = after('en', 'in a car park, diesel, smoke comes out of the bonnet');
  expect(positionOf(kase)).toEqual({ awaiting: 'resume', interrupt: 'smoke' });
  expect(kase.state.answers).toEqual({ place: [['parking']] });
});
