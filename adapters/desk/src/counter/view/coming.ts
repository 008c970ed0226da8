/**
 * What is asked next on the same screen: it is read with the question in hand, and whoever points
 * instead of pressing numbers answers it at once.
 */
import type { AskMessage } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import type { InHand, Shown } from './shown.ts';

/**
 * Draws the questions that come. A list and the figures of a bench have a screen of their own, and
 * before a caution is confirmed there is nothing to answer.
 */
export function coming(
  { act }: Shown,
  { ahead, speaker, laid }: InHand,
): TemplateResult | typeof nothing {
  const isAsked = laid.inHand.some(({ kind }) => kind === 'ask');
  const questions = isAsked ? speaker.render(ahead.filter(isPlain)) : [];
  if (questions.length === 0) return nothing;
  return html`<ol class="coming">
    ${questions.map((one) => {
      if (one.kind !== 'question') return nothing;
      const { check, text, entry } = one;
      const options = entry === 'choice' ? one.options : [];
      return html`<li>
        <span class="what">${text}</span>
        ${options.map(({ id, label }) =>
          keyView({
            label,
            isSmall: true,
            press: () => {
              act.answer(check, [id]);
            },
          }),
        )}
      </li>`;
    })}
  </ol>`;
}

function isPlain({ form, beside }: AskMessage): boolean {
  return form !== 'reading' && form !== 'choices' && Object.keys(beside?.usual ?? {}).length < 2;
}
