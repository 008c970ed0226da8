/**
 * The shop whose terms are in use at the counter: read from its file, invented for practice, or none.
 */
import type { Flow } from '@keyturn/core';
import type { CounterWork } from './counter-work.ts';
import { inventedShop } from './demo/invented-shop.ts';
import { playEnded, playReturns } from './demo/play-returns.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { shopDayOf } from './return/day.ts';
import { readShop, type Shop, type ShopFault } from './shop/shop.ts';
import type { CounterBook } from './store/counter-book.ts';

/** What a shop is changed with. */
export interface CounterShopSetup {
  /** The flows of returns, by id. */
  readonly flows: Readonly<Record<string, Flow>>;
  readonly engine: CounterEngine;
  readonly book: CounterBook;
  readonly work: CounterWork;
  /** Shows how things stand; `isMoved`: what is to be done next is another thing. */
  readonly show: (isMoved: boolean) => void;
}

/** The shop of one counter. */
export class CounterShop {
  readonly #setup: CounterShopSetup;
  #faults: readonly ShopFault[] = [];

  constructor(setup: CounterShopSetup) {
    this.#setup = setup;
  }

  /** What was wrong with the file that was chosen last. */
  get faults(): readonly ShopFault[] {
    return this.#faults;
  }

  /** Goes on with the terms of a file, or says each fault of it. */
  async readFile(file: File): Promise<void> {
    await this.#setup.work.trying(async () => {
      const read = readShop(await file.text());
      if (read.type === 'faults') {
        this.#faults = read.faults.slice(0, 20);
        this.#setup.show(false);
      } else await this.#use(read.shop);
    });
  }

  /** Goes on without terms. */
  async forget(): Promise<void> {
    await this.#setup.work.trying(() => this.#use(null));
  }

  /** Goes on with the invented shop and its parts, the guided one in hand. */
  async practise(): Promise<void> {
    const { engine, flows, book, work } = this.#setup;
    await work.trying(async () => {
      const at = new Date().toISOString();
      const shop = inventedShop(shopDayOf(at, null));
      await this.#use(shop);
      const before = book.onCounter.find(({ practice }) => practice !== null);
      if (before !== undefined) {
        await work.choose(before.id);
        return;
      }
      const playing = { engine, flows, shop, at };
      const played = await playReturns(playing);
      for (const back of [...(await playEnded(playing)), ...played]) await work.keep(back);
      const [first] = played;
      if (first !== undefined) await work.choose(first.id);
    });
  }

  async #use(shop: Shop | null): Promise<void> {
    const { book, work, show } = this.#setup;
    this.#faults = [];
    work.handsOff();
    await book.useShop(shop);
    show(true);
  }
}
