/**
 * Which diagnoses led to parts that came back good: what was said when a part was bought, held
 * against what the bench and the vehicle said of it afterwards.
 */
import type { Diagnosis } from './counter-return.ts';
import type { EndedReturn } from './day.ts';

/** Reasons that say that the part was tested and is good. */
const good = ['no-fault-found', 'cause-elsewhere'];

/** Reasons that say that the part itself failed. */
const failed = [
  'drive-fault',
  'solenoid-fault',
  'motor-drag',
  'motor-open',
  'motor-resistance',
  'fails-warm',
  'vehicle-evidence',
  'case-defect',
  'cell-fault',
  'capacity-lost',
  'self-discharge',
];

/** The parts that were bought on one diagnosis and came back. */
export interface Led {
  readonly diagnosis: Diagnosis;
  readonly good: number;
  readonly failed: number;
}

/** Counts tested parts by what they were bought on; those with most good parts first. */
export function ledToGoodParts(ended: readonly EndedReturn[]): readonly Led[] {
  const rows = new Map<string, Led>();
  for (const { diagnosis, closed } of ended) {
    const isGood = good.includes(closed.reason);
    if (!isGood && !failed.includes(closed.reason)) continue;
    const key = keyOf(diagnosis);
    const before = rows.get(key) ?? { diagnosis, good: 0, failed: 0 };
    rows.set(key, {
      ...before,
      good: before.good + (isGood ? 1 : 0),
      failed: before.failed + (isGood ? 0 : 1),
    });
  }
  return [...rows.values()].toSorted(
    (one, other) => other.good - one.good || other.failed - one.failed,
  );
}

function keyOf(diagnosis: Diagnosis): string {
  if (diagnosis.by !== 'case') return diagnosis.by;
  return `case ${diagnosis.fault ?? ''} ${diagnosis.strength ?? ''}`;
}
