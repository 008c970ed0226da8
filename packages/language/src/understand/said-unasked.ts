import { fitOptions } from './choices.ts';
import { type Heard, hear } from '../typed/heard.ts';
import { type FoundAnswer, offersOf } from './found-answer.ts';
import { type Turn, answers, mostClauses, optionsInHand } from './turn.ts';
import type { Understood } from './understood.ts';

/** The least that an answer to a question that was not asked must fit. */
const sureFit = 0.85;

/** From here on a text is one answer, commas and all. */
const wholeFit = 0.95;

/** Answers to other checks that a text says plainly, best first; `among` limits the checks. */
export function volunteered(heard: Heard, turn: Turn, among?: readonly string[]): FoundAnswer[] {
  const { lexicon } = turn.listener;
  const found = [...lexicon.checks.values()]
    .filter(({ check, id }) => check.form.kind === 'choice' && (among?.includes(id) ?? true))
    .flatMap((check): FoundAnswer[] => {
      const [fit, second] = fitOptions(heard, check.options);
      if (fit === undefined || fit.score < sureFit || fit.score === second?.score) return [];
      return [{ check, fit }];
    })
    .sort((one, other) => other.fit.score - one.fit.score);
  return found.filter(({ fit }) => fit.score === found[0]?.fit.score);
}

/** What was said without being asked: each clause must plainly be one answer of one check. */
export function readVolunteered(turn: Turn): Understood | undefined {
  const { lexicon } = turn.listener;
  const check = optionsInHand(turn);
  // What denies an answer in hand is about the question in hand.
  if (check !== undefined && fitOptions(turn.heard, check.options).some(({ score }) => score < 0)) {
    return undefined;
  }
  const whole = volunteered(turn.heard, turn);
  const parts = turn.clauses
    .slice(0, mostClauses)
    .map((clause) =>
      volunteered(hear(lexicon.reader.fromTokens(clause), lexicon.vocabulary), turn),
    );
  const isWhole =
    (whole[0]?.fit.score ?? 0) >= wholeFit || parts.some(({ length }) => length === 0);
  const found = isWhole ? [whole] : parts;
  if (found.some((those) => those.length === 0)) return undefined;
  const [several] = found.filter((those) => those.length > 1);
  if (several !== undefined) return offersOf(several.map(({ check, fit }) => ({ check, fit })));
  const given = new Map<string, string[]>();
  for (const { check, fit } of found.flat()) {
    given.set(check.id, [...new Set([...(given.get(check.id) ?? []), fit.id])]);
  }
  return answers([...given].map(([check, value]) => ({ check, value })));
}
