/**
 * What is asked next: it is read with the question in hand, and answered when its turn comes.
 */
import type { AskMessage } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand, Shown } from './shown.ts';

/**
 * Draws the questions that come. A list and the figures of a bench have a screen of their own, and
 * before a caution is confirmed there is nothing to answer.
 */
export function coming(
  { words }: Shown,
  { ahead, speaker, laid }: InHand,
): TemplateResult | typeof nothing {
  const isAsked = laid.inHand.some(({ kind }) => kind === 'ask');
  const questions = isAsked ? speaker.render(ahead.filter(isPlain)) : [];
  if (questions.length === 0) return nothing;
  return html`<div class="coming">
    <p class="tag">${words.nextAsked}</p>
    <ol>
      ${questions.map((one) =>
        one.kind === 'question' ? html`<li><span class="what">${one.text}</span></li>` : nothing,
      )}
    </ol>
  </div>`;
}

function isPlain({ form, beside }: AskMessage): boolean {
  return form !== 'reading' && form !== 'choices' && Object.keys(beside?.usual ?? {}).length < 2;
}
