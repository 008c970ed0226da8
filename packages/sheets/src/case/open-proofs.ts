import { isSaid, proofOfRepair } from '@keyturn/core';
import type { Block } from '../sheet.ts';
import { fill } from '../words/sheet-words-in.ts';
import type { ToldCase } from './told-case.ts';

/** What still has to be measured before the repair counts as proved, with places to write in. */
export function openProofs({ chart, case: kase, speaker, words }: ToldCase): Block {
  const { answers } = kase.state;
  const proofs = Object.entries(proofOfRepair(chart.flow, kase.state));
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
