import { decimalsOf as decimalsOfCurrency } from '@keyturn/core';
import { LanguageError } from '../language-error.ts';
import type { Say } from '../texts/text-key.ts';
import { isolationIn } from './isolate.ts';
import { unitSigns } from './unit.ts';

/** A number with its UCUM unit, and the step in which it was typed, where that is known. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly resolution?: number | undefined;
}

/** Numbers, units, shares and lists as one locale writes them, by `Intl`. */
export interface Figures {
  /** A figure with its unit's sign, with as many decimals as were typed: "12.40 V". */
  readonly formatQuantity: (figure: Figure) => string;
  /** A unit's sign alone: "V", "years". */
  readonly unitSign: (unit: string) => string;
  /** Any figure in a unit, where one is expected: "a figure (V)". */
  readonly figureIn: (unit: string) => string;
  /** A share of one as whole percent; short of certainty it is never shown as 100 %. */
  readonly formatShare: (share: number) => string;
  /** A duration: "20 minutes"; less than a minute in steps of ten seconds, "10 seconds". */
  readonly formatMinutes: (minutes: number) => string;
  /** A day, ISO 8601, as a date. */
  readonly formatDay: (day: string) => string;
  /** An amount in minor units of a currency, ISO 4217. */
  readonly formatMoney: (minor: number, currency: string) => string;
  readonly listAll: (items: readonly string[]) => string;
  readonly listAny: (items: readonly string[]) => string;
  /** Shares of one whole side by side; an English list of them has no “and”. */
  readonly listShares: (items: readonly string[]) => string;
  /** The unit in which a figure without one is meant here: °F for °C where the region uses it. */
  readonly unitHere: (unit: string) => string;
}

/** So many of a unit have the name that a unit has alone: "years", "lat". */
const manyOf = 11;

/** Regions that measure temperature in °F. Source: CLDR's unit preferences, from memory. */
const fahrenheitRegions = ['US', 'BS', 'BZ', 'KY', 'PR', 'PW'];

/** Where no resolution is known, figures are shown to this many decimals at most. */
const mostDecimals = 3;

/**
 * How many decimals a figure of this resolution has: 2 for 0.01, 0 for 1 and above. An odd step
 * such as 0.25 needs the decimals that write it.
 */
function decimalsOf(resolution: number): number {
  for (let decimals = 0; decimals < 6; decimals += 1) {
    const scaled = resolution * 10 ** decimals;
    if (scaled >= 1 && Math.abs(scaled - Math.round(scaled)) < 1e-6) return decimals;
  }
  return 6;
}

function digits(figure: Figure): Intl.NumberFormatOptions {
  if (figure.resolution === undefined) return { maximumFractionDigits: mostDecimals };
  const decimals = decimalsOf(figure.resolution);
  return { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
}

/** The figures of one locale. `formatQuantity` and `unitSign` throw `unit-unknown`. */
export function createFigures(locale: string, say: Say): Figures {
  const { words: isolate, figure: isolateFigure } = isolationIn(locale);
  const isFahrenheit = fahrenheitRegions.includes(new Intl.Locale(locale).region ?? '');
  const unitHere = (unit: string): string => (unit === 'Cel' && isFahrenheit ? '[degF]' : unit);
  const asHere = (figure: Figure): Figure => {
    const unit = unitHere(figure.unit);
    return unit === figure.unit ? figure : { ...figure, unit, value: figure.value * 1.8 + 32 };
  };
  const all = new Intl.ListFormat(locale, { type: 'conjunction' });
  const any = new Intl.ListFormat(locale, { type: 'disjunction' });
  const shares = new Intl.ListFormat(locale, { type: 'unit' });
  const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });

  // Making a format costs far more than using it.
  const formats = new Map<string, Intl.NumberFormat>();
  const formatOf = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const made = formats.get(key) ?? new Intl.NumberFormat(locale, options);
    formats.set(key, made);
    return made;
  };
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });

  const signOf = (unit: string) => {
    const found = Object.hasOwn(unitSigns, unit) ? unitSigns[unit] : undefined;
    if (found === undefined) throw new LanguageError('unit-unknown', unit);
    return found;
  };

  const formatQuantity = (given: Figure): string => {
    const figure = asHere(given);
    const { sign, intl, text } = signOf(figure.unit);
    const options = digits(figure);
    if (intl !== undefined) {
      const unit = { style: 'unit', unit: intl.unit, unitDisplay: intl.display } as const;
      return isolate(formatOf({ ...options, ...unit }).format(figure.value));
    }
    const number = formatOf(options).format(figure.value);
    return text === undefined
      ? isolateFigure(`${number} ${sign ?? ''}`)
      : isolate(say(text, { figure: number }));
  };

  const unitSign = (unit: string): string => {
    const { sign, intl, text } = signOf(unitHere(unit));
    if (sign !== undefined) return sign;
    if (text !== undefined) return say(text, { figure: '' }).trim();
    if (intl === undefined) return '';
    const format = formatOf({ style: 'unit', unit: intl.unit, unitDisplay: intl.display });
    return format.formatToParts(manyOf).find((part) => part.type === 'unit')?.value ?? '';
  };

  return {
    formatQuantity,
    unitSign,
    figureIn: (unit) => {
      const sign = unitSign(unit);
      return sign === '' ? say('unit.any') : say('unit.anyIn', { unit: sign });
    },
    formatShare: (share) =>
      isolate(percent.format(Math.min(share > 0.99 && share < 1 ? 0.99 : share, 1))),
    formatMinutes: (minutes) => {
      const isShort = minutes > 0 && minutes < 1;
      const how = { style: 'unit', unitDisplay: 'long', maximumFractionDigits: 0 } as const;
      return isolate(
        isShort
          ? formatOf({ ...how, unit: 'second' }).format(Math.max(1, Math.round(minutes * 6)) * 10)
          : formatOf({ ...how, unit: 'minute' }).format(minutes),
      );
    },
    formatDay: (day) => isolate(days.format(new Date(`${day}T00:00:00Z`))),
    formatMoney: (minor, currency) => {
      const decimals = decimalsOfCurrency(currency);
      const money = formatOf({
        style: 'currency',
        currency,
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
      });
      return isolate(money.format(minor / 10 ** decimals));
    },
    listAll: (items) => all.format(items.map(isolate)),
    listAny: (items) => any.format(items.map(isolate)),
    listShares: (items) => shares.format(items.map(isolate)),
    unitHere,
  };
}
