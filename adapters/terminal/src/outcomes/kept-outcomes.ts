/**
 * The file in which confirmed outcomes are kept: those entered here, each by itself so that it can
 * be taken back, and counts that came from elsewhere.
 */
import {
  addOutcome,
  emptyCounts,
  isId,
  mergeCounts,
  readCounts,
  type Counts,
  type CountsResult,
  type FlowKey,
  type ForecastOutcome,
} from '@keyturn/evidence';
import { z } from 'zod';
import { readJsonText } from './json-text.ts';
import { OutcomesError } from './outcomes-error.ts';

/** The version of the form of the file. */
const keptFormat = 1;

/** What the file holds. */
export interface KeptOutcomes {
  readonly format: typeof keptFormat;
  readonly flow: FlowKey;
  /** Entered here, in the order entered. */
  readonly outcomes: readonly ForecastOutcome[];
  /** Counts brought in from elsewhere, no outcome in two of them. */
  readonly imported: readonly Counts[];
}

const id = z.string().refine(isId, 'expected an id');
const share = z.number().min(0).max(1);

const flow = z.strictObject({ id, version: z.string().regex(/^[\w.+-]{1,40}$/) });

const outcome = z.strictObject({
  id,
  flow,
  role: id,
  channel: id,
  cause: id,
  answers: z.record(id, z.array(id)),
  forecast: z.strictObject({
    fault: id,
    probability: share,
    ranking: z
      .array(z.tuple([id, share]))
      .refine((ranking) => ranking.reduce((sum, [, one]) => sum + one, 0) < 1 + 1e-6, {
        message: 'the probabilities add up to more than 1',
      }),
  }),
});

const keptOutcomes = z.strictObject({
  format: z.literal(keptFormat, { message: `this reads format ${String(keptFormat)}` }),
  flow,
  outcomes: z.array(outcome).superRefine((outcomes, context) => {
    outcomes.forEach(({ id: one }, index) => {
      if (outcomes.findIndex((other) => other.id === one) === index) return;
      context.addIssue({ code: 'custom', path: [index, 'id'], message: 'it is there twice' });
    });
  }),
  imported: z.array(z.unknown()),
});

/** A file for one flow with nothing in it. */
export function noOutcomes({ id, version }: FlowKey): KeptOutcomes {
  return { format: keptFormat, flow: { id, version }, outcomes: [], imported: [] };
}

/** Reads the file's text. Throws OutcomesError with the file, the line and the reason. */
export function readKeptOutcomes(file: string, text: string): KeptOutcomes {
  const read = readJsonText(text);
  if (read.type === 'broken') throw broken(file, read.line, read.reason);
  const parsed = keptOutcomes.safeParse(read.data);
  if (!parsed.success) {
    throw allBroken(
      file,
      parsed.error.issues.map(({ path, message }) => ({
        line: read.lineOf(path.map(String)),
        reason: `${path.map(String).join('.') || 'the file'}: ${message}`,
      })),
    );
  }
  const kept = {
    ...parsed.data,
    imported: parsed.data.imported.map((data, index) =>
      countsIn(file, data, (path) => read.lineOf(['imported', index, ...path])),
    ),
  };
  const counts = countsOf(kept);
  if (counts.type === 'refused') throw broken(file, 1, counts.message);
  return kept;
}

/** Reads a file of counts as `export` writes it. Throws OutcomesError as `readKeptOutcomes` does. */
export function readCountsFile(file: string, text: string): Counts {
  const read = readJsonText(text);
  if (read.type === 'broken') throw broken(file, read.line, read.reason);
  return countsIn(file, read.data, (path) => read.lineOf(path));
}

/** The text of a file, as it is kept and exported. */
export function textOf(data: KeptOutcomes | Counts): string {
  return `${JSON.stringify(data, null, 2)}\n`;
}

/** Everything added up. */
export function countsOf({ flow: of, outcomes, imported }: KeptOutcomes): CountsResult {
  return imported.reduce<CountsResult>(
    (sum, counts) => (sum.type === 'counts' ? mergeCounts(sum.counts, counts) : sum),
    sumOf(of, outcomes),
  );
}

/** By halves: to add one after another costs the square of their number. */
function sumOf(of: FlowKey, outcomes: readonly ForecastOutcome[]): CountsResult {
  const [first, second] = outcomes;
  if (first === undefined) return { type: 'counts', counts: emptyCounts(of) };
  if (second === undefined) return addOutcome(emptyCounts(of), first);
  const half = Math.ceil(outcomes.length / 2);
  const left = sumOf(of, outcomes.slice(0, half));
  const right = sumOf(of, outcomes.slice(half));
  if (left.type === 'refused') return left;
  return right.type === 'refused' ? right : mergeCounts(left.counts, right.counts);
}

function countsIn(
  file: string,
  data: unknown,
  lineOf: (path: readonly string[]) => number,
): Counts {
  const read = readCounts(data);
  if (read.type === 'counts') return read.counts;
  throw allBroken(
    file,
    read.problems.map(({ path, reason }) => ({
      line: lineOf(path),
      reason: `${path.join('.') || 'the file'}: ${reason}`,
    })),
  );
}

/** Problems told at once, at most. */
const mostTold = 5;

function allBroken(
  file: string,
  problems: readonly { readonly line: number; readonly reason: string }[],
): OutcomesError {
  const told = problems
    .slice(0, mostTold)
    .map(({ line, reason }) => broken(file, line, reason).message);
  const more = problems.length - told.length;
  return new OutcomesError(
    [...told, ...(more > 0 ? [`${file}: and ${String(more)} more`] : [])].join('\n'),
  );
}

function broken(file: string, line: number, reason: string): OutcomesError {
  return new OutcomesError(`${file}, line ${String(line)}: ${reason}`);
}
