import type { Chart } from '@keyturn/core';
import { createSpeaker, type FlowTexts } from '@keyturn/language';
import type { Spoken } from './conversation.ts';
import type { Emphasis } from './emphasis.ts';
import { terminalTexts } from './terminal-texts.ts';

/** All that a case in a terminal is told with in one language. */
export function speakIn(
  locale: string,
  given: {
    readonly chart: Chart;
    readonly texts: FlowTexts;
    readonly columns: () => number;
    readonly emphasis: Emphasis;
  },
): Spoken {
  const { chart, texts: flowTexts, columns, emphasis } = given;
  const speaker = createSpeaker({ locale, flowTexts, checks: chart.flow.checks });
  const texts = terminalTexts(locale);
  const time = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  const decimals = (value: number): number => (Math.abs(value) < 100 ? 2 : 0);
  return {
    speaker,
    flowTexts,
    texts,
    formatTime: (date) => time.format(date),
    page: () => ({
      width: columns(),
      emphasis,
      direction: speaker.direction,
      formatQuantity: speaker.formatQuantity,
      nameOf: speaker.checkName,
      expected: texts.expected,
      formatNumber: (value) => speaker.formatNumber(value, decimals(value)),
      formatRange: (low, high) => speaker.formatRange(low, high, decimals(high)),
    }),
  };
}
