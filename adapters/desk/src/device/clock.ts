/**
 * The clock by which the desk is drawn anew: waiting times now and then, a time that runs down each
 * second.
 */
import { positionOf, type Case } from '@keyturn/core';

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

/** The time, ISO 8601. */
export function now(): string {
  return later(0);
}

/** The time in so many minutes, ISO 8601. */
export function later(minutes: number): string {
  return new Date(Date.now() + minutes * 60_000).toISOString();
}

/** When the wait in hand is over, in milliseconds of the epoch; undefined where there is none. */
export function waitOver(kase: Case | undefined): number | undefined {
  if (kase === undefined) return undefined;
  const position = positionOf(kase);
  return position.awaiting === 'wait'
    ? Date.parse(kase.state.due[position.check] ?? kase.state.at)
    : undefined;
}
