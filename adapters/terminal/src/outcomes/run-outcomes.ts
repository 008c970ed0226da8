/**
 * One run of `outcomes`: reads the command line, does what it says, and says what was done.
 */
import {
  mergeCounts,
  reliabilityDiagram,
  verdictTable,
  type Counts,
  type FlowKey,
} from '@keyturn/evidence';
import { CaseFileError } from '../case-file.ts';
import { FlowError } from '@keyturn/flows';
import { calibrationReport, groupName, outcomesIn } from './calibration-report.ts';
import {
  countsOf,
  noOutcomes,
  readCountsFile,
  readKeptOutcomes,
  textOf,
  type KeptOutcomes,
} from './kept-outcomes.ts';
import { outcomeId, outcomeOfCase, readKeptCase } from './outcome-of-case.ts';
import { outcomesUsage, readOutcomesCommand, type OutcomesAction } from './outcomes-command.ts';
import { OutcomesError } from './outcomes-error.ts';
import { readIfThere, rewrite, writeNew } from './write-whole.ts';

/** The world outside, as one run meets it. */
export interface OutcomesSurroundings {
  readonly args: readonly string[];
  readonly stdout: { readonly write: (text: string) => unknown };
  readonly stderr: { readonly write: (text: string) => unknown };
}

const program = 'npm run -s outcomes --';

/** Runs the program; gives its exit code. */
export function runOutcomes({ args, stdout, stderr }: OutcomesSurroundings): 0 | 1 | 2 {
  const command = readOutcomesCommand(args);
  if (command.type === 'help') {
    stdout.write(outcomesUsage(program));
    return 0;
  }
  if (command.type === 'wrong') {
    stderr.write(`outcomes: ${command.reason}\nSee ${program} --help\n`);
    return 2;
  }
  try {
    const said = act(command, new Book(command.kept));
    stdout.write(said.map((line) => `${line}\n`).join(''));
    return 0;
  } catch (error) {
    const isExpected = [OutcomesError, CaseFileError, FlowError].some(
      (kind) => error instanceof kind,
    );
    if (!isExpected) throw error;
    const lines = (error as Error).message.split('\n');
    stderr.write(lines.map((line) => `outcomes: ${line}\n`).join(''));
    return 1;
  }
}

/** The file of outcomes, as it was read. */
class Book {
  readonly file: string;
  readonly #text: string | undefined;
  readonly #kept: KeptOutcomes | undefined;

  constructor(file: string) {
    this.file = file;
    this.#text = readIfThere(file);
    this.#kept = this.#text === undefined ? undefined : readKeptOutcomes(file, this.#text);
  }

  /** What it holds; of another flow or version it is refused. */
  for(flow: FlowKey): KeptOutcomes {
    const kept = this.#kept ?? noOutcomes(flow);
    if (kept.flow.id !== flow.id || kept.flow.version !== flow.version) {
      throw new OutcomesError(
        `${this.file} holds outcomes of ${kept.flow.id} ${kept.flow.version}, not of ` +
          `${flow.id} ${flow.version}: name another file with --kept`,
      );
    }
    return kept;
  }

  get(): KeptOutcomes {
    if (this.#kept !== undefined) return this.#kept;
    throw new OutcomesError(`${this.file} is not there: no outcome has been entered yet`);
  }

  /** Keeps something else in its place; what does not add up is refused before it is written. */
  put(kept: KeptOutcomes): void {
    sumOf(kept);
    rewrite(this.file, this.#text, textOf(kept));
  }
}

function act(action: OutcomesAction, book: Book): readonly string[] {
  switch (action.type) {
    case 'confirm':
      return confirm(action, book);
    case 'undo':
      return undo(action.of, book);
    case 'export': {
      const counts = sumOf(book.get());
      writeNew(action.file, textOf(counts), action.replace);
      return [`Written: ${numberOf(counts)} to ${action.file}.`];
    }
    case 'import':
      return bringIn(action.file, book);
    case 'report': {
      const kept = book.get();
      const counts = sumOf(kept);
      if (action.picture !== undefined) {
        const table = verdictTable(outcomesIn(kept.outcomes, action));
        const drawn = reliabilityDiagram(
          table,
          `Verdicts and confirmed causes: ${groupName(action)}`,
        );
        writeNew(action.picture, drawn, action.replace);
      }
      return [
        ...calibrationReport(counts, kept.outcomes, action),
        ...(action.picture === undefined ? [] : ['', `Drawn in ${action.picture}.`]),
      ];
    }
  }
}

function confirm(
  { caseFile, cause }: { readonly caseFile: string; readonly cause: string },
  book: Book,
): readonly string[] {
  const outcome = outcomeOfCase(readKeptCase(caseFile), cause);
  const kept = book.for(outcome.flow);
  const before = kept.outcomes.find(({ id }) => id === outcome.id);
  if (before !== undefined) {
    throw new OutcomesError(
      `${caseFile} is counted already, with the cause ${before.cause}; undo it first to change that`,
    );
  }
  book.put({ ...kept, outcomes: [...kept.outcomes, outcome] });
  const { role, channel, forecast } = outcome;
  const checks = Object.keys(outcome.answers).length;
  return [
    `Counted: ${cause}, with ${countOf(checks, 'check')} (role ${role}, channel ${channel}).`,
    `The verdict had said ${forecast.fault}, ${String(Math.round(forecast.probability * 100))} %.`,
    `Kept in ${book.file} as ${outcome.id}.`,
  ];
}

function undo(of: string, book: Book): readonly string[] {
  const kept = book.get();
  const isNamed = kept.outcomes.some(({ id }) => id === of);
  const id = isNamed ? of : outcomeId(readKeptCase(of).case);
  const undone = kept.outcomes.find((outcome) => outcome.id === id);
  if (undone === undefined) {
    const isImported = kept.imported.some(({ outcomes }) => Object.hasOwn(outcomes, id));
    throw new OutcomesError(
      isImported
        ? `${of} was imported: undo it where it was entered, and import that anew`
        : `${of} was never counted in ${book.file}`,
    );
  }
  book.put({ ...kept, outcomes: kept.outcomes.filter((outcome) => outcome !== undone) });
  return [`Taken back: ${undone.cause}, ${undone.id}.`];
}

/** Counts that hold every outcome of earlier ones are a later export of the same place. */
function bringIn(file: string, book: Book): readonly string[] {
  const text = readIfThere(file);
  if (text === undefined) throw new OutcomesError(`${file} is not there`);
  const counts = readCountsFile(file, text);
  const kept = book.for(counts.flow);
  const others = kept.imported.filter(
    ({ outcomes }) => !Object.keys(outcomes).every((id) => Object.hasOwn(counts.outcomes, id)),
  );
  const replaced = kept.imported.length - others.length;
  const rest = sumOf({ ...kept, imported: others });
  const together = mergeCounts(rest, counts);
  if (together.type === 'refused') throw new OutcomesError(`${file}: ${together.message}`);
  book.put({ ...kept, imported: [...others, counts] });
  return [
    `Added: ${numberOf(counts)} from ${file}.`,
    ...(replaced === 0 ? [] : ['They take the place of what was imported of them before.']),
  ];
}

function sumOf(kept: KeptOutcomes): Counts {
  const sum = countsOf(kept);
  if (sum.type === 'counts') return sum.counts;
  throw new OutcomesError(sum.message);
}

function numberOf({ outcomes }: Counts): string {
  return countOf(Object.keys(outcomes).length, 'outcome');
}

function countOf(number: number, thing: string): string {
  return `${String(number)} ${thing}${number === 1 ? '' : 's'}`;
}
