import type { Fee, Policy, Warranty } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Fact } from '../sheet.ts';
import type { SheetWords } from '../words/sheet-words.ts';
import type { ToldCase } from './told-case.ts';

/** The terms of the shop for the part in hand, as facts; none where it has given no terms. */
export function policyFacts({ chart, case: kase, speaker, words }: ToldCase): readonly Fact[] {
  const { policy } = kase.state;
  const { part } = chart.flow;
  if (policy === null || part === undefined) return [];
  const { days, restocking } = policy['return-window'];
  const warranty = policy.warranty[part];
  const deposit = policy['exchange-deposit']?.[part];
  const fact = (id: string, label: string, text: string): Fact => ({ id, label, text });
  const within = speaker.formatQuantity({ value: days, unit: 'd' });
  return [
    fact('return-window', words.returnWindow, within),
    ...(restocking === undefined
      ? []
      : [fact('restocking', words.restocking, feeText(restocking, policy, speaker))]),
    ...(warranty === undefined ? [] : warrantyFacts(warranty, { speaker, words })),
    ...(deposit === undefined
      ? []
      : [fact('deposit', words.deposit, speaker.formatMoney(deposit, policy.currency))]),
  ];
}

function feeText(fee: Fee, { currency }: Policy, speaker: Speaker): string {
  return 'percent' in fee
    ? speaker.formatQuantity({ value: fee.percent, unit: '%' })
    : speaker.formatMoney(fee.amount, currency);
}

function warrantyFacts(
  { months, 'pro-rata': rule }: Warranty,
  { speaker, words }: { readonly speaker: Speaker; readonly words: SheetWords },
): readonly Fact[] {
  const lasts = {
    id: 'warranty',
    label: words.warranty,
    text: speaker.formatQuantity({ value: months, unit: 'mo' }),
  };
  if (rule === undefined) return [lasts];
  if (rule === 'by-month') {
    return [lasts, { id: 'pro-rata', label: words.proRata, text: words.byMonth }];
  }
  const steps = rule.map(({ from, to, percent }) => {
    const upTo = speaker.formatQuantity({ value: to, unit: 'mo' });
    const paid = speaker.formatQuantity({ value: percent, unit: '%' });
    return {
      id: `pro-rata-${String(from)}`,
      label: `${speaker.formatNumber(from, 0)} – ${upTo}`,
      text: paid,
    };
  });
  return [lasts, ...steps];
}
