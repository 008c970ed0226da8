import { convert } from '@keyturn/electrics';
import type { ReadingMessage } from '@keyturn/core';
import { roundedEnds, type Rendered, type Teller } from '@keyturn/language';
import { hatch } from '../svg/hatch.ts';
import { round } from '../svg/element.ts';
import { lineHeight, pathThrough, textSize, textWidth, type Pen, type Point } from '../svg/pen.ts';
import { frame, margin, penFor, pictureWidth, type DrawingOptions } from '../svg/picture.ts';
import { placeInRows } from '../text/rows.ts';
import { sayFigure } from '../text/figure.ts';
import { wrap } from '../text/wrap.ts';
import { layOutRuler, ticksIn, type Ruler, type Stretch } from './ruler.ts';

/** A reading in words, as a speaker renders it. */
export type RenderedScale = Extract<Rendered, { readonly kind: 'scale' }>;

const left = margin;
const right = pictureWidth - margin;
const flagHeight = 26;
/** What is kept free above and below a picture without a flag. */
const edge = 2;
const flag = { size: 15, weight: 'bold' } as const;

/** Two standard uncertainties: the true value is in there 19 times out of 20. */
const coverage = 2;

/** How a reading is drawn. */
export interface ReadingOptions extends DrawingOptions {
  /**
   * False leaves out the flag with the figure, for where it stands beside the picture, so that this
   * is lower and can be printed smaller without its words becoming too small.
   *
   * @defaultValue true
   */
  readonly hasFlag?: boolean;
}

/** All that the parts of the picture go by, in the unit of the scale. */
interface Laid {
  readonly reading: ReadingMessage;
  readonly ruler: Ruler;
  readonly value: number;
  readonly halfWidth: number;
  readonly markX: number;
  readonly rulerHeight: number;
  readonly speaker: Teller;
  readonly pen: Pen;
}

/** Part of the picture, and the y at which it ends. */
interface Part {
  readonly shapes: readonly string[];
  readonly end: number;
}

/**
 * A reading on its ruler: bands with their names, bounds with their figures, hatched where a bound
 * is a zone; the reading with its uncertainty (two standard deviations to either side); below it
 * what a sound vehicle would show. Values ascend from left to right in every language.
 *
 * Gives nothing where the check has no bounds to draw. Pure; the same bytes for the same reading.
 */
export function drawReading(scale: RenderedScale, options: ReadingOptions): string | undefined {
  const { reading, bandLabels, text } = scale;
  if (reading.bounds.length === 0) return undefined;
  const { speaker, hasFlag = true } = options;
  const pen = penFor(options);
  const { unit, quantity } = reading;
  const ruler = layOutRuler(reading, left, right);
  const value = convert(quantity, unit).value;
  const scaleBy =
    convert({ value: 1, unit: quantity.unit }, unit).value -
    convert({ value: 0, unit: quantity.unit }, unit).value;
  const halfWidth = coverage * reading.uncertainty * scaleBy;
  const rulerHeight = hasFlag ? 34 : 20;
  const markX = ruler.xOf(value);
  const laid = { reading, ruler, value, halfWidth, markX, rulerHeight, speaker, pen };

  const written = sayReading(laid);
  const figures = boundFigures(laid, hasFlag ? margin + flagHeight + 6 : edge);
  const top = figures.end + 4;
  const names = bandNames(bandLabels, laid, top + rulerHeight + (hasFlag ? 12 : 4));
  const expected = expectedLine(laid, names.end + 6);
  return frame(
    {
      title: speaker.drawing('reading', {
        name: speaker.checkName(reading.check),
        figure: written,
      }),
      description: text,
      height: expected.end + (hasFlag ? margin : edge),
      shapes: [
        ...ruler.stretches.flatMap((stretch) => drawStretch(stretch, top, laid)),
        ...expectedSpan(laid, top + rulerHeight + 3),
        ...figures.shapes,
        ...boundTicks(laid, top),
        ...(hasFlag ? flagOf(written, top, laid) : []),
        ...mark(top, laid),
        ...names.shapes,
        ...expected.shapes,
      ],
    },
    pen,
    options,
  );
}

function sayReading({ reading, speaker }: Laid): string {
  const { quantity, uncertainty } = reading;
  const spread = coverage * uncertainty;
  const figure = sayFigure(quantity, speaker);
  if (!(spread > 0)) return figure;
  // No finer than the reading itself, unless nothing would be left of it.
  const fine = 10 ** Math.floor(Math.log10(spread / 4));
  const read = quantity.resolution ?? fine;
  const resolution = spread > 0.9 * read ? Math.max(fine, read) : fine;
  return `${figure}\u00a0±\u00a0${sayFigure({ value: spread, unit: quantity.unit, resolution }, speaker)}`;
}

/** True of the band in which a reading lies; what is too close to call lies in none. */
function isIn({ bands, band, borderline }: ReadingMessage, index: number): boolean {
  return !borderline && bands[index] === band;
}

/** A stretch of the ruler with its ticks; the ends are torn, since the ruler goes on. */
function drawStretch(stretch: Stretch, top: number, laid: Laid): string[] {
  const { reading, ruler, rulerHeight, pen } = laid;
  const { palette } = pen;
  const { kind, index } = stretch;
  const box = { x: stretch.left, y: top, width: stretch.right - stretch.left, height: rulerHeight };
  if (kind === 'zone') {
    return [pen.shape('rect', { ...box, fill: palette.paper }), hatch(box, palette.line, pen)];
  }
  const here = isIn(reading, index);
  const fill = here ? palette.here : index % 2 === 0 ? palette.tint : palette.deep;
  const first = index === 0;
  const last = index === reading.bands.length - 1;
  return [
    pen.shape('path', { d: tornBox(box, first, last), fill }),
    ...ticksIn(stretch).map((value) => {
      const x = ruler.xOf(value);
      return pen.line(
        [
          [x, top + rulerHeight - 6],
          [x, top + rulerHeight],
        ],
        { 'stroke-width': 1 },
      );
    }),
    pen.line([
      [box.x, top + rulerHeight],
      [stretch.right, top + rulerHeight],
    ]),
  ];
}

function tornBox(
  {
    x,
    y,
    width,
    height,
  }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  tornLeft: boolean,
  tornRight: boolean,
): string {
  const teeth = 4;
  const tooth = height / teeth;
  const torn = (at: number, into: number, down: boolean): string =>
    Array.from({ length: teeth }, (_, count) => {
      const from = down ? y + count * tooth : y + height - count * tooth;
      const sign = down ? 1 : -1;
      return `L${round(at + into)} ${round(from + (sign * tooth) / 2)}L${round(at)} ${round(from + sign * tooth)}`;
    }).join('');
  const end = x + width;
  return [
    `M${round(x)} ${round(y)}L${round(end)} ${round(y)}`,
    tornRight ? torn(end, -5, true) : `L${round(end)} ${round(y + height)}`,
    `L${round(x)} ${round(y + height)}`,
    tornLeft ? torn(x, 5, false) : '',
    'Z',
  ].join('');
}

/** The figures of the bounds above the ruler; none stands where the mark comes down. */
function boundFigures({ reading, ruler, markX, speaker, pen }: Laid, top: number): Part {
  const size = 12;
  const figure = (value: number): string =>
    sayFigure({ value, unit: reading.unit, resolution: ruler.step }, speaker);
  const labels = reading.bounds.map(({ low, high }) => {
    // As it is written wherever else the bound is told.
    const ends = roundedEnds({ low, high });
    const text = high > low ? `${figure(ends.low)} – ${figure(ends.high)}` : figure(ends.low);
    const width = textWidth(text, { size });
    const middle = (ruler.xOf(low) + ruler.xOf(high)) / 2;
    return { text, width, middle: beside(middle, width, markX) };
  });
  const placed = placeInRows(labels, left, right);
  const rows = Math.max(...placed.map(({ row }) => row)) + 1;
  const end = top + rows * size * lineHeight;
  const shapes = labels.map(({ text }, index) => {
    const { middle, row } = placed[index] ?? { middle: 0, row: 0 };
    return pen.text(text, {
      x: middle,
      y: end - row * size * lineHeight - 3,
      anchor: 'middle',
      size,
      rim: true,
    });
  });
  return { shapes, end };
}

/** The middle of a label that keeps clear of the mark, on the side where it was. */
function beside(middle: number, width: number, markX: number): number {
  const clear = width / 2 + 6;
  if (Math.abs(middle - markX) >= clear) return middle;
  const side = middle === markX ? 1 : Math.sign(middle - markX);
  const moved = markX + side * clear;
  const fits = moved - width / 2 >= left && moved + width / 2 <= right;
  return fits ? moved : markX - side * clear;
}

function boundTicks({ reading, ruler, rulerHeight, pen }: Laid, top: number): string[] {
  const ends = reading.bounds.flatMap(({ low, high }) => (high > low ? [low, high] : [low]));
  return ends.map((value) => {
    const x = ruler.xOf(value);
    return pen.line(
      [
        [x, top - 3],
        [x, top + rulerHeight],
      ],
      { stroke: pen.palette.ink },
    );
  });
}

/** The figure of the reading on a flag, with a line down to its mark. */
function flagOf(written: string, top: number, { markX, rulerHeight, pen }: Laid): string[] {
  const { palette } = pen;
  const width = textWidth(written, flag) + 16;
  const x = Math.max(left, Math.min(right - width, markX - width / 2));
  return [
    pen.line(
      [
        [markX, margin + flagHeight],
        [markX, middleOf(top, rulerHeight)],
      ],
      { stroke: palette.ink, 'stroke-width': 2 },
    ),
    pen.shape('rect', {
      x,
      y: margin,
      width,
      height: flagHeight,
      rx: 4,
      fill: palette.here,
      stroke: palette.ink,
      'stroke-width': 1.5,
    }),
    pen.text(written, { ...flag, x: x + width / 2, y: margin + 18.5, anchor: 'middle' }),
  ];
}

/** Where the mark stands: clear of the ticks at the foot of the ruler. */
function middleOf(top: number, rulerHeight: number): number {
  return top + rulerHeight / 2 - 3;
}

/** The reading on its ruler, its uncertainty as a bar. */
function mark(top: number, { ruler, value, halfWidth, markX, rulerHeight, pen }: Laid): string[] {
  const middle = middleOf(top, rulerHeight);
  const [low, high] = [ruler.xOf(value - halfWidth), ruler.xOf(value + halfWidth)];
  const bar = { stroke: pen.palette.ink, 'stroke-width': 2.5, 'stroke-linecap': 'butt' };
  const whisker =
    high - low < 1
      ? []
      : [
          pen.line(
            [
              [low, middle],
              [high, middle],
            ],
            bar,
          ),
          pen.line(
            [
              [low, middle - 5],
              [low, middle + 5],
            ],
            bar,
          ),
          pen.line(
            [
              [high, middle - 5],
              [high, middle + 5],
            ],
            bar,
          ),
        ];
  return [...whisker, tip(ruler.beyond(value), [markX, middle], pen)];
}

/** A diamond on the value, or an arrow to the side on which it is off the ruler. */
function tip(beyond: 'below' | 'above' | undefined, [x, y]: Point, pen: Pen): string {
  const size = 6;
  const sign = beyond === 'below' ? -1 : 1;
  const points: readonly Point[] =
    beyond === undefined
      ? [
          [x, y - size],
          [x + size, y],
          [x, y + size],
          [x - size, y],
        ]
      : [
          [x - sign * 2 * size, y - size - 2],
          [x, y],
          [x - sign * 2 * size, y + size + 2],
        ];
  return pen.shape('path', {
    d: `${pathThrough(points)}Z`,
    fill: pen.palette.ink,
    stroke: pen.palette.paper,
    'stroke-width': 1,
  });
}

/** The names under their bands, further down where they would touch; the one that holds is bold. */
function bandNames(names: readonly string[], { reading, ruler, pen }: Laid, top: number): Part {
  const bands = ruler.stretches.filter(({ kind }) => kind === 'band');
  const room = (bands[0]?.right ?? 0) - (bands[0]?.left ?? 0);
  const bold = { size: textSize, weight: 'bold' } as const;
  const longest = Math.max(
    ...names.flatMap((name) => name.split(' ')).map((word) => textWidth(word, bold)),
  );
  const width = Math.max(longest, room - 8);
  const labels = bands.map(({ left: from, right: to, index }) => {
    const lines = wrap(names[index] ?? '', width, bold);
    const widest = Math.max(...lines.map((line) => textWidth(line, bold)));
    return {
      lines,
      width: widest,
      middle: (from + to) / 2,
      here: isIn(reading, index),
    };
  });
  const placed = placeInRows(labels, left, right);
  const rows = Math.max(...placed.map(({ row }) => row)) + 1;
  const step = textSize * lineHeight;
  const heights = Array.from(
    { length: rows },
    (_, row) =>
      Math.max(
        ...labels.map(({ lines }, index) => (placed[index]?.row === row ? lines.length : 0)),
      ) * step,
  );
  const yOf = (row: number): number =>
    top + heights.slice(0, row).reduce((sum, one) => sum + one + 3, 0);
  const shapes = labels.map(({ lines, middle, here }, index) => {
    const { middle: x, row } = placed[index] ?? { middle: 0, row: 0 };
    const y = yOf(row);
    return {
      leader:
        row === 0
          ? []
          : [
              pen.line(
                [
                  [middle, top - 8],
                  [middle, y + 1],
                ],
                { 'stroke-width': 1 },
              ),
            ],
      text: pen.lines(lines, {
        x,
        y: y + textSize,
        anchor: 'middle',
        weight: here ? 'bold' : 'regular',
        rim: true,
      }),
    };
  });
  return {
    shapes: [...shapes.flatMap(({ leader }) => leader), ...shapes.flatMap(({ text }) => text)],
    end: yOf(rows),
  };
}

/** Where a sound vehicle's reading would lie: a hatched strip under the ruler. */
function expectedSpan({ reading: { expected }, ruler, pen }: Laid, y: number): string[] {
  if (expected === undefined) return [];
  const x = ruler.xOf(expected.low);
  return soundStrip({ x, y, width: Math.max(3, ruler.xOf(expected.high) - x), height: 8 }, pen);
}

function soundStrip(
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  pen: Pen,
): string[] {
  return [
    hatch(box, pen.palette.sound, pen),
    pen.shape('rect', { ...box, fill: 'none', stroke: pen.palette.sound, 'stroke-width': 1.5 }),
  ];
}

/** What the strip is, with its figures. */
function expectedLine({ reading, speaker, pen }: Laid, top: number): Part {
  const { expected, unit } = reading;
  if (expected === undefined) return { shapes: [], end: top - 6 };
  const resolution = 10 ** Math.floor(Math.log10((expected.high - expected.low) / 4 || 0.01));
  const figure = (value: number): string => sayFigure({ value, unit, resolution }, speaker);
  const said = speaker.drawing('expected', {
    low: figure(expected.low),
    high: figure(expected.high),
  });
  const size = 12;
  const sample = 22;
  const lines = wrap(said, right - left - sample - 8, { size, weight: 'regular' });
  const x = pen.rightToLeft ? right - sample : left;
  return {
    shapes: [
      ...soundStrip({ x, y: top + 2, width: sample, height: 8 }, pen),
      ...pen.lines(lines, {
        x: pen.rightToLeft ? x - 8 : x + sample + 8,
        y: top + 11,
        anchor: pen.rightToLeft ? 'end' : 'start',
        size,
      }),
    ],
    end: top + lines.length * size * lineHeight,
  };
}
