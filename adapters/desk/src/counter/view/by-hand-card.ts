/**
 * Readings of the vehicle by hand: a field for each, and then what they say of the part and why, with
 * the question whether it was in the vehicle.
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

/** Draws what they say, and asks whether the part was in the vehicle then. */
export function byHandOffered(shown: Shown, inHand: InHand, offered: VehicleCase): TemplateResult {
  const { words, act } = shown;
  const { back, speaker, vehicle, measured } = inHand;
  const { part } = back;
  const proof = offered.proof[part];
  const says = saysWords(words, speaker, proof);
  const why =
    measured === undefined ? [] : sayGrounds(vehicle.speaker, { ...measured, part, proof });
  return html`${sentence(words.vehicle, words.byHandPart)}
    <ul class="to-do">
      <li><b>${says}</b></li>
      ${why.map((line) => html`<li>${line}</li>`)}
    </ul>
    ${numbered([
      {
        label: words.yes,
        press: () => {
          act.useCase('this-part');
        },
      },
      {
        label: words.byHandOther,
        press: () => {
          act.useCase('other-part');
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
