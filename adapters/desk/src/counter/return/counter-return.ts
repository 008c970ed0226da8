/**
 * A part that came back, as the counter keeps it: ids, figures and amounts, nothing of the customer.
 */
import type { CaseEvent, DecisionMessage, SoldPart, Strength, VehicleProof } from '@keyturn/core';
import type { Sitting } from '@keyturn/element/sittings';

/** The flows that judge returns, by the part that comes back. */
export const flowOf: Readonly<Record<SoldPart, string>> = {
  starter: 'starter-return',
  battery: 'battery-return',
};

/** What the part was bought on, as far as anybody knows. */
export const grounds = ['not-told', 'workshop', 'own-guess', 'our-advice'] as const;

/** What was said to be at fault when the part was bought: somebody's word, or a measured case. */
export type Diagnosis =
  | { readonly by: (typeof grounds)[number] }
  | { readonly by: 'case'; readonly fault: string | null; readonly strength: Strength | null };

/** A no-start case of the vehicle, in short. */
export interface VehicleCase {
  readonly id: string;
  /** True where its readings were told by hand; left out it came by its code or file. */
  readonly isByHand?: boolean;
  /** When its last finding was given, ISO 8601. */
  readonly at: string;
  /** Its findings as a code. */
  readonly code: string;
  /** The fault that it names, and how surely; null where it came to no verdict. */
  readonly fault: string | null;
  readonly strength: Strength | null;
  readonly complaint: string | null;
  readonly fuel: string | null;
  /** Rated volts of the vehicle; null where they are not known. */
  readonly nominal: number | null;
  /** What it says of each part that may come back. */
  readonly proof: Readonly<Record<SoldPart, VehicleProof>>;
}

/** How a return ended. */
export interface Closed {
  /** ISO 8601. */
  readonly at: string;
  readonly decide: string;
  /** A reason of the flow, or `goodwill`. */
  readonly reason: string;
  readonly refund: DecisionMessage['refund'] | null;
  /** Who takes it back as goodwill. */
  readonly by: string | null;
}

/** A return. */
export interface CounterReturn {
  readonly id: string;
  /** ISO 8601. */
  readonly openedAt: string;
  readonly part: SoldPart;
  /** The shop that takes it, by the name in its terms; null where it has given none. */
  readonly shop: string | null;
  /** What it is called, and its number; empty where nothing is known. */
  readonly name: string;
  readonly number: string;
  readonly receipt: string;
  readonly sitting: Sitting;
  /** What was typed and not taken yet, by check; the price by its place in the context. */
  readonly typed: Readonly<Record<string, string>>;
  /** The case that speaks of this part. */
  readonly vehicle: VehicleCase | null;
  readonly diagnosis: Diagnosis;
  /** Since when it is put aside, ISO 8601; null while it is worked on. */
  readonly aside: string | null;
  /** The lead who takes it back as goodwill, by name; null where nobody does. */
  readonly goodwill: string | null;
  /** The invented part, where it is practice. */
  readonly practice: string | null;
  readonly closed: Closed | null;
  /** How often it has been kept: two windows that write at once are told apart by it. */
  readonly version: number;
}

/** What is typed of a return and not taken, after these events. */
export function stillTyped(
  { typed }: CounterReturn,
  events: readonly CaseEvent[],
): CounterReturn['typed'] {
  const isTaken = (of: string): boolean =>
    events.some(
      (event) =>
        ('check' in event && event.check === of) ||
        (event.type === 'context-changed' && of in event.context),
    );
  return Object.fromEntries(Object.entries(typed).filter(([of]) => !isTaken(of)));
}

/** How a return ends as it stands: as goodwill, or as it was decided; undefined before that. */
export function closedAsDecided({
  goodwill,
  sitting,
}: CounterReturn): Omit<Closed, 'at'> | undefined {
  if (goodwill !== null) {
    return { decide: 'accept', reason: 'goodwill', refund: null, by: goodwill };
  }
  const { decision } = sitting.case.state;
  if (decision === null) return undefined;
  const { decide, reason, refund = null } = decision;
  return { decide, reason, refund, by: null };
}
