/**
 * A picture read back from its SVG: every text with the room it takes by the font's widths, and
 * every shape that can lie under or over a text.
 */
import { SaxesParser } from 'saxes';
import { measure } from '../../packages/drawings/src/text/measure.ts';

/** A rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A text as it stands. */
export interface DrawnText {
  readonly kind: 'text';
  readonly content: string;
  readonly fill: string;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
  readonly box: Box;
}

/** A shape; `covers` where it is filled right to the edges of its box, or nearly so. */
interface DrawnShape {
  readonly kind: 'shape';
  readonly covers: boolean;
  readonly fill: string;
  readonly box: Box;
}

/** What a picture consists of, in the order of painting. */
export interface ReadPicture {
  readonly root: Readonly<Record<string, string>>;
  readonly title: string;
  readonly description: string;
  readonly items: readonly (DrawnText | DrawnShape)[];
  readonly names: ReadonlySet<string>;
  readonly attributes: ReadonlySet<string>;
}

const isolates = /[\u2066-\u2069]/gu;

/** Reads a picture. Throws where it is not well-formed XML. */
export function readPicture(svg: string): ReadPicture {
  const items: (DrawnText | DrawnShape)[] = [];
  const names = new Set<string>();
  const attributes = new Set<string>();
  const written: Record<string, string> = {};
  let root: Readonly<Record<string, string>> = {};
  const open: { name: string; attributes: Readonly<Record<string, string>>; dy: number }[] = [];
  let text = '';
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    const given = tag.attributes as Readonly<Record<string, string>>;
    names.add(tag.name);
    for (const name of Object.keys(given)) attributes.add(name);
    if (open.length === 0) root = given;
    const moved = /^translate\(0 (?<y>[\d.]+)\)$/.exec(given['transform'] ?? '')?.groups?.['y'];
    const dy = (open.at(-1)?.dy ?? 0) + Number(moved ?? 0);
    open.push({ name: tag.name, attributes: given, dy });
    text = '';
    const box = boxOf(tag.name, given, dy);
    if (box !== undefined) {
      const fill = given['fill'] ?? 'none';
      const covers = fill !== 'none' && (tag.name === 'rect' || tag.name === 'circle');
      items.push({ kind: 'shape', covers, fill, box });
    }
  });
  parser.on('text', (more) => {
    text += more;
  });
  parser.on('closetag', ({ name }) => {
    const tag = open.pop();
    if (name === 'title' || name === 'desc') written[name] = text;
    if (name === 'text' && tag !== undefined) items.push(drawnText(tag.attributes, text, tag.dy));
  });
  parser.write(svg).close();
  return {
    root,
    title: written['title'] ?? '',
    description: (written['desc'] ?? '').replaceAll('\u00a0', ' '),
    items,
    names,
    attributes,
  };
}

/** The texts of a picture. */
export function textsOf({ items }: ReadPicture): DrawnText[] {
  return items.filter((item): item is DrawnText => item.kind === 'text');
}

function drawnText(
  given: Readonly<Record<string, string>>,
  content: string,
  dy: number,
): DrawnText {
  const size = Number(given['font-size']);
  const weight = given['font-weight'] === 'bold' ? 'bold' : 'regular';
  const width = measure(content, { size, weight });
  const x = Number(given['x']);
  const anchor = given['text-anchor'] ?? 'start';
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  const baseline = Number(given['y']) + dy;
  return {
    kind: 'text',
    content: content.replace(isolates, '').replaceAll('\u00a0', ' '),
    fill: given['fill'] ?? '',
    size,
    weight,
    // Capitals and figures of DejaVu Sans are 0.73 high, its descenders 0.24 deep.
    box: { left, right: left + width, top: baseline - 0.76 * size, bottom: baseline + 0.24 * size },
  };
}

function boxOf(name: string, given: Readonly<Record<string, string>>, dy: number): Box | undefined {
  const value = (key: string): number => Number(given[key] ?? 0);
  const around = (x: number, y: number, [rx, ry]: readonly [number, number]): Box => ({
    left: x - rx,
    right: x + rx,
    top: y - ry + dy,
    bottom: y + ry + dy,
  });
  switch (name) {
    case 'rect':
      return {
        left: value('x'),
        right: value('x') + value('width'),
        top: value('y') + dy,
        bottom: value('y') + value('height') + dy,
      };
    case 'circle':
      return around(value('cx'), value('cy'), [value('r'), value('r')]);
    case 'ellipse':
      return around(value('cx'), value('cy'), [value('rx'), value('ry')]);
    case 'path':
      return pathBox(given['d'] ?? '', dy);
    default:
      return undefined;
  }
}

/** The box of a path's points; what bulges between them is not looked at. */
function pathBox(d: string, dy: number): Box {
  const points = [...d.matchAll(/[MLQA]([^MLQAZ]+)/g)].map((match) => {
    const numbers = (match[1] ?? '').trim().split(/[ ,]+/).map(Number);
    return [numbers.at(-2) ?? NaN, (numbers.at(-1) ?? NaN) + dy] as const;
  });
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** True where two boxes share more than `slack` in both directions. */
export function overlap(one: Box, other: Box, slack: number = 0.5): boolean {
  return (
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > slack &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > slack
  );
}
