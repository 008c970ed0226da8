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
