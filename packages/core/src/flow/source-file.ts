/**
 * A flow file read as YAML, which remembers where each value stands.
 */
import { LineCounter, parseDocument, type Document, isNode } from 'yaml';
import type { Issue, IssueCode } from './issue.ts';

/** A file as given: its path, for messages, and its text. */
export interface FileText {
  readonly path: string;
  readonly text: string;
}

/** A step into a file's data: a key, or the index of an item. */
export type Path = readonly (string | number)[];

/** An issue as it is told: at a path of the data. */
interface ToldIssue {
  readonly code: IssueCode;
  readonly at: Path;
  readonly expected: string;
  /** True where the key itself is what is wrong. */
  readonly onKey?: boolean;
  /** What to show as the offending value; by default what stands at the path. */
  readonly value?: string;
}

/** A parsed file. */
export interface SourceFile {
  readonly path: string;
  readonly data: unknown;
  /** An issue with its line and column. */
  readonly issue: (told: ToldIssue) => Issue;
}

/** Reads a file; what is not YAML comes back as issues. */
export function readSource(file: FileText): SourceFile | readonly Issue[] {
  const lines = new LineCounter();
  const document = parseDocument(file.text, { lineCounter: lines, prettyErrors: false });
  if (document.errors.length > 0) {
    return document.errors.map((error) => {
      const { line, col } = lines.linePos(error.pos[0]);
      return {
        code: 'not-yaml',
        file: file.path,
        line,
        column: col,
        path: '',
        value: shown(file.text.slice(error.pos[0], error.pos[1])) || '""',
        expected: `YAML (${error.message})`,
      };
    });
  }
  let data: unknown;
  try {
    data = document.toJS();
  } catch (error) {
    // An alias that stands for nothing, or for far too much, is only found here.
    const expected = `YAML (${(error as Error).message})`;
    return [
      { code: 'not-yaml', file: file.path, line: 1, column: 1, path: '', value: '""', expected },
    ];
  }
  return {
    path: file.path,
    data,
    issue: ({ code, at, expected, onKey = false, value }) => {
      const { line, col } = lines.linePos(offsetOf(document, at, onKey));
      const seen = value ?? shown(onKey ? at.at(-1) : valueAt(data, at));
      return {
        code,
        file: file.path,
        line,
        column: col,
        path: at.join('.'),
        value: seen,
        expected,
      };
    },
  };
}

/** Where a value or its key begins; where nothing stands, the nearest thing around it. */
function offsetOf(document: Document, at: Path, onKey: boolean): number {
  for (let depth = at.length; depth > 0; depth--) {
    const holder = document.getIn(at.slice(0, depth - 1), true);
    if (depth === at.length && onKey && isNode(holder) && 'items' in holder) {
      const pair = (holder.items as { key?: unknown }[]).find(
        (item) => String(item.key) === String(at[depth - 1]),
      );
      if (isNode(pair?.key) && pair.key.range) return pair.key.range[0];
    }
    const node = document.getIn(at.slice(0, depth), true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return document.contents?.range?.[0] ?? 0;
}

function valueAt(data: unknown, at: Path): unknown {
  return at.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string | number, unknown>)[key]
        : undefined,
    data,
  );
}

function shown(value: unknown): string {
  if (value === undefined) return '';
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}
