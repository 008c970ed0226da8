import { sharpBound } from '../conformance/bound.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { commonPractice, published } from '../source.ts';
import { knownLimit, unknownLimit, type LimitResult } from './limit-result.ts';
import { regulatedVoltageWindow } from '../charging/regulated-voltage.ts';
import { regulatedVoltageByAmbient } from '../tables/regulated-voltage.ts';

/** A vehicle that steers its charging gives what it is told to: 12.2 to 15.0 V may all be right. */
const steered = unknownLimit('the charging voltage that the vehicle asks for');

const nothingCharges = commonPractice('no more than a full battery with its surface charge');

/** Below it nothing charges: 13.0 V. Just after a boost 13.0 to 13.5 V is no failure. */
export function chargingNone(context: LimitContext): LimitResult {
  if (context.smartCharging === true) return steered;
  return knownLimit(sharpBound(13 * batteriesInSeries(context), 'V', nothingCharges));
}

/** Below it charging is low: 13.5 V, with a conventional regulator. */
export function chargingLow(context: LimitContext): LimitResult {
  if (context.smartCharging === true) return steered;
  const source = published("a vehicle maker's service manual: 13.5 to 14.5 V");
  return knownLimit(sharpBound(13.5 * batteriesInSeries(context), 'V', source));
}

/**
 * Up to it charging is right: 14.8 V. In frost regulators rightly give more, up to 15.06 V at -18
 * Cel, and the limit is the zone up to that.
 */
export function chargingRight(context: LimitContext): LimitResult {
  if (context.smartCharging === true) return steered;
  const series = batteriesInSeries(context);
  const { temperature } = context;
  const regulated = temperature === undefined ? 0 : regulatedVoltageWindow(temperature).high;
  return knownLimit({
    low: 14.8 * series,
    high: Math.max(14.8, regulated) * series,
    unit: 'V',
    source: commonPractice(`14.8 V; in frost ${regulatedVoltageByAmbient.source.text}`),
  });
}
