import type { Terms } from '../typed/terms.ts';
import type { Learning } from './lesson.ts';
import { createNumbering, type Numbering } from './numbering.ts';
import { onceWith } from '../once.ts';

/** A text as it is learned from: its terms, and every word of it as it was typed. */
export interface Spoken {
  readonly terms: Terms;
  readonly words: readonly string[];
}

/** How likely each answer is by what its phrases are made of: one share for each, in their order. */
export type Learned = (text: Spoken) => readonly number[];

/**
 * What a text is made of, each with its weight: terms, pairs of them, words, groups of letters. A
 * feature is the hash of its name: 32 bits, of which two in some 10,000 names hardly ever share one.
 */
interface Features {
  readonly names: Int32Array;
  /** Scaled, so that a long text counts no more than a short one. */
  readonly weights: Float32Array;
}

/** A text by the columns of its features; below 0 for one that is not known. */
interface Row {
  readonly columns: Int32Array;
  readonly weights: Float32Array;
}

/** What each kind of feature weighs beside a term; set by leaving phrases out. */
const pairWeight = 0.7;
const wordWeight = 0.8;
const denialWeight = 0.7;
const groupWeight = 0.3;

/** Letters in a group. */
const [shortestGroup, longestGroup] = [2, 4];

/** How often the phrases are gone through, how far a step goes, and what holds weights small. */
const rounds = 8;
const step = 0.6;
const shrink = 2e-4;
const leastTravelled = 0.01;

/** Less of an error than this is left alone. */
const leastError = 0.02;

/**
 * Learns to tell answers apart from their phrases: softmax regression, fitted by adaptive gradient
 * steps (Duchi, Hazan and Singer 2011). The same phrases always come to the same shares.
 */
export function* learn(
  answers: readonly (readonly Spoken[])[],
  made: MadeOf = asTyped,
): Learning<Learned> {
  const { columns: known, weights } = yield* fit(answers, made);
  const shares = new Float64Array(answers.length);
  return (text) => {
    // What denies nothing is the same either way.
    const how = text.terms.some((term) => term.startsWith('!')) ? made : asTyped;
    const { names, weights: by } = featuresInHand(text, how);
    const columns = new Int32Array(names.length);
    for (let at = 0; at < names.length; at += 1) columns[at] = known.find(names[at] ?? 0);
    weigh({ columns, weights: by }, weights, shares);
    const given: number[] = [];
    for (let at = 0; at < shares.length; at += 1) given.push(shares[at] ?? 0);
    return given;
  };
}

/** The place of the greatest of some shares, and which it is; nothing is likelier than nought among none. */
export function mostOf(shares: readonly number[]): {
  readonly place: number;
  readonly share: number;
} {
  let place = -1;
  let share = 0;
  for (let at = 0; at < shares.length; at += 1) {
    const one = shares[at] ?? 0;
    if (one > share) {
      place = at;
      share = one;
    }
  }
  return { place, share };
}

/** The columns of all features, and for each of them what it weighs for every answer. */
interface Fitted {
  readonly columns: Numbering;
  readonly weights: Float32Array;
}

/** So many phrases are gone through in a step. */
const phrasesInStep = 100;

function* fit(answers: readonly (readonly Spoken[])[], made: MadeOf): Learning<Fitted> {
  const count = answers.length;
  const columns = createNumbering();
  const said: (Row & { readonly answer: number })[][] = [];
  for (const [answer, phrases] of answers.entries()) {
    const own: (typeof said)[number] = [];
    for (const [at, phrase] of phrases.entries()) {
      if (at % phrasesInStep === 0) yield;
      const { names, weights } = featuresOf(phrase, made);
      own.push({ answer, columns: names.map(columns.add), weights });
    }
    said.push(own);
  }
  // One phrase of each answer in turn, so that none is learned last.
  const rows = inTurn(said);
  const weights = new Float32Array(columns.size() * count);
  const travelled = new Float32Array(columns.size() * count).fill(leastTravelled);
  // Filled anew for each text: a step of learning makes nothing that is thrown away.
  const shares = new Float64Array(count);

  const correct = ({ columns: at, weights: by }: Row, one: number, error: number): void => {
    for (let index = 0; index < at.length; index += 1) {
      const place = (at[index] ?? 0) * count + one;
      const weight = weights[place] ?? 0;
      const slope = error * (by[index] ?? 0) + shrink * weight;
      const sum = (travelled[place] ?? 0) + slope * slope;
      travelled[place] = sum;
      weights[place] = weight - (step * slope) / Math.sqrt(sum);
    }
  };

  const learnFrom = (row: (typeof rows)[number]): void => {
    weigh(row, weights, shares);
    for (let one = 0; one < count; one += 1) {
      const error = (shares[one] ?? 0) - (one === row.answer ? 1 : 0);
      if (Math.abs(error) >= leastError) correct(row, one, error);
    }
  };

  for (let round = 0; round < rounds; round += 1) {
    for (const [at, row] of rows.entries()) {
      if (at % phrasesInStep === 0) yield;
      learnFrom(row);
    }
  }
  return { columns, weights };
}

/** How likely each answer is by the features of a row, put into `shares`. */
function weigh(
  { columns: at, weights: by }: Row,
  weights: Float32Array,
  shares: Float64Array,
): void {
  const count = shares.length;
  shares.fill(0);
  for (let index = 0; index < at.length; index += 1) {
    const place = (at[index] ?? 0) * count;
    if (place < 0) continue;
    const weight = by[index] ?? 0;
    for (let one = 0; one < count; one += 1)
      shares[one] = (shares[one] ?? 0) + (weights[place + one] ?? 0) * weight;
  }
  softmax(shares);
}

/** A word as it is learned from: as it was typed, or with a sign where the text denies it. */
type MadeOf = (word: string, terms: Terms) => string;

const asTyped: MadeOf = (word) => word;

/** So that the "silent" of "I would not call it silent" speaks for no silence. */
export const asDenied: MadeOf = (word, terms) => (isDenied(word, terms) ? `!${word}` : word);

/** The features of texts in hand: several things that were learned are asked about each. */
const featuresInHand = onceWith((text: Spoken, made: MadeOf) => featuresOf(text, made));

function featuresOf({ terms, words }: Spoken, how: MadeOf): Features {
  // The weight that is said last counts.
  const add = (name: number, weight: number): void => {
    gathered[gathering.add(name)] = weight;
  };
  for (const word of words) add(hashOf(how(word, terms), kinds.word), wordWeight);
  for (const [index, term] of terms.entries()) {
    add(hashOf(term, kinds.term), 1);
    if (index > 0) add(hashOf(term, hashOf(terms[index - 1] ?? '', kinds.pair)), pairWeight);
    const isDenial = term.startsWith('!');
    if (isDenial) add(kinds.denial, denialWeight);
    const word = `^${isDenial ? term.slice(1) : term}$`;
    for (let from = 0; from < word.length; from += 1) {
      let hash = isDenial ? kinds.deniedGroup : kinds.group;
      for (let size = 1; size <= longestGroup && from + size <= word.length; size += 1) {
        hash = hashOn(hash, word.charCodeAt(from + size - 1));
        if (size >= shortestGroup) add(hash, groupWeight);
      }
    }
  }
  const names = gathering.take();
  let sum = 0;
  for (let at = 0; at < names.length; at += 1) sum += (gathered[at] ?? 0) ** 2;
  const length = Math.sqrt(sum);
  const weights = new Float32Array(names.length);
  for (let at = 0; at < names.length; at += 1) weights[at] = (gathered[at] ?? 0) / length;
  return { names, weights };
}

/** The features of one text and what each weighs: used again for the next, so that little is thrown away. */
const gathering = createNumbering();
const gathered: number[] = [];

/** Where the hash of each kind of feature starts. */
const kinds = { term: 1, word: 2, pair: 3, group: 4, deniedGroup: 5, denial: 6 };

/** The 32-bit FNV-1a hash of a text by its UTF-16 units (Fowler, Noll and Vo), begun at `start`. */
function hashOf(text: string, start: number): number {
  let hash = hashOn(offsetBasis, start);
  for (let at = 0; at < text.length; at += 1) hash = hashOn(hash, text.charCodeAt(at));
  return hash;
}

const offsetBasis = 0x811c9dc5;

function hashOn(hash: number, unit: number): number {
  return Math.imul(hash ^ unit, 0x01000193);
}

/** True where a word is said only to be denied. */
function isDenied(word: string, terms: Terms): boolean {
  const holds = (term: string): boolean => word.includes(term);
  return terms.some((term) => term.startsWith('!') && holds(term.slice(1))) && !terms.some(holds);
}

/** Sums become shares of one, in place. */
function softmax(values: Float64Array): void {
  let most = -Infinity;
  for (const value of values) if (value > most) most = value;
  let sum = 0;
  for (let at = 0; at < values.length; at += 1) {
    const raised = Math.exp((values[at] ?? 0) - most);
    values[at] = raised;
    sum += raised;
  }
  for (let at = 0; at < values.length; at += 1) values[at] = (values[at] ?? 0) / sum;
}

/** The first of each list, then the second of each, and so on. */
function inTurn<Item>(lists: readonly (readonly Item[])[]): Item[] {
  const longest = Math.max(0, ...lists.map((list) => list.length));
  return Array.from({ length: longest }, (_, index) =>
    lists.flatMap((list) => list.slice(index, index + 1)),
  ).flat();
}

/**
 * So many texts of a list at most, from all over it. Which they are goes by each text alone, so that
 * another one that is heard moves at most one of them.
 */
export function someOf(texts: readonly Spoken[], most: number): Spoken[] {
  if (texts.length <= most) return [...texts];
  const hashes = texts.map(({ words }) => hashOf(words.join(' '), kinds.word) >>> 0);
  const last = hashes.toSorted((one, other) => one - other)[Math.floor(most) - 1] ?? -1;
  return texts.filter((_, index) => (hashes[index] ?? 0) <= last);
}
