/**
 * What a clerk says of a part: the day of its sale in every language, counted back from a Thursday
 * by the platform's calendar, and two things in one breath.
 */
import type { Hearing } from '@keyturn/language';
import { createSpeaker } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { nothingFound } from './support/nothing-found.ts';

const today = '2026-11-26';

/** A text and the day that it means; null where it means none. */
type Said = readonly (readonly [text: string, day: string | null])[];

const said: Readonly<Record<string, Said>> = {
  en: [
    ['receipt from 3 March', '2026-03-03'],
    ['bought on March 3rd', '2026-03-03'],
    ['5 December', '2025-12-05'],
    ['29 February', '2024-02-29'],
    ['today', '2026-11-26'],
    ['yesterday', '2026-11-25'],
    ['bought the day before yesterday', '2026-11-24'],
    ['last Tuesday', '2026-11-24'],
    ['on Thursday', '2026-11-19'],
    ['Friday last week', '2026-11-20'],
    ['Tuesday last week', '2026-11-17'],
    ['a fortnight ago', '2026-11-12'],
    ['two weeks ago', '2026-11-12'],
    ['a week ago', '2026-11-19'],
    ['10 days ago', '2026-11-16'],
    ['tomorrow', null],
    ['three months ago', '2026-08-26'],
    ['2 years ago', '2024-11-26'],
    ['about 2 years ago', null],
    ['1.5 years ago', null],
    ['two or three years ago', null],
    ['some weeks ago', null],
    ['last winter', null],
    ['last winter, maybe January', null],
    ['last year', null],
    ['bought in 2024', null],

    ['30 February', null],
  ],
  de: [
    ['Beleg vom 3. März', '2026-03-03'],
    ['gestern', '2026-11-25'],
    ['vorgestern gekauft', '2026-11-24'],
    ['letzten Dienstag', '2026-11-24'],
    ['Dienstag letzter Woche', '2026-11-17'],
    ['vor zwei Wochen', '2026-11-12'],
    ['vor einer Woche', '2026-11-19'],
    ['vor 14 Tagen', '2026-11-12'],
    ['vor drei Monaten', '2026-08-26'],
    ['vor zwei Jahren', '2024-11-26'],
    ['letzten Winter', null],
    ['vor einigen Wochen', null],
  ],
  es: [
    ['recibo del 3 de marzo', '2026-03-03'],
    ['ayer', '2026-11-25'],
    ['antes de ayer', '2026-11-24'],
    ['el martes pasado', '2026-11-24'],
    ['el martes de la semana pasada', '2026-11-17'],
    ['hace dos semanas', '2026-11-12'],
    ['hace una semana', '2026-11-19'],
    ['hace 3 días', '2026-11-23'],
    ['hace 2 años', '2024-11-26'],
    ['el invierno pasado', null],
  ],
  fr: [
    ['acheté le 3 mars', '2026-03-03'],
    ['hier', '2026-11-25'],
    ['avant-hier', '2026-11-24'],
    ['mardi dernier', '2026-11-24'],
    ['mardi de la semaine dernière', '2026-11-17'],
    ['il y a deux semaines', '2026-11-12'],
    ['il y a une semaine', '2026-11-19'],
    ['il y a trois jours', '2026-11-23'],
    ['il y a 2 ans', '2024-11-26'],
    ['l’hiver dernier', null],
  ],
  pl: [
    ['3 marca', '2026-03-03'],
    ['wczoraj', '2026-11-25'],
    ['przedwczoraj', '2026-11-24'],
    ['w zeszły wtorek', '2026-11-24'],
    ['w środę', '2026-11-25'],
    ['we wtorek w zeszłym tygodniu', '2026-11-17'],
    ['dwa tygodnie temu', '2026-11-12'],
    ['tydzień temu', '2026-11-19'],
    ['3 dni temu', '2026-11-23'],
    ['2 lata temu', '2024-11-26'],
    ['zeszłej zimy', null],
    ['kilka tygodni temu', null],
  ],
  ar: [
    ['3 مارس', '2026-03-03'],
    ['أمس', '2026-11-25'],
    ['أول أمس', '2026-11-24'],
    ['الثلاثاء الماضي', '2026-11-24'],
    ['الثلاثاء من الأسبوع الماضي', '2026-11-17'],
    ['قبل أسبوعين', '2026-11-12'],
    ['منذ أسبوع', '2026-11-19'],
    ['قبل ثلاثة أيام', '2026-11-23'],
    ['قبل 3 سنوات', '2023-11-26'],
    ['الشتاء الماضي', null],
  ],
};

function speakerIn(locale: string, flow = 'starter-return') {
  const { chart, texts } = shippedFlow(flow, locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const hearing = (check: string): Hearing => ({ ...nothingFound(chart, check), today });
  return { speaker, hearing };
}

/** The answer to one check, as the language understands a text. */
const dayAnswer = (day: string): object => ({
  type: 'answers',
  answers: [{ check: 'sale-date', value: [day] }],
});

describe.each(Object.entries(said))('a day told in %s', (locale, days) => {
  const { speaker, hearing } = speakerIn(locale);

  test.each(days)('%s', (text, day) => {
    const understood = speaker.understand(text, hearing('sale-date'));
    if (day === null) expect(understood.type, text).not.toBe('input');
    else {
      const inputs = understood.type === 'input' ? understood.inputs : [];
      expect(inputs).toEqual(expect.arrayContaining([dayAnswer(day)]));
    }
  });
});

describe.each([
  ['en', 'receipt from 3 March'],
  ['de', 'Beleg vom 3. März'],
  ['es', 'recibo del 3 de marzo'],
  ['fr', 'reçu du 3 mars'],
  ['pl', 'paragon z 3 marca'],
  ['ar', 'فاتورة بتاريخ 3 مارس'],
])('the day of a receipt in %s', (locale, text) => {
  test(`is that of the sale, whatever is asked: ${text}`, () => {
    const { speaker, hearing } = speakerIn(locale);
    const told = speaker.understandEach(text, hearing('handling'));
    expect(told?.answers).toEqual(
      expect.arrayContaining([{ check: 'sale-date', value: ['2026-03-03'] }]),
    );
  });
});

describe('a day told beside another question', () => {
  const { speaker, hearing } = speakerIn('en');

  test('is that of the sale where the sale is named, and what stands beside it is heard', () => {
    const told = speaker.understandEach(
      'bought last Tuesday, was fitted, only clicks',
      hearing('handling'),
    );
    expect(told?.left).toEqual([]);
    expect(told?.answers).toEqual(
      expect.arrayContaining([{ check: 'sale-date', value: ['2026-11-24'] }]),
    );
  });

  test.each(['it stopped yesterday', 'slow since last Tuesday', 'it worked for two weeks'])(
    'is none where it is not: %s',
    (text) => {
      expect(JSON.stringify(speaker.understand(text, hearing('claim')))).not.toContain('sale-date');
    },
  );

  test('is asked for where nobody knows which day it is', () => {
    const { today: _, ...timeless } = hearing('sale-date');
    expect(speaker.understand('yesterday', timeless)).toMatchObject({ code: 'not-a-day' });
  });
});

describe.each([
  ['en', 'case and posts fine'],
  ['en', 'posts and case good'],
  ['de', 'Gehäuse und Pole in Ordnung'],
  ['es', 'carcasa y postes bien'],
  ['pl', 'obudowa i bieguny w porządku'],
])('two things of which one finding is said in %s', (locale, text) => {
  const { speaker, hearing } = speakerIn(locale, 'battery-return');

  test.each(['handling', 'battery-look', 'posts'])(`both are so, at %s: ${text}`, (check) => {
    const told = speaker.understandEach(text, hearing(check));
    expect(told?.left).toEqual([]);
    expect(told?.answers).toHaveLength(2);
    expect(told?.answers).toEqual(
      expect.arrayContaining([
        { check: 'battery-look', value: ['sound'] },
        { check: 'posts', value: ['sound'] },
      ]),
    );
  });
});

/** What the hydrometer showed, and how far the cells are apart. */
const cells: readonly (readonly [locale: string, check: string, text: string, found: unknown])[] = [
  ['en', 'cell-spread', '1.260 1.255 1.260 1.110 1.260 1.255', 0.15],
  ['en', 'cell-spread', '1260, 1255, 1260', 0.005],
  ['en', 'cell-spread', 'best 1.270, worst 1.240, so 0.030', 0.03],
  ['en', 'received-volts', 'hydrometer 1.260 1.110', 0.15],
  ['en', 'received-volts', '1.260 1.255 1.110', 0.15],
  ['en', 'received-volts', 'one cell reads far below the others', ['uneven']],
  ['de', 'cell-spread', '1,260 1,255 1,260 1,110', 0.15],
  ['de', 'cell-spread', 'alle Zellen gleich', ['even']],
  ['es', 'cell-spread', 'una celda muy por debajo', ['uneven']],
  ['fr', 'cell-spread', '1,260 ; 1,255 ; 1,235', 0.025],
  ['pl', 'cell-spread', 'jedna cela znacznie poniżej', ['uneven']],
  ['ar', 'cell-spread', '1.260 1.255 1.110', 0.15],
];

test.each(cells)('in %s, asked for %s, “%s” tells how far the cells are apart', (...row) => {
  const [locale, check, text, found] = row;
  const { chart, texts } = shippedFlow('battery-return', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const understood = speaker.understand(text, nothingFound(chart, check));
  const value = typeof found === 'number' ? { value: found, unit: '1' } : found;
  expect(understood).toMatchObject({
    inputs: [{ answers: [{ check: 'cell-spread', value }] }],
  });
});

test.each([
  ['12.4 V', true],
  ['12,4 Volt', true],
  ['12.4 DC', true],
  ['about 12.4', true],
  ['12.4ish', true],
  ['12.4x', false],
  ['12,4x', false],
  ['x12.4', false],
  ['12.4 kg', false],
])('“%s” is a voltage: %s', (text, isFigure) => {
  const { chart, texts } = shippedFlow('battery-return', 'en');
  const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
  expect(speaker.understand(text, nothingFound(chart, 'received-volts')).type).toBe(
    isFigure ? 'input' : 'unclear',
  );
});
