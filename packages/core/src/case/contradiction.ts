/**
 * Whether the answers of a case fit together, and which of them fits least.
 */
import { contradictionIn, type MadeCheck } from '@keyturn/evidence';
import type { Flow } from '../flow/flow.ts';
import { contextFindings, posteriorOf, tellingOf } from './belief.ts';
import { chancesOf } from './answer-evidence.ts';
import { evidenceTables } from './evidence-tables.ts';
import type { Findings } from './findings.ts';
import { hypothesesOf } from './hypotheses.ts';

/** The check whose answer fits least, where the answers together are hardly possible. */
export function suspectAmong(flow: Flow, findings: Findings): string | undefined {
  const { owner } = hypothesesOf(flow, findings).space;
  const { hypotheses, states } = posteriorOf(flow, findings, contextFindings(flow, findings));
  const priors = states.map((share, state) => share * (hypotheses[owner[state] ?? 0] ?? 0));
  return contradictionIn(madeChecks(flow, findings), priors)?.suspect;
}

/** Checks of whose answers one holds, as they were first answered; readings as last read. */
function madeChecks(flow: Flow, findings: Findings): readonly MadeCheck[] {
  const { several } = evidenceTables(flow);
  return [...findings.all].flatMap(([id, found]) => {
    if (several.has(id)) return [];
    const telling = tellingOf(flow, id, found);
    const rows = chancesOf(flow, findings, id);
    if (rows === undefined || telling === undefined) return [];
    const answers = [...rows];
    const shares = answers.map(([answer]) => telling.weights[answer] ?? 0);
    const total = shares.reduce((sum, one) => sum + one, 0);
    return total > 0
      ? [
          {
            id,
            rows: answers.map(([, row]) => row),
            shares: shares.map((one) => one / total),
          },
        ]
      : [];
  });
}
