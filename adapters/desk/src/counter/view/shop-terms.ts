/**
 * The shop's terms in words, and the file that they come from.
 */
import type { Fee, Policy, SoldPart, Warranty } from '@keyturn/core';
import { soldParts } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyView } from '../../view/key.ts';
import { fill, listed } from '../../wording.ts';
import { backKey } from './keys-help.ts';
import type { Shown } from './shown.ts';

/** Draws them. */
export function shopTerms(shown: Shown): TemplateResult {
  const { words, shop, shopFaults, act } = shown;
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.theShop}</h2>
    ${
      shop === null
        ? html`<p class="sure">${words.shopNone}</p>`
        : html`<p class="sure">${fill(words.shopInUse, { shop: shop.policy.shop })}</p>
            ${shop.isInvented === true ? html`<p class="invented">${words.practiceNote}</p>` : nothing}
            <ul class="to-do">
              ${termLines(shown, shop.policy).map((line) => html`<li>${line}</li>`)}
            </ul>`
    }
    <p>${words.law}</p>
    <div role="alert">
      ${
        shopFaults.length === 0
          ? nothing
          : html`<p class="refused">${words.shopFaults}</p>
              <ul class="to-do">
                ${shopFaults.map(
                  ({ at, expected }) =>
                    html`<li>
                      ${fill(words.shopFault, { at: at === '' ? words.shopWhole : at, expected })}
                    </li>`,
                )}
              </ul>`
      }
    </div>
    <div class="keys row">
      ${backKey(shown)}
      <label class="file key">
        <span class="label">${words.shopFile}</span>
        <input
          type="file"
          accept=".json,application/json"
          @change=${(event: Event) => {
            const input = event.currentTarget as HTMLInputElement;
            const [file] = input.files ?? [];
            if (file !== undefined) act.shopFile(file);
            input.value = '';
          }}
        />
      </label>
      ${
        shop === null
          ? keyView({ label: words.practise, press: act.practise })
          : keyView({ label: words.shopForget, press: act.forgetShop })
      }
    </div>
  </section>`;
}

function termLines(shown: Shown, policy: Policy): readonly string[] {
  const { words } = shown;
  const { days, restocking } = policy['return-window'];
  const money = (amount: number): string =>
    shown.speakerFor('starter').formatMoney(amount, policy.currency);
  const feeWords = (fee: Fee): string =>
    'amount' in fee ? money(fee.amount) : percent(shown, fee.percent);
  return [
    restocking === undefined
      ? fill(words.termsWindow, { days })
      : fill(words.termsRestocking, { days, fee: feeWords(restocking) }),
    ...soldParts.flatMap((part) => {
      const terms = policy.warranty[part];
      return terms === undefined ? [] : [warrantyLine(shown, part, terms)];
    }),
    ...soldParts.flatMap((part) => {
      const deposit = policy['exchange-deposit']?.[part];
      return deposit === undefined
        ? []
        : [fill(words.termsDeposit, { part: words[part], amount: money(deposit) })];
    }),
  ];
}

function warrantyLine(shown: Shown, part: SoldPart, terms: Warranty): string {
  const { words, locale } = shown;
  const { months, 'pro-rata': rule } = terms;
  const values = { part: words[part], months };
  if (rule === undefined) return fill(words.termsWhole, values);
  if (rule === 'by-month') return fill(words.termsByMonth, values);
  const steps = rule.map(({ from, to, percent: share }) =>
    fill(words.termsStep, { from, to, percent: percent(shown, share) }),
  );
  return fill(words.termsSteps, { ...values, steps: listed(steps, locale) });
}

function percent({ locale }: Shown, value: number): string {
  return new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 2 }).format(
    value / 100,
  );
}
