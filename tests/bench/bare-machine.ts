/**
 * A plain XState machine to measure against: as many states as asked for, and nothing of the trade.
 */
import { assign, createMachine, type AnyStateMachine } from 'xstate';

const context = { a: 0, b: 0, c: 0, d: 0, e: 0, f: 0, g: 0, h: 0 };

/** Compound states of ten leaves; a leaf has three guarded branches and a step back. */
export function bareMachine(count: number): AnyStateMachine {
  const stages = Math.max(1, Math.round(count / 11));
  const leaves = stages * 10;
  const target = (index: number): string => {
    const place = ((index % leaves) + leaves) % leaves;
    return `#stage${String(Math.floor(place / 10))}.leaf${String(place % 10)}`;
  };
  const record = assign(({ event }) => {
    const { value } = event as unknown as { readonly value: number };
    return { a: value, b: value + 1, c: value + 2, d: value + 3 };
  });
  const below = (limit: number) => ({
    guard: ({ event }: { event: unknown }) => (event as { value: number }).value < limit,
  });
  const leaf = (index: number) => ({
    on: {
      ANSWER: [
        { ...below(3), target: target(index + 1), actions: record },
        { ...below(6), target: target(index + 2), actions: record },
        { target: target(index + 3), actions: record },
      ],
      BACK: { target: target(index - 1) },
    },
  });
  return createMachine({
    context,
    initial: 'stage0',
    states: Object.fromEntries(
      Array.from({ length: stages }, (_, stage) => [
        `stage${String(stage)}`,
        {
          id: `stage${String(stage)}`,
          initial: 'leaf0',
          states: Object.fromEntries(
            Array.from({ length: 10 }, (_leaf, index) => [
              `leaf${String(index)}`,
              leaf(stage * 10 + index),
            ]),
          ),
        },
      ]),
    ),
  } as never);
}

/** How many states a machine has. */
export function countStates(machine: AnyStateMachine): number {
  const count = (node: AnyStateMachine['root']): number =>
    1 + Object.values(node.states).reduce((sum, child) => sum + count(child), 0);
  return count(machine.root);
}
