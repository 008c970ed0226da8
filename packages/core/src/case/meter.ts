/**
 * The meter of a reading, as far as the context of the case tells it.
 */
import {
  classAccuracy,
  unitDimension,
  type MeterAccuracy,
  type MeterClass,
  type UnitCode,
} from '@keyturn/electrics';
import type { Context } from './context.ts';

/** What a reading in `unit` is read with: the voltmeter or the clamp meter. */
function instrumentFor(unit: UnitCode): 'meter' | 'clamp' | undefined {
  switch (unitDimension(unit)) {
    case 'voltage':
      return 'meter';
    case 'current':
      return 'clamp';
    default:
      return undefined;
  }
}

/** The accuracy of the meter in use: its owner's figures, else those of its class, if told. */
export function meterFor(context: Context, unit: UnitCode): MeterAccuracy | undefined {
  const instrument = instrumentFor(unit);
  if (instrument === undefined) return undefined;
  const meterClass = context[`${instrument}.class`] as MeterClass | undefined;
  const percent = context[`${instrument}.percent`] as number | undefined;
  if (percent === undefined) {
    return meterClass === undefined ? undefined : classAccuracy(meterClass, unit);
  }
  const digits = (context[`${instrument}.digits`] ?? 0) as number;
  const counts = context[`${instrument}.counts`] as number | undefined;
  return { percent, digits, ...(counts === undefined ? {} : { counts }) };
}
