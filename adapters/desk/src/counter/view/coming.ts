/**
 * What is asked next on the same screen: it is read with the question in hand, and whoever points
 * instead of pressing numbers answers it at once.
 */
import type { AskMessage } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import type { InHand, Shown } from './shown.ts';

/** Draws the questions that come, by their names; where nothing has to be confirmed first, with their answers. */
export function coming(
  { act }: Shown,
  { ahead, speaker, laid }: InHand,
): TemplateResult | typeof nothing {
  if (ahead.length === 0) return nothing;
  const isAsked = laid.inHand.some(({ kind }) => kind === 'ask');
  return html`<ol class="coming">
    ${ahead.map((ask) => {
      const isChosen = isAsked && ask.form === 'choice' && !isList(ask);
      const [question] = isChosen ? speaker.render([ask]) : [];
      const options = question?.kind === 'question' ? question.options : [];
      return html`<li>
        <span class="what">${namesOf(ask).map(speaker.checkName).join(' · ')}</span>
        ${options.map(({ id, label }) =>
          keyView({
            label,
            isSmall: true,
            press: () => {
              act.answer(ask.check, [id]);
            },
          }),
        )}
      </li>`;
    })}
  </ol>`;
}

function isList({ beside }: AskMessage): boolean {
  return Object.keys(beside?.usual ?? {}).length > 1;
}

/** What is asked together with a question. */
function namesOf(ask: AskMessage): readonly string[] {
  if (isList(ask)) return Object.keys(ask.beside?.usual ?? {});
  return ask.form === 'reading' ? [ask.check, ...(ask.beside?.readings ?? [])] : [ask.check];
}
