/**
 * A case of a vehicle that was given: whether it is this customer's is for the clerk to say.
 */
import { soldNotBefore } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { numbered } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import type { VehicleCase } from '../return/counter-return.ts';
import { saysWords } from '../vehicle/case-words.ts';
import { otherClaim } from '../vehicle/fit-of-case.ts';
import { caseLines } from './ledger.ts';
import type { InHand, Shown } from './shown.ts';
import { sentence } from './sentence.ts';

/** Draws what the case tells, and asks. */
export function caseCard(shown: Shown, inHand: InHand, offered: VehicleCase): TemplateResult {
  const { words, act } = shown;
  const { back, speaker, flow } = inHand;
  const sold = soldNotBefore(flow, back.sitting.case.state, offered.at);
  const claim = otherClaim(offered, back);
  return html`${sentence(words.vehicle, words.caseAsk)}
    <ul class="to-do">
      ${caseLines(shown, offered, back.part).map((line) => html`<li>${line}</li>`)}
      ${
        claim === undefined
          ? nothing
          : html`<li>
              ${fill(words.caseOtherClaim, { what: speaker.answerLabel('claim', claim) })}
            </li>`
      }
      ${
        sold === undefined
          ? html`<li>${saysWords(words, speaker, offered.proof[back.part])}</li>`
          : nothing
      }
      ${sold === undefined ? nothing : html`<li>${fill(words.caseBefore, { sold })}</li>`}
    </ul>
    ${numbered([
      {
        label: sold === undefined ? words.caseYes : words.caseYesBefore,
        press: () => {
          act.useCase('this-part');
        },
      },
      ...(sold === undefined
        ? [
            {
              label: words.caseOtherPart,
              press: () => {
                act.useCase('other-part');
              },
            },
          ]
        : []),
      {
        label: words.caseNo,
        press: () => {
          act.useCase('other-vehicle');
        },
      },
    ])}`;
}
