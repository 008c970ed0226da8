/**
 * Reading a flow from its files: YAML, then the published JSON Schema through ajv, then everything
 * that a schema cannot say. All that is wrong comes back at once; nothing is repaired in silence.
 */
import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import type { FlowFile } from './flow-file.ts';
import { flowSchema } from './flow-schema.ts';
import type { Issue } from './issue.ts';
import type { LoadResult } from './load-result.ts';
import { mergeFlow } from './merge.ts';
import { readSource, type FileText, type Path, type SourceFile } from './source-file.ts';

/**
 * Loads a flow from the texts of its files. Pure: reads no disk.
 *
 * @param files - The `.yaml` files of one flow, in any order; `path` is only used in issues.
 * @returns The frozen flow, or the issues in the order of the files. Never throws on bad files.
 */
export function loadFlow(files: readonly FileText[]): LoadResult {
  if (files.length === 0) return { type: 'issues', issues: [noFiles] };
  const read = files.map(readSource);
  const sources = read.filter((one): one is SourceFile => 'data' in one);
  const issues: Issue[] = read.flatMap((one) => ('data' in one ? [] : one));
  const wrong = sources.flatMap((source) => schemaIssues(source));
  // What has a wrong shape is left out, so that the rest is read and told of at the same time.
  const rest = sources.map((source) => ({
    source,
    data: withoutFaulty(
      source.data,
      wrong.filter(({ file }) => file === source.path),
    ),
  }));
  const merged = mergeFlow(rest.map(({ source, data }) => ({ source, data: data.kept })));
  const left = new Set(rest.flatMap(({ data }) => data.left));
  const found = merged.type === 'issues' ? merged.issues : [];
  issues.push(...wrong, ...found.filter((issue) => !followsFrom(issue, left)));
  if (issues.length === 0) return merged;
  const order = files.map(({ path }) => path);
  return {
    type: 'issues',
    issues: issues.toSorted(
      (a, b) =>
        order.indexOf(a.file) - order.indexOf(b.file) || a.line - b.line || a.column - b.column,
    ),
  };
}

const noFiles: Issue = {
  code: 'missing',
  file: '',
  line: 1,
  column: 1,
  path: '',
  value: '',
  expected: 'at least one file',
};

/** Sections that mean something only as a whole: with something wrong in one, all of it is left out. */
const wholeSections: readonly string[] = ['circuit', 'costs', 'turning', 'decisions'];

/** A file without the entries that have a wrong shape, and the ids of those. */
function withoutFaulty(
  data: unknown,
  issues: readonly Issue[],
): { readonly kept: FlowFile; readonly left: readonly string[] } {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return { kept: {}, left: [] };
  }
  const kept: Record<string, unknown> = Object.fromEntries(
    Object.entries(data).map(([section, value]: [string, unknown]) => [section, copyOf(value)]),
  );
  const left: string[] = [];
  for (const { path } of issues) {
    const [section = '', id] = path.split('.');
    // An entry with several issues is left out once, and the rest of its section stays.
    const isWhole = id === undefined || wholeSections.includes(section);
    if (!isWhole && hasEntry(Reflect.get(data, section), id)) {
      left.push(id);
      if (hasEntry(kept[section], id)) Reflect.deleteProperty(kept[section], id);
    } else if (section in kept) {
      left.push(section);
      Reflect.deleteProperty(kept, section);
    }
  }
  return { kept, left };
}

function hasEntry(section: unknown, id: string): section is object {
  return typeof section === 'object' && section !== null && id in section;
}

function copyOf(value: unknown): unknown {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? { ...value }
    : value;
}

/** True for an issue that is only there because something with a wrong shape was left out. */
function followsFrom(issue: Issue, left: ReadonlySet<string>): boolean {
  if (left.size === 0) return false;
  const named = issue.value.replaceAll('"', '');
  return (
    issue.code === 'unused' ||
    issue.code === 'missing' ||
    left.has(named) ||
    issue.path.split('.').some((part) => left.has(part))
  );
}

const validate = new Ajv2020({
  allErrors: true,
  verbose: true,
  strict: false,
  // Every program waits for this: a test holds the schema to its meta-schema once and for all, and
  // a shorter validator takes longer to write than it ever saves.
  validateSchema: false,
  code: { optimize: false },
}).compile(flowSchema);

function schemaIssues(source: SourceFile): readonly Issue[] {
  if (validate(source.data)) return [];
  const errors = validate.errors ?? [];
  const seen = new Set<string>();
  return errors
    .filter((error) => !isNoise(error, errors))
    .map((error) => schemaIssue(source, error, errors))
    .filter((issue) => {
      const key = `${String(issue.line)}:${String(issue.column)}:${issue.path}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
}

/** Of a failed choice of shapes only the choice itself is told, unless a deeper error is plainer. */
function isNoise(error: ErrorObject, all: readonly ErrorObject[]): boolean {
  if (error.keyword === 'propertyNames') return true;
  if (error.keyword === 'anyOf') {
    return all.some(
      (other) => other !== error && other.instancePath.startsWith(`${error.instancePath}/`),
    );
  }
  return all.some(
    (other) =>
      other.keyword === 'anyOf' &&
      other !== error &&
      other.instancePath === error.instancePath &&
      error.schemaPath.startsWith(`${other.schemaPath}/`),
  );
}

function schemaIssue(source: SourceFile, error: ErrorObject, all: readonly ErrorObject[]): Issue {
  const at = pathOf(error.instancePath);
  const params = error.params as Record<string, unknown>;
  const shape = { code: 'wrong-shape', at, expected: describe(error) } as const;
  switch (error.keyword) {
    case 'additionalProperties':
      return source.issue({
        code: 'unknown-property',
        at: [...at, String(params['additionalProperty'])],
        expected: `one of: ${propertiesOf(error).join(', ')}`,
        onKey: true,
      });
    case 'required':
      return source.issue({
        code: 'missing',
        at,
        expected: `the property ${String(params['missingProperty'])}`,
        value: '',
      });
    case 'pattern':
      return source.issue(
        error.propertyName === undefined
          ? shape
          : { ...shape, at: [...at, error.propertyName], onKey: true },
      );
    case 'anyOf':
      return source.issue({ ...shape, expected: alternatives(error, all) });
    default:
      return source.issue(shape);
  }
}

function propertiesOf(error: ErrorObject): readonly string[] {
  return Object.keys((error.parentSchema?.['properties'] ?? {}) as object);
}

function alternatives(error: ErrorObject, all: readonly ErrorObject[]): string {
  const described = error.parentSchema?.['description'] as string | undefined;
  if (described !== undefined) return described;
  const parts = all
    .filter(
      (other) =>
        other.instancePath === error.instancePath &&
        other.keyword !== 'anyOf' &&
        other.schemaPath.startsWith(`${error.schemaPath}/`),
    )
    .map(describe);
  return [...new Set(parts)].join(', or ');
}

function describe(error: ErrorObject): string {
  const params = error.params as Record<string, unknown>;
  const described = error.parentSchema?.['description'] as string | undefined;
  switch (error.keyword) {
    case 'enum':
      return described ?? `one of: ${(params['allowedValues'] as unknown[]).join(', ')}`;
    case 'const':
      return JSON.stringify(params['allowedValue']);
    case 'type':
      return described ?? `a ${String(params['type'])}`;
    case 'pattern':
      return described ?? `text like ${String(params['pattern'])}`;
    default:
      return `a value that ${error.message ?? 'fits the schema'}`;
  }
}

function pathOf(pointer: string): Path {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'))
    .map((step) => (/^\d+$/u.test(step) ? Number(step) : step));
}
