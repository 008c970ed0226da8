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

/** What a vehicle does by its case where a customer says this of its starter. */
const complaintsOf: Readonly<Partial<Record<string, readonly string[]>>> = {
  'no-crank': ['silent', 'single-click', 'rapid-clicking', 'key-stuck'],
  'slow-crank': ['slow-crank', 'rapid-clicking', 'single-click'],
  noise: ['grinding', 'free-spin'],
};

/** What the customer says of a starter where the case tells of another trouble; undefined otherwise. */
export function otherClaim(
  { complaint }: VehicleCase,
  { part, sitting }: CounterReturn,
): string | undefined {
  const answer = sitting.case.state.answers['claim']?.at(-1);
  if (part !== 'starter' || complaint === null || !Array.isArray(answer)) return undefined;
  const [claim] = answer as readonly string[];
  const fits = complaintsOf[claim ?? ''];
  return fits === undefined || fits.includes(complaint) ? undefined : claim;
}
