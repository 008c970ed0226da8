/**
 * Amounts as people type them, to the minor unit.
 */

/** How many decimals the amounts of a currency have. */
function decimalsOf(currency: string): number {
  const money = new Intl.NumberFormat('en', { style: 'currency', currency });
  return money.resolvedOptions().maximumFractionDigits ?? 2;
}

/**
 * An amount in minor units from what was typed, with a point or a comma before its decimals and in
 * whatever digits; undefined where it is no amount of the currency.
 *
 * @example
 * minorUnits('129,9', 'EUR'); // 12990
 */
export function minorUnits(typed: string, currency: string): number | undefined {
  const plain = typed
    .normalize('NFKC')
    .replaceAll(/[\u0660-\u0669\u06f0-\u06f9]/gu, (digit) =>
      String((digit.codePointAt(0) ?? 0) & 15),
    )
    .replaceAll(/[\s\u2066-\u2069\u200e\u200f]/gu, '')
    .replace('٫', '.')
    .replace(',', '.');
  const [, whole, decimals = ''] = /^(\d{1,9})(?:\.(\d*))?$/u.exec(plain) ?? [];
  const places = decimalsOf(currency);
  if (whole === undefined || decimals.length > places) return undefined;
  return Number(whole + decimals.padEnd(places, '0'));
}

/** An amount as it is typed: 12990 of EUR is 129.90. */
export function typedAmount(minor: number, currency: string): string {
  return (minor / 10 ** decimalsOf(currency)).toFixed(decimalsOf(currency));
}
