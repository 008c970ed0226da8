import type { Bound } from '../conformance/bound.ts';
import { ElectricsError } from '../electrics-error.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import { computed, type Source } from '../source.ts';
import {
  solenoidWindings,
  type SolenoidByCurrent,
  type SolenoidByResistance,
  type SolenoidKind,
  type WindingSpan,
} from '../tables/solenoid-windings.ts';

/** What current flows in: the hold-in winding, the pull-in winding, or both together. */
export type Winding = 'hold-in' | 'pull-in' | 'both';

type Row = SolenoidByCurrent | SolenoidByResistance;

function rowsOf(kind: SolenoidKind): { readonly rows: readonly Row[]; readonly source: Source } {
  const rows = solenoidWindings.rows.filter((row) => row.kind === kind);
  const texts = new Set(rows.map(({ source }) => source.text));
  return { rows, source: computed([...texts].join('; ')) };
}

function across(spans: readonly WindingSpan[]): WindingSpan {
  return {
    low: Math.min(...spans.map(({ low }) => low)),
    high: Math.max(...spans.map(({ high }) => high)),
  };
}

/** Volts over a span: its high end makes the low end. */
function voltsOver(voltageV: number, { low, high }: WindingSpan): WindingSpan {
  return { low: voltageV / high, high: voltageV / low };
}

/** The current of a winding in A at the voltage of its row. */
function currentOf(row: Row, winding: Winding): WindingSpan {
  if (row.by === 'current') {
    const { holdInA, bothA } = row;
    switch (winding) {
      case 'hold-in':
        return holdInA;
      case 'both':
        return bothA;
      case 'pull-in':
        return { low: bothA.low - holdInA.high, high: bothA.high - holdInA.low };
    }
  }
  const holdInA = voltsOver(row.voltageV, row.holdInOhm);
  const pullInA = voltsOver(row.voltageV, row.pullInOhm);
  switch (winding) {
    case 'hold-in':
      return holdInA;
    case 'pull-in':
      return pullInA;
    case 'both':
      return { low: holdInA.low + pullInA.low, high: holdInA.high + pullInA.high };
  }
}

/**
 * The resistance in ohms of one winding of a solenoid's kind, over all sizes of it.
 *
 * Source: the texts of the table `solenoidWindings`; by Ohm's law where they give currents.
 *
 * @example
 * windingResistance('car', 'hold-in'); // 0.5 to 1 Ohm
 */
export function windingResistance(
  kind: SolenoidKind,
  winding: Exclude<Winding, 'both'>,
): SourcedInterval {
  const { rows, source } = rowsOf(kind);
  const { low, high } = across(rows.map((row) => voltsOver(row.voltageV, currentOf(row, winding))));
  return { low, best: (low + high) / 2, high, unit: 'Ohm', source };
}

/** A current measured through a winding at a voltage (V, above 0) that stood across it meanwhile. */
export type MeasuredWinding = {
  readonly kind: SolenoidKind;
  readonly winding: Winding;
  readonly current: Quantity;
  readonly voltageV: number;
};

/** What a winding's current says, with the bound it went by: from `low` to `high` it is sound. */
export type WindingCheck = {
  readonly verdict: 'sound' | 'shorted-turns' | 'high-resistance' | 'open' | 'cannot-tell';
  readonly sound: Bound;
};

/**
 * Tells whether a winding of a starter solenoid is sound, by its current (0 or above).
 *
 * More than specified means shorted turns, less a resistance, none an open winding; a reading nearer
 * to an end than the meter can tell is `cannot-tell`. The currents of the table are brought to the
 * voltage in proportion. Take the first reading of a pulse of at most 15 s, since the current falls
 * as the winding heats. Sources: a vehicle maker's service manual for the meanings; see the table
 * `solenoidWindings`. Throws `value-out-of-range`, `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * windingCheck({
 *   kind: 'car',
 *   winding: 'hold-in',
 *   current: { value: 14, unit: 'A', resolution: 0.1 },
 *   voltageV: 10,
 * }).verdict; // 'sound'
 */
export function windingCheck(measured: MeasuredWinding): WindingCheck {
  const { kind, winding, current, voltageV } = measured;
  const reading = readingInterval({ quantity: current }, 'A');
  if (!(voltageV > 0 && Number.isFinite(voltageV) && reading.best >= 0)) {
    throw new ElectricsError('value-out-of-range', {
      voltageV: String(voltageV),
      current: reading.best,
      low: 0,
    });
  }
  const { rows, source } = rowsOf(kind);
  const { low, high } = across(
    rows.map((row) => {
      const span = currentOf(row, winding);
      const scale = voltageV / row.voltageV;
      return { low: span.low * scale, high: span.high * scale };
    }),
  );
  const sound: Bound = { low, high, unit: 'A', source };
  if (reading.high < low) {
    return { verdict: reading.low <= 0 ? 'open' : 'high-resistance', sound };
  }
  if (reading.low > high) {
    return { verdict: 'shorted-turns', sound };
  }
  const within = reading.low >= low && reading.high <= high;
  return { verdict: within ? 'sound' : 'cannot-tell', sound };
}
