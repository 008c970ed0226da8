/**
 * A place in a flow file: how the readers of a flow tell what is wrong, and where.
 */
import type { Issue, IssueCode } from './issue.ts';
import type { Path, SourceFile } from './source-file.ts';

/** How an issue is told. */
interface Telling {
  /** True where the key itself is what is wrong. */
  readonly onKey?: boolean;
  /** What to show as the offending value; by default what stands there. */
  readonly value?: string;
}

/** A value of a flow file, by where it stands. */
export interface Place {
  /** A value within this one. */
  readonly in: (...keys: Path) => Place;
  /** Tells an issue here. */
  readonly tell: (code: IssueCode, expected: string, telling?: Telling) => void;
}

/** The top of a file, whose issues go to `issues`; the same issue is told once. */
export function placeIn(source: SourceFile, issues: Issue[], at: Path = []): Place {
  return {
    in: (...keys) => placeIn(source, issues, [...at, ...keys]),
    tell: (code, expected, telling = {}) => {
      const issue = source.issue({ code, at, expected, ...telling });
      const text = JSON.stringify(issue);
      if (!issues.some((told) => JSON.stringify(told) === text)) issues.push(issue);
    },
  };
}

/** Tells that a name is not among those that exist. */
export function expectName(
  name: string,
  known: { readonly names: readonly string[]; readonly what: string; readonly onKey?: boolean },
  place: Place,
): void {
  if (known.names.includes(name)) return;
  place.tell('unknown-id', `${known.what}: ${known.names.join(', ')}`, {
    onKey: known.onKey ?? false,
  });
}
