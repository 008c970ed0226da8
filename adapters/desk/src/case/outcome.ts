/**
 * What a case turned out to be, as it is counted: ids only.
 */
import type { Flow } from '@keyturn/core';
import type { Forecast, ForecastOutcome, Outcome } from '@keyturn/evidence';
import type { DeskCase } from './desk-case.ts';
import { isForFault } from './help.ts';

/** An outcome; with what was forecast, where anything was. */
export interface DeskOutcome extends Outcome {
  readonly forecast?: Forecast;
}

/** True for an outcome that can be held against a forecast. */
export function isForecast(outcome: DeskOutcome): outcome is ForecastOutcome {
  return outcome.forecast !== undefined;
}

/**
 * The outcome of a case whose cause somebody confirmed, undefined where nobody did; practice is counted
 * apart. Held against it is
 * the verdict or, where help for a fault was decided on before it, what fitted best by then. Nothing
 * was forecast where somebody was only sent for the sake of a danger.
 */
export async function outcomeOf(given: {
  readonly flow: Flow;
  readonly kase: DeskCase;
  readonly cause: string | undefined;
  readonly answers: Outcome['answers'];
}): Promise<DeskOutcome | undefined> {
  const { flow, kase, cause, answers } = given;
  if (cause === undefined) return undefined;
  const forecast = forecastOf(flow, kase);
  return {
    id: await outcomeId(kase.id),
    flow: kase.sitting.case.flow,
    role: 'dispatcher',
    channel: kase.practice === null ? 'desk' : 'practice',
    cause,
    answers,
    ...(forecast === undefined ? {} : { forecast }),
  };
}

function forecastOf(flow: Flow, { sitting, sent }: DeskCase): Forecast | undefined {
  const { verdict, leaders } = sitting.case.state;
  if (verdict !== null) {
    const { fault, probability, ranking, stops } = verdict;
    // What a hard stop does instead is done whatever the fault is, and none was named.
    const isInstead = flow.stops.some(({ id, instead }) => instead && stops.includes(id));
    return isInstead ? undefined : { fault, probability, ranking };
  }
  const [leader] = leaders;
  if (leader === undefined || sent === null || !isForFault(flow, sent.help)) return undefined;
  return { fault: leader[0], probability: leader[1], ranking: leaders };
}

/** The same id under which the case is counted anywhere else; nothing can be told from it. */
async function outcomeId(id: string): Promise<string> {
  const bytes = new TextEncoder().encode(`keyturn outcome ${id}`);
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash.subarray(0, 16)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
