/**
 * What one language brings to a page.
 */
import type { FlowTexts, Locale } from '@keyturn/language';
import { fittingTag } from './host.ts';
import type { PageWords } from './words/page-words.ts';

/** All words of one language. */
export interface LanguagePack {
  /** BCP 47 tag. */
  readonly tag: string;
  readonly language: Locale;
  readonly page: PageWords;
  /** Flow id to its texts. */
  readonly flows: Readonly<Record<string, FlowTexts>>;
}

/** The languages that there are. */
export interface Languages {
  /** Loads the pack of a tag or its language alone; undefined where there is none, or no signal. */
  readonly load: (tag: string) => Promise<LanguagePack | undefined>;
}

/** Languages in files of their own, each loaded once. */
export function createLanguages(
  tags: readonly string[],
  importPack: (tag: string) => Promise<LanguagePack>,
): Languages {
  const packs = new Map<string, LanguagePack>();
  return {
    load: async (wanted) => {
      const tag = fittingTag(wanted, tags);
      if (tag === undefined) return undefined;
      try {
        const pack = packs.get(tag) ?? (await importPack(tag));
        packs.set(tag, pack);
        return pack;
      } catch {
        return undefined;
      }
    },
  };
}
