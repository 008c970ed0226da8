/**
 * What stands on a battery's label, and the load that hangs on it, as they are typed at a return.
 * Common practice, no source.
 */
import { openCase, expected, turn, type Input } from '@keyturn/core';
import { createSpeaker, type Understood } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

const at = '2026-11-26T10:00:00Z';
const context = {
  kit: ['load-tester'],
  part: { nominal: 12, battery: { technology: 'flooded', rating: 640, standard: 'en' } },
};

function hear(check: string, text: string, locale = 'en'): Understood {
  const { chart, texts } = shippedFlow('battery-return', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  const { case: kase } = openCase(chart, { id: 'label', at });
  return speaker.understand(text, { ...expected(chart, kase), check });
}

/** Check to its answer, of a text that tells answers. */
function told(check: string, text: string, locale?: string): Readonly<Record<string, unknown>> {
  const understood = hear(check, text, locale);
  const inputs: readonly Input[] = understood.type === 'input' ? understood.inputs : [];
  const answers = inputs.flatMap((one) => (one.type === 'answers' ? one.answers : []));
  return Object.fromEntries(
    answers.map(({ check: id, value }) => [id, 'unit' in value ? value.value : value[0]]),
  );
}

/** Why what was understood is not taken; undefined where it is. */
function refusalOf(understood: Understood, known: Readonly<Record<string, unknown>> = {}): unknown {
  const { chart } = shippedFlow('battery-return', 'en');
  const [input] = understood.type === 'input' ? understood.inputs : [];
  const { case: kase } = openCase(chart, { id: 'label', at, context: known });
  return turn(chart, kase, { at, input }).messages.find(({ kind }) => kind === 'refused');
}

describe('the amperes of a label', () => {
  test.each([
    ['en', '640 A EN', 'en'],
    ['en', '640 EN', 'en'],
    ['en', '640 A (EN)', 'en'],
    ['en', 'label says 680 CCA SAE', 'sae'],
    ['de', '640 A DIN', 'din'],
    ['es', '640 A DIN', 'din'],
  ])('keep the standard behind them: %s, “%s”', (locale, text, standard) => {
    const answers = told('label-rating', text, locale);
    expect(answers).toMatchObject({ 'label-standard': standard });
    expect(answers['label-rating']).toBeGreaterThanOrEqual(640);
  });

  test('have no standard where a word of the sentence sounds like one', () => {
    expect(told('label-rating', '640 A en la etiqueta', 'es')).toEqual({ 'label-rating': 640 });
  });

  test('are taken of a motorcycle’s battery too, once they are surely amperes', () => {
    expect(told('label-rating', '65 A')).toEqual({ 'label-rating': 65 });
    // The Ah of a car's battery are as many.
    expect(hear('label-rating', '65')).toMatchObject({
      type: 'offers',
      offers: [{ check: 'label-rating', value: { value: 65, unit: 'A' } }],
    });
    const hours = hear('label-rating', '65 Ah');
    expect(refusalOf(hours)).toMatchObject({ code: 'wrong-unit', check: 'label-rating' });
  });
});

describe('a voltage under a load', () => {
  const judge = (text: string, known: Readonly<Record<string, unknown>> = context): unknown =>
    refusalOf(hear('battery-load-test', text), known);

  test('that is not half of the label is refused with both, and one that is is taken', () => {
    expect(judge('9.8 V at 200 A')).toMatchObject({
      code: 'wrong-load',
      check: 'battery-load-test',
      load: { told: 200, rating: 640, half: 320 },
    });
    expect(judge('9.8 V at 315 A')).toBeUndefined();
    expect(judge('9.8 V')).toBeUndefined();
  });

  test('is held against no label that is not known, or whose half is no load', () => {
    expect(judge('9.8 V at 200 A', { kit: ['load-tester'] })).toBeUndefined();
    const din = { ...context.part, battery: { ...context.part.battery, standard: 'din' } };
    expect(judge('9.8 V at 200 A', { ...context, part: din })).toBeUndefined();
  });
});
