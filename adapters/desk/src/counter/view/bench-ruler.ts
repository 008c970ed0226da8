/**
 * The scale of a figure while it is typed: it stands still, and the mark moves along it.
 */
import type { ReadingMessage } from '@keyturn/core';
import { convert } from '@keyturn/electrics';
import type { Speaker } from '@keyturn/language';
import { html, nothing, svg, type TemplateResult } from 'lit-html';

/** Units of the drawing; the page scales it. */
const [width, axis] = [400, 40];

/** What a letter of a label is wide at most. */
const letter = 7.4;

/** Two standard uncertainties: the true value is in there 19 times out of 20. */
const coverage = 2;

/**
 * Draws a scale. Its ends lie so that every band has room; a figure beyond them is marked at the
 * end. The good band is named, and nothing but the mark moves while a figure is typed. `isTyped` is
 * false while there is none.
 */
export function benchRuler(
  scale: ReadingMessage,
  given: {
    readonly speaker: Speaker;
    readonly isTyped: boolean;
    /** The band in which a part is good. */
    readonly good: string | undefined;
  },
): TemplateResult {
  const at = placeOn(scale);
  return html`<svg class="bench-ruler" viewBox=${`0 0 ${String(width)} 70`} aria-hidden="true">
    ${bands(scale, given, at)}
    <line class="axis" x1="0" x2=${width} y1=${axis} y2=${axis} />
    ${bounds(scale, given.speaker, at)} ${given.isTyped ? mark(scale, at) : nothing}
  </svg>`;
}

type At = (value: number) => number;

function bands(
  { check, bounds: between, bands: ids, band: found, borderline }: ReadingMessage,
  { speaker, isTyped, good }: Parameters<typeof benchRuler>[1],
  at: At,
) {
  const edges = [0, ...between.map(({ low, high }) => at((low + high) / 2)), width];
  return ids.map((id, index) => {
    const [x, end] = [edges[index] ?? 0, edges[index + 1] ?? width];
    // What is too close to call lies in no band.
    const isHere = isTyped && !borderline && id === found;
    const isGood = id === good;
    return svg`<rect class=${isHere ? 'band here' : isGood ? 'band good' : 'band'}
        x=${x} width=${Math.max(0, end - x)} y=${axis} height="12" />
      ${isGood ? nameOver(speaker.answerLabel(check, id), (x + end) / 2) : nothing}`;
  });
}

/** The name of a band over its middle, or as near to it as the drawing leaves room. */
function nameOver(name: string, middle: number) {
  const half = Math.min(width, name.length * letter) / 2;
  const place = Math.min(width - half, Math.max(half, middle));
  return svg`<text class="label" x=${place} y="14" text-anchor="middle">${name}</text>`;
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
