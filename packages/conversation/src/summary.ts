/**
 * What was found, on one page that can be passed on as it is: the verdict or decision, what should
 * come and what it brings, and every answer.
 */
import { isReading, isSaid, type Case } from '@keyturn/core';
import type { Teller } from '@keyturn/language';
import { listed, titled, type Draft } from './parts.ts';

/** The summary of a case. It holds what was answered and nothing personal. */
export function summaryDraft({ state }: Case, speaker: Teller): Draft {
  const end = state.verdict ?? state.decision;
  // Nobody has to come any more to a vehicle that is proved to be repaired.
  const isOpen = state.outcome !== 'proved-repaired';
  const found = (end === null ? [] : speaker.render([end])).flatMap((one) =>
    one.kind === 'verdict'
      ? [
          one.title,
          one.strength,
          // What must not be done is as much for whoever comes as what to bring.
          ...one.sections.flatMap(({ id, lines }) =>
            id === 'stops' || (id === 'send' && isOpen) ? lines : [],
          ),
        ]
      : [],
  );
  const known = state.order.flatMap((check): readonly string[] => {
    const answer = state.answers[check]?.at(-1);
    if (isReading(answer)) {
      return [`${speaker.checkName(check)}: ${speaker.formatQuantity(answer)}.`];
    }
    const said = isSaid(answer) ? answer : [];
    return speaker
      .render([{ kind: 'noted', check, answer: said }])
      .flatMap((one) => (one.kind === 'text' ? [one.text] : []));
  });
  return {
    kind: 'summary',
    lines: titled(speaker.key('summary'), [...found, ...known.map(listed)]),
    taps: [],
  };
}
