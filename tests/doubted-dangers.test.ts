/**
 * A danger that is told beside an answer is raised, and asked about where it is not for certain; answers
 * as they stand in the lists are not.
 */
import { createSpeaker, localeTags, type Hearing } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

/** Where a danger is what is asked, or what the answer names. */
const dangerous = new Set(['place', 'scene', 'battery-case', 'battery-look', 'flooded-smell']);

type Told = readonly (readonly [locale: string, check: string, text: string, danger: string])[];

const doubtful: Told = [
  ['en', 'place', 'at home and my wife feels odd', 'injury'],
  ['pl', 'battery-rest', '12,1 i jakiś pękaty', 'swollen-or-leaking-battery'],
  ['en', 'complaint', "spins over fine but won't catch, really strong petrol smell", 'fuel-leak'],
  ['de', 'complaint', 'orgelt normal, kommt aber nicht, riecht stark nach Benzin', 'fuel-leak'],
  ['es', 'complaint', 'gira bien pero no prende y apesta a nafta', 'fuel-leak'],
  ['pl', 'complaint', 'kręci normalnie, nie odpala, mocno śmierdzi benzyną', 'fuel-leak'],
  ['ar', 'complaint', 'المارش بيلف بس مش بتقوم وريحة البنزين قوية', 'fuel-leak'],
];

const certain: Told = [
  ['en', 'battery-rest', '12.1 and looks fat', 'swollen-or-leaking-battery'],
  ['de', 'battery-rest', '12,3 und sieht dick aus', 'swollen-or-leaking-battery'],
  ['en', 'battery-rest', '12.1 and it hisses', 'swollen-or-leaking-battery'],
  ['de', 'drive', 'Hybrid, der Akku unten ist eingedrückt', 'high-voltage'],
  ['de', 'battery-recharged', '12,3 und ganz dick ist sie', 'swollen-or-leaking-battery'],
  ['fr', 'history', 'inondation, la batterie de traction sous l’eau', 'high-voltage'],
  ['de', 'complaint', 'orgelt normal, kommt aber nicht, unten tropft Benzin', 'fuel-leak'],
];

/** A word that warns of it is also the name of what gets hurt, and what pours also pours of a tank. */
const warned: Told = [
  [
    'es',
    'terminals',
    'ojo q chorrea líquido por un lado de la batería',
    'swollen-or-leaking-battery',
  ],
  ['es', 'terminals', 'ojo que huele a humo, sale del capó', 'smoke'],
  ['pl', 'complaint', 'benzyna leci cały czas pod autem', 'fuel-leak'],
  ['ar', 'complaint', 'السلك يولع', 'smoke'],
  ['es', 'terminals', 'me salpicó ácido en el ojo q arde', 'injury'],
  ['en', 'terminals', 'acid splashed my face', 'injury'],
  [
    'es',
    'history',
    'oye que la batería está chorreando líquido por un costado',
    'swollen-or-leaking-battery',
  ],
  ['en', 'terminals', 'theres acid dripping out underneath', 'swollen-or-leaking-battery'],
];

type Together = readonly (readonly [
  locale: string,
  check: string | null,
  text: string,
  less: string,
  inHand: string,
])[];

/** Two dangers in one text: the one that the flow names first is the more urgent. */
const together: Together = [
  [
    'en',
    null,
    'battery acid is dripping and some got in my eye',
    'swollen-or-leaking-battery',
    'injury',
  ],
  ['en', null, 'there is smoke and my wife is hurt', 'injury', 'smoke'],
  ['en', null, "someone is injured and there's smoke", 'injury', 'smoke'],
  [
    'en',
    null,
    'stopped in a live lane, and there is petrol leaking',
    'traffic-danger',
    'fuel-leak',
  ],
  ['en', 'noise', 'clicks once, my hand is trapped and petrol is dripping', 'injury', 'fuel-leak'],
  [
    'de',
    'noise',
    'klackt einmal, Batterie ist aufgebläht und mein Finger blutet',
    'swollen-or-leaking-battery',
    'injury',
  ],
  ['de', null, 'es raucht und meine Frau ist verletzt', 'injury', 'smoke'],
  [
    'es',
    'terminals',
    'chorrea gasolina por abajo y la batería hinchada',
    'swollen-or-leaking-battery',
    'fuel-leak',
  ],
  ['es', 'place', 'hay humo y la batería chorrea ácido', 'swollen-or-leaking-battery', 'smoke'],
  ['es', null, 'los camiones pasan rozando y mi hijo sangra', 'injury', 'traffic-danger'],
  [
    'fr',
    null,
    "l'acide de la batterie coule et j'en ai reçu dans l'œil",
    'swollen-or-leaking-battery',
    'injury',
  ],
  ['fr', null, "l'essence coule et je me suis brûlé la main", 'injury', 'fuel-leak'],
  ['pl', null, 'jest dym i moja żona jest ranna', 'injury', 'smoke'],
  ['pl', null, 'paliwo cieknie i poparzyłem rękę', 'injury', 'fuel-leak'],
  ['ar', null, 'في دخان وزوجتي مصابة', 'injury', 'smoke'],
  ['ar', null, 'الشاحنات تمر بجانبنا وابني ينزف', 'injury', 'traffic-danger'],
];

/** Smoke, and somebody who is hurt. */
const plainlyTogether: Readonly<Record<string, string>> = {
  en: 'there is smoke and my wife is hurt',
  es: 'hay humo y mi mujer está herida',
  de: 'es raucht und meine Frau ist verletzt',
  fr: 'il y a de la fumée et ma femme est blessée',
  pl: 'jest dym i moja żona jest ranna',
  ar: 'في دخان وزوجتي مصابة',
};

/** Lamps that go on and off, or stay on all the time, beside a fuel or a noise. */
const harmless: readonly (readonly [locale: string, text: string])[] = [
  ['pl', 'światła jasne cały czas. manual, benzyna'],
  ['ar', 'يطلع صوت تك تك تك والطبلون يطفي ويولع'],
];

describe.each(localeTags)('in %s', (locale) => {
  const { chart, texts } = shippedFlow('no-start', locale);
  const { checks, interrupts } = chart.flow;
  const speaker = createSpeaker({ locale, flowTexts: texts, checks });
  const hearingOf = (check: string | null): Hearing => ({
    awaiting: 'answer',
    check,
    checks,
    interrupts: Object.keys(interrupts),
    answered: [],
    kit: [],
    nominal: 12,
    lamp: false,
  });
  const hear = (check: string | null, text: string) => {
    const understood = speaker.understand(text, hearingOf(check));
    if (understood.type !== 'input') return { answers: [], doubted: undefined, raised: [] };
    const answers = understood.inputs.flatMap((one) => (one.type === 'answers' ? one.answers : []));
    const raised = understood.inputs.flatMap((one) =>
      one.type === 'interrupt' ? [one.interrupt] : [],
    );
    return { answers, doubted: understood.doubted?.interrupt, raised };
  };

  test.each(doubtful.filter(([of]) => of === locale))(
    'it is asked about, and the answer is taken: %s: %s: %s',
    (_, check, text, danger) => {
      const { answers, doubted } = hear(check, text);
      expect(doubted).toBe(danger);
      expect(answers.map((one) => one.check)).toContain(check);
    },
  );

  test.each(certain.filter(([of]) => of === locale))(
    'it is raised where it is plain, and the answer is taken: %s: %s: %s',
    (_, check, text, danger) => {
      const { answers, raised } = hear(check, text);
      expect(raised).toEqual([danger]);
      expect(answers.map((one) => one.check)).toContain(check);
    },
  );

  test.each(warned.filter(([of]) => of === locale))(
    'it is raised, and no other: %s: %s: %s',
    (_, check, text, danger) => {
      expect(hear(check, text).raised).toEqual([danger]);
    },
  );

  test.each(together.filter(([of]) => of === locale))(
    'both are raised, the more urgent last, so that it is in hand: %s: %s: %s',
    (_, check, text, less, inHand) => {
      expect(hear(check, text).raised).toEqual([less, inHand]);
    },
  );

  test('so are they where nothing of what people say has been learned, as on a page', () => {
    const { heard: _, ...listed } = texts;
    const unlearned = createSpeaker({ locale, flowTexts: listed, checks });
    const understood = unlearned.understand(plainlyTogether[locale] ?? '', hearingOf('place'));
    expect(understood).toMatchObject({
      inputs: [
        { type: 'interrupt', interrupt: 'injury' },
        { type: 'interrupt', interrupt: 'smoke' },
      ],
      talk: 'smoke',
    });
  });

  test.each(harmless.filter(([of]) => of === locale))('none is raised: %s: %s', (_, text) => {
    expect(hear(null, text).raised).toEqual([]);
  });

  test('no answer of a list asks about a danger', () => {
    const asked = Object.values(checks).flatMap(({ id, like }) => {
      const own = texts.checks[id]?.answers ?? texts.checks[like ?? '']?.answers ?? {};
      return Object.values(own)
        .filter(({ label }) => !dangerous.has(id) && hear(id, label).doubted !== undefined)
        .map(({ label }) => `${id}: ${label}`);
    });
    expect(asked).toEqual([]);
  });
});
