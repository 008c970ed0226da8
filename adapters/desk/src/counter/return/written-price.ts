import { decimalsOf } from '@keyturn/core';

/** An amount as a language writes it and `minorUnits` reads it: 12990 of EUR is 129,90 in German. */
export function writtenPrice(minor: number, currency: string, locale: string): string {
  const decimals = decimalsOf(currency);
  return new Intl.NumberFormat(locale, {
    useGrouping: false,
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    numberingSystem: 'latn',
  }).format(minor / 10 ** decimals);
}
