import { ElectricsError } from '../electrics-error.ts';
import { interpolate } from '../interpolate.ts';
import type { Interval, SourcedInterval } from '../quantity/interval.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { availablePower } from '../limits/battery-resistance.ts';
import { computed } from '../source.ts';
import { crankingPowerNeed } from '../tables/cranking-power-need.ts';
import { selfDischarge, selfDischargePart } from '../tables/self-discharge.ts';
import { armySpecificGravity } from '../tables/specific-gravity.ts';
import {
  startingLimitTemperature,
  type StartingLimitVehicle,
} from '../tables/starting-limit-temperature.ts';

/**
 * A battery that stands with a drain.
 *
 * `drainMa` 0 or above; `capacityAh` above 0, as it is now, which for a worn battery is less than
 * its label; `temperatureC` at the start attempt, -60 to 60; `standingC` the mean while it stands,
 * -60 to 38, from 10 to 27 where absent; `stateOfCharge` at the beginning in %, as `stateOfCharge`
 * gives it, full where absent; `vehicle` a car where absent; any technology where absent.
 */
export type DrainedBattery = {
  readonly drainMa: number;
  readonly capacityAh: number;
  readonly temperatureC: number;
  readonly standingC?: number | undefined;
  readonly stateOfCharge?: Interval | undefined;
  readonly technology?: BatteryTechnology | undefined;
  readonly vehicle?: StartingLimitVehicle | undefined;
};

type Span = { readonly low: number; readonly high: number };

// The trade reckons with 40 % of the capacity and not with more: common practice, no source.
const countedOn = 0.4;

// Beyond a year without a charge the age of the plates decides: common practice, no source.
const longestD = 365;

const hoursInDay = 24;

const source = computed(
  'trade chart of battery power (TM 5-1185 to -18 °C) against engine need; starting limit temperature by a university course; self-discharge by TM 9-6140-200-14, its slow end common practice; straight-line loss of power with charge, and 40 % to be counted on, are common practice',
);

function requireWithin(name: string, value: number, [low, high]: readonly [number, number]): void {
  if (!(value >= low && value <= high)) {
    throw new ElectricsError('value-out-of-range', { [name]: String(value), low, high });
  }
}

function requireDrainable(drainMa: number, capacityAh: number): void {
  requireWithin('drainMa', drainMa, [0, Number.MAX_VALUE]);
  requireWithin('capacityAh', capacityAh, [Number.MIN_VALUE, Number.MAX_VALUE]);
}

/** What the engine needs over what a full battery gives, 1 at 27 Cel and 14 at -29 Cel. */
function strain(temperatureC: number): number {
  return interpolate(crankingPowerNeed.rows, temperatureC) / availablePower(temperatureC);
}

/** The part of a full charge with which the engine is still cranked: above 1, with none. */
function chargeNeeded(temperatureC: number, vehicle: StartingLimitVehicle): Span {
  const { lowC, highC } = startingLimitTemperature.rows[vehicle];
  const now = strain(temperatureC);
  return { low: now / strain(lowC), high: Math.max(1 - countedOn, now / strain(highC)) };
}

/** The part of a full charge that a battery loses by itself in a day. */
function selfDischargeADay({ standingC, technology }: DrainedBattery): Span {
  const [[emptyGravity], ...others] = armySpecificGravity.rows;
  const fullGravity = others.at(-1)?.[0] ?? emptyGravity;
  const rate = (temperatureC: number): number =>
    interpolate(selfDischarge.rows, temperatureC) / (fullGravity - emptyGravity);
  const parts =
    technology === undefined
      ? Object.values(selfDischargePart.rows)
      : [selfDischargePart.rows[technology]];
  return {
    low: rate(standingC ?? 10) * Math.min(...parts.map(({ low }) => low)),
    high: rate(standingC ?? 27) * Math.max(...parts.map(({ high }) => high)),
  };
}

/**
 * The days in which a steady drain (mA, 0 or above) takes `lostPart` (0 to 1) of a capacity (Ah,
 * above 0), self-discharge left aside: Infinity without a drain.
 *
 * Source: charge is current times time. Throws `value-out-of-range`.
 *
 * @example
 * daysToLose({ drainMa: 50, capacityAh: 60, lostPart: 0.4 }); // 20
 */
export function daysToLose(loss: {
  readonly drainMa: number;
  readonly capacityAh: number;
  readonly lostPart: number;
}): number {
  const { drainMa, capacityAh, lostPart } = loss;
  requireDrainable(drainMa, capacityAh);
  requireWithin('lostPart', lostPart, [0, 1]);
  return lostPart === 0 ? 0 : (lostPart * capacityAh * 1000) / (drainMa * hoursInDay);
}

/**
 * How many days a battery stands with a drain until it no longer cranks the engine.
 *
 * The model: cranking power falls in proportion to charge, and a full battery just cranks the
 * engine at its starting limit temperature (cars -25 to -18 Cel). With q as the engine's need over
 * the power of a full battery at one temperature, cranking then takes the charge q(now) / q(limit):
 * a tenth to a fifth of a full one at 27 Cel, a quarter to a half at 0 Cel, all of it at the limit.
 * What may be lost is the charge less that. The short end reckons with at most 40 % of a full charge
 * as the trade does, with the warmer starting limit and with the published self-discharge, which is
 * that of an old wet battery; the long end with the colder limit and the slowest self-discharge; the
 * best figures lie halfway. No time is longer than a year, when age decides. Modules that wake up are
 * not in it.
 *
 * A colder start never makes it longer. A colder stand may, since self-discharge then slows, and is
 * therefore `standingC`, a fact of its own. Without a drain the self-discharge time remains; where
 * not even the first start succeeds it is 0. Sources: as `source` of the result says. Throws
 * `value-out-of-range`, and `unit-mismatch` for a state of charge that is not in %.
 *
 * @example
 * drainTime({ drainMa: 50, capacityAh: 60, temperatureC: 0 }); // 15 to 38 d
 */
export function drainTime(battery: DrainedBattery): SourcedInterval {
  const { drainMa, capacityAh, temperatureC, standingC, stateOfCharge, vehicle } = battery;
  requireDrainable(drainMa, capacityAh);
  requireWithin('temperatureC', temperatureC, [-60, 60]);
  if (standingC !== undefined) {
    requireWithin('standingC', standingC, [-60, 38]);
  }
  const charge = stateOfCharge ?? { low: 100, best: 100, high: 100, unit: '%' };
  if (charge.unit !== '%') {
    throw new ElectricsError('unit-mismatch', { from: charge.unit, to: '%' });
  }
  requireWithin('stateOfCharge', charge.low, [0, charge.best]);
  requireWithin('stateOfCharge', charge.high, [charge.best, 100]);

  const needed = chargeNeeded(temperatureC, vehicle ?? 'car');
  const own = selfDischargeADay(battery);
  const days = (chargePart: number, neededPart: number, ownPart: number): number =>
    Math.min(
      longestD,
      daysToLose({
        drainMa: drainMa + (ownPart * capacityAh * 1000) / hoursInDay,
        capacityAh,
        lostPart: Math.max(0, chargePart - neededPart),
      }),
    );
  return {
    low: days(charge.low / 100, needed.high, own.high),
    best: days(charge.best / 100, (needed.low + needed.high) / 2, (own.low + own.high) / 2),
    high: days(charge.high / 100, needed.low, own.low),
    unit: 'd',
    source,
  };
}
