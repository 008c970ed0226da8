/**
 * What is wrong with a flow, as data: where it stands, what stands there, and what was expected.
 */

/** A closed list of what can be wrong with a flow file. */
export type IssueCode =
  /** The file is not YAML. */
  | 'not-yaml'
  /** The value has not the shape that the schema asks for. */
  | 'wrong-shape'
  /** A property that the schema does not know. */
  | 'unknown-property'
  /** A property that must be there is missing. */
  | 'missing'
  /** The same id is given twice. */
  | 'twice'
  /** An id that nothing defines. */
  | 'unknown-id'
  /** Something defined that nothing uses, or that can never be reached. */
  | 'unused'
  /** Bands that do not ascend, or whose last is not `above`. */
  | 'bad-bands'
  /** A likelihood row that does not add up to 100, or lacks faults. */
  | 'bad-row';

/** One fault of a flow file. */
export interface Issue {
  readonly code: IssueCode;
  readonly file: string;
  /** 1-based. */
  readonly line: number;
  /** 1-based. */
  readonly column: number;
  /** Where in the file's data, as keys joined by dots. */
  readonly path: string;
  /** The offending value as written, cut to 60 characters; empty when something is missing. */
  readonly value: string;
  /** What was expected in its place. */
  readonly expected: string;
}

/** An issue as one line: `file:line:column path: "value" is wrong; expected …`. */
export function prettifyIssue(issue: Issue): string {
  const place = `${issue.file}:${String(issue.line)}:${String(issue.column)}`;
  const what = issue.value === '' ? 'is missing' : `has ${issue.value}`;
  return `${place} ${issue.path || '(top)'} ${what}; expected ${issue.expected}`;
}

/** Issues as text, one a line, in the order of the files. */
export function prettifyIssues(issues: readonly Issue[]): string {
  return issues.map(prettifyIssue).join('\n');
}
