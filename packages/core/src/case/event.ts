/**
 * What has happened in a case: the append-only list that its state is a fold of.
 */
import type { Policy } from '../policy/policy.ts';
import type { Context } from './context.ts';
import type { Answer } from './state.ts';

/** The version of the form of events. A case of another version is refused, never guessed at. */
export const eventFormat = 1;

/** How a case begins. */
export interface OpenedEvent {
  readonly type: 'opened';
  readonly format: typeof eventFormat;
  readonly at: string;
  readonly id: string;
  readonly flow: { readonly id: string; readonly version: string };
  readonly context: Context;
  /** Checks that are not put in this case, since nobody is there to answer them. */
  readonly notAsked: readonly string[];
  /** The terms of the shop that takes a part back. */
  readonly policy?: Policy;
}

/** Anything that happens afterwards. */
export type LaterEvent =
  | {
      readonly type: 'answered';
      readonly at: string;
      readonly check: string;
      readonly answer: Answer;
      /** Told in passing: of a list that is asked for as a whole yet. */
      readonly isPart?: true;
    }
  /** An earlier answer is replaced; those that no longer hold are set aside. */
  | {
      readonly type: 'corrected';
      readonly at: string;
      readonly check: string;
      readonly answer: Answer;
    }
  | { readonly type: 'went-back'; readonly at: string }
  | { readonly type: 'confirmed'; readonly at: string; readonly cautions: readonly string[] }
  | { readonly type: 'interrupted'; readonly at: string; readonly interrupt: string }
  | { readonly type: 'resumed'; readonly at: string }
  /** What an interrupt told of never was. */
  | { readonly type: 'withdrawn'; readonly at: string; readonly interrupt: string }
  | { readonly type: 'context-changed'; readonly at: string; readonly context: Context }
  | { readonly type: 'time-passed'; readonly at: string }
  /** The user says that the wait before a check is over. */
  | { readonly type: 'waited'; readonly at: string; readonly check: string };

/** One event of a case. */
export type CaseEvent = OpenedEvent | LaterEvent;
