/**
 * Whether a case of a vehicle can be this customer's, by what is known of the sale.
 */
import type { CounterReturn, VehicleCase } from '../return/counter-return.ts';
import type { SoldEntry } from '../shop/shop.ts';

/** Why a case is not of this return; undefined where nothing speaks against it. */
export type Misfit =
  | { readonly type: 'fuel'; readonly found: string; readonly sold: string }
  | { readonly type: 'volts'; readonly found: number; readonly part: number }
  | { readonly type: 'used'; readonly by: CounterReturn };

/** Holds a case against the return, its sale and the other returns. */
export function misfitOf(
  kase: VehicleCase,
  given: {
    readonly back: CounterReturn;
    readonly sale: SoldEntry | undefined;
    readonly others: readonly CounterReturn[];
  },
): Misfit | undefined {
  const { back, sale, others } = given;
  const by = others.find(({ id, vehicle }) => id !== back.id && vehicle?.id === kase.id);
  if (by !== undefined) return { type: 'used', by };
  const sold = sale?.vehicle?.fuel;
  if (sold !== undefined && kase.fuel !== null && kase.fuel !== sold) {
    return { type: 'fuel', found: kase.fuel, sold };
  }
  const part = back.sitting.case.state.context['part.nominal'] as number | undefined;
  if (part !== undefined && kase.nominal !== null && kase.nominal !== part) {
    return { type: 'volts', found: kase.nominal, part };
  }
  return undefined;
}
