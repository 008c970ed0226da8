import { conductorResistance, type Conductor } from './conductor.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { requireAbove } from '../require-above.ts';

/** A cable under load: its conductor and the current in A, above 0. */
export type LoadedCable = Conductor & { readonly currentA: number };

/**
 * The voltage that a sound cable drops at a current, in V, without its connections.
 *
 * Source: Ohm's law and `conductorResistance`. Throws `value-out-of-range`.
 *
 * @example
 * expectedDrop({ areaMm2: 25, lengthM: 1.5, currentA: 200 }); // 0.222 to 0.234 V
 */
export function expectedDrop(cable: LoadedCable): SourcedInterval {
  requireAbove('currentA', cable.currentA, 0);
  const { low, best, high, source } = conductorResistance(cable);
  const volts = cable.currentA / 1000;
  return { low: low * volts, best: best * volts, high: high * volts, unit: 'V', source };
}

/**
 * The voltage that a sound cable drops, at most, at a current: flexible copper where nothing else
 * is said.
 *
 * Source: IEC 60228 class 5, its greatest resistance. Throws `value-out-of-range`.
 *
 * @example
 * cableDrop({ areaMm2: 25, lengthM: 1.5, currentA: 200 }); // 0.234 V
 */
export function cableDrop(cable: LoadedCable): Quantity {
  const { high, unit } = expectedDrop(cable);
  return { value: high, unit };
}
