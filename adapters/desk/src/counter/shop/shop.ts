/**
 * What a shop brings to the counter in one file: its terms, what is on its bench, the parts that it
 * sells and what it has sold. Everything but the terms may be left out.
 */
import {
  looksLikeDay,
  policyFaults,
  policyShape,
  readContext,
  soldParts,
  type Policy,
  type SoldPart,
} from '@keyturn/core';
import * as z from 'zod/mini';

/** A part that the shop sells. */
export interface ShelfPart {
  /** The number on its label. */
  readonly number: string;
  readonly name: string;
  readonly part: SoldPart;
  /** In minor units of the currency of the terms. */
  readonly price?: number | undefined;
  /** What is known of it, the maker's figures included, as the context of a case. */
  readonly context?: Readonly<Record<string, unknown>> | undefined;
}

/** A part that was sold. */
export interface SoldEntry {
  readonly receipt: string;
  /** The number of the part. */
  readonly number: string;
  /** ISO 8601. */
  readonly sold: string;
  readonly price?: number | undefined;
  readonly oldUnit?: 'returned' | 'owed' | undefined;
  /** Of the vehicle that it was sold for. */
  readonly vehicle?:
    { readonly fuel?: string | undefined; readonly nominal?: number | undefined } | undefined;
}

/** A shop. */
export interface Shop {
  readonly policy: Policy;
  /** What the bench has, by the ids of kit. */
  readonly kit?: readonly string[] | undefined;
  readonly parts: readonly ShelfPart[];
  readonly sales: readonly SoldEntry[];
  /** True for the shop of the demonstration. */
  readonly isInvented?: boolean | undefined;
}

/** A shop, or everything that is wrong with its file: where, and what was expected. */
export type ShopResult =
  | { readonly type: 'shop'; readonly shop: Shop }
  | { readonly type: 'faults'; readonly faults: readonly ShopFault[] };

/** What is wrong at one place of a file; the place is empty where it is no JSON at all. */
export interface ShopFault {
  readonly at: string;
  readonly expected: string;
}

const label = z.string('a text').check(z.minLength(1, 'a text'), z.maxLength(80, 'a shorter text'));
const amount = z.int('a whole number of minor units').check(z.minimum(0), z.maximum(1e12));
const day = z
  .string('a day like 2026-01-31')
  .check(
    z.refine(
      (text) => looksLikeDay(text) && !Number.isNaN(Date.parse(text)),
      'a day like 2026-01-31',
    ),
  );

const shelfPart = z.strictObject({
  number: label,
  name: label,
  part: z.enum(soldParts, `one of ${soldParts.join(', ')}`),
  price: z.optional(amount),
  context: z.optional(z.record(z.string(), z.unknown())),
});

const soldEntry = z.strictObject({
  receipt: label,
  number: label,
  sold: day,
  price: z.optional(amount),
  oldUnit: z.optional(z.enum(['returned', 'owed'], 'returned or owed')),
  vehicle: z.optional(
    z.strictObject({
      fuel: z.optional(z.enum(['petrol', 'diesel'], 'petrol or diesel')),
      nominal: z.optional(z.literal([12, 24], '12 or 24')),
    }),
  ),
});

const shopShape = z.strictObject({
  policy: policyShape,
  kit: z.optional(z.array(label)),
  parts: z._default(z.array(shelfPart), []),
  sales: z._default(z.array(soldEntry), []),
});

/** Reads a shop's file, or its terms alone, from JSON. Never throws. */
export function readShop(text: string): ShopResult {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return faults([{ at: '', expected: 'JSON' }]);
  }
  const isWhole = typeof data === 'object' && data !== null && 'policy' in data;
  const read = shopShape.safeParse(isWhole ? data : { policy: data });
  if (!read.success) {
    return faults(
      read.error.issues.map(({ path, message }) => ({ at: path.join('.'), expected: message })),
    );
  }
  const shop: Shop = read.data;
  const found = [
    ...policyFaults(shop.policy).map(({ path, expected }) => ({
      at: ['policy', ...path].join('.'),
      expected,
    })),
    ...contextFaults(shop),
    ...lostSales(shop),
  ];
  return found.length > 0 ? faults(found) : { type: 'shop', shop };
}

function faults(found: readonly ShopFault[]): ShopResult {
  return { type: 'faults', faults: found };
}

function contextFaults({ kit = [], parts }: Shop): readonly ShopFault[] {
  const given = [
    { at: 'kit', context: { kit } },
    ...parts.map(({ context = {} }, index) => ({ at: `parts.${String(index)}.context`, context })),
  ];
  return given.flatMap(({ at, context }) => {
    const read = readContext(context);
    if (read.type === 'context') return [];
    return read.faults.map(({ path, possible }) => ({
      at: at === 'kit' ? at : `${at}.${path}`,
      expected: possible.slice(0, 20).join(', '),
    }));
  });
}

/** Sales of parts that the file does not have. */
function lostSales({ parts, sales }: Shop): readonly ShopFault[] {
  return sales.flatMap(({ number }, index) =>
    parts.some((part) => part.number === number)
      ? []
      : [{ at: `sales.${String(index)}.number`, expected: 'the number of one of the parts' }],
  );
}
