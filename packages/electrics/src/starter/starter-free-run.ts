import type { Source } from '../source.ts';
import {
  freeRunVerdicts,
  type FreeRunBand,
  type FreeRunVerdict,
} from '../tables/starter-free-run.ts';

/** What a free run says: a verdict, or that no text has such a pair of current and speed. */
export type FreeRunResult =
  | {
      readonly type: 'verdict';
      readonly verdict: FreeRunVerdict;
      readonly meaning: string;
      readonly source: Source;
    }
  | { readonly type: 'not-in-table' };

/**
 * What the current and the speed of a starter that runs free on the bench, both against what is
 * specified for it, say of it.
 *
 * Source: TM 10-3930-671-24 pp. F-299 to F-309 and TM 5-3810-303-24, Table 10D-1.
 *
 * @example
 * freeRunVerdict('high', 'low'); // friction, or a short in armature or field
 */
export function freeRunVerdict(current: FreeRunBand, speed: FreeRunBand): FreeRunResult {
  const row = freeRunVerdicts.rows.find((each) => each.current === current && each.speed === speed);
  return row === undefined
    ? { type: 'not-in-table' }
    : {
        type: 'verdict',
        verdict: row.verdict,
        meaning: row.meaning,
        source: freeRunVerdicts.source,
      };
}
