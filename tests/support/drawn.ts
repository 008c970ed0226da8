/**
 * Readings, rankings and speakers of the shipped flow in every language, for the pictures' tests.
 */
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

/** What is said of readings that are given one after the other, on one vehicle. */
export function renderReadings(
  given: Answers,
  speaker: Speaker,
  context: Record<string, unknown> = {},
): Extract<Rendered, { kind: 'scale' }>[] {
  let step = take(open(context), answers({ complaint: 'slow-crank' }));
  return Object.entries(given).flatMap(([check, value]) => {
    step = take(step, answers({ [check]: value }));
    const readings = messagesOf(step, 'reading').filter((one) => one.check === check);
    return speaker
      .render(readings)
      .filter((one): one is Extract<Rendered, { kind: 'scale' }> => one.kind === 'scale');
  });
}
