/**
 * A day that is typed: as ISO 8601 has it, or as the language writes it. A single digit is no day, so
 * that what else can be answered is picked by its number in the same field.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { keyView } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import { keyOf } from '../keys.ts';
import type { InHand, Shown } from './shown.ts';

/** What is picked by its number in the field of a day. */
interface Picked {
  readonly label: string;
  readonly press: () => void;
}

/** Draws the field, and under it the days that what was typed may mean. */
export function dayField(shown: Shown, inHand: InHand, check: string): TemplateResult {
  const { words, act, today } = shown;
  const { back, speaker } = inHand;
  const picked = pickedBy(shown, inHand, check);
  return html`${keyed(
    back.id,
    html`<form
      class="day-entry"
      @submit=${(event: Event) => {
        event.preventDefault();
        const field = (event.currentTarget as HTMLFormElement).elements.namedItem('day');
        if (!(field instanceof HTMLInputElement)) return;
        const text = field.value.trim();
        const one = /^\d$/u.test(text) ? picked[Number(text) - 1] : undefined;
        // What is refused is typed over.
        field.select();
        if (one !== undefined) one.press();
        else if (text === '') act.notice(fill(words.dayNeeded, { day: today }));
        else act.day(check, text);
      }}
    >
      <input
        name="day"
        type="text"
        inputmode="numeric"
        autocomplete="off"
        maxlength="4000"
        aria-label=${speaker.checkName(check)}
      />
      <button type="submit" class="key take">
        <kbd class="at" aria-hidden="true">${keyOf.take}</kbd>
        <span class="label">${words.takeDay}</span>
      </button>
    </form>`,
  )}
  ${
    picked.length === 0
      ? nothing
      : html`<div class="keys">
          ${picked.map((look, index) => keyView({ ...look, at: String(index + 1), isNumber: true }))}
        </div>`
  }`;
}

function pickedBy({ act, today }: Shown, { offers }: InHand, check: string): readonly Picked[] {
  return offers.flatMap((offer) => {
    if (!('value' in offer) || typeof offer.value !== 'string' || offer.value > today) return [];
    const { label, value } = offer;
    const press = (): void => {
      act.answer(check, [value]);
    };
    return [{ label, press }];
  });
}
