/**
 * What one language brings to the desk.
 */
import { speakerOf, type FlowTexts, type Locale, type Speaker } from '@keyturn/language';
import type { Flow } from '@keyturn/core';
import type { DeskWords } from './words/desk-words.ts';

/** All words of one language. */
export interface DeskPack {
  /** BCP 47 tag. */
  readonly tag: string;
  readonly language: Locale;
  readonly desk: DeskWords;
  /** The texts of the desk's flow. */
  readonly texts: FlowTexts;
}

/** Loads a language by its tag. Rejects where it cannot be loaded. */
export type LoadPack = (tag: string) => Promise<DeskPack>;

/** The desk's speaker of a language: what it says is read out by a dispatcher. */
export function deskSpeaker({ tag, language, texts }: DeskPack, { checks }: Flow): Speaker {
  return speakerOf(language, { locale: tag, flowTexts: texts, checks, role: 'dispatcher' });
}

/** The language that a desk speaks now. */
export class DeskVoice {
  readonly #loadPack: LoadPack;
  readonly #flow: Flow;
  #spoken: { readonly pack: DeskPack; readonly speaker: Speaker } | undefined;

  constructor(loadPack: LoadPack, flow: Flow) {
    this.#loadPack = loadPack;
    this.#flow = flow;
  }

  /** Goes on in another language. Rejects, and stays with the one before, where it cannot be loaded. */
  async speak(tag: string): Promise<void> {
    const pack = await this.#loadPack(tag);
    this.#spoken = { pack, speaker: deskSpeaker(pack, this.#flow) };
  }

  /** BCP 47 tag. */
  get tag(): string {
    return this.#now.pack.tag;
  }

  /** The desk's own words. */
  get words(): DeskWords {
    return this.#now.pack.desk;
  }

  /** The flow's texts. */
  get texts(): FlowTexts {
    return this.#now.pack.texts;
  }

  /** Puts messages into words. */
  get speaker(): Speaker {
    return this.#now.speaker;
  }

  get #now(): { readonly pack: DeskPack; readonly speaker: Speaker } {
    if (this.#spoken === undefined) throw new Error('no language has been loaded');
    return this.#spoken;
  }
}
