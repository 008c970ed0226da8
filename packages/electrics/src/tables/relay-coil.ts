import { published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The kind of a 12 V relay: the usual mini relay and its other coil, a sealed power relay, one that
 * is rated for a starter, a micro relay after ISO 280.
 */
export type RelayKind = 'mini' | 'mini-75-ohm' | 'sealed-power' | 'starter-rated' | 'micro';

/**
 * One coil: its resistance, what it takes at 12 V, and the voltages at which it pulls in and lets
 * go. What the data sheet does not say is absent.
 */
export type RelayCoilRow = {
  readonly ohms: number;
  readonly powerW?: number;
  readonly currentA?: number;
  readonly operateV?: number;
  readonly releaseV?: number;
  readonly source: Source;
};

const mini = published('data sheet of a 12 V mini relay');

/** Coils of 12 V relays. A relay pulls in at 6.5 to 8 V and then holds down to 1 to 1.5 V. */
export const relayCoils: Table<Readonly<Record<RelayKind, RelayCoilRow>>> = {
  title: 'Coils of 12 V relays',
  source: published('relay data sheets; each row names its own'),
  rows: {
    mini: {
      ohms: 85,
      powerW: 1.7,
      currentA: 0.14,
      operateV: 8,
      releaseV: 1.5,
      source: mini,
    },
    'mini-75-ohm': { ohms: 75, operateV: 6.5, releaseV: 1, source: mini },
    'sealed-power': {
      ohms: 90,
      powerW: 1.6,
      operateV: 6.9,
      releaseV: 1.2,
      source: published('data sheet of a sealed 12 V power relay'),
    },
    'starter-rated': {
      ohms: 75,
      source: published('data sheet of a relay that is rated for starters'),
    },
    micro: {
      ohms: 109,
      powerW: 1.3,
      source: published('data sheet of a micro relay after ISO 280'),
    },
  },
};
