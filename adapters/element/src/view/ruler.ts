/**
 * A reading as a small ruler: its bands, bounds, mark and uncertainty.
 */
import type { ReadingMessage } from '@keyturn/core';
import { convert } from '@keyturn/electrics';
import type { Teller } from '@keyturn/language';
import { html, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit-html';

/** Units of the drawing; the page scales it. */
const width = 260;
const axis = 22;

/** What a letter of a label is wide. */
const letter = 5.6;

/** Two standard uncertainties: the true value is in there 19 times out of 20. */
const coverage = 2;

/** Draws a reading. `text` says the same for those who cannot see it. */
export function ruler(
  reading: ReadingMessage,
  {
    speaker,
    text,
    bandLabels,
  }: {
    readonly speaker: Teller;
    readonly text: string;
    readonly bandLabels: readonly string[];
  },
): TemplateResult {
  const { value, spread } = inScaleUnit(reading);
  const at = scaleOf(reading);
  const [from, to] = [at(value - spread), at(value + spread)];
  return html`<svg class="ruler" viewBox="0 0 ${width} 48" role="img" aria-label=${text}>
    ${bands(reading, bandLabels, at)}
    <line class="axis" x1="0" x2=${width} y1=${axis} y2=${axis} />
    ${boundMarks(reading, { at, speaker })} ${expectedSpan(reading, at)}
    <rect class="spread" x=${from} width=${Math.max(2, to - from)} y=${axis - 4} height="8" />
    <path class="mark" d=${`M${String(at(value))} ${String(axis)} l-5.5 -10 h11 z`} />
  </svg>`;
}

type At = (value: number) => number;

function bands(
  { bounds, band, bands: ids, borderline }: ReadingMessage,
  labels: readonly string[],
  at: At,
) {
  const edges = [0, ...bounds.map(({ low, high }) => at((low + high) / 2)), width];
  const drawn = ids.map((id, index) => {
    const [x, end] = [edges[index] ?? 0, edges[index + 1] ?? width];
    const label = labels[index] ?? '';
    const half = (label.length * letter) / 2;
    const middle = Math.min(width - half, Math.max(half, (x + end) / 2));
    // What is too close to call lies in no band.
    return { x, end, label, half, middle, isHere: !borderline && id === band };
  });
  const here = drawn.find(({ isHere }) => isHere);
  return drawn.map((one, index): SVGTemplateResult => {
    const { x, end, label, half, middle, isHere } = one;
    // The band of the figure is always named; another where it has room beside that.
    const isFree = here === undefined || Math.abs(middle - here.middle) > half + here.half + 5;
    // Between two bands the name of one alone would speak for it.
    const isNamed = isHere || (!borderline && isFree && 2 * half < end - x - 10);
    return svg`<rect class=${isHere ? 'band here' : index % 2 === 0 ? 'band' : 'band odd'}
        x=${x} width=${Math.max(0, end - x)} y=${axis} height="9" />
      ${isNamed ? svg`<text class=${isHere ? 'label here' : 'label'} x=${middle} y="8" text-anchor="middle">${label}</text>` : nothing}`;
  });
}

/** Each bound with its figure; one that would stand in another's is left out. */
function boundMarks(
  { bounds, unit }: ReadingMessage,
  { at, speaker }: { readonly at: At; readonly speaker: Teller },
): readonly SVGTemplateResult[] {
  let taken = -Infinity;
  return bounds.map(({ low, high }) => {
    const middle = (low + high) / 2;
    const figure = speaker.formatQuantity({ value: middle, unit, resolution: stepOf(middle) });
    const x = at(middle);
    const half = figure.length * 3;
    const place = Math.min(width - half, Math.max(half, x));
    const fits = place - half > taken;
    if (fits) taken = place + half;
    return svg`<rect class="zone" x=${at(low)} width=${Math.max(1.5, at(high) - at(low))} y=${axis - 5} height="14" />
      ${fits ? svg`<text class="bound" x=${place} y="44" text-anchor="middle" direction="ltr">${figure}</text>` : nothing}`;
  });
}

/** The coarsest step in which a bound can be written whole; where there is none, the last that counts. */
function stepOf(value: number): number {
  const isWhole = (step: number): boolean =>
    Math.abs(value / step - Math.round(value / step)) < 1e-6;
  return [1, 0.1, 0.01].find(isWhole) ?? (Math.abs(value) < 1 ? 0.001 : 0.01);
}

function expectedSpan({ expected }: ReadingMessage, at: At) {
  if (expected === undefined) return nothing;
  const [x, end] = [at(expected.low), at(expected.high)];
  return svg`<line class="expected" x1=${x} x2=${end} y1=${axis + 11} y2=${axis + 11} />`;
}

/** The figure and its spread in the unit of the bounds: 50 mV may be read where the bound is in V. */
function inScaleUnit({ quantity, uncertainty, unit }: ReadingMessage): {
  readonly value: number;
  readonly spread: number;
} {
  const { value } = convert(quantity, unit);
  const beside = convert(
    { ...quantity, value: quantity.value + coverage * uncertainty },
    unit,
  ).value;
  return { value, spread: Math.abs(beside - value) };
}

/** From a figure to its place, so that mark, bounds and what is expected are all in sight. */
function scaleOf(reading: ReadingMessage): At {
  const { bounds, expected } = reading;
  const { value, spread } = inScaleUnit(reading);
  const points = [
    value - spread,
    value + spread,
    ...bounds.flatMap(({ low, high }) => [low, high]),
    ...(expected === undefined ? [] : [expected.low, expected.high]),
  ];
  const [low, high] = [Math.min(...points), Math.max(...points)];
  const margin = (high - low || Math.abs(high) || 1) * 0.18;
  return (figure) => {
    const share = (figure - low + margin) / (high - low + 2 * margin);
    return Math.round(Math.min(1, Math.max(0, share)) * width * 10) / 10;
  };
}
