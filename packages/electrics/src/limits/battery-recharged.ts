import { sharpBound, type Bound } from '../conformance/bound.ts';
import type { LimitContext } from './limit-context.ts';
import { commonPractice, published } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { limitByKind } from './battery-rest.ts';

/**
 * Below it, two hours after a full charge, a cell is down: 11.0 V.
 *
 * Of a 24 V pair with one dead cell in one battery the whole reads 12.6 V more than that battery,
 * so the limit there is the zone from both (22.0 V) to one (23.6 V) with a cell down.
 */
export function rechargedCellDown(context: LimitContext): LimitResult {
  const source = commonPractice(
    "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell",
  );
  const bound: Bound =
    context.nominal === 24
      ? { low: 22, high: 23.6, unit: 'V', source }
      : sharpBound(11, 'V', source);
  return knownLimit(bound);
}

/** From it on, two hours after a full charge, the battery took it: 12.5 V; agm and gel 12.7 V. */
export function rechargedFull(context: LimitContext): LimitResult {
  const source = published(
    "flooded: a vehicle maker's service manual, above 12.5 V 2 h after charging; agm, gel: 0.2 V more, common practice",
  );
  return knownLimit(limitByKind({ wet: 12.5, sealed: 12.7, source }, context));
}

/** Up to it the two 12 V batteries of a pair are equal: 0.3 V of difference, not doubled. */
export function halvesEqual(): LimitResult {
  return knownLimit(sharpBound(0.3, 'V', commonPractice('two batteries of one age and charge')));
}
