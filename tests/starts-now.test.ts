/**
 * That the vehicle starts: heard when it has just done so, and not when it does at times, with help,
 * or in the words of what is wrong. Common practice, no source.
 */
import { createSpeaker, localeTags } from '@keyturn/language';
import { meaningOf, shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

const said: Readonly<Record<string, Record<'starts' | 'not', readonly string[]>>> = {
  en: {
    starts: [
      'it’s running now',
      'it started, thanks!',
      'never mind it started lol',
      'phew, it’s alive',
    ],
    not: [
      'fires up off the booster, on its own it just clicks away like mad',
      'it starts sometimes but mostly just clicks',
      'starts fine when warm, not when cold',
    ],
  },
  es: {
    starts: ['ya arrancó, gracias', '¡espera, que ya arrancó!', 'acaba de encender'],
    not: ['solo hace clac una vez, a ratos si arranca', 'gira pero no arranca'],
  },
  de: {
    starts: [
      'jetzt ist er angesprungen',
      'er läuft wieder',
      'moment, motor läuft',
      'puh, er lebt',
      'angesprungen!!!',
    ],
    not: [
      'mit Starthilfe springt er an, alleine klackert er nur',
      'springt manchmal an',
      'der Motor dreht, springt aber nicht an',
    ],
  },
  fr: {
    starts: ['ah ça y est elle a démarré', 'ça y est le moteur tourne', 'ELLE DEMARRE'],
    not: [
      'à la maison, le moteur tourne tout doucement',
      'le moteur tourne mais ne démarre pas',
      'le moteur tourne mais démarre pas',
    ],
  },
  pl: {
    starts: ['o chwila, odpalił!', 'już działa, odpalił', 'zapalił dzięki', 'uff, silnik działa'],
    not: ['silnik kręci ale nie odpala', 'czasem odpala czasem nie'],
  },
  ar: {
    starts: ['لحظة لحظة اشتغلت!', 'خلاص اشتغلت السيارة'],
    not: ['المحرك يدور ولا يشتغل', 'احيانا تشتغل واحيانا لا'],
  },
};

/** Where something was to be tried, that it has started by itself. */
const untried: readonly (readonly [locale: string, check: string, said: string])[] = [
  ['es', 'turn-engine', 'déjalo, ya arrancó solo jaja'],
  ['fr', 'tap', 'bon ça tourne le moteur est parti'],
  ['fr', 'battery-rest', 'ah ben, elle tourne, le moteur est parti tout seul au dernier coup'],
  ['ar', 'tap', 'يا عمي دارت واشتغلت لوحدها'],
  ['en', 'transmission', 'manual. hang on, it’s just fired up by itself'],
  ['es', 'transmission', 'automático... espera, acaba de encender solo'],
  ['de', 'transmission', 'Automatik. Moment, er ist gerade von selbst angesprungen'],
  ['fr', 'transmission', 'manuelle. attendez, elle vient de démarrer toute seule'],
  ['pl', 'transmission', 'manual. czekaj, właśnie sam odpalił'],
  ['ar', 'transmission', 'أوتوماتيك. لحظة، اشتغلت لوحدها'],
];

test.each(untried)('in %s, at %s “%s” is that it has started', (locale, check, text) => {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  expect(meaningOf({ check, text }, chart, speaker).talk).toBe('starts-now');
});

describe.each(localeTags)('in %s', (locale) => {
  const { starts, not } = said[locale]!;
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const talkOf = (text: string): (string | null)[] =>
    ['complaint', null].map((check) => meaningOf({ check, text }, chart, speaker).talk);

  test.each(starts)('“%s” is that it has started', (text) => {
    expect(talkOf(text)).toEqual(['starts-now', 'starts-now']);
  });

  test.each(not)('“%s” is not', (text) => {
    expect(talkOf(text)).not.toContain('starts-now');
  });
});
