/**
 * What there is to test with at a counter: told once, and remembered by the device for each shop and
 * kind of part.
 */
import type { SoldPart } from '@keyturn/core';

/** Whose test equipment it is. */
export interface KitOf {
  /** The name of the shop; null without terms. */
  readonly shop: string | null;
  readonly part: SoldPart;
}

/** Remembers ids of kit. */
export function rememberKit(of: KitOf, kit: readonly string[]): void {
  try {
    localStorage.setItem(keyOf(of), JSON.stringify(kit));
  } catch {
    // A browser that keeps nothing asks once for each part.
  }
}

/** Ids of kit; undefined where nothing was told. */
export function rememberedKit(of: KitOf): readonly string[] | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(of)) ?? 'null');
    const isKit = Array.isArray(kept) && kept.every((one) => typeof one === 'string');
    return isKit ? kept : undefined;
  } catch {
    return undefined;
  }
}

function keyOf({ shop, part }: KitOf): string {
  return `keyturn-counter-kit ${part} ${shop ?? ''}`;
}
