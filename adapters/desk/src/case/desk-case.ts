/**
 * A case as the desk keeps it, and what is kept of the person apart from it.
 */
import type { Sitting } from '@keyturn/element/sittings';

/** Help that was sent. */
export interface Sent {
  /** What was sent, by its id in the flow. */
  readonly help: string;
  /** When, ISO 8601. */
  readonly at: string;
  /** When the caller is to be called back, ISO 8601. */
  readonly callBackAt: string;
}

/** A case on the desk: ids and figures only, nothing of the person. */
export interface DeskCase {
  readonly id: string;
  /** When the call came, ISO 8601. */
  readonly openedAt: string;
  /** When something was last said to the caller, ISO 8601. */
  readonly touchedAt: string;
  readonly sitting: Sitting;
  readonly sent: Sent | null;
  /** The invented caller, where it is practice. */
  readonly practice: string | null;
  /** How often it has been kept: two desks that write at once are told apart by it. */
  readonly version: number;
}

/** What is known of the person who calls, as typed. Kept apart, and forgotten with the case. */
export type Caller = Readonly<Partial<Record<CallerField, string>>>;

/** What is asked of a person, in the order in which a page has it. */
export const callerFields = [
  'name',
  'callback',
  'where',
  'vehicle',
  'people',
  'rolls',
  'access',
  'trailer',
] as const;

/** One thing that is asked of a person. */
export type CallerField = (typeof callerFields)[number];
