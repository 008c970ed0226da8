import { positionOf, repeat, type Case, type Chart, type Message } from '@keyturn/core';

/**
 * What a case waits for, without the verdict and what is said with it, which stands in the strip; of
 * an interrupt, what it is about, which is said only once otherwise.
 */
export function messagesInHand(chart: Chart, kase: Case): readonly Message[] {
  const position = positionOf(kase);
  if (position.awaiting !== 'resume') {
    const messages = repeat(chart, kase);
    return messages.slice(messages.findLastIndex(({ kind }) => kind === 'verdict') + 1);
  }
  const interrupt = chart.flow.interrupts[position.interrupt];
  if (interrupt === undefined) return [];
  const { id, word, then } = interrupt;
  return [{ kind: 'interrupt', interrupt: id, word, then }];
}
