import type { FlowTexts } from '../flow-texts.ts';
import { localeNames } from '../locale-names.ts';
import type { Teller } from '../teller.ts';
import type { Words } from '../words/words.ts';
import { keptLexicon } from './kept-lexicon.ts';
import { createLanguageNames } from './language-names.ts';
import type { AsHeard, Listener } from './turn.ts';
import { understandText } from './understand.ts';
import type { Hearing, Understood } from './understood.ts';

/** What a typed text means. Pure; never throws. */
export type Understanding = (text: string, hearing: Hearing) => Understood;

const languageNamed = createLanguageNames(Object.keys(localeNames));

/** What a language and a flow understand with. */
interface UnderstandingOptions {
  readonly teller: Teller;
  readonly flowTexts: FlowTexts;
  readonly asHeard?: AsHeard;
}

/** Who hears one language for one flow, whatever is waited for. */
export function listenersOf(
  words: Words,
  { teller, flowTexts, asHeard }: UnderstandingOptions,
): (hearing: Hearing) => Listener {
  const { locale, figures } = teller;
  return ({ checks }) => ({
    locale,
    lexicon: keptLexicon({ words, texts: flowTexts, checks }),
    asHeard,
    formatQuantity: figures.formatQuantity,
    formatDay: figures.formatDay,
    unitHere: figures.unitHere,
    figureIn: figures.figureIn,
    languages: Object.values(localeNames),
    locales: Object.keys(localeNames),
    languageNamed,
  });
}

/** What a text means to these listeners. */
export function understandingBy(listenerFor: (hearing: Hearing) => Listener): Understanding {
  return (text, hearing) => understandText(text, hearing, listenerFor(hearing));
}

/**
 * Understands one language for one flow, apart from the teller: a page may load it, and all that
 * people say, after what is said to them.
 */
export function understandingOf(words: Words, options: UnderstandingOptions): Understanding {
  return understandingBy(listenersOf(words, options));
}
