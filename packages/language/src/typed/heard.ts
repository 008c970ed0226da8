import { once, onceFor, onceWith } from '../once.ts';
import { flip, type TermReader, type Terms } from './terms.ts';
import type { Token } from './token.ts';
import type { Meanings, Vocabulary } from './vocabulary.ts';

/** The terms of a typed text, each with the known terms that it may stand for. */
export interface Heard {
  readonly terms: Terms;
  readonly at: readonly Meanings[];
  /** Every known term that may stand in the text, as alike as it comes. */
  readonly all: Meanings;
  /** Every word and figure as it was typed, fillers and all. */
  readonly words: readonly string[];
}

/** From here on a typed term is the known one, typing mistakes and all. */
const sure = 0.9;

/** What typed texts are heard with. */
interface Ear {
  readonly reader: TermReader;
  readonly vocabulary: Vocabulary;
}

/** Reads tokens and looks every term up. */
export const hearTokens: (tokens: readonly Token[], ear: Ear) => Heard = onceWith(hearRun);

/** The same of tokens that are taken out of a text for this alone. */
export function hearRun(tokens: readonly Token[], ear: Ear): Heard {
  return heardBy(ear)(tokens);
}

/** So many runs of words are remembered: those of the last few texts. */
const mostRuns = 200;

/** What is heard in a run of words, and in those that begin with it. */
interface Run {
  heard?: Heard;
  longer?: Map<string, Run>;
}

/** A text comes apart into the same words in many ways; what was found out about them stands on what is heard. */
const heardBy = onceFor((ear: Ear) => {
  let all: Run = {};
  let count = 0;
  return (tokens: readonly Token[]): Heard => {
    if (count >= mostRuns) {
      all = {};
      count = 0;
    }
    let run = all;
    for (const token of tokens) run = longerBy(token, run);
    if (run.heard === undefined) count += 1;
    return (run.heard ??= hearMost(tokens, ear, tokens.length));
  };
});

/** A run and a token behind it; a word is written like no figure and no mark. */
function longerBy(token: Token, run: Run): Run {
  const written =
    token.kind === 'word'
      ? token.text
      : `${token.kind} ${token.kind === 'number' ? token.digits : token.text}`;
  run.longer ??= new Map();
  const known = run.longer.get(written);
  if (known !== undefined) return known;
  const longer: Run = {};
  run.longer.set(written, longer);
  return longer;
}

/** The same of a text that may be long, so many terms at most. */
export function hearMost(
  tokens: readonly Token[],
  { reader, vocabulary }: Ear,
  most: number,
): Heard {
  return hear(
    reader.fromTokens(tokens).slice(0, most),
    vocabulary,
    wordsOf(tokens).slice(0, most).map(reader.unjoined),
  );
}

/** The words and figures of some tokens as they were typed. */
export function wordsOf(tokens: readonly Token[]): string[] {
  const words: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'number') words.push(token.digits);
    else if (token.kind === 'word') words.push(token.text);
  }
  return words;
}

/** Looks every term up. */
export function hear(
  terms: Terms,
  vocabulary: Vocabulary,
  words: readonly string[] = terms,
): Heard {
  return heardAt(terms, terms.map(vocabulary), words);
}

function heardAt(terms: Terms, at: readonly Meanings[], words: readonly string[] = terms): Heard {
  const all = once(() => allOf(at));
  return {
    terms,
    at,
    get all() {
      return all();
    },
    words,
  };
}

function allOf(at: readonly Meanings[]): Meanings {
  const all = new Map<string, number>();
  for (const meanings of at) {
    for (const [term, likeness] of meanings) {
      if ((all.get(term) ?? 0) < likeness) all.set(term, likeness);
    }
  }
  return all;
}

/** The terms of a text that are kept, as if nothing else had been said. */
export function partOf(heard: Heard, isKept: (term: string, at: number) => boolean): Heard {
  const kept = heard.terms.flatMap((term, at) => (isKept(term, at) ? [at] : []));
  return heardAt(
    kept.map((at) => heard.terms[at] ?? ''),
    kept.map((at) => heard.at[at] ?? new Map<string, number>()),
  );
}

/** Three words of a clause in a row, or four, and all of it. */
export const stretchesOf: (clause: Heard) => readonly Heard[] = onceFor((clause) => {
  const inRow = (length: number): Heard[] =>
    clause.terms
      .slice(length - 1)
      .map((_, from) => partOf(clause, (_term, at) => at >= from && at < from + length));
  return [clause, ...inRow(3), ...inRow(4)];
});

/** What a text says where it denies, and the other way round. */
export function denialOf({ terms, at }: Heard): Heard {
  return heardAt(
    terms.map(flip),
    at.map((meanings) => new Map([...meanings].map(([term, like]) => [flip(term), like]))),
  );
}

/** True where the text says the term for certain. */
export function says({ all }: Pick<Heard, 'all'>, term: string): boolean {
  return (all.get(term) ?? 0) >= sure;
}

/** True where a typed term is this one for certain. */
export function means(said: Meanings | undefined, term: string): boolean {
  return (said?.get(term) ?? 0) >= sure;
}

/** True where the text is the phrase and nothing else. */
export function isPhrase(heard: Heard, phrase: Terms): boolean {
  return heard.at.length === phrase.length && phrase.length > 0 && startsAt(heard, phrase, 0);
}

/** Where the phrase begins in the text, its terms in order and together; -1 where it does not. */
export function findPhrase(heard: Heard, phrase: Terms): number {
  if (phrase.length === 0 || !phrase.every((term) => says(heard, term))) return -1;
  for (let start = 0; start + phrase.length <= heard.at.length; start += 1) {
    if (startsAt(heard, phrase, start)) return start;
  }
  return -1;
}

/** True where the terms of the phrase stand in the text from there on. */
export function startsAt({ at }: Heard, phrase: Terms, start: number): boolean {
  return phrase.every((term, index) => means(at[start + index], term));
}

function isFigure(term: string): boolean {
  const first = term.charCodeAt(term.startsWith('!') ? 1 : 0);
  return first >= 48 && first <= 57;
}

/** True where the text gives a number, and not that of the phrase: "two clicks" is not "one click". */
export function hasOtherNumber(heard: Heard, phrase: Terms): boolean {
  return (
    phrase.some(isFigure) &&
    [...heard.all.keys()].some(isFigure) &&
    !phrase.some((term) => isFigure(term) && says(heard, term))
  );
}

/** True where the text denies what the phrase says, or says what it denies. */
export function isContradicted(heard: Heard, phrase: Terms): boolean {
  const opposites = oppositesOf(heard);
  return phrase.some((term) => opposites.has(term) && !says(heard, term));
}

/** What a text says for certain, denied where it affirms it and affirmed where it denies it. */
const oppositesOf = onceFor(
  ({ all }: Heard): ReadonlySet<string> =>
    new Set([...all.keys()].filter((term) => says({ all }, term)).map(flip)),
);
