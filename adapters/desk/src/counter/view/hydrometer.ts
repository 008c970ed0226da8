/**
 * A battery with caps that is low after its charge: its cells tell at once what a second charge tells
 * in hours. A shop that names no hydrometer is asked whether one is at hand.
 */
import { positionOf } from '@keyturn/core';
import { html, type TemplateResult } from 'lit-html';
import { numbered } from '../../view/key.ts';
import { sentence } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';
import { taken } from './taken.ts';

/** The check of its cells. */
export const cells = 'cell-spread';

/** The tool that reads them. */
const tool = 'hydrometer';

/** True where it would be charged once more and nobody has said whether a hydrometer is at hand. */
export function isHydrometerAsked(
  { hand }: Pick<Shown, 'hand'>,
  { back, laid }: Pick<InHand, 'back' | 'laid'>,
): boolean {
  const { state } = back.sitting.case;
  return (
    hand.asking === null &&
    positionOf(back.sitting.case).awaiting === 'answer' &&
    state.decision?.reason === 'charge-again' &&
    Array.isArray(state.context.kit) &&
    laid.kitMissing.includes(tool)
  );
}

/** Draws the question. With a hydrometer what the cells read is asked for next. */
export function hydrometer(shown: Shown, inHand: InHand): TemplateResult {
  const { words, act } = shown;
  const { kit } = inHand.back.sitting.case.state.context;
  const has = Array.isArray(kit) ? (kit as readonly string[]) : [];
  return html`${taken(shown, inHand)} ${sentence('', words.hydrometerAsk)}
  ${numbered([
    {
      label: words.hydrometerYes,
      press: () => {
        act.take({ type: 'context', set: { kit: [...has, tool] } });
      },
    },
    {
      label: words.hydrometerNo,
      press: () => {
        act.take({ type: 'unanswered', check: cells, talk: 'cannot' });
      },
    },
  ])}`;
}
