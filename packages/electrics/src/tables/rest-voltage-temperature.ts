import type { Source } from '../source.ts';
import { fromMemory, published } from '../source.ts';

/** By how much the rest voltage of a 12 V battery rises, mV for each kelvin it is warmer. */
export type RestVoltageRise = {
  readonly low: number;
  readonly high: number;
  readonly source: Source;
};

/**
 * What is printed of temperature and rest voltage. The texts differ in sign, so no reading is
 * corrected. The first is six times the hydrometer's correction copied onto volts: at -18 Cel it
 * would take 0.19 V, a quarter of the charge, off a sound battery.
 */
export const restVoltageRises: readonly RestVoltageRise[] = [
  {
    low: -4.32,
    high: -4.32,
    source: published(
      'battery maker, questions and answers: 0.024 V to subtract for every 10 °F below 80 °F',
    ),
  },
  {
    low: 1.2,
    high: 1.38,
    source: fromMemory(
      'electrochemistry of the lead-acid cell: 0.20 to 0.23 mV a kelvin and cell at a gravity of 1.2 to 1.3',
    ),
  },
  {
    low: 2.5,
    high: 2.5,
    source: published(
      'battery-trade article on temperature: 2.5 mV a kelvin, battery or cell not stated',
    ),
  },
];
