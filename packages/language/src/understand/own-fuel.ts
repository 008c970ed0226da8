import type { AnswerInput } from '@keyturn/core';
import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { endsWithPhrase } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { likeliest } from './choices.ts';
import type { Spoken } from './learned.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { joinClauses } from './named-things.ts';
import { onceFor } from '../once.ts';
import type { Turn } from './turn.ts';

/** The context that the fuel is written into. */
const context = 'vehicle.fuel';

/** What is put in at the wrong pump. */
const fuels: readonly unknown[] = ['petrol', 'diesel'];

/** A fuel is called by so many words at most, and by no shorter word than this. */
const [mostWords, shortest] = [2, 3];

/** A fuel that a text names, and whether the vehicle runs on it: "petrol" in my "diesel". */
interface Named {
  readonly check: string;
  readonly id: string;
  readonly clause: number;
  readonly isOwn: boolean;
  /** True where it stands beside the vehicle itself: "petrol car". */
  readonly isOfVehicle: boolean;
}

/** What says that another fuel was put in says it as surely as this. */
const sureMixed = 0.85;

/**
 * Answers with the fuel that the vehicle runs on, where another one was put in, and that it was:
 * "petrol in my diesel". Where it is not said which is which, neither is taken.
 */
export function withOwnFuel(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { clauses, listener } = turn;
  const named = clauses.flatMap((clause, at) => fuelsIn(clause, at, listener.lexicon));
  const ids = new Set(named.map(({ id }) => id));
  const [first] = named;
  if (first === undefined) return given;
  if (ids.size === 1) return withFuelOfVehicle(given, named, turn);
  const own = [...new Set(named.flatMap(({ id, isOwn }) => (isOwn ? [id] : [])))];
  const isTogether = named.some((one) =>
    named.some((other) => one.id !== other.id && one.clause === other.clause),
  );
  const { check } = first;
  // "Petrol in a diesel" is all of the answer where the fuel is asked about.
  if (isTogether && isAskedAndMixed(given, turn)) return given;
  if (own.length !== 1 && !isTogether) return given;
  const others = given.filter(
    (one) => one.check !== check || 'value' in one.value || one.value.some((id) => !ids.has(id)),
  );
  const isTold = others.some((one) => one.check === check);
  if (own.length !== 1 || isTold) return others;
  const told = [...others, { check, value: own }];
  const mixed = mixedIn(named, turn);
  return mixed === undefined || told.some((one) => one.check === mixed.check)
    ? told
    : [...told, mixed];
}

/** Answers with the fuel that is named with the vehicle, where nothing was asked. */
function withFuelOfVehicle(
  given: readonly AnswerInput[],
  named: readonly Named[],
  { inHand }: Turn,
): readonly AnswerInput[] {
  const one = named.find(({ isOfVehicle }) => isOfVehicle);
  const isTold = given.some(({ check }) => check === one?.check);
  if (one === undefined || inHand !== undefined || isTold) return given;
  return [...given, { check: one.check, value: [one.id] }];
}

/** True where the question in hand is answered by what two fuels say. */
function isAskedAndMixed(given: readonly AnswerInput[], { inHand, listener }: Turn): boolean {
  const mixed = mixedOf(listener.lexicon);
  return (
    mixed !== undefined &&
    given.some(
      ({ check, value }) => check === inHand?.id && !('value' in value) && value.includes(mixed.id),
    )
  );
}

/** The answer that the wrong fuel was put in, where one clause or two that name the fuels say it surely. */
function mixedIn(named: readonly Named[], { clauses, listener }: Turn): AnswerInput | undefined {
  const { lexicon } = listener;
  const mixed = mixedOf(lexicon);
  if (mixed === undefined) return undefined;
  const { check, id } = mixed;
  const at = named.map(({ clause }) => clause);
  const [first, last] = [Math.min(...at), Math.max(...at)];
  if (last - first > 1) return undefined;
  const heard = hearTokens(joinClauses(clauses.slice(first, last + 1)), lexicon);
  const told = likeliest(heard, check);
  const isSaid = told.id === id && told.share >= sureMixed;
  return isSaid ? { check: check.id, value: [id] } : undefined;
}

/** A text without the names of fuels, and how many different ones it names. */
export function withoutFuels(
  tokens: readonly Token[],
  lexicon: Lexicon,
): { readonly tokens: readonly Token[]; readonly fuels: number } {
  const names = namesOf(lexicon);
  const ids = new Set<string>();
  const kept = tokens.filter((token) => {
    const id = names.get(lexicon.reader.literally([token]).join(' '))?.id;
    if (id !== undefined) ids.add(id);
    return id === undefined;
  });
  return { tokens: kept, fuels: ids.size };
}

/** The fuels that a clause names and does not deny. */
function fuelsIn(clause: readonly Token[], at: number, lexicon: Lexicon): readonly Named[] {
  const names = namesOf(lexicon);
  const said = lexicon.reader.fromTokens(clause);
  const found: Named[] = [];
  for (let start = 0; start < clause.length; start += 1) {
    for (let length = Math.min(mostWords, clause.length - start); length > 0; length -= 1) {
      const own = clause.slice(start, start + length);
      const name = names.get(lexicon.reader.literally(own).join(' '));
      if (name === undefined) continue;
      const isDenied = lexicon.reader.literally(own).some((term) => said.includes(`!${term}`));
      if (!isDenied)
        found.push({ ...name, clause: at, ...ownOf(clause, { start, length }, lexicon) });
      start += length - 1;
      break;
    }
  }
  return found;
}

/** Whether what stands around a fuel says that the vehicle runs on it. */
function ownOf(
  clause: readonly Token[],
  { start, length }: { readonly start: number; readonly length: number },
  { words }: Lexicon,
): Pick<Named, 'isOwn' | 'isOfVehicle'> {
  const { runsOn = [], fillers, spelling } = words;
  const { vehicle } = figureWordsOf(words);
  const isVehicle = (token: Token | undefined): boolean =>
    token?.kind === 'word' && vehicle.includes(token.text);
  const isSmall = (token: Token | undefined): boolean =>
    token?.kind === 'word' && fillers.includes(token.text);
  const first = clause[start];
  const text = first?.kind === 'word' ? first.text : '';
  const attached = (spelling?.attached ?? []).filter((prefix) => runsOn.includes(prefix));
  const before = [clause[start - 1], ...(isSmall(clause[start - 1]) ? [clause[start - 2]] : [])];
  const isOfVehicle = before.some(isVehicle) || isVehicle(clause[start + length]);
  const isOwn =
    isOfVehicle ||
    attached.some((prefix) => text.startsWith(prefix)) ||
    endsWithPhrase(clause, start, runsOn);
  return { isOwn, isOfVehicle };
}

/** An answer, and the check that it is given to. */
interface Mixed {
  readonly check: CheckPhrases;
  readonly id: string;
}

/** The answer that is said by naming two fuels more often than any other. */
export const mixedOf: (lexicon: Lexicon) => Mixed | undefined = onceFor((lexicon) => {
  const names = namesOf(lexicon);
  const isOfTwo = ({ words }: Spoken): boolean => {
    const said = words.flatMap(
      (word) => names.get(lexicon.reader.literally(word).join(' '))?.id ?? [],
    );
    return new Set(said).size > 1;
  };
  const [most] = [...lexicon.checks.values()]
    .filter(({ isToldUnasked, options }) => isToldUnasked && options.length > 0)
    .flatMap((check) =>
      check.options.map(({ id, spoken, heard }) => {
        const count = [...spoken, ...heard()].filter(isOfTwo).length;
        return { check, id, count };
      }),
    )
    .sort((one, other) => other.count - one.count);
  return most === undefined || most.count === 0 ? undefined : most;
});

/** What the fuels are called, that an engine may run on alone. */
const namesOf = onceFor((lexicon: Lexicon) => {
  const names = new Map<string, { check: string; id: string }>();
  for (let length = 1; length <= mostWords; length += 1) {
    for (const check of lexicon.checks.values()) {
      for (const { id, spoken, heard } of check.options.filter((one) => isFuel(one.id, check))) {
        for (const { words } of [...spoken, ...heard()]) {
          const name = lexicon.reader.literally(words.join(' '));
          const isLong = words.some((word) => word.length >= shortest);
          // "A diesel" is "diesel".
          const isNamed = length > 1 && name.some((term) => names.has(term));
          if (words.length === length && isLong && !isNamed)
            names.set(name.join(' '), { check: check.id, id });
        }
      }
    }
  }
  return names;
});

/** True for an answer that says no more of the vehicle than which fuel is put in. */
function isFuel(id: string, { check: { sets } }: CheckPhrases): boolean {
  const set = sets[id] ?? {};
  return Object.keys(set).length === 1 && fuels.includes(set[context]);
}
