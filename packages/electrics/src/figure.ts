import type { Source } from './source.ts';
import type { UnitCode } from './quantity/unit.ts';

/**
 * One figure as a text prints it: what it is of, its ends in `unit` (`low` alone is "at least",
 * `high` alone "at most"), and where it was printed.
 */
export type Figure = {
  readonly of: string;
  readonly low?: number;
  readonly high?: number;
  readonly unit: UnitCode;
  readonly source: Source;
};

/** A table of figures that rival or complete each other, each with its own source. */
export type FigureTable<Row extends Figure = Figure> = {
  readonly title: string;
  readonly rows: readonly Row[];
};
