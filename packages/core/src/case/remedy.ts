/**
 * What each fault asks for as things stand: a remedy, and whom to send.
 */
import { holds } from '../flow/condition.ts';
import type { Fault, Flow, Remedy } from '../flow/flow.ts';
import type { Assessment } from './assessment.ts';
import type { Strength } from './message.ts';
import { forbiddenActivities } from './possible.ts';

/** An unproved fault is likely when it is likelier than all others together; else the case is open. */
export const likelyFrom = 0.5;

/** What is sent where the caller needs no help. */
export const nobody = 'nothing';

/** What is known of a fault when its remedy is chosen. */
export interface Judged {
  readonly flow: Flow;
  readonly fault: Fault;
  readonly strength: Strength;
}

/**
 * True where the verdict is strong enough for a remedy. What faults have in common is as likely as
 * they are together: two bad cables, of which one is, ask for a cable.
 */
function isStrongEnough(
  { do: what, from }: { readonly do: string; readonly from: Remedy['from'] },
  { flow, strength }: Judged,
  { ranking }: Assessment,
): boolean {
  if (from === undefined || strength === 'proved') return true;
  if (from === 'proved') return false;
  const shared = ranking
    .filter(([id]) => flow.faults[id]?.remedies.some(({ remedy }) => remedy === what))
    .reduce((sum, [, share]) => sum + share, 0);
  return strength === 'likely' || shared >= likelyFrom;
}

/**
 * The first remedy that no stop forbids, that the verdict is strong enough for, and whose condition
 * is known to hold or that has none.
 */
function remedyOf(judged: Judged, assessment: Assessment): Remedy | undefined {
  const { known } = assessment.findings;
  const forbidden = forbiddenActivities(assessment.stops);
  const allowed = judged.fault.remedies.filter(
    ({ remedy, does, from }) =>
      !does.some((activity) => forbidden.includes(activity)) &&
      isStrongEnough({ do: remedy, from }, judged, assessment),
  );
  return (
    allowed.find(({ when }) => when === undefined || holds(when, known) === true) ?? allowed.at(-1)
  );
}

/** What a fault asks for as things stand, when it is judged so surely. */
export function remedyFor(judged: Judged, assessment: Assessment): string {
  return remedyOf(judged, assessment)?.remedy ?? '';
}

/** Whom a fault asks for as things stand, when it is judged so surely. */
export function sendFor(judged: Judged, assessment: Assessment): string {
  return remedyOf(judged, assessment)?.send ?? judged.fault.send;
}
