import type { AnswerInput } from '@keyturn/core';
import { type Heard, hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { hasWord } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { chooseOption, chooseSeveral, isOfSeveral, isUsual, likeliest } from './choices.ts';
import { factRuns } from './fact-runs.ts';
import { isOfKit, kitTold } from './kit-told.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { isOfThing, joinClauses, likewise, namedAnswer, notInHand } from './named-things.ts';
import { factsIn } from './told-facts.ts';
import { type ToldAnswer, toldUnasked } from './told-unasked.ts';
import { type Turn, mostClauses, optionsInHand } from './turn.ts';

type Clause = readonly Token[];

/** What is told beside the answer in hand, and how many clauses it takes. */
interface Beside {
  readonly told: readonly ToldAnswer[];
  readonly length: number;
  /** The answer in hand that it says as well: who is at home is safe. */
  readonly also?: string | undefined;
  /** How surely it might answer the question in hand itself; the rest must do so more surely. */
  readonly asked?: number;
}

/**
 * The answer in hand, and what is told beside it: of other things by their names, of the vehicle and
 * its place, and what is plain as if nothing had been asked: "it's sound, and the relay clicks",
 * "safe, we're at home", "diesel, nothing happens at all". Undefined where nothing is told beside,
 * or nothing answers what was asked.
 */
export function toldBeside(turn: Turn): readonly AnswerInput[] | undefined {
  const { lexicon } = turn.listener;
  const inHand = optionsInHand(turn);
  if (inHand === undefined) return undefined;
  const clauses = turn.clauses
    .flatMap((clause) => partFacts(clause, lexicon))
    .slice(0, mostClauses);
  if (clauses.length < 2) return undefined;
  const own: Clause[] = [];
  const beside: Beside[] = [];
  const kit = isOfKit(inHand) ? [] : kitTold(clauses, lexicon);
  for (let at = 0; at < clauses.length; at += 1) {
    const rest = clauses.slice(at);
    const among = { inHand, lexicon };
    const told =
      besideOf(kitOf(kit[at] ?? [], lexicon)) ??
      besideOf(namedAnswer(rest.slice(0, 1), among)) ??
      besideOf(namedAnswer(rest.slice(0, 2), among), 2) ??
      besideOf(likewise(clauses[at] ?? [], own, among)) ??
      factsOf(clauses[at] ?? [], inHand, lexicon) ??
      factOf(clauses[at] ?? [], inHand, turn) ??
      plainOf(clauses[at] ?? [], inHand, turn) ??
      turn.listener.asHeard?.surelyBeside(clauses[at] ?? [], inHand, turn) ??
      whollyOf(joinClauses(rest.slice(0, 2)), inHand, turn);
    if (told === undefined) own.push(clauses[at] ?? []);
    else {
      beside.push(told);
      at += told.length - 1;
    }
  }
  if (beside.length === 0 || own.length === 0) return undefined;
  const value = chosen(own, inHand, lexicon);
  if (value.length === 0) return undefined;
  const left = likeliest(hearTokens(joinClauses(own), lexicon), inHand);
  if (beside.some(({ asked }) => asked !== undefined) && left.share < surelyLeft) return undefined;
  const agreeing = beside
    .filter(({ also }) => also === undefined || value.includes(also))
    .filter(({ asked = 0 }) => asked <= left.share)
    .flatMap(({ told }) => told);
  return [{ check: inHand.id, value }, ...plain(agreeing, lexicon)];
}

/** A clause, and the facts of the vehicle that it ends with: "at home" "and it's a diesel". */
function partFacts(clause: Clause, lexicon: Lexicon): readonly Clause[] {
  for (let at = 1; at < clause.length; at += 1) {
    const token = clause[at];
    const rest = clause.slice(at);
    const [run] = factRuns(rest, lexicon);
    if (run?.isClause !== true || token?.kind !== 'word') continue;
    const isJoined = lexicon.reader.unjoined(token.text) !== token.text;
    if (isJoined || run.facts.length > 1) return [clause.slice(0, at), rest];
  }
  return [clause];
}

function besideOf(told: ToldAnswer | undefined, length = 1): Beside | undefined {
  return told === undefined ? undefined : { told: [told], length };
}

/** What is at hand, as the answer that it is. */
function kitOf(value: readonly string[], { checks }: Lexicon): ToldAnswer | undefined {
  const check = [...checks.values()].find(isOfKit);
  return value.length === 0 || check === undefined ? undefined : { check: check.id, value };
}

/** Of two answers to a check that has one neither is taken. */
function plain(told: readonly ToldAnswer[], { checks }: Lexicon): readonly AnswerInput[] {
  const byCheck = new Map<string, Set<string>>();
  for (const { check, value } of told)
    byCheck.set(check, new Set([...(byCheck.get(check) ?? []), ...value]));
  return [...byCheck]
    .filter(([check, value]) => value.size === 1 || isOfSeveral(checks.get(check)))
    .map(([check, value]) => ({ check, value: [...value] }));
}

function chosen(
  clauses: readonly Clause[],
  check: CheckPhrases,
  lexicon: Lexicon,
): readonly string[] {
  const heardOf = (clause: Clause): Heard => hearTokens(clause, lexicon);
  if (isOfSeveral(check)) return chooseSeveral(clauses.map(heardOf), check, lexicon);
  const choice = chooseOption(heardOf(joinClauses(clauses)), check);
  return choice.type === 'one' ? [choice.fit.id] : [];
}

/** A clause tells what happened before from here on. */
const ofBefore = 0.8;

/** The facts of the vehicle and its place that a clause tells beside the answer in hand. */
function factOf(clause: Clause, inHand: CheckPhrases, turn: Turn): Beside | undefined {
  const { lexicon } = turn.listener;
  const { at } = inHand.check;
  const heard = hearTokens(clause, lexicon);
  if (at !== 'memory' && at !== 'seat') return undefined;
  // Where something was done is not where it stands: "changed the starter at the workshop".
  const spoken = lexicon.subject()(heard);
  if (isOfSeveral(lexicon.checks.get(spoken.check)) && spoken.share >= ofBefore) return undefined;
  const answered = likeliest(heard, inHand);
  const facts = factsIn(heard, turn).filter(({ answer, terms }) => {
    const check = lexicon.checks.get(answer.check)?.check;
    const isOfVehicle = Object.keys(check?.sets ?? {}).length > 0;
    return isOfVehicle && !isUsual([...terms], inHand);
  });
  return facts.length === 0
    ? undefined
    : {
        told: facts.map(({ answer }) => answer),
        length: 1,
        also: answered.share < notInHand ? undefined : answered.id,
      };
}

/** What the vehicle is, where a clause says nothing else and does not answer the question in hand. */
function factsOf(clause: Clause, inHand: CheckPhrases, lexicon: Lexicon): Beside | undefined {
  const [run] = factRuns(clause, lexicon);
  if (run?.isClause !== true || run.facts.length === 0) return undefined;
  const heard = hearTokens(clause, lexicon);
  if (likeliest(heard, inHand).share >= notInHand) return undefined;
  // "The car's petrol" says what it is, whatever petrol is said to be the matter there.
  const isOfIt = hasWord(clause, figureWordsOf(lexicon.words).vehicle);
  if (!isOfIt && isUsual(heard.terms, inHand)) return undefined;
  return { told: run.facts, length: 1 };
}

/** What a clause that does not answer the question in hand tells as if nothing had been asked. */
function plainOf(clause: Clause, inHand: CheckPhrases, turn: Turn): Beside | undefined {
  const { lexicon } = turn.listener;
  if (likeliest(hearTokens(clause, lexicon), inHand).share >= notInHand) return undefined;
  const whole = [...(whollyOf(clause, inHand, turn)?.told ?? []), ...toldUnasked(clause, turn)];
  // Whoever tries something tells what he does: "swapped it with the one beside" is no work before.
  const isBefore = (id: string): boolean => {
    const check = lexicon.checks.get(id);
    return check?.check.at === 'memory' && isOfSeveral(check);
  };
  const told = whole.filter(
    ({ check }, at) =>
      check !== inHand.id &&
      check !== inHand.check.like &&
      !isOfThing(inHand, lexicon.checks.get(check)) &&
      (inHand.isToldUnasked || !isBefore(check)) &&
      whole.findIndex((one) => one.check === check) === at,
  );
  return told.length === 0 ? undefined : { told, length: 1 };
}

/** What is left answers the question in hand as surely as this. */
const surelyLeft = 0.8;

/** What clauses are word for word, where that does not answer the question in hand. */
function whollyOf(clause: Clause, inHand: CheckPhrases, turn: Turn): Beside | undefined {
  const { lexicon, asHeard } = turn.listener;
  const told = asHeard?.saidWholly(clause, lexicon);
  if (told === undefined || [inHand.id, inHand.check.like].includes(told.check)) return undefined;
  if (isOfThing(inHand, lexicon.checks.get(told.check))) return undefined;
  const isInHand = likeliest(hearTokens(clause, lexicon), inHand).share >= notInHand;
  return isInHand ? undefined : { told: [told], length: clause.filter(isComma).length + 1 };
}

function isComma({ kind }: Token): boolean {
  return kind === 'mark';
}
