/**
 * The load under which a battery's voltage was read, held against the half of its label.
 */
import type { AnswerInput, Case } from '@keyturn/core';
import type { Figure } from '@keyturn/language';

/** A load that is not the one of the test; all in A. */
export interface WrongLoad {
  readonly load: number;
  readonly rating: number;
  /** The load of the test. */
  readonly half: number;
}

/** What the load may be off by. Common practice, no source. */
const tolerance = 0.1;

/** Standards by whose figure half of the label is the load. */
const halved: readonly unknown[] = ['sae', 'en', undefined];

/** What is wrong with a load; undefined where nothing is, or where nobody can tell. */
export function wrongLoad(
  { state: { context } }: Case,
  told: Figure | undefined,
  beside: readonly AnswerInput[] = [],
): WrongLoad | undefined {
  const label = beside.find(({ check }) => check === 'label-rating')?.value;
  const rating =
    label !== undefined && 'value' in label ? label.value : context['part.battery.rating'];
  if (told === undefined || typeof rating !== 'number') return undefined;
  if (!halved.includes(context['part.battery.standard'])) return undefined;
  const half = rating / 2;
  if (Math.abs(told.value - half) <= tolerance * half) return undefined;
  return { load: told.value, rating, half };
}
