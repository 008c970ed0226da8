import { oilGrades, type OilGrade } from '../tables/oil-grade.ts';

const kelvin = 273.15;

/** log10 log10 of the viscosity, which falls in a straight line over log10 of the temperature. */
function doubleLog(viscosity: number): number {
  return Math.log10(Math.log10(viscosity + 0.7));
}

/**
 * Kinematic viscosity in mm2/s of an engine oil at a temperature in Cel, from -40 to 150.
 *
 * Source: ASTM D341 (Walther), log log (v + 0.7) = A - B log T, from memory, through the grade's
 * viscosities at 40 and 100 Cel. Below its pour point an oil is thicker than this says.
 */
export function oilViscosity(grade: OilGrade, temperatureC: number): number {
  const { at40C, at100C } = oilGrades.rows[grade];
  const warm = Math.log10(40 + kelvin);
  const slope = (doubleLog(at100C) - doubleLog(at40C)) / (Math.log10(100 + kelvin) - warm);
  const here = doubleLog(at40C) + slope * (Math.log10(temperatureC + kelvin) - warm);
  return 10 ** (10 ** here) - 0.7;
}
