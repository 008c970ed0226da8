/**
 * How parts of the circuit are drawn: plain lines, fuse, switch and coil as IEC 60617 has them
 * (from memory), the rest as plain outlines.
 */
import type { Pen, Point } from '../svg/pen.ts';
import { gridUnit, type CircuitPart, type PartKind } from './circuit.ts';

/** A part's outline in units of the picture. */
export interface Outline {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a part lies in the picture. */
export function outlineOf({ at: [x, y], size: [width, height] }: CircuitPart): Outline {
  return {
    x: (x - width / 2) * gridUnit,
    y: (y - height / 2) * gridUnit,
    width: width * gridUnit,
    height: height * gridUnit,
  };
}

type Symbol = (outline: Outline, pen: Pen) => string[];

const symbols: Readonly<Record<PartKind, Symbol>> = {
  battery: (outline, pen) => {
    const { x, y, width } = outline;
    const middle = x + width / 2;
    return [
      box({ ...outline, rx: 4 }, 'tint', pen),
      ...post([middle - 30, y], '+', pen),
      ...post([middle + 30, y], '-', pen),
    ];
  },
  'battery-pair': (outline, pen) => {
    const { x, y, width, height } = outline;
    const middle = x + width / 2;
    return [
      box({ ...outline, rx: 4 }, 'tint', pen),
      pen.line([
        [middle, y],
        [middle, y + height],
      ]),
      ...post([middle - 30, y], '+', pen),
      ...post([middle - 10, y], '-', pen),
      ...post([middle + 10, y], '+', pen),
      ...post([middle + 30, y], '-', pen),
      pen.line(
        [
          [middle - 10, y - 12],
          [middle + 10, y - 12],
        ],
        { 'stroke-width': 4 },
      ),
    ];
  },
  clamp: (outline, pen) => [box({ ...outline, rx: 2 }, 'paper', pen)],
  fuse: (outline, pen) => {
    const { x, y, width, height } = outline;
    const through: Point[] =
      width > height
        ? [
            [x, y + height / 2],
            [x + width, y + height / 2],
          ]
        : [
            [x + width / 2, y],
            [x + width / 2, y + height],
          ];
    return [box({ ...outline, rx: 0 }, 'paper', pen), pen.line(through)];
  },
  switch: ({ x, y, width, height }, pen) => {
    const lying = width > height;
    const [from, to]: [Point, Point] = lying
      ? [
          [x, y + height / 2],
          [x + width, y + height / 2],
        ]
      : [
          [x + width / 2, y + height],
          [x + width / 2, y],
        ];
    const open: Point = lying ? [x + width - 4, y] : [x, y + 4];
    return [
      pen.line([from, to], { stroke: pen.palette.paper, 'stroke-width': 9 }),
      pen.line([from, open], { stroke: pen.palette.ink, 'stroke-width': 2.5 }),
      joint(from, pen),
      joint(to, pen),
    ];
  },
  relay: (outline, pen) => {
    const { x, y } = outline;
    const supply: Point = [x + 5, y + 50];
    const [pivot, contact]: [Point, Point] = [
      [x + 30, y + 50],
      [x + 66, y + 50],
    ];
    return [
      box({ ...outline, rx: 4 }, 'tint', pen),
      pen.shape('rect', {
        x: x + 22,
        y: y + 18,
        width: 46,
        height: 14,
        fill: pen.palette.paper,
        ...rim(pen),
      }),
      pen.line([
        [x + 25, y + 10],
        [x + 25, y + 18],
      ]),
      pen.line([
        [x + 65, y + 10],
        [x + 65, y + 18],
      ]),
      pen.line([supply, pivot]),
      pen.line([pivot, [x + 62, y + 40]], { stroke: pen.palette.ink, 'stroke-width': 2.5 }),
      pen.line([contact, [x + 70, y + 50], [x + 70, y + 72]]),
      joint(pivot, pen),
      joint(contact, pen),
      ...[
        [x + 25, y + 7],
        [x + 65, y + 7],
        [x + 2, y + 50],
        [x + 70, y + 75],
      ].map(([cx, cy]) => terminal([cx ?? 0, cy ?? 0], 3.5, pen)),
    ];
  },
  solenoid: (outline, pen) => {
    const { x, y, height } = outline;
    return [
      box({ ...outline, rx: 6 }, 'deep', pen),
      terminal([x + 20, y], 6, pen),
      terminal([x + 20, y + height], 6, pen),
      terminal([x + 125, y], 4, pen),
    ];
  },
  motor: ({ x, y, width }, pen) => {
    const [cx, cy] = [x + width / 2, y + width / 2];
    return [
      pen.shape('circle', { cx, cy, r: width / 2, fill: pen.palette.deep, ...rim(pen) }),
      pen.text('M', { x: cx, y: cy + 7, anchor: 'middle', size: 19, weight: 'bold' }),
    ];
  },
  housing: (outline, pen) => [box({ ...outline, rx: 8 }, 'tint', pen)],
  block: (outline, pen) => {
    const { x, y, width } = outline;
    const bolt = (at: number): string =>
      pen.line(
        [
          [at, y - 32],
          [at, y],
        ],
        { 'stroke-width': 5 },
      );
    return [bolt(x + 14), bolt(x + width - 14), box({ ...outline, rx: 2 }, 'deep', pen)];
  },
};

/** A post of a battery on its box, with its sign below it. */
function post([x, y]: Point, sign: '+' | '-', pen: Pen): string[] {
  const bold = { stroke: pen.palette.ink, 'stroke-width': 2 };
  return [
    pen.shape('rect', {
      x: x - 6,
      y: y - 20,
      width: 12,
      height: 20,
      fill: pen.palette.deep,
      ...rim(pen),
    }),
    pen.line(
      [
        [x - 4, y + 9],
        [x + 4, y + 9],
      ],
      bold,
    ),
    ...(sign === '+'
      ? [
          pen.line(
            [
              [x, y + 5],
              [x, y + 13],
            ],
            bold,
          ),
        ]
      : []),
  ];
}

/** A part as it is drawn. */
export function drawPart(part: CircuitPart, pen: Pen): string[] {
  return symbols[part.kind](outlineOf(part), pen);
}

function rim(pen: Pen): { readonly stroke: string; readonly 'stroke-width': number } {
  return { stroke: pen.palette.line, 'stroke-width': 1.5 };
}

function box(
  outline: Outline & { readonly rx: number },
  fill: 'paper' | 'tint' | 'deep',
  pen: Pen,
): string {
  return pen.shape('rect', { ...outline, fill: pen.palette[fill], ...rim(pen) });
}

/** A dot where wires meet. */
export function joint([cx, cy]: Point, pen: Pen): string {
  return pen.shape('circle', { cx, cy, r: 3, fill: pen.palette.ink });
}

/** A stud or contact that a lead can be held to. */
function terminal([cx, cy]: Point, r: number, pen: Pen): string {
  return pen.shape('circle', { cx, cy, r, fill: pen.palette.paper, ...rim(pen) });
}

/** Where a wire ends on the metal of the vehicle: lines that grow shorter to the right. */
export function chassis([x, y]: Point, pen: Pen): string[] {
  return [9, 6, 3].map((half, index) =>
    pen.line(
      [
        [x + index * 5, y - half],
        [x + index * 5, y + half],
      ],
      { 'stroke-width': 2 },
    ),
  );
}
