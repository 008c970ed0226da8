import { published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** From `low` to `high`; both are one where the text has one figure. */
export type WindingSpan = { readonly low: number; readonly high: number };

/** Which solenoids a row is of: 12 V machines, 12 V cars, or 24 V. */
export type SolenoidKind = 'machine' | 'car' | '24-volt';

/** A solenoid whose text gives currents in A, of the hold-in winding alone and of both together. */
export type SolenoidByCurrent = {
  readonly kind: SolenoidKind;
  readonly by: 'current';
  readonly voltageV: number;
  readonly holdInA: WindingSpan;
  readonly bothA: WindingSpan;
  readonly source: Source;
};

/** A solenoid whose text gives resistances in ohms, and the currents in A that they mean. */
export type SolenoidByResistance = {
  readonly kind: SolenoidKind;
  readonly by: 'resistance';
  readonly voltageV: number;
  readonly holdInOhm: WindingSpan;
  readonly pullInOhm: WindingSpan;
  readonly holdInA: WindingSpan;
  readonly pullInA: WindingSpan;
  readonly source: Source;
};

const machine = published('TM 5-2420-230-24-2 p. 13-33, 12 V solenoid of one of four sizes');

function machineSize(bothA: number, holdInA: number): SolenoidByCurrent {
  return {
    kind: 'machine',
    by: 'current',
    voltageV: 10,
    holdInA: { low: holdInA, high: holdInA },
    bothA: { low: bothA, high: bothA },
    source: machine,
  };
}

/** The windings of starter solenoids: at first reading, since they heat and then draw less. */
export const solenoidWindings: Table<readonly (SolenoidByCurrent | SolenoidByResistance)[]> = {
  title: 'Windings of starter solenoids',
  source: published('army and vehicle service manuals; each row names its own'),
  rows: [
    machineSize(69, 13),
    machineSize(74, 19),
    machineSize(97, 18),
    machineSize(86, 15),
    {
      kind: 'car',
      by: 'current',
      voltageV: 10,
      holdInA: { low: 10, high: 20 },
      bothA: { low: 60, high: 85 },
      source: published("a vehicle maker's service manual, starter solenoid at 10 V"),
    },
    {
      kind: '24-volt',
      by: 'resistance',
      voltageV: 20,
      holdInOhm: { low: 1.45, high: 1.65 },
      pullInOhm: { low: 0.16, high: 0.2 },
      holdInA: { low: 12, high: 14 },
      pullInA: { low: 100, high: 125 },
      source: published('TM 9-4940-568-34 p. 5-157, 24 V solenoid'),
    },
  ],
};

/** The windings of a small machine's solenoid, about, in A; at which voltage is not said. */
export const smallSolenoidWindings: Table<{
  readonly pullInA: number;
  readonly holdInA: number;
}> = {
  title: 'Windings of a small solenoid',
  source: published('TM 5-3895-382-24, starting motor'),
  rows: { pullInA: 40, holdInA: 5 },
};

/** How long one pulse of a winding test may last, s: the windings heat. */
export const windingPulseS: Table<number> = {
  title: 'Longest pulse of a winding test',
  source: published("TM 5-2420-230-24-2 p. 13-33 and a vehicle maker's service manual"),
  rows: 15,
};
