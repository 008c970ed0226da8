/**
 * What a case is ready to take, for whoever turns typed text into an input.
 */
import type { Chart } from '../chart/compile.ts';
import type { Check } from '../flow/flow.ts';
import { dayOf } from '../policy/calendar.ts';
import type { Case } from './case.ts';
import { isList } from './in-passing.ts';
import { nominalOf } from './limit-context.ts';
import { hasOnlyLamp } from './tell.ts';
import { positionOf } from './position.ts';
import { isReading, isSaid, latestAnswer } from './state.ts';

/** What a case is ready to take. */
export interface Expected {
  /** `nothing` when the case is closed. */
  readonly awaiting: 'answer' | 'confirm' | 'wait' | 'resume' | 'nothing';
  /** The check in hand. */
  readonly check: string | null;
  /** The interrupt in hand, where one is. */
  readonly interrupt?: string;
  /** The dangers told of so far, the last one last: what can be said never to have been. */
  readonly raised?: readonly string[];
  /** Every check of the flow: any may be volunteered. */
  readonly checks: Readonly<Record<string, Check>>;
  readonly interrupts: readonly string[];
  /** The checks answered so far, the last one last: what a correction can mean. */
  readonly answered: readonly string[];
  /**
   * Check to the choices that stand: what is told in passing takes the place of none of them, short
   * of a list that it adds to. Without it none stands.
   */
  readonly said?: Readonly<Record<string, readonly string[]>>;
  /** The kit known so far; a change of kit gives it whole. */
  readonly kit: readonly string[];
  /** What the vehicle's system is rated for, in volts: 12 where nothing is known of it. */
  readonly nominal: 12 | 24;
  /** True where the check in hand is asked of a test lamp. */
  readonly lamp: boolean;
  /** The day, ISO 8601, from which "yesterday" is counted; without it no day is told so. */
  readonly today?: string;
  /**
   * False where nobody can say what a day means, since no terms of a shop are known: then its bands
   * are picked. True where left out.
   */
  readonly takesDays?: boolean;
}

/**
 * Tells what a case is ready to take.
 *
 * @param at - Now, ISO 8601 with its zone; without it the time of the last that was taken.
 */
export function expected(chart: Chart, kase: Case, at: string = kase.state.at): Expected {
  const position = positionOf(kase);
  const check = 'check' in position ? position.check : null;
  const kit = kase.state.context['kit'];
  const inHand = check === null ? undefined : chart.flow.checks[check];
  return {
    awaiting: position.awaiting,
    check,
    ...('interrupt' in position ? { interrupt: position.interrupt } : {}),
    raised: kase.state.raised.filter((id) => chart.flow.interrupts[id]?.then === 'return'),
    checks: chart.flow.checks,
    interrupts: Object.keys(chart.flow.interrupts),
    answered: kase.state.order,
    said: choicesIn(chart, kase),
    nominal: nominalOf(kase.state.context),
    kit: Array.isArray(kit) ? (kit as readonly string[]) : [],
    lamp: inHand !== undefined && hasOnlyLamp(inHand, kase.state),
    today: dayOf(at, kase.state.policy?.['time-zone']),
    takesDays: kase.state.policy !== null,
  };
}

/** The choices that stand, but for lists of the context, which grow with what is told of them. */
function choicesIn({ flow }: Chart, { state }: Case): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(
    state.order.flatMap((check) => {
      const answer = latestAnswer(state, check);
      const of = flow.checks[check];
      const isGrowing = of !== undefined && isList(of);
      return isSaid(answer) && !isReading(answer) && !isGrowing ? [[check, answer] as const] : [];
    }),
  );
}
