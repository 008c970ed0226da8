/**
 * Sentences of a clerk that tell several things of a part at once: each is taken by its question, and
 * what is not understood is said. Common practice, no source.
 */
import { expected, openCase } from '@keyturn/core';
import { createSpeaker, type ToldEach } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

type ReturnFlow = 'starter-return' | 'battery-return';

/** What a sentence tells while a check is in hand: check to answer, and the parts that are left. */
function told(
  flow: ReturnFlow,
  locale: string,
  check: string | null,
  text: string,
): { readonly answers: object; readonly left: readonly string[] | undefined } {
  const each = hear(flow, locale, check, text);
  const answers = (each?.answers ?? []).map(
    ({ check: id, value }) => [id, 'value' in value ? value.value : value.join()] as const,
  );
  return {
    answers: Object.fromEntries<string | number>(answers),
    left: each?.left.map(({ said }) => said),
  };
}

function hear(
  flow: ReturnFlow,
  locale: string,
  check: string | null,
  text: string,
): ToldEach | undefined {
  const { chart, texts } = shippedFlow(flow, locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const { case: kase } = openCase(chart, { id: 'told', at: '2026-11-26T10:00:00Z' });
  return speaker.understandEach(text, { ...expected(chart, kase), check });
}

describe('several answers in one sentence', () => {
  test.each([
    [
      'bought in March, clicks, box is opened',
      { claim: 'no-crank' },
      ['bought in March', 'box is opened'],
    ],
    [
      'yes, receipt shown, bought on 2026-03-03, only clicks, was fitted, studs fine, housing whole',
      {
        'part-number': 'matches-sale',
        'sale-proof': 'shown',
        'sale-date': '2026-03-03',
        claim: 'no-crank',
        handling: 'fitted',
        stud: 'sound',
        housing: 'sound',
      },
      [],
    ],
    // A comma within one answer, a word that joins, a point behind a figure.
    [
      'free one way, takes hold the other, teeth ok',
      { 'drive-turn': 'one-way', pinion: 'clean' },
      [],
    ],
    ['it grinds and it is oily', { claim: 'noise', soiling: 'soaked-oil' }, []],
    ['3.3.2026. only clicks', { 'sale-date': '2026-03-03', claim: 'no-crank' }, []],
    // Beside a day without a comma.
    ['bought on 3 March 2026 only clicks', { 'sale-date': '2026-03-03', claim: 'no-crank' }, []],
    // Of two answers to one question neither is taken.
    ['never fitted, was fitted, oily', { soiling: 'soaked-oil' }, ['never fitted, was fitted']],
  ] as const)('“%s”', (text, answers, left) => {
    expect(told('starter-return', 'en', 'part-number', text)).toEqual({ answers, left });
  });

  test.each([
    ['de', 'gekauft am 3. März 2026, dreht langsam und war eingebaut'],
    ['es', 'comprado el 3 de marzo de 2026, gira lento y estuvo montado'],
    ['ar', 'اشتريت في 3 مارس 2026، يدور ببطء، كان مركبا'],
  ])('with its day of sale in %s', (locale, text) => {
    expect(told('starter-return', locale, 'part-number', text)).toEqual({
      answers: { 'sale-date': '2026-03-03', claim: 'slow-crank', handling: 'fitted' },
      left: [],
    });
  });

  test.each([
    ['de', 'Nummer stimmt, gekauft im März, Beleg liegt vor', 'gekauft im März'],
    ['fr', 'le numéro correspond, acheté en mars, ticket présenté', 'acheté en mars'],
    ['es', 'coincide el número, comprado en marzo, trae el recibo', 'comprado en marzo'],
    ['pl', 'numer się zgadza, kupiony w marcu, paragon okazany', 'kupiony w marcu'],
    ['ar', 'الرقم مطابق، اشتريت في مارس، الإيصال موجود', 'اشتريت في مارس'],
  ])('a month alone is no day and no term in %s', (locale, text, month) => {
    expect(told('starter-return', locale, 'part-number', text)).toEqual({
      answers: { 'part-number': 'matches-sale', 'sale-proof': 'shown' },
      left: [month],
    });
  });

  test.each([
    ['en', 'spins but does not turn the engine'],
    ['en', 'it just whirrs'],
    ['de', 'dreht sich, aber der Motor dreht nicht'],
    ['de', 'er surrt nur noch'],
    ['es', 'gira pero el motor no gira'],
    ['fr', 'il tourne mais n’entraîne pas le moteur'],
    ['pl', 'kręci się, ale nie obraca silnika'],
    ['ar', 'يدور بس المحرك ما يدور'],
  ])('a starter that spins by itself turns no engine in %s: “%s”', (locale, text) => {
    const answers = { claim: 'no-crank' };
    expect(told('starter-return', locale, 'claim', text)).toEqual({ answers, left: [] });
  });

  test('what is said of the starter itself is told of no part that is not named', () => {
    expect(told('starter-return', 'en', 'claim', 'spins, was fitted').answers).toEqual({
      claim: 'no-crank',
      handling: 'fitted',
    });
    expect(told('starter-return', 'en', 'claim', 'stud spins, only clicks').answers).toEqual({
      claim: 'no-crank',
      stud: 'turns',
    });
  });

  test('a day that reads two ways is asked back with both', () => {
    const [left] = hear('starter-return', 'en', null, 'bought 05/11/2025, grinds')?.left ?? [];
    expect(left?.unclear).toMatchObject({
      type: 'offers',
      offers: [{ value: '2025-05-11' }, { value: '2025-11-05' }],
    });
  });

  test('a danger, talk and a correction are no telling', () => {
    for (const text of ['smoke, it grinds', 'not 12.5, 12.1', 'in German please', '']) {
      expect(hear('starter-return', 'en', 'part-number', text), text).toBeUndefined();
    }
  });

  test('whatever is said, nothing is thrown', () => {
    const parts = [
      'in warranty',
      '3.3.2026',
      'March',
      '12.1 V',
      'and',
      ',',
      '…',
      'no',
      'KT1',
      '-8',
    ];
    for (const one of parts) {
      for (const other of parts) {
        for (const text of [`${one} ${other}`, `${one}, ${other}`, `${one}. ${other} ${one}`]) {
          expect(() => hear('battery-return', 'en', 'sale-date', text), text).not.toThrow();
        }
      }
    }
  });
});

describe('a voltage and the load it is read under', () => {
  test.each([
    ['en', '9.2 V at 270 A load'],
    ['en', '270 A load, 9.2 V'],
    ['en', '9.2 under load at 270'],
    ['de', '9,2 V bei 270 A'],
    ['fr', '270 A, 9,2 V'],
    ['pl', '9,2 V przy 270 A'],
  ])('in %s: “%s”', (locale, text) => {
    const [answer] = hear('battery-return', locale, 'battery-load-test', text)?.answers ?? [];
    expect(told('battery-return', locale, 'battery-load-test', text)).toEqual({
      answers: { 'battery-load-test': 9.2 },
      left: [],
    });
    expect(answer?.value).toMatchObject({ under: { value: 270, unit: 'A' } });
  });

  test('amperes with a name of their own are no load', () => {
    const text = 'label 640 A, tester 330 A, 9.2 V under load';
    expect(told('battery-return', 'en', 'battery-load-test', text)).toEqual({
      answers: { 'label-rating': 640, 'battery-tester': 330, 'battery-load-test': 9.2 },
      left: [],
    });
  });
});

describe('two things that share what is said of them', () => {
  const fine = { 'battery-look': 'sound', posts: 'sound' };

  test.each([
    ['en', 'case and posts fine'],
    ['en', 'housing and terminals ok'],
    ['en', 'posts and case good'],
    ['de', 'Gehäuse und Pole ok'],
    ['de', 'Kasten und Pole heil'],
    ['es', 'carcasa y bornes ok'],
    ['es', 'la caja y los bornes están bien'],
    ['fr', 'bac et bornes en bon état'],
    ['fr', 'boîtier et bornes ok'],
    ['fr', 'le bac et les bornes sont impeccables'],
    ['fr', 'boîtier et plots en bon état'],
    ['pl', 'obudowa i klemy ok'],
    ['pl', 'obudowa i bieguny całe'],
    ['ar', 'العلبة والأقطاب سليمة'],
    ['ar', 'الهيكل والقطبان سليمان'],
    ['ar', 'الأقطاب والعلبة سليمة'],
    ['ar', 'البطارية والأقطاب سليمة'],
  ] as const)('in %s: “%s”, whatever is asked', (locale, text) => {
    for (const check of ['part-number', 'handling', 'battery-look', 'posts']) {
      expect(told('battery-return', locale, check, text), check).toEqual({
        answers: fine,
        left: [],
      });
    }
  });

  test.each([
    ['en', 'case cracked and posts fine', 'cracked', 'sound'],
    ['en', 'case fine, posts hammered', 'sound', 'hammered'],
    ['de', 'Gehäuse gerissen und Pole ok', 'cracked', 'sound'],
    ['fr', 'bac fendu, bornes ok', 'cracked', 'sound'],
    ['fr', 'bac ok, bornes fondues', 'sound', 'melted'],
    ['ar', 'العلبة مشقوقة والأقطاب سليمة', 'cracked', 'sound'],
  ] as const)('in %s each keeps its own: “%s”', (locale, text, look, posts) => {
    expect(told('battery-return', locale, 'battery-look', text)).toEqual({
      answers: { 'battery-look': look, posts },
      left: [],
    });
  });

  test('what is denied of one is not said of it', () => {
    const { answers } = told('battery-return', 'en', 'battery-look', 'case and posts not ok');
    expect(answers).not.toMatchObject({ posts: 'sound' });
    expect(answers).not.toMatchObject({ 'battery-look': 'sound' });
  });
});
