/** Learning, in steps of some milliseconds; it comes to what was learned. */
export type Learning<Value> = Generator<undefined, Value>;

/** Something that is learned once: when it is first asked for, or ahead of that. */
export interface Lesson<Value> {
  /** What is learned; whatever is left of it to learn is learned now. */
  (): Value;
  /** Learns step by step, for as long as it is gone on with. */
  readonly ahead: () => Iterable<undefined>;
}

/** Makes a lesson of what is to be learned. Nothing is learned twice, whoever asks in between. */
export function lessonOf<Value>(learn: () => Learning<Value>): Lesson<Value> {
  let learning: Learning<Value> | undefined;
  let learned: { readonly value: Value } | undefined;
  const step = (): void => {
    learning ??= learn();
    const { done, value } = learning.next();
    if (done === true) learned = { value };
  };
  const ahead = function* (): Generator<undefined, undefined> {
    while (learned === undefined) {
      step();
      yield;
    }
  };
  const ask = (): Value => {
    while (learned === undefined) step();
    learning = undefined;
    return learned.value;
  };
  return Object.assign(ask, { ahead });
}
