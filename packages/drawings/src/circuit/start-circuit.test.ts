import { describe, expect, test } from 'vitest';
import type { Point } from '../svg/pen.ts';
import { startCircuit } from './start-circuit.ts';

const { parts, wires, joints, places, suspects, spots } = startCircuit;

/** True where a point lies in a part, or within half a unit of it. */
function touches([x, y]: Point, { at, size }: (typeof parts)[number]): boolean {
  return Math.abs(x - at[0]) <= size[0] / 2 + 0.5 && Math.abs(y - at[1]) <= size[1] / 2 + 0.5;
}

function liesOn([x, y]: Point, through: readonly Point[]): boolean {
  return through.slice(1).some(([x1, y1], index) => {
    const [x0 = 0, y0 = 0] = through[index] ?? [];
    return x === x0 && x === x1
      ? (y - y0) * (y - y1) <= 0
      : y === y0 && y === y1 && (x - x0) * (x - x1) <= 0;
  });
}

describe('the start circuit', () => {
  test('has every id once', () => {
    const ids = [...parts, ...wires].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(wires.map((wire) => [wire.id, wire] as const))(
    '%s runs square, from something to something',
    (_, { id, through }) => {
      for (const [index, [x, y]] of through.slice(1).entries()) {
        const [x0, y0] = through[index] ?? [NaN, NaN];
        expect(x === x0 || y === y0).toBe(true);
      }
      const chassis: Point = [37, 7];
      for (const end of [through[0], through.at(-1)]) {
        if (end === undefined) throw new Error('no end');
        const meets =
          parts.some((part) => touches(end, part)) ||
          joints.some((joint) => joint[0] === end[0] && joint[1] === end[1]) ||
          wires.some((wire) => wire.id !== id && liesOn(end, wire.through)) ||
          (end[0] === chassis[0] && end[1] === chassis[1]);
        expect(meets).toBe(true);
      }
    },
  );

  test('suspects only what it has', () => {
    const ids = new Set([...parts, ...wires].map(({ id }) => id));
    for (const id of Object.values(suspects).flatMap(({ of }) => of)) expect(ids).toContain(id);
  });

  test('has each place of a spot, and each place at a part', () => {
    for (const { between } of spots) {
      if (between === 'clamp') continue;
      for (const place of between) expect(places).toHaveProperty([place]);
    }
    for (const { at } of Object.values(places)) {
      expect(
        parts.some((part) => touches(at, { ...part, size: [part.size[0] + 1, part.size[1] + 3] })),
      ).toBe(true);
    }
  });
});
