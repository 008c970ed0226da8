/**
 * Whether the answers of a case fit together, and which of them fits least.
 */
import { contradictionIn, type MadeCheck } from '@keyturn/evidence';
import type { Flow } from '../flow/flow.ts';
import { priorWeights, tableOf } from './belief.ts';
import { evidenceTables } from './evidence-tables.ts';
import type { Findings } from './findings.ts';

/** The check whose answer fits least, where the answers together are hardly possible. */
export function suspectAmong(flow: Flow, findings: Findings): string | undefined {
  const made = madeChecks(flow, findings);
  const priors = priorWeights(flow, findings);
  return contradictionIn(evidenceTables(flow).model, made, priors)?.suspect;
}

/** Checks of whose answers one holds, as they were first answered; readings as last read. */
function madeChecks(flow: Flow, findings: Findings): readonly MadeCheck[] {
  const { several } = evidenceTables(flow);
  return [...findings.all].flatMap(([id, found]) => {
    const table = tableOf(flow, findings, id);
    const telling = flow.checks[id]?.form.kind === 'choice' ? found[0] : found.at(-1);
    if (table === undefined || telling === undefined || several.has(id)) return [];
    const answers = [...table.rows];
    const shares = answers.map(([answer]) => telling.weights[answer] ?? 0);
    const total = shares.reduce((sum, one) => sum + one, 0);
    return total > 0
      ? [
          {
            id,
            rows: answers.map(([, row]) => row.likelihoods),
            shares: shares.map((one) => one / total),
          },
        ]
      : [];
  });
}
