import type { Input } from '@keyturn/core';
import { chooseOption } from './choices.ts';
import type { Fit } from './fit.ts';
import { findPhrase } from '../typed/heard.ts';
import type { Lexicon } from './lexicon.ts';
import { findInterrupt, saysOver } from './talk.ts';
import { type Turn, input, optionsInHand } from './turn.ts';
import { volunteered } from './volunteered.ts';
import type { Understood } from './understood.ts';

/** Where the answer in hand says more than the interrupt ("leaking" of a battery), both are taken. */
export function readInterrupt(turn: Turn): Understood | undefined {
  const { clauses, hearing, listener, heard } = turn;
  const { lexicon } = listener;
  const live =
    hearing.awaiting === 'resume'
      ? clauses.filter((clause) => !saysOver(clause, lexicon))
      : clauses;
  const interrupt = findInterrupt(live, lexicon, hearing.interrupts);
  if (interrupt === undefined) return undefined;
  const raised: Input = { type: 'interrupt', interrupt };
  const check = optionsInHand(turn);
  if (check === undefined) {
    // "It fires, then stalls" tells of a start, not of a fire.
    const [told] = volunteered(heard, turn);
    return told !== undefined &&
      findPhrase(heard, told.fit.phrase) >= 0 &&
      isWithin(interrupt, told.fit, lexicon)
      ? undefined
      : input([raised], interrupt);
  }
  const choice = chooseOption(heard, check);
  if (choice.type !== 'one' || findPhrase(heard, choice.fit.phrase) < 0)
    return input([raised], interrupt);
  const answer: Input = {
    type: 'answers',
    answers: [{ check: check.id, value: [choice.fit.id] }],
  };
  return isWithin(interrupt, choice.fit, lexicon)
    ? input([answer])
    : input([answer, raised], interrupt);
}

/** True where the answer's phrase holds the interrupt's and says more: "starts, then stops". */
function isWithin(interrupt: string, { phrase }: Fit, { interrupts }: Lexicon): boolean {
  return interrupts.some(
    ({ interrupt: id, terms }) =>
      id === interrupt &&
      terms.length < phrase.length &&
      terms.every((term) => phrase.includes(term)),
  );
}
