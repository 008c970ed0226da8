import type { Chart } from '@keyturn/core';
import type { Hearing } from '@keyturn/language';

/** What a case of a flow is ready to take where this check was just asked, or none, and nothing is found yet. */
export function nothingFound(
  { flow: { checks, interrupts } }: Pick<Chart, 'flow'>,
  check: string | null,
): Hearing {
  return {
    awaiting: 'answer',
    check,
    checks,
    interrupts: Object.keys(interrupts),
    answered: [],
    kit: [],
    nominal: 12,
    lamp: false,
  };
}
