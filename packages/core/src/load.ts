// Reading and checking the files of a flow: for authors, builds and servers, not for a page.
export { loadFlow } from './flow/load.ts';
export type { LoadResult } from './flow/load-result.ts';
export type { FileText } from './flow/source-file.ts';
export { prettifyIssue, prettifyIssues } from './flow/issue.ts';
export type { Issue, IssueCode } from './flow/issue.ts';
export { loadPolicy } from './policy/load-policy.ts';
export type { PolicyResult } from './policy/load-policy.ts';
export { flowSchema } from './flow/flow-schema.ts';
