/**
 * What was taken last, above what is asked now: whoever has pressed a wrong key sees it there.
 */
import { looksLikeDay, type StripLine } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { listed } from '../../wording.ts';
import type { InHand, Shown } from './shown.ts';

/**
 * Draws all that the last input told, as its keys say it: what each was asked of stands beside. Of a
 * receipt also that the shop’s list does not have it.
 */
export function taken(
  { words, locale, receiptUnlisted }: Shown,
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
    ${lines.map((line) => html`<li>${answerWords(line, { speaker, locale })}</li>`)}
    ${
      receiptUnlisted !== undefined && last.includes('sale-proof')
        ? html`<li class="unlisted">${receiptUnlisted}</li>`
        : nothing
    }
  </ul>`;
}

/** What was answered, without what was asked. */
function answerWords(line: StripLine, { speaker, locale }: AnswerVoice): string {
  const { check, message } = line;
  if (message.kind === 'reading') return speaker.formatQuantity(message.quantity);
  const said = message.answer.map((id) =>
    looksLikeDay(id) ? speaker.formatDay(id) : speaker.answerLabel(check, id),
  );
  return said.length === 0 ? foundWords(line, speaker) : listed(said, locale);
}

interface AnswerVoice {
  readonly speaker: Speaker;
  /** BCP 47 tag. */
  readonly locale: string;
}

/** What was found, in words without its scale. */
export function foundWords({ check, message }: StripLine, speaker: Speaker): string {
  if (message.kind === 'reading') {
    return `${speaker.checkName(check)}: ${speaker.formatQuantity(message.quantity)}`;
  }
  const [said] = speaker.render([message]);
  return said?.kind === 'text' ? said.text : '';
}
