/**
 * A reading drawn on its scale: the bands by name, the bounds as ticks with their figures, a zone
 * between two bounds hatched, the reading's mark with how far it may be out, and dots where a sound
 * vehicle's reading would lie.
 */
import { columnsOf, wrapText } from './wrap.ts';

/** What is drawn. All figures in the scale's unit. */
export interface Scale {
  /** Names of the bands, ascending; two or more. */
  readonly bands: readonly string[];
  /** One fewer than bands, ascending; low and high differ where the bound is a zone. */
  readonly bounds: readonly { readonly low: number; readonly high: number }[];
  /** What a sound vehicle shows, where that is known. */
  readonly expected?: { readonly low: number; readonly high: number; readonly label: string };
  readonly value: number;
  /** How far the true value may lie to either side, 0 or more. */
  readonly halfWidth: number;
  /** The reading as it is written above its mark: "12.40 V". */
  readonly label: string;
  /** Writes a bound's figure. */
  readonly figure: (value: number) => string;
  /** Writes the two ends of a zone. */
  readonly range: (low: number, high: number) => string;
  /** Which way the language of the names runs; the scale itself always runs from left to right. */
  readonly direction: 'ltr' | 'rtl';
}

/** A stretch of the ruler, its columns, and the values at its two ends. */
interface Stretch {
  readonly kind: 'band' | 'tick' | 'zone';
  readonly from: number;
  readonly columns: number;
  readonly low: number;
  readonly high: number;
}

const zoneColumns = 5;

/**
 * Draws a scale in at most `width` columns, 40 or more. Every band has the same room, whatever its
 * span, so that each can be read; within a band the ruler is linear. A value far outside is drawn
 * at the end, with `<` or `>` for its mark. No lines where there are no bounds.
 */
export function drawScale(scale: Scale, width: number): string[] {
  if (scale.bounds.length === 0 || scale.bands.length !== scale.bounds.length + 1) return [];
  const stretches = layOut(scale, width);
  const last = stretches.at(-1);
  const columns = last === undefined ? 0 : last.from + last.columns;
  const at = columnOf(stretches, scale.value);
  const mark =
    scale.value < (stretches[0]?.low ?? 0) ? '<' : isBeyond(last, scale.value) ? '>' : 'v';
  return [
    ...names(scale, stretches),
    place(new Array<string>(columns).fill(' '), scale.label, at),
    markRow(scale, stretches, { at, mark, columns }),
    stretches.map(ruler).join(''),
    ...expectedRow(scale, stretches, columns),
    ...figures(scale, stretches, columns),
  ].map((line) => `${scale.direction === 'rtl' ? leftToRightMark : ''}${line.trimEnd()}`);
}

/** Keeps a line that begins with Arabic from being shown from right to left: UAX #9, rule P2. */
const leftToRightMark = '\u200e';

function isBeyond(last: Stretch | undefined, value: number): boolean {
  return last !== undefined && value > last.high;
}

function layOut({ bands, bounds }: Scale, width: number): Stretch[] {
  const taken = bounds.reduce((sum, bound) => sum + (isZone(bound) ? zoneColumns : 1), 0);
  const each = Math.max(3, Math.floor((width - taken) / bands.length));
  const span = usualSpan(bounds);
  const stretches: Stretch[] = [];
  let from = 0;
  const add = (stretch: Omit<Stretch, 'from'>): void => {
    stretches.push({ ...stretch, from });
    from += stretch.columns;
  };
  bands.forEach((_, index) => {
    const below = bounds[index - 1];
    const above = bounds[index];
    const low = below?.high ?? (above?.low ?? 0) - span;
    add({ kind: 'band', columns: each, low, high: above?.low ?? low + span });
    if (above === undefined) return;
    const kind = isZone(above) ? 'zone' : 'tick';
    add({ kind, columns: kind === 'zone' ? zoneColumns : 1, low: above.low, high: above.high });
  });
  return stretches;
}

function isZone({ low, high }: { readonly low: number; readonly high: number }): boolean {
  return high > low;
}

/** What an end band spans: as much as an inner one does, or as its one bound is far from zero. */
function usualSpan(bounds: Scale['bounds']): number {
  const spans = bounds.slice(1).map(({ low }, index) => low - (bounds[index]?.high ?? low));
  const positive = spans.filter((span) => span > 0);
  if (positive.length > 0) return positive.reduce((sum, one) => sum + one, 0) / positive.length;
  return Math.abs(bounds[0]?.high ?? 0) || 1;
}

/** The column of a value; values beyond the ends are at the ends. */
function columnOf(stretches: readonly Stretch[], value: number): number {
  const inside =
    stretches.find(({ kind, low, high }) => kind !== 'band' && value >= low && value <= high) ??
    stretches.find(({ kind, high }) => kind === 'band' && value < high) ??
    stretches.at(-1);
  if (inside === undefined) return 0;
  const { from, columns, low, high } = inside;
  const share = high > low ? Math.min(1, Math.max(0, (value - low) / (high - low))) : 0;
  return from + Math.min(columns - 1, Math.floor(share * columns));
}

function ruler({ kind, columns }: Stretch): string {
  if (kind === 'band') return '-'.repeat(columns);
  return kind === 'tick' ? '|' : `|${'/'.repeat(columns - 2)}|`;
}

function markRow(
  { value, halfWidth }: Scale,
  stretches: readonly Stretch[],
  drawn: { readonly at: number; readonly mark: string; readonly columns: number },
): string {
  const low = columnOf(stretches, value - halfWidth);
  const high = columnOf(stretches, value + halfWidth);
  return Array.from({ length: drawn.columns }, (_, column) => {
    if (column === drawn.at) return drawn.mark;
    return column >= low && column <= high ? '~' : ' ';
  }).join('');
}

/** Where a sound vehicle's reading would lie, as dots under the ruler. */
function expectedRow(
  { expected }: Scale,
  stretches: readonly Stretch[],
  columns: number,
): string[] {
  if (expected === undefined) return [];
  const low = columnOf(stretches, expected.low);
  const high = columnOf(stretches, expected.high);
  const dots = ':'.repeat(high - low + 1);
  const room = columnsOf(expected.label) + 1;
  // The word stands behind its dots, or before them where there is no room behind.
  if (high + room < columns) return [`${' '.repeat(low)}${dots} ${expected.label}`];
  return [
    low >= room ? `${' '.repeat(low - room)}${expected.label} ${dots}` : ' '.repeat(low) + dots,
  ];
}

/** The names over their bands, in several rows where they must be wrapped; lettered if too long. */
function names({ bands, direction }: Scale, stretches: readonly Stretch[]): string[] {
  // Names that stand beside each other must not be taken for one line from right to left.
  const isolate = (name: string): string =>
    direction === 'rtl' && name !== '' ? `\u2068${name}\u2069` : name;
  const rooms = stretches.filter(({ kind }) => kind === 'band');
  const each = (rooms[0]?.columns ?? 3) - 1;
  const fits = bands.every((name) => name.split(' ').every((word) => columnsOf(word) <= each));
  const letters = bands.map((_, index) => String.fromCodePoint(65 + index));
  const cells = bands.map((name, index) => wrapText(fits ? name : (letters[index] ?? ''), each));
  const height = Math.max(...cells.map((cell) => cell.length));
  const rows = Array.from({ length: height }, (_, row) =>
    cells.reduce((line, cell, index) => {
      const text = cell[row - (height - cell.length)] ?? '';
      const room = rooms[index];
      return room === undefined ? line : centred(line, isolate(text), room);
    }, ''),
  );
  const legend = fits ? [] : bands.map((name, index) => `${letters[index] ?? ''} ${isolate(name)}`);
  return [...legend, ...rows];
}

function centred(line: string, text: string, room: Stretch): string {
  const start = room.from + Math.floor((room.columns - columnsOf(text)) / 2);
  return line + ' '.repeat(Math.max(0, start - columnsOf(line))) + text;
}

/** The figures under their ticks; one that would touch its neighbour goes a row lower. */
function figures(scale: Scale, stretches: readonly Stretch[], columns: number): string[] {
  const rows: string[] = [];
  for (const { kind, from, columns: room, low, high } of stretches) {
    if (kind === 'band') continue;
    const text = kind === 'tick' ? scale.figure(low) : scale.range(low, high);
    const middle = from + Math.floor((room - 1) / 2);
    const start = startOf(text, middle, columns);
    const free = rows.findIndex((row) => row === '' || columnsOf(row) + 2 <= start);
    const row = free < 0 ? rows.length : free;
    const line = rows[row] ?? '';
    rows[row] = line + ' '.repeat(Math.max(0, start - columnsOf(line))) + text;
  }
  return rows;
}

function place(row: readonly string[], text: string, middle: number): string {
  return ' '.repeat(startOf(text, middle, row.length)) + text;
}

/** Where a text begins so that it stands around `middle` and within `columns`. */
function startOf(text: string, middle: number, columns: number): number {
  const length = columnsOf(text);
  return Math.max(0, Math.min(columns - length, middle - Math.floor(length / 2)));
}
