/**
 * What can be done with the return in hand, for the rooms that work on it.
 */
import type { Flow, Input } from '@keyturn/core';
import type { Laid, Turned } from '../engine/engine.ts';
import type { KnownPart } from './return/opening.ts';
import type { CounterReturn } from './return/counter-return.ts';
import type { Hand } from './view/shown.ts';

/** The work on the return in hand. */
export interface ReturnWork {
  /** The return in hand; undefined where none is. */
  readonly back: CounterReturn | undefined;
  /** Its flow; undefined where none is in hand. */
  readonly flow: Flow | undefined;
  readonly isBusy: boolean;
  /** What the clerk holds beside it. */
  readonly hand: Hand;
  /** The case of the vehicle. */
  readonly evidence: { readonly offer: (text: string) => Promise<void> };
  readonly choose: (id: string, notice?: string) => Promise<void>;
  readonly open: (known: KnownPart) => Promise<void>;
  readonly take: (...inputs: readonly Input[]) => Promise<void>;
  readonly turn: (work: (sitting: Laid['sitting']) => Promise<Turned>) => Promise<void>;
  readonly alter: (change: Partial<CounterReturn>) => void;
  readonly hold: (change: Partial<Hand>) => void;
  readonly notice: (text: string, isBeside?: boolean) => void;
  /** Says what went wrong in it. */
  readonly trying: (work: () => Promise<void>) => Promise<void>;
  /** Waits for something about a return, and takes nothing of it meanwhile. */
  readonly whileBusy: <Result>(id: string, wait: () => Promise<Result>) => Promise<Result>;
}
