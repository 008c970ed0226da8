/**
 * Invented callers answering, for an evening that fills the desk.
 */
import { positionOf, type Case, type Flow, type Input } from '@keyturn/core';
import type { Laid } from '../engine/engine.ts';
import type { Engine } from '../engine/engine.ts';
import { inventedAnswer, type InventedCaller } from './town.ts';

/** Takes a sitting as far as so many answers of an invented caller bring it. */
export async function playOn(
  { engine, flow }: { readonly engine: Engine; readonly flow: Flow },
  sitting: Laid['sitting'],
  given: { readonly invented: InventedCaller; readonly at: string; readonly answers: number },
): Promise<Laid['sitting']> {
  let now = sitting;
  for (let count = 0; count < given.answers; count += 1) {
    const inputs = [inputOf(flow, now.case, given.invented)];
    now = (await engine.take(now, { at: given.at, inputs })).laid.sitting;
  }
  return now;
}

function inputOf({ checks }: Flow, kase: Case, invented: InventedCaller): Input {
  const position = positionOf(kase);
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting !== 'answer') return { type: 'tick' };
  const { check } = position;
  const form = checks[check]?.form;
  const value = inventedAnswer(invented, check, form?.kind === 'reading' ? form.unit : undefined);
  return value === undefined
    ? { type: 'talk', talk: 'dont-know' }
    : { type: 'answers', answers: [{ check, value }] };
}
