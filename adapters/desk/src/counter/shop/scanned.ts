/**
 * What a scanned or typed text is: a receipt of the shop, the label of a part, a case of a vehicle.
 */
import { looksLikeCase } from '../vehicle/read-vehicle-case.ts';
import type { ShelfPart, Shop, SoldEntry } from './shop.ts';

/** What was scanned. */
export type Scanned =
  | { readonly type: 'sale'; readonly sale: SoldEntry; readonly part: ShelfPart }
  | { readonly type: 'part'; readonly part: ShelfPart }
  | { readonly type: 'case'; readonly text: string }
  | { readonly type: 'unknown'; readonly text: string };

/** Looks a text up. */
export function lookUp(text: string, shop: Shop | null): Scanned {
  const partOf = (number: string): ShelfPart | undefined =>
    shop?.parts.find((part) => isSameCode(part.number, number));
  const sale = shop?.sales.find(({ receipt }) => isSameCode(receipt, text));
  const sold = sale === undefined ? undefined : partOf(sale.number);
  if (sale !== undefined && sold !== undefined) return { type: 'sale', sale, part: sold };
  const part = partOf(text);
  if (part !== undefined) return { type: 'part', part };
  return looksLikeCase(text) ? { type: 'case', text } : { type: 'unknown', text };
}

/** Whether two texts are one number. Capital and small letters, spaces and hyphens do not matter. */
export function isSameCode(one: string, other: string): boolean {
  return plain(one) !== '' && plain(one) === plain(other);
}

function plain(text: string): string {
  return text.replaceAll(/[\s-]/gu, '').toUpperCase();
}
