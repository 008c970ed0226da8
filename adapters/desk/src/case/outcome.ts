/**
 * What a case turned out to be, as it is counted: ids only.
 */
import type { CaseState } from '@keyturn/core';
import type { ForecastOutcome } from '@keyturn/evidence';
import type { DeskCase } from './desk-case.ts';

/**
 * The outcome of a case whose cause somebody confirmed; practice is counted apart. Held against it is
 * the verdict or, where help was decided on before it, what fitted best by then.
 */
export async function outcomeOf(given: {
  readonly kase: DeskCase;
  readonly cause: string;
  readonly answers: ForecastOutcome['answers'];
}): Promise<ForecastOutcome> {
  const { kase, cause, answers } = given;
  return {
    id: await outcomeId(kase.id),
    flow: kase.sitting.case.flow,
    role: 'dispatcher',
    channel: kase.practice === null ? 'desk' : 'practice',
    cause,
    answers,
    forecast: forecastOf(kase.sitting.case.state),
  };
}

function forecastOf({ verdict, leaders }: CaseState): ForecastOutcome['forecast'] {
  if (verdict !== null) {
    const { fault, probability, ranking } = verdict;
    return { fault, probability, ranking };
  }
  const [leader] = leaders;
  if (leader === undefined) throw new Error('a case of this flow always has a likeliest fault');
  return { fault: leader[0], probability: leader[1], ranking: leaders };
}

/** The same id under which the case is counted anywhere else; nothing can be told from it. */
async function outcomeId(id: string): Promise<string> {
  const bytes = new TextEncoder().encode(`keyturn outcome ${id}`);
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash.subarray(0, 16)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
