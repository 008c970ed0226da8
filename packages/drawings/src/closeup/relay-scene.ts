import type { Pen } from '../svg/pen.ts';
import type { Scene } from './scene.ts';

/** A slot of the socket with the number that it often bears. */
function slot([x, y]: readonly [number, number], lying: boolean, pen: Pen): string {
  const [width, height] = lying ? [34, 11] : [11, 34];
  return pen.shape('rect', {
    x: x - width / 2,
    y: y - height / 2,
    width,
    height,
    rx: 2,
    fill: pen.palette.paper,
    stroke: pen.palette.ink,
    'stroke-width': 2,
  });
}

/**
 * The socket of a relay seen from above with the relay pulled out, in the arrangement that is met
 * most often (ISO 7588-1, from memory). The numbers are those of DIN 72552, from memory.
 */
export const relayScene: Scene = {
  height: 178,
  draw: (pen, speaker) => [
    pen.shape('rect', {
      x: 125,
      y: 10,
      width: 140,
      height: 140,
      rx: 8,
      fill: pen.palette.tint,
      stroke: pen.palette.line,
      'stroke-width': 1.5,
    }),
    slot([195, 34], true, pen),
    slot([195, 126], true, pen),
    slot([152, 80], false, pen),
    slot([238, 80], false, pen),
    pen.text('87', { x: 195, y: 58, anchor: 'middle' }),
    pen.text('30', { x: 195, y: 112, anchor: 'middle' }),
    pen.text('86', { x: 174, y: 85, anchor: 'middle' }),
    pen.text('85', { x: 216, y: 85, anchor: 'middle' }),
    pen.text(speaker.drawing('relay').replaceAll('\u00ad', ''), {
      x: 195,
      y: 168,
      anchor: 'middle',
    }),
  ],
  places: {
    'relay-socket-supply': { at: [195, 126], tag: [290, 138] },
    'relay-socket-coil': { at: [152, 80], tag: [80, 50] },
    'relay-socket-ground': { at: [238, 80], tag: [310, 50] },
  },
};
