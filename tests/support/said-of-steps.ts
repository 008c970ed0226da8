/**
 * What people say of the steps of a fitting, held to what it means.
 */
import type { Chart } from '@keyturn/core';
import type { FlowTexts, Speaker } from '@keyturn/language';
import { expect, test } from 'vitest';

/** Tests every way to answer, to say that work is done, and to raise an alarm while it goes on. */
export function testWhatIsSaid(
  { chart, texts, speaker }: { chart: Chart; texts: FlowTexts; speaker: Speaker },
  during: string,
): void {
  const { checks } = chart.flow;
  const hearing = (check: string) => ({
    awaiting: 'answer' as const,
    check,
    checks,
    interrupts: Object.keys(chart.flow.interrupts),
    answered: [],
    kit: [],
    nominal: 12 as const,
    lamp: false,
  });

  test.each(Object.values(checks).map((check) => [check.id, check] as const))(
    'every way to answer %s is that answer',
    (id, { form }) => {
      if (form.kind !== 'choice') return;
      for (const answer of form.choices) {
        const { label = answer, said = [] } = texts.checks[id]?.answers?.[answer] ?? {};
        for (const phrase of [label, ...said]) {
          const understood = speaker.understand(phrase, hearing(id));
          expect(understood.type === 'input' ? understood.inputs : [], phrase).toEqual([
            { type: 'answers', answers: [{ check: id, value: [answer] }] },
          ]);
        }
      }
    },
  );

  test.each(Object.values(checks).map((check) => [check.id, check] as const))(
    'every way to say that %s is done says so, and no denial of it does',
    (id, { form }) => {
      if (form.kind !== 'work') return;
      const { label = 'done', said = [] } = texts.checks[id]?.answers?.['done'] ?? {};
      for (const phrase of [label, ...said]) {
        expect(speaker.understand(phrase, hearing(id)), phrase).toMatchObject({
          inputs: [{ type: 'answers', answers: [{ check: id, value: ['done'] }] }],
        });
        const asked = phrase.includes(' ') ? [`${phrase}?`] : [];
        for (const denial of [`not ${phrase}`, `I can’t say that it is ${phrase}`, ...asked]) {
          expect(speaker.understand(denial, hearing(id)), denial).not.toMatchObject({
            inputs: [{ type: 'answers' }],
          });
        }
      }
    },
  );

  test.each(Object.keys(chart.flow.interrupts))('%s is raised however it is said', (id) => {
    for (const phrase of texts.interrupts[id]!.said) {
      const understood = speaker.understand(phrase, hearing(during));
      expect(understood.type === 'input' ? understood.inputs : [], phrase).toEqual([
        { type: 'interrupt', interrupt: id },
      ]);
    }
  });
}
