import type { FindingWeightMessage, WeightsMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';

/** How much each finding weighs for the verdict, and which fault would lead without it. */
export function renderWeights({ fault, findings }: WeightsMessage, voice: Voice): Rendered[] {
  if (findings.length === 0) return [];
  const { say, flow } = voice;
  const heading = say('weights.heading', { name: flow.fault(fault) });
  return [
    {
      kind: 'numbers',
      sections: [{ id: fault, heading, lines: findings.map((one) => line(one, voice)) }],
    },
  ];
}

function line(finding: FindingWeightMessage, { say, flow, figures }: Voice): string {
  const { decibans, check, answer, otherwise } = finding;
  const said = {
    finding:
      check === undefined || answer === undefined
        ? say('weights.known')
        : say('weights.finding', {
            name: flow.checkName(check),
            answer: flow.answerLabel(check, answer),
          }),
    weight: figures.formatQuantity({ value: Math.abs(decibans), unit: '1', resolution: 1 }),
  };
  const text = decibans > 0 ? say('weights.for', said) : say('weights.against', said);
  return otherwise === undefined
    ? text
    : say('weights.otherwise', { text, other: flow.fault(otherwise) });
}
