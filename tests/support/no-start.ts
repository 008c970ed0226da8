/**
 * The shipped flow and its case cards, for the tests that run them against each other.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { createSpeaker, type Speaker } from '@keyturn/language';
import { readCards, replayCard, shippedFlow, type Card, type Replayed } from '@keyturn/terminal';

const cardsFolder = new URL('../cards/', import.meta.url);

/** The no-start flow with its English words. */
export const noStart: ReturnType<typeof shippedFlow> = shippedFlow('no-start', 'en');

/** Speaks and understands English for it. */
export const speaker: Speaker = createSpeaker({
  locale: 'en',
  flowTexts: noStart.texts,
  checks: noStart.chart.flow.checks,
});

/** Every case card of the flow; those of other flows are named after theirs. */
export const cards: readonly Card[] = readdirSync(cardsFolder)
  .filter((name) => name.endsWith('.json') && !/-(?:return|fitting)\.json$/u.test(name))
  .sort()
  .flatMap((name) => readCards(name, readFileSync(new URL(name, cardsFolder), 'utf8')));

const played = new Map<string, Replayed>();

/** A card as it is played in English, once however often it is asked for. */
export function playedCard(card: Card): Replayed {
  const known = played.get(card.id) ?? replayCard(noStart.chart, speaker, card);
  played.set(card.id, known);
  return known;
}
