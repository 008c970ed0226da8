/**
 * A flow of fitting with its words in English and its cards, each of which is played.
 */
import { readFileSync } from 'node:fs';
import type { Chart } from '@keyturn/core';
import { createSpeaker, type FlowTexts, type Speaker } from '@keyturn/language';
import { readCards, replayDecision, shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';

/** Reads a flow and tests that each of its cards comes to the outcome that it accepts. */
export function testFittingCards(name: 'starter-fitting' | 'battery-fitting'): {
  readonly chart: Chart;
  readonly texts: FlowTexts;
  readonly speaker: Speaker;
} {
  const { chart, texts } = shippedFlow(name, 'en');
  const speaker = createSpeaker({ locale: 'en', flowTexts: texts, checks: chart.flow.checks });
  const file = new URL(`../cards/${name}.json`, import.meta.url);
  const cards = readCards(`${name}.json`, readFileSync(file, 'utf8'));

  describe('every card comes to the outcome that it accepts, by the step that it names', () => {
    test.each(cards.map((card) => [card.id, card] as const))('%s', (_, card) => {
      const { outcome, reason, asked } = replayDecision(chart, speaker, card);
      expect(card.accept.outcome).toContain(outcome);
      if (card.accept.reason) expect(card.accept.reason).toContain(reason);
      expect(asked.filter((check) => card.forbid.includes(check))).toEqual([]);
    });
  });
  return { chart, texts, speaker };
}
