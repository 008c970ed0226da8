import { ElectricsError } from '../electrics-error.ts';

/**
 * Diameter in mm of a solid conductor by its AWG number, -3 (4/0) to 40: 0.127 mm × 92^((36 - n)/39).
 *
 * Source: ASTM B258. Throws `value-out-of-range`.
 */
export function awgDiameterMm(awg: number): number {
  if (!(awg >= -3 && awg <= 40)) {
    throw new ElectricsError('value-out-of-range', { awg: String(awg), low: -3, high: 40 });
  }
  return 0.127 * 92 ** ((36 - awg) / 39);
}

/**
 * Area in mm2 of a solid conductor by its AWG number, -3 (4/0) to 40.
 *
 * Source: ASTM B258. Throws `value-out-of-range`.
 */
export function awgAreaMm2(awg: number): number {
  return (Math.PI / 4) * awgDiameterMm(awg) ** 2;
}
