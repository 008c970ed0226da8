/**
 * What can be saved of the outcomes of this desk. Practice is never among them.
 */
import {
  addOutcome,
  emptyCounts,
  reliabilityDiagram,
  verdictTable,
  type FlowKey,
} from '@keyturn/evidence';
import { isForecast, type DeskOutcome } from './outcome.ts';

/** A file to be saved. */
export interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

/** The outcomes of calls at the desk. */
export function realOutcomes(outcomes: readonly DeskOutcome[]): readonly DeskOutcome[] {
  return outcomes.filter(({ channel }) => channel === 'desk');
}

/** The reliability diagram of the desk's verdicts. */
export function diagramFile(outcomes: readonly DeskOutcome[], title: string): SavedFile {
  return {
    name: 'keyturn-calibration.svg',
    type: 'image/svg+xml',
    text: reliabilityDiagram(verdictTable(realOutcomes(outcomes).filter(isForecast)), title),
  };
}

/** The counts, as any other place takes them in: ids and whole numbers. */
export function countsFile(flow: FlowKey, outcomes: readonly DeskOutcome[]): SavedFile {
  let counts = emptyCounts(flow);
  for (const outcome of realOutcomes(outcomes)) {
    const added = addOutcome(counts, outcome);
    // Those of another version of the flow count other things.
    if (added.type === 'counts') ({ counts } = added);
  }
  return {
    name: 'keyturn-counts.json',
    type: 'application/json',
    text: `${JSON.stringify(counts, null, 2)}\n`,
  };
}
