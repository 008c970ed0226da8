import type { Case, Chart, ReadingMessage } from '@keyturn/core';
import type { Speaker, Teller } from '@keyturn/language';

/** What was sold, as it is written at the counter; what is not known is left out. */
export interface Sold {
  readonly name?: string;
  readonly number?: string;
  readonly receipt?: string;
}

/** What was measured on the vehicle that a part comes from. */
export interface OnVehicle {
  readonly readings: readonly ReadingMessage[];
  /** What of it points elsewhere than to the part, in sentences; none where nothing does. */
  readonly elsewhere: readonly string[];
  /** Of the flow of vehicles' cases. */
  readonly teller: Teller;
}

/** What a sheet of a case is made of. The same options give the same sheet. */
export interface SheetOptions {
  readonly chart: Chart;
  readonly case: Case;
  /** Whose language and words it is in. */
  readonly speaker: Speaker;
  /** When it is made, ISO 8601 with its zone. */
  readonly made: string;
  /**
   * IANA name of the zone in which dates are written.
   *
   * @defaultValue UTC
   */
  readonly timeZone?: string;
  /** Where the case can be opened; without it the code carries the findings themselves. */
  readonly link?: string;
  /** Stands at the head of a return slip. */
  readonly sold?: Sold;
  /** Stands on a return slip. */
  readonly onVehicle?: OnVehicle;
  /** Since when the part is put aside, ISO 8601 with its zone; stands on a return slip. */
  readonly aside?: string;
}
