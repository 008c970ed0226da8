/**
 * The returns as this window holds them, each change handed on to the store.
 */
import type { Flow } from '@keyturn/core';
import { flowOf, type CounterReturn } from '../return/counter-return.ts';
import { isSameCode } from '../shop/scanned.ts';
import type { Shop } from '../shop/shop.ts';
import type { CounterStore } from './counter-store.ts';

/** What became of a return that was to be kept: another window may have gone on with it, or ended it. */
export type HeldReturn = 'kept' | 'theirs' | 'gone';

/** The returns of one counter. */
export class CounterBook {
  readonly #store: CounterStore;
  readonly #flows: Readonly<Record<string, Flow>>;
  readonly #returns = new Map<string, CounterReturn>();
  #shop: Shop | null = null;
  #unfit = 0;

  constructor(store: CounterStore, flows: Readonly<Record<string, Flow>>) {
    this.#store = store;
    this.#flows = flows;
  }

  /** The shop whose terms are in use; null without terms. */
  get shop(): Shop | null {
    return this.#shop;
  }

  /** How many kept returns belong to another version of their flow. They stay kept. */
  get unfit(): number {
    return this.#unfit;
  }

  /** Every return, of whatever shop, ended ones too. */
  get all(): readonly CounterReturn[] {
    return [...this.#returns.values()];
  }

  /** The returns of the shop in use. */
  get here(): readonly CounterReturn[] {
    const shop = this.#shop?.policy.shop ?? null;
    return this.all.filter((back) => back.shop === shop);
  }

  /** Those of them that lie on the counter, the one that has lain there longest first. */
  get onCounter(): readonly CounterReturn[] {
    return this.here
      .filter(({ closed }) => closed === null)
      .toSorted((one, other) => Date.parse(one.openedAt) - Date.parse(other.openedAt));
  }

  /** The others of them, in turn after the one of this id; all where it is none of them. */
  onCounterAfter(id: string | undefined): readonly CounterReturn[] {
    const { onCounter } = this;
    const place = onCounter.findIndex((back) => back.id === id);
    return place < 0 ? onCounter : [...onCounter.slice(place + 1), ...onCounter.slice(0, place)];
  }

  /** The first of them with this receipt, of one kind of part where that is given. */
  onCounterWith(
    receipt: string | undefined,
    part?: CounterReturn['part'],
  ): CounterReturn | undefined {
    if (receipt === undefined) return undefined;
    return this.onCounter.find(
      (back) => isSameCode(back.receipt, receipt) && (part ?? back.part) === back.part,
    );
  }

  /** The other returns of the shop in use with the receipt of one, ended ones too. */
  othersWithReceiptOf({ id, receipt }: CounterReturn): readonly CounterReturn[] {
    return this.here.filter((back) => back.id !== id && isSameCode(back.receipt, receipt));
  }

  /** The first of them with this receipt or number. */
  onCounterBy(code: string): CounterReturn | undefined {
    return (
      this.onCounterWith(code) ?? this.onCounter.find(({ number }) => isSameCode(number, code))
    );
  }

  /** A return that lies on the counter. */
  open(id: string | undefined): CounterReturn | undefined {
    const back = id === undefined ? undefined : this.#returns.get(id);
    return back?.closed === null ? back : undefined;
  }

  /** Takes in what is kept, where it is newer than what is held. */
  async read(): Promise<void> {
    const { returns, shop } = await this.#store.read();
    const fit = returns.filter(
      ({ part, sitting, closed }) =>
        closed !== null || this.#flows[flowOf[part]]?.version === sitting.case.flow.version,
    );
    this.#unfit = returns.length - fit.length;
    const kept = new Set(fit.map(({ id }) => id));
    for (const id of this.#returns.keys()) if (!kept.has(id)) this.#returns.delete(id);
    for (const back of fit) {
      if ((this.#returns.get(back.id)?.version ?? 0) < back.version) this.hold(back);
    }
    this.#shop = shop;
  }

  /** Holds a return without keeping it. */
  hold(back: CounterReturn): void {
    this.#returns.set(back.id, back);
  }

  /** Keeps a return; where another window was first, theirs counts. */
  async keep(back: CounterReturn): Promise<HeldReturn> {
    this.hold(back);
    const kept = await this.#store.keep(back);
    if (kept.type === 'kept') return 'kept';
    if (kept.theirs === undefined) this.#returns.delete(back.id);
    else this.hold(kept.theirs);
    return kept.theirs?.closed === null ? 'theirs' : 'gone';
  }

  /** Takes a return off the counter; what was found of it is forgotten. */
  async remove(id: string): Promise<void> {
    await this.#store.remove(id);
    this.#returns.delete(id);
  }

  /** Goes on with another shop, or with none. */
  async useShop(shop: Shop | null): Promise<void> {
    this.#shop = shop;
    await this.#store.keepShop(shop);
  }

  /** Calls `changed` whenever another window has changed something. Gives what ends that. */
  watch(changed: () => void): () => void {
    return this.#store.watch(changed);
  }
}
