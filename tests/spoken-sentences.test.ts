/**
 * Whole sentences in place of an answer, as they are typed on a page, which knows the lists alone,
 * and as they are heard elsewhere. Sentences from common practice, no source.
 */
import { createSpeaker, localeTags, type Hearing, type Understood } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { nothingFound } from './support/nothing-found.ts';

const ways = ['heard', 'lists'] as const;

/** For each language and each way: what is meant by a text. */
const speakers = Object.fromEntries(
  localeTags.map((locale) => {
    const { chart, texts } = shippedFlow('no-start', locale);
    const { checks } = chart.flow;
    const { heard: _, ...lists } = texts;
    const hearing = nothingFound(chart, null);
    const speakerOf = (way: (typeof ways)[number]) =>
      createSpeaker({ locale, flowTexts: way === 'heard' ? texts : lists, checks });
    return [locale, { hearing, heard: speakerOf('heard'), lists: speakerOf('lists') }];
  }),
);

function show(understood: Understood): string {
  if (understood.type === 'unclear') return understood.code;
  if (understood.type !== 'input') return understood.type;
  return understood.inputs
    .flatMap((input) => {
      if (input.type === 'talk') return [input.talk];
      if (!('answers' in input)) return [input.type];
      return input.answers.map(({ check, value }) =>
        'value' in value
          ? `${check}=${String(value.value)} ${value.unit}`
          : `${check}=${value.join('+')}`,
      );
    })
    .toSorted()
    .join(', ');
}

type Row = readonly [locale: string, text: string];

function hold(
  means: string,
  to: Partial<Hearing>,
  rows: readonly Row[],
  by: readonly (typeof ways)[number][] = ways,
): void {
  for (const way of by) {
    test.each(rows)(`by what is ${way}, in %s: %s`, (locale, text) => {
      const { [way]: speaker, hearing } = speakers[locale]!;
      expect(show(speaker.understand(text, { ...hearing, ...to }))).toBe(means);
    });
  }
}

describe('that the engine runs and stays on is no answer while starting, and corrects nothing', () => {
  const said = { complaint: ['single-click'], when: ['after-standing'] };
  hold('cannot', { check: 'crank-after', answered: ['complaint', 'when'], said }, [
    ['en', 'the engine is running, i wont switch it off again'],
    ['de', 'der Motor läuft, ich mach ihn nicht mehr aus'],
    ['es', 'el motor está en marcha, no lo vuelvo a apagar'],
    ['fr', 'le moteur tourne, je ne le coupe plus'],
  ]);
  hold('not-a-number', { check: 'crank-after', answered: ['complaint'], said }, [
    ['en', 'it just clicks once'],
  ]);
  hold('offers', { check: 'crank-after', answered: ['complaint'], said }, [
    ['en', 'it starts and then it dies'],
    ['de', 'springt an und geht gleich wieder aus'],
    ['fr', 'il démarre puis cale aussitôt'],
  ]);
});

describe('a figure put right belongs to the question in hand where it alone can be meant', () => {
  hold('battery-rest=12.4 V', { check: 'battery-rest', answered: ['air-temperature'] }, [
    ['en', 'sorry i meant 12.4'],
    ['de', 'sorry, ich meinte 12,4'],
    ['es', 'perdón, quise decir 12,4'],
    ['fr', 'pardon, je voulais dire 12,4'],
    ['pl', 'przepraszam, miało być 12,4'],
    ['ar', 'آسف أقصد 12.4'],
  ]);
});

describe('that it was wrong, and no more, goes back', () => {
  for (const check of ['dash', 'battery-rest']) {
    hold('back', { check, answered: ['complaint'] }, [
      ['en', 'that was wrong'],
      ['en', 'no wait, that was wrong'],
      ['de', 'nein warte, das war falsch'],
      ['es', 'no espera, eso estaba mal'],
      ['fr', "non attends, c'était faux"],
      ['pl', 'nie, czekaj, to było źle'],
      ['ar', 'لا لحظة، هذا كان غلط'],
    ]);
  }
});

describe('a caution is confirmed in a sentence, and by no question', () => {
  hold('confirm', { awaiting: 'confirm', check: 'battery-rest' }, [
    ['en', 'yes I have read it and its safe'],
    ['de', 'ja, ich habe es gelesen und es ist sicher'],
    ['es', 'sí, lo he leído y es seguro'],
    ['fr', "oui j'ai lu et c'est sûr"],
    ['pl', 'tak, przeczytałem i jest bezpiecznie'],
    ['ar', 'نعم قرأتها والوضع آمن'],
    ['en', 'yes we are all standing behind the guard rail now'],
    ['en', 'yes that is fine'],
    ['en', 'yep gloves on, all ready'],
    ['en', 'ok sure, everyone has stepped back'],
    ['de', 'ja klar, alles gelesen'],
    ['de', 'ja wir stehen alle hinter der Leitplanke'],
    ['de', 'jo, Handschuhe hab ich an'],
    ['es', 'sí, ya nos apartamos todos del coche'],
    ['es', 'claro, tengo puestos los guantes'],
    ['fr', 'oui on est tous derrière la glissière'],
    ['fr', 'ok, je mets les gants et on y va'],
    ['pl', 'tak, wszyscy stoimy za barierką'],
    ['pl', 'jasne, rękawice założone'],
    ['ar', 'نعم كلنا واقفين بعيد عن السيارة'],
    ['ar', 'تمام لبست القفازات'],
  ]);
  hold('not-confirmed', { awaiting: 'confirm', check: 'battery-rest' }, [
    ['en', 'is it safe?'],
    ['en', 'yes, but'],
  ]);
  const takenBack: readonly Row[] = [
    ['en', 'yes but my kid is still in the car'],
    ['en', 'yes although it is not really safe'],
    ['en', 'ok wait'],
    ['en', 'ok hold on a second'],
    ['en', 'ok why do I need gloves'],
    ['en', 'ok can I speak to a person please'],
    ['de', 'ja aber hier ist es dunkel'],
    ['de', 'ok ich will mit einem Menschen reden'],
    ['es', 'vale quiero hablar con una persona'],
    ['fr', 'ok je veux parler à quelqu’un'],
    ['pl', 'dobra chcę rozmawiać z człowiekiem'],
    ['ar', 'طيب بدي أحكي مع شخص'],
    ['de', 'ja moment noch'],
    ['es', 'sí pero no tengo guantes'],
    ['es', 'vale espera un momento'],
    ['fr', 'oui mais je suis tout seul'],
    ['fr', 'ok attendez un instant'],
    ['pl', 'tak ale nie mam rękawic'],
    ['pl', 'no chwileczkę'],
    ['ar', 'نعم بس ما عندي قفازات'],
    ['ar', 'طيب لحظة'],
  ];
  for (const way of ways) {
    test.each(takenBack)(
      `not by a yes that is taken back, by what is ${way}, in %s: %s`,
      (locale, text) => {
        const { [way]: speaker, hearing } = speakers[locale]!;
        const to = { ...hearing, awaiting: 'confirm', check: 'battery-rest' } as const;
        expect(show(speaker.understand(text, to))).not.toContain('confirm,');
        expect(show(speaker.understand(text, to))).not.toMatch(/(^|, )confirm$/u);
      },
    );
  }
});

describe('work is done in a sentence', () => {
  hold('repair=done', { check: 'repair' }, [
    ['en', 'ok its all done'],
    ['de', 'ok, ist alles fertig'],
    ['es', 'ok, ya está todo hecho'],
    ['fr', "ok c'est tout fini"],
    ['pl', 'ok, wszystko zrobione'],
    ['ar', 'تمام خلصت كل شي'],
  ]);
  hold('not-done', { check: 'repair' }, [['en', 'ok wait']]);
});

describe('driven yesterday and dead this morning is after standing', () => {
  hold('history=lights-left-on, when=after-standing', { check: 'when', answered: ['complaint'] }, [
    [
      'de',
      'gestern abend noch gefahren, heute morgen ging nix mehr, und das licht war die ganze nacht an',
    ],
    ['en', 'drove it last night, this morning nothing at all, and the lights were on all night'],
    ['ar', 'أمس كانت تمشي والصبح ما اشتغلت والأنوار ظلت شغالة طول الليل'],
  ]);
});

describe('an answer before is put right by another one, with no word of a correction', () => {
  const said = { drive: ['diesel'], transmission: ['manual'], place: ['shoulder'] };
  const before = { answered: Object.keys(said), said };
  hold('drive=petrol', { check: 'battery-rest', ...before }, [
    ['en', 'sorry, it is petrol, not diesel'],
    ['es', 'perdón, me equivoqué, es gasolina, no diésel'],
    ['pl', 'czekaj, pomyłka, to benzyna, nie diesel'],
  ]);
  const inMoreWords: readonly Row[] = [
    ['de', 'Halt, das war falsch, es ist ein Benziner, kein Diesel'],
    ['fr', 'attendez, je me suis trompé, c’est une essence, pas un diesel'],
    ['ar', 'لحظة غلطت، بنزين مش ديزل'],
  ];
  hold('drive=petrol', { check: 'battery-rest', ...before }, inMoreWords, ['heard']);
  hold('transmission=automatic', { check: 'terminals', ...before }, [
    ['en', 'hang on, it is an automatic'],
    ['de', 'nein warte, es ist ein Automatik'],
    ['es', 'no espera, es automático'],
    ['fr', 'non pardon, c’est une automatique'],
    ['pl', 'nie czekaj, jednak automat'],
    ['ar', 'لا عفوا، أوتوماتيك'],
  ]);
  hold('terminals=loose', { check: 'terminals', ...before }, [['en', 'no wait, it is loose']]);
  hold('battery-rest=12.4 V', { check: 'battery-rest', ...before }, [['en', 'sorry, 12.4']]);
});
