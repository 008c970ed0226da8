/**
 * The number of the receipt, asked for while it is at hand; a shop that knows it knows the sale.
 */
import { html, type TemplateResult } from 'lit-html';
import { keyOf } from '../keys.ts';
import { sentence } from './sentence.ts';
import type { Shown } from './shown.ts';

/** Draws the question; an empty field goes on without the number. */
export function receiptCard({ words, act }: Shown): TemplateResult {
  return html`${sentence('', words.receiptAsk)}
    <form
      class="day-entry"
      @submit=${(event: Event) => {
        event.preventDefault();
        const { value } = (event.currentTarget as HTMLFormElement).elements.namedItem(
          'receipt-number',
        ) as HTMLInputElement;
        act.receipt(value.trim());
      }}
    >
      <input
        name="receipt-number"
        dir="auto"
        maxlength="80"
        autocomplete="off"
        aria-label=${words.receipt}
      />
      <button type="submit" class="key take">
        <kbd class="at" aria-hidden="true">${keyOf.take}</kbd>
        <span class="label">${words.take}</span>
      </button>
    </form>
    <p class="hint">${words.receiptSkip}</p>`;
}
