import type { AnswerInput } from '@keyturn/core';
import { type Heard, hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { type Choice, chooseOption, isAbout, isOfSeveral } from './choices.ts';
import { fitOptions } from './fit.ts';
import { type FoundAnswer, offersOf } from './found-answer.ts';
import type { Lexicon } from './lexicon.ts';
import { cutClauses } from './talk.ts';
import { isVague } from './said-choice.ts';
import { durations } from '../numbers/unit.ts';
import { endsWithPhrase, hasPhrase, phraseAt } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { type Turn, type Untried, answers, optionsInHand } from './turn.ts';
import type { Understood } from './understood.ts';
import { isOfVehicle } from './fact-runs.ts';
import { namedAnswer } from './named-things.ts';
import { toldBeside } from './told-beside.ts';
import { allTold, besideWhole, factsTogether, readClauses } from './told-unasked.ts';
import { volunteered } from './volunteered.ts';

/** From here on a text is one answer, commas and all. */
const wholeCoverage = 0.85;

/** A text without what was tried, and what came of that; all of it where nobody is heard. */
function apart(given: Turn): Untried {
  return given.listener.asHeard?.withoutTrials(given) ?? { turn: given, tried: [] };
}

/** Several answers in one text: "just clicks and the lights go dim, battery is new". */
export function readSeveral(given: Turn): Understood | undefined {
  const { turn, tried } = apart(given);
  const understood = readParts(turn);
  return understood === undefined ? undefined : withTried(understood, tried);
}

/** What was understood, with what came of what was tried; which is told in place of a question. */
function withTried(understood: Understood | undefined, tried: readonly AnswerInput[]) {
  if (tried.length === 0) return understood;
  const told =
    understood?.type === 'input'
      ? understood.inputs.flatMap((one) => (one.type === 'answers' ? one.answers : []))
      : [];
  return answers([...told, ...tried]);
}

function readParts(turn: Turn): Understood | undefined {
  const { clauses, heard } = turn;
  const facts = readFacts(turn);
  if (facts !== undefined) return facts;
  const beside = toldBeside(turn);
  if (beside !== undefined) return answers(beside);
  if (clauses.length < 2) return undefined;
  const check = optionsInHand(turn);
  if (isOfSeveral(check)) return undefined;
  const whole: Choice = check === undefined ? { type: 'none' } : chooseOption(heard, check);
  if (whole.type === 'one' && whole.fit.coverage >= wholeCoverage) return undefined;
  const told = allTold(readClauses(turn, clauses).answers, turn);
  return told.length < 2 ? undefined : answers(told);
}

/**
 * What the vehicle is, where that is asked and more of it is told: "manual petrol"; and what else is
 * told beside it: "manual petrol, the tank is full".
 */
function readFacts(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined || !isOfVehicle(check)) return undefined;
  const facts = factsTogether(turn);
  if (facts.length < 2 || !facts.some((one) => one.check === check.id)) return undefined;
  const beside = toldBeside(turn) ?? [];
  return answers([
    ...facts,
    ...beside.filter((one) => !facts.some(({ check: id }) => id === one.check)),
  ]);
}

/** What was said without being asked, in a text of one answer or several. */
export function readVolunteered(given: Turn): Understood | undefined {
  const { turn, tried } = apart(given);
  return withTried(readUnasked(turn), tried);
}

function readUnasked(turn: Turn): Understood | undefined {
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

function isDenied(heard: Heard, check: FoundAnswer['check']): boolean {
  return fitOptions(heard, check).some(({ score }) => score < 0);
}

/**
 * The clauses that hold no number, as answers beside the readings of the rest. What goes on while a
 * figure is read is none: "9.85 V while she turns it".
 */
export function readWordsBeside(turn: Turn, tokens: readonly Token[]): readonly AnswerInput[] {
  const { lexicon } = turn.listener;
  // "10.6, and it charged all night" tells what was asked for first.
  if (turn.inHand?.check.waitMinutes !== undefined) return [];
  // How long was waited for a figure is no answer either, nor what becomes of the meter.
  const isOfTime = (clause: readonly Token[]): boolean =>
    clause.some((_, at) => timesBeside.includes(lexicon.readUnit(clause, at)?.code ?? ''));
  const clauses = cutClauses(withoutMoments(tokens, lexicon), lexicon).filter(
    (clause) =>
      !clause.some(isFigure) &&
      !isOfTime(clause) &&
      !namesDisplay(clause, lexicon) &&
      !namesSide(clause, turn) &&
      !isOfChange(clause, hearTokens(clause, lexicon), lexicon) &&
      (turn.inHand === undefined || isPlainly(clause, lexicon)),
  );
  const words =
    turn.inHand === undefined
      ? withoutFigures(tokens, lexicon)
      : clauses.flatMap((clause) => [...clause, comma]);
  const told = allTold(clauses.length === 0 ? [] : readClauses(turn, clauses).answers, turn, words);
  const bare = cutClauses(withoutFigures(tokens, lexicon), lexicon);
  // At the starter itself "automat" is its solenoid.
  const facts = turn.inHand?.check.at === 'below' ? [] : factsTogether({ ...turn, clauses: bare });
  const more = facts.filter(({ check }) => !told.some((one) => one.check === check));
  // What it was measured with is no news.
  const needs = new Set<string>(turn.inHand?.check.needs.flat());
  const isNews = ({ value }: AnswerInput): boolean =>
    'value' in value || !value.every((one) => needs.has(one));
  return [...told, ...more].filter(isNews);
}

/** True for a figure; "a white crust" has an article, which is a one in many languages. */
function isFigure(token: Token): boolean {
  return token.kind === 'number' && !(token.inWords === true && token.value === 1);
}

const comma: Token = { kind: 'mark', text: ',' };

/**
 * The tokens with a mark for each figure, its unit and what it did before it: "goes down to 9.4".
 * How long something took is left in words.
 */
function withoutFigures(tokens: readonly Token[], { readUnit, words }: Lexicon): readonly Token[] {
  const { changes } = figureWordsOf(words);
  const kept: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at];
    if (token === undefined) continue;
    const unit = token.kind === 'number' ? readUnit(tokens, at + 1) : undefined;
    if (token.kind !== 'number' || durations.includes(unit?.code ?? '')) kept.push(token);
    else {
      while (endsWithPhrase(kept, kept.length, changes)) kept.pop();
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

/** "The other clamp next to nothing" is said of what is lost. */
function namesSide(clause: readonly Token[], { inHand, listener }: Turn): boolean {
  const form = inHand?.check.form;
  if (form?.kind !== 'reading' || form.range !== 'drop') return false;
  return hasPhrase(clause, figureWordsOf(listener.lexicon.words).sides);
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

/**
 * Leaves out what is said of when a figure is read, up to the next mark, or to what is said of a
 * thing by its name: "12.1 at rest and the clamps are corroded".
 */
function withoutMoments(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  const { moments } = figureWordsOf(lexicon.words);
  const kept: Token[] = [];
  let isBehindFigure = false;
  let isMoment = false;
  tokens.forEach((token, at) => {
    const thing = thingBehind(tokens, at, lexicon);
    if (token.kind === 'mark' || thing !== undefined) isMoment = isBehindFigure = false;
    if (thing?.hasMoment === true) isBehindFigure = true;
    if (token.kind === 'number') isBehindFigure = true;
    if (isBehindFigure && phraseAt(tokens, at, moments) > 0) isMoment = true;
    if (!isMoment) kept.push(token);
  });
  return kept;
}

/**
 * What a clause tells of a thing by its name, at the "and" before it, and whether it tells that
 * without the moment in it as well: "the rev counter is still while cranking".
 */
function thingBehind(
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
): { readonly hasMoment: boolean } | undefined {
  const { joins, clauseBreaks } = lexicon.words;
  const { moments } = figureWordsOf(lexicon.words);
  const isJoin = (token: Token): boolean =>
    token.kind === 'word' && [...joins, ...clauseBreaks].includes(token.text);
  const token = tokens[at];
  if (token === undefined || !isJoin(token)) return undefined;
  const behind = tokens.slice(at + 1);
  const end = behind.findIndex((one) => one.kind === 'mark' || isJoin(one));
  const clause = end < 0 ? behind : behind.slice(0, end);
  const tellsOf = (some: readonly Token[]): boolean =>
    namedAnswer([some], { inHand: undefined, lexicon }) !== undefined;
  if (clause.some(isFigure) || !tellsOf(clause)) return undefined;
  const moment = clause.findIndex((_, index) => phraseAt(clause, index, moments) > 0);
  return { hasMoment: moment > 0 && tellsOf(clause.slice(0, moment)) };
}
