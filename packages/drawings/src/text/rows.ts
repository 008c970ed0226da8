/** A text of some width that would best stand around an x. */
export interface Label {
  readonly middle: number;
  readonly width: number;
}

/** Where a label stands: its own middle, and its row, 0 the nearest. */
export interface PlacedLabel {
  readonly middle: number;
  readonly row: number;
}

/** Least room between two labels of a row. */
const gap = 8;

/**
 * Puts labels into rows so that none touches its neighbour and all stand between `left` and
 * `right`; one that would touch goes a row further out. In the order given.
 */
export function placeInRows(labels: readonly Label[], left: number, right: number): PlacedLabel[] {
  const taken: { readonly from: number; readonly to: number }[][] = [];
  return labels.map(({ middle, width }) => {
    const half = width / 2;
    const held = Math.max(left + half, Math.min(right - half, middle));
    const from = held - half;
    const to = held + half;
    const free = taken.findIndex((row) =>
      row.every((other) => to + gap <= other.from || from >= other.to + gap),
    );
    const row = free < 0 ? taken.length : free;
    (taken[row] ??= []).push({ from, to });
    return { middle: held, row };
  });
}
