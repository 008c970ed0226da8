import { localeTags } from '@keyturn/language';
import { expect, test } from 'vitest';
import {
  FlowError,
  shippedFlow,
  shippedFlowNames,
  shippedLocales,
  shippedTexts,
} from './shipped-flow.ts';

test.each(localeTags)('the no-start flow has words in %s', (locale) => {
  expect(shippedTexts('no-start', locale).name).not.toBe('');
});

test('a regional tag takes the words of its language', () => {
  expect(shippedTexts('no-start', 'en-GB')).toEqual(shippedTexts('no-start', 'en'));
});

test('everyone in a program is given the same flow and the same words', () => {
  const { chart, texts } = shippedFlow('no-start', 'en');
  expect(shippedFlow('no-start', 'de').chart).toBe(chart);
  expect(shippedTexts('no-start', 'en-GB')).toBe(texts);
});

test('a flow or a language that there is not is named', () => {
  expect(() => shippedFlow('no-such-flow', 'en')).toThrow(FlowError);
  expect(() => shippedTexts('no-start', 'xx')).toThrow(/no-start has no words in “xx”; it has: ar/);
});

test.each(shippedFlowNames())('%s loads, and has words in English at the least', (name) => {
  const locales = shippedLocales(name);
  expect(locales).toContain('en');
  for (const locale of locales) expect(localeTags).toContain(locale);
  expect(shippedFlow(name, 'en').chart.flow.id).toBe(name);
});
