/**
 * What a case found, as it is counted once its cause is confirmed: ids only.
 */
import type { Chart } from '../chart/compile.ts';
import { questionOf } from '../flow/learned-flow.ts';
import { assess } from './assessment.ts';
import { tableOf } from './belief.ts';
import type { Case } from './case.ts';
import { isOfCircuit } from './circuit-evidence.ts';
import { evidenceTables, tablesFor } from './evidence-tables.ts';
import { likeliest } from './findings.ts';

/**
 * Question to the answers found, for every check and computed reading that bears on the faults. A
 * question is a check, or a check and which of its tables is in force, such as `battery-look/2`.
 * Of a reading near a bound it is the band of the figure itself: that is what a row speaks of.
 */
export function answersFound(
  { flow }: Chart,
  { state }: Case,
): Readonly<Record<string, readonly string[]>> {
  const { findings } = assess(flow, state);
  const { several } = evidenceTables(flow);
  const tables = tablesFor(flow, state.context['role']);
  return Object.fromEntries(
    [...findings.all].flatMap(([check, found]): [string, readonly string[]][] => {
      // The same one as the belief goes by.
      const telling = flow.checks[check]?.form.kind === 'choice' ? found[0] : found.at(-1);
      const table = tableOf(flow, findings, check);
      const all = tables.get(check);
      const [band] = telling === undefined ? [] : (likeliest(telling.weights) ?? []);
      // What the circuit tells of has no row to learn from, and is counted for whoever reads counts.
      if (table === undefined && isOfCircuit(flow, check) && band !== undefined) {
        return [[check, [band]]];
      }
      if (telling === undefined || table === undefined || all === undefined) return [];
      const answers = several.has(check)
        ? Object.keys(telling.weights).filter((answer) => answer !== 'none')
        : band === undefined
          ? undefined
          : [band];
      return answers === undefined ? [] : [[questionOf(check, all, all.indexOf(table)), answers]];
    }),
  );
}
