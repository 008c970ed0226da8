import type { Check } from '@keyturn/core';

/**
 * True for what is known, or seen without kit from the seat or on opening the bonnet. What came of
 * trying something, which may be that it starts, is no fact that is told beside others.
 */
export function isToldUnasked(check: Check): boolean {
  const { at, needs, does, like } = check;
  return (
    (at === 'memory' || at === 'seat' || (at === 'bonnet' && does.length === 0)) &&
    like === undefined &&
    needs.length === 0 &&
    !does.includes('starter') &&
    !isTrial(check)
  );
}

/** True for a check by which something is tried, to see what comes of it. */
export function isTrial({ form }: Check): boolean {
  return form.kind === 'choice' && form.choices.some((id) => id === 'starts' || id === 'no-change');
}
