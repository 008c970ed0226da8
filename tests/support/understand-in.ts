/**
 * What a text means to the no-start flow in each language, with nothing found yet.
 */
import { createSpeaker, localeTags, type Understood } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';

/** For each locale: what is meant by a text at the check that was just asked, or at none. */
export const understandIn = Object.fromEntries(
  localeTags.map((locale) => {
    const { chart, texts } = shippedFlow('no-start', locale);
    const { checks, interrupts } = chart.flow;
    const speaker = createSpeaker({ locale, flowTexts: texts, checks });
    const understand = (check: string | null, text: string): Understood =>
      speaker.understand(text, {
        awaiting: 'answer',
        check,
        checks,
        interrupts: Object.keys(interrupts),
        answered: [],
        kit: [],
        nominal: 12,
        lamp: false,
      });
    return [locale, understand];
  }),
);
