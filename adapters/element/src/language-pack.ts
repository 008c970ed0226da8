/**
 * What one language brings to a page.
 */
import type { FlowTexts, Locale } from '@keyturn/language';
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

/** The packs loaded so far, and those that can be loaded. */
export interface Languages {
  /** The pack in hand for a tag or its language alone. */
  readonly get: (tag: string) => LanguagePack | undefined;
  /** Loads the pack of a tag; undefined where there is none, or no signal. */
  readonly load: (tag: string) => Promise<LanguagePack | undefined>;
}

/** Languages of which one is built in and the others lie in files beside the script. */
export function createLanguages(given: {
  readonly builtIn: LanguagePack;
  readonly tags: readonly string[];
  readonly importPack: (tag: string) => Promise<LanguagePack>;
}): Languages {
  const packs = new Map([[given.builtIn.tag, given.builtIn]]);
  const tagOf = (wanted: string): string | undefined => {
    const base = wanted.split('-', 1)[0];
    return [wanted, base].find((tag) => tag !== undefined && given.tags.includes(tag));
  };
  return {
    get: (wanted) => packs.get(tagOf(wanted) ?? ''),
    load: async (wanted) => {
      const tag = tagOf(wanted);
      if (tag === undefined) return undefined;
      const known = packs.get(tag);
      if (known !== undefined) return known;
      try {
        const pack = await given.importPack(tag);
        packs.set(tag, pack);
        return pack;
      } catch {
        return undefined;
      }
    },
  };
}
