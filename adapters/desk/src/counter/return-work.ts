/**
 * What can be done with the return in hand, for the rooms that work on it.
 */
import type { AnswerInput, Flow, Input } from '@keyturn/core';
import type { ReadingsSaid } from '@keyturn/language';
import type { Laid, Turned } from '../engine/engine.ts';
import type { KnownPart } from './return/opening.ts';
import type { CounterReturn } from './return/counter-return.ts';
import type { Lying } from './in-hand.ts';
import type { TypedByHand } from './vehicle/measured-by-hand.ts';
import type { Hand, InHand } from './view/shown.ts';

/** The work on the return in hand. */
export interface ReturnWork {
  /** The return in hand; undefined where none is. */
  readonly back: CounterReturn | undefined;
  /** Its flow; undefined where none is in hand. */
  readonly flow: Flow | undefined;
  /** All of it that is shown. */
  readonly inHand: InHand | undefined;
  readonly isBusy: boolean;
  /** Today where the shop is; ISO 8601. */
  readonly today: string;
  /** What the clerk holds beside it. */
  readonly hand: Hand;
  /** The case of the vehicle. */
  readonly evidence: {
    readonly offer: (text: string) => Promise<void>;
    /** What is typed of it by hand, what comes of that, and what a line puts into its fields. */
    readonly told: (back: CounterReturn) => TypedByHand;
    readonly takeByHand: () => Promise<void>;
    readonly typeReadings: (said: Extract<ReadingsSaid, { type: 'readings' }>) => void;
  };
  readonly choose: (id: string, notice?: string) => Promise<void>;
  /** What is typed into the line. */
  readonly entry: { readonly enter: (text: string, how: 'typed') => Promise<void> };
  readonly open: (known: KnownPart) => Promise<void>;
  readonly take: (...inputs: readonly Input[]) => Promise<void>;
  readonly answer: (check: string, value: AnswerInput['value']) => Promise<void>;
  readonly turn: (work: (sitting: Laid['sitting']) => Promise<Turned>) => Promise<void>;
  /** Shows something that was worked out of the return in hand; `isMoved`: another thing is asked. */
  readonly lay: (change: (lying: Lying) => Lying, isMoved?: boolean) => void;
  readonly alter: (change: Partial<CounterReturn>) => void;
  readonly hold: (change: Partial<Hand>) => void;
  /** The price in a text, to be taken; undefined where it is none, which is said at its field. */
  readonly priceIn: (text: string) => readonly Input[] | undefined;
  readonly notice: (text: string, isBeside?: boolean) => void;
  /** What was refused or not understood is no longer said. */
  readonly dropErrors: () => void;
  /** Says what went wrong in it. */
  readonly trying: (work: () => Promise<void>) => Promise<void>;
  /** Waits for something about a return, and takes nothing of it meanwhile. */
  readonly whileBusy: <Result>(id: string, wait: () => Promise<Result>) => Promise<Result>;
}
