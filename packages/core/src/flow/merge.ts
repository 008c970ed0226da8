/**
 * The files of a flow merged into one, with every reference checked: what is named must exist, and
 * what exists must be used.
 */
import { deepFreeze } from './deep-freeze.ts';
import type { Check, Flow, Stage } from './flow.ts';
import type { ConditionSource, FlowFile } from './flow-file.ts';
import type { Issue } from './issue.ts';
import type { LoadResult } from './load.ts';
import {
  answersOf,
  readBands,
  readCheck,
  readCovers,
  readProof,
  type CheckSource,
} from './read-check.ts';
import { readCondition, type Names } from './read-condition.ts';
import { readTable } from './read-evidence.ts';
import type { Report } from './report.ts';
import type { Path, SourceFile } from './source-file.ts';
import { checkReferences } from './references.ts';

/** A file and what it holds. */
export interface ReadFile {
  readonly source: SourceFile;
  readonly data: FlowFile;
}

/** A section's entry, with the file that it stands in. */
export interface Entry<Value> {
  readonly id: string;
  readonly value: Value;
  readonly at: Path;
  readonly report: Report;
}

type MapSection = Exclude<
  keyof FlowFile,
  'flow' | 'version' | 'verdict-after' | 'turning' | 'common-causes'
>;
type Item<Key extends MapSection> = Extract<
  NonNullable<FlowFile[Key]>[keyof NonNullable<FlowFile[Key]>],
  unknown
>;

/** Merges files that each fit the schema. */
export function mergeFlow(files: readonly ReadFile[]): LoadResult {
  const issues: Issue[] = [];
  const sections = new Sections(files, issues);
  const checks = sections.entries('checks').map((entry) => withLike(entry, sections));
  const computed = sections.entries('computed');
  const names: Names = {
    answers: new Map<string, readonly string[]>([
      ...checks.map(({ id, value }) => [id, answersOf(value)] as const),
      ...computed.map(({ id, value }) => [id, Object.keys(value.bands)] as const),
    ]),
    interrupts: new Set(sections.entries('interrupts').map(({ id }) => id)),
  };
  const conditionIn =
    (report: Report) =>
    (source: ConditionSource, ...at: Path) =>
      readCondition(source, names, { report, at });
  const faultIds = sections.entries('faults').map(({ id }) => id);
  const groups = Object.fromEntries(sections.entries('groups').map(({ id, value }) => [id, value]));

  const flow: Flow = {
    id: sections.single('flow') ?? '',
    version: sections.single('version') ?? '',
    stages: sections.entries('stages').map(({ id, value }): Stage => ({ id, checks: value })),
    verdictAfter: sections.single('verdict-after') ?? '',
    checks: toRecord(checks, ({ id, value, at, report }): Check =>
      readCheck(id, value, { report, at, condition: conditionIn(report) }),
    ),
    computed: toRecord(computed, ({ id, value, at, report }) => ({
      id,
      formula: value.formula,
      unit: value.unit,
      bands: readBands(value.bands, report, [...at, 'bands']),
    })),
    cautions: toRecord(sections.entries('cautions'), ({ id, value, at, report }) => ({
      id,
      word: value.word,
      confirm: value.confirm ?? false,
      before: value.before === undefined ? [] : readCovers(value.before),
      ...(value.when ? { when: conditionIn(report)(value.when, ...at, 'when') } : {}),
    })),
    stops: sections.entries('stops').map(({ id, value, at, report }) => ({
      id,
      when: conditionIn(report)(value.when, ...at, 'when'),
      forbids: readCovers(value.forbids),
      except: value.except ?? [],
      remembered: value.remembered ?? [],
      ...(value.instead ? { instead: value.instead } : {}),
    })),
    interrupts: toRecord(sections.entries('interrupts'), ({ id, value }) => ({
      id,
      word: value.word,
      then: value.then,
      prove: readProof(value.prove),
    })),
    faults: toRecord(sections.entries('faults'), ({ id, value, at, report }) => ({
      id,
      best: value.best,
      proofs: [value.proof ?? []]
        .flat()
        .map((proof, index) =>
          conditionIn(report)(
            proof,
            ...at,
            'proof',
            ...(Array.isArray(value.proof) ? [index] : []),
          ),
        ),
      remedies:
        typeof value.remedy === 'string'
          ? [{ remedy: value.remedy }]
          : value.remedy.map((remedy, index) => ({
              remedy: remedy.do,
              ...(remedy.when
                ? { when: conditionIn(report)(remedy.when, ...at, 'remedy', index, 'when') }
                : {}),
            })),
      send: value.send,
      cautions: value.cautions ?? [],
      prove: readProof(value.prove),
      licensed: value.licensed ?? false,
    })),
    roots: sections.entries('roots').map(({ id, value, at, report }) => ({
      id,
      faults: value.faults,
      when: conditionIn(report)(value.when, ...at, 'when'),
    })),
    priors: toRecord(sections.entries('priors'), ({ value, at, report }) => ({
      weight: value.weight,
      source: value.source,
      factors: (value.times ?? []).map((factor, index) => ({
        when: conditionIn(report)(factor.when, ...at, 'times', index, 'when'),
        times: factor.by,
      })),
    })),
    likelihoods: toRecord(sections.entries('likelihoods'), ({ id, value, at, report }) => {
      if (!names.answers.has(id)) report('unknown-id', at, 'a check of the flow', { onKey: true });
      const form = checks.find((check) => check.id === id)?.value;
      return value.map((table, index) =>
        readTable(
          table,
          {
            faults: faultIds,
            groups,
            answers: names.answers.get(id) ?? [],
            several: form?.choices !== undefined,
          },
          { report, at: [...at, index], condition: conditionIn(report) },
        ),
      );
    }),
    commonCauses: files.flatMap(({ data }) => data['common-causes'] ?? []),
    measured: Object.fromEntries(sections.entries('measured').map(({ id, value }) => [id, value])),
    ...sections.turning(conditionIn),
  };
  checkReferences(flow, sections, files);
  return issues.length > 0
    ? { type: 'issues', issues: inOrder(issues, files) }
    : { type: 'flow', flow: deepFreeze(flow) };
}

/** Every section of every file, with the file each entry came from. */
export class Sections {
  readonly #files: readonly ReadFile[];
  readonly #issues: Issue[];

  constructor(files: readonly ReadFile[], issues: Issue[]) {
    this.#files = files;
    this.#issues = issues;
  }

  /** The entries of a section that maps ids to values; an id given twice is an issue. */
  entries<Key extends MapSection>(key: Key): readonly Entry<Item<Key>>[] {
    const seen = new Map<string, Entry<Item<Key>>>();
    for (const { source, data } of this.#files) {
      const report = this.reporter(source);
      for (const [id, value] of Object.entries(data[key] ?? {})) {
        const at: Path = [key, id];
        if (seen.has(id)) {
          report('twice', at, `${id} only once in the flow`, {
            onKey: true,
            value: JSON.stringify(id),
          });
        } else {
          seen.set(id, { id, value: value as Item<Key>, at, report });
        }
      }
    }
    return [...seen.values()];
  }

  /** A section that only one file may hold, and one must. */
  single(key: 'flow' | 'version' | 'verdict-after'): string | undefined {
    const holders = this.#files.filter(({ data }) => data[key] !== undefined);
    for (const { source } of holders.slice(1)) {
      this.reporter(source)('twice', [key], `${key} only once in the flow`, { onKey: true });
    }
    const [first] = holders;
    const [file] = this.#files;
    if (first === undefined && file !== undefined) {
      this.reporter(file.source)('missing', [], `${key}, in one of the flow's files`, {
        value: '',
      });
    }
    return first?.data[key];
  }

  /** When the engine is known to turn, if the flow says. */
  turning(
    conditionIn: (report: Report) => (source: ConditionSource, ...at: Path) => Flow['turning'],
  ): Pick<Flow, 'turning'> {
    for (const { source, data } of this.#files) {
      const turning = data.turning && conditionIn(this.reporter(source))(data.turning, 'turning');
      if (turning !== undefined) return { turning };
    }
    return {};
  }

  /** A way of telling issues of one file. */
  reporter(source: SourceFile): Report {
    return (code, at, expected, options) => {
      const issue = source.issue(code, at, expected, options ?? {});
      if (!this.#issues.some((known) => JSON.stringify(known) === JSON.stringify(issue))) {
        this.#issues.push(issue);
      }
    };
  }
}

/** Fills in what a check shares with the check that it is `like`. */
function withLike(entry: Entry<CheckSource>, sections: Sections): Entry<CheckSource> {
  const { like } = entry.value;
  if (like === undefined) return entry;
  const base = sections.entries('checks').find(({ id }) => id === like);
  if (base === undefined || base.value.like !== undefined) {
    entry.report('unknown-id', [...entry.at, 'like'], 'a check that is itself like no other');
    return entry;
  }
  const { when: _when, requires: _requires, again: _again, ...shared } = base.value;
  return { ...entry, value: { ...shared, ...entry.value } };
}

function toRecord<Value, Result>(
  entries: readonly Entry<Value>[],
  read: (entry: Entry<Value>) => Result,
): Readonly<Record<string, Result>> {
  return Object.fromEntries(entries.map((entry) => [entry.id, read(entry)]));
}

function inOrder(issues: readonly Issue[], files: readonly ReadFile[]): readonly Issue[] {
  const order = new Map(files.map(({ source }, index) => [source.path, index]));
  return [...issues].sort(
    (a, b) =>
      (order.get(a.file) ?? 0) - (order.get(b.file) ?? 0) || a.line - b.line || a.column - b.column,
  );
}
