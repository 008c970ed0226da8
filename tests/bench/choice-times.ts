/**
 * How long choices take, against a bare loop timed beside them.
 */
import { planNext, type DiagnosisProblem, type DiagnosisState, type Plan } from '@keyturn/evidence';
import { median } from './print-figures.ts';

/** Choices between two looks at how fast the machine is at the moment. */
const betweenLooks = 50;

/**
 * So many of the slowest are timed again, each so often, and the least time counts: the same choice
 * takes the same work every time, and what takes longer is the machine being busy.
 */
const slowest = 25;
const again = 5;

interface Timed {
  readonly problem: DiagnosisProblem;
  readonly state: DiagnosisState;
  readonly ms: number;
  /** How long the bare loop took about then, in milliseconds. */
  readonly bareMs: number;
}

/** What was measured: medians and worst, in milliseconds and in bare loops. */
export interface ChoiceTimes {
  readonly count: number;
  readonly medianMs: number;
  readonly medianLoops: number;
  readonly worstMs: number;
  readonly worstLoops: number;
}

/** Times choices as they are asked for. */
export function choiceClock(bareLoop: () => number): {
  readonly choose: (problem: DiagnosisProblem, state: DiagnosisState) => Plan;
  readonly read: () => ChoiceTimes;
} {
  const timed: Timed[] = [];
  let bareMs = bareLoop();
  return {
    choose: (problem, state) => {
      if (timed.length % betweenLooks === 0) bareMs = bareLoop();
      const begin = performance.now();
      const plan = planNext(problem, state);
      timed.push({ problem, state, ms: performance.now() - begin, bareMs });
      return plan;
    },
    read: () => {
      const loops = ({ ms, bareMs: bare }: Timed): number => ms / bare;
      const worst = timed
        .toSorted((one, other) => loops(other) - loops(one))
        .slice(0, slowest)
        .map((one) => timedAgain(one, bareLoop))
        .reduce((one, other) => (loops(other) > loops(one) ? other : one));
      return {
        count: timed.length,
        medianMs: median(timed.map(({ ms }) => ms)),
        medianLoops: median(timed.map(loops)),
        worstMs: worst.ms,
        worstLoops: loops(worst),
      };
    },
  };
}

function timedAgain({ problem, state }: Timed, bareLoop: () => number): Timed {
  const bare: number[] = [];
  const times = Array.from({ length: again }, () => {
    bare.push(bareLoop());
    const begin = performance.now();
    planNext(problem, state);
    return performance.now() - begin;
  });
  return { problem, state, ms: Math.min(...times), bareMs: Math.min(...bare) };
}
