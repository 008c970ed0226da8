/**
 * The slips of one counter: that of the return in hand, and one of the day's list printed once more.
 */
import type { Sheet } from '@keyturn/sheets';
import type { CounterVoice } from './counter-voice.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import type { ReturnWork } from './return-work.ts';
import { slipOf } from './return/slip-of.ts';
import type { CounterBook } from './store/counter-book.ts';

/** What the slips are written with. */
interface CounterSlipsSetup {
  readonly engine: CounterEngine;
  readonly book: CounterBook;
  readonly voice: CounterVoice;
  readonly work: ReturnWork;
  /** Shows how things stand. */
  readonly show: (isMoved: boolean) => void;
}

/** The slips. */
export class CounterSlips {
  readonly #setup: CounterSlipsSetup;
  #again: Sheet | undefined;

  constructor(setup: CounterSlipsSetup) {
    this.#setup = setup;
  }

  /** The slip of a return that has ended, written anew; undefined where none was asked for. */
  get again(): Sheet | undefined {
    return this.#again;
  }

  /** Writes the slip of a decision as it is printed. */
  async write(): Promise<void> {
    const { work } = this.#setup;
    const { back } = work;
    if (back === undefined) return;
    if (back.sitting.case.state.decision === null && back.aside === null) return;
    const sheet = await slipOf(back, now(), this.#setup);
    if (work.back?.id !== back.id || work.back.sitting !== back.sitting) return;
    work.lay((lying) => ({ ...lying, sheet }));
  }

  /** Writes the slip as of now. False where that went wrong, which is said. */
  async writeNow(): Promise<boolean> {
    let isWritten = false;
    await this.#setup.work.trying(async () => {
      await this.write();
      isWritten = true;
    });
    return isWritten;
  }

  /** Writes the slip of a return that has ended anew. False where that went wrong, which is said. */
  async writeAgain(id: string): Promise<boolean> {
    let isWritten = false;
    await this.#setup.work.trying(async () => {
      const ended = this.#setup.book.all.find((back) => back.id === id);
      if (ended === undefined) throw new Error('the return is no longer in the list');
      this.#again = await slipOf(ended, now(), this.#setup);
      isWritten = true;
      this.#setup.show(false);
    });
    return isWritten;
  }
}

function now(): string {
  return new Date().toISOString();
}
