/**
 * A danger that stands beside what was understood, in words that it leaves over, or may stand there;
 * and a figure beside one.
 */
import type { Input } from '@keyturn/core';
import { spellNumbers } from '../numbers/numbers.ts';
import { type Heard, findPhrase, hearTokens, stretchesOf } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { startsNow } from './alarms.ts';
import type { Lexicon } from './lexicon.ts';
import { readLine } from '../readings/readings-line.ts';
import { lineContext } from './said-figures.ts';
import { dangersPossible } from './said-interrupt.ts';
import { fewWords, findInterrupt } from './talk.ts';
import { shareOfAnswers } from './taught.ts';
import { type Turn, input } from './turn.ts';
import type { Understood } from './understood.ts';

/** A clause that answers what was asked as surely as this tells nothing else. */
const answered = 0.5;

/**
 * Beside an answer a clause of its own sounds like a danger as surely as this, or three words in a
 * row do, or four, or one word alone beside a figure; where nothing was understood three words so
 * little, and so little more is asked about. Set on dangers told beside answers, and on answers
 * without any.
 */
const surely = { ownClause: 0.85, inThree: 0.6, inFour: 0.3, ownWord: 0.95 };
const inNothingElse = 0.45;
const perhapsInNothing = 0.3;

/** As surely as this it is asked whether there is the danger. Set on the same texts. */
const perhaps = { ownClause: 0.28, inThree: 0.42, inFour: 0.25, ownWord: 0.7 };

/** Where nothing was asked a whole clause of more words than two must. */
const firstPerhaps = 0.5;

/** What was understood, and the danger that other words of the text sound like. */
export function withDangerBeside(understood: Understood, turn: Turn): Understood {
  const { hearing, inHand, listener } = turn;
  if (hearing.awaiting !== 'answer' || understood.type === 'language') return understood;
  if (raises(understood)) return withOthers(asTold(understood, turn), turn);
  if (!listener.lexicon.isHeard) return understood;
  const told = turn.listener.asHeard?.dangerTold(turn);
  if (told?.isSure === true) return withRaised(understood, told.interrupt, turn);
  if (understood.talk !== undefined) return understood;
  // A first message tells where it stands, and water that it went through, in words of danger.
  if (understood.type === 'input' && inHand === undefined)
    return withDoubt(understood, turn, told?.interrupt);
  const isUnclear = understood.type === 'unclear';
  const danger = isUnclear ? inThreeWords(turn, inNothingElse) : dangerLeft(turn);
  if (danger !== undefined) return withRaised(understood, danger, turn);
  const perhapsTold = isUnclear ? inThreeWords(turn, perhapsInNothing) : undefined;
  return withDoubt(understood, turn, told?.interrupt ?? perhapsTold);
}

/** What was understood, and a danger beside it, which goes before talk, with every other. */
function withRaised(understood: Understood, danger: string, turn: Turn): Understood {
  const raised: Input = { type: 'interrupt', interrupt: danger };
  const isAnswer = understood.type === 'input' && understood.talk === undefined;
  return withOthers(input(isAnswer ? [...understood.inputs, raised] : [raised], danger), turn);
}

/**
 * What was understood, with the danger that a thing and what it does surely tell, and that the text
 * sounds like most, in place of another that nobody told: acid that pours out of a battery is no
 * fuel, and in somebody's eye an injury.
 */
function asTold(understood: Understood, turn: Turn): Understood {
  const told = turn.listener.asHeard?.dangerTold(turn);
  if (understood.type !== 'input' || told?.isSure !== true) return understood;
  if (turn.listener.lexicon.alarmed()(turn.heard).interrupt !== told.interrupt) return understood;
  const inputs = understood.inputs.map((one): Input => {
    return isDanger(one) && !isSaid(one.interrupt, turn)
      ? { ...one, interrupt: told.interrupt }
      : one;
  });
  const isChanged = inputs.some((one, at) => one !== understood.inputs[at]);
  return isChanged ? input(inputs, told.interrupt) : understood;
}

/**
 * What was understood, with every other danger that has a clause of its own: that which the flow
 * names first is the most urgent, and comes last, so that it is the one in hand.
 */
function withOthers(understood: Understood, turn: Turn): Understood {
  const { clauses, hearing } = turn;
  if (understood.type !== 'input' || clauses.length < 2) return understood;
  const raised = understood.inputs.filter(isDanger).map(({ interrupt }) => interrupt);
  const told = [...raised, ...dangersOfClauses(turn)];
  const all = hearing.interrupts.filter((id) => told.includes(id));
  if (all.length < 2) return understood;
  const rest = understood.inputs.filter((one) => !isDanger(one));
  const dangers = all.map((interrupt): Input => ({ type: 'interrupt', interrupt })).reverse();
  return input([...rest, ...dangers], all[0]);
}

/** True for a danger, and not that the vehicle starts. */
function isDanger(one: Input): one is Extract<Input, { readonly type: 'interrupt' }> {
  return one.type === 'interrupt' && one.interrupt !== startsNow;
}

/**
 * The dangers that whole clauses surely sound like, and that answer nothing; where nothing was
 * learned of what people say, those whose words they have.
 */
function dangersOfClauses(turn: Turn): readonly string[] {
  const { inHand, clauses, listener } = turn;
  if (listener.lexicon.isHeard)
    return dangersOf(turn, (stretch, clause) => {
      const isRest = stretch === clause && (inHand === undefined || isLeft(clause, turn));
      const least = clause.terms.length > 1 ? surely.ownClause : surely.ownWord;
      return isRest ? least : undefined;
    });
  return clauses.flatMap((clause) => {
    const found = findInterrupt([clause], listener.lexicon, dangersPossible(turn));
    return found?.isPlain === true ? [found.interrupt] : [];
  });
}

/** True where a danger is told word for word, or by a thing and what it does. */
function isSaid(interrupt: string, turn: Turn): boolean {
  const { lexicon, asHeard } = turn.listener;
  return (
    lexicon.interrupts.some(
      (one) => one.interrupt === interrupt && findPhrase(turn.heard, one.terms) >= 0,
    ) || (asHeard?.signsIn(turn, [interrupt]) ?? []).length > 0
  );
}

/** True where a danger is raised already, or the vehicle starts. */
function raises(understood: Understood): boolean {
  return understood.type === 'input' && understood.inputs.some(({ type }) => type === 'interrupt');
}

/**
 * A danger, and the figure beside it of the reading that was asked: one with decimals.
 * "12.1 and it's bubbling".
 */
export function withFigureBeside(understood: Understood, turn: Turn): Understood {
  const { hearing, inHand, tokens } = turn;
  if (understood.type !== 'input' || hearing.awaiting !== 'answer') return understood;
  if (inHand?.check.form.kind !== 'reading' || !understood.inputs.every(isDanger))
    return understood;
  const line = readLine(tokens, lineContext(turn, inHand));
  const [reading, more] = line.type === 'readings' ? line.readings : [];
  if (reading?.check !== inHand.id || more !== undefined) return understood;
  if ((reading.value.resolution ?? 1) === 1) return understood;
  const answer: Input = { type: 'answers', answers: [reading] };
  return { ...understood, inputs: [answer, ...understood.inputs] };
}

/** What was understood, and the danger that other words of the text may tell. */
export function withDoubt(understood: Understood, turn: Turn, told?: string): Understood {
  if (understood.type === 'language' || understood.talk !== undefined) return understood;
  const danger = told ?? dangerDoubted(turn);
  if (danger === undefined) return understood;
  const doubted = { interrupt: danger, label: turn.listener.lexicon.dangerName(danger) };
  return understood.type === 'input'
    ? { ...understood, doubted }
    : { type: 'offers', offers: [doubted] };
}

/** The danger that three words in a row sound like as surely as this, whatever they answer. */
function inThreeWords(turn: Turn, least: number): string | undefined {
  return dangersOf(turn, ({ terms }) => (terms.length === 3 ? least : undefined))[0];
}

/** The danger that some clause sounds like which does not answer what was asked. */
function dangerLeft(turn: Turn): string | undefined {
  // A side that bulges answers how the battery looks.
  return dangersOf(turn, (stretch, clause) =>
    isLeft(clause, turn) && isLeft(stretch, turn)
      ? leastOf(stretch, clause, { turn, least: surely })
      : undefined,
  )[0];
}

/** The danger that words of any clause may tell which do not answer what was asked. */
function dangerDoubted(turn: Turn): string | undefined {
  return dangersOf(turn, (stretch, clause) => {
    if (turn.inHand === undefined)
      return stretch === clause && clause.terms.length > fewWords ? firstPerhaps : undefined;
    return isLeft(stretch, turn) ? leastOf(stretch, clause, { turn, least: perhaps }) : undefined;
  })[0];
}

/** True for words that are no answer to what was asked; of two that they may be neither is all. */
function isLeft(text: Heard, { inHand }: Turn): boolean {
  return inHand !== undefined && shareOfAnswers(inHand.taught()(text)) < answered;
}

/** As surely as this such words of a clause must sound like a danger, if they can. */
function leastOf(
  stretch: Heard,
  clause: Heard,
  { turn, least }: { readonly turn: Turn; readonly least: typeof surely },
): number | undefined {
  const { clauses, listener } = turn;
  const { length } = stretch.terms;
  if (length < clause.terms.length || clauses.length === 1)
    return { 3: least.inThree, 4: least.inFour }[length];
  if (length > 1) return least.ownClause;
  return clauses.some((one) => isOfFigure(one, listener.lexicon)) ? least.ownWord : undefined;
}

/** The dangers that clauses without figures sound like as surely as is asked for so many words of them. */
function dangersOf(
  turn: Turn,
  leastFor: (stretch: Heard, clause: Heard) => number | undefined,
): readonly string[] {
  const { lexicon } = turn.listener;
  const possible = dangersPossible(turn);
  return turn.clauses.flatMap((tokens) => {
    if (isOfFigure(tokens, lexicon)) return [];
    const clause = hearTokens(tokens, lexicon);
    return stretchesOf(clause).flatMap((stretch) => {
      const { interrupt, share } = lexicon.alarmed()(stretch);
      const isSure =
        possible.includes(interrupt) && share >= (leastFor(stretch, clause) ?? Infinity);
      return isSure ? [interrupt] : [];
    });
  });
}

function isOfFigure(clause: readonly Token[], { numbers, readUnit }: Lexicon): boolean {
  return spellNumbers(clause, numbers).some(
    ({ kind }, at, all) => kind === 'number' || readUnit(all, at) !== undefined,
  );
}
