/**
 * How the readers of a flow tell what is wrong: one call, at a path of the file they are in.
 */
import type { IssueCode } from './issue.ts';
import type { Path } from './source-file.ts';

/** Notes an issue at a path of the file in hand. */
export type Report = (
  code: IssueCode,
  at: Path,
  expected: string,
  options?: { readonly onKey?: boolean; readonly value?: string },
) => void;
