/**
 * The clock by which the desk is drawn anew: waiting times now and then, a time that runs down each
 * second.
 */

/** Milliseconds between two looks at the clock. */
const [slowMs, fastMs] = [10_000, 1_000];

/** What a clock calls. */
export interface Ticking {
  /** When the wait in hand is over, in milliseconds of the epoch. */
  readonly due: () => number | undefined;
  readonly tick: () => void;
  /** The wait is over. */
  readonly over: () => void;
}

/** A clock that runs at the pace that is needed. */
export class DeskClock {
  readonly #ticking: Ticking;
  #running: { readonly ms: number; readonly timer: ReturnType<typeof setInterval> } | undefined;

  constructor(ticking: Ticking) {
    this.#ticking = ticking;
  }

  /** Runs at the pace that is needed now. */
  run(): void {
    const ms = this.#ticking.due() === undefined ? slowMs : fastMs;
    if (this.#running?.ms === ms) return;
    this.stop();
    const timer = setInterval(() => {
      const due = this.#ticking.due();
      if (due !== undefined && due <= Date.now()) this.#ticking.over();
      else this.#ticking.tick();
    }, ms);
    this.#running = { ms, timer };
  }

  /** Stops it. */
  stop(): void {
    clearInterval(this.#running?.timer);
    this.#running = undefined;
  }
}
