/**
 * A condition as written in a flow file, turned into data. Which ids exist is known by then, so a
 * wrong check, answer, field or value is told where it stands.
 */
import { contextFields, type ContextField } from '../case/context.ts';
import type { Condition, Range, RangeEnd } from './condition.ts';
import type { ConditionSource } from './flow-file.ts';
import type { Path } from './source-file.ts';
import type { Report } from './report.ts';

/** What conditions may name. */
export interface Names {
  /** Check (or computed reading) to its answers or bands. */
  readonly answers: ReadonlyMap<string, readonly string[]>;
  readonly interrupts: ReadonlySet<string>;
}

/** Reads one condition; what is wrong goes to `report` and reads as an empty condition. */
export function readCondition(
  source: ConditionSource,
  names: Names,
  where: { readonly report: Report; readonly at: Path },
): Condition {
  const parts = Object.entries(source).map(([key, value]) => {
    const at = [...where.at, key];
    const inner = (part: unknown, ...more: Path): Condition =>
      readCondition(part as ConditionSource, names, { ...where, at: [...at, ...more] });
    switch (key) {
      case 'all':
      case 'any':
        return {
          kind: key,
          of: (value as unknown[]).map((part, index) => inner(part, index)),
        } satisfies Condition;
      case 'not':
        return { kind: 'not', of: inner(value) } satisfies Condition;
      case 'was':
        return everAnswered(inner(value));
      case 'raised':
        return anyOf(
          list(value).map((interrupt) => raised(String(interrupt), names, { ...where, at })),
        );
      default:
        // A check that fills a field of the context may share its name; the field is what counts.
        return names.answers.has(key) && contextFields[key] === undefined
          ? checkCondition(key, value, names, { ...where, at })
          : contextCondition(key, value, { ...where, at });
    }
  });
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'all', of: parts };
}

interface Where {
  readonly report: Report;
  readonly at: Path;
}

function raised(interrupt: string, names: Names, where: Where): Condition {
  if (!names.interrupts.has(interrupt)) {
    where.report('unknown-id', where.at, `one of: ${[...names.interrupts].join(', ')}`);
  }
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

function checkCondition(check: string, value: unknown, names: Names, where: Where): Condition {
  if (value === 'answered') return { kind: 'answered', check };
  if (value === 'unanswered') return { kind: 'not', of: { kind: 'answered', check } };
  if (isRange(value)) return { kind: 'reading', check, range: rangeOf(value) };
  const answers = names.answers.get(check) ?? [];
  const among = list(value).map(String);
  for (const answer of among) {
    if (!answers.includes(answer)) {
      where.report('unknown-id', where.at, `an answer of ${check}: ${answers.join(', ')}`);
    }
  }
  return { kind: 'answer', check, among, ever: false };
}

function contextCondition(path: string, value: unknown, where: Where): Condition {
  const field = contextFields[path];
  if (field === undefined) {
    where.report('unknown-id', where.at, 'a check of the flow or a field of the context', {
      onKey: true,
    });
    return { kind: 'all', of: [] };
  }
  if (isRange(value)) {
    if (field.kind !== 'number') {
      where.report('wrong-shape', where.at, `one of: ${allowed(field).join(', ')}`);
    }
    return { kind: 'context-number', path, range: rangeOf(value) };
  }
  if (value === 'unknown') return { kind: 'not', of: { kind: 'context-known', path } };
  const among = list(value);
  const values = allowed(field);
  for (const item of among) {
    if (!values.includes(String(item))) {
      where.report('unknown-id', where.at, `one of: ${values.join(', ')}`);
    }
  }
  return { kind: 'context', path, among };
}

function allowed(field: ContextField): readonly string[] {
  if (field.kind === 'one' || field.kind === 'list') return field.values.map(String);
  return field.kind === 'boolean' ? ['true', 'false'] : [];
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
