import type { FlowTexts } from '../flow-texts.ts';
import { localeNames } from '../locale-names.ts';
import type { Teller } from '../teller.ts';
import type { Words } from '../words/words.ts';
import { keptLexicon } from './kept-lexicon.ts';
import { createLanguageNames } from './language-names.ts';
import { understandText } from './understand.ts';
import type { Hearing, Understood } from './understood.ts';

/** What a typed text means. Pure; never throws. */
export type Understanding = (text: string, hearing: Hearing) => Understood;

const languageNamed = createLanguageNames(Object.keys(localeNames));

/**
 * Understands one language for one flow, apart from the teller: a page may load it, and all that
 * people say, after what is said to them.
 */
export function understandingOf(
  words: Words,
  { teller, flowTexts }: { readonly teller: Teller; readonly flowTexts: FlowTexts },
): Understanding {
  const { locale, figures } = teller;
  return (text, hearing) =>
    understandText(text, hearing, {
      locale,
      lexicon: keptLexicon({ words, texts: flowTexts, checks: hearing.checks }),
      formatQuantity: figures.formatQuantity,
      unitHere: figures.unitHere,
      unitSign: figures.unitSign,
      languages: Object.values(localeNames),
      locales: Object.keys(localeNames),
      languageNamed,
    });
}
