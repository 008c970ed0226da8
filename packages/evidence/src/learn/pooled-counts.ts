import type { AnswerCounts, Counts, FaultCounts } from './counts.ts';
import { sumTallies, type Tally } from './tally.ts';

/** Which cases are meant: those of a role, of a channel, of both, or all. */
export interface CountsGroup {
  /** Only cases of this role. */
  readonly role?: string;
  /** Only cases of this channel. */
  readonly channel?: string;
}

/** Fault to what was seen with it, over all cases of a group. */
export function pooledCounts(
  counts: Counts,
  group: CountsGroup = {},
): Readonly<Record<string, FaultCounts>> {
  const { role, channel } = group;
  let pooled: Tally = {};
  for (const [name, channels] of Object.entries(counts.groups)) {
    if (role !== undefined && role !== name) continue;
    for (const [way, faults] of Object.entries(channels)) {
      if (channel !== undefined && channel !== way) continue;
      pooled = sumTallies(pooled, faults as unknown as Tally);
    }
  }
  return pooled as unknown as Readonly<Record<string, FaultCounts>>;
}

/** What was seen of one question with one fault; nothing done where it was never answered. */
export function answerCountsOf(
  pooled: Readonly<Record<string, FaultCounts>>,
  question: string,
  fault: string,
): AnswerCounts {
  const checks = Object.hasOwn(pooled, fault) ? pooled[fault]?.checks : undefined;
  const seen = checks !== undefined && Object.hasOwn(checks, question) ? checks[question] : null;
  return seen ?? { done: 0, answers: {} };
}
