import type { Source } from './source.ts';

/** A table as one file of `tables/` holds it: what it is, where it comes from, and its rows. */
export type Table<Rows> = {
  readonly title: string;
  readonly source: Source;
  readonly rows: Rows;
};
