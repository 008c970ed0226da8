/**
 * A return opened: with what is known of the part and its sale, and nothing else.
 */
import type { AnswerInput, SoldPart } from '@keyturn/core';
import type { CounterEngine } from '../engine/counter-engine.ts';
import type { ShelfPart, Shop, SoldEntry } from '../shop/shop.ts';
import { flowOf, type CounterReturn } from './counter-return.ts';

/** What is known when a part comes over the counter. */
export interface KnownPart {
  readonly part: SoldPart;
  readonly shelf?: ShelfPart | undefined;
  readonly sale?: SoldEntry | undefined;
  /** What was typed of its receipt before anybody knew which part it is. */
  readonly receiptTyped?: string | undefined;
}

/** Opens a return at an instant, ISO 8601. */
export async function openReturn(
  engine: CounterEngine,
  shop: Shop | null,
  given: KnownPart & {
    readonly at: string;
    readonly practice?: string | undefined;
    /** What there is to test with, by the ids of kit; left out it is what the shop’s file says. */
    readonly kit?: readonly string[] | undefined;
  },
): Promise<CounterReturn> {
  const { part, shelf, sale, receiptTyped, at, practice = null, kit = shop?.kit } = given;
  const id = crypto.randomUUID();
  const flow = flowOf[part];
  const context = {
    role: 'clerk',
    place: 'workshop',
    ...(kit === undefined ? {} : { kit }),
    ...contextOf({ shelf, sale }),
  };
  const opened = await engine.open(flow, {
    id,
    at,
    context,
    ...(shop === null ? {} : { policy: shop.policy }),
  });
  const answers = answersOf(sale);
  const { sitting } =
    answers.length === 0
      ? opened
      : (await engine.take(opened.sitting, { at, inputs: [{ type: 'answers', answers }] })).laid;
  return {
    id,
    openedAt: at,
    part,
    shop: shop?.policy.shop ?? null,
    ...labelsOf({ shelf, sale }),
    sitting,
    typed: receiptTyped === undefined ? {} : { 'sale-proof': receiptTyped },
    vehicle: null,
    diagnosis: { by: 'not-told' },
    aside: null,
    goodwill: null,
    practice,
    closed: null,
    version: 1,
  };
}

/** What the shop knows of a part, as the context of a case. */
export function contextOf({
  shelf,
  sale,
}: Omit<KnownPart, 'part'>): Readonly<Record<string, unknown>> {
  // The price of the shelf says nothing of a part of which no sale is known.
  const price = sale === undefined ? undefined : (sale.price ?? shelf?.price);
  return {
    ...shelf?.context,
    ...(price === undefined ? {} : { 'sale.price': price }),
    ...(sale?.oldUnit === undefined ? {} : { 'sale.oldUnit': sale.oldUnit }),
  };
}

/** What a sale on record answers: that there is proof of it, and its day. */
export function answersOf(sale: SoldEntry | undefined): readonly AnswerInput[] {
  if (sale === undefined) return [];
  return [
    { check: 'sale-proof', value: ['on-record'] },
    { check: 'sale-date', value: [sale.sold] },
  ];
}

/** What a part is called. */
export function labelsOf({
  shelf,
  sale,
}: Omit<KnownPart, 'part'>): Pick<CounterReturn, 'name' | 'number' | 'receipt'> {
  return {
    name: shelf?.name ?? '',
    number: shelf?.number ?? '',
    receipt: sale?.receipt ?? '',
  };
}
