/**
 * All that a view is made from, and all that it can do.
 */
import type { Flow, Input } from '@keyturn/core';
import type { FlowTexts, Rendered, Speaker } from '@keyturn/language';
import type { Caller, CallerField, DeskCase } from '../case/desk-case.ts';
import type { DeskOutcome } from '../case/outcome.ts';
import type { Urgency } from '../case/urgency.ts';
import type { InventedCaller } from '../demo/town.ts';
import type { Laid, Why } from '../engine/engine.ts';
import type { Command } from '../keys.ts';
import type { DeskWords } from '../words/desk-words.ts';

/** What the hand has begun and not finished; nothing of it is kept. */
export interface Hand {
  /** Picked so far where several answers may hold; null where nothing was touched yet. */
  readonly picked: readonly string[] | null;
  /** The check that is asked out of its turn, to be put right or told early. */
  readonly asking: string | null;
  /** What lies over the step in hand. */
  readonly open: 'danger' | 'help' | 'cause' | null;
  /** The help that was picked by hand. */
  readonly help: string | null;
  /** True where questions go on though help is under way. */
  readonly goesOn: boolean;
  /** True after the first of the two presses that close a case. */
  readonly closing: boolean;
  /** After the first of the two presses that send help though it is not known where to: the minutes. */
  readonly sending: number | null;
  /** What was typed to find a cause by its name. */
  readonly sought: string;
  /** After the first of the two presses that say so though answers are ticked. */
  readonly dropping: 'dont-know' | 'cannot' | null;
}

/** A hand that has begun nothing. */
export const emptyHand: Hand = {
  picked: null,
  asking: null,
  open: null,
  help: null,
  goesOn: false,
  closing: false,
  sending: null,
  sought: '',
  dropping: null,
};

/** The hand after what lies over the step is left; else after everything that was begun is. */
export function leftHand(hand: Hand): Hand {
  const isOver = hand.open !== null || hand.asking !== null;
  return isOver ? { ...emptyHand, help: hand.help, goesOn: hand.goesOn } : emptyHand;
}

/** The case in hand. */
export interface InHand {
  readonly kase: DeskCase;
  readonly laid: Laid;
  readonly caller: Caller;
  /** What each answer would change, once it has been worked out. */
  readonly why: Why | undefined;
  /** What was said last and has no place of its own. */
  readonly said: readonly Rendered[];
  /** True while an answer is being worked on. */
  readonly isBusy: boolean;
  readonly invented: InventedCaller | undefined;
  /** Typed into the line and not taken yet. */
  readonly draft: string;
}

/** Another case. */
export interface Other {
  readonly kase: DeskCase;
  readonly caller: Caller;
  readonly urgency: Urgency;
}

/** What a view can do. */
export interface Actions {
  readonly take: (...inputs: readonly Input[]) => void;
  readonly say: (line: string) => void;
  /** What has been typed into the line of the case in hand and not been taken yet. */
  readonly draft: (line: string) => void;
  readonly hand: (change: Partial<Hand>) => void;
  /** Asks a check out of its turn; what was ticked of it is ticked. */
  readonly ask: (check: string) => void;
  readonly command: (command: Command) => void;
  readonly choose: (id: string) => void;
  readonly tell: (field: CallerField, text: string) => void;
  /** Help goes; the caller is called back in so many minutes. */
  readonly send: (help: string, minutes: number) => void;
  readonly later: (minutes: number) => void;
  /** Closes the case, with the cause that somebody confirmed. */
  readonly close: (cause: string | undefined) => void;
  /** Takes back the case that was closed last. */
  readonly reopen: () => void;
  readonly practise: () => void;
  readonly fillEvening: () => void;
  readonly go: (screen: Shown['screen']) => void;
  readonly switchKeys: () => void;
  readonly language: (tag: string) => void;
  readonly copy: (text: string) => void;
  readonly print: () => void;
  readonly save: (what: 'diagram' | 'counts') => void;
}

/** What a view is made from. */
export interface Shown {
  readonly flow: Flow;
  readonly speaker: Speaker;
  readonly texts: FlowTexts;
  readonly words: DeskWords;
  /** BCP 47 tag. */
  readonly locale: string;
  readonly locales: Readonly<Record<string, string>>;
  /** The time of the clock, in milliseconds of the epoch. */
  readonly clock: number;
  readonly screen: 'desk' | 'calibration' | 'keys';
  readonly hasKeys: boolean;
  /** Whether the other words of a question are shown. */
  readonly hasMoreWords: boolean;
  readonly inHand: InHand | undefined;
  readonly others: readonly Other[];
  readonly outcomes: readonly DeskOutcome[];
  readonly notices: readonly string[];
  /** True where the case that was closed last can still be taken back. */
  readonly canReopen: boolean;
  readonly hand: Hand;
  readonly act: Actions;
}
