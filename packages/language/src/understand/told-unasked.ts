import type { AnswerInput } from '@keyturn/core';
import { type Heard, hearTokens, means } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import { type Choice, chooseOption, isAbout, isOfSeveral, likeliest } from './choices.ts';
import { factRuns } from './fact-runs.ts';
import type { FoundAnswer } from './found-answer.ts';
import { daysSaid, withoutDays } from './day-said.ts';
import { isOfKit, kitTold, saysHaving } from './kit-told.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { hasFigure } from '../numbers/numbers.ts';
import { isOfThing, namedAnswer } from './named-things.ts';
import { gather } from '../gather.ts';
import { onceFor, onceWith } from '../once.ts';
import { isSupported, spansOf, toldIn } from './spans.ts';
import { factsIn } from './told-facts.ts';
import { hasWord } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { type Turn, mostClauses, optionsInHand } from './turn.ts';
import { isTrial } from './unasked.ts';
import { namesCheck, volunteered } from './volunteered.ts';

/** What the clauses of a text answer: in hand or not, and which may be either. */
export interface Told {
  readonly answers: readonly AnswerInput[];
  readonly unsure: readonly FoundAnswer[];
}

/**
 * What is told where nothing was asked: by its clauses, by what is told in one breath, by facts told
 * by the way; each only where some words of the text say it by themselves.
 */
export function allTold(
  clauses: readonly AnswerInput[],
  turn: Turn,
  tokens: readonly Token[] = turn.tokens,
): readonly AnswerInput[] {
  const { inHand } = turn;
  const { lexicon } = turn.listener;
  if (inHand !== undefined && clauses.every(({ check }) => check === inHand.id)) return clauses;
  const spans = spansOf(tokens, lexicon);
  const days = daysSaid(tokens, lexicon);
  const isSaid = (one: AnswerInput, leastWords = 2): boolean =>
    isSupported(one, withoutDays(spans, days, one.check), {
      lexicon,
      isAsked: inHand !== undefined,
      leastWords,
    });
  const isNamed = ({ check, value }: AnswerInput): boolean =>
    turn.clauses.some((clause) => {
      const named = namedAnswer([clause], { inHand, lexicon });
      return named?.check === check && !('value' in value) && value.includes(named.value[0]);
    });
  const isReading = inHand?.check.form.kind === 'reading';
  if (inHand !== undefined)
    return clauses.filter((one) => {
      if (one.check === inHand.id) return true;
      // Beside a figure the bolt of a starter is no booster: kit is told where somebody has it.
      if (isReading && isOfKit(lexicon.checks.get(one.check)) && withKit([one], turn).length === 0)
        return false;
      return !isOfThing(inHand, lexicon.checks.get(one.check)) && (isNamed(one) || isSaid(one));
    });
  const wholly = turn.clauses.flatMap(
    (clause) => turn.listener.asHeard?.saidWholly(clause, lexicon) ?? [],
  );
  const isWholly = ({ check, value }: AnswerInput): boolean =>
    !('value' in value) &&
    value.every((id) => wholly.some((one) => one.check === check && one.value[0] === id));
  const found = turn.clauses.flatMap((clause) => foundIn(clause, turn) ?? []);
  const isFound = ({ check }: AnswerInput): boolean => found.some((one) => one.check === check);
  const told = clauses.filter((one) => isFound(one) || isWholly(one) || isSaid(one));
  const more = toldIn(tokens, spans, { lexicon, inHand: undefined }).filter(
    (one) => !isAmong(one, told) && isSaid(one, 1),
  );
  const all = [...told, ...more];
  // A fact may be told in one word: "diesel".
  const facts = factsBeside(all, turn).filter((one) => isSaid(one, 1));
  const known = [...all, ...facts];
  const together = factsTogether(turn).filter((one) => !isAmong(one, known));
  return withKit([...known, ...together], turn).filter(
    (one) => !isBesideFigure(one, turn) && !isAgeOfOther(one, turn),
  );
}

/** True for an age told in words where no battery is named: "an old lady" is none. */
export function isAgeOfOther(
  { check: id, value }: AnswerInput,
  { tokens, listener }: Turn,
): boolean {
  const { lexicon } = listener;
  const form = lexicon.checks.get(id)?.check.form;
  if (form?.kind !== 'reading' || form.unit !== 'a' || 'value' in value) return false;
  return !hasWord(tokens, figureWordsOf(lexicon.words).battery);
}

/** Where there are figures, what is told of a reading in words is as sure as this in a clause of its own. */
const sureInWords = 0.65;

/**
 * True for a reading told in words where the figure itself may be told, "seven years old", and no
 * clause without a figure tells it: "terribly cold, and the gauge on zero".
 */
function isBesideFigure(
  { check: id }: AnswerInput,
  { tokens, clauses, listener: { lexicon } }: Turn,
): boolean {
  const check = lexicon.checks.get(id);
  if (check?.check.form.kind !== 'reading' || !hasFigure(tokens, lexicon.numbers)) return false;
  return !clauses.some(
    (clause) =>
      !hasFigure(clause, lexicon.numbers) &&
      likeliest(hearTokens(clause, lexicon), check).share >= sureInWords,
  );
}

/** Kit is told only where it is said to be at hand. */
function withKit(told: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { clauses, listener } = turn;
  const { lexicon } = listener;
  const check = [...lexicon.checks.values()].find(isOfKit);
  if (check === undefined) return told;
  const isHaving = clauses.some((clause) => saysHaving(clause, lexicon));
  const sensed = told.flatMap(({ check: id, value }) =>
    id === check.id && isHaving && !('value' in value) ? value : [],
  );
  const ids = [...new Set([...sensed, ...kitTold(clauses, lexicon).flat()])];
  const others = told.filter((one) => one.check !== check.id);
  return ids.length === 0 ? others : [...others, { check: check.id, value: ids }];
}

/** An answer of a check that is answered in words. */
export interface ToldAnswer {
  readonly check: string;
  readonly value: readonly string[];
}

/**
 * What a clause tells beside an answer in hand, as if nothing had been asked; only what some words
 * of it say very plainly by themselves.
 */
export function toldUnasked(clause: readonly Token[], turn: Turn): readonly ToldAnswer[] {
  const { lexicon } = turn.listener;
  const unasked = {
    ...turn,
    tokens: clause,
    clauses: [clause],
    heard: hearTokens(clause, lexicon),
    hearing: { ...turn.hearing, check: null },
    inHand: undefined,
  };
  const spans = spansOf(clause, lexicon);
  return allTold(readClauses(unasked, [clause]).answers, unasked).flatMap((one) => {
    const { check: id, value } = one;
    const check = lexicon.checks.get(id);
    // A fact may be told in one word: "diesel".
    const leastWords = Object.keys(check?.check.sets ?? {}).length > 0 ? 1 : 2;
    const isPlain = isSupported(one, spans, { lexicon, isAsked: true, leastWords });
    if ('value' in value || check === undefined) return [];
    return isPlain && !isUnnamed(check, unasked) ? [{ check: id, value }] : [];
  });
}

/** True where what is found only by going to look is not named. */
export function isUnnamed(check: CheckPhrases, { heard }: Turn): boolean {
  const { at } = check.check;
  return at !== 'memory' && at !== 'seat' && !namesCheck(heard, check);
}

/** What the vehicle is, told by facts side by side or one between two marks. */
export function factsTogether({ clauses, listener: { lexicon } }: Turn): readonly AnswerInput[] {
  const told = clauses
    .flatMap((clause) => factRuns(clause, lexicon))
    .filter(({ facts, isClause }) => isClause || facts.length > 1)
    .flatMap(({ facts }) => facts);
  return told.filter(
    (one, at) => !told.some((other, index) => index !== at && other.check === one.check),
  );
}

/** True where a text that answers no question tells something all the same. */
export function tellsSomething({ tokens, inHand, listener: { lexicon } }: Turn): boolean {
  return (
    inHand === undefined && toldIn(tokens, spansOf(tokens, lexicon), { lexicon, inHand }).length > 0
  );
}

/** True where a check is told already. */
export function isAmong({ check }: AnswerInput, told: readonly AnswerInput[]): boolean {
  return told.some((one) => one.check === check);
}

/** The facts that are told by the way, beside what is told. */
function factsBeside(told: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  return factsIn(turn.heard, turn)
    .filter(
      ({ answer, terms }) =>
        !isAmong(answer, told) && !told.some((one) => isSaidBy(terms, one, turn)),
    )
    .map(({ answer }) => answer);
}

/** True where an answer is said by these words itself: the key that is stuck. */
function isSaidBy(terms: ReadonlySet<string>, { check, value }: AnswerInput, turn: Turn): boolean {
  const options = turn.listener.lexicon.checks.get(check)?.options ?? [];
  return options.some(
    (option) =>
      !('value' in value) &&
      value.includes(option.id) &&
      [...terms].every((term) => option.terms.has(term)),
  );
}

/** Every check that some clauses answer; of two answers to one check neither is taken. */
export function readClauses(turn: Turn, clauses: readonly (readonly Token[])[]): Told {
  const { lexicon } = turn.listener;
  const check = optionsInHand(turn);
  const given = new Map<string, Set<string>>();
  const unsure: FoundAnswer[] = [];
  const take = (id: string, value: string): void => {
    given.set(id, (given.get(id) ?? new Set()).add(value));
  };
  const first = clauses.slice(0, mostClauses);
  // What came of trying something is told where that is asked, or beside what was read meanwhile.
  const isBesideReading = turn.inHand !== undefined && hasFigure(turn.tokens, lexicon.numbers);
  const foundBy = first.map((clause) => foundIn(clause, turn));
  for (let at = 0; at < first.length; at += 1) {
    const found = foundBy[at];
    if (found !== undefined) {
      for (const value of found.value) take(found.check, value);
      continue;
    }
    const next = foundBy.findIndex((one, index) => index > at && one !== undefined);
    const joined = joinedAnswer(turn, next < 0 ? first : first.slice(0, next), at);
    if (joined !== undefined) {
      take(joined.found.check.id, joined.found.fit.id);
      at = joined.last;
      continue;
    }
    const heard = hearTokens(first[at] ?? [], lexicon);
    if (heard.at.length === 0) continue;
    const named =
      check === undefined && lexicon.isHeard
        ? namedAnswer(first.slice(at, at + 1), { inHand: turn.inHand, lexicon })
        : undefined;
    if (named !== undefined && (isBesideReading || isToldUnasked(named.check, lexicon))) {
      take(named.check, named.value[0]);
      continue;
    }
    const wholly =
      check === undefined ? turn.listener.asHeard?.saidWholly(first[at] ?? [], lexicon) : undefined;
    if (wholly !== undefined) {
      take(wholly.check, wholly.value[0]);
      continue;
    }
    const choice: Choice = check === undefined ? { type: 'none' } : chooseOption(heard, check);
    const isOwn = check !== undefined && isAbout(heard, check);
    const perhaps = isOwn ? [] : volunteered(heard, turn);
    const [only, more] = perhaps;
    const isOther = only !== undefined && more === undefined && only.check !== check;
    if (
      check !== undefined &&
      choice.type === 'one' &&
      !(isOther && only.fit.score > choice.fit.score)
    )
      take(check.id, choice.fit.id);
    else if (only !== undefined && more === undefined) take(only.check.id, only.fit.id);
    else unsure.push(...perhaps);
    const beside = check === undefined ? besideFacts(turn, first[at] ?? [], heard) : undefined;
    if (beside !== undefined) take(beside.check.id, beside.fit.id);
  }
  const isPlain = ([id, values]: readonly [string, ReadonlySet<string>]): boolean =>
    values.size === 1 || isOfSeveral(lexicon.checks.get(id));
  return {
    answers: [...given].filter(isPlain).map(([id, values]) => ({ check: id, value: [...values] })),
    unsure,
  };
}

function isToldUnasked(check: string, { checks }: Lexicon): boolean {
  return checks.get(check)?.isToldUnasked === true;
}

/**
 * What a clause of a first message found of a thing that it names, as if that had been asked: "no
 * spark". What came of trying something must be said beside its name as well (`triedIn`).
 */
const foundIn = onceWith(findIn);

function findIn(
  clause: readonly Token[],
  { inHand, listener: { lexicon } }: Turn,
): ToldAnswer | undefined {
  if (inHand !== undefined || !lexicon.isHeard) return undefined;
  const named = namedAnswer([clause], { inHand, lexicon });
  const check = lexicon.checks.get(named?.check ?? '');
  if (check === undefined || check.isToldUnasked || isTrial(check.check)) return undefined;
  const heard = hearTokens(clause, lexicon);
  const choice = chooseOption(heard, check);
  if (choice.type === 'one') return { check: check.id, value: [choice.fit.id] };
  const { id, share } = likeliest(heard, check);
  return id !== undefined && share >= surelyFound ? { check: check.id, value: [id] } : undefined;
}

/** As sure as this it is told where it does not fit what is listed. */
const surelyFound = 0.85;

/** The least that is left of a clause without its facts, so as to tell something of its own. */
const leastLeft = 2;

/** What is left is as sure as this of its check, and of its answer. */
const sureBeside = 0.85;

/** What a clause tells beside its facts: "my diesel van" "just clicks". */
function besideFacts(turn: Turn, clause: readonly Token[], heard: Heard): FoundAnswer | undefined {
  const { lexicon } = turn.listener;
  const facts = factsIn(heard, turn);
  if (facts.length === 0) return undefined;
  const isFact = (token: Token): boolean =>
    lexicon.reader
      .literally([token])
      .some((term) =>
        facts.some(({ terms }) => [...terms].some((own) => isSame(term, own, lexicon))),
      );
  const rest = hearTokens(
    clause.filter((token) => !isFact(token)),
    lexicon,
  );
  if (rest.at.length < leastLeft) return undefined;
  const [only, more] = volunteered(rest, turn);
  const isTold = facts.some(({ answer }) => answer.check === only?.check.id);
  if (more !== undefined || isTold || only === undefined) return undefined;
  const { check, share } = lexicon.subject()(rest);
  return check === only.check.id && share >= sureBeside && only.fit.score >= sureBeside
    ? only
    : undefined;
}

function isSame(term: string, own: string, { vocabulary }: Lexicon): boolean {
  return means(vocabulary(term), own);
}

/** The least that clauses taken together must fit: "it starts, then dies". */
const joinedFit = 0.8;

/** An answer that two or three clauses give together, and none of them alone. */
function joinedAnswer(
  turn: Turn,
  clauses: readonly (readonly Token[])[],
  at: number,
): { readonly found: FoundAnswer; readonly last: number } | undefined {
  const { lexicon } = turn.listener;
  const comma: Token = { kind: 'mark', text: ',' };
  for (const last of [at + 2, at + 1]) {
    if (last >= clauses.length) continue;
    const terms = clauses.slice(at, last + 1).map((clause) => lexicon.reader.fromTokens(clause));
    const isInEach = (phrase: Terms): boolean =>
      terms.every((own) => own.some((term) => phrase.includes(term)));
    const [first = []] = terms;
    // Hardly any two clauses share a phrase, which is found sooner than what they tell.
    if (!first.some((term) => phrasesWith(lexicon).get(term)?.some(isInEach))) continue;
    const tokens = clauses.slice(at, last + 1).flatMap((clause) => [...clause, comma]);
    const [found, more] = volunteered(hearTokens(tokens, lexicon), turn);
    if (found === undefined || more !== undefined || found.fit.score < joinedFit) continue;
    if (isInEach(found.fit.phrase)) return { found, last };
  }
  return undefined;
}

/** What says any answer, by each of its terms. */
const phrasesWith = onceFor(({ checks }: Lexicon): ReadonlyMap<string, readonly Terms[]> =>
  gather(
    [...checks.values()].flatMap(({ options }) => options.flatMap(({ phrases }) => phrases)),
    (phrase) => phrase,
  ),
);

/** What a text tells beside its facts, where it is one answer as a whole. */
export function besideWhole({ check }: FoundAnswer, turn: Turn): AnswerInput[] {
  if (turn.inHand !== undefined) return [];
  const beside = besideFacts(turn, turn.tokens, turn.heard);
  if (beside === undefined || beside.check === check) return [];
  return [{ check: beside.check.id, value: [beside.fit.id] }];
}
