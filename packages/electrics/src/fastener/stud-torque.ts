import type { SourcedInterval } from '../quantity/interval.ts';
import type { Source } from '../source.ts';
import {
  batteryClampTorque,
  batteryInsertTorque,
  softStudTorque,
  starterBatteryTerminalTorque,
  starterSwitchTerminalTorque,
  type StudSize,
  type TorqueRange,
} from '../tables/electrical-stud.ts';

/** A stud of a terminal: its thread, and what it is made of or sits in. */
export type Stud = {
  readonly size: StudSize;
  readonly material: 'copper' | 'brass' | 'battery-insert';
};

/** A terminal whose torque goes by its place and not by its thread. */
export type Terminal = 'starter-battery' | 'starter-switch' | 'battery-clamp';

/** The cautions that a torque of a terminal carries with it, by their ids. */
export type TorqueCaution = 'soft-stud';

/** Torque in N.m of a terminal, and the cautions without which it must not be given. */
export type TerminalTorque = {
  readonly torque: SourcedInterval;
  readonly cautions: readonly TorqueCaution[];
};

function terminalTorqueOf(
  source: Source,
  [low, high]: TorqueRange,
  cautions: readonly TorqueCaution[],
): TerminalTorque {
  return { torque: { low, best: (low + high) / 2, high, unit: 'N.m', source }, cautions };
}

/**
 * Torque in N.m of the nut on a copper or brass stud, or of the bolt in a battery's insert, where
 * the maker gives no figure: the maker's own figure always goes first.
 *
 * It is less than a steel bolt's of the same thread, on copper or brass a third to a half of it, and
 * always carries the caution `soft-stud`: such a stud shears, or turns in its moulding and breaks the
 * lead behind it. Sources: copper and brass common practice, no source; battery inserts a battery
 * maker's manual.
 *
 * @example
 * studTorque({ size: 'M8', material: 'copper' }); // 8 to 12 N.m, where a steel bolt takes 25
 */
export function studTorque(stud: Stud): TerminalTorque {
  const { rows, source } =
    stud.material === 'battery-insert' ? batteryInsertTorque : softStudTorque;
  return terminalTorqueOf(source, rows[stud.size], ['soft-stud']);
}

/**
 * Torque in N.m of a terminal whose thread nobody has to know, where the maker gives no figure: the
 * maker's own figure always goes first.
 *
 * `starter-battery` is for a large stud of steel only: one of copper takes the figure of
 * `studTorque`, and both terminals of a starter carry the caution `soft-stud`. `battery-clamp` is
 * the bolt of a clamp on a tapered post. Sources: starter TM 5-3895-382-24; clamp common practice,
 * no source.
 *
 * @example
 * terminalTorque('starter-battery'); // 24 to 32 N.m
 */
export function terminalTorque(terminal: Terminal): TerminalTorque {
  switch (terminal) {
    case 'starter-battery':
      return terminalTorqueOf(
        starterBatteryTerminalTorque.source,
        starterBatteryTerminalTorque.rows,
        ['soft-stud'],
      );
    case 'starter-switch':
      return terminalTorqueOf(
        starterSwitchTerminalTorque.source,
        starterSwitchTerminalTorque.rows,
        ['soft-stud'],
      );
    case 'battery-clamp':
      return terminalTorqueOf(batteryClampTorque.source, batteryClampTorque.rows, []);
  }
}
