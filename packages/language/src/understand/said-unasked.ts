import type { AnswerInput } from '@keyturn/core';
import { type Heard, hearTokens, means } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { type Choice, chooseOption, isAbout } from './choices.ts';
import { fitOptions } from './fit.ts';
import { type FoundAnswer, offersOf } from './found-answer.ts';
import type { Lexicon } from './lexicon.ts';
import { cutClauses } from './talk.ts';
import { factsIn } from './told-facts.ts';
import { isVague } from './said-choice.ts';
import { durations } from '../numbers/unit.ts';
import { hasPhrase, phraseAt } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { type Turn, answers, mostClauses, optionsInHand } from './turn.ts';
import type { Understood } from './understood.ts';
import { factRuns, isOfVehicle } from './fact-runs.ts';
import { namedBeside } from './named-beside.ts';
import { isSupported, spansOf, toldIn } from './spans.ts';
import { volunteered } from './volunteered.ts';

/** From here on a text is one answer, commas and all. */
const wholeCoverage = 0.85;

/** What the clauses of a text answer: in hand or not, and which may be either. */
interface Told {
  readonly answers: readonly AnswerInput[];
  readonly unsure: readonly FoundAnswer[];
}

/** Several answers in one text: "just clicks and the lights go dim, battery is new". */
export function readSeveral(turn: Turn): Understood | undefined {
  const { clauses, heard } = turn;
  const facts = readFacts(turn);
  if (facts !== undefined) return facts;
  if (clauses.length < 2) return undefined;
  const named = namedBeside(turn);
  if (named !== undefined) return answers(named);
  const check = optionsInHand(turn);
  if (check?.check.form.kind === 'choice' && check.check.form.several) return undefined;
  const whole: Choice = check === undefined ? { type: 'none' } : chooseOption(heard, check);
  if (whole.type === 'one' && whole.fit.coverage >= wholeCoverage) return undefined;
  const told = allTold(readClauses(turn, clauses).answers, turn);
  return told.length < 2 ? undefined : answers(told);
}

/**
 * What is told where nothing was asked: by its clauses, by what is told in one breath, by facts told
 * by the way; each only where some words of the text say it by themselves.
 */
function allTold(
  clauses: readonly AnswerInput[],
  turn: Turn,
  tokens: readonly Token[] = turn.tokens,
): readonly AnswerInput[] {
  const { inHand } = turn;
  const { lexicon } = turn.listener;
  if (inHand !== undefined && clauses.every(({ check }) => check === inHand.id)) return clauses;
  const spans = spansOf(tokens, lexicon);
  const isSaid = (one: AnswerInput, leastWords = 2): boolean =>
    isSupported(one, spans, { lexicon, isAsked: inHand !== undefined, leastWords });
  if (inHand !== undefined) return clauses.filter((one) => one.check === inHand.id || isSaid(one));
  const told = clauses.filter((one) => isSaid(one));
  const more = toldIn(tokens, spans, lexicon).filter((one) => !isAmong(one, told));
  const all = [...told, ...more];
  // A fact may be told in one word: "diesel".
  const facts = factsBeside(all, turn).filter((one) => isSaid(one, 1));
  const known = [...all, ...facts];
  return [...known, ...factsTogether(turn).filter((one) => !isAmong(one, known))];
}

/** What the vehicle is, told by facts side by side or one between two marks. */
function factsTogether({ clauses, listener: { lexicon } }: Turn): readonly AnswerInput[] {
  const told = clauses
    .flatMap((clause) => factRuns(clause, lexicon))
    .filter(({ facts, isClause }) => isClause || facts.length > 1)
    .flatMap(({ facts }) => facts);
  return told.filter(
    (one, at) => !told.some((other, index) => index !== at && other.check === one.check),
  );
}

/** What the vehicle is, where that is asked and more of it is told: "manual petrol". */
function readFacts(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined || !isOfVehicle(check)) return undefined;
  const told = factsTogether(turn);
  return told.length > 1 && told.some((one) => one.check === check.id) ? answers(told) : undefined;
}

/** True where a text that answers no question tells something all the same. */
export function tellsSomething({ tokens, inHand, listener: { lexicon } }: Turn): boolean {
  return inHand === undefined && toldIn(tokens, spansOf(tokens, lexicon), lexicon).length > 0;
}

function isAmong({ check }: AnswerInput, told: readonly AnswerInput[]): boolean {
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
function readClauses(turn: Turn, clauses: readonly (readonly Token[])[]): Told {
  const { lexicon } = turn.listener;
  const check = optionsInHand(turn);
  const given = new Map<string, Set<string>>();
  const unsure: FoundAnswer[] = [];
  const take = (id: string, value: string): void => {
    given.set(id, (given.get(id) ?? new Set()).add(value));
  };
  const first = clauses.slice(0, mostClauses);
  for (let at = 0; at < first.length; at += 1) {
    const joined = joinedAnswer(turn, first, at);
    if (joined !== undefined) {
      take(joined.found.check.id, joined.found.fit.id);
      at = joined.last;
      continue;
    }
    const heard = hearTokens(first[at] ?? [], lexicon);
    if (heard.at.length === 0) continue;
    const choice: Choice = check === undefined ? { type: 'none' } : chooseOption(heard, check);
    const isOwn = check !== undefined && isAbout(heard, check);
    const found = isOwn ? [] : volunteered(heard, turn);
    const [only, more] = found;
    const isOther = only !== undefined && more === undefined && only.check !== check;
    if (
      check !== undefined &&
      choice.type === 'one' &&
      !(isOther && only.fit.score > choice.fit.score)
    )
      take(check.id, choice.fit.id);
    else if (only !== undefined && more === undefined) take(only.check.id, only.fit.id);
    else unsure.push(...found);
    const beside = check === undefined ? besideFacts(turn, first[at] ?? [], heard) : undefined;
    if (beside !== undefined) take(beside.check.id, beside.fit.id);
  }
  const isPlain = ([id, values]: readonly [string, ReadonlySet<string>]): boolean => {
    const form = lexicon.checks.get(id)?.check.form;
    return values.size === 1 || (form?.kind === 'choice' && form.several);
  };
  return {
    answers: [...given].filter(isPlain).map(([id, values]) => ({ check: id, value: [...values] })),
    unsure,
  };
}

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
    const tokens = clauses.slice(at, last + 1).flatMap((clause) => [...clause, comma]);
    const [found, more] = volunteered(hearTokens(tokens, lexicon), turn);
    if (found === undefined || more !== undefined || found.fit.score < joinedFit) continue;
    const isInEach = terms.every((own) => own.some((term) => found.fit.phrase.includes(term)));
    if (isInEach) return { found, last };
  }
  return undefined;
}

/** What was said without being asked, in a text of one answer or several. */
export function readVolunteered(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  // "A few volts" is a figure that is not told, and no voltmeter; a blank display is no dash.
  const isReading = turn.inHand?.check.form.kind === 'reading';
  if (isReading && (isVague(turn) || isAboutFigure(turn))) return undefined;
  // What denies an answer in hand is about the question in hand.
  if (check !== undefined && (isDenied(turn.heard, check) || isAbout(turn.heard, check)))
    return undefined;
  const whole = volunteered(turn.heard, turn);
  const [only, more] = whole;
  if (only !== undefined && more === undefined)
    return answers(
      allTold([{ check: only.check.id, value: [only.fit.id] }, ...besideWhole(only, turn)], turn),
    );
  if (check === undefined) {
    const told = readClauses(turn, turn.clauses);
    const all = allTold(told.answers, turn);
    if (all.length > 0) return answers(all);
    if (told.unsure.length > 0) return offersOf(told.unsure);
  }
  if (whole.length > 0) return offersOf(whole);
  return undefined;
}

/** What a text tells beside its facts, where it is one answer as a whole. */
function besideWhole({ check }: FoundAnswer, turn: Turn): AnswerInput[] {
  if (turn.inHand !== undefined) return [];
  const beside = besideFacts(turn, turn.tokens, turn.heard);
  if (beside === undefined || beside.check === check) return [];
  return [{ check: beside.check.id, value: [beside.fit.id] }];
}

function isDenied(heard: Heard, check: FoundAnswer['check']): boolean {
  return fitOptions(heard, check).some(({ score }) => score < 0);
}

/**
 * The clauses that hold no number, as answers beside the readings of the rest. What goes on while a
 * figure is read is none: "9.85 V while she turns it".
 */
export function readWordsBeside(turn: Turn, tokens: readonly Token[]): readonly AnswerInput[] {
  const { lexicon } = turn.listener;
  // How long was waited for a figure is no answer either, nor what becomes of the meter.
  const isOfTime = (clause: readonly Token[]): boolean =>
    clause.some((_, at) => timesBeside.includes(lexicon.readUnit(clause, at)?.code ?? ''));
  const clauses = cutClauses(withoutMoments(tokens, lexicon), lexicon).filter(
    (clause) =>
      !clause.some(({ kind }) => kind === 'number') &&
      !isOfTime(clause) &&
      !namesDisplay(clause, lexicon) &&
      !isOfChange(clause, hearTokens(clause, lexicon), lexicon) &&
      (turn.inHand === undefined || isPlainly(clause, lexicon)),
  );
  const words =
    turn.inHand === undefined
      ? withoutFigures(tokens, lexicon)
      : clauses.flatMap((clause) => [...clause, comma]);
  return allTold(clauses.length === 0 ? [] : readClauses(turn, clauses).answers, turn, words);
}

const comma: Token = { kind: 'mark', text: ',' };

/** The tokens with a mark for each figure and its unit; how long something took is left in words. */
function withoutFigures(tokens: readonly Token[], { readUnit }: Lexicon): readonly Token[] {
  const kept: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    if (token === undefined) continue;
    const unit = token.kind === 'number' ? readUnit(tokens, at + 1) : undefined;
    if (token.kind !== 'number' || durations.includes(unit?.code ?? '')) kept.push(token);
    else {
      kept.push(comma);
      at += unit?.length ?? 0;
    }
  }
  return kept;
}

const timesBeside: readonly string[] = [...durations, 'a'];

function namesDisplay(tokens: readonly Token[], { words }: Lexicon): boolean {
  return hasPhrase(tokens, figureWordsOf(words).display);
}

/** Few terms with a word of change are about the figure: "it drops a lot". */
const mostAboutFigure = 3;

function isAboutFigure({ tokens, heard, listener: { lexicon } }: Turn): boolean {
  return namesDisplay(tokens, lexicon) || isOfChange(tokens, heard, lexicon);
}

function isOfChange(tokens: readonly Token[], { terms }: Heard, { words }: Lexicon): boolean {
  return terms.length <= mostAboutFigure && hasPhrase(tokens, figureWordsOf(words).changes);
}

/** What is told beside a reading is as likely as this to speak of some check. */
const plainSubject = 0.7;

function isPlainly(clause: readonly Token[], lexicon: Lexicon): boolean {
  return !lexicon.isHeard || lexicon.subject()(hearTokens(clause, lexicon)).share >= plainSubject;
}

/** Leaves out what is said of when a figure is read, up to the next mark. */
function withoutMoments(tokens: readonly Token[], { words }: Lexicon): readonly Token[] {
  const { moments } = figureWordsOf(words);
  const kept: Token[] = [];
  let isBehindFigure = false;
  let isMoment = false;
  tokens.forEach((token, at) => {
    if (token.kind === 'mark') isMoment = isBehindFigure = false;
    if (token.kind === 'number') isBehindFigure = true;
    if (isBehindFigure && phraseAt(tokens, at, moments) > 0) isMoment = true;
    if (!isMoment) kept.push(token);
  });
  return kept;
}
