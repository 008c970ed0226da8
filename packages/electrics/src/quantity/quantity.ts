import { ElectricsError } from '../electrics-error.ts';
import type { MeterAccuracy } from './meter-accuracy.ts';
import { unitDefinition, type UnitCode } from './unit.ts';

/**
 * A number with its unit.
 *
 * `resolution` is the step in which the value was typed or shown, in the same unit: 0.1 for
 * "12.4", 0.01 for "12.40". It is absent where nobody knows it. `meter` is the accuracy of the meter
 * that it was read with, where the user said it.
 */
export type Quantity = {
  readonly value: number;
  readonly unit: UnitCode;
  readonly resolution?: number;
  readonly meter?: MeterAccuracy;
};

function mismatch(from: UnitCode, to: UnitCode): ElectricsError {
  return new ElectricsError('unit-mismatch', {
    from,
    to,
    fromDimension: unitDefinition(from).dimension,
    toDimension: unitDefinition(to).dimension,
  });
}

/**
 * How many `to` one step of `from` is. A difference of temperature has no offset: one degree
 * Celsius is 1.8 degrees Fahrenheit.
 *
 * Throws `unit-unknown` and `unit-mismatch`.
 */
export function intervalFactor(from: UnitCode, to: UnitCode): number {
  const source = unitDefinition(from);
  const target = unitDefinition(to);
  if (source.dimension !== target.dimension) {
    throw mismatch(from, to);
  }
  return source.factor / target.factor;
}

/**
 * The value of a quantity in another unit. Temperatures are points on a scale: 0 Cel is 32 [degF].
 *
 * Throws `unit-unknown`, `unit-mismatch` and `value-not-finite`.
 */
export function valueIn(quantity: Quantity, unit: UnitCode): number {
  const scale = intervalFactor(quantity.unit, unit);
  if (!Number.isFinite(quantity.value)) {
    throw new ElectricsError('value-not-finite', { value: String(quantity.value) });
  }
  if (quantity.unit === unit) {
    return quantity.value;
  }
  const { offset } = unitDefinition(quantity.unit);
  return (quantity.value + offset) * scale - unitDefinition(unit).offset;
}

/**
 * The same quantity in another unit, with its resolution scaled along and its meter kept.
 *
 * Temperatures are points on a scale, so that 0 Cel is 32 [degF]. Throws `unit-unknown`,
 * `unit-mismatch` (facts `from`, `to` and both dimensions) and `value-not-finite`.
 *
 * @example
 * convert({ value: 12, unit: '[lbf_av].[ft_i]' }, 'N.m').value; // 16.27
 */
export function convert(quantity: Quantity, unit: UnitCode): Quantity {
  const value = valueIn(quantity, unit);
  if (quantity.unit === unit) {
    return quantity;
  }
  const { resolution, meter } = quantity;
  return {
    value,
    unit,
    ...(resolution === undefined
      ? {}
      : { resolution: resolution * intervalFactor(quantity.unit, unit) }),
    ...(meter === undefined ? {} : { meter }),
  };
}
