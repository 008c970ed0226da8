/**
 * What one language brings to a page.
 */
import type {
  GeneralTexts,
  Teller,
  ToldTexts,
  Understanding,
  understandingOf,
  Words,
} from '@keyturn/language';
import { joinTexts, type SaidTexts } from './case/parted-texts.ts';
import { fittingTag } from './host.ts';
import type { PageWords } from './words/page-words.ts';

/** All that is told in one language. */
export interface LanguagePack {
  /** BCP 47 tag. */
  readonly tag: string;
  readonly texts: GeneralTexts;
  readonly page: PageWords;
  /** Flow id to what it tells. */
  readonly flows: Readonly<Record<string, ToldTexts>>;
}

/** All that people say in one language. */
export interface SaidPack {
  readonly words: Words;
  /** Flow id to how people say things in it. */
  readonly flows: Readonly<Record<string, SaidTexts>>;
}

/** Where the parts of the languages are loaded from. */
export interface LanguageFiles {
  readonly pack: (tag: string) => Promise<LanguagePack>;
  readonly said: (tag: string) => Promise<SaidPack>;
  readonly understanding: () => Promise<{ readonly understandingOf: typeof understandingOf }>;
}

/** The languages that there are. */
export interface Languages {
  /** Loads the pack of a tag or its language alone; undefined where there is none, or no signal. */
  readonly load: (tag: string) => Promise<LanguagePack | undefined>;
  /** Loads what understands that language in a flow. Rejects where there is no signal. */
  readonly loadUnderstanding: (
    pack: LanguagePack,
    given: { readonly flow: string; readonly teller: Teller },
  ) => Promise<Understanding>;
}

/** Languages in files of their own, each loaded once. */
export function createLanguages(tags: readonly string[], files: LanguageFiles): Languages {
  const packs = new Map<string, LanguagePack>();
  return {
    load: async (wanted) => {
      const tag = fittingTag(wanted, tags);
      if (tag === undefined) return undefined;
      try {
        const pack = packs.get(tag) ?? (await files.pack(tag));
        packs.set(tag, pack);
        return pack;
      } catch {
        return undefined;
      }
    },
    loadUnderstanding: async ({ tag, flows }, { flow, teller }) => {
      const [part, { words, flows: said }] = await Promise.all([
        files.understanding(),
        files.said(tag),
      ]);
      const told = flows[flow];
      if (told === undefined) throw new Error(`“${flow}” has no texts in ${tag}`);
      return part.understandingOf(words, { teller, flowTexts: joinTexts(told, said[flow] ?? {}) });
    },
  };
}
