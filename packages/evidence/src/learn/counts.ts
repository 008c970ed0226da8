import { markOf, notAnId, type FlowKey, type Outcome } from './outcome.ts';
import { sumTallies, withEntry, type Tally } from './tally.ts';

/** The version of the form of counts. Counts of another version are refused, never guessed at. */
export const countsFormat = 1;

/** What was seen of one question in cases with one confirmed cause. */
export interface AnswerCounts {
  /** Answer to the number of cases in which it held; above 0. */
  readonly answers: Readonly<Record<string, number>>;
  /** In how many of the cases it was answered; above 0. */
  readonly done: number;
}

/** What was seen in cases with one confirmed cause. */
export interface FaultCounts {
  /** Question to what was seen of it. */
  readonly checks: Readonly<Record<string, AnswerCounts>>;
  /** How many such cases; above 0. */
  readonly confirmed: number;
}

/**
 * What confirmed outcomes add up to: plain JSON, whole numbers of cases, its names in order. They
 * are a selection, cases of which someone learned the cause; whoever shows them shows how many.
 */
export interface Counts {
  /** The version of this form. */
  readonly format: typeof countsFormat;
  /** The flow and version that all of them were found with. */
  readonly flow: FlowKey;
  /** The opaque id of every outcome counted, to a mark of what it said. */
  readonly outcomes: Readonly<Record<string, string>>;
  /** Role, channel, fault. */
  readonly groups: Readonly<
    Record<string, Readonly<Record<string, Readonly<Record<string, FaultCounts>>>>>
  >;
}

/**
 * Why counts were left as they were.
 *
 * - `other-flow`: what was given belongs to another flow or version.
 * - `already-counted`: an outcome of that id is counted.
 * - `not-counted`: no outcome of that id is counted, or one that said something else.
 * - `not-an-id`: a part of the outcome is no id, and might be something personal.
 */
export interface CountsRefusal {
  readonly type: 'refused';
  readonly code: 'other-flow' | 'already-counted' | 'not-counted' | 'not-an-id';
  /** What was wrong, with the names of both sides. */
  readonly message: string;
}

/** Counts, or why they were left as they were. */
export type CountsResult = { readonly type: 'counts'; readonly counts: Counts } | CountsRefusal;

/** Counts of a flow with nothing counted yet. */
export function emptyCounts({ id, version }: FlowKey): Counts {
  return { format: countsFormat, flow: { id, version }, outcomes: {}, groups: {} };
}

/** The refusal of counts for another flow or version, naming both; nothing where they fit. */
export function refuseOtherFlow(counts: Counts, flow: FlowKey): CountsRefusal | undefined {
  if (counts.flow.id === flow.id && counts.flow.version === flow.version) return undefined;
  return refused(
    'other-flow',
    `the counts are of ${counts.flow.id} ${counts.flow.version}, not of ${flow.id} ${flow.version}`,
  );
}

/** Counts one confirmed outcome. No side effects. */
export function addOutcome(counts: Counts, outcome: Outcome): CountsResult {
  const other = refuseOtherFlow(counts, outcome.flow);
  if (other !== undefined) return other;
  const odd = notAnId(outcome);
  if (odd !== undefined) return refused('not-an-id', `${JSON.stringify(odd)} is not an id`);
  if (Object.hasOwn(counts.outcomes, outcome.id)) {
    return refused('already-counted', `the outcome ${outcome.id} is counted already`);
  }
  return counted(counts, outcome, 1);
}

/** Takes one outcome back, exactly as if it had never been added. No side effects. */
export function removeOutcome(counts: Counts, outcome: Outcome): CountsResult {
  const other = refuseOtherFlow(counts, outcome.flow);
  if (other !== undefined) return other;
  const mark = Object.hasOwn(counts.outcomes, outcome.id) ? counts.outcomes[outcome.id] : undefined;
  if (mark === undefined) {
    return refused('not-counted', `the outcome ${outcome.id} was never counted`);
  }
  if (mark !== markOf(outcome)) {
    return refused('not-counted', `the outcome ${outcome.id} was counted as something else`);
  }
  return counted(counts, outcome, -1);
}

/** Adds counts to counts of the same flow; refused where an outcome would be counted twice. */
export function mergeCounts(counts: Counts, added: Counts): CountsResult {
  const other = refuseOtherFlow(counts, added.flow);
  if (other !== undefined) return other;
  const twice = Object.keys(added.outcomes).filter((id) => Object.hasOwn(counts.outcomes, id));
  if (twice.length > 0) {
    const all = Object.keys(added.outcomes).length;
    return refused(
      'already-counted',
      `counted already: ${twice.length} of the ${all} outcomes, the first is ${twice[0] ?? ''}`,
    );
  }
  const outcomes = { ...counts.outcomes, ...added.outcomes };
  return {
    type: 'counts',
    counts: {
      ...emptyCounts(counts.flow),
      outcomes: withEntry(outcomes, '', () => undefined),
      groups: sumTallies(
        counts.groups as unknown as Tally,
        added.groups as unknown as Tally,
      ) as unknown as Counts['groups'],
    },
  };
}

function counted(counts: Counts, outcome: Outcome, by: 1 | -1): CountsResult {
  const { id, role, channel, cause } = outcome;
  const outcomes = withEntry(counts.outcomes, id, () => (by === 1 ? markOf(outcome) : undefined));
  const groups = withEntry(counts.groups, role, (channels = {}) =>
    unlessEmpty(
      withEntry(channels, channel, (faults = {}) =>
        unlessEmpty(withEntry(faults, cause, (fault) => faultCounts(fault, outcome, by))),
      ),
    ),
  );
  return { type: 'counts', counts: { ...counts, outcomes, groups } };
}

function faultCounts(
  before: FaultCounts = { confirmed: 0, checks: {} },
  { answers }: Outcome,
  by: 1 | -1,
): FaultCounts | undefined {
  const confirmed = before.confirmed + by;
  if (confirmed === 0) return undefined;
  const checks = Object.entries(answers).reduce(
    (all, [question, given]) =>
      withEntry(all, question, (one = { done: 0, answers: {} }) => {
        const done = one.done + by;
        return done === 0 ? undefined : { answers: answerCounts(one.answers, given, by), done };
      }),
    before.checks,
  );
  return { checks, confirmed };
}

function answerCounts(
  before: AnswerCounts['answers'],
  given: readonly string[],
  by: 1 | -1,
): AnswerCounts['answers'] {
  return [...new Set(given)].reduce(
    (all, answer) => withEntry(all, answer, (count = 0) => count + by || undefined),
    before,
  );
}

function unlessEmpty<Value extends object>(record: Value): Value | undefined {
  return Object.keys(record).length === 0 ? undefined : record;
}

function refused(code: CountsRefusal['code'], message: string): CountsRefusal {
  return { type: 'refused', code, message };
}
