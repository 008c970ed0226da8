import { gather } from '../gather.ts';
import { onceFor } from '../once.ts';
import { leavingOut, textOf } from '../readings/word-run.ts';
import { createSpellingMender, type SpellingMender } from '../typed/mend-spelling.ts';
import { readTokens } from '../typed/read-tokens.ts';
import type { Token } from '../typed/token.ts';
import { type Learning, type Lesson, lessonOf } from './lesson.ts';
import type { Lexicon } from './lexicon.ts';
import type { Hearing } from './understood.ts';

/**
 * What was typed, spelled as people spell it, without what stands around an answer and tells nothing.
 * That somebody has read a caution is taken as it was typed.
 */
export function asMeant(
  tokens: readonly Token[],
  lexicon: Lexicon,
  { awaiting }: Hearing,
): readonly Token[] {
  if (!lexicon.isHeard) return tokens;
  const spelled = awaiting === 'confirm' ? tokens : spelling(lexicon)()(tokens);
  const begun = spelled.flatMap((token) => asides(lexicon).get(textOf([token])) ?? []);
  return begun.length === 0 ? spelled : leavingOut(spelled, begun);
}

/** What is said and tells nothing, by its first word. */
const asides = onceFor(({ texts, words }: Lexicon) =>
  gather(
    (texts.heard?.asides ?? []).map((said) => textOf(readTokens(said, words))),
    (said) => said.split(' ', 1),
  ),
);

/** How words are spelled, by all that people are heard to say. */
export const spelling: (lexicon: Lexicon) => Lesson<SpellingMender> = onceFor((lexicon: Lexicon) =>
  lessonOf(() => learnSpelling(lexicon)),
);

function* learnSpelling(lexicon: Lexicon): Learning<SpellingMender> {
  const { words, numbers } = lexicon;
  return createSpellingMender({
    counts: yield* countWords(lexicon),
    spelling: words.spelling,
    ofFigures: new Set([
      ...[words.cardinals, words.scales, words.fractions, words.ordinals].flatMap(Object.keys),
      ...Object.values(words.units).flat(),
      ...words.point,
    ]),
    isNumber: (text) => {
      const word = [{ kind: 'word', text }] as const;
      return numbers.cardinalAt(word, 0) !== undefined || numbers.takeApart(word).length > 1;
    },
  });
}

/** So many texts are read in one step. */
const textsInStep = 100;

/** How often each word is heard; signs of danger are no texts, but parts of words. */
function* countWords({
  texts: { heard },
  words,
  typedWords,
}: Lexicon): Learning<ReadonlyMap<string, number>> {
  const counts = new Map<string, number>();
  const texts = [...textsIn({ ...heard, signs: [] }), ...textsIn(words), ...typedWords];
  for (const [at, text] of texts.entries()) {
    for (const token of readTokens(text, words))
      if (token.kind === 'word') counts.set(token.text, (counts.get(token.text) ?? 0) + 1);
    if (at % textsInStep === 0) yield;
  }
  return counts;
}

/** All texts of something. */
function textsIn(thing: unknown): readonly string[] {
  if (typeof thing === 'string') return [thing];
  return typeof thing === 'object' && thing !== null ? Object.values(thing).flatMap(textsIn) : [];
}
