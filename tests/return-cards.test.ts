/**
 * The cards of parts that come back, written from the trade alone, against the flows that judge
 * them, and the words by which their checks are answered.
 */
import { readFileSync } from 'node:fs';
import { createSpeaker, type Hearing } from '@keyturn/language';
import { readCards, replayDecision, shippedFlow, type Card } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

describe.each(['starter-return', 'battery-return'])('%s', (name) => {
  const { chart, texts } = shippedFlow(name, 'en');
  const { checks } = chart.flow;
  const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks });
  const file = `cards/${name}.json`;
  const cards = readCards(file, readFileSync(new URL(file, import.meta.url), 'utf8'));

  test.each(cards.map((card): [string, Card] => [card.id, card]))('%s', (_, card) => {
    const { decision, reason, asked, ok } = replayDecision(chart, speaker, card);
    expect(card.accept.decision).toContain(decision);
    expect(card.accept.reason).toContain(reason);
    expect(asked.filter((check) => card.forbid.includes(check))).toEqual([]);
    expect(ok).toBe(true);
  });

  test('a card whose decision is another one is not ok', () => {
    for (const card of cards.slice(0, 10)) {
      const others = { ...card, accept: { ...card.accept, decision: ['goodwill'] } };
      expect(replayDecision(chart, speaker, others).ok).toBe(false);
    }
  });

  const hearing = (check: string): Hearing => ({
    awaiting: 'answer',
    check,
    checks,
    interrupts: Object.keys(chart.flow.interrupts),
    answered: [],
    kit: [],
    nominal: 12,
    lamp: false,
  });

  test.each(Object.values(checks).map((check) => [check.id, check] as const))(
    'every way to answer %s is that answer',
    (id, { form }) => {
      const words = texts.checks[id]?.answers ?? {};
      for (const [answer, { label, said = [] }] of Object.entries(words)) {
        if (form.kind === 'reading') continue;
        for (const phrase of [label, ...said]) {
          const understood = speaker.understand(phrase, hearing(id));
          expect(understood, phrase).toMatchObject({
            type: 'input',
            inputs: [{ type: 'answers', answers: [{ check: id, value: [answer] }] }],
          });
        }
      }
    },
  );

  test.each(Object.keys(chart.flow.interrupts))('%s is raised however it is said', (interrupt) => {
    for (const phrase of texts.interrupts[interrupt]?.said ?? []) {
      for (const check of Object.keys(checks).slice(0, 4)) {
        const understood = speaker.understand(phrase, hearing(check));
        const inputs = understood.type === 'input' ? understood.inputs : [];
        expect(inputs, `${phrase} at ${check}`).toContainEqual({ type: 'interrupt', interrupt });
      }
    }
  });

  test('every decision and reason can be read out, and every check and stop is named', () => {
    for (const { decide, reason, again, measure, ...line } of chart.flow.decisions) {
      const refund = 'pays' in line ? { currency: 'EUR', lines: [], total: 0 } : undefined;
      const said = speaker.render([
        {
          kind: 'decision',
          called: 'decision',
          line: 1,
          decide,
          reason,
          rests: [],
          stops: [],
          changes: [],
          measure,
          again,
          ...(refund === undefined ? {} : { refund }),
        },
      ]);
      const [read] = said;
      expect(read).toMatchObject({ kind: 'verdict' });
      if (decide === 'test-further') {
        const headings =
          read?.kind === 'verdict' ? read.sections.map(({ heading }) => heading) : [];
        expect(headings, `${reason}: what is to be done now`).toContain('What to do now');
      }
    }
    const asked = new Set(Object.keys(checks));
    expect(Object.keys(texts.checks).filter((id) => !asked.has(id))).toEqual([]);
    expect(Object.keys(checks).filter((id) => texts.checks[id]?.ask === undefined)).toEqual([]);
    expect(Object.keys(texts.stops).sort()).toEqual(chart.flow.stops.map(({ id }) => id).sort());
    expect(Object.keys(texts.cautions).sort()).toEqual(Object.keys(chart.flow.cautions).sort());
  });
});
