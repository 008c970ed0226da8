import type { FlowTexts } from './flow-texts.ts';
import type { Locale } from './locale-names.ts';
import { tellerOf, type Teller, type TellerOptions } from './teller.ts';
import { asHeard } from './understand/as-heard.ts';
import { spelling } from './understand/as-meant.ts';
import { keptLexicon } from './understand/kept-lexicon.ts';
import { understandEach, type ToldEach } from './understand/told-each.ts';
import { listenersOf, understandingBy, type Understanding } from './understand/understanding.ts';
import type { Hearing } from './understand/understood.ts';

/** What a speaker is made of. */
export interface SpeakerOptions extends TellerOptions {
  readonly flowTexts: FlowTexts;
}

/** Speaks and understands one language for one flow. */
export interface Speaker extends Teller {
  /** What a typed text means. Pure; never throws. */
  readonly understand: Understanding;
  /**
   * All that a typed text tells, part by part, and the parts that were not understood; undefined
   * where it tells no answers. Pure; never throws.
   */
  readonly understandEach: (text: string, hearing: Hearing) => ToldEach | undefined;
  /**
   * Learns what people are heard to say to these checks, ahead of the first text, in steps of some
   * milliseconds: whoever goes through them decides when. What is asked meanwhile is learned at once.
   */
  readonly learnAhead: (checks: Hearing['checks']) => Iterable<undefined>;
}

/**
 * Creates the speaker of one conversation from a language that was brought along, as a page does
 * that carries only the one in use. Synchronous.
 */
export function speakerOf({ texts, words }: Locale, options: SpeakerOptions): Speaker {
  const teller = tellerOf(texts, options);
  const { flowTexts } = options;
  const listenerFor = listenersOf(words, { teller, flowTexts, asHeard });
  return {
    ...teller,
    understand: understandingBy(listenerFor),
    understandEach: (text, hearing) => understandEach(text, hearing, listenerFor(hearing)),
    learnAhead: function* (checks) {
      const lexicon = keptLexicon({ words, texts: flowTexts, checks });
      yield* spelling(lexicon).ahead();
      yield* lexicon.learnAhead();
    },
  };
}
