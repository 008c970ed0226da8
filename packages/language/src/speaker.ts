import type { FlowTexts } from './flow-texts.ts';
import type { Locale } from './locale-names.ts';
import { tellerOf, type Teller, type TellerOptions } from './teller.ts';
import { understandingOf, type Understanding } from './understand/understanding.ts';

/** What a speaker is made of. */
export interface SpeakerOptions extends TellerOptions {
  readonly flowTexts: FlowTexts;
}

/** Speaks and understands one language for one flow. */
export interface Speaker extends Teller {
  /** What a typed text means. Pure; never throws. */
  readonly understand: Understanding;
}

/**
 * Creates the speaker of one conversation from a language that was brought along, as a page does
 * that carries only the one in use. Synchronous.
 */
export function speakerOf({ texts, words }: Locale, options: SpeakerOptions): Speaker {
  const teller = tellerOf(texts, options);
  const { flowTexts } = options;
  return { ...teller, understand: understandingOf(words, { teller, flowTexts }) };
}
