import { EvidenceError } from './evidence-error.ts';
import type { EvidenceErrorFacts } from './evidence-error.ts';

/** The bounds of a number, both included, and where it stands, for the message. */
export interface NumberPlace {
  /** What the number is, in words. */
  readonly what: string;
  /** Least allowed value. */
  readonly least: number;
  /** Greatest allowed value; a number must be finite even where this is infinite. */
  readonly greatest: number;
  /** Whether only whole numbers will do; false when absent. */
  readonly whole?: boolean;
  /** Where the number stands: finding, hypothesis, position. */
  readonly facts?: EvidenceErrorFacts;
}

/**
 * Refuses a number that is NaN, infinite, outside its bounds, or not whole where it must be.
 *
 * @throws EvidenceError `out-of-range`, with the facts of the place and the value seen
 */
export function requireInRange(value: number, place: NumberPlace): void {
  const { least, greatest, whole = false } = place;
  const fits = Number.isFinite(value) && value >= least && value <= greatest;
  if (fits && (!whole || Number.isInteger(value))) return;
  const facts = { ...place.facts, value };
  throw new EvidenceError(
    'out-of-range',
    `${place.what} must be ${whole ? 'whole' : 'finite'} and from ${least} to ${greatest}: ${describe(facts)}`,
    facts,
  );
}

/**
 * Refuses a row that does not have the number of entries it must have.
 *
 * @throws EvidenceError `length-mismatch`, with the length seen and the length wanted
 */
export function requireLength(
  row: ArrayLike<number>,
  wanted: number,
  place: { readonly what: string; readonly facts?: EvidenceErrorFacts },
): void {
  if (row.length === wanted) return;
  const facts = { ...place.facts, seen: row.length, wanted };
  throw new EvidenceError(
    'length-mismatch',
    `${place.what} has the wrong number of entries: ${describe(facts)}`,
    facts,
  );
}

function describe(facts: EvidenceErrorFacts): string {
  return Object.entries(facts)
    .map(([name, value]) => `${name} ${String(value)}`)
    .join(', ');
}
