import type { Expected, Input } from '@keyturn/core';
import type { Figure } from '../numbers/figures.ts';
import type { TalkWord } from '../words/words.ts';

/** What the case waits for: what a text is held against. */
export type Hearing = Expected;

/** Why a text was not understood. */
export type UnclearCode =
  | 'empty'
  | 'too-long'
  | 'unknown-choice'
  | 'one-choice'
  | 'not-a-number'
  | 'not-exact'
  | 'two-numbers'
  | 'unknown-unit'
  | 'which-check'
  | 'nothing-to-confirm'
  | 'not-confirmed'
  | 'not-done'
  | 'not-a-day'
  | 'waiting'
  | 'not-over'
  | 'closed'
  | 'which-language'
  | 'not-understood';

/** Talk that was heard in a text, whatever became of it; an interrupt by its id. */
export type HeardTalk = TalkWord | 'correction' | (string & {});

/** An answer that may have been meant. */
export interface AnswerOffer {
  readonly check: string;
  /** Choice id, or a figure. */
  readonly value: string | Figure;
  readonly label: string;
}

/** A danger that there may be. */
export interface DangerOffer {
  readonly interrupt: string;
  readonly label: string;
}

/** What may have been meant. */
export type Offer = AnswerOffer | DangerOffer;

/** A figure that cannot be a reading of its check, and the range in which one can be. */
export interface Doubt {
  readonly check: string;
  readonly given: Figure;
  readonly range: { readonly low: number; readonly high: number; readonly unit: string };
  readonly isRightAt24: boolean;
}

/** What a typed text means. */
export type Understood =
  /** To be given to the turn, in this order. */
  | {
      readonly type: 'input';
      readonly inputs: readonly Input[];
      /** A danger that there may be beside it, to be asked about before anything else. */
      readonly doubted?: DangerOffer;
      readonly talk?: HeardTalk;
    }
  /** To go on in another language; nothing but the words changes. */
  | { readonly type: 'language'; readonly locale: string; readonly talk: 'language' }
  /** Close, but not certain: up to three to pick from; none for a figure beyond guessing. */
  | {
      readonly type: 'offers';
      readonly offers: readonly Offer[];
      readonly doubt?: Doubt;
      readonly talk?: HeardTalk;
    }
  /** Not understood, and nothing taken: what was wrong, and in words what is possible. */
  | {
      readonly type: 'unclear';
      readonly code: UnclearCode;
      /** What was given, cut to 80 characters. */
      readonly given: string;
      readonly possible: readonly string[];
      readonly talk?: HeardTalk;
    };
