import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The drop across a relay's new contacts at `currentA`, in mV: typically from `typicalLowMv` to
 * `typicalHighMv`, at most, by relay, from `mostLowMv` to `mostHighMv`.
 */
export type RelayContactDrop = {
  readonly currentA: number;
  readonly typicalLowMv: number;
  readonly typicalHighMv: number;
  readonly mostLowMv: number;
  readonly mostHighMv: number;
};

/** Drop across the contacts of a new relay at 10 A. */
export const relayContactDrop: Table<RelayContactDrop> = {
  title: 'Drop across new relay contacts',
  source: published('data sheets of a 12 V mini relay and of a sealed 12 V power relay'),
  rows: {
    currentA: 10,
    typicalLowMv: 15,
    typicalHighMv: 20,
    mostLowMv: 200,
    mostHighMv: 300,
  },
};

/** The current in A that a mini relay carries all the time, by ambient temperature in Cel. */
export const relayContinuousCurrent: Table<TablePoints> = {
  title: 'Limiting continuous current of a mini relay',
  source: published('data sheet of a 12 V mini relay'),
  rows: [
    [23, 50],
    [85, 35],
    [125, 15],
  ],
};
