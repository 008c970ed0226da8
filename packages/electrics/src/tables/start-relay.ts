import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** Currents in A, from low to high, in the control circuit of a machine's starter. */
export type StartRelayCurrents = {
  readonly coilA: number;
  readonly contactRatingA: { readonly low: number; readonly high: number };
  readonly contactLoadA: { readonly low: number; readonly high: number };
  readonly ignitionSwitchA: { readonly low: number; readonly high: number };
};

/**
 * The start relay of a machine, whose coil takes about 1 A: its contacts carry far less than they
 * are rated for, and far more than an ignition switch would stand.
 */
export const startRelayCurrents: Table<StartRelayCurrents> = {
  title: 'Currents of a start relay and its switch',
  source: published('TM 5-3895-382-24, starting motor'),
  rows: {
    coilA: 1,
    contactRatingA: { low: 100, high: 300 },
    contactLoadA: { low: 5, high: 50 },
    ignitionSwitchA: { low: 5, high: 20 },
  },
};
