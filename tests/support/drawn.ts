/**
 * Readings, rankings and speakers of the shipped flow in every language, for the pictures' tests.
 */
import type { ReadingMessage } from '@keyturn/core';
import { createSpeaker, localeTags, type Rendered, type Speaker } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { noStart } from './no-start.ts';
import { answers, messagesOf, open, take, type Answers } from './play.ts';

/** A speaker for each language, by its tag. */
export const speakers: ReadonlyMap<string, Speaker> = new Map(
  localeTags.map((locale) => [
    locale,
    createSpeaker({
      locale,
      flowTexts: shippedFlow('no-start', locale).texts,
      checks: noStart.chart.flow.checks,
    }),
  ]),
);

/** What is said of one reading that a case begins with, on a vehicle that turns slowly. */
export function takeReading(
  given: Answers,
  context: Record<string, unknown> = {},
): readonly ReadingMessage[] {
  const opened = take(open(context), answers({ complaint: 'slow-crank' }));
  return messagesOf(take(opened, answers(given)), 'reading');
}

/** Readings in words. */
export function renderScales(
  readings: readonly ReadingMessage[],
  speaker: Speaker,
): Extract<Rendered, { kind: 'scale' }>[] {
  return speaker.render(readings).filter((one) => one.kind === 'scale');
}
