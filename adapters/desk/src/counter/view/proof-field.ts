/**
 * Proof of the sale: by the number of the receipt, which is typed while it is at hand, and with it the
 * price that stands there, or by another answer. A shop that knows the receipt knows the sale.
 */
import { nothing, type TemplateResult } from 'lit-html';
import { isPriceAsked, priceField } from './price-field.ts';
import type { Question } from './sentence.ts';
import type { InHand, Shown } from './shown.ts';
import { typedAnswer } from './typed-answer.ts';

/** True where proof of a sale is asked for of which no receipt is known, or is put right. */
export function isReceiptAsked(
  { hand }: Shown,
  { back }: InHand,
  question: Question | undefined,
): boolean {
  const check = 'sale-proof';
  return question?.check === check && (back.receipt === '' || hand.asking === check);
}

/** Draws the field for the number, that for the price where it is not known, and the answers. */
export function proofField(shown: Shown, inHand: InHand, { options }: Question): TemplateResult {
  const { words, act } = shown;
  return typedAnswer(shown, inHand, {
    field: {
      name: 'receipt-number',
      label: words.receiptNumber,
      isLabelShown: true,
      inputmode: 'text',
      value: inHand.back.typed['sale-proof'] ?? inHand.back.receipt,
    },
    beside: isPriceAsked(shown, inHand) ? priceField(shown, inHand) : nothing,
    take: words.take,
    others: options.map(({ id, label }) => ({
      label,
      press: () => {
        act.proof({ answer: id });
      },
    })),
    typed: (receipt) => {
      act.proof({ receipt });
    },
  });
}
