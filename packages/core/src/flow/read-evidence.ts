/**
 * Likelihoods as an author writes them, written out: every fault gets a row of shares that add up
 * to one. "Of 100 vehicles with this fault, so many answer that."
 */
import { noisyLikelihoods } from '@keyturn/evidence';
import type { LikelihoodTable } from './flow.ts';
import type { ConditionSource, FlowFile } from './flow-file.ts';
import type { Path } from './source-file.ts';
import type { Report } from './report.ts';
import type { Condition } from './condition.ts';

/** What the rows may name. */
export interface EvidenceNames {
  readonly faults: readonly string[];
  readonly groups: Readonly<Record<string, readonly string[]>>;
  readonly answers: readonly string[];
  /** True where several answers may hold at once, so that a row need not add up. */
  readonly several: boolean;
}

type TableSource = NonNullable<FlowFile['likelihoods']>[string][number];
type RowSource = Readonly<Record<string, number>>;

/**
 * No answer is held to be impossible: people err, and parts fail in ways that nobody listed.
 * Out of one.
 */
export const leastLikelihood = 0.001;

/** Reads one table of a check. */
export function readTable(
  source: TableSource,
  names: EvidenceNames,
  scope: {
    readonly report: Report;
    readonly at: Path;
    readonly condition: (source: ConditionSource, ...at: Path) => Condition;
  },
): LikelihoodTable {
  const at = [...scope.at, 'of-100'];
  for (const [key, row] of Object.entries(source['of-100'])) {
    checkKey(key, names, scope.report, [...at, key]);
    checkRow(row, names, scope.report, [...at, key]);
  }
  const rows = names.faults.map((fault) => {
    const row = rowFor(fault, source['of-100'], names.groups);
    if (row === undefined) scope.report('bad-row', at, `a row for ${fault}, or otherwise`);
    return [fault, shares(row ?? {}, names, (source.mistaken ?? 0) / 100)] as const;
  });
  return {
    rows: Object.fromEntries(rows),
    ...(source.given ? { given: scope.condition(source.given, ...scope.at, 'given') } : {}),
  };
}

/** A row of its own comes before a group's, and a group's before `otherwise`. */
function rowFor(
  fault: string,
  rows: Readonly<Record<string, RowSource>>,
  groups: EvidenceNames['groups'],
): RowSource | undefined {
  const entries = Object.entries(rows);
  const named = entries.find(([key]) => keysIn(key).includes(fault));
  const grouped = entries.find(([key]) =>
    keysIn(key).some((part) => groups[part]?.includes(fault) ?? false),
  );
  return (named ?? grouped)?.[1] ?? rows['otherwise'];
}

/** A row may stand for several faults or groups: `positive-cable, ground-cable`. */
function keysIn(key: string): readonly string[] {
  return key.split(',').map((part) => part.trim());
}

function checkKey(key: string, names: EvidenceNames, report: Report, at: Path): void {
  for (const part of keysIn(key)) {
    if (part !== 'otherwise' && !names.faults.includes(part) && names.groups[part] === undefined) {
      report('unknown-id', at, 'a fault, a group of faults, or otherwise', { onKey: true });
    }
  }
}

function checkRow(row: RowSource, names: EvidenceNames, report: Report, at: Path): void {
  for (const answer of Object.keys(row)) {
    if (!names.answers.includes(answer)) {
      report('unknown-id', [...at, answer], `one of: ${names.answers.join(', ')}`, { onKey: true });
    }
  }
  if (!names.several && !addsUp(row)) {
    report('bad-row', at, 'shares that add up to 100', { value: `a sum of ${String(total(row))}` });
  }
}

function addsUp(row: RowSource): boolean {
  return Math.abs(total(row) - 100) < 1e-4;
}

function total(row: RowSource): number {
  return Object.values(row).reduce((sum, share) => sum + share, 0);
}

/** Shares of one; with mistaken answers some of each goes evenly to all the others. */
function shares(
  row: RowSource,
  names: EvidenceNames,
  mistaken: number,
): Readonly<Record<string, number>> {
  const { answers, several } = names;
  const truthful = answers.map((answer) => (row[answer] ?? 0) / 100);
  // A row that does not add up has been told of already, and is only carried to the end.
  const whole = !several && addsUp(row);
  const reported = whole ? noisyLikelihoods(truthful, mistaken) : truthful;
  return Object.fromEntries(
    answers.map((answer, index) => [
      answer,
      Math.min(1 - leastLikelihood, Math.max(leastLikelihood, reported[index] ?? 0)),
    ]),
  );
}
