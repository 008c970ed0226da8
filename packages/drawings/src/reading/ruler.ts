/**
 * Where the bands and bounds of a reading lie on a ruler. Every band has the same room, whatever it
 * spans, so that each can be read; within a band the ruler is linear, and its ticks say its scale.
 */
import type { ScaleBound, ScaleSpan } from '@keyturn/core';
import { roundedEnds } from '@keyturn/language';

/** A stretch of the ruler, from one x to another, and the values at its two ends. */
export interface Stretch {
  readonly kind: 'band' | 'zone';
  /** The index of the band, or of the bound that is a zone. */
  readonly index: number;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** A ruler laid out. */
export interface Ruler {
  readonly stretches: readonly Stretch[];
  /** The x of a value; one beyond an end is at that end. */
  readonly xOf: (value: number) => number;
  /** On which side a value is beyond the ruler, if it is. */
  readonly beyond: (value: number) => 'below' | 'above' | undefined;
  /** A step in which its bounds are told apart and written whole: a power of ten. */
  readonly step: number;
}

const zoneWidth = 30;

/** What a ruler is laid out for: bounds in ascending order, one or more, and what is expected. */
export interface Scale {
  readonly bounds: readonly ScaleBound[];
  readonly expected?: Pick<ScaleSpan, 'low' | 'high'>;
}

/** Lays out a ruler between two x; what is expected lies whole on it. */
export function layOutRuler({ bounds, expected }: Scale, left: number, right: number): Ruler {
  const zones = bounds.filter(isZone).length;
  const each = (right - left - zones * zoneWidth) / (bounds.length + 1);
  const span = usualSpan(bounds);
  const expectedEnd = expected ?? { low: Infinity, high: -Infinity };
  const stretches: Stretch[] = [];
  let x = left;
  for (let index = 0; index <= bounds.length; index += 1) {
    const above = bounds[index];
    const low = bounds[index - 1]?.high ?? Math.min((above?.low ?? 0) - span, expectedEnd.low);
    const high = above?.low ?? Math.max(low + span, expectedEnd.high);
    stretches.push({ kind: 'band', index, left: x, right: x + each, low, high });
    x += each;
    if (above === undefined || !isZone(above)) continue;
    stretches.push({ kind: 'zone', index, left: x, right: x + zoneWidth, ...endsOf(above) });
    x += zoneWidth;
  }
  const first = stretches[0]?.low ?? 0;
  const last = stretches.at(-1)?.high ?? 0;
  return {
    stretches,
    xOf: (value) => xIn(stretches, value),
    beyond: (value) => (value < first ? 'below' : value > last ? 'above' : undefined),
    step: stepOf(bounds, span),
  };
}

function isZone({ low, high }: ScaleBound): boolean {
  return high > low;
}

function endsOf({ low, high }: ScaleBound): { readonly low: number; readonly high: number } {
  return { low, high };
}

/** What an end band spans: as much as an inner one does, or as its one bound is far from zero. */
function usualSpan(bounds: readonly ScaleBound[]): number {
  const spans = bounds.slice(1).map(({ low }, index) => low - (bounds[index]?.high ?? low));
  const positive = spans.filter((span) => span > 0);
  if (positive.length > 0) return positive.reduce((sum, one) => sum + one, 0) / positive.length;
  return Math.abs(bounds[0]?.high ?? 0) || 1;
}

function xIn(stretches: readonly Stretch[], value: number): number {
  const inside =
    stretches.find(({ kind, low, high }) => kind === 'zone' && value >= low && value <= high) ??
    stretches.find(({ kind, high }) => kind === 'band' && value < high) ??
    stretches.at(-1);
  if (inside === undefined) return 0;
  const { left, right, low, high } = inside;
  const share = high > low ? Math.min(1, Math.max(0, (value - low) / (high - low))) : 0;
  return left + share * (right - left);
}

function stepOf(bounds: readonly ScaleBound[], span: number): number {
  const ends = bounds.map(roundedEnds).flatMap(({ low, high }) => [low, high]);
  const isWhole = (value: number, step: number): boolean =>
    Math.abs(value / step - Math.round(value / step)) < 1e-6;
  let step = 10 ** Math.floor(Math.log10(span / 20));
  while (step > 1e-4 && !ends.every((end) => isWhole(end, step))) step /= 10;
  while (step < 1 && ends.every((end) => isWhole(end, step * 10))) step *= 10;
  return step;
}

/** Least room between two ticks. */
const tickRoom = 8;

/** The values inside a band at which a tick stands: every 1, 2 or 5 of a power of ten. */
export function ticksIn({ left, right, low, high }: Stretch): number[] {
  const span = high - low;
  if (!(span > 0)) return [];
  const least = (span * tickRoom) / (right - left);
  const power = 10 ** Math.floor(Math.log10(least));
  const step = ([1, 2, 5, 10].find((one) => one * power >= least) ?? 10) * power;
  const ticks: number[] = [];
  for (let count = Math.floor(low / step) + 1; count * step < high - step / 4; count += 1) {
    if (count * step > low + step / 4) ticks.push(count * step);
  }
  return ticks;
}
