/**
 * What a kept case and its confirmed cause give to be counted: ids only.
 */
import { createHash } from 'node:crypto';
import { answersFound, type Case, type CaseEvent } from '@keyturn/core';
import type { ForecastOutcome } from '@keyturn/evidence';
import { caseOf, readCaseFile } from '../case-file.ts';
import { shippedFlow, type ShippedFlow } from '@keyturn/flows';
import { OutcomesError } from './outcomes-error.ts';

/** A case as its file holds it. */
export interface KeptCase {
  readonly file: string;
  readonly events: readonly CaseEvent[];
  readonly flow: ShippedFlow;
  readonly case: Case;
}

/** Reads a case file. Throws CaseFileError or FlowError where it or its flow cannot be used. */
export function readKeptCase(file: string): KeptCase {
  const { events } = readCaseFile(file);
  const [opened] = events;
  const flow = shippedFlow(opened?.type === 'opened' ? opened.flow.id : 'no-start', 'en');
  return { file, events, flow, case: caseOf(flow.chart, file, events) };
}

/**
 * The id under which a case is counted: the same each time, and nothing can be told from it. It
 * leads to the case only for who has the case.
 */
export function outcomeId(kase: Case): string {
  return createHash('sha256').update(`keyturn outcome ${kase.id}`).digest('hex').slice(0, 32);
}

/**
 * The outcome of a case whose cause someone confirmed.
 *
 * @throws OutcomesError where the case has no verdict, so that nothing was said to be confirmed or
 *   refuted, or where the cause is none of the flow's faults.
 */
export function outcomeOfCase(kept: KeptCase, cause: string): ForecastOutcome {
  const { file, events, flow } = kept;
  const { chart, texts } = flow;
  const { verdict, context } = kept.case.state;
  if (!Object.hasOwn(chart.flow.faults, cause)) {
    const names = Object.keys(chart.flow.faults).map(
      (fault) => `  ${fault}: ${texts.faults[fault]?.name ?? fault}`,
    );
    throw new OutcomesError(`there is no cause “${cause}”; there is:\n${names.join('\n')}`);
  }
  if (verdict === null) {
    throw new OutcomesError(
      `${file}, line ${String(events.length)}: the case ends there without a verdict; ` +
        'go on with it to its verdict first',
    );
  }
  const { fault, probability, ranking } = verdict;
  return {
    id: outcomeId(kept.case),
    flow: kept.case.flow,
    role: typeof context['role'] === 'string' ? context['role'] : 'unknown',
    channel: 'terminal',
    cause,
    answers: answersFound(chart, kept.case),
    forecast: { fault, probability, ranking },
  };
}
