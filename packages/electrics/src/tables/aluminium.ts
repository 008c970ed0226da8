import { fromMemory } from '../source.ts';
import type { Table } from '../table.ts';

/** Conductivity of aluminium for conductors, as a part of annealed copper's. */
export const aluminiumConductivity: Table<number> = {
  title: 'Conductivity of aluminium against annealed copper',
  source: fromMemory(
    'aluminium for conductors: 61 % of the International Annealed Copper Standard',
  ),
  rows: 0.61,
};

/** Rise of aluminium's resistance per kelvin, as a part of its value at 20 Cel. */
export const aluminiumTemperatureCoefficient: Table<number> = {
  title: 'Temperature coefficient of aluminium at 20 Cel',
  source: fromMemory('aluminium of 61 % conductivity: 0.00403 a kelvin'),
  rows: 0.004_03,
};
