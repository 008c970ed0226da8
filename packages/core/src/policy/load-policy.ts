/**
 * Reading a shop's terms from a file, YAML or JSON: all that is wrong comes back at once, with its
 * place.
 */
import { deepFreeze } from '../flow/deep-freeze.ts';
import type { Issue } from '../flow/issue.ts';
import { readSource, type FileText, type Path, type SourceFile } from '../flow/source-file.ts';
import { policyFaults, policyShape, type Policy } from './policy.ts';

/** The terms, or everything that is wrong with their file. */
export type PolicyResult =
  | { readonly type: 'policy'; readonly policy: Policy }
  | { readonly type: 'issues'; readonly issues: readonly Issue[] };

/** Reads and checks a policy. Never throws on a bad file. */
export function loadPolicy(file: FileText): PolicyResult {
  const source = readSource(file);
  if (!('data' in source)) return { type: 'issues', issues: source };
  const read = policyShape.safeParse(source.data);
  if (!read.success) {
    return {
      type: 'issues',
      issues: read.error.issues.map((issue) => shapeIssue(source, issue)),
    };
  }
  const faults = policyFaults(read.data);
  if (faults.length === 0) return { type: 'policy', policy: deepFreeze(read.data) };
  return {
    type: 'issues',
    issues: faults.map(({ path, expected }) =>
      source.issue({ code: 'wrong-shape', at: path, expected }),
    ),
  };
}

type ShapeIssue = NonNullable<ReturnType<typeof policyShape.safeParse>['error']>['issues'][number];

/** Of a choice of shapes that none fits, the one that was likely meant is told. */
function shapeIssue(source: SourceFile, issue: ShapeIssue): Issue {
  const at = issue.path as Path;
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    return source.issue({
      code: 'unknown-property',
      at: [...at, key],
      expected: `another name, or none: ${issue.message}`,
      onKey: true,
    });
  }
  if (issue.code === 'invalid_union') {
    const inner = issue.errors.find((errors) => errors.some(({ path }) => path.length > 0))?.[0];
    if (inner !== undefined) {
      return shapeIssue(source, { ...inner, path: [...issue.path, ...inner.path] });
    }
    return source.issue({ code: 'wrong-shape', at, expected: unions[String(at.at(-1))] ?? '' });
  }
  return source.issue({ code: 'wrong-shape', at, expected: issue.message });
}

/** What the terms of several shapes may be. */
const unions: Readonly<Record<string, string>> = {
  'pro-rata': 'by-month, or a list of steps { from, to, percent } in months of use',
  restocking: '{ percent } of the price, or { amount } in minor units',
};
