import { endsWithPhrase } from '../readings/word-run.ts';
import type { Words } from '../words/words.ts';
import { readTokens } from './read-tokens.ts';
import { createStemmer } from './stem.ts';
import type { Token } from './token.ts';
import { createWordParts } from './word-parts.ts';

/**
 * What is compared of a phrase: words without endings and fillers, numbers in figures. A term that
 * is denied begins with `!`: "no click at all" is `!click`.
 */
export type Terms = readonly string[];

/** The term behind one that is said several times over: "click click click". */
export const again = '+again';

/** How many terms a negation reaches over, unless the clause ends before. */
const negationReach = 3;

/** How many terms before it a negator at the end denies: "dreht immer nicht". */
const reachBefore = 2;

/** Turns tokens into terms by the words of one language. */
export interface TermReader {
  readonly fromTokens: (tokens: readonly Token[]) => Terms;
  /** A word without what joins it to the one before. */
  readonly unjoined: (typed: string) => string;
  readonly fromText: (text: string) => Terms;
  /** Every word of a name, fillers kept and nothing denied. */
  readonly literally: (text: string | readonly Token[]) => Terms;
}

/** The terms of one clause as they are gathered. */
interface Clause {
  readonly terms: string[];
  /** Where the part behind the last joining word begins. */
  from: number;
  reach: number;
  /** A negator that nothing follows is a term itself: "no", "nothing". */
  alone: { readonly term: string; readonly deniesBefore: boolean } | undefined;
  /** Its words as they are typed. */
  readonly words: string[];
}

/** The term reader of one language, whose words are spelled as typed words are. */
export function createTermReader(words: Words): TermReader {
  const breaks = new Set(words.clauseBreaks);
  const joins = new Set(words.joins);
  const subjects = new Set(words.subjects ?? []);
  const before = new Set(words.spelling?.denyBefore ?? []);
  const stem = createStemmer(words);
  const having = new Set(words.having.map(stem));
  const refusals = new Set((words.spelling?.refusals ?? []).map(stem));
  const { partsOf, unjoined } = createWordParts(words);
  const idle = words.spelling?.denyNothing ?? [];
  const noes = new Set(words.talk.no);

  const fromTokens = (tokens: readonly Token[]): Terms => {
    const terms: string[] = [];
    let clause = emptyClause();
    const endClause = (): void => {
      terms.push(...endOf(clause, { having, refusals }));
      clause = emptyClause();
    };
    const deny = (term: string, deniesBefore = false): void => {
      // Two negators at once deny once: "ne pas", "nic nie".
      clause.alone = { term, deniesBefore };
      clause.reach = negationReach;
    };
    const add = (term: string, isDenied: boolean): void => {
      const signed = isDenied || clause.reach > 0 ? `!${term}` : term;
      // What is named and then denied is denied once: "apagarse no se apagan".
      if (signed !== term && clause.terms.at(-1) === term) clause.terms.pop();
      const isAgain = isRepeated(clause.terms.length > 0 ? clause.terms : terms, signed);
      if (!isAgain) clause.terms.push(signed);
      else if (clause.terms.at(-1) !== again) clause.terms.push(again);
      clause.reach = Math.max(clause.reach - 1, 0);
      clause.alone = undefined;
    };
    for (const [at, token] of tokens.entries()) {
      if (token.kind === 'malformed' || (token.kind === 'mark' && '-/'.includes(token.text)))
        continue;
      if (token.kind === 'mark') endClause();
      else if (token.kind === 'number') add(token.digits, false);
      else {
        const { word, role, isJoined, isDenied } = partsOf(token.text);
        const isAnew = isJoined || subjects.has(token.text);
        // A no that somebody goes on behind denies nothing: "no there's smoke".
        if (isAnew && noes.has(clause.words.join(' '))) endClause();
        clause.words.push(token.text);
        if (isAnew && clause.alone === undefined) clause.reach = 0;
        // The `ما` of `بعد ما`, after, only joins a clause.
        if (role === 'negator' && endsWithPhrase(tokens, at + 1, idle)) continue;
        // "Zero clicks" denies as "no clicks" does.
        if (role === 'negator' || words.cardinals[word] === 0) deny(stem(word), before.has(word));
        else if (breaks.has(word)) endClause();
        else if (joins.has(word)) {
          clause.reach = clause.alone === undefined ? 0 : clause.reach;
          clause.from = clause.terms.length;
        } else if (role === 'term') add(stem(word), isDenied);
      }
    }
    endClause();
    return terms.length > 0
      ? terms
      : tokens.flatMap((token) => (token.kind === 'word' ? [stem(token.text)] : []));
  };

  return {
    fromTokens,
    unjoined,
    fromText: (text) => fromTokens(readTokens(text, words)),
    literally: (text) =>
      (typeof text === 'string' ? readTokens(text, words) : text).flatMap((token) => {
        if (token.kind === 'number') return [token.digits];
        return token.kind === 'word' ? [stem(partsOf(token.text).word)] : [];
      }),
  };
}

const emptyClause = (): Clause => ({
  terms: [],
  from: 0,
  reach: 0,
  alone: undefined,
  words: [],
});

/** True where a term follows itself; figures never do. */
function isRepeated(terms: readonly string[], term: string): boolean {
  const before = terms.at(-1) === again ? terms.at(-2) : terms.at(-1);
  return before === term && !/\d/.test(term);
}

function endOf(
  clause: Clause,
  {
    having,
    refusals,
  }: { readonly having: ReadonlySet<string>; readonly refusals: ReadonlySet<string> },
): readonly string[] {
  const { terms } = clause;
  if (clause.alone !== undefined) settle(clause);
  // What one has not got is denied, wherever it is named: "pinza no tengo".
  else if (terms.at(-1)?.startsWith('!') === true && having.has(flip(terms.at(-1) ?? '')))
    denyLast(clause, reachBefore + 1);
  else if (terms.length > clause.from + 1 && refusals.has(terms.at(-1) ?? '')) {
    terms.pop();
    denyLast(clause, reachBefore);
  }
  return terms;
}

/** What a negator that nothing follows means: it denies what stands before, or is a term itself. */
function settle(clause: Clause): void {
  const { alone, terms } = clause;
  if (alone === undefined) return;
  if (alone.deniesBefore && terms.length > 0) denyLast(clause, reachBefore);
  else terms.push(alone.term);
  clause.alone = undefined;
}

/** Denies so many of the last terms of a clause. */
function denyLast({ terms, from }: Clause, most: number): void {
  const denied = terms.splice(Math.max(from, terms.length - most));
  terms.push(...denied.map((term) => (term.startsWith('!') ? term : `!${term}`)));
}

/** The same term affirmed where it was denied, and denied where it was affirmed. */
export function flip(term: string): string {
  return term.startsWith('!') ? term.slice(1) : `!${term}`;
}
