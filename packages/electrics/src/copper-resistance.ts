import { ElectricsError } from './electrics-error.ts';
import type { Quantity } from './quantity.ts';
import { class5Resistance } from './tables/class-5-resistance.ts';
import { copperResistivity, copperTemperatureCoefficient } from './tables/copper.ts';

/** A conductor's size: its area in mm2, or its AWG number (1/0 is 0, 2/0 is -1, 4/0 is -3). */
export type ConductorSize = { readonly areaMm2: number } | { readonly awg: number };

/** A piece of conductor: size, length in m and temperature in Cel (20 where absent). */
export type Conductor = ConductorSize & {
  readonly lengthM: number;
  readonly temperatureC?: number | undefined;
};

function requireAbove(name: string, value: number, low: number): void {
  if (!(value > low && Number.isFinite(value))) {
    throw new ElectricsError('value-out-of-range', { [name]: String(value), low });
  }
}

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

/** Area in mm2 of a solid conductor by its AWG number, -3 (4/0) to 40. Source: ASTM B258. */
export function awgAreaMm2(awg: number): number {
  return (Math.PI / 4) * awgDiameterMm(awg) ** 2;
}

function areaOf(size: ConductorSize): number {
  return 'areaMm2' in size ? size.areaMm2 : awgAreaMm2(size.awg);
}

function temperatureFactor(temperatureC: number): number {
  return 1 + copperTemperatureCoefficient.rows * (temperatureC - 20);
}

/**
 * Resistance of solid annealed copper.
 *
 * Source: International Annealed Copper Standard. Stranded cable has some 2 % more (common
 * practice, no source). Throws `value-out-of-range`.
 *
 * @example
 * copperResistance({ awg: 2, lengthM: 1000 }); // 513 mOhm
 */
export function copperResistance(conductor: Conductor): Quantity {
  const area = areaOf(conductor);
  requireAbove('areaMm2', area, 0);
  requireAbove('lengthM', conductor.lengthM, 0);
  const ohms = (copperResistivity.rows * conductor.lengthM) / (area * 1e-6);
  return {
    value: ohms * 1000 * temperatureFactor(conductor.temperatureC ?? 20),
    unit: 'mOhm',
  };
}

/** Ohm per km of flexible cable: as listed, between sizes in proportion to the nearest area. */
function cableResistancePerKm(areaMm2: number): number {
  let [nearestArea, nearestResistance] = class5Resistance.rows[0];
  for (const [area, resistance] of class5Resistance.rows) {
    if (Math.abs(Math.log(area / areaMm2)) < Math.abs(Math.log(nearestArea / areaMm2))) {
      [nearestArea, nearestResistance] = [area, resistance];
    }
  }
  return (nearestResistance * nearestArea) / areaMm2;
}

/** A cable under load: its conductor and the current in A. */
export type LoadedCable = Conductor & { readonly currentA: number };

/**
 * The voltage that a sound flexible cable drops, at most, at a current.
 *
 * Source: IEC 60228 class 5, its greatest resistance. Throws `value-out-of-range`.
 *
 * @example
 * cableDrop({ areaMm2: 25, lengthM: 1.5, currentA: 200 }); // 0.234 V
 */
export function cableDrop(cable: LoadedCable): Quantity {
  const area = areaOf(cable);
  requireAbove('areaMm2', area, 0);
  requireAbove('lengthM', cable.lengthM, 0);
  requireAbove('currentA', cable.currentA, 0);
  const ohms = (cableResistancePerKm(area) / 1000) * cable.lengthM;
  return {
    value: ohms * cable.currentA * temperatureFactor(cable.temperatureC ?? 20),
    unit: 'V',
  };
}
