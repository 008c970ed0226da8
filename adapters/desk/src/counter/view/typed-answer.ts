/**
 * An answer that is typed, and under its field the others, each picked by its number in the same
 * field: what is typed there is never a single digit.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { keyView, type KeyLook } from '../../view/key.ts';
import { keyOf } from '../keys.ts';
import type { InHand, Shown } from './shown.ts';

/** What is typed, and what else can be answered. */
export interface TypedAnswer {
  readonly field: {
    readonly name: string;
    readonly label: string;
    /** False where the sentence above says what is typed. */
    readonly isLabelShown: boolean;
    readonly inputmode: 'text' | 'numeric';
    /** What stands in it before anything is typed. */
    readonly value: string;
    /** How it is written, under the field. */
    readonly form?: string;
    /** What is wrong with what was typed last; undefined where nothing is. */
    readonly wrong?: string | undefined;
  };
  /** A further field, beside it. */
  readonly beside?: TemplateResult | typeof nothing;
  /** What the key is called that takes it. */
  readonly take: string;
  readonly others: readonly Pick<KeyLook, 'label' | 'press'>[];
  /** True where what was typed is taken as well when the field is left. */
  readonly isTakenLeft?: boolean;
  /** Takes what was typed, white space apart. */
  readonly typed: (text: string) => void;
}

/** Draws the field, and the others. Another return or question has a field of its own: nothing typed stays. */
export function typedAnswer(
  { act, hand }: Shown,
  { back }: InHand,
  { field, beside = nothing, take, others, isTakenLeft = false, typed }: TypedAnswer,
): TemplateResult {
  const { name, label, isLabelShown, inputmode, value, form, wrong } = field;
  const described = [
    form === undefined ? [] : `${name}-form`,
    wrong === undefined ? [] : `${name}-wrong`,
  ]
    .flat()
    .join(' ');
  const pickedBy = (text: string): TypedAnswer['others'][number] | undefined =>
    /^\d$/u.test(text) ? others[Number(text) - 1] : undefined;
  return html`${keyed(
    `${back.id} ${name}`,
    html`<form
      class=${isLabelShown ? 'day-entry labelled' : 'day-entry'}
      @submit=${(event: Event) => {
        event.preventDefault();
        const form = event.currentTarget as HTMLFormElement;
        const input = form.elements.namedItem(name);
        if (!(input instanceof HTMLInputElement)) return;
        const text = input.value.trim();
        // What is refused is typed over; selecting would take the focus out of the field beside it.
        if (input.matches(':focus')) input.select();
        const one = pickedBy(text);
        if (one === undefined) typed(text);
        else one.press();
      }}
    >
      <div class="typed">
        ${isLabelShown ? html`<label for=${name}>${label}</label>` : nothing}
        <input
          id=${name}
          name=${name}
          type="text"
          inputmode=${inputmode}
          dir="auto"
          maxlength="4000"
          autocomplete="off"
          spellcheck="false"
          aria-label=${isLabelShown ? nothing : label}
          aria-invalid=${wrong === undefined ? nothing : 'true'}
          aria-describedby=${described === '' ? nothing : described}
          .value=${value}
          @input=${(event: Event) => {
            const one = pickedBy((event.currentTarget as HTMLInputElement).value.trim());
            const picked = one === undefined ? [] : [one.label];
            if (picked.join() !== hand.picked.join()) act.mark(picked);
          }}
          @change=${(event: Event) => {
            const text = (event.currentTarget as HTMLInputElement).value.trim();
            if (isTakenLeft && text !== '' && pickedBy(text) === undefined) typed(text);
          }}
        />
        ${form === undefined ? nothing : html`<span class="hint" id=${`${name}-form`}>${form}</span>`}
        ${
          wrong === undefined
            ? nothing
            : html`<span class="wrong" id=${`${name}-wrong`} role="alert">${wrong}</span>`
        }
      </div>
      ${beside}
      <button type="submit" class="key take">
        <kbd class="at" aria-hidden="true">${keyOf.take}</kbd>
        <span class="label">${take}</span>
      </button>
    </form>`,
  )}
  ${
    others.length === 0
      ? nothing
      : html`<div class="keys">
          ${others.map((look, index) => {
            const at = String(index + 1);
            const picked = hand.picked.includes(look.label) ? { isPicked: true } : {};
            return keyView({ ...look, ...picked, at, isNumber: true, isTyped: true });
          })}
        </div>`
  }`;
}
