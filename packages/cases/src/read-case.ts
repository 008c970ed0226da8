/**
 * A case brought back from a store.
 */
import { foldCase, type Case, type Chart } from '@keyturn/core';
import type { CaseStore, KeptCase } from './case-store.ts';
import { digestOf } from './digest.ts';

/** A case as it stands, and whether its snapshot was of no use, so that all its events were read. */
export interface ReadCase {
  readonly case: Case;
  readonly isRebuilt: boolean;
}

/**
 * Reads a case from its snapshot; where that is damaged, from its events alone.
 *
 * @returns undefined where there is no case of that id.
 * @throws CaseError where the events belong to another flow, flow version or format.
 */
export async function readCase(
  store: Pick<CaseStore, 'read' | 'events'>,
  chart: Chart,
  id: string,
): Promise<ReadCase | undefined> {
  const kept = await store.read(id);
  if (kept === undefined) return undefined;
  if (isSound(kept)) return { case: JSON.parse(kept.snapshot) as Case, isRebuilt: false };
  return { case: foldCase(chart, await store.events(id)), isRebuilt: true };
}

/** True where a snapshot is what was kept. */
export function isSound({ snapshot, digest }: Pick<KeptCase, 'snapshot' | 'digest'>): boolean {
  return digestOf(snapshot) === digest;
}
