/** A number as it is written: digits and a power of ten, 12.40 as 1240 and -2. */
export interface Decimal {
  readonly digits: bigint;
  readonly power: number;
}

/** The shortest decimal that is this number. */
export function decimalOf(value: number): Decimal {
  const [mantissa = '0', exponent = '0'] = value.toString().split('e');
  const [whole = '0', fraction = ''] = mantissa.split('.');
  return { digits: BigInt(`${whole}${fraction}`), power: Number(exponent) - fraction.length };
}

/** The number that a decimal stands for. */
export function numberOf({ digits, power }: Decimal): number {
  return Number(`${String(digits)}e${String(power)}`);
}

/**
 * A reading by its last digit: 12.4 read in steps of 0.01 is 1240 and -2. Undefined where the step
 * is no power of ten, or the value no multiple of it.
 */
export function inSteps(value: number, step: number): Decimal | undefined {
  const power = Math.round(Math.log10(step));
  if (Number(`1e${String(power)}`) !== step) return undefined;
  const steps = Math.round(value / step);
  if (!Number.isSafeInteger(steps)) return undefined;
  const decimal = { digits: BigInt(steps), power };
  return numberOf(decimal) === value ? decimal : undefined;
}
