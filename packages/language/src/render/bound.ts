import type { ReadingMessage, ScaleBound, ScaleSpan } from '@keyturn/core';
import type { Voice } from '../voice.ts';

/** How well a figure is founded, and on what. */
function saySource({ provenance, text }: ScaleBound['source'], { say }: Voice): string {
  const founded = say(`source.${provenance}`);
  return text === '' ? founded : say('source.text', { founded, text });
}

/** A bound, or the zone that it is, and its source. */
export function sayBound(bound: ScaleBound, unit: ReadingMessage['unit'], voice: Voice): string {
  const { say, figures } = voice;
  const { low, high } = roundedEnds(bound);
  const figure = (value: number): string => figures.formatQuantity({ value, unit });
  const source = saySource(bound.source, voice);
  return low === high
    ? say('why.bound', { figure: figure(low), source })
    : say('why.zone', { low: figure(low), high: figure(high), source });
}

/** The two ends of a bound, rounded to what a person can use: wherever it is written, it reads alike. */
export function roundedEnds({ low, high }: Pick<ScaleBound, 'low' | 'high'>): {
  readonly low: number;
  readonly high: number;
} {
  const step = low === high ? stepOfSharp(low) : stepFor((high - low) / 20);
  return { low: roundTo(low, step), high: roundTo(high, step) };
}

/** The two ends of a span, with no more decimals than tell them apart. */
export function sayEnds(
  { low, high }: Pick<ScaleSpan, 'low' | 'high'>,
  unit: ReadingMessage['unit'],
  { figures }: Voice,
): { readonly low: string; readonly high: string } {
  const resolution = stepFor((high - low) / 4);
  const figure = (value: number): string => figures.formatQuantity({ value, unit, resolution });
  return { low: figure(low), high: figure(high) };
}

/** What a reading should show when nothing is wrong, and on what that rests. */
export function sayExpected(
  expected: ScaleSpan,
  unit: ReadingMessage['unit'],
  voice: Voice,
): string {
  const ends = sayEnds(expected, unit, voice);
  return voice.say('why.expected', { ...ends, source: saySource(expected.source, voice) });
}

/** The power of ten at or below a spread: the last decimal that means something. */
export function stepFor(spread: number): number {
  return spread > 0 ? 10 ** Math.floor(Math.log10(spread)) : 0.001;
}

/** The last decimal of a sharp bound that a person can use: 9.44 V of 9.436 V, 37.8 N·m. */
function stepOfSharp(value: number): number {
  const size = Math.abs(value);
  if (size < 1) return 0.001;
  if (size < 20) return 0.01;
  return size < 100 ? 0.1 : 1;
}

/** A value rounded to a step. */
function roundTo(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}
