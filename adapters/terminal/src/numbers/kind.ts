import type { Source } from '@keyturn/electrics';
import type { Place, Question } from './question.ts';

/** Under which heading the help lists a kind of question. */
export type Group =
  | 'Cables'
  | 'Bolts and studs'
  | 'Battery'
  | 'Charging and drain'
  | 'Limits and readings'
  | 'The engine and its starter'
  | 'Fuses, relays, terminals'
  | 'Units';

/** An answer in plain words, each line a sentence or a figure. */
export type Answer = {
  readonly type: 'answer';
  /** The answer itself first, then what belongs to it. */
  readonly lines: readonly string[];
  /** What was taken for anything that the question does not say. */
  readonly assumed?: readonly string[];
  /** What must be said with it. */
  readonly cautions?: readonly string[];
  readonly sources: readonly Source[];
};

/** Why a question has no answer, and where in it that lies. */
export type Problem = {
  readonly type: 'problem';
  readonly reasons: readonly string[];
  readonly place?: Place | undefined;
};

/** One kind of question. `read` gives undefined for a question of another kind. */
export type Kind = {
  readonly group: Group;
  /** The first is listed in the help. */
  readonly examples: readonly [string, ...string[]];
  readonly read: (question: Question) => Answer | Problem | undefined;
};

/** A problem with the place of it in the question, where it has one. */
export function problem(reason: string, place?: Place): Problem {
  return { type: 'problem', reasons: [reason], place };
}

function isProblem(part: object): part is Problem {
  return 'reasons' in part;
}

/** All that keeps a question from being answered, as one problem; undefined where nothing does. */
export function joinProblems(...parts: readonly object[]): Problem | undefined {
  const problems = parts.filter(isProblem);
  if (problems.length === 0) return undefined;
  return {
    type: 'problem',
    reasons: problems.flatMap(({ reasons }) => reasons),
    place: problems.find(({ place }) => place !== undefined)?.place,
  };
}
