import type { Check } from '@keyturn/core';
import type { FlowTexts } from '../flow-texts.ts';
import type { Words } from '../words/words.ts';
import { createLexicon, type Lexicon, type LexiconSources } from './lexicon.ts';

type Checks = Readonly<Record<string, Check>>;

const kept = new WeakMap<Words, WeakMap<FlowTexts, WeakMap<Checks, Lexicon>>>();

/**
 * The lexicon of these words, texts and checks, made once for as long as all of them are in use: a
 * flow's are the same objects in every conversation.
 */
export function keptLexicon({ words, texts, checks }: LexiconSources): Lexicon {
  const ofWords = kept.get(words) ?? new WeakMap<FlowTexts, WeakMap<Checks, Lexicon>>();
  kept.set(words, ofWords);
  const ofTexts = ofWords.get(texts) ?? new WeakMap<Checks, Lexicon>();
  ofWords.set(texts, ofTexts);
  const known = ofTexts.get(checks);
  if (known !== undefined) return known;
  const made = createLexicon({ words, texts, checks });
  ofTexts.set(checks, made);
  return made;
}
