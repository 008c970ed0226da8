/**
 * Which card lies before the dispatcher.
 */
import { positionOf } from '@keyturn/core';
import type { DeskCase } from '../case/desk-case.ts';
import type { Hand, Shown } from './shown.ts';

/** The cards there are. */
export type CardKind = 'step' | 'asking' | 'danger' | 'help' | 'send' | 'under-way' | 'cause';

/** The help to be sent: picked by hand, or the verdict's. */
export function helpOf({ help }: Hand, { sitting }: DeskCase): string | undefined {
  return help ?? sitting.case.state.verdict?.send;
}

/** The card by what the hand has begun and where the case stands. */
export function cardOf(hand: Hand, kase: DeskCase): CardKind {
  if (hand.open === 'danger' || hand.open === 'help') return hand.open;
  if (hand.asking !== null) return 'asking';
  // What is happening there comes before what is to be sent.
  if (positionOf(kase.sitting.case).awaiting === 'resume' && hand.help === null) return 'step';
  const goesOn = hand.goesOn && kase.sitting.case.state.verdict === null;
  if (kase.sent !== null && hand.help === null && !goesOn)
    return hand.open === 'cause' ? 'cause' : 'under-way';
  return helpOf(hand, kase) === undefined ? 'step' : 'send';
}

/** True where the step in hand is what is asked now. */
export function isStep({ hand, inHand }: Shown): boolean {
  return inHand !== undefined && cardOf(hand, inHand.kase) === 'step';
}

/** What lies before the dispatcher, as far as a key pressed for one thing must not answer another. */
export function placeOf({ hand, inHand }: Shown): string {
  if (inHand === undefined) return '';
  const { kase } = inHand;
  const { asking, help, sending } = hand;
  const { case: played, offers } = kase.sitting;
  const lies = [kase.id, cardOf(hand, kase), asking, help, sending, positionOf(played)];
  return JSON.stringify([...lies, offers]);
}
