/**
 * What was taken of the group in hand, in one line; where nothing was, the last thing that was taken.
 */
import type { StripLine } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand } from './shown.ts';

/** Draws it. */
export function taken(
  { laid, flow, speaker }: InHand,
  check: string,
): TemplateResult | typeof nothing {
  const { findings } = laid.strip;
  const group = flow.stages.find(({ checks }) => checks.includes(check))?.checks ?? [];
  const here = findings.filter((line) => group.includes(line.check));
  const lines = here.length > 0 ? here : findings.slice(-1);
  if (lines.length === 0) return nothing;
  return html`<ul class="taken">
    ${lines.map((line) => html`<li>${foundWords(line, speaker)}</li>`)}
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
