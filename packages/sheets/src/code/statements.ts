/**
 * The statements that a code is a list of: `battery-look=sound`, or `battery-rest` with a figure
 * behind it. Each is written as a mark of three bytes, worked out from its words, so that a code
 * outlives a flow in which checks come and go.
 */
import { contextFields, optionsOf, type Check, type Flow } from '@keyturn/core';

/** What a statement says. */
export type Statement =
  /** Of a check or an interrupt; `unknown` and `cannot` are answers. */
  | {
      readonly says: 'not-asked' | 'doubted' | 'unknown' | 'cannot' | 'raised';
      readonly id: string;
    }
  /** A field of the context and its value; of what follows behind it, only the field. */
  | { readonly says: 'context'; readonly path: string; readonly value?: string | number | boolean }
  /** An answer that is one choice, one band or `done`. */
  | { readonly says: 'answer'; readonly check: string; readonly answer: string }
  /** Several choices at once: their number and the statement of each follow. */
  | { readonly says: 'answers'; readonly check: string }
  /** A day follows, and the statement of the band in which it lies. */
  | { readonly says: 'day'; readonly check: string }
  /** A figure in the check's own unit and steps follows; or one with all that is told of it. */
  | { readonly says: 'figure' | 'figure-in-full'; readonly check: string };

/** The statements of a flow, by their marks and by their words. */
export interface Statements {
  readonly byMark: ReadonlyMap<number, Statement>;
  /** Throws RangeError for what no statement of the flow says. */
  readonly markOf: (statement: Statement) => number;
}

const kept = new WeakMap<Flow, Statements>();

/**
 * All that can be stated in a flow, worked out once for each. Throws RangeError where two
 * statements have the same mark, naming both: one of the ids must be another then.
 */
export function statementsOf(flow: Flow): Statements {
  const known = kept.get(flow);
  if (known !== undefined) return known;
  const byMark = new Map<number, Statement>();
  for (const statement of allStatements(flow)) {
    const mark = markOf(wordsOf(statement));
    const other = byMark.get(mark);
    if (other !== undefined) {
      throw new RangeError(
        `${flow.id}: “${wordsOf(statement)}” and “${wordsOf(other)}” have the same mark in codes`,
      );
    }
    byMark.set(mark, statement);
  }
  const made: Statements = {
    byMark,
    markOf: (statement) => {
      const words = wordsOf(statement);
      const mark = markOf(words);
      if (!byMark.has(mark)) throw new RangeError(`${flow.id} has no “${words}”`);
      return mark;
    },
  };
  kept.set(flow, made);
  return made;
}

/** The mark of some words: the upper and lower bits of their FNV-1a hash in 24 bits. */
export function markOf(words: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(words)) {
    hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  }
  return (hash >>> 24) ^ (hash & 0xffffff);
}

function wordsOf(statement: Statement): string {
  switch (statement.says) {
    case 'context':
      return `context ${statement.path} ${String(statement.value ?? '')}`;
    case 'answer':
      return `answer ${statement.check} ${statement.answer}`;
    case 'answers':
    case 'day':
    case 'figure':
    case 'figure-in-full':
      return `${statement.says} ${statement.check}`;
    default:
      return `${statement.says} ${statement.id}`;
  }
}

function allStatements(flow: Flow): readonly Statement[] {
  const checks = Object.values(flow.checks);
  return [
    ...checks.flatMap(({ id }): readonly Statement[] => [
      { says: 'not-asked', id },
      { says: 'doubted', id },
      { says: 'unknown', id },
      { says: 'cannot', id },
    ]),
    ...checks.flatMap(statementsOfCheck),
    ...Object.keys(flow.interrupts).map((id): Statement => ({ says: 'raised', id })),
    ...contextStatements(),
  ];
}

function statementsOfCheck(check: Check): readonly Statement[] {
  const { id, form } = check;
  const lamp = form.kind === 'reading' ? Object.keys(form.lamp) : [];
  const named = [...new Set([...optionsOf(check), ...lamp])].map((answer): Statement => ({
    says: 'answer',
    check: id,
    answer,
  }));
  if (form.kind === 'reading') {
    return [
      ...named,
      { says: 'figure', check: id },
      { says: 'figure-in-full', check: id },
      { says: 'answers', check: id },
    ];
  }
  if (form.kind === 'date') return [...named, { says: 'day', check: id }];
  return form.kind === 'choice' && form.several
    ? [...named, { says: 'answers', check: id }]
    : named;
}

function contextStatements(): readonly Statement[] {
  return Object.entries(contextFields).flatMap(([path, field]): readonly Statement[] => {
    switch (field.kind) {
      case 'one':
        return field.values.map((value) => ({ says: 'context', path, value }));
      case 'list':
        return [
          { says: 'context', path },
          ...field.values.map((value): Statement => ({ says: 'context', path, value })),
        ];
      case 'boolean':
        return [true, false].map((value) => ({ says: 'context', path, value }));
      case 'number':
      case 'limits':
        return [{ says: 'context', path }];
      default:
        return [];
    }
  });
}
