import { isSaid } from '@keyturn/core';
import type { Block } from '../sheet.ts';
import { fill } from '../words/sheet-words-in.ts';
import type { ToldCase } from './told-case.ts';

/** What still has to be measured before the repair counts as proved, with places to write in. */
export function openProofs({ chart, case: kase, speaker, words, strip }: ToldCase): Block {
  const { flow } = chart;
  const { raised, answers } = kase.state;
  // That it runs meanwhile is proved otherwise than a repair.
  const started = raised.map((id) => flow.interrupts[id]).find((one) => one?.then === 'prove');
  const fault = flow.faults[strip.verdict?.fault ?? ''];
  const proofs = Object.entries(started?.prove ?? fault?.prove ?? {});
  return {
    kind: 'fields',
    id: 'proof-open',
    heading: words.proofOpen,
    fields: proofs
      .filter(([check]) => !isSaid(answers[check]?.at(-1)))
      .map(([check, good]) => ({
        id: check,
        label: fill(
          words.proofGood,
          {
            name: speaker.checkName(check),
            answer: good.map((answer) => speaker.answerLabel(check, answer)).join(', '),
          },
          speaker.direction,
        ),
      })),
  };
}
