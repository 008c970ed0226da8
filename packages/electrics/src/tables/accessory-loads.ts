import { commonPractice, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** Every load other than a lamp that the table holds. */
export type AccessoryKind =
  | 'window-motor-moving'
  | 'window-motor-stalled'
  | 'rear-window-heater'
  | 'horn-pair'
  | 'blower-full';

/**
 * The current of one load in A, at `atV` volts. It goes with the voltage to the power of
 * `exponent`: 1 where the load behaves as a resistance, 0 where it takes what it has to move.
 */
export type AccessoryLoad = {
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly atV: number;
  readonly exponent: 0 | 1;
  readonly source: Source;
};

/** Loads of a 12 V vehicle that can be switched on by hand, window motors at 25 Cel. */
export const accessoryLoads: Table<Readonly<Record<AccessoryKind, AccessoryLoad>>> = {
  title: 'Current of accessories',
  source: commonPractice("usual currents; window motors from vehicle makers' service manuals"),
  rows: {
    'window-motor-moving': {
      low: 4,
      best: 6,
      high: 8,
      atV: 14.5,
      exponent: 0,
      source: published(
        "vehicle makers' service manuals, at 14.5 V and 25 °C: 4 to 6 A, 6 to 8 A, at most 7 A",
      ),
    },
    'window-motor-stalled': {
      low: 14.5,
      best: 20,
      high: 30,
      atV: 14.5,
      exponent: 1,
      source: published(
        "a vehicle maker's service manual: at least 14.5 A, and the breaker opens in 4 to 40 s; the upper end, 30 A, is common practice",
      ),
    },
    'rear-window-heater': {
      low: 12,
      best: 16,
      high: 20,
      atV: 12.5,
      exponent: 1,
      source: commonPractice('rear-window heater of 150 to 250 W: 12 to 20 A'),
    },
    'horn-pair': {
      low: 8,
      best: 10,
      high: 12,
      atV: 12.5,
      exponent: 1,
      source: commonPractice('pair of horns: 8 to 12 A'),
    },
    'blower-full': {
      low: 15,
      best: 20,
      high: 25,
      atV: 12.5,
      exponent: 1,
      source: commonPractice('blower at its highest step: 15 to 25 A'),
    },
  },
};
