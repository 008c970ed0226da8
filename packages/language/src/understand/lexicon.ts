import type { Check } from '@keyturn/core';
import type { CheckTexts, FlowTexts } from '../flow-texts.ts';
import { type Heard, wordsOf } from '../typed/heard.ts';
import { createTermReader, type TermReader, type Terms } from '../typed/terms.ts';
import { collapseRepeats } from '../typed/normalise.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { spellWords } from '../typed/spell-words.ts';
import type { Token } from '../typed/token.ts';
import { createVocabulary, type Vocabulary } from '../typed/vocabulary.ts';
import { createNumberWords, type NumberWords } from '../numbers/number-words.ts';
import { createWordMender, type WordMender } from '../numbers/mend-words.ts';
import { durations } from '../numbers/unit.ts';
import { createUnitReader, type UnitReader } from '../numbers/units-said.ts';
import type { TalkWord, Words } from '../words/words.ts';
import { isTalk, readTalkPhrases, type TalkPhrases } from './talk-phrases.ts';
import { type Alarm, type Alarmed, alarmsOf, type InterruptPhrase, learnAlarms } from './alarms.ts';
import { criesOf } from './cries.ts';
import { indexByOwner, indexByTerm, type TermIndex } from './term-index.ts';
import { someOf, type Spoken } from './learned.ts';
import { type Lesson, lessonOf } from './lesson.ts';
import { once } from '../once.ts';
import {
  type SubjectHeard,
  type TalkHeard,
  type TalkLessons,
  type Taught,
  taughtTalk,
  teach,
  teachSubjects,
  teachTalk,
} from './taught.ts';
import { isToldUnasked } from './unasked.ts';
import { type Weights, weightsOf } from './weights.ts';

/** One answer and every phrase that says it: its id, its label, what people say. */
export interface OptionPhrases {
  readonly id: string;
  readonly label: string;
  readonly phrases: readonly Terms[];
  /** Those of them that a text could say or deny. */
  readonly phrasesIn: (heard: Pick<Heard, 'all'>) => readonly Terms[];
  /** True where it is itself said by denying something, and so not ruled out by a denial. */
  readonly isNegative: boolean;
  /** The same with every word as it is written, and what else is heard to say it. */
  readonly spoken: readonly Spoken[];
  readonly heard: () => readonly Spoken[];
  /** All of them by the terms of every word, fillers kept. */
  readonly literal: () => readonly Terms[];
  /** Every term of its phrases. */
  readonly terms: ReadonlySet<string>;
  /** Those of all that is heard that are said now and then of it. */
  readonly usual: () => ReadonlySet<string>;
}

/** What can be said to one check. */
export interface CheckPhrases {
  readonly id: string;
  readonly name: string;
  readonly check: Check;
  /** Choices, or what a test lamp shows. */
  readonly options: readonly OptionPhrases[];
  /** Of work: what says, alone, that it is done. */
  readonly done: readonly Spoken[];
  /** What each term tells of the answers. */
  readonly weights: Weights;
  /** What a text is to it, by all that people are heard to say; work has one answer, that it is done. */
  readonly taught: Lesson<Taught>;
  /** True where so much is heard said to it that what is learned from that may decide. */
  readonly isWellHeard: boolean;
  /** True for what is known to be said to it and to answer nothing, however it sounds. */
  readonly isNoAnswer: (text: Spoken) => boolean;
  /** True for a fact that people tell without being asked. */
  readonly isToldUnasked: boolean;
  /** Words that are, alone, what the vehicle is, and no answer here: "petrol" to where it stands. */
  readonly factsElsewhere: () => ReadonlySet<string>;
  /** Terms of the check's name, which say what is spoken of. */
  readonly topic: ReadonlySet<string>;
  /** Those of them that name no other check, and are no answer told from memory. */
  readonly named: ReadonlySet<string>;
  /** What names the check itself, word for word. */
  readonly names: readonly Terms[];
  /** When it is read, which names it only where no other reading is in hand: "at 15 seconds". */
  readonly moments: readonly Terms[];
  /** The words by which people name it; a reading, on a line of several. */
  readonly said: readonly (readonly Token[])[];
}

/** Everything that can be said in one flow and one language, as terms. */
export interface Lexicon {
  /** What each term tells of all the answers of the flow. */
  readonly weights: Weights;
  /** Spelled as what is typed is spelled. */
  readonly words: Words;
  readonly numbers: NumberWords;
  readonly readUnit: UnitReader;
  /** Puts right what was typed in Latin letters, and what was mistyped beside figures. */
  readonly mend: WordMender;
  readonly reader: TermReader;
  /** Every word of the phrases and names as it is written, whole. */
  readonly typedWords: ReadonlySet<string>;
  readonly vocabulary: Vocabulary;
  readonly checks: ReadonlyMap<string, CheckPhrases>;
  /** Those with a word of a text in what answers them. */
  readonly checksIn: TermIndex<CheckPhrases>;
  readonly interrupts: readonly InterruptPhrase[];
  /** Those of their phrases that a text could say. */
  readonly interruptsIn: TermIndex<InterruptPhrase>;
  readonly alarms: readonly Alarm[];
  /** The name of what an interrupt is about. */
  readonly dangerName: (interrupt: string) => string;
  /** What makes an ordinary matter of each interrupt. */
  readonly ordinary: ReadonlyMap<string, readonly Terms[]>;
  /** The danger that is raised by each text that people are heard to raise one with, word for word. */
  readonly cries: () => ReadonlyMap<string, string>;
  /** The texts that it was made of. */
  readonly texts: FlowTexts;
  /** How an interrupt sounds, once it is first asked for. */
  readonly alarmed: Lesson<Alarmed>;
  readonly talk: Readonly<Record<TalkWord, TalkPhrases>>;
  /** What stands beside a yes or no, word for word. */
  readonly courtesies: readonly Terms[];
  /** True where the flow has what people are heard to say. */
  readonly isHeard: boolean;
  /** The check that a text speaks of, of those that are answered from memory or from the seat. */
  readonly subject: Lesson<SubjectHeard>;
  /** The talk that a text sounds like. */
  readonly talkHeard: Lesson<TalkHeard>;
  readonly statements: readonly {
    readonly set: Words['statements'][number]['set'];
    readonly said: readonly Terms[];
  }[];
  readonly kit: readonly { readonly id: string; readonly said: readonly Terms[] }[];
  readonly having: readonly Terms[];
  readonly corrections: readonly Terms[];
  /** What says, word for word, that a danger was not meant. */
  readonly retractions: readonly Terms[];
  /** Learns all that is to be learned, in steps of some milliseconds, what every text asks first. */
  readonly learnAhead: () => Iterable<undefined>;
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
export function createLexicon({ words: given, texts, checks }: LexiconSources): Lexicon {
  const words = spellWords(given);
  const reader = createTermReader(words);
  const typedWords = new Set<string>();
  const inLetters = words.readLatin?.(texts, words) ?? ((tokens: readonly Token[]) => tokens);
  const spokenBy = (tokens: readonly Token[]): Spoken => ({
    terms: reader.fromTokens(tokens),
    words: wordsOf(tokens).map(reader.unjoined),
  });
  const literally = ({ words: said }: Spoken): Terms =>
    reader.literally(said.map((text): Token => ({ kind: 'word', text })));
  const readHeard = (phrases: readonly string[]): Spoken[] =>
    phrases
      .map((phrase) => spokenBy(inLetters(readTokens(phrase, words))))
      .filter(({ terms }) => terms.length > 0);
  const typedTokens = (phrase: string): readonly Token[] => {
    const tokens = inLetters(readTokens(phrase, words));
    for (const token of tokens) if (token.kind === 'word') typedWords.add(token.text);
    return tokens;
  };
  const readSpoken = (phrases: readonly string[]): Spoken[] =>
    phrases.map((phrase) => spokenBy(typedTokens(phrase))).filter(({ terms }) => terms.length > 0);
  const read = (phrases: readonly string[]): Terms[] =>
    readSpoken(phrases).map(({ terms }) => terms);

  const readUnit = createUnitReader(words);
  const numbers = createNumberWords(words, (word) => typedWords.has(word));
  const small = new Set(words.fillers.map(collapseRepeats));
  const isSmall = (name: string): boolean => {
    const [token, more] = readTokens(name, words);
    return token?.kind === 'word' && more === undefined && small.has(collapseRepeats(token.text));
  };
  const isMoment = (name: string): boolean => {
    const tokens = readTokens(name, words);
    return tokens.some((token, at) => {
      const unit = token.kind === 'number' ? readUnit(tokens, at + 1) : undefined;
      return unit !== undefined && durations.includes(unit.code);
    });
  };
  const talk = readTalkPhrases(words, reader);
  const checkTerms = Object.values(checks).map(
    (
      check,
    ): Omit<
      CheckPhrases,
      'named' | 'taught' | 'isNoAnswer' | 'isWellHeard' | 'isToldUnasked' | 'factsElsewhere'
    > => {
      const own = textsOf(check, texts);
      const options = optionIds(check, own, heardOf(texts, check)).map((id): OptionPhrases => {
        const answer = own.answers?.[id] ?? texts.lamp?.[id];
        const label = answer?.label ?? id;
        // An id that is a word of talk in this language ("no" is yes in Polish) is no way to say it.
        const ids = isTalk(id, talk, reader) ? [] : [id];
        const spoken = readSpoken([...ids, label, ...(answer?.said ?? [])]);
        const phrases = spoken.map(({ terms }) => terms);
        const terms = new Set(phrases.flat());
        const heard = once(() => readHeard(heardOf(texts, check)[id] ?? []));
        return {
          id,
          label,
          phrases,
          phrasesIn: (heard) => phrasesOf(heard, id),
          isNegative: [...terms].some((term) => term.startsWith('!')),
          spoken,
          heard,
          literal: once(() => [...spoken, ...heard()].map(literally)),
          terms,
          usual: once(() => usualTerms([...spoken, ...heard()])),
        };
      });
      const phrasesOf = indexByOwner(
        options.flatMap(({ id, phrases }) => phrases.map((entry) => ({ owner: id, entry }))),
        (phrase: Terms) => phrase,
      );
      const topic = new Set(reader.fromText(own.name));
      return {
        id: check.id,
        name: own.name,
        check,
        options,
        done: check.form.kind === 'work' ? readSpoken(doneWords(own)) : [],
        weights: weightsOf(
          options.map(({ phrases }) => phrases),
          topic,
        ),
        topic,
        // A name that is no more than a small word ("ça" for CCA) names nothing.
        names: [check.id, own.name, ...(own.said ?? [])]
          .filter((name) => !isSmall(name) && !isMoment(name))
          .map(reader.literally),
        moments: (own.said ?? []).filter(isMoment).map(reader.literally),
        said: (own.said ?? []).map(typedTokens),
      };
    },
  );

  const told = new Set(
    checkTerms
      .filter(({ check }) => check.at === 'memory')
      .flatMap(({ options }) => options.flatMap(({ terms }) => [...terms])),
  );
  const holdersOf = (term: string): number =>
    checkTerms.filter(({ topic }) => topic.has(term)).length;
  const talkLessons = once(
    (): TalkLessons =>
      new Map(
        taughtTalk.map((word) => {
          const listed = word === 'correction' ? words.corrections : words.talk[word];
          return [word, readHeard([...listed, ...(texts.heard?.talk[word] ?? [])])];
        }),
      ),
  );
  const namesSaid = ({ said, check }: Pick<CheckPhrases, 'said' | 'check'>): Spoken[] =>
    check.form.kind === 'choice' ? said.map(spokenBy).filter(({ terms }) => terms.length > 0) : [];
  const allTalk = once(() => [...talkLessons().values()].flat());
  const unclear = once(() => readHeard(Object.values(texts.heard?.unclear ?? {}).flat()));
  const unclearTo = (check: string): Spoken[] => readHeard(texts.heard?.unclear[check] ?? []);
  const entries = checkTerms.map((entry): CheckPhrases => {
    const isOwn = (term: string): boolean =>
      holdersOf(term) <= mostHolders && (entry.check.at === 'memory' || !told.has(term));
    const isWellHeard = Object.keys(heardOf(texts, entry.check)).length > 0;
    const answers = (): (readonly Spoken[])[] =>
      entry.check.form.kind === 'work'
        ? [[...entry.done, ...readHeard(heardOf(texts, entry.check)['done'] ?? [])]]
        : entry.options.map((option) => [
            ...spokenOf(option),
            ...saidWithNames(option, namesSaid(entry)),
          ]);
    const unclearWords = once(() => new Set(unclearTo(entry.id).map((one) => one.words.join(' '))));
    const noAnswers = once(() => {
      const keyOf = ({ terms }: Spoken): string => terms.join(' ');
      const answered = new Set(entry.options.flatMap(spokenOf).map(keyOf));
      return new Set(
        unclearTo(entry.id)
          .map(keyOf)
          .filter((key) => key !== '' && !answered.has(key)),
      );
    });
    return {
      ...entry,
      isWellHeard,
      isNoAnswer: ({ terms, words }) =>
        noAnswers().has(terms.join(' ')) || unclearWords().has(words.join(' ')),
      isToldUnasked: isToldUnasked(entry.check),
      factsElsewhere: once(() => factsElsewhere(entry, checkTerms)),
      named: new Set([...entry.topic].filter(isOwn)),
      taught: lessonOf(() =>
        teach({
          answers: answers(),
          talk: isWellHeard ? someOf(allTalk(), mostTalk) : [],
          other: [
            ...(isWellHeard ? [...unclearTo(entry.id), ...someOf(unclear(), mostUnclear)] : []),
            ...elsewhere(entry, checkTerms),
          ],
        }),
      ),
    };
  });

  const interrupts = Object.entries(texts.interrupts).flatMap(([interrupt, { name, said }]) =>
    readSpoken([name, ...said]).map((spoken): InterruptPhrase => {
      const { terms } = spoken;
      const literal = reader.literally(spoken.words.join(' '));
      return terms.length === 1 && literal.length > 1
        ? { interrupt, terms, spoken, literal }
        : { interrupt, terms, spoken };
    }),
  );

  const ordinary = new Map(
    Object.entries(texts.interrupts).map(([id, { unless = [] }]) => [id, read(unless)]),
  );

  const statements = words.statements.map(({ set, said }) => ({ set, said: read(said) }));
  const kit = Object.entries(words.kit).map(([id, said]) => ({
    id,
    said: read([id, ...said, ...(texts.kit[id] === undefined ? [] : [texts.kit[id]])]),
  }));
  const having = read(words.having);
  const corrections = read(words.corrections);
  const retractions = (words.retractions ?? []).map(reader.literally);
  const courtesies = [...(words.courtesies ?? []), ...words.fillers, ...words.joins].map(
    reader.literally,
  );

  const everything = [
    ...entries.flatMap(({ options, names, done, moments }) => [
      ...names,
      ...done.map(({ terms }) => terms),
      ...moments,
      ...options.flatMap(({ phrases }) => phrases),
    ]),
    ...interrupts.map(({ terms }) => terms),
    ...[...ordinary.values()].flat(),
    ...Object.values(talk).flatMap(({ said, literal }) => [...said, ...literal]),
    ...statements.flatMap(({ said }) => said),
    ...kit.flatMap(({ said }) => said),
    ...having,
    ...interrupts.flatMap(({ literal }) => (literal === undefined ? [] : [literal])),
    ...corrections,
    ...retractions,
  ];
  const alarmed = lessonOf(() =>
    learnAlarms({
      raising: new Map(
        Object.keys(texts.interrupts).map((id) => [
          id,
          [
            ...interrupts.flatMap((one) => (one.interrupt === id ? [one.spoken] : [])),
            ...readHeard(texts.heard?.interrupts[id] ?? []),
          ],
        ]),
      ),
      harmless: [...readHeard(Object.values(texts.heard?.harmless ?? {}).flat()), ...unclear()],
      talk: allTalk(),
      checks: entries,
    }),
  );
  const subject = lessonOf(() =>
    teachSubjects(
      new Map(
        checkTerms.flatMap(({ id, check, options }) =>
          isToldUnasked(check) && options.length > 0
            ? [
                [
                  id,
                  options.flatMap((option) =>
                    someOf(spokenOf(option), mostOfSubject / options.length),
                  ),
                ],
              ]
            : [],
        ),
      ),
      [...someOf(unclear(), mostOfNothing), ...someOf(allTalk(), mostTalk)],
    ),
  );
  const talkHeard = lessonOf(() =>
    teachTalk(talkLessons(), [
      ...unclear(),
      ...someOf(
        checkTerms.flatMap(({ options }) => options.flatMap(spokenOf)),
        mostAnswers,
      ),
    ]),
  );
  const mend = createWordMender(numbers, (word) => typedWords.has(word));
  return {
    weights: weightsOf(entries.flatMap(({ options }) => options.map(({ phrases }) => phrases))),
    words,
    numbers,
    readUnit,
    mend: (tokens) => mend(inLetters(tokens)),
    reader,
    typedWords,
    vocabulary: createVocabulary(everything.flat(), words.spelling),
    checksIn: indexByTerm(entries, ({ options }) => options.flatMap(({ terms }) => [...terms])),
    checks: new Map(entries.map((entry) => [entry.id, entry])),
    interrupts,
    interruptsIn: indexByTerm(interrupts, ({ terms }) => terms),
    alarms: alarmsOf(interrupts, entries),
    dangerName: (interrupt) => texts.interrupts[interrupt]?.name ?? interrupt,
    ordinary,
    alarmed,
    texts,
    cries: once(() => criesOf(texts.heard?.interrupts ?? {}, readHeard)),
    talk,
    courtesies,
    isHeard: texts.heard !== undefined,
    subject,
    talkHeard,
    statements,
    kit,
    having,
    corrections,
    retractions,
    learnAhead: function* () {
      for (const { literal, usual } of entries.flatMap(({ options }) => options)) {
        literal();
        usual();
        yield;
      }
      for (const { isNoAnswer, factsElsewhere } of entries) {
        isNoAnswer({ terms: [], words: [] });
        factsElsewhere();
        yield;
      }
      const lessons = [subject, talkHeard, alarmed, ...entries.map(({ taught }) => taught)];
      for (const lesson of lessons) yield* lesson.ahead();
    },
  };
}

/** So much of what answers nothing anywhere is learned from for a check, beside what does not answer it. */
const mostUnclear = 120;

/** So much is learned from of what answers nothing, where it is told which check is spoken of. */
const mostOfNothing = 400;

/** So much is learned from of what is said to each check, where it is told which one is spoken of. */
const mostOfSubject = 2000;

/** So many answers are learned from where talk is told from all of them, and so much talk for a check. */
const mostAnswers = 2000;
const mostTalk = 300;

type Answered = Pick<CheckPhrases, 'id' | 'options'>;

/** Checks of which more of the words are the same say the same things in other places. */
const mostShared = 0.35;

/** Answers in one word to checks that say what the vehicle is, which are none to this one. */
function factsElsewhere(
  own: Answered,
  all: readonly (Answered & Pick<CheckPhrases, 'check'>)[],
): ReadonlySet<string> {
  const wordsOf = ({ options }: Answered): string[] =>
    options.flatMap(spokenOf).flatMap(({ terms, words }) => (words.length === 1 ? terms : []));
  const saysWhat = ({ sets }: Check): boolean =>
    Object.values(sets).some((set) => Object.keys(set).some((key) => key.startsWith('vehicle.')));
  const facts = all.filter(({ id, check }) => id !== own.id && saysWhat(check));
  const words = new Set(wordsOf(own));
  return new Set(facts.flatMap(wordsOf).filter((word) => !words.has(word)));
}

/** So much of what says an answer is learned with the thing's name as well. */
const mostWithName = 60;

/**
 * What says an answer, said with the name of the thing: alike for each answer, so that a name speaks
 * for none of them.
 */
function saidWithNames(option: OptionPhrases, names: readonly Spoken[]): readonly Spoken[] {
  if (names.length === 0) return [];
  return someOf(spokenOf(option), mostWithName).map(({ terms, words }, at) => {
    const name = names[at % names.length] ?? { terms: [], words: [] };
    return { terms: [...name.terms, ...terms], words: [...name.words, ...words] };
  });
}

/** What is said to other checks and is no answer to this one. */
function elsewhere(own: Answered & Pick<CheckPhrases, 'done'>, all: readonly Answered[]): Spoken[] {
  const termsOf = ({ options }: Answered): Set<string> =>
    new Set(options.flatMap(({ terms }) => [...terms]));
  const terms = termsOf(own);
  const others = all.filter((other) => {
    const theirs = termsOf(other);
    const shared = [...theirs].filter((term) => terms.has(term)).length;
    return other !== own && shared <= mostShared * Math.min(theirs.size, terms.size);
  });
  const count = own.done.length + own.options.flatMap(spokenOf).length;
  const theirs = others.flatMap(({ options }) => options.flatMap(spokenOf));
  return someOf(theirs, Math.floor(count * elsewhereShare));
}

/** So much of what is said elsewhere for what is learned of a check. */
const elsewhereShare = 0.5;

/** A term is usual from this share of the phrases on. */
const usualShare = 0.03;

function usualTerms(spoken: readonly Spoken[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const term of spoken.flatMap(({ terms }) => [...new Set(terms)]))
    counts.set(term, (counts.get(term) ?? 0) + 1);
  const least = usualShare * spoken.length;
  return new Set([...counts].flatMap(([term, count]) => (count >= least ? [term] : [])));
}

/** Everything that says an answer. */
function spokenOf({ spoken, heard }: OptionPhrases): readonly Spoken[] {
  return [...spoken, ...heard()];
}

function heardOf(
  { heard }: FlowTexts,
  { id, like }: Check,
): Readonly<Record<string, readonly string[]>> {
  return heard?.answers[id] ?? (like === undefined ? undefined : heard?.answers[like]) ?? {};
}

/** A word in the names of more checks than this names none of them. */
const mostHolders = 2;

function textsOf(check: Check, { checks }: FlowTexts): CheckTexts {
  const like = check.like === undefined ? undefined : checks[check.like];
  return { name: check.id, ...like, ...checks[check.id] };
}

function doneWords({ answers = {} }: CheckTexts): readonly string[] {
  const { label, said = [] } = answers['done'] ?? {};
  return [...(label === undefined ? [] : [label]), ...said];
}

/** Choices, what a test lamp shows, and bands that people name in place of a figure. */
function optionIds(
  { form, at }: Check,
  { answers = {} }: CheckTexts,
  heard: Readonly<Record<string, unknown>>,
): readonly string[] {
  if (form.kind === 'choice') return form.choices;
  if (form.kind === 'work') return [];
  if (form.kind === 'date') return form.bands.map(({ id }) => id);
  const named = form.bands
    .map(({ id }) => id)
    .filter(
      (id) => answers[id]?.said !== undefined || (at === 'memory' && heard[id] !== undefined),
    );
  return [...Object.keys(form.lamp), ...named];
}
