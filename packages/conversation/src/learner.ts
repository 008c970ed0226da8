/** Learns what people are heard to say, while nobody says anything. */
export interface Learner {
  /** Learns what takes many steps, after all that was to be learned before. */
  readonly learn: (steps: Iterable<undefined>) => void;
  /** Leaves what is not learned yet, to be learned when it is asked for. */
  readonly stop: () => void;
}

/** So many steps are taken at once; as they are of a millisecond at most, nobody waits for long. */
const stepsAtOnce = 20;

/** Makes a learner; `later` goes on after a little while, and gives what calls that off. */
export function createLearner(later: (goOn: () => void) => () => void): Learner {
  const waiting: Iterator<undefined>[] = [];
  let callOff: (() => void) | undefined;
  const goOn = (): void => {
    for (let step = 0; step < stepsAtOnce; step += 1) {
      if (waiting[0]?.next().done === true) waiting.shift();
    }
    callOff = waiting.length === 0 ? undefined : later(goOn);
  };
  return {
    learn: (steps) => {
      waiting.push(steps[Symbol.iterator]());
      callOff ??= later(goOn);
    },
    stop: () => {
      callOff?.();
      callOff = undefined;
      waiting.length = 0;
    },
  };
}
