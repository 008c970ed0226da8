import { countsFormat, emptyCounts, mergeCounts, type Counts } from './counts.ts';
import { isId } from './outcome.ts';

/** What is wrong with data that should be counts, and where. */
export interface CountsProblem {
  /** The names that lead there, from the outermost. */
  readonly path: readonly string[];
  /** What is wrong there. */
  readonly reason: string;
}

/** Counts that were read, or everything that is wrong with them. */
export type ReadCounts =
  | { readonly type: 'counts'; readonly counts: Counts }
  | { readonly type: 'problems'; readonly problems: readonly CountsProblem[] };

/** A part of the data, and where it stands. */
interface Part {
  readonly value: unknown;
  readonly path: readonly string[];
}

/**
 * Reads counts from parsed JSON that may come from anywhere. Anything that counts do not hold, such
 * as free text, is a problem, and so are numbers that contradict each other. Never throws.
 */
export function readCounts(data: unknown): ReadCounts {
  const problems: CountsProblem[] = [];
  const reader = new CountsReader(({ path }, reason) => problems.push({ path, reason }));
  reader.read({ value: data, path: [] });
  if (problems.length > 0) return { type: 'problems', problems };
  const counts = data as Counts;
  // Added to nothing it has its names in order, as counts that were never written.
  const ordered = mergeCounts(emptyCounts(counts.flow), counts);
  return ordered.type === 'counts'
    ? ordered
    : { type: 'problems', problems: [{ path: [], reason: ordered.message }] };
}

class CountsReader {
  readonly #tell: (part: Part, reason: string) => void;

  constructor(tell: (part: Part, reason: string) => void) {
    this.#tell = tell;
  }

  read(top: Part): void {
    const { format, flow, outcomes, groups } = this.#fields(top, [
      'format',
      'flow',
      'outcomes',
      'groups',
    ]);
    if (format !== undefined && format.value !== countsFormat) {
      this.#tell(format, `counts of this format cannot be read; this reads ${countsFormat}`);
      return;
    }
    this.#readFlow(flow);
    const marks = this.#named(outcomes);
    for (const mark of marks) {
      if (typeof mark.value !== 'string' || !/^[\da-f]{8}$/.test(mark.value)) {
        this.#tell(mark, 'expected the eight figures that mark an outcome');
      }
    }
    const faults = this.#named(groups)
      .flatMap((role) => this.#named(role))
      .flatMap((channel) => this.#named(channel));
    const counts = faults.map((fault) => this.#readFault(fault));
    const confirmed = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
    if (groups !== undefined && !counts.includes(undefined) && confirmed !== marks.length) {
      this.#tell(
        groups,
        `the confirmed causes add up to ${confirmed}, but the outcomes are ${marks.length}`,
      );
    }
  }

  #readFlow(flow: Part | undefined): void {
    const { id, version } = this.#fields(flow, ['id', 'version']);
    if (id !== undefined && !isId(id.value)) this.#tell(id, 'expected the id of a flow');
    if (version === undefined) return;
    if (typeof version.value !== 'string' || !/^[\w.+-]{1,40}$/.test(version.value)) {
      this.#tell(version, 'expected the version of a flow');
    }
  }

  #readFault(fault: Part): number | undefined {
    const fields = this.#fields(fault, ['confirmed', 'checks']);
    const confirmed = this.#count(fields['confirmed'], undefined);
    for (const question of this.#named(fields['checks'])) {
      const { done, answers } = this.#fields(question, ['done', 'answers']);
      const most = this.#count(done, confirmed);
      for (const answer of this.#named(answers)) this.#count(answer, most);
    }
    return confirmed;
  }

  /** A whole number above 0 and at most `most`, where that is known; nothing where it is none. */
  #count(part: Part | undefined, most: number | undefined): number | undefined {
    if (part === undefined) return undefined;
    const { value } = part;
    if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 1) {
      this.#tell(part, 'expected a whole number of cases above 0');
      return undefined;
    }
    if (most !== undefined && value > most) {
      this.#tell(part, `the cases are ${value}, but there are ${most} in all`);
    }
    return value;
  }

  /** The entries of an object whose names are ids. */
  #named(part: Part | undefined): readonly Part[] {
    const entries = this.#entries(part);
    for (const { path } of entries) {
      if (!isId(path.at(-1))) this.#tell({ value: undefined, path }, 'the name is not an id');
    }
    return entries;
  }

  /** The entries of an object that has these and no others. */
  #fields(part: Part | undefined, names: readonly string[]): Readonly<Record<string, Part>> {
    const entries = this.#entries(part);
    const found = new Map(entries.map((entry) => [entry.path.at(-1) ?? '', entry]));
    for (const entry of entries) {
      if (!names.includes(entry.path.at(-1) ?? '')) {
        this.#tell(entry, `nothing of that name belongs here; there is ${names.join(', ')}`);
      }
    }
    for (const name of names) {
      if (part !== undefined && isObject(part.value) && !found.has(name)) {
        this.#tell(part, `${name} is missing`);
      }
    }
    return Object.fromEntries([...found].filter(([name]) => names.includes(name)));
  }

  #entries(part: Part | undefined): readonly Part[] {
    if (part === undefined) return [];
    if (!isObject(part.value)) {
      this.#tell(part, 'expected an object');
      return [];
    }
    return Object.entries(part.value).map(([name, value]: [string, unknown]) => ({
      value,
      path: [...part.path, name],
    }));
  }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
