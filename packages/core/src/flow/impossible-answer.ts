/**
 * Answers that a table holds to be impossible: once given they could not be reckoned with.
 */
import type { FlowFile } from './flow-file.ts';
import type { Place } from './place.ts';

type TableSource = NonNullable<FlowFile['likelihoods']>[string][number];

/** Tells each of the answers that no vehicle gives, whatever its fault, and not even by mistake. */
export function tellImpossibleAnswers(
  source: TableSource,
  answers: readonly string[],
  place: Place,
): void {
  const rows = Object.values(source['of-100']);
  // A row that names something else may stand for any answer, or is told of elsewhere.
  if (rows.some((row) => Object.keys(row).some((answer) => !answers.includes(answer)))) return;
  for (const answer of answers) {
    if (rows.some((row) => (row[answer] ?? 0) > 0) || isMistakenFor(source, answer)) continue;
    place.tell('bad-row', `a share of ${answer} above 0 in some row, or it would be impossible`, {
      value: `no vehicle that answers ${answer}`,
    });
  }
}

function isMistakenFor(source: TableSource, answer: string): boolean {
  const neighbours = source['mistaken-for'];
  if ((source.mistaken ?? 0) === 0) return false;
  return neighbours === undefined || Object.values(neighbours).flat().includes(answer);
}
