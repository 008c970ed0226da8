import type { Check } from '@keyturn/core';
import type { CheckTexts, FlowTexts } from '../flow-texts.ts';
import { createTermReader, type TermReader, type Terms } from '../typed/terms.ts';
import { normalise } from '../typed/normalise.ts';
import { tokenise, type Token } from '../typed/token.ts';
import { createVocabulary, type Vocabulary } from '../typed/vocabulary.ts';
import type { TalkWord, Words } from '../words/words.ts';

/** One answer and every phrase that says it: its id, its label, what people say. */
export interface OptionPhrases {
  readonly id: string;
  readonly label: string;
  readonly phrases: readonly Terms[];
}

/** What can be said to one check. */
export interface CheckPhrases {
  readonly id: string;
  readonly name: string;
  readonly check: Check;
  /** Choices, or what a test lamp shows. */
  readonly options: readonly OptionPhrases[];
  /** What names the check itself, word for word. */
  readonly names: readonly Terms[];
  /** The words by which its reading goes on a line of several. */
  readonly said: readonly (readonly Token[])[];
}

/** A phrase of an interrupt. */
interface InterruptPhrase {
  readonly interrupt: string;
  readonly terms: Terms;
  /** Every word of it, where small words hold it together: "it started", "we are in the road". */
  readonly literal?: Terms;
}

/** Everything that can be said in one flow and one language, as terms. */
export interface Lexicon {
  readonly words: Words;
  readonly reader: TermReader;
  readonly vocabulary: Vocabulary;
  readonly checks: ReadonlyMap<string, CheckPhrases>;
  readonly interrupts: readonly InterruptPhrase[];
  readonly talk: Readonly<Record<TalkWord, readonly Terms[]>>;
  readonly statements: readonly {
    readonly set: Words['statements'][number]['set'];
    readonly said: readonly Terms[];
  }[];
  readonly kit: readonly { readonly id: string; readonly said: readonly Terms[] }[];
  readonly having: readonly Terms[];
  readonly corrections: readonly Terms[];
}

/** What a lexicon is made of. */
export interface LexiconSources {
  readonly words: Words;
  readonly texts: FlowTexts;
  readonly checks: Readonly<Record<string, Check>>;
}

/**
 * The lexicon of a flow. A check without words is left without phrases: what is missing is thrown
 * when it is to be said, not while somebody is being understood.
 */
export function createLexicon({ words, texts, checks }: LexiconSources): Lexicon {
  const reader = createTermReader(words);
  const read = (phrases: readonly string[]): Terms[] =>
    phrases.map(reader.fromText).filter((terms) => terms.length > 0);

  const entries = Object.values(checks).map((check): CheckPhrases => {
    const own = textsOf(check, texts);
    return {
      id: check.id,
      name: own.name,
      check,
      options: optionIds(check).map((id) => {
        const answer = own.answers?.[id] ?? texts.lamp?.[id];
        const label = answer?.label ?? id;
        return { id, label, phrases: read([id, label, ...(answer?.said ?? [])]) };
      }),
      names: [check.id, own.name, ...(own.said ?? [])].map(reader.literally),
      said: (own.said ?? []).map((said) => tokenise(normalise(said), words.grouping)),
    };
  });

  const interrupts = Object.entries(texts.interrupts).flatMap(([interrupt, { name, said }]) =>
    [name, ...said].map((phrase): InterruptPhrase => {
      const terms = reader.fromText(phrase);
      const literal = reader.literally(phrase);
      return terms.length === 1 && literal.length > 1
        ? { interrupt, terms, literal }
        : { interrupt, terms };
    }),
  );

  const talk = Object.fromEntries(
    Object.entries(words.talk).map(([word, said]) => [word, read(said)]),
  ) as Record<TalkWord, Terms[]>;
  const statements = words.statements.map(({ set, said }) => ({ set, said: read(said) }));
  const kit = Object.entries(words.kit).map(([id, said]) => ({
    id,
    said: read([id, ...said, ...(texts.kit[id] === undefined ? [] : [texts.kit[id]])]),
  }));
  const having = read(words.having);
  const corrections = read(words.corrections);

  const everything = [
    ...entries.flatMap(({ options, names }) => [
      ...names,
      ...options.flatMap(({ phrases }) => phrases),
    ]),
    ...interrupts.map(({ terms }) => terms),
    ...Object.values(talk).flat(),
    ...statements.flatMap(({ said }) => said),
    ...kit.flatMap(({ said }) => said),
    ...having,
    ...interrupts.flatMap(({ literal }) => (literal === undefined ? [] : [literal])),
    ...corrections,
  ];
  return {
    words,
    reader,
    vocabulary: createVocabulary(everything.flat()),
    checks: new Map(entries.map((entry) => [entry.id, entry])),
    interrupts,
    talk,
    statements,
    kit,
    having,
    corrections,
  };
}

function textsOf(check: Check, { checks }: FlowTexts): CheckTexts {
  const like = check.like === undefined ? undefined : checks[check.like];
  return { name: check.id, ...like, ...checks[check.id] };
}

function optionIds({ form }: Check): readonly string[] {
  if (form.kind === 'choice') return form.choices;
  return form.kind === 'reading' ? Object.keys(form.lamp) : [];
}
