/**
 * What was taken last, above what is asked now: whoever has pressed a wrong key sees it there.
 */
import type { StripLine } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand, Shown } from './shown.ts';

/** Draws all that the last input told; of a receipt also that the shop’s list does not have it. */
export function taken(
  { words, receiptUnlisted }: Shown,
  { laid, speaker }: InHand,
): TemplateResult | typeof nothing {
  const { events } = laid.sitting;
  const answered = events.filter(({ type }) => type === 'answered' || type === 'corrected');
  const at = answered.at(-1)?.at;
  const last = answered.flatMap((event) =>
    'check' in event && event.at === at ? event.check : [],
  );
  const lines = laid.strip.findings.filter(({ check }) => last.includes(check));
  if (lines.length === 0) return nothing;
  return html`<ul class="taken" aria-label=${words.takenNow}>
    <li>${words.takenNow}</li>
    ${lines.map((line) => html`<li>${foundWords(line, speaker)}</li>`)}
    ${
      receiptUnlisted !== undefined && last.includes('sale-proof')
        ? html`<li class="unlisted">${receiptUnlisted}</li>`
        : nothing
    }
  </ul>`;
}

/** What was found, in words without its scale. */
export function foundWords({ check, message }: StripLine, speaker: Speaker): string {
  if (message.kind === 'reading') {
    return `${speaker.checkName(check)}: ${speaker.formatQuantity(message.quantity)}`;
  }
  const [said] = speaker.render([message]);
  return said?.kind === 'text' ? said.text : '';
}
