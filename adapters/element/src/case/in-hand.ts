import { positionOf, repeat, type Case, type Chart, type Message } from '@keyturn/core';

/** What a case waits for; of an interrupt, what it is about, which is said only once otherwise. */
export function messagesInHand(chart: Chart, kase: Case): readonly Message[] {
  const position = positionOf(kase);
  if (position.awaiting !== 'resume') return repeat(chart, kase);
  const interrupt = chart.flow.interrupts[position.interrupt];
  if (interrupt === undefined) return [];
  const { id, word, then } = interrupt;
  return [{ kind: 'interrupt', interrupt: id, word, then }];
}
