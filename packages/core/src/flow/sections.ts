/**
 * The sections of a flow that may be split over several files, with the file of each entry.
 */
import type { FlowFile } from './flow-file.ts';
import type { Issue } from './issue.ts';
import { placeIn, type Place } from './place.ts';
import type { SourceFile } from './source-file.ts';

/** A file and what it holds. */
export interface ReadFile {
  readonly source: SourceFile;
  readonly data: FlowFile;
}

/** An entry of a section, with the place where it stands. */
export interface Entry<Value> {
  readonly id: string;
  readonly value: Value;
  readonly place: Place;
}

/** Sections that only one file of a flow may hold. */
export type SingleSection =
  | 'flow'
  | 'version'
  | 'verdict-after'
  | 'turning'
  | 'decisions'
  | 'ends-in'
  | 'part'
  | 'by-worth'
  | 'costs'
  | 'mistaken-times'
  | 'common-causes'
  | 'circuit';

type MapSection = Exclude<keyof FlowFile, SingleSection>;
type Section<Key extends keyof FlowFile> = NonNullable<FlowFile[Key]>;

/** Every section of every file. */
export class Sections {
  readonly #files: readonly ReadFile[];
  readonly #issues: Issue[];

  constructor(files: readonly ReadFile[], issues: Issue[]) {
    this.#files = files;
    this.#issues = issues;
  }

  /** The entries of a section that maps ids to values; an id given twice is an issue. */
  entries<Key extends MapSection>(key: Key): readonly Entry<Section<Key>[keyof Section<Key>]>[] {
    const seen = new Map<string, Entry<Section<Key>[keyof Section<Key>]>>();
    for (const { source, data } of this.#files) {
      for (const [id, value] of Object.entries(data[key] ?? {})) {
        const place = placeIn(source, this.#issues).in(key, id);
        if (seen.has(id)) place.tell('twice', `${id} only once in the flow`, { onKey: true });
        else seen.set(id, { id, value: value as Section<Key>[keyof Section<Key>], place });
      }
    }
    return [...seen.values()];
  }

  /** A section that only one file may hold; undefined, and an issue if needed, where none does. */
  single<Key extends SingleSection>(
    key: Key,
    needed: boolean,
  ): { readonly value: Section<Key>; readonly place: Place } | undefined {
    const holders = this.#files.flatMap(({ source, data }) => {
      const value = data[key];
      const place = placeIn(source, this.#issues).in(key);
      return value === undefined ? [] : [{ value: value, place }];
    });
    for (const { place } of holders.slice(1)) {
      place.tell('twice', `${key} only once in the flow`, { onKey: true });
    }
    const first = holders[0];
    if (first === undefined && needed) this.tellMissing(key);
    return first;
  }

  /** Tells, at the top of the first file, that no file of the flow has something. */
  tellMissing(what: string): void {
    const file = this.#files[0];
    if (file === undefined) return;
    placeIn(file.source, this.#issues).tell('missing', `${what}, in one of the flow's files`, {
      value: '',
    });
  }
}
