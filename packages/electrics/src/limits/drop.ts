import { scaleBound, sharpBound, type Bound } from '../conformance/bound.ts';
import type { Interval } from '../quantity/interval.ts';
import { batteriesInSeries, type BatteryLocation, type LimitContext } from './limit-context.ts';
import { commonPractice, published } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { expectedCrankingCurrent, expectedStallCurrent } from './cranking-current-range.ts';

const sideMilliohms = 2;

/** The positive side is longer where the battery is not beside the engine. */
const positiveMilliohms: Readonly<Record<BatteryLocation, number>> = {
  'engine-bay': sideMilliohms,
  boot: 3,
  seat: 2.5,
};

const practiceSpread = 0.175;

// One joint may have this much; below some 50 A the rule would ask more of the cable than that.
const leastLimit = 0.1;

const source = published(
  'TM 10-3930-671-24 pp. F-299 to F-309: 0.20 V for 100 A, here per side; its spread, and 3 mΩ with the battery in the boot, are common practice',
);

/** Above it the joint of post and clamp is bad: 0.1 V (24 V: 0.2). */
export function dropClamp(context: LimitContext): LimitResult {
  const joint = commonPractice('one joint; TM 10-3930-671-24: any reading above 0 is poor');
  return knownLimit(sharpBound(0.1 * batteriesInSeries(context), 'V', joint));
}

/** The current that the drop belongs to: as measured, else as expected. */
function dropCurrent(context: LimitContext): Pick<Interval, 'low' | 'high'> {
  const { crankCurrent } = context;
  if (crankCurrent !== undefined) {
    return { low: crankCurrent, high: crankCurrent };
  }
  return context.turning === false
    ? expectedStallCurrent(context)
    : expectedCrankingCurrent(context);
}

/**
 * The limit of one side: a resistance times the current, so a 24 V vehicle needs no factor. It has
 * half the current and so half the drop; doubling its limit would let 8 mOhm pass.
 */
function dropLimit(milliohms: number, context: LimitContext): LimitResult {
  const current = dropCurrent(context);
  const volts = milliohms / 1000;
  return knownLimit({
    low: Math.max(leastLimit, volts * (1 - practiceSpread) * current.low),
    high: Math.max(leastLimit, volts * (1 + practiceSpread) * current.high),
    unit: 'V',
    source,
  });
}

/**
 * Above it the positive side, from the battery's post to the starter's main stud, is bad: 2 mOhm
 * times the measured cranking current, else times the expected one (the stall current where the
 * engine does not turn); 3 mOhm with the battery in the boot, 2.5 under a seat.
 */
export function dropPositive(context: LimitContext): LimitResult {
  return dropLimit(positiveMilliohms[context.batteryLocation ?? 'engine-bay'], context);
}

/** Above it the ground side, from the battery's post to the starter's body, is bad: 2 mOhm. */
export function dropGround(context: LimitContext): LimitResult {
  return dropLimit(sideMilliohms, context);
}

/** Above it the solenoid's contacts are bad: 0.3 V (24 V: 0.6). */
export function contactsHigh(context: LimitContext): LimitResult {
  const contacts = commonPractice('0.2 to 0.3 V in the handbooks');
  return knownLimit(sharpBound(0.3 * batteriesInSeries(context), 'V', contacts));
}

/**
 * Above it the contacts are open: nearly the whole battery stands across them. The zone is 0.5 to
 * 0.8 of the battery's voltage while start is held, else of its rest voltage, else of a 12 V
 * battery between collapsed (8 V) and full (12.6 V).
 */
export function contactsOpen(context: LimitContext): LimitResult {
  const known = context.crankVoltage ?? context.restVoltage;
  const zone: Bound = {
    low: 0.5 * (known ?? 8),
    high: 0.8 * (known ?? 12.6),
    unit: 'V',
    source: commonPractice('0.5 to 0.8 of the battery voltage'),
  };
  return knownLimit(known === undefined ? scaleBound(zone, batteriesInSeries(context)) : zone);
}
