import { convert, type Interval, type Quantity, type UnitCode } from '@keyturn/electrics';
import { unitSign } from './said-units.ts';

const significant = 3;

/** How many decimals a figure needs, so that the larger of a span is given to three digits. */
function decimalsFor(greatest: number, unit: UnitCode): number {
  const size = greatest > 0 ? Math.floor(Math.log10(greatest)) : 0;
  const decimals = Math.max(0, significant - 1 - size);
  // No meter of the trade shows less than a millivolt on a range of volts.
  if (unit === 'V') return greatest >= 10 ? 2 : Math.min(decimals, 3);
  return unit === '%' ? 0 : Math.min(decimals, 6);
}

function withUnit(figure: string, unit: UnitCode): string {
  return unit === '%' ? `${figure}%` : `${figure} ${unitSign(unit)}`.trim();
}

/** A number to three digits, without zeros that say nothing. */
export function numberText(value: number, unit: UnitCode = '1'): string {
  return String(Number(value.toFixed(decimalsFor(Math.abs(value), unit))));
}

/** A figure with its unit: "8.9 V". */
export function figureText(value: number, unit: UnitCode): string {
  return withUnit(numberText(value, unit), unit);
}

/** A quantity with its unit. */
export function quantityText({ value, unit }: Quantity): string {
  return figureText(value, unit);
}

/** "0.222 to 0.234 V", or one figure where both ends are one; an end may be open. */
export function spanText({ low, high, unit }: Omit<Interval, 'best'>): string {
  const decimals = decimalsFor(Math.max(Math.abs(low), Math.abs(high)), unit);
  const [least, most] = [low, high].map((value) => String(Number(value.toFixed(decimals))));
  return least === most ? figureText(high, unit) : withUnit(`${least} to ${most}`, unit);
}

/** "0.228 V, from 0.222 to 0.234 V". */
export function intervalText(interval: Interval): string {
  const { low, best, high, unit } = interval;
  const decimals = decimalsFor(Math.max(Math.abs(low), Math.abs(high)), unit);
  const figure = withUnit(String(Number(best.toFixed(decimals))), unit);
  const span = spanText(interval);
  return low === high || figure === span ? figure : `${figure}, from ${span}`;
}

/** A temperature both ways: "-14.6 °C (5.8 °F)". */
export function temperatureText(celsius: number): string {
  const fahrenheit = convert({ value: celsius, unit: 'Cel' }, '[degF]');
  const tenth = (value: number): string => String(Number(value.toFixed(1)));
  return `${tenth(celsius)} °C (${tenth(fahrenheit.value)} °F)`;
}

/** A probability in whole per cent; short of certainty never 100 or 0. */
export function shareText(share: number): string {
  return `${Math.min(99, Math.max(1, Math.round(share * 100)))}%`;
}

/** "1/0 AWG" for 0, "2 AWG" for 2. */
export function gaugeText(awg: number): string {
  return `${awg < 1 ? `${1 - awg}/0` : awg} AWG`;
}

/** "a, b and c". */
export function listText(items: readonly string[], join: 'and' | 'or' = 'and'): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${join} ${last}`;
}
