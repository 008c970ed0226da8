/**
 * The price that was paid: beside the number of the receipt, where an amount lacks it, and with what
 * is known of the part. What is wrong with it stands under its field.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import { writtenPrice } from '../return/written-price.ts';
import type { InHand, Shown } from './shown.ts';

/** Under this name what was typed of it is kept with the return. */
export const priceTyped = 'sale.price';

/** True where the shop's terms reckon by a price that is not known. */
export function isPriceAsked({ shop }: Shown, { back }: InHand): boolean {
  return shop !== null && back.sitting.case.state.context[priceTyped] === undefined;
}

/** True where an amount of a decision that stands lacks the price and nothing else. */
export function isPriceLacking(shown: Shown, inHand: InHand): boolean {
  const { back } = inHand;
  const { decision } = back.sitting.case.state;
  return (
    isPriceAsked(shown, inHand) &&
    back.goodwill === null &&
    decision?.lacking?.includes('price') === true
  );
}

/** Draws the field. What is typed is taken by `taken`, or with the form that it stands in. */
export function priceField(
  { words, shop, act, locale, priceWrong }: Shown,
  { back }: InHand,
  taken?: (text: string) => void,
): TemplateResult | typeof nothing {
  if (shop === null) return nothing;
  const { currency } = shop.policy;
  const paid = back.sitting.case.state.context[priceTyped];
  const known = typeof paid === 'number' ? writtenPrice(paid, currency, locale) : '';
  return html`<label class="field price">
    <span>${fill(words.priceIn, { currency })}</span>
    <input
      name="price"
      inputmode="decimal"
      maxlength="20"
      autocomplete="off"
      aria-invalid=${priceWrong === undefined ? nothing : 'true'}
      aria-describedby=${priceWrong === undefined ? nothing : 'price-wrong'}
      .value=${back.typed[priceTyped] ?? known}
      @input=${(event: Event) => {
        act.type(priceTyped, (event.currentTarget as HTMLInputElement).value);
      }}
      @change=${(event: Event) => {
        taken?.((event.currentTarget as HTMLInputElement).value);
      }}
    />
    ${
      priceWrong === undefined
        ? nothing
        : html`<span class="wrong" id="price-wrong" role="alert">${priceWrong}</span>`
    }
  </label>`;
}
