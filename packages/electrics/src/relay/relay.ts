import type { Bound } from '../conformance/bound.ts';
import { ElectricsError } from '../electrics-error.ts';
import { interpolate } from '../interpolate.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import { computed } from '../source.ts';
import { copperTemperatureCoefficient } from '../tables/copper.ts';
import { relayCoils, type RelayKind } from '../tables/relay-coil.ts';
import { relayContactDrop, relayContinuousCurrent } from '../tables/relay-contact.ts';

/**
 * What a coil's resistance says, with the bounds it went by: below `shorted` turns are shorted,
 * within `sound` it is sound, above `open` it is open, and between them nobody can tell.
 */
export type CoilCheck = {
  readonly verdict: 'sound' | 'open' | 'shorted' | 'cannot-tell';
  readonly shorted: Bound;
  readonly sound: Bound;
  readonly open: Bound;
};

// Coils are wound to ±10 % and may be measured from frost to a hot engine bay. Half of the least is
// no tolerance any more, and ten times the most is no wire. Common practice, no source.
const coilTolerance = 0.1;
const coldestCoilC = -20;
const hottestCoilC = 60;
const shortedPart = 0.5;
const openFactor = 10;

function coilOhms(ohms: number, temperatureC: number): number {
  return ohms * (1 + copperTemperatureCoefficient.rows * (temperatureC - 20));
}

/**
 * Tells whether the coil of a 12 V relay, out of its socket, is sound by its resistance, or by the
 * meter's showing `overload`.
 *
 * Sound is the data sheet's figure ±10 % from -20 to 60 Cel; less than half of that is shorted,
 * ten times as much open; a figure between may belong to a relay of another kind, to a resistor
 * beside the coil or to a corroded pin. A sound coil says nothing of the contacts. Sources: relay
 * data sheets; the spreads are common practice, no source. Throws `value-out-of-range` below 0,
 * `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * coilCheck({ value: 82, unit: 'Ohm', resolution: 1 }, 'mini').verdict; // 'sound'
 */
export function coilCheck(resistance: Quantity | 'overload', kind: RelayKind): CoilCheck {
  const { ohms, source: dataSheet } = relayCoils.rows[kind];
  const source = computed(`${dataSheet.text}; its spread is common practice`);
  const least = coilOhms(ohms * (1 - coilTolerance), coldestCoilC);
  const most = coilOhms(ohms * (1 + coilTolerance), hottestCoilC);
  const bounds = {
    shorted: { low: least * shortedPart, high: least * shortedPart, unit: 'Ohm', source },
    sound: { low: least, high: most, unit: 'Ohm', source },
    open: { low: most * openFactor, high: most * openFactor, unit: 'Ohm', source },
  } as const;
  if (resistance === 'overload') {
    return { verdict: 'open', ...bounds };
  }
  const { low, best, high } = readingInterval({ quantity: resistance }, 'Ohm');
  if (best < 0) {
    throw new ElectricsError('value-out-of-range', { resistance: best, low: 0 });
  }
  if (low > bounds.open.high) {
    return { verdict: 'open', ...bounds };
  }
  if (high < bounds.shorted.low) {
    return { verdict: 'shorted', ...bounds };
  }
  const sound = low >= least && high <= most;
  return { verdict: sound ? 'sound' : 'cannot-tell', ...bounds };
}

/** The drop across closed contacts and the current through them, measured together. */
export type MeasuredContacts = { readonly drop: Quantity; readonly current: Quantity };

/**
 * What the drop across contacts says, with the bound it went by: up to `limit.low` they are sound,
 * above `limit.high` they are high in resistance, and between nobody can tell.
 */
export type ContactCheck = {
  readonly verdict: 'sound' | 'high-resistance' | 'open' | 'cannot-tell';
  readonly limit: Bound;
};

// Without a current nearly the whole battery stands across open contacts; half of 12 V is taken.
// Below 1 A the films on contacts decide, and no data sheet holds. Common practice, no source.
const openContactsV = 6;
const leastCurrentA = 1;

/**
 * Tells whether the contacts of a 12 V relay that is pulled in are sound, by the drop across them
 * and the current through them (which way round does not matter).
 *
 * New contacts drop at most 0.2 to 0.3 V at 10 A, here in proportion to the current; typical are 15
 * to 20 mV. Below 1 A nothing is told, except that contacts with half of 12 V across them are open.
 * Source: relay data sheets; 6 V and 1 A are common practice, no source. Throws `unit-mismatch`,
 * `value-not-finite`.
 *
 * @example
 * contactCheck({
 *   drop: { value: 0.05, unit: 'V', resolution: 0.01 },
 *   current: { value: 10, unit: 'A', resolution: 0.1 },
 * }).verdict; // 'sound'
 */
export function contactCheck({ drop, current }: MeasuredContacts): ContactCheck {
  const dropped = readingInterval({ quantity: { ...drop, value: Math.abs(drop.value) } }, 'V');
  const flowing = readingInterval(
    { quantity: { ...current, value: Math.abs(current.value) } },
    'A',
  );
  const { currentA, mostLowMv, mostHighMv } = relayContactDrop.rows;
  const limitAt = (mostMv: number, amps: number): number => (mostMv / 1000) * (amps / currentA);
  const limit: Bound = {
    low: limitAt(mostLowMv, flowing.best),
    high: limitAt(mostHighMv, flowing.best),
    unit: 'V',
    source: computed(`${relayContactDrop.source.text}, in proportion to the current`),
  };
  if (flowing.high < leastCurrentA) {
    return { verdict: dropped.low > openContactsV ? 'open' : 'cannot-tell', limit };
  }
  if (flowing.best < leastCurrentA) {
    return { verdict: 'cannot-tell', limit };
  }
  if (dropped.high <= limitAt(mostLowMv, flowing.low)) {
    return { verdict: 'sound', limit };
  }
  const high = dropped.low > limitAt(mostHighMv, flowing.high);
  return { verdict: high ? 'high-resistance' : 'cannot-tell', limit };
}

/**
 * The current in A that a mini relay carries all the time at an ambient temperature in Cel (-60 to
 * 125): 50 A up to 23 Cel, 35 A at 85 Cel, 15 A at 125 Cel, straight lines between.
 *
 * Source: data sheet of a 12 V mini relay. Throws `value-out-of-range`.
 */
export function relayContinuousLimit(ambientC: number): Bound {
  if (!(ambientC >= -60 && ambientC <= 125)) {
    throw new ElectricsError('value-out-of-range', {
      ambientC: String(ambientC),
      low: -60,
      high: 125,
    });
  }
  const value = interpolate(relayContinuousCurrent.rows, ambientC);
  return { low: value, high: value, unit: 'A', source: relayContinuousCurrent.source };
}
