/**
 * Readings of the vehicle by hand: a field for each, and where they do not judge the part, what is
 * missing still.
 */
import { sayGrounds } from '@keyturn/language';
import { html, type TemplateResult } from 'lit-html';
import { leaveKey, numbered } from '../../view/key.ts';
import type { VehicleCase } from '../return/counter-return.ts';
import { saysWords } from '../vehicle/case-words.ts';
import { figures } from './figures.ts';
import { sentence } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';

/** The readings whose fields are open. */
export function readingsAsked({ back, vehicle }: InHand): readonly string[] {
  return vehicle.flow.readings[back.part];
}

/** Draws the fields. */
export function byHandCard(shown: Shown, inHand: InHand): TemplateResult {
  const { words } = shown;
  const asked = { ...inHand, ...inHand.vehicle };
  return html`${sentence('', words.byHandAsk)}
    <p class="hint">${words.byHandHint}</p>
    <div class="by-hand">
      ${figures(shown, asked, { checks: readingsAsked(inHand), isBrief: true })}
    </div>
    ${leaveKey(shown)}`;
}

/** Draws why they are not enough to judge the part by, and asks whether to go on with them. */
export function byHandOffered(shown: Shown, inHand: InHand, offered: VehicleCase): TemplateResult {
  const { words, act } = shown;
  const { back, speaker, vehicle, measured } = inHand;
  const { part } = back;
  const proof = offered.proof[part];
  const why =
    measured === undefined ? [] : sayGrounds(vehicle.speaker, { ...measured, part, proof });
  return html`${sentence(words.vehicle, saysWords(words, speaker, proof))}
    <ul class="to-do">
      ${why.map((line) => html`<li>${line}</li>`)}
    </ul>
    ${numbered([
      {
        label: words.byHandOn,
        press: () => {
          act.useCase('this-part');
        },
      },
      {
        label: words.byHandBack,
        press: () => {
          act.hand({ offered: null });
        },
      },
    ])}`;
}
