/**
 * The invented parts, brought to where they lie on the counter.
 */
import { positionOf, type Flow, type Input } from '@keyturn/core';
import type { CounterEngine } from '../engine/counter-engine.ts';
import { flowOf, type CounterReturn } from '../return/counter-return.ts';
import { openReturn } from '../return/opening.ts';
import type { Shop } from '../shop/shop.ts';
import { endedReturns, inventedReturns, type InventedReturn } from './invented-shop.ts';

/** What is played with. */
interface Playing {
  readonly engine: CounterEngine;
  readonly flows: Readonly<Record<string, Flow>>;
  readonly shop: Shop;
  /** ISO 8601. */
  readonly at: string;
}

/** Plays every invented part, the guided one first. */
export function playReturns(playing: Playing): Promise<readonly CounterReturn[]> {
  return Promise.all(inventedReturns.map((invented) => play(playing, invented)));
}

/** The parts of the day before, so that the list and the chart have something to show. */
export function playEnded(playing: Playing): Promise<readonly CounterReturn[]> {
  const { engine, shop, at } = playing;
  const before = new Date(Date.parse(at) - 86_400_000).toISOString();
  const { currency } = shop.policy;
  return Promise.all(
    endedReturns.map(async ({ receipt, diagnosis, decide, reason }) => {
      const sale = shop.sales.find((one) => one.receipt === receipt);
      const shelf = shop.parts.find(({ number }) => number === sale?.number);
      const part = shelf?.part ?? 'starter';
      const back = await openReturn(engine, shop, { part, shelf, sale, at: before });
      const amount = sale?.price ?? 0;
      const refund =
        decide === 'accept'
          ? { currency, lines: [{ line: 'price', amount } as const], total: amount }
          : null;
      return { ...back, diagnosis, closed: { at: before, decide, reason, refund, by: null } };
    }),
  );
}

async function play(playing: Playing, invented: InventedReturn): Promise<CounterReturn> {
  const { engine, flows, shop, at } = playing;
  const sale = shop.sales.find(({ receipt }) => receipt === invented.receipt);
  const shelf = shop.parts.find(({ number }) => number === sale?.number);
  const { part, diagnosis, id: practice } = invented;
  const back = await openReturn(engine, shop, { part, shelf, sale, at, practice });
  let { sitting } = back;
  for (let turns = 0; turns < invented.answered; turns += 1) {
    const input = inputFor(flows[flowOf[part]], sitting.case, invented);
    if (input === undefined) break;
    ({ sitting } = (await engine.take(sitting, { at, inputs: [input] })).laid);
  }
  return { ...back, sitting, diagnosis };
}

function inputFor(
  flow: Flow | undefined,
  kase: CounterReturn['sitting']['case'],
  { answers }: InventedReturn,
): Input | undefined {
  const position = positionOf(kase);
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting !== 'answer') return undefined;
  const { check } = position;
  const form = flow?.checks[check]?.form;
  const answer = answers[check];
  if (typeof answer === 'number') {
    if (form?.kind !== 'reading') return undefined;
    const value = { value: answer, unit: form.unit, resolution: form.unit === 'V' ? 0.01 : 1 };
    return { type: 'answers', answers: [{ check, value }] };
  }
  return answer === undefined
    ? { type: 'talk', talk: 'dont-know' }
    : { type: 'answers', answers: [{ check, value: answer }] };
}
