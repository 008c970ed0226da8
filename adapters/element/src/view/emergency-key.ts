import { html, type TemplateResult } from 'lit-html';
import { fill, type Shown } from './shown.ts';

/**
 * The emergency number, where the page around names no other by `emergency`. Telephones of the GSM and
 * its successors take 112 for one in every network, without a card too (3GPP TS 22.101, from memory).
 */
export const usualEmergency = '112';

/** Calls the emergency number: nobody has to leave the page and type it. */
export function emergencyKey({ texts, emergency }: Shown): TemplateResult {
  return html`<a class="key emergency" href=${`tel:${emergency}`}>
    <span class="label">${fill(texts.emergency, emergency)}</span>
  </a>`;
}
