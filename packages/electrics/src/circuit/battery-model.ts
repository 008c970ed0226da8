import { interpolate, tablePoints, type TablePoints } from '../interpolate.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { availablePower } from '../limits/battery-resistance.ts';
import { chargeResistance } from '../tables/charge-resistance.ts';
import { openCircuitVoltage } from '../tables/open-circuit-voltage.ts';

/**
 * A battery under load: U = `emfV` - I × `resistanceOhm` - `polarisationV` × asinh(I / `polarisationA`).
 *
 * The last term is the overvoltage of the electrodes (Butler and Volmer): steep at small currents,
 * nearly flat at large ones.
 */
export type BatteryModel = {
  readonly emfV: number;
  readonly resistanceOhm: number;
  readonly polarisationV: number;
  readonly polarisationA: number;
};

/** What a battery's model goes by. */
export type BatteryState = {
  /** Cold-cranking current after SAE J537 of the battery when new, A. */
  readonly ratingA: number;
  /** Part of that current which it can still give, above 0 to 1. */
  readonly health: number;
  /** Open-circuit voltage, V, of one 12 V battery. */
  readonly restV: number;
  readonly technology: BatteryTechnology;
  readonly temperatureC: number;
  /** 12 V batteries in series. */
  readonly series: number;
};

const fullV = 12.65;
const labelV = 7.2;
// Common practice, no source: some 0.6 V at half of the cold-cranking current, of 12 V.
const overvoltageV = 0.4;
const ratingPart = 0.25;
const powerInFrost = availablePower(-18);

function polarisation(currentA: number, model: BatteryModel): number {
  return model.polarisationV * Math.asinh(currentA / model.polarisationA);
}

/** Voltage in V at the posts of a battery that gives `currentA`, 0 or more. */
export function batteryVoltage(model: BatteryModel, currentA: number): number {
  return model.emfV - currentA * model.resistanceOhm - polarisation(currentA, model);
}

/** Per cent of charge of one rested 12 V battery, by the column to use first. */
function chargeOf({ restV, technology }: BatteryState): number {
  return interpolate(openCircuitVoltage[technology][0].points, restV);
}

const voltageByCharge = Object.fromEntries(
  Object.entries(openCircuitVoltage).map(([technology, [{ points }]]) => [
    technology,
    tablePoints(points, ([volts, charge]) => [charge, volts]),
  ]),
) as Readonly<Record<BatteryTechnology, TablePoints>>;

/** Open-circuit voltage in V of one 12 V battery by its charge in per cent, 0 to 100. */
export function openCircuitVoltageAt(chargePercent: number, technology: BatteryTechnology): number {
  return interpolate(voltageByCharge[technology], chargePercent);
}

/**
 * The model of a battery by its label, wear, charge and temperature.
 *
 * Its resistance is such that a new, full battery at -18 Cel gives its rating at 7.2 V (SAE J537);
 * from there it falls as the cranking power of TM 5-1185 rises with temperature, grows as charge is
 * lost (table `chargeResistance`) and with 1 / health. The overvoltage is common practice, no source.
 */
export function batteryModel(state: BatteryState): BatteryModel {
  const { ratingA, health, restV, temperatureC, series } = state;
  const polarisationA = ratingPart * ratingA;
  const atLabel = overvoltageV * Math.asinh(ratingA / polarisationA);
  const newInFrost = (fullV - labelV - atLabel) / ratingA;
  const warmth = powerInFrost / availablePower(temperatureC);
  const discharge = interpolate(chargeResistance.rows, chargeOf(state));
  return {
    emfV: restV * series,
    resistanceOhm: ((newInFrost * warmth * discharge) / health) * series,
    polarisationV: overvoltageV * series,
    polarisationA: polarisationA * health,
  };
}
