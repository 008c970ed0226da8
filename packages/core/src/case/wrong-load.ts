/**
 * The load under which a battery's voltage was read, held against the half of its label.
 */
import { convert, isUnit } from '@keyturn/electrics';
import type { Flow } from '../flow/flow.ts';
import type { AnswerInput } from './input.ts';
import type { WrongLoad } from './message.ts';
import type { CaseState } from './state.ts';

/** What the load may be off by. Common practice, no source. */
const tolerance = 0.1;

/** Standards by whose figure half of the label is the load. */
const halved: readonly unknown[] = ['sae', 'en', undefined];

/** Where a label is known: of the battery that came back, or of the vehicle's. */
const labels = ['part.battery', 'vehicle.battery'] as const;

/**
 * What is wrong with the load of a reading; undefined where nothing is, or where nobody can tell.
 * `beside` is what is answered with it.
 */
export function wrongLoad(
  flow: Flow,
  { context }: Pick<CaseState, 'context'>,
  given: { readonly reading: AnswerInput; readonly beside: readonly AnswerInput[] },
): WrongLoad | undefined {
  const { reading, beside } = given;
  if (!('unit' in reading.value) || reading.value.under === undefined) return undefined;
  if (flow.checks[reading.check]?.does.includes('load') !== true) return undefined;
  const known = { ...context, ...toldIn(flow, beside) };
  const labelled = (what: 'rating' | 'standard'): unknown =>
    labels.map((label) => known[`${label}.${what}`]).find((one) => one !== undefined);
  const [told, rating] = [inAmperes(reading.value.under), labelled('rating')];
  if (told === undefined || typeof rating !== 'number') return undefined;
  if (!halved.includes(labelled('standard'))) return undefined;
  const half = rating / 2;
  return Math.abs(told - half) <= tolerance * half ? undefined : { told, rating, half };
}

/** What of the context is answered, by its path; amperes in A. */
function toldIn(flow: Flow, answers: readonly AnswerInput[]): Readonly<Record<string, unknown>> {
  const told: Record<string, unknown> = {};
  for (const { check: id, value } of answers) {
    const check = flow.checks[id];
    if (check === undefined) continue;
    if (!('unit' in value)) Object.assign(told, ...value.map((one) => check.sets[one] ?? {}));
    else if (check.writes !== undefined) told[check.writes] = inAmperes(value);
  }
  return told;
}

function inAmperes({ value, unit }: { value: number; unit: string }): number | undefined {
  if (!isUnit(unit)) return undefined;
  try {
    return convert({ value, unit }, 'A').value;
  } catch {
    return undefined;
  }
}
