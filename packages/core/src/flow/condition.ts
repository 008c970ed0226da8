/**
 * Conditions over what is known of a case. They have three outcomes: known to be true, known to
 * be false, and not known; what asks decides what "not known" means for it.
 */

import type { LimitName } from '@keyturn/electrics';

/** One end of a range: a number, or a named limit, of which the middle counts. */
export type RangeEnd = number | LimitName;

/** What a number must lie within; each end may be absent. */
export interface Range {
  readonly below?: RangeEnd;
  readonly above?: RangeEnd;
  readonly atLeast?: RangeEnd;
  readonly atMost?: RangeEnd;
}

/** A condition, as data. */
export type Condition =
  | { readonly kind: 'all'; readonly of: readonly Condition[] }
  | { readonly kind: 'any'; readonly of: readonly Condition[] }
  | { readonly kind: 'not'; readonly of: Condition }
  /** The answer of a check is one of these; with `ever`, some answer so far was. */
  | {
      readonly kind: 'answer';
      readonly check: string;
      readonly among: readonly string[];
      readonly ever: boolean;
    }
  /** The check has been answered with something else than "don't know" or "can't". */
  | { readonly kind: 'answered'; readonly check: string }
  /** The check has been answered so twice or more. */
  | { readonly kind: 'twice'; readonly check: string }
  /** A reading was taken and lies too close to a bound to be called. */
  | { readonly kind: 'borderline'; readonly check: string }
  /** The figure read lies within a range, in the check's unit. */
  | { readonly kind: 'reading'; readonly check: string; readonly range: Range }
  /** A field of the context has one of these values, or holds one of them where it is a list. */
  | { readonly kind: 'context'; readonly path: string; readonly among: readonly unknown[] }
  | { readonly kind: 'context-number'; readonly path: string; readonly range: Range }
  /** A field of the context is known, whatever its value. */
  | { readonly kind: 'context-known'; readonly path: string }
  /** The interrupt has been raised in this case. */
  | { readonly kind: 'raised'; readonly interrupt: string };

/** True, false, or not known. */
export type Truth = boolean | undefined;

/** What was found by a check: how likely each of its answers or bands is. */
export interface Finding {
  readonly check: string;
  /** Answer or band to its chance; several answers that hold together have 1 each. */
  readonly weights: Readonly<Record<string, number>>;
  /** The figure in the check's unit, for a reading taken by a meter. */
  readonly value?: number;
}

/** What conditions are held against. */
export interface Known {
  /** The present finding of a check, or undefined when there is none. */
  readonly finding: (check: string) => Finding | undefined;
  /** Every finding of a check so far, oldest first. */
  readonly findings: (check: string) => readonly Finding[];
  /** A field of the context by its dotted path; quantities as numbers in their declared unit. */
  readonly context: (path: string) => unknown;
  readonly raised: (interrupt: string) => boolean;
  /** The middle of a named limit in the present context; undefined where it cannot be given. */
  readonly limit: (name: LimitName) => number | undefined;
}

/** A band counts as found, or as ruled out, from this chance on: JCGM 106 leaves it to the user. */
export const certain = 0.95;

/** Holds a condition against what is known. No side effects. */
export function holds(condition: Condition, known: Known): Truth {
  switch (condition.kind) {
    case 'all':
      return every(condition.of, known);
    case 'any':
      return some(condition.of, known);
    case 'not':
      return negate(holds(condition.of, known));
    case 'answer':
      return answerAmong(condition, known);
    case 'answered':
      return known.finding(condition.check) !== undefined;
    case 'twice':
      return known.findings(condition.check).length > 1;
    case 'borderline':
      return isBorderline(known.finding(condition.check));
    case 'reading':
      return within(known.finding(condition.check)?.value, condition.range, known);
    case 'context':
      return contextAmong(known.context(condition.path), condition.among);
    case 'context-number':
      return within(known.context(condition.path), condition.range, known);
    case 'context-known':
      return known.context(condition.path) !== undefined;
    case 'raised':
      return known.raised(condition.interrupt);
  }
}

/** The checks that a condition asks about. */
export function checksOf(condition: Condition): readonly string[] {
  switch (condition.kind) {
    case 'all':
    case 'any':
      return condition.of.flatMap(checksOf);
    case 'not':
      return checksOf(condition.of);
    case 'answer':
    case 'answered':
    case 'twice':
    case 'borderline':
    case 'reading':
      return [condition.check];
    default:
      return [];
  }
}

/** Of those the checks that must be made for it to hold: what is to be left unanswered need not. */
export function checksToMake(condition: Condition): readonly string[] {
  switch (condition.kind) {
    case 'all':
    case 'any':
      return condition.of.flatMap(checksToMake);
    case 'not':
      return condition.of.kind === 'answered' ? [] : checksToMake(condition.of);
    default:
      return checksOf(condition);
  }
}

/** The fields of the context that a condition asks about, by dotted path. */
export function fieldsOf(condition: Condition): readonly string[] {
  switch (condition.kind) {
    case 'all':
    case 'any':
      return condition.of.flatMap(fieldsOf);
    case 'not':
      return fieldsOf(condition.of);
    case 'context':
    case 'context-number':
    case 'context-known':
      return [condition.path];
    default:
      return [];
  }
}

function every(parts: readonly Condition[], known: Known): Truth {
  let truth: Truth = true;
  for (const part of parts) {
    const one = holds(part, known);
    if (one === false) return false;
    if (one === undefined) truth = undefined;
  }
  return truth;
}

function some(parts: readonly Condition[], known: Known): Truth {
  let truth: Truth = false;
  for (const part of parts) {
    const one = holds(part, known);
    if (one === true) return true;
    if (one === undefined) truth = undefined;
  }
  return truth;
}

function negate(truth: Truth): Truth {
  return truth === undefined ? undefined : !truth;
}

function answerAmong(condition: Extract<Condition, { kind: 'answer' }>, known: Known): Truth {
  if (condition.ever) {
    const found = known.findings(condition.check);
    if (found.length === 0) return undefined;
    const truths = found.map((finding) => isAmong(finding, condition.among));
    if (truths.includes(true)) return true;
    return truths.includes(undefined) ? undefined : false;
  }
  const finding = known.finding(condition.check);
  return finding === undefined ? undefined : isAmong(finding, condition.among);
}

/** Whether what was found is one of several answers; not known where it is borderline. */
export function isAmong(finding: Finding, among: readonly string[]): Truth {
  let share = 0;
  for (const answer of among) share += finding.weights[answer] ?? 0;
  if (share >= certain) return true;
  return share <= 1 - certain ? false : undefined;
}

/** True where no band is certain; without bands nothing is known of it. */
export function isBorderline(finding: Finding | undefined): Truth {
  if (finding === undefined) return false;
  const shares = Object.values(finding.weights);
  return shares.length === 0 ? undefined : shares.every((share) => share < certain);
}

function contextAmong(value: unknown, among: readonly unknown[]): Truth {
  if (value === undefined) return undefined;
  return Array.isArray(value) ? value.some((one) => among.includes(one)) : among.includes(value);
}

/** Whether a figure lies within a range; not known without the figure or the limit. */
export function within(value: unknown, range: Range, known: Known): Truth {
  if (typeof value !== 'number') return undefined;
  let truth: Truth = true;
  for (const [end, fits] of rangeTests) {
    const limit = limitAt(range[end], known);
    if (limit === null) continue;
    if (limit === undefined) truth = undefined;
    else if (!fits(value, limit)) return false;
  }
  return truth;
}

const rangeTests: readonly (readonly [keyof Range, (value: number, limit: number) => boolean])[] = [
  ['below', (value, limit) => value < limit],
  ['above', (value, limit) => value > limit],
  ['atLeast', (value, limit) => value >= limit],
  ['atMost', (value, limit) => value <= limit],
];

/** The number at an end of a range: null where there is none, undefined where it is not known. */
function limitAt(end: RangeEnd | undefined, known: Known): number | null | undefined {
  if (end === undefined) return null;
  return typeof end === 'number' ? end : known.limit(end);
}
