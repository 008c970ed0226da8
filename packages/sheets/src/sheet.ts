/**
 * A sheet as data: what stands on it, in the words of one language, with the ids and figures behind
 * them. Every form of it (HTML, PDF, plain text, JSON) is made from this alone.
 */
import type { Quantity, UnitCode } from '@keyturn/electrics';
import type { Refund, SignalWord, Strength } from '@keyturn/core';

/** The form that a sheet in JSON has; a program that reads another number refuses it. */
export const sheetFormat = 1;

/** What a sheet is for. */
export type SheetKind = 'case' | 'technician' | 'return' | 'fitting';

/** A picture as SVG text, and what it shows in words. */
export interface Picture {
  readonly svg: string;
  readonly description: string;
}

/** A labelled fact: "Gearbox: manual". */
export interface Fact {
  /** A context path, a check, or what it is of the sheet itself: `case`, `printed`. */
  readonly id: string;
  readonly label: string;
  readonly text: string;
}

/** A reading, as machines take it. */
export interface SheetReading {
  readonly quantity: Quantity;
  /** Standard uncertainty, in the unit of the quantity. */
  readonly uncertainty: number;
  /** Unit of the bounds. */
  readonly unit: UnitCode;
  /** Bands in ascending order, and how likely the true value lies in each. */
  readonly bands: readonly {
    readonly id: string;
    readonly label: string;
    readonly share: number;
  }[];
  /** Between the bands, one fewer; empty where the vehicle is not known well enough. */
  readonly bounds: readonly {
    readonly low: number;
    readonly high: number;
    readonly source: string;
  }[];
  /** The likeliest band; empty where there are no bounds. */
  readonly band: string;
  /** True where no band is at least 95 % likely. */
  readonly borderline: boolean;
  readonly ruler?: Picture;
}

/** One printed finding. */
export interface Finding {
  readonly number: number;
  readonly check: string;
  /** What the check is called. */
  readonly name: string;
  /** The figure, or the answer in words; short. */
  readonly said: string;
  /** What it means; empty where the answer says it all. */
  readonly means: string;
  /** Bounds with their sources, what to expect, how likely each side is. */
  readonly notes: readonly string[];
  /** What of the notes is a published text in English, on a sheet in another language. */
  readonly cited: readonly string[];
  /** Choice ids; empty where it was not known, and for a reading. */
  readonly answers: readonly string[];
  readonly reading?: SheetReading;
}

/** What stands on a sheet under one heading. */
export type Block = { readonly id: string; readonly heading: string } & (
  | { readonly kind: 'facts'; readonly facts: readonly Fact[] }
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  /** A few short lines each behind its label, large: what must be seen at once. */
  | {
      readonly kind: 'rows';
      readonly rows: readonly {
        readonly id: string;
        readonly label: string;
        readonly lines: readonly string[];
      }[];
    }
  | { readonly kind: 'strip'; readonly findings: readonly Finding[] }
  | {
      readonly kind: 'ranking';
      readonly faults: readonly {
        readonly id: string;
        readonly said: string;
        readonly share: number;
      }[];
      readonly picture: Picture;
    }
  | {
      readonly kind: 'cautions';
      readonly cautions: readonly {
        readonly id: string;
        readonly word: SignalWord;
        /** The signal word in the sheet's language. */
        readonly said: string;
        readonly text: string;
      }[];
    }
  | { readonly kind: 'picture'; readonly picture: Picture }
  /** Places to write in by hand. */
  | {
      readonly kind: 'fields';
      readonly fields: readonly { readonly id: string; readonly label: string }[];
    }
);

/** A sheet. */
export interface Sheet {
  readonly format: typeof sheetFormat;
  readonly kind: SheetKind;
  /** BCP 47. */
  readonly locale: string;
  readonly direction: 'ltr' | 'rtl';
  readonly title: string;
  /** The flow's name: "The vehicle will not start". */
  readonly subject: string;
  readonly case: {
    readonly id: string;
    readonly flow: string;
    readonly version: string;
    /** When its last answer was given, ISO 8601. */
    readonly at: string;
  };
  /** When the sheet was made, ISO 8601. */
  readonly made: string;
  /** Case, dates. */
  readonly head: readonly Fact[];
  /** What a table of decisions came to, with what is paid back; null where there is none. */
  readonly decision: {
    readonly decide: string;
    readonly reason: string;
    readonly refund?: Refund;
  } | null;
  /** The verdict in short; null while there is none. */
  readonly verdict: {
    readonly fault: string;
    readonly strength: Strength;
    readonly probability: number;
  } | null;
  /** What matters most, and how sure it is. */
  readonly lead: { readonly title: string; readonly text: string };
  /** What a camera or a scanner reads: the case's link, or its findings. */
  readonly code: { readonly text: string; readonly caption: string; readonly picture: Picture };
  readonly blocks: readonly Block[];
  /** What stands below everything else. */
  readonly foot: readonly string[];
}
