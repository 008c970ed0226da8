import type { Terms } from '../typed/terms.ts';
import type { Learning } from './lesson.ts';
import { createNumbering, type Numbering } from './numbering.ts';
import { onceFor, remembered } from '../once.ts';

/** A text as it is learned from: its terms, and every word of it as it was typed. */
export interface Spoken {
  readonly terms: Terms;
  readonly words: readonly string[];
}

/**
 * How likely each answer is by what its phrases are made of: one share for each, in their order. Of
 * a text that goes on where the last one ended only what is new is weighed.
 */
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

/** How far a step goes, and what holds weights small. */
const step = 0.6;
const shrink = 2e-4;
const leastTravelled = 0.01;

/** Less of an error than this is left alone. */
const leastError = 0.02;

/** Where several learn side by side, each does without another of so many parts of the phrases. */
const parts = 8;

/** How it is learned. */
interface Way {
  /** What a word is learned as. */
  readonly made?: MadeOf;
  /** How often the phrases are gone through: the less, the less sure the shares of few phrases. */
  readonly rounds?: number;
  /** So many learn side by side. */
  readonly learners?: number;
}

/**
 * Learns to tell answers apart from their phrases: softmax regressions, fitted by adaptive gradient
 * steps (Duchi, Hazan and Singer 2011). Of several learners the shares are the mean of theirs
 * (Breiman 1996): what hangs on a phrase or two is less sure. The same phrases always come to the
 * same shares.
 */
export function* learn(
  answers: readonly (readonly Spoken[])[],
  { made = asTyped, rounds = 8, learners = 1 }: Way = {},
): Learning<Learned> {
  const scale = createScale(yield* fit(answers, { made, rounds, learners }), {
    learners,
    count: answers.length,
  });
  // What denies nothing is the same either way.
  return (text) => scale(text, text.terms.some((term) => term.startsWith('!')) ? made : asTyped);
}

/**
 * The place of the greatest of some shares, of the first `count` where not of all, and which it is;
 * nothing is likelier than nought among none.
 */
export function mostOf(
  shares: readonly number[],
  count: number = shares.length,
): {
  readonly place: number;
  readonly share: number;
} {
  let place = -1;
  let share = 0;
  for (let at = 0; at < count; at += 1) {
    const one = shares[at] ?? 0;
    if (one > share) {
      place = at;
      share = one;
    }
  }
  return { place, share };
}

/** The columns of all features, and for each of them what it weighs to every learner for every answer. */
interface Fitted {
  readonly columns: Numbering;
  readonly weights: Float32Array;
}

/** So many phrases are gone through in a step. */
const phrasesInStep = 100;

/** A phrase that is learned from. */
interface TaughtRow extends Row {
  readonly answer: number;
  /** The part of the phrases that it is of. */
  readonly part: number;
}

function* fit(
  answers: readonly (readonly Spoken[])[],
  { made, rounds, learners }: Required<Way>,
): Learning<Fitted> {
  const count = answers.length;
  const columns = createNumbering();
  const said: TaughtRow[][] = [];
  for (const [answer, phrases] of answers.entries()) {
    const own: TaughtRow[] = [];
    for (const [at, phrase] of phrases.entries()) {
      if (at % phrasesInStep === 0) yield;
      const { names, weights } = featuresOf(phrase, made);
      const part = placeByWords(phrase) % parts;
      own.push({ answer, part, columns: names.map(columns.add), weights });
    }
    said.push(own);
  }
  // One phrase of each answer in turn, so that none is learned last.
  const rows = inTurn(said);
  const width = learners * count;
  const weights = new Float32Array(columns.size() * width);
  const travelled = new Float32Array(columns.size() * width).fill(leastTravelled);
  // Filled anew for each text: a step of learning makes nothing that is thrown away.
  const shares = new Float64Array(count);

  // The answers that a phrase is wrong about; by how much is what their shares come to.
  const wrong = new Int32Array(count);

  const learnFrom = ({ answer, columns: at, weights: by }: TaughtRow, learner: number): void => {
    const first = learner * count;
    shares.fill(0);
    for (let index = 0; index < at.length; index += 1) {
      const place = (at[index] ?? 0) * width + first;
      const weight = by[index] ?? 0;
      for (let one = 0; one < count; one += 1)
        shares[one] = (shares[one] ?? 0) + (weights[place + one] ?? 0) * weight;
    }
    softmax(shares);
    shares[answer] = (shares[answer] ?? 0) - 1;
    let many = 0;
    for (let one = 0; one < count; one += 1) {
      if (Math.abs(shares[one] ?? 0) < leastError) continue;
      wrong[many] = one;
      many += 1;
    }
    for (let index = 0; index < at.length; index += 1) {
      for (let which = 0; which < many; which += 1) {
        const one = wrong[which] ?? 0;
        const place = (at[index] ?? 0) * width + first + one;
        const weight = weights[place] ?? 0;
        const slope = (shares[one] ?? 0) * (by[index] ?? 0) + shrink * weight;
        const sum = (travelled[place] ?? 0) + slope * slope;
        travelled[place] = sum;
        weights[place] = weight - (step * slope) / Math.sqrt(sum);
      }
    }
  };

  for (let round = 0; round < rounds; round += 1) {
    for (const [at, row] of rows.entries()) {
      if (at % phrasesInStep === 0) yield;
      for (let learner = 0; learner < learners; learner += 1)
        if (learners === 1 || row.part !== learner) learnFrom(row, learner);
    }
  }
  return { columns, weights };
}

/** A word as it is learned from: as it was typed, or with a sign where the text denies it. */
type MadeOf = (word: string, terms: Terms) => string;

const asTyped: MadeOf = (word) => word;

/** So that the "silent" of "I would not call it silent" speaks for no silence. */
export const asDenied: MadeOf = (word, terms) => (isDenied(word, terms) ? `!${word}` : word);

/** What is done with each feature of a text as it comes. */
interface Take {
  /** A feature by its name, and what it weighs. */
  readonly feature: (name: number, weight: number) => void;
  /** All that the letters of a term are, whatever stands beside it. */
  readonly letters: (term: string) => void;
}

/** What every text begins with. */
const nothing: Spoken = { terms: [], words: [] };

/** Every feature of a text that its beginning does not have, and some that it has. */
function eachFeature(
  { terms, words }: Spoken,
  how: MadeOf,
  { begun, take }: { readonly begun: Spoken; readonly take: Take },
): void {
  for (let at = begun.words.length; at < words.length; at += 1)
    take.feature(hashOf(how(words[at] ?? '', terms), kinds.word), wordWeight);
  for (let at = begun.terms.length; at < terms.length; at += 1) {
    const term = terms[at] ?? '';
    take.feature(hashOf(term, kinds.term), 1);
    if (at > 0) take.feature(hashOf(term, hashOf(terms[at - 1] ?? '', kinds.pair)), pairWeight);
    take.letters(term);
  }
}

/** The groups of letters of a term, and whether it is denied: the names of all, none of them twice. */
const lettersOf = remembered((term: string): Int32Array => {
  const isDenial = term.startsWith('!');
  const names = new Set(isDenial ? [kinds.denial] : []);
  const word = `^${isDenial ? term.slice(1) : term}$`;
  for (let from = 0; from < word.length; from += 1) {
    let hash = isDenial ? kinds.deniedGroup : kinds.group;
    for (let size = 1; size <= longestGroup && from + size <= word.length; size += 1) {
      hash = hashOn(hash, word.charCodeAt(from + size - 1));
      if (size >= shortestGroup) names.add(hash);
    }
  }
  return Int32Array.from(names);
});

/** What one of them weighs. */
function letterWeight(name: number): number {
  return name === kinds.denial ? denialWeight : groupWeight;
}

function featuresOf(text: Spoken, how: MadeOf): Features {
  let sum = 0;
  gathering.clear();
  const feature = (name: number, weight: number): void => {
    if (!gathering.isNew(name)) return;
    gathered[gathering.size() - 1] = weight;
    sum += weight ** 2;
  };
  eachFeature(text, how, {
    begun: nothing,
    take: {
      feature,
      letters: (term) => {
        for (const name of lettersOf(term)) feature(name, letterWeight(name));
      },
    },
  });
  const length = Math.sqrt(sum);
  const weights = new Float32Array(gathering.size());
  for (let at = 0; at < weights.length; at += 1) weights[at] = (gathered[at] ?? 0) / length;
  return { names: gathering.names(), weights };
}

/** The features of one text and what each weighs: used again for the next, so that little is thrown away. */
const gathering = createNumbering();
const gathered: number[] = [];

/** So many terms are remembered with what their letters come to. */
const mostTerms = 500;

/**
 * How likely each answer is, of one text after another. The parts of a text are asked about as they
 * grow word by word: what the one before came to is kept, and what is new is added.
 */
function createScale(
  { columns, weights }: Fitted,
  { learners, count }: { readonly learners: number; readonly count: number },
): (text: Spoken, how: MadeOf) => readonly number[] {
  const names = createNumbering();
  const width = learners * count;
  const sums = new Float64Array(width);
  const shares = new Float64Array(count);
  const mean = new Float64Array(count);
  let squares = 0;
  let last: Spoken | undefined;
  const weigh = (to: Float64Array, name: number, weight: number): void => {
    const place = columns.find(name) * width;
    if (place < 0) return;
    for (let one = 0; one < width; one += 1)
      to[one] = (to[one] ?? 0) + (weights[place + one] ?? 0) * weight;
  };
  const letterSums = remembered((term: string): Float64Array => {
    const of = new Float64Array(width);
    for (const name of lettersOf(term)) weigh(of, name, letterWeight(name));
    return of;
  }, mostTerms);
  const take: Take = {
    feature: (name, weight) => {
      if (!names.isNew(name)) return;
      squares += weight ** 2;
      weigh(sums, name, weight);
    },
    letters: (term) => {
      const whole = letterSums(term);
      for (let one = 0; one < width; one += 1) sums[one] = (sums[one] ?? 0) + (whole[one] ?? 0);
      for (const name of lettersOf(term)) {
        // What stands in a word before as well counts once.
        if (names.isNew(name)) squares += letterWeight(name) ** 2;
        else weigh(sums, name, -letterWeight(name));
      }
    },
  };
  return (text, how) => {
    const begun = last !== undefined && how === asTyped && goesOn(text, last) ? last : nothing;
    if (begun === nothing) {
      names.clear();
      sums.fill(0);
      squares = 0;
    }
    eachFeature(text, how, { begun, take });
    // What comes next may deny a word, which then counts in another way.
    last = how === asTyped ? text : undefined;
    const length = Math.sqrt(squares);
    mean.fill(0);
    for (let first = 0; first < width; first += count) {
      for (let one = 0; one < count; one += 1)
        shares[one] = length === 0 ? 0 : (sums[first + one] ?? 0) / length;
      softmax(shares);
      for (let one = 0; one < count; one += 1)
        mean[one] = (mean[one] ?? 0) + (shares[one] ?? 0) / learners;
    }
    // `Array.from` would make an object for each share.
    const given: number[] = [];
    for (let one = 0; one < count; one += 1) given.push(mean[one] ?? 0);
    return given;
  };
}

/** True where a text begins with all of another. */
function goesOn(text: Spoken, begun: Spoken): boolean {
  const isBegun = (all: readonly string[], first: readonly string[]): boolean =>
    first.length <= all.length && first.every((one, at) => one === all[at]);
  return isBegun(text.terms, begun.terms) && isBegun(text.words, begun.words);
}

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

/** Where a text stands among others, by its words alone. */
const placeByWords = onceFor(({ words }: Spoken) => hashOf(words.join(' '), kinds.word) >>> 0);

/**
 * So many texts of a list at most, from all over it. Which they are goes by each text alone, so that
 * another one that is heard moves at most one of them.
 */
export function someOf(texts: readonly Spoken[], most: number): Spoken[] {
  if (texts.length <= most) return [...texts];
  const places = Uint32Array.from(texts, placeByWords);
  const last = places.toSorted()[Math.floor(most) - 1] ?? -1;
  return texts.filter((text) => placeByWords(text) <= last);
}
