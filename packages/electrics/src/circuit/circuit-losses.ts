import { ElectricsError } from '../electrics-error.ts';
import type { Interval } from '../quantity/interval.ts';
import { standardUncertainty } from '../quantity/meter.ts';
import { convert, intervalFactor, type Quantity } from '../quantity/quantity.ts';

const coverage = 2;

/** What was measured at a starting circuit while start was held; `rest` before it. */
export type MeasuredCircuit = {
  readonly rest?: Quantity | undefined;
  readonly crank?: Quantity | undefined;
  /** Post to the starter's main stud. */
  readonly positive?: Quantity | undefined;
  /** The starter's body to the other post. */
  readonly ground?: Quantity | undefined;
  /** Across the two large studs of the solenoid. */
  readonly contacts?: Quantity | undefined;
  /** Of the battery. */
  readonly current?: Quantity | undefined;
};

/** Where a starting circuit can lose voltage. */
export type LossyPart = 'battery' | 'positive' | 'ground' | 'contacts';

/**
 * What one part takes of the battery's rest voltage: `loss` in mV, its `resistance` in mOhm where
 * the current was measured, and its `share`, 0 to 1, of all that was found lost.
 */
export type CircuitLoss = {
  readonly part: LossyPart;
  readonly loss: Interval;
  readonly resistance?: Interval;
  readonly share: number;
};

/**
 * Where the missing volts are: the losses found, and what reaches the motor, in V, where the
 * battery and all three drops were measured.
 */
export type CircuitLosses = {
  readonly losses: readonly CircuitLoss[];
  readonly atMotor?: Interval;
};

/** A voltage with its standard uncertainty, both in V. */
type Volts = { readonly value: number; readonly uncertainty: number };

function inVolts(quantity: Quantity): Volts {
  return {
    value: convert(quantity, 'V').value,
    uncertainty: standardUncertainty(quantity) * intervalFactor(quantity.unit, 'V'),
  };
}

/** What a drop takes; below 0 it is none, and the leads were swapped or the meter has an offset. */
function taken({ value, uncertainty }: Volts): Volts {
  return { value: Math.max(0, value), uncertainty };
}

function minus(one: Volts, other: Volts): Volts {
  return {
    value: one.value - other.value,
    uncertainty: Math.hypot(one.uncertainty, other.uncertainty),
  };
}

function intervalOf({ value, uncertainty }: Volts, unit: 'V' | 'mV'): Interval {
  const scale = unit === 'mV' ? 1000 : 1;
  return {
    low: (value - coverage * uncertainty) * scale,
    best: value * scale,
    high: (value + coverage * uncertainty) * scale,
    unit,
  };
}

function resistanceOf({ value, uncertainty }: Volts, current: Quantity): Interval {
  const currentA = convert(current, 'A').value;
  const best = (1000 * value) / currentA;
  const relative = standardUncertainty(current) / current.value;
  const spread = coverage * Math.hypot((1000 * uncertainty) / currentA, best * relative);
  return { low: Math.max(0, best - spread), best, high: best + spread, unit: 'mOhm' };
}

function lossesFound({
  rest,
  crank,
  positive,
  ground,
  contacts,
}: MeasuredCircuit): readonly (readonly [LossyPart, Volts])[] {
  const found: [LossyPart, Volts][] = [];
  if (rest !== undefined && crank !== undefined) {
    found.push(['battery', taken(minus(inVolts(rest), inVolts(crank)))]);
  }
  if (positive !== undefined) found.push(['positive', taken(inVolts(positive))]);
  if (ground !== undefined) found.push(['ground', taken(inVolts(ground))]);
  if (contacts !== undefined) found.push(['contacts', taken(inVolts(contacts))]);
  return found;
}

/**
 * Where in a starting circuit the missing volts are lost, as far as it was measured, the greatest
 * loss first. Ends are two standard uncertainties away (JCGM 100:2008, 5.1.2); a reading below 0
 * counts as no loss.
 *
 * Source: Ohm's and Kirchhoff's laws. Throws `value-out-of-range` for a current that is not above 0.
 */
export function circuitLosses(measured: MeasuredCircuit): CircuitLosses {
  const { current, crank } = measured;
  if (current !== undefined && !(current.value > 0)) {
    throw new ElectricsError('value-out-of-range', { current: String(current.value), low: 0 });
  }
  const found = lossesFound(measured);
  const total = found.reduce((sum, [, { value }]) => sum + value, 0);
  const losses = found
    .map(([part, volts]): CircuitLoss => ({
      part,
      loss: intervalOf(volts, 'mV'),
      ...(current === undefined ? {} : { resistance: resistanceOf(volts, current) }),
      share: total > 0 ? volts.value / total : 0,
    }))
    .sort((one, other) => other.share - one.share);
  const drops = found.filter(([part]) => part !== 'battery');
  if (crank === undefined || drops.length < 3) return { losses };
  const atMotor = drops.reduce((left, [, drop]) => minus(left, drop), inVolts(crank));
  return { losses, atMotor: intervalOf(atMotor, 'V') };
}
