/**
 * An invented evening: callers who rang a while ago, each as far as they have come.
 */
import { positionOf, type Case, type Flow, type Input } from '@keyturn/core';
import type { Caller, DeskCase } from '../case/desk-case.ts';
import { openDeskCase } from '../case/opening.ts';
import type { Engine } from '../engine/engine.ts';
import { evening, inventedAnswer, type InventedCaller } from './town.ts';

/** Plays the evening; each case is kept when it has come as far as it has. */
export async function playEvening(
  { engine, flow }: { readonly engine: Engine; readonly flow: Flow },
  keep: (kase: DeskCase, caller: Caller) => Promise<void>,
): Promise<void> {
  for (const { invented, minutesAgo, answered } of evening) {
    const at = new Date(Date.now() - minutesAgo * 60_000).toISOString();
    const opened = await openDeskCase(engine, { at, practice: invented.id });
    let { sitting } = opened;
    for (let count = 0; count < answered; count += 1) {
      const inputs = [inputOf(flow, sitting.case, invented)];
      sitting = (await engine.take(sitting, { at, inputs })).laid.sitting;
    }
    await keep({ ...opened, sitting }, invented.caller);
  }
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
