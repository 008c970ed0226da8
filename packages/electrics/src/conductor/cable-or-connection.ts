import { conductorResistance, type Conductor } from './conductor.ts';
import type { Interval } from '../quantity/interval.ts';
import { standardUncertainty } from '../quantity/meter.ts';
import { normalProbability } from '../conformance/normal-probability.ts';
import { convert, type Quantity } from '../quantity/quantity.ts';
import { requireAbove } from '../require-above.ts';
import { computed, type Source } from '../source.ts';
import type { UnitCode } from '../quantity/unit.ts';

/** A drop measured over a cable with both its ends, the current in A (above 0) and the conductor. */
export type MeasuredCable = {
  readonly measuredDrop: Quantity;
  readonly currentA: number;
  readonly conductor: Conductor;
};

/** One part of a measured drop: in mV, as a resistance in mOhm, and in % of the measured drop. */
export type DropPart = {
  readonly drop: Interval;
  readonly resistance: Interval;
  readonly share: Interval;
};

/** What explains a measured drop: the cable itself or a connection, or why that cannot be told. */
export type CableVerdict =
  | { readonly verdict: 'cable' | 'connection' }
  | {
      readonly verdict: 'cannot-tell';
      readonly reason: 'too-near' | 'less-than-the-cable';
    };

/** How a measured drop parts into cable and connection, and which of both explains it. */
export type CableOrConnection = {
  readonly cable: DropPart;
  readonly connection: DropPart;
  /** That a connection adds more than is worth a repair: a tenth of the cable, 0.1 mOhm at least. */
  readonly probability: number;
  readonly source: Source;
} & CableVerdict;

/** A figure with its standard uncertainty. */
type Estimate = { readonly value: number; readonly uncertainty: number };

const coverage = 2;
const sure = 0.95;
const soundEndsMOhm = 0.1;
const worthRepair = 0.1;
const unsaidTemperatures = { lowC: 0, highC: 40 };

function rectangle(low: number, high: number): number {
  return (high - low) / 2 / Math.sqrt(3);
}

/** Two standard uncertainties either way, within what is possible. */
function intervalOf(
  { value, uncertainty }: Estimate,
  unit: UnitCode,
  greatest = Infinity,
): Interval {
  const within = (figure: number): number => Math.min(Math.max(figure, 0), greatest);
  return {
    low: within(value - coverage * uncertainty),
    best: within(value),
    high: within(value + coverage * uncertainty),
    unit,
  };
}

/** The conductor's resistance in mOhm. A temperature that nobody said may be 0 to 40 Cel. */
function cableResistance(conductor: Conductor): Estimate {
  const { low, best, high } = conductorResistance(conductor);
  const { lowC, highC } = unsaidTemperatures;
  const byTemperature =
    conductor.temperatureC === undefined
      ? rectangle(
          conductorResistance({ ...conductor, temperatureC: lowC }).best,
          conductorResistance({ ...conductor, temperatureC: highC }).best,
        )
      : 0;
  return { value: best, uncertainty: Math.hypot(rectangle(low, high), byTemperature) };
}

/**
 * `worth` is what a connection must add to be worth a repair, mOhm. A drop that is as much too small
 * contradicts the cable; less than that may be its length or its metal.
 */
function judge(added: Estimate, worth: number, probability: number): CableVerdict {
  if (added.value + coverage * added.uncertainty < -worth) {
    return { verdict: 'cannot-tell', reason: 'less-than-the-cable' };
  }
  if (probability >= sure) {
    return { verdict: 'connection' };
  }
  return probability <= 1 - sure
    ? { verdict: 'cable' }
    : { verdict: 'cannot-tell', reason: 'too-near' };
}

/**
 * Tells how much of a measured drop the cable itself explains and how much a connection adds.
 *
 * The verdict is `connection` or `cable` where the probability is at least 0.95 or at most 0.05,
 * else `cannot-tell` with `too-near`. A drop that is clearly less than the cable alone must have, by
 * more than what would be worth a repair, gives `cannot-tell` with `less-than-the-cable`: less
 * current flowed, or the cable is not the one said.
 *
 * Every interval reaches two standard uncertainties to either side: those of the meters, of the
 * conductor (a rectangle between its ends) and of a temperature that was not given. The length is
 * taken as given.
 *
 * Sources: `conductorResistance`; JCGM 100:2008, 4.3.7 and 5.1.2; JCGM 106:2012, clause 7, for the
 * probability; what is worth a repair, and 0 to 40 Cel, are common practice, no source. Throws
 * `value-out-of-range`, `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * cableOrConnection({
 *   measuredDrop: { value: 0.83, unit: 'V', resolution: 0.01 },
 *   currentA: 200,
 *   conductor: { areaMm2: 25, lengthM: 1.5 },
 * }); // connection: 602 mV of it, 3.0 mOhm, 73 %
 */
export function cableOrConnection(measured: MeasuredCable): CableOrConnection {
  const { currentA, conductor } = measured;
  requireAbove('currentA', currentA, 0);
  const reading = convert(measured.measuredDrop, 'mV');
  const meter = standardUncertainty(reading);
  const clamp = standardUncertainty({ value: currentA, unit: 'A' }) / currentA;
  const resistance = cableResistance(conductor);

  const part = resistance.uncertainty / resistance.value;
  const cableDrop = resistance.value * currentA;
  const drop: Estimate = { value: cableDrop, uncertainty: cableDrop * Math.hypot(part, clamp) };
  const wholeMOhm = reading.value / currentA;
  const added: Estimate = {
    value: wholeMOhm - resistance.value,
    uncertainty: Math.hypot(meter / currentA, wholeMOhm * clamp, resistance.uncertainty),
  };
  const addedDrop: Estimate = {
    value: reading.value - drop.value,
    uncertainty: Math.hypot(meter, drop.uncertainty),
  };
  // No part can be told of a reading that the meter cannot tell from nothing.
  const cableShare: Estimate =
    reading.value > meter
      ? {
          value: (drop.value / reading.value) * 100,
          uncertainty:
            (drop.value / reading.value) * 100 * Math.hypot(part, clamp, meter / reading.value),
        }
      : { value: 100, uncertainty: 0 };

  const worth = Math.max(soundEndsMOhm, resistance.value * worthRepair);
  const probability = normalProbability((added.value - worth) / added.uncertainty);
  return {
    ...judge(added, worth, probability),
    probability,
    cable: {
      drop: intervalOf(drop, 'mV'),
      resistance: intervalOf(resistance, 'mOhm'),
      share: intervalOf(cableShare, '%', 100),
    },
    connection: {
      drop: intervalOf(addedDrop, 'mV'),
      resistance: intervalOf(added, 'mOhm'),
      share: intervalOf({ ...cableShare, value: 100 - cableShare.value }, '%', 100),
    },
    source: computed(
      "Ohm's law with the conductor's own resistance (IEC 60228 or the International Annealed Copper Standard) and JCGM 106:2012; what is worth a repair is common practice",
    ),
  };
}
