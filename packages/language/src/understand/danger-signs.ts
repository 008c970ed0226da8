/**
 * Dangers told by a thing and what it does, "petrol … dripping", whichever way and beside whatever
 * else it is said. Which words these are is heard (`signs`).
 */
import { normalise } from '../typed/normalise.ts';
import type { Token } from '../typed/token.ts';
import type { Words } from '../words/words.ts';

/** The dangers that a text tells of while a check is in hand, and that it does not deny. */
export type DangerSigns = (
  tokens: readonly Token[],
  by: { readonly check: string | null; readonly possible: readonly string[] },
) => readonly DangerSign[];

/** A danger, and where its words stand. */
export interface DangerSign extends Place {
  readonly interrupt: string;
  /** True where it may be one of another day or another thing: "the old battery". */
  readonly isOrdinary: boolean;
}

/** The signs of what makes an ordinary matter of every danger. */
const ordinary = 'ordinary';

/** A thing and what it does have no more words between them than this. */
const mostBetween = 6;

/**
 * What denies a danger stands among its words or so far before them, or ends their clause, with
 * nothing but small words beside it: "swollen it is not".
 */
const denialBefore = 3;

/** A letter that is drawn out: `fiiire`. */
const drawnOut = /(.)\1{2,}/gu;

interface Sign {
  readonly interrupt: string;
  /** Of each thing that must be said the checks that name it: the battery, by its voltage. */
  readonly things: readonly (readonly string[])[];
  /** The checks whose answers it is told by. */
  readonly answers: readonly string[];
}

/** A way to say one thing of a sign. */
interface Way {
  readonly sign: Sign;
  /** Which of its things; `unless` for what makes it an ordinary matter. */
  readonly thing: number;
  readonly words: readonly string[];
}

const unless = -1;

/** Where something is said, from its first word up to the one behind it. */
interface Place {
  readonly start: number;
  readonly end: number;
}

/**
 * Reads the signs of a language: "thing, other thing | does, is done | ! where not this". A word
 * that ends in a star may go on, one that begins with it ends a compound; `?id` is said where that
 * check is in hand.
 */
export function readSigns(
  signs: Readonly<Record<string, readonly string[]>>,
  words: Words,
): DangerSigns {
  const { negators, clauseBreaks, articles, joins, fillers, spelling } = words;
  const { attached = [], denyBefore = [], refusals = [], compounds = false } = spelling ?? {};
  const denyBehind = [...denyBefore, ...refusals];
  const before = attached.filter(
    (one) => joins.includes(one) || articles.some((article) => one.endsWith(article)),
  );
  const ways = new Map<string, Way[]>();
  for (const [interrupt, lines] of Object.entries(signs)) {
    for (const way of lines.flatMap((line) => waysOf(interrupt, line, spelling))) {
      const [first = ''] = way.words;
      ways.set(first, [...(ways.get(first) ?? []), way]);
    }
  }

  /** The ways that begin with a word, with what it is written on to, or at the end of a compound. */
  const startingWith = (word: string): readonly Way[] => {
    const forms = [word];
    for (const one of before)
      if (word.startsWith(one) && word.length > one.length + 1) forms.push(word.slice(one.length));
    for (let at = 2; compounds && at < word.length - 2; at += 1) forms.push(`*${word.slice(at)}`);
    return forms.flatMap((form) => {
      const found = [...(ways.get(form) ?? [])];
      for (let end = 2; end <= form.length; end += 1)
        found.push(...(ways.get(`${form.slice(0, end)}*`) ?? []));
      return found;
    });
  };

  return (tokens, { check, possible }) => {
    const said = tokens.map((token) => {
      if (token.kind === 'number') return token.digits;
      return token.kind === 'mark' ? '' : token.text.replace(drawnOut, '$1');
    });
    const found = new Map<Sign, Map<number, Place[]>>();
    for (const [start, word] of said.entries()) {
      for (const { sign, thing, words: way } of word === '' ? [] : startingWith(word)) {
        if (!way.every((one, at) => at === 0 || isSaid(said[start + at], one))) continue;
        const things = found.get(sign) ?? new Map<number, Place[]>();
        const places = things.get(thing) ?? [];
        found.set(sign, things.set(thing, [...places, { start, end: start + way.length }]));
      }
    }
    const denies = (at: number): boolean => negators.includes(said[at] ?? '');
    const isDenied = ({ start, end }: Place, parts: readonly Place[]): boolean => {
      const isBetween = (at: number): boolean =>
        !parts.some((part) => at >= part.start && at < part.end);
      for (let at = start; at < end; at += 1) if (isBetween(at) && denies(at)) return true;
      for (let at = start - 1; at >= start - denialBefore; at -= 1) {
        const word = said[at] ?? '';
        if (word === '' || clauseBreaks.includes(word)) break;
        if (denies(at)) return true;
      }
      const behind = [...said.slice(end), ''];
      const rest = behind.slice(0, behind.indexOf('')).filter((word) => !fillers.includes(word));
      return rest.length > 0 && rest.every((word) => denyBehind.includes(word));
    };
    const isOrdinary = [...found.keys()].some(({ interrupt }) => interrupt === ordinary);
    return [...found].flatMap(([{ interrupt, things, answers }, places]) => {
      if (places.has(unless) || !possible.includes(interrupt)) return [];
      if (check !== null && answers.includes(check)) return [];
      const needed = things.flatMap((checks, thing) =>
        check !== null && checks.includes(check) ? [] : [places.get(thing) ?? []],
      );
      const told = closeTogether(needed).find((parts) => !isDenied(wholeOf(parts), parts));
      return told === undefined ? [] : [{ interrupt, isOrdinary, ...wholeOf(told) }];
    });
  };
}

function wholeOf(parts: readonly Place[]): Place {
  return {
    start: Math.min(...parts.map(({ start }) => start)),
    end: Math.max(...parts.map(({ end }) => end)),
  };
}

function isSaid(word: string | undefined, way: string): boolean {
  return way.endsWith('*') ? word?.startsWith(way.slice(0, -1)) === true : word === way;
}

/** One place of each thing, close together and apart from each other. */
function closeTogether(things: readonly (readonly Place[])[]): readonly (readonly Place[])[] {
  return things.reduce<readonly (readonly Place[])[]>(
    (sets, places) =>
      sets.flatMap((set) =>
        places.filter((place) => isBeside(place, set)).map((place) => [...set, place]),
      ),
    [[]],
  );
}

function isBeside({ start, end }: Place, set: readonly Place[]): boolean {
  const gaps = set.map((one) => Math.max(start - one.end, one.start - end));
  return set.length === 0 || (Math.min(...gaps) <= mostBetween && gaps.every((gap) => gap >= 0));
}

function waysOf(interrupt: string, line: string, spelling: Words['spelling']): readonly Way[] {
  const parts = line.split('|').map((part) => part.trim());
  const listed = (part: string): readonly string[] => part.split(',').map((one) => one.trim());
  const checksOf = (part: string): readonly string[] =>
    listed(part).flatMap((one) => (one.startsWith('?') ? [one.slice(1)] : []));
  const things = parts.filter((part) => !part.startsWith('!'));
  const not = parts.find((part) => part.startsWith('!'))?.slice(1) ?? '';
  const sign = { interrupt, things: things.map(checksOf), answers: checksOf(not) };
  const read = (part: string, thing: number): readonly Way[] =>
    listed(part)
      .filter((one) => one !== '' && !one.startsWith('?'))
      .map((one) => ({
        sign,
        thing,
        words: normalise(one, spelling).trim().split(/ +/),
      }));
  return [...things.flatMap(read), ...read(not, unless)];
}
