/** A danger that stands beside what was understood, in words that it leaves over. */
import type { Input } from '@keyturn/core';
import { spellNumbers } from '../numbers/numbers.ts';
import { type Heard, hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { startsNow } from './alarms.ts';
import { likeliest } from './choices.ts';
import type { Lexicon } from './lexicon.ts';
import { possibleIn } from './said-interrupt.ts';
import { type Turn, input } from './turn.ts';
import type { Understood } from './understood.ts';

/** A clause that answers what was asked as surely as this tells nothing else. */
const answered = 0.5;

/**
 * Beside an answer a clause of its own sounds like a danger as surely as this, or three words in a
 * row do, or four; where nothing was understood three words so little. Set on dangers told beside
 * answers, and on answers without any.
 */
const [ownClause, inThree, inFour, inNothingElse] = [0.85, 0.6, 0.3, 0.3];

/** One word alone must sound like it as surely as this. */
const ownWord = 0.95;

/** What was understood, and the danger that other words of the text sound like. */
export function withDangerBeside(understood: Understood, turn: Turn): Understood {
  const { hearing, inHand, listener } = turn;
  if (!listener.lexicon.isHeard || hearing.awaiting !== 'answer') return understood;
  if (understood.type === 'language' || understood.talk !== undefined) return understood;
  const isTaken = understood.type === 'input';
  // A first message tells where it stands, and water that it went through, in words of danger.
  if (isTaken && inHand === undefined) return understood;
  const danger = isTaken
    ? dangerLeft(turn)
    : dangerOf(turn, (_, length) => (length === 3 ? inNothingElse : undefined));
  if (danger === undefined) return understood;
  const raised: Input = { type: 'interrupt', interrupt: danger };
  return input(isTaken ? [...understood.inputs, raised] : [raised], danger);
}

/** The danger that some clause sounds like which does not answer what was asked. */
function dangerLeft(turn: Turn): string | undefined {
  const { inHand, clauses } = turn;
  const isLeft = (heard: Heard): boolean =>
    inHand !== undefined && likeliest(heard, inHand).share < answered;
  return dangerOf(turn, (heard, length) => {
    if (!isLeft(heard)) return undefined;
    if (length === heard.terms.length && clauses.length > 1)
      return length === 1 ? ownWord : ownClause;
    return { 3: inThree, 4: inFour }[length];
  });
}

/** The danger that a clause without figures sounds like as surely as is asked for so many words of it. */
function dangerOf(
  turn: Turn,
  leastFor: (heard: Heard, length: number) => number | undefined,
): string | undefined {
  const { lexicon } = turn.listener;
  const possible = possibleIn(turn).filter((id) => id !== startsNow);
  for (const clause of turn.clauses) {
    if (isOfFigure(clause, lexicon)) continue;
    const heard = hearTokens(clause, lexicon);
    for (const stretch of stretchesOf(heard)) {
      const least = leastFor(heard, stretch.length);
      const { interrupt, share } = lexicon.alarmed()({ terms: stretch, words: stretch });
      if (least !== undefined && share >= least && possible.includes(interrupt)) return interrupt;
    }
  }
  return undefined;
}

function isOfFigure(clause: readonly Token[], { numbers, readUnit }: Lexicon): boolean {
  return spellNumbers(clause, numbers).some(
    ({ kind }, at, all) => kind === 'number' || readUnit(all, at) !== undefined,
  );
}

/** Three words of a clause in a row, or four, and all of it. */
function stretchesOf({ terms }: Heard): readonly (readonly string[])[] {
  return [
    terms,
    ...[3, 4].flatMap((length) =>
      terms.slice(length - 1).map((_, at) => terms.slice(at, at + length)),
    ),
  ];
}
