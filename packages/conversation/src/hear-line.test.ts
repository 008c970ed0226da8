import { openCase, positionOf } from '@keyturn/core';
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
