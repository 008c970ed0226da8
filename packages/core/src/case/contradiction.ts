/**
 * Whether the answers of a case fit together, and which of them fits least.
 */
import { contradictionIn, type MadeCheck } from '@keyturn/evidence';
import type { Flow } from '../flow/flow.ts';
import { contextFindings, posteriorIn, posteriorOf, tellingOf } from './belief.ts';
import { chancesOf } from './answer-evidence.ts';
import { oddChances } from './circuit-evidence.ts';
import { evidenceTables } from './evidence-tables.ts';
import type { Findings } from './findings.ts';
import { hypothesesOf } from './hypotheses.ts';

/**
 * The check whose answer fits least, where the answers together are hardly possible, or where a
 * reading is more than likely a slip.
 */
export function suspectAmong(flow: Flow, findings: Findings): string | undefined {
  const { owner } = hypothesesOf(flow, findings).space;
  const { hypotheses, states } = posteriorOf(flow, findings, contextFindings(flow, findings));
  const priors = states.map((share, state) => share * (hypotheses[owner[state] ?? 0] ?? 0));
  return contradictionIn(madeChecks(flow, findings), priors)?.suspect ?? oddReading(flow, findings);
}

/** From this chance on that a reading says nothing it is taken once more. */
const likelySlip = 0.9;

/** The reading that is likeliest to be a slip, if one is, whichever of the listed faults it is. */
function oddReading(flow: Flow, findings: Findings): string | undefined {
  if (findings.placed.size === 0) return undefined;
  const found = hypothesesOf(flow, findings);
  const { owner } = found.space;
  const { open } = evidenceTables(flow);
  const { hypotheses, states } = posteriorIn(flow, findings);
  // A cause that nobody listed may give any figure, and would explain each away.
  const listed = new Float64Array(found.failing.length);
  let whole = 0;
  for (let state = 0; state < states.length; state += 1) {
    const of = owner[state] ?? 0;
    if (open[of] === true) continue;
    const share = (states[state] ?? 0) * (hypotheses[of] ?? 0);
    const solved = found.solved[state] ?? 0;
    listed[solved] = (listed[solved] ?? 0) + share;
    whole += share;
  }
  let suspect: { readonly check: string; readonly chance: number } | undefined;
  for (const [check, placed] of findings.placed) {
    const value = findings.known.finding(check)?.value;
    if (value === undefined) continue;
    const odd = oddChances(flow, found, { check, placed, value, findings });
    const slip = listed.reduce((sum, share, solved) => sum + share * (odd?.[solved] ?? 0), 0);
    const chance = slip / whole;
    if (chance >= Math.max(likelySlip, suspect?.chance ?? 0)) suspect = { check, chance };
  }
  return suspect?.check;
}

/** Checks of whose answers one holds, as they were first answered; readings as last read. */
function madeChecks(flow: Flow, findings: Findings): readonly MadeCheck[] {
  const { several } = evidenceTables(flow);
  return [...findings.all].flatMap(([id, found]) => {
    if (several.has(id)) return [];
    const telling = tellingOf(flow, id, found);
    const rows = chancesOf(flow, findings, id)?.rows;
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
