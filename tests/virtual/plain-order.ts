/**
 * Plain ways of asking, to measure against: one check after the other until a fault is likely
 * enough, in the written order or in one by chance.
 */
import { compileFlow, openCase, positionOf, turn, type Chart, type Input } from '@keyturn/core';
import { verdictOf } from '../../packages/core/src/case/verdict.ts';
import type { Chooser } from './measure.ts';
import { Random } from './random.ts';
import type { Given, VirtualVehicle } from './vehicle.ts';

/** A fault this likely is acted on; no proof is sought. */
const likelyEnough = 0.95;

/** So many orders by chance are made, and each vehicle has one of them. */
const orders = 12;

/** Asks in the written order. */
export function writtenOrder({ flow }: Chart): Chooser {
  const written = compileFlow({ ...flow, byWorth: [] });
  return (vehicle) => askInOrder(written, vehicle);
}

/** Asks in an order by chance what the shipped flow weighs; the rest stays as it is written. */
export function randomOrder({ flow }: Chart): Chooser {
  const weighed = flow.stages.filter(({ id }) => flow.byWorth.includes(id));
  const [first] = weighed;
  const charts = Array.from({ length: orders }, (_, seed) => {
    const checks = shuffled(
      weighed.flatMap((stage) => stage.checks),
      new Random(seed),
    );
    const stages = flow.stages
      .filter((stage) => stage === first || !weighed.includes(stage))
      .map((stage) => (stage === first ? { ...stage, checks } : stage));
    // The verdict comes after the last of what is weighed.
    const verdictAfter = flow.byWorth.includes(flow.verdictAfter)
      ? (first?.id ?? flow.verdictAfter)
      : flow.verdictAfter;
    return compileFlow({ ...flow, stages, verdictAfter, byWorth: [] });
  });
  return (vehicle) => askInOrder(charts[vehicle.seed % orders]!, vehicle);
}

function shuffled<One>(all: readonly One[], random: Random): readonly One[] {
  return all
    .map((one) => ({ one, place: random.uniform() }))
    .sort((left, right) => left.place - right.place)
    .map(({ one }) => one);
}

function askInOrder(chart: Chart, { card, given }: VirtualVehicle): ReturnType<Chooser> {
  const { flow } = chart;
  const notAsked = Object.values(flow.checks)
    .filter(({ sets, writes }) => writes !== undefined || Object.keys(sets).length > 0)
    .map(({ id }) => id)
    .filter((id) => !given.has(id));
  const at = '2026-01-01T08:00:00.000Z';
  let kase = openCase(chart, { id: card.id, at, context: card.context, notAsked }).case;
  const asked: string[] = [];
  let minutes = 0;
  while (kase.state.verdict === null && (kase.state.leaders[0]?.[1] ?? 0) < likelyEnough) {
    const position = positionOf(kase);
    let input = inputAt(position, given);
    let step = turn(chart, kase, { at, input });
    if (step.messages.some(({ kind }) => kind === 'refused')) {
      input = cannot;
      step = turn(chart, kase, { at, input });
    }
    if (position.awaiting === 'answer') {
      if (!asked.includes(position.check)) asked.push(position.check);
      if (input !== cannot) minutes += flow.checks[position.check]?.minutes ?? 0;
    }
    kase = step.case;
  }
  const verdict = kase.state.verdict ?? verdictOf(flow, kase.state);
  return { ...verdict, asked, minutes };
}

const cannot: Input = { type: 'talk', talk: 'cannot' };

function inputAt(
  position: ReturnType<typeof positionOf>,
  given: ReadonlyMap<string, Given>,
): Input {
  switch (position.awaiting) {
    case 'confirm':
      return { type: 'confirm' };
    case 'wait':
      return { type: 'waited' };
    case 'answer': {
      const said = given.get(position.check);
      return said === undefined
        ? cannot
        : { type: 'answers', answers: [{ check: position.check, value: valueOf(said) }] };
    }
    default:
      return { type: 'resume' };
  }
}

function valueOf(given: Given) {
  switch (given.kind) {
    case 'choice':
      return [given.choice];
    case 'several':
      return [...given.choices];
    case 'lamp':
      return [given.glow];
    case 'reading': {
      const { value, unit, resolution } = given;
      return { value, unit, resolution };
    }
  }
}
