import { isReading, isSaid, type Case } from '@keyturn/core';

/** What was ticked of a check, so that a correction begins with it; nothing where nothing was. */
export function pickedBefore({ state }: Case, check: string): readonly string[] {
  const answer = state.answers[check]?.at(-1);
  return isSaid(answer) && !isReading(answer) ? answer.filter((one) => one !== 'none') : [];
}
