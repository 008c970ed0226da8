import { fromMemory, published } from '../source.ts';
import type { Table } from '../table.ts';

/** Resistivity of annealed copper at 20 Cel, Ohm.m. */
export const copperResistivity: Table<number> = {
  title: 'Resistivity of annealed copper at 20 Cel',
  source: fromMemory(
    'NBS Handbook 100, Copper Wire Tables: 1.7241e-8 Ohm.m, the International Annealed Copper Standard (Industrial Power Engineering Handbook p. 970 has its conductivity, 58 m/(Ohm.mm2))',
  ),
  rows: 1.7241e-8,
};

/** Rise of copper's resistance per kelvin, as a part of its value at 20 Cel. */
export const copperTemperatureCoefficient: Table<number> = {
  title: 'Temperature coefficient of copper at 20 Cel',
  source: published('Industrial Power Engineering Handbook p. 970: 0.00393 a kelvin'),
  rows: 0.003_93,
};
