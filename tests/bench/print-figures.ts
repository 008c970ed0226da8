/**
 * Figures of a bench as lines to read.
 */

/** Prints one line. */
export function print(line = ''): void {
  process.stdout.write(`${line}\n`);
}

/** The middle one of some figures. */
export function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** The mean of some figures. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Cells in columns: the first as wide as asked for, the others to the right. */
export function row(title: string, cells: readonly string[], width = 34): string {
  return title.padEnd(width) + cells.map((cell) => cell.padStart(16)).join('');
}
