import type { BatteryTechnology } from '../limits/limit-context.ts';
import { soundRestVoltages, type SoundVoltage } from '../tables/sound-rest-voltage.ts';

/**
 * Rest voltage in V of one sound 12 V battery as it is met, or two hours after a full charge. Where
 * its kind is not known it reaches over both, with that of a wet battery as best figure.
 */
export function soundRestVoltage(
  technology: BatteryTechnology | undefined,
  when: 'rested' | 'recharged' = 'rested',
): SoundVoltage {
  const { wet, sealed } = soundRestVoltages.rows[when];
  if (technology === undefined) return { ...wet, high: sealed.high };
  return technology === 'agm' || technology === 'gel' ? sealed : wet;
}
