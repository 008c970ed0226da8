/**
 * What a text means to the no-start flow in each language, with nothing found yet.
 */
import { createSpeaker, localeTags, type Understood } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import { nothingFound } from './nothing-found.ts';

/** For each locale: what is meant by a text at the check that was just asked, or at none. */
export const understandIn = Object.fromEntries(
  localeTags.map((locale) => {
    const { chart, texts } = shippedFlow('no-start', locale);
    const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
    const understand = (check: string | null, text: string): Understood =>
      speaker.understand(text, nothingFound(chart, check));
    return [locale, understand];
  }),
);
