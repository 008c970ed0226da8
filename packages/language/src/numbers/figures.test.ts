import { describe, expect, test } from 'vitest';
import { createFigures } from './figures.ts';
import { findLocale, localeTags } from '../locale.ts';
import { LanguageError } from '../language-error.ts';
import { createSay } from '../texts/create-say.ts';
import { unitSigns } from './unit.ts';

function figuresOf(locale: string) {
  return createFigures(locale, createSay(locale, findLocale(locale).texts));
}

describe('a figure is written with its sign and the decimals that were typed', () => {
  const { formatQuantity } = figuresOf('en');
  test.each([
    { figure: { value: 12.4, unit: 'V', resolution: 0.01 }, written: '12.40 V' },
    { figure: { value: 12.4, unit: 'V', resolution: 0.1 }, written: '12.4 V' },
    { figure: { value: 12.4, unit: 'V' }, written: '12.4 V' },
    { figure: { value: 12, unit: 'V', resolution: 1 }, written: '12 V' },
    { figure: { value: 240, unit: 'mV', resolution: 1 }, written: '240 mV' },
    { figure: { value: 1200, unit: 'A', resolution: 1 }, written: '1,200 A' },
    { figure: { value: 0.025, unit: 'Ohm' }, written: '0.025 Ω' },
    { figure: { value: 4.2, unit: 'mOhm', resolution: 0.1 }, written: '4.2 mΩ' },
    { figure: { value: -8, unit: 'Cel', resolution: 1 }, written: '-8 °C' },
    { figure: { value: 70, unit: '[degF]', resolution: 1 }, written: '70 °F' },
    { figure: { value: 45, unit: 'N.m', resolution: 1 }, written: '45 N·m' },
    { figure: { value: 10, unit: 'min', resolution: 1 }, written: '10 min' },
    { figure: { value: 1, unit: 'a', resolution: 1 }, written: '1 year' },
    { figure: { value: 3, unit: 'a', resolution: 1 }, written: '3 years' },
    { figure: { value: 2500, unit: '/min', resolution: 1 }, written: '2,500 rpm' },
    { figure: { value: 12.5, unit: 'V', resolution: 0.25 }, written: '12.50 V' },
  ])('$written', ({ figure, written }) => {
    expect(formatQuantity(figure)).toBe(written);
  });
});

test('an unknown unit is thrown, not left out', () => {
  const { formatQuantity } = figuresOf('en');
  expect(() => formatQuantity({ value: 12, unit: 'banana' })).toThrow(
    new LanguageError('unit-unknown', 'banana'),
  );
  expect(() => formatQuantity({ value: 12, unit: 'constructor' })).toThrow(LanguageError);
});

/** Without what only steers how a text is shown. */
function plain(text: string): string {
  return text.replace(/[\u2066-\u2069]/g, '');
}

describe.each([...localeTags, 'en-US', 'ar-EG', 'ar-MA', 'de-CH', 'es-MX'])('in %s', (locale) => {
  const figures = figuresOf(locale);

  test.each(Object.keys(unitSigns))('%s is written', (unit) => {
    const shown = locale === 'en-US' && unit === 'Cel' ? 37.4 : 3;
    const three = new Intl.NumberFormat(locale).format(shown);
    expect(figures.formatQuantity({ value: 3, unit })).toContain(three);
    expect(figures.unitSign(unit)).toBeTypeOf('string');
  });

  test.each([0, 0.5, 12.41, 1234.5])('%d is written as Intl writes it', (value) => {
    const number = new Intl.NumberFormat(locale, { maximumFractionDigits: 3 }).format(value);
    expect(plain(figures.formatQuantity({ value, unit: 'V' }))).toBe(`${number} V`);
  });

  test.each([0, 0.62, 1])('the share %d is written as Intl writes it', (share) => {
    const percent = new Intl.NumberFormat(locale, { style: 'percent' }).format(share);
    expect(plain(figures.formatShare(share))).toBe(percent);
  });

  test('a share short of certainty is never written as certain', () => {
    expect(figures.formatShare(0.999)).toBe(figures.formatShare(0.99));
  });

  test('lists are those of Intl', () => {
    const items = ['a', 'b', 'c'];
    expect(plain(figures.listAll(items))).toBe(
      new Intl.ListFormat(locale, { type: 'conjunction' }).format(items),
    );
    expect(plain(figures.listAny(items))).toBe(
      new Intl.ListFormat(locale, { type: 'disjunction' }).format(items),
    );
  });
});

test('degrees are Fahrenheit where the region uses them, and so is a figure without a unit', () => {
  const inAmerica = figuresOf('en-US');
  expect(inAmerica.formatQuantity({ value: -8, unit: 'Cel', resolution: 1 })).toBe('18 °F');
  expect(inAmerica.unitSign('Cel')).toBe('°F');
  expect(inAmerica.unitHere('Cel')).toBe('[degF]');
  expect(figuresOf('en-GB').unitHere('Cel')).toBe('Cel');
  expect(figuresOf('es-MX').unitHere('Cel')).toBe('Cel');
});
