/**
 * Likelihoods as an author writes them, written out: every fault gets a row of shares that add up
 * to one. "Of 100 vehicles with this fault, so many answer that."
 */
import { noisyLikelihoods } from '@keyturn/evidence';
import type { LikelihoodTable } from './flow.ts';
import type { FlowFile } from './flow-file.ts';
import { tellImpossibleAnswers } from './impossible-answer.ts';
import { expectName, type Place } from './place.ts';
import type { ConditionReader } from './read-check.ts';
import { leastLikelihood } from './least-likelihood.ts';

/** What the rows may name. */
export interface EvidenceNames {
  readonly faults: readonly string[];
  readonly groups: Readonly<Record<string, readonly string[]>>;
  readonly answers: readonly string[];
  /** True where several answers may hold at once, so that a row need not add up. */
  readonly several: boolean;
  /** True where the circuit's state tells of this check. */
  readonly circuit: boolean;
}

type TableSource = NonNullable<FlowFile['likelihoods']>[string][number];
type RowSource = Readonly<Record<string, number>>;

/** Reads one table of a check. */
export function readTable(
  source: TableSource,
  names: EvidenceNames,
  scope: { readonly place: Place; readonly condition: ConditionReader },
): LikelihoodTable {
  const { place, condition } = scope;
  const answers = { names: names.answers, what: 'an answer of the check', onKey: true };
  for (const [key, row] of Object.entries(source['of-100'])) {
    const at = place.in('of-100', key);
    expectKey(key, names, at);
    for (const answer of Object.keys(row)) {
      if (answer !== byCircuit) expectName(answer, answers, at.in(answer));
      else if (!names.circuit) at.in(answer).tell('unknown-id', notOfCircuit, { onKey: true });
    }
    if (!names.several && !addsUp(row)) {
      at.tell('bad-row', 'shares that add up to 100', { value: `a sum of ${String(total(row))}` });
    }
  }
  for (const [answer, others] of Object.entries(source['mistaken-for'] ?? {})) {
    const at = place.in('mistaken-for', answer);
    expectName(answer, answers, at);
    for (const other of [others].flat()) expectName(other, { ...answers, onKey: false }, at);
  }
  // That none of several holds is no share of its own.
  const told = names.answers.filter((answer) => !names.several || answer !== 'none');
  tellImpossibleAnswers(source, told, place.in('of-100'));
  const rows = names.faults.map((fault) => {
    const row = rowFor(fault, source['of-100'], names.groups);
    if (row === undefined) place.in('of-100').tell('bad-row', `a row for ${fault}, or otherwise`);
    return [fault, shares(row ?? {}, names, source)] as const;
  });
  return {
    rows: Object.fromEntries(rows),
    ...(source.given ? { given: condition(source.given, place.in('given')) } : {}),
    ...mistakesIn(source),
    ...partsByCircuit(source, names),
  };
}

function mistakesIn({
  mistaken = 0,
  'mistaken-for': others,
}: TableSource): Pick<LikelihoodTable, 'mistaken'> {
  if (mistaken === 0) return {};
  const lists = Object.entries(others ?? {}).map(([answer, one]) => [answer, [one].flat()]);
  const named = others === undefined ? {} : { for: Object.fromEntries(lists) as MistakenFor };
  return { mistaken: { share: mistaken / 100, ...named } };
}

type MistakenFor = NonNullable<NonNullable<LikelihoodTable['mistaken']>['for']>;

/** The answer of a row that stands for what the circuit does. */
const byCircuit = 'by-circuit';
const notOfCircuit = 'an answer of the check; the circuit tells nothing of it';

/** For each fault the part of its answers that hang on the circuit, where there are any. */
function partsByCircuit(
  source: TableSource,
  names: EvidenceNames,
): Pick<LikelihoodTable, 'byCircuit'> {
  const parts = names.faults.map((fault): readonly [string, number] => [
    fault,
    (rowFor(fault, source['of-100'], names.groups)?.[byCircuit] ?? 0) / 100,
  ]);
  if (parts.every(([, part]) => part === 0)) return {};
  const reported = names.answers.map(
    (answer): readonly [string, Readonly<Record<string, number>>] => [
      answer,
      reportedShares({ [answer]: 100 }, names, source),
    ],
  );
  return {
    byCircuit: { parts: Object.fromEntries(parts), reported: Object.fromEntries(reported) },
  };
}

/** A row of its own comes before a group's, and a group's before `otherwise`. */
export function rowFor<Row>(
  fault: string,
  rows: Readonly<Record<string, Row>>,
  groups: EvidenceNames['groups'],
): Row | undefined {
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

/** Tells a key of rows that names no fault, group or `otherwise`. */
export function expectKey(
  key: string,
  names: Pick<EvidenceNames, 'faults' | 'groups'>,
  place: Place,
): void {
  const known = [...names.faults, ...Object.keys(names.groups), 'otherwise'];
  for (const part of keysIn(key)) {
    expectName(part, { names: known, what: 'a fault, a group or otherwise', onKey: true }, place);
  }
}

function addsUp(row: RowSource): boolean {
  return Math.abs(total(row) - 100) < 1e-4;
}

function total(row: RowSource): number {
  return sumOf(Object.values(row));
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Shares of one, none of them held to be impossible. */
function shares(
  row: RowSource,
  names: EvidenceNames,
  source: TableSource,
): Readonly<Record<string, number>> {
  const reported = reportedShares(row, names, source);
  return Object.fromEntries(
    Object.entries(reported).map(([answer, share]) => [
      answer,
      Math.min(1 - leastLikelihood, Math.max(leastLikelihood, share)),
    ]),
  );
}

/** Shares of one, with mistaken answers where those who answer make mistakes. */
function reportedShares(
  row: RowSource,
  { answers, several }: EvidenceNames,
  source: TableSource,
): Readonly<Record<string, number>> {
  const truthful = answers.map((answer) => (row[answer] ?? 0) / 100);
  const neighbours = source['mistaken-for'];
  const positions = answers.map((answer) =>
    [neighbours?.[answer] ?? []].flat().map((other) => answers.indexOf(other)),
  );
  const known = positions.flat().every((position) => position >= 0);
  const sum = sumOf(truthful);
  const hanging = (row[byCircuit] ?? 0) / 100;
  // A row that does not add up has been told of already, and is only carried to the end.
  const reported =
    !several && known && sum > 0 && Math.abs(sum + hanging - 1) < 1e-6
      ? noisyLikelihoods(
          truthful.map((share) => share / sum),
          (source.mistaken ?? 0) / 100,
          neighbours && positions,
        ).map((share) => share * sum)
      : truthful;
  return Object.fromEntries(answers.map((answer, index) => [answer, reported[index] ?? 0]));
}
