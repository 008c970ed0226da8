/**
 * A condition as written in a flow file, turned into data. Which ids exist is known by then, so a
 * wrong check, answer, field or value is told where it stands.
 */
import { contextFields, valuesOf } from '../case/context.ts';
import type { Condition, Range, RangeEnd } from './condition.ts';
import type { ConditionSource } from './flow-file.ts';
import { expectName, type Place } from './place.ts';

/** What conditions may name. */
export interface Names {
  /** Check (or computed reading) to its answers or bands. */
  readonly answers: ReadonlyMap<string, readonly string[]>;
  /** The checks, and computed readings, that have a figure. */
  readonly readings: ReadonlySet<string>;
  readonly interrupts: ReadonlySet<string>;
}

/** Reads one condition; what is wrong is told at its place. */
export function readCondition(source: ConditionSource, names: Names, place: Place): Condition {
  const parts = Object.entries(source).map(([key, value]) =>
    readEntry({ key, value }, names, place.in(key)),
  );
  // Without a part it would hold always.
  if (parts.length === 0)
    place.tell('wrong-shape', 'a check of the flow or a field of the context');
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'all', of: parts };
}

interface ConditionEntry {
  readonly key: string;
  readonly value: unknown;
}

function readEntry({ key, value }: ConditionEntry, names: Names, place: Place): Condition {
  const inner = (part: unknown, at: Place): Condition =>
    readCondition(part as ConditionSource, names, at);
  switch (key) {
    case 'all':
    case 'any':
      return {
        kind: key,
        of: (value as unknown[]).map((part, index) => inner(part, place.in(index))),
      };
    case 'not':
      return { kind: 'not', of: inner(value, place) };
    case 'was':
      return everAnswered(inner(value, place));
    case 'raised':
      return anyOf(list(value).map((interrupt) => raised(String(interrupt), names, place)));
    default:
      // A check that fills a field of the context may share its name; the field is what counts.
      return names.answers.has(key) && contextFields[key] === undefined
        ? checkCondition({ key, value }, names, place)
        : contextCondition({ key, value }, place);
  }
}

function raised(interrupt: string, names: Names, place: Place): Condition {
  expectName(interrupt, { names: [...names.interrupts], what: 'an interrupt' }, place);
  return { kind: 'raised', interrupt };
}

/** Under `was`, an answer counts when it was ever given. */
function everAnswered(condition: Condition): Condition {
  switch (condition.kind) {
    case 'answer':
      return { ...condition, ever: true };
    case 'all':
    case 'any':
      return { ...condition, of: condition.of.map(everAnswered) };
    case 'not':
      return { kind: 'not', of: everAnswered(condition.of) };
    default:
      return condition;
  }
}

function checkCondition(
  { key: check, value }: ConditionEntry,
  names: Names,
  place: Place,
): Condition {
  if (value === 'answered') return { kind: 'answered', check };
  if (value === 'twice') return { kind: 'twice', check };
  if (value === 'borderline') {
    if (!names.readings.has(check)) {
      place.tell('wrong-shape', `an answer of ${check}, which is no reading`);
    }
    return { kind: 'borderline', check };
  }
  if (value === 'unanswered') return { kind: 'not', of: { kind: 'answered', check } };
  if (isRange(value)) {
    if (!names.readings.has(check))
      place.tell('wrong-shape', `an answer of ${check}, which is no reading`);
    return { kind: 'reading', check, range: rangeOf(value) };
  }
  const answers = names.answers.get(check) ?? [];
  const among = list(value).map(String);
  for (const answer of among) {
    expectName(answer, { names: answers, what: `an answer of ${check}` }, place);
  }
  return { kind: 'answer', check, among, ever: false };
}

function contextCondition({ key: path, value }: ConditionEntry, place: Place): Condition {
  const field = contextFields[path];
  if (field === undefined) {
    place.tell('unknown-id', 'a check of the flow or a field of the context', { onKey: true });
    return { kind: 'all', of: [] };
  }
  if (isRange(value)) {
    if (field.kind !== 'number') place.tell('wrong-shape', `one of: ${valuesOf(field).join(', ')}`);
    return { kind: 'context-number', path, range: rangeOf(value) };
  }
  if (value === 'unknown') return { kind: 'not', of: { kind: 'context-known', path } };
  const among = list(value);
  const values = valuesOf(field);
  // Among several values "unknown" has no place.
  const possible = among.length > 1 ? values : [...values, 'unknown'];
  for (const [index, item] of among.entries()) {
    if (!values.includes(item)) {
      const at = Array.isArray(value) ? place.in(index) : place;
      at.tell('unknown-id', `a value of ${path}: ${possible.join(', ')}`);
    }
  }
  return { kind: 'context', path, among };
}

function isRange(value: unknown): value is Record<string, RangeEnd> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function rangeOf(value: Record<string, RangeEnd>): Range {
  const { below, above, 'at-least': atLeast, 'at-most': atMost } = value;
  return {
    ...(below === undefined ? {} : { below }),
    ...(above === undefined ? {} : { above }),
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
  };
}

function anyOf(parts: readonly Condition[]): Condition {
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'any', of: parts };
}

function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [value];
}
