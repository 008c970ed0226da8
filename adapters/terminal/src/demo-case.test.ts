import { expected, openCase } from '@keyturn/core';
import { createSpeaker } from '@keyturn/language';
import { expect, test } from 'vitest';
import { demoAnswers } from './demo-case.ts';
import { shippedFlow } from '@keyturn/flows';

const { chart, texts } = shippedFlow('no-start', 'en');
const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
const opened = openCase(chart, { id: 'demo', at: '2026-01-05T08:00:00.000Z' }).case;

test('the demonstration has an answer to every check of the flow', () => {
  expect(Object.keys(demoAnswers).sort()).toEqual(Object.keys(chart.flow.checks).sort());
});

test.each(Object.entries(demoAnswers))(
  '%s is answered in words that are understood',
  (check, said) => {
    for (const text of [said].flat()) {
      const understood = speaker.understand(text, {
        ...expected(chart, opened),
        awaiting: 'answer',
        check,
      });
      expect(understood).toMatchObject({
        type: 'input',
        inputs: [{ type: 'answers', answers: [{ check }] }],
      });
    }
  },
);
