/**
 * What was measured on a vehicle and is told by hand: the no-start case that it makes.
 */
import type { Chart } from '../chart/compile.ts';
import type { Flow } from '../flow/flow.ts';
import type { SoldPart } from '../policy/policy.ts';
import type { AnswerInput, Input } from './input.ts';
import { isAfterVerdict } from './interpret.ts';
import { openCase, turn, type Step } from './turn.ts';

/** What is told by hand. */
export interface ToldByHand {
  /** The part that the vehicle is to speak of. */
  readonly part: SoldPart;
  /** What the customer says of it, as the return has it. */
  readonly claim: string | undefined;
  /** What is known of the vehicle by its sale: its limits go by that. */
  readonly vehicle: Readonly<Record<string, unknown>>;
  readonly readings: readonly AnswerInput[];
}

/** Of the flow of vehicles' cases as much as a page needs that asks for readings by hand. */
export interface FlowByHand {
  readonly id: string;
  readonly checks: Flow['checks'];
  /** The readings of each part, in the order of their fields. */
  readonly readings: Readonly<Record<SoldPart, readonly string[]>>;
}

/** Takes out of a flow what asks for readings by hand. */
export function flowByHand({ id, parts, checks }: Flow): FlowByHand {
  const of = (part: SoldPart): readonly string[] => parts[part]?.byHand.readings ?? [];
  const readings = { starter: of('starter'), battery: of('battery') };
  const asked = Object.values(readings).flat();
  const kept = Object.entries(checks).filter(([check]) => asked.includes(check));
  return { id, checks: Object.fromEntries(kept), readings };
}

/**
 * Opens the case of a vehicle by what is told of it. Pure: id and time come in. A reading that cannot
 * be taken leaves all of them out, and the messages say what was wrong.
 *
 * @param chart - That of the flow of vehicles' cases.
 */
export function caseByHand(
  chart: Chart,
  opening: { readonly id: string; readonly at: string },
  { part, claim, vehicle, readings }: ToldByHand,
): Step {
  const { parts, interrupts } = chart.flow;
  const complaint = parts[part]?.byHand.complaint[claim ?? ''];
  const answers = [
    ...(complaint === undefined ? [] : [{ check: 'complaint', value: [complaint] }]),
    ...readings,
  ];
  // A vehicle on which it was measured how it charges runs.
  const isRunning = readings.some(({ check }) => isAfterVerdict(chart.flow, check));
  const runs = isRunning
    ? Object.values(interrupts).find(({ then }) => then === 'prove')
    : undefined;
  const inputs: readonly Input[] = [
    ...(runs === undefined
      ? []
      : [{ type: 'interrupt', interrupt: runs.id } as const, { type: 'resume' } as const]),
    ...(answers.length === 0 ? [] : [{ type: 'answers', answers } as const]),
  ];
  return inputs.reduce<Step>(
    (before, input) => {
      const after = turn(chart, before.case, { at: opening.at, input });
      return { ...after, events: [...before.events, ...after.events] };
    },
    openCase(chart, { ...opening, context: { vehicle } }),
  );
}
