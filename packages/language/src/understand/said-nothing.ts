import { readClose } from './said-choice.ts';
import { type Turn, optionsInHand, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/** What people are known to say to the question in hand without answering it: "it won't start". */
export function readNothing(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined || check.check.form.kind !== 'choice') return undefined;
  if (!check.isNoAnswer(turn.heard)) return undefined;
  return readClose(turn) ?? unclear(turn, 'unknown-choice');
}
