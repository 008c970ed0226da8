/**
 * Amounts of a currency: whole minor units, and as people type them.
 */

/**
 * How many decimals the amounts of a currency have, where they are not two. Source: ISO 4217, its
 * list of currencies, from memory. Platforms are not asked: theirs are customs of display, which
 * differ between them, and the same terms would mean other amounts.
 */
const decimalsByCurrency: Readonly<Record<string, number>> = Object.fromEntries(
  (
    [
      [0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'],
      [3, 'BHD IQD JOD KWD LYD OMR TND'],
      [4, 'CLF UYW'],
    ] as const
  ).flatMap(([decimals, codes]) => codes.split(' ').map((code) => [code, decimals] as const)),
);

/** How many decimals the amounts of a currency have, ISO 4217: 2 for EUR, 0 for JPY. */
export function decimalsOf(currency: string): number {
  return decimalsByCurrency[currency] ?? 2;
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
