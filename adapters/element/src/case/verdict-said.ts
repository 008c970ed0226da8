import { positionOf, type Case, type Chart } from '@keyturn/core';
import type { Sitting } from './sitting.ts';

/** True where there is a verdict that says something else than the one before. */
export function saysOtherwise(before: Sitting | undefined, after: Sitting): boolean {
  const said = (sitting: Sitting | undefined): string => {
    const verdict = sitting?.case.state.verdict ?? null;
    if (verdict === null) return '';
    const { fault, strength, remedy, send, waits, also, stops } = verdict;
    return JSON.stringify([fault, strength, remedy, send, waits, also?.fault, stops]);
  };
  return said(after) !== '' && said(after) !== said(before);
}

/** True where a verdict stands and is acted on, or nothing is left to do. */
export function isActed({ flow }: Chart, kase: Case): boolean {
  if (kase.state.verdict === null) return false;
  const position = positionOf(kase);
  if (position.awaiting === 'nothing') return true;
  return position.awaiting === 'answer' && flow.checks[position.check]?.form.kind === 'work';
}
