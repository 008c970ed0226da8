import { ElectricsError } from './electrics-error.ts';

/**
 * Refuses a number that is not finite or not above `low`.
 *
 * Throws `value-out-of-range` with the number by its name and the fact `low`.
 */
export function requireAbove(name: string, value: number, low: number): void {
  if (!(value > low && Number.isFinite(value))) {
    throw new ElectricsError('value-out-of-range', { [name]: String(value), low });
  }
}
