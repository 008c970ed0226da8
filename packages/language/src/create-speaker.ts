import { findLocale } from './locale.ts';
import { speakerOf, type Speaker, type SpeakerOptions } from './speaker.ts';

/**
 * Creates the speaker of one conversation, with an i18next instance of its own. Synchronous.
 *
 * Throws `locale-unknown` where there are no texts for the locale.
 *
 * @example
 * const speaker = createSpeaker({ locale: 'en', flowTexts, checks: flow.checks });
 * const words = speaker.render(step.messages);
 */
export function createSpeaker(options: SpeakerOptions): Speaker {
  return speakerOf(findLocale(options.locale), options);
}
