import { scaleBound, sharpBound, type Bound } from '../conformance/bound.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { commonPractice, published, type Source } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';

/** The figures of one limit: for wet batteries (flooded, efb) and for sealed ones (agm, gel). */
type ByKind = { readonly wet: number; readonly sealed: number; readonly source: Source };

/**
 * A limit that differs by kind of battery, in V of the whole battery: a figure where the kind is
 * known, the zone between both where it is not.
 */
export function limitByKind(figures: ByKind, context: LimitContext): Bound {
  const { wet, sealed, source } = figures;
  const bound: Bound =
    context.technology === undefined
      ? { low: wet, high: sealed, unit: 'V', source }
      : sharpBound(
          context.technology === 'agm' || context.technology === 'gel' ? sealed : wet,
          'V',
          source,
        );
  return scaleBound(bound, batteriesInSeries(context));
}

/**
 * A rested battery reads about 1.3 mV/K less in the cold (electrochemistry of the lead-acid cell,
 * from memory): some 0.05 V below 0 Cel, never the 0.19 V of a table that copies the hydrometer's
 * correction onto volts. So frost opens the limit downward by 0.05 V and no more.
 */
function widenedByFrost(bound: Bound, context: LimitContext): LimitResult {
  const frost = context.temperature !== undefined && context.temperature < 0;
  const widening = frost ? 0.05 * batteriesInSeries(context) : 0;
  return knownLimit({ ...bound, low: bound.low - widening });
}

/** Below it the rested battery is flat: 12.0 V, about a quarter of its charge. */
export function restFlat(context: LimitContext): LimitResult {
  const source = published('TM 5-3805-262-20 para 5-9: 12.0 V is 25 % of charge');
  return widenedByFrost(limitByKind({ wet: 12, sealed: 12, source }, context), context);
}

/** From it on the rested battery is ready: 12.4 V flooded and efb, 12.6 V agm and gel. */
export function restFull(context: LimitContext): LimitResult {
  const source = published(
    'flooded: TM 5-3805-262-20 para 5-9, 12.4 V is 75 % of charge; agm, gel: 75 % between 12.55 V and 12.80 V of a workshop trade table',
  );
  return widenedByFrost(limitByKind({ wet: 12.4, sealed: 12.6, source }, context), context);
}

/**
 * Above it a surface charge is left from recent charging. A full flooded battery rests at 12.6 to
 * 12.7 V, a full sealed one at 12.8 to 13.0 V; a little is allowed for the meter.
 */
export function restSurface(context: LimitContext): LimitResult {
  const source = commonPractice(
    '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)',
  );
  return widenedByFrost(limitByKind({ wet: 12.9, sealed: 13.1, source }, context), context);
}

/**
 * Above it the battery is not at rest: a charger or the engine runs, or the system is not the one
 * thought. A surface charge sinks below 13.4 V soon after charging stops; chargers and engines hold
 * 13.5 V and more, and only a charging battery keeps above 13.8 V.
 */
export function restCharging(context: LimitContext): LimitResult {
  const source = commonPractice('only what charges keeps a battery above 13.4 to 13.8 V');
  const bound: Bound = { low: 13.4, high: 13.8, unit: 'V', source };
  return knownLimit(scaleBound(bound, batteriesInSeries(context)));
}

/**
 * Below it, after frost, the battery counts as frozen until it was looked at: sharp, because this
 * limit is a hard stop and the cold must not lower it.
 */
export function restFrozen(context: LimitContext): LimitResult {
  const source = commonPractice(
    'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C',
  );
  return knownLimit(sharpBound(11.8 * batteriesInSeries(context), 'V', source));
}

/**
 * At it and below a discharged battery may have frozen, and is looked at before it is charged,
 * boosted or loaded: -5 Cel, above the -7 Cel at which a nearly empty one freezes.
 */
export function batteryFrost(): LimitResult {
  const source = commonPractice(
    'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)',
  );
  return knownLimit(sharpBound(-5, 'Cel', source));
}
