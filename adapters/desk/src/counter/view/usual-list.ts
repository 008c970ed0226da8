/**
 * All that is seen in one go, as it is where nothing is out of the ordinary: taken by one key, and
 * what is otherwise by the number of its line.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import { keyOf } from '../keys.ts';
import { howLines } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';

/** Checks and their usual answers where several are asked together; empty where there is no list. */
export function usualOf({ hand }: Pick<Shown, 'hand'>, { laid }: InHand): UsualLines {
  if (hand.asking !== null) return [];
  const ask = laid.inHand.find((message) => message.kind === 'ask');
  const usual = Object.entries(ask?.beside?.usual ?? {});
  return usual.length < 2 ? [] : usual;
}

/** Checks and their usual answers. */
export type UsualLines = readonly (readonly [check: string, answer: string])[];

/** Draws the list. */
export function usualList(shown: Shown, inHand: InHand, usual: UsualLines): TemplateResult {
  const { words, act, hasHow, hasListed } = shown;
  const { speaker } = inHand;
  return html`<div class="usual">
    <ol>
      ${usual.map(([check, answer], index) => {
        const lines = hasHow ? howLines(inHand, check) : [];
        const number = String(index + 1);
        return html`<li>
          <button
            type="button"
            class="key line-key"
            data-key=${number}
            aria-keyshortcuts=${number}
            @click=${() => {
              act.hand({ asking: check, picked: [], open: null });
            }}
          >
            <kbd class="at" aria-hidden="true">${number}</kbd>
            <span class="label"
              ><span class="what">${speaker.checkName(check)}</span>
              <b>${speaker.answerLabel(check, answer)}</b></span
            >
          </button>
          ${lines.length === 0 ? nothing : html`<p class="how-to">${lines.join(' ')}</p>`}
        </li>`;
      })}
    </ol>
    <div class="keys row">
      ${keyView({
        label: words.yes,
        at: keyOf.take,
        isMain: true,
        press: () => {
          const answers = usual.map(([check, answer]) => ({ check, value: [answer] }));
          act.takeList(answers);
        },
      })}
    </div>
    ${hasListed ? nothing : html`<p class="hint">${words.usualOther}</p>`}
  </div>`;
}
