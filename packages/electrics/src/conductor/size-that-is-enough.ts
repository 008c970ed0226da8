import { cableDrop, type LoadedCable } from './cable.ts';
import type { ConductorMaterial, ConductorSize } from './conductor.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { requireAbove } from '../require-above.ts';
import { class5Resistance } from '../tables/class-5-resistance.ts';

/**
 * What a cable has to do: carry `currentA` over `lengthM` and drop at most `dropV`, all above 0,
 * at `temperatureC` (20 where absent), made of `material` (copper where absent).
 */
export type CableTask = {
  readonly lengthM: number;
  readonly currentA: number;
  readonly dropV: number;
  readonly temperatureC?: number | undefined;
  readonly material?: ConductorMaterial | undefined;
};

/**
 * The smallest sizes that are enough, or why there is none. One of both sizes is absent where only
 * the other goes that far: 4/0 is thicker than 95 mm2.
 */
export type EnoughSize =
  | {
      readonly type: 'size';
      readonly areaMm2?: number | undefined;
      readonly awg?: number | undefined;
    }
  | {
      readonly type: 'none';
      readonly reason: 'beyond-the-thickest';
      /** What the thickest of the sizes still drops, in V. */
      readonly leastDrop: Quantity;
    };

const areasMm2 = class5Resistance.rows.map(([area]) => area);
// The numbers in which battery cable is usual (common practice, no source).
const thickestAwg = -3;
const awgs = [8, 6, 4, 2, 1, 0, -1, -2, thickestAwg];

function loaded(task: CableTask, size: ConductorSize): LoadedCable {
  const { material, lengthM, currentA, temperatureC } = task;
  return { ...size, material, lengthM, currentA, temperatureC };
}

/**
 * The smallest battery cable, of 10 to 95 mm2 (IEC 60228) and of AWG 8 to 4/0, that drops no more
 * than is allowed even with the greatest resistance that a sound one may have.
 *
 * `lengthM` is the conductor's own: where the return is a cable too, it counts as well. It goes by
 * the drop alone: how warm a cable gets, and what fuse protects it, is another matter. Source:
 * `cableDrop`. Throws `value-out-of-range`.
 *
 * @example
 * sizeThatIsEnough({ lengthM: 2, currentA: 200, dropV: 0.25 }); // 35 mm2, AWG 2
 */
export function sizeThatIsEnough(task: CableTask): EnoughSize {
  requireAbove('dropV', task.dropV, 0);
  const isEnough = (size: ConductorSize): boolean =>
    cableDrop(loaded(task, size)).value <= task.dropV;
  const areaMm2 = areasMm2.find((area) => isEnough({ areaMm2: area }));
  const awg = awgs.find((number) => isEnough({ awg: number }));
  return areaMm2 === undefined && awg === undefined
    ? {
        type: 'none',
        reason: 'beyond-the-thickest',
        leastDrop: cableDrop(loaded(task, { awg: thickestAwg })),
      }
    : { type: 'size', areaMm2, awg };
}
