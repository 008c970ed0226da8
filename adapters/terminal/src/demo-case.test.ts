import { expected, openCase } from '@keyturn/core';
import { shippedFlow, shippedTexts } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { demoAnswers, demoSaid } from './demo-case.ts';
import { terminalTexts } from './terminal-texts.ts';

const { chart } = shippedFlow('no-start', 'en');
const opened = openCase(chart, { id: 'demo', at: '2026-01-05T08:00:00.000Z' }).case;

test('the demonstration has an answer to every check of the flow', () => {
  expect(Object.keys(demoAnswers).sort()).toEqual(Object.keys(chart.flow.checks).sort());
});

describe.each(localeTags)('in %s', (locale) => {
  const flowTexts = shippedTexts('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts, checks: chart.flow.checks });
  const words = {
    label: speaker.answerLabel,
    figure: speaker.formatQuantity,
    dontKnow: terminalTexts(locale).dontKnow,
  };

  test.each(Object.keys(demoAnswers))('%s is answered in words that are understood', (check) => {
    const understood = speaker.understand(demoSaid(check, words), {
      ...expected(chart, opened),
      awaiting: 'answer',
      check,
    });
    const given = demoAnswers[check];
    const figure =
      given !== undefined && 'value' in given ? { value: given.value, unit: given.unit } : given;
    expect(understood).toMatchObject({
      type: 'input',
      inputs: [{ type: 'answers', answers: [{ check, value: figure }] }],
    });
  });

  test('what is not known is said so that it is understood', () => {
    expect(
      speaker.understand(words.dontKnow, {
        ...expected(chart, opened),
        awaiting: 'answer',
        check: 'complaint',
      }),
    ).toMatchObject({ talk: 'dont-know' });
  });
});
