/**
 * Proof of the sale: by the number of the receipt, which is typed while it is at hand, or by the
 * number of another answer. A shop that knows the receipt knows the sale. No receipt has a single
 * digit for its number.
 */
import { html, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { keyView } from '../../view/key.ts';
import { keyOf } from '../keys.ts';
import type { Question } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';

/** True where proof of a sale is asked for of which no receipt is known. */
export function isReceiptAsked({ back }: InHand, question: Question | undefined): boolean {
  return question?.check === 'sale-proof' && back.receipt === '';
}

/** Draws the field for the number, and under it the answers. */
export function proofField(
  { words, act }: Shown,
  { back }: InHand,
  { check, options }: Question,
): TemplateResult {
  const give = (id: string) => (): void => {
    act.answer(check, [id]);
  };
  return html`${keyed(
      back.id,
      html`<form
        class="day-entry"
        @submit=${(event: Event) => {
          event.preventDefault();
          const field = (event.currentTarget as HTMLFormElement).elements.namedItem(
            'receipt-number',
          );
          if (!(field instanceof HTMLInputElement)) return;
          const text = field.value.trim();
          const one = /^\d$/u.test(text) ? options[Number(text) - 1] : undefined;
          // What is refused is typed over.
          field.select();
          if (one === undefined) act.receipt(text);
          else give(one.id)();
        }}
      >
        <label for="receipt-number">${words.receiptNumber}</label>
        <input
          id="receipt-number"
          name="receipt-number"
          dir="auto"
          maxlength="4000"
          autocomplete="off"
          spellcheck="false"
        />
        <button type="submit" class="key take">
          <kbd class="at" aria-hidden="true">${keyOf.take}</kbd>
          <span class="label">${words.take}</span>
        </button>
      </form>`,
    )}
    <div class="keys">
      ${options.map(({ id, label }, index) =>
        keyView({ label, at: String(index + 1), isNumber: true, press: give(id) }),
      )}
    </div>`;
}
