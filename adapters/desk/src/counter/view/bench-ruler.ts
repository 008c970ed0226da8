/**
 * The scale of a figure while it is typed: it stands still, and the mark moves along it.
 */
import type { ReadingMessage } from '@keyturn/core';
import { convert } from '@keyturn/electrics';
import type { Speaker } from '@keyturn/language';
import { html, nothing, svg, type TemplateResult } from 'lit-html';

/** Units of the drawing; the page scales it. */
const [width, axis] = [400, 40];

/** What a letter of a label is wide at most, and what lies between two labels at least. */
const [letter, gap] = [7.4, 8];

/** How much higher each row is in which what has no room beside its neighbours is named. */
const rise = 18;

/** Two standard uncertainties: the true value is in there 19 times out of 20. */
const coverage = 2;

/**
 * Draws a scale. Its ends lie so that every band has room; a figure beyond them is marked at the
 * end. Every band is named, and nothing but the mark moves while a figure is typed. `isTyped` is
 * false while there is none.
 */
export function benchRuler(
  scale: ReadingMessage,
  given: {
    readonly speaker: Speaker;
    readonly bandLabels: readonly string[];
    readonly isTyped: boolean;
    /** The band in which a part is good. */
    readonly good: string | undefined;
  },
): TemplateResult {
  const at = placeOn(scale);
  const drawn = bandsOf(scale, given, at);
  const top = -rise * Math.max(0, ...drawn.map(({ row }) => row));
  return html`<svg class="bench-ruler" viewBox="0 ${top} ${width} ${70 - top}" aria-hidden="true">
    ${drawn.map(band)}
    <line class="axis" x1="0" x2=${width} y1=${axis} y2=${axis} />
    ${bounds(scale, given.speaker, at)} ${given.isTyped ? mark(scale, at) : nothing}
  </svg>`;
}

type At = (value: number) => number;

/** A band as it is drawn, its label in the row above the scale or in a higher one. */
interface DrawnBand {
  readonly x: number;
  readonly end: number;
  readonly label: string;
  readonly middle: number;
  readonly row: number;
  readonly isHere: boolean;
  readonly isGood: boolean;
}

/** Each label stands in the lowest row in which it has room. */
function bandsOf(
  { bounds: between, bands: ids, band: found, borderline }: ReadingMessage,
  {
    bandLabels,
    isTyped,
    good,
  }: Pick<Parameters<typeof benchRuler>[1], 'bandLabels' | 'isTyped' | 'good'>,
  at: At,
): readonly DrawnBand[] {
  const edges = [0, ...between.map(({ low, high }) => at((low + high) / 2)), width];
  const taken: (readonly [row: number, from: number, to: number])[] = [];
  return ids.map((id, index) => {
    const [x, end] = [edges[index] ?? 0, edges[index + 1] ?? width];
    const label = bandLabels[index] ?? '';
    const half = Math.min(width, label.length * letter) / 2;
    const middle = Math.min(width - half, Math.max(half, (x + end) / 2));
    const isFree = (row: number): boolean =>
      taken.every(([of, from, to]) => of !== row || middle + half < from || middle - half > to);
    let row = 0;
    while (!isFree(row)) row += 1;
    taken.push([row, middle - half - gap, middle + half + gap]);
    // What is too close to call lies in no band.
    const isHere = isTyped && !borderline && id === found;
    return { x, end, label, middle, row, isHere, isGood: id === good };
  });
}

function band({ x, end, label, middle, row, isHere, isGood }: DrawnBand) {
  const base = 14 - row * rise;
  const place = (x + end) / 2;
  // A label that stands higher is led to its band.
  const lead =
    row === 0
      ? nothing
      : svg`<line class="lead" x1=${place} x2=${place} y1=${base + 4} y2=${axis - 8} />`;
  return svg`<rect class=${isHere ? 'band here' : isGood ? 'band good' : 'band'}
      x=${x} width=${Math.max(0, end - x)} y=${axis} height="12" />
    ${lead}<text class=${isHere ? 'label here' : 'label'} x=${middle} y=${base} text-anchor="middle">${label}</text>`;
}

function bounds({ bounds: all, unit }: ReadingMessage, speaker: Speaker, at: At) {
  return all.map(({ low, high }) => {
    const figures = low === high ? [low] : [low, high];
    const text = figures
      .map((value) => speaker.formatNumber(value, Math.abs(value) < 1 ? 3 : 2))
      .join('–');
    const [from, to] = [at(low), at(high)];
    const middle = (from + to) / 2;
    return svg`<rect class="zone" x=${from} width=${Math.max(2, to - from)} y=${axis - 6} height="18" />
      <text class="bound" x=${middle} y="67" text-anchor="middle" direction="ltr" data-unit=${unit}>${text}</text>`;
  });
}

function mark(scale: ReadingMessage, at: At) {
  const { value, spread } = inScaleUnit(scale);
  const [from, to] = [at(value - spread), at(value + spread)];
  return svg`<rect class="spread" x=${from} width=${Math.max(2, to - from)} y=${axis - 5} height="10" />
    <path class="mark" d=${`M${String(at(value))} ${String(axis)} l-8 -18 h16 z`} />`;
}

function inScaleUnit({ quantity, uncertainty, unit }: ReadingMessage): {
  readonly value: number;
  readonly spread: number;
} {
  const { value } = convert(quantity, unit);
  const shifted = { ...quantity, value: quantity.value + coverage * uncertainty };
  return { value, spread: Math.abs(convert(shifted, unit).value - value) };
}

/** The bounds share the width evenly, so that no band is too narrow to be read. */
function placeOn({ bounds: all }: ReadingMessage): At {
  const stops = all.flatMap(({ low, high }) => (low === high ? [low] : [low, high]));
  const [first = 0, last = 1] = [stops[0], stops.at(-1)];
  const step = stops.length > 1 ? (last - first) / (stops.length - 1) : Math.abs(first) || 1;
  const marks = [first - step, ...stops, last + step];
  const wide = width / (marks.length - 1);
  return (value) => {
    const above = marks.findIndex((stop) => stop >= value);
    if (above === 0) return 8;
    if (above < 0) return width - 8;
    const [from = 0, to = 1] = [marks[above - 1], marks[above]];
    const place = (above - 1 + (value - from) / (to - from)) * wide;
    return Math.round(Math.min(width - 8, Math.max(8, place)) * 10) / 10;
  };
}
