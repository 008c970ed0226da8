import { fromMemory, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** The colour of a blade fuse; `clear` is also called white, `violet` purple. */
export type FuseColour =
  | 'black'
  | 'grey'
  | 'violet'
  | 'tan'
  | 'brown'
  | 'red'
  | 'blue'
  | 'yellow'
  | 'clear'
  | 'green'
  | 'blue-green'
  | 'orange';

/** The colour of one rating in A, another text's where it differs, and its source. */
export type FuseColourRow = {
  readonly ratingA: number;
  readonly colour: FuseColour;
  readonly rivalColour?: FuseColour;
  readonly source: Source;
};

const codePage = published('trade page of blade-fuse colours');
const remembered = fromMemory('ISO 8820-3 and SAE J1284');

/**
 * Colours of blade fuses by rating. Other shapes have other colours, and one trade page has tan for
 * 1 A: a colour only hints, and the number on the fuse decides.
 */
export const fuseColours: Table<readonly FuseColourRow[]> = {
  title: 'Colours of blade fuses',
  source: fromMemory('ISO 8820-3 and SAE J1284; each row names its own source'),
  rows: [
    { ratingA: 1, colour: 'black', rivalColour: 'tan', source: codePage },
    { ratingA: 2, colour: 'grey', source: codePage },
    { ratingA: 3, colour: 'violet', source: codePage },
    { ratingA: 5, colour: 'tan', source: remembered },
    { ratingA: 7.5, colour: 'brown', source: remembered },
    { ratingA: 10, colour: 'red', source: codePage },
    { ratingA: 15, colour: 'blue', source: codePage },
    { ratingA: 20, colour: 'yellow', source: published('trade page on the 15 A blade fuse') },
    { ratingA: 25, colour: 'clear', source: remembered },
    { ratingA: 30, colour: 'green', source: remembered },
    { ratingA: 35, colour: 'blue-green', source: remembered },
    { ratingA: 40, colour: 'orange', source: remembered },
  ],
};
