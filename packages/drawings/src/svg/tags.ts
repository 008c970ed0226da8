/**
 * The small signs that stand in several pictures: tags of the two leads, figures, and the sign of
 * what is under suspicion. None of them says by colour alone what it is.
 */
import type { Teller } from '@keyturn/language';
import { textWidth, type Pen, type Point } from './pen.ts';

/** One of a meter's two leads. */
export type Lead = 'red' | 'black';

const tagText = { size: 12, weight: 'bold' } as const;
const tagHeight = 18;

/** How wide the tag of a lead is. */
export function leadTagWidth(lead: Lead, speaker: Teller): number {
  return textWidth(speaker.drawing(lead), tagText) + 14;
}

/** A lead's tag around a point: its colour in words, dark letters in a rim or light on black. */
export function leadTag(lead: Lead, [x, y]: Point, { pen, speaker }: Drawn): string[] {
  const { palette } = pen;
  const width = leadTagWidth(lead, speaker);
  const isRed = lead === 'red';
  return [
    pen.shape('rect', {
      x: x - width / 2,
      y: y - tagHeight / 2,
      width,
      height: tagHeight,
      rx: 4,
      fill: isRed ? palette.paper : palette.black,
      stroke: isRed ? palette.red : palette.blackRim,
      'stroke-width': isRed ? 2.5 : 1.5,
    }),
    pen.text(speaker.drawing(lead), {
      ...tagText,
      x,
      y: y + 4.3,
      anchor: 'middle',
      colour: isRed ? 'ink' : 'onBlack',
    }),
  ];
}

/** How wide the tag of the first or second of two places is. */
export function ordinalTagWidth(which: 'first' | 'second', speaker: Teller): number {
  return textWidth(speaker.drawing(which), tagText) + 12;
}

/** The tag of the first or second of two places that are measured one after the other. */
export function ordinalTag(
  which: 'first' | 'second',
  [x, y]: Point,
  { pen, speaker }: Drawn,
): string[] {
  const width = ordinalTagWidth(which, speaker);
  return [
    pen.shape('rect', {
      x: x - width / 2,
      y: y - tagHeight / 2,
      width,
      height: tagHeight,
      rx: 9,
      fill: pen.palette.here,
      stroke: pen.palette.ink,
      'stroke-width': 1.5,
    }),
    pen.text(speaker.drawing(which), { ...tagText, x, y: y + 4.3, anchor: 'middle' }),
  ];
}

/** What a sign is drawn with. */
export interface Drawn {
  readonly pen: Pen;
  readonly speaker: Teller;
}

/** A lead held to a place: its tip there, its tag where there is room. */
export function heldLead(
  lead: Lead,
  { at, tag }: { readonly at: Point; readonly tag: Point },
  drawn: Drawn,
): string[] {
  const { pen } = drawn;
  const { palette } = pen;
  const colour = lead === 'red' ? palette.red : palette.blackRim;
  return [
    pen.line([tag, at], { stroke: palette.paper, 'stroke-width': 6 }),
    pen.line([tag, at], { stroke: colour, 'stroke-width': 3 }),
    pen.shape('circle', {
      cx: at[0],
      cy: at[1],
      r: 4,
      fill: lead === 'red' ? palette.paper : palette.black,
      stroke: colour,
      'stroke-width': 2.5,
    }),
    ...leadTag(lead, tag, drawn),
  ];
}

/** The sign of what is under suspicion: a question mark in a ring. */
export function suspectSign([cx, cy]: Point, pen: Pen): string[] {
  const { palette } = pen;
  return [
    pen.shape('circle', {
      cx,
      cy,
      r: 9,
      fill: palette.paper,
      stroke: palette.suspect,
      'stroke-width': 2.5,
    }),
    pen.text('?', { x: cx, y: cy + 5, anchor: 'middle', size: 14, weight: 'bold' }),
  ];
}

/** The height of a figure's tag. */
export const figureHeight = 18;

/** A figure written into a picture. */
export function figureTag(figure: string, [x, y]: Point, pen: Pen): string[] {
  const setting = { size: 12, weight: 'bold' } as const;
  const width = textWidth(figure, setting) + 8;
  return [
    pen.shape('rect', {
      x: x - width / 2,
      y: y - figureHeight / 2,
      width,
      height: figureHeight,
      fill: pen.palette.paper,
      stroke: pen.palette.ink,
      'stroke-width': 1,
    }),
    pen.text(figure, { ...setting, x, y: y + 4.3, anchor: 'middle' }),
  ];
}
