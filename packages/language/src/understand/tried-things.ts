import type { AnswerInput } from '@keyturn/core';
import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { likeliest } from './choices.ts';
import { isOfPast, joinClauses, namedAnswer, triedIn } from './named-things.ts';
import { onceFor } from '../once.ts';
import type { Turn, Untried } from './turn.ts';
import { volunteered } from './volunteered.ts';

/**
 * A first message without what it says of a thing that is to be tried: that the relay is silent is
 * no word for how it starts, and is told where it is asked. What came of trying it is told.
 */
export const withoutTrials: (turn: Turn) => Untried = onceFor((turn) => {
  const { lexicon } = turn.listener;
  if (turn.inHand !== undefined || !lexicon.isHeard) return { turn, tried: [] };
  const tried: AnswerInput[] = [];
  let outcomeAt = -1;
  const clauses = turn.clauses.filter((clause, at) => {
    if (at === outcomeAt) return false;
    const next = turn.clauses[at + 1];
    const outcome = triedIn([clause], lexicon);
    const both =
      outcome === undefined && next !== undefined ? triedIn([clause, next], lexicon) : undefined;
    const joined =
      both !== undefined && next !== undefined && isBare(next, turn) ? both : undefined;
    const named = outcome ?? joined ?? namedAnswer([clause], { inHand: undefined, lexicon });
    const trial = lexicon.checks.get(named?.check ?? '');
    if (trial === undefined || trial.isToldUnasked) return true;
    const heard = hearTokens(clause, lexicon);
    const [told] = volunteered(heard, turn);
    const subject = lexicon.subject()(heard);
    const share = subject.shareOf(told?.check.id ?? '') ?? 0;
    const isOther =
      told !== undefined &&
      told.check !== trial &&
      share * likeliest(heard, told.check).share > likeliest(heard, trial).share;
    const came = outcome ?? joined;
    if (isOther || came === undefined) return isOther || told === undefined || told.check === trial;
    // "Changed the starter" is work before, and no relay that was changed for another.
    const before = lexicon.checks.get(subject.check);
    const isWork = before !== undefined && isOfPast(before);
    if (isWork && subject.share * likeliest(heard, before).share >= surelyBefore) return true;
    if (joined !== undefined) outcomeAt = at + 1;
    tried.push(came);
    return false;
  });
  if (clauses.length === turn.clauses.length) return { turn, tried };
  const tokens = joinClauses(clauses);
  return { turn: { ...turn, clauses, tokens, heard: hearTokens(tokens, lexicon) }, tried };
});

/** As sure as this a clause tells what was done before. */
const surelyBefore = 0.5;

/** True for a clause that tells nothing of its own: "no change". */
function isBare(clause: readonly Token[], turn: Turn): boolean {
  const { lexicon } = turn.listener;
  return (
    volunteered(hearTokens(clause, lexicon), turn).length === 0 &&
    namedAnswer([clause], { inHand: undefined, lexicon }) === undefined
  );
}
