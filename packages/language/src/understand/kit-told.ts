import { findPhrase, hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';

/** The context that kit is written into. */
const context = 'kit';

/** What is heard of kit is as likely as this to be about it: leads by which it was boosted are not. */
const leastShare = 0.3;

type Clause = readonly Token[];

/** True for the check that asks what is at hand. */
export function isOfKit(check: CheckPhrases | undefined): boolean {
  return check?.check.form.kind === 'choice' && check.check.writes === context;
}

/**
 * What each clause says is at hand: kit by its name, where somebody has it, or beside other kit:
 * "I've got a voltmeter and a charger". What is only spoken of is not: "the meter says", "no leads".
 */
export function kitTold(
  clauses: readonly Clause[],
  lexicon: Lexicon,
): readonly (readonly string[])[] {
  const named = clauses.map((clause) => kitNamed(clause, lexicon));
  const isHaving = clauses.map((clause) => saysHaving(clause, lexicon));
  return named.map((ids, at) => {
    if (ids.length === 0) return [];
    let from = at;
    while ((named[from - 1]?.length ?? 0) > 0) from -= 1;
    let to = at + 1;
    while ((named[to]?.length ?? 0) > 0) to += 1;
    const isRun = new Set(named.slice(from, to).flat()).size > 1;
    return isRun || isHaving.slice(from, to).includes(true) ? ids : [];
  });
}

/** True where a clause says that something is at hand. */
export function saysHaving(clause: Clause, lexicon: Lexicon): boolean {
  const heard = hearTokens(clause, lexicon);
  return lexicon.having.some((phrase) => findPhrase(heard, phrase) >= 0);
}

function kitNamed(clause: Clause, lexicon: Lexicon): readonly string[] {
  if (clause.some(({ kind }) => kind === 'number')) return [];
  const heard = hearTokens(clause, lexicon);
  const ids = lexicon.kit
    .filter(({ said }) => said.some((phrase) => findPhrase(heard, phrase) >= 0))
    .map(({ id }) => id);
  if (ids.length === 0 || !lexicon.isHeard) return ids;
  const check = [...lexicon.checks.values()].find(isOfKit);
  const share = check === undefined ? undefined : lexicon.subject()(heard).shareOf(check.id);
  return (share ?? 1) < leastShare ? [] : ids;
}
