import { ElectricsError } from '../electrics-error.ts';
import { interpolate, tablePoints } from '../interpolate.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { Source } from '../source.ts';
import { chargingWindow } from '../tables/charging-window.ts';
import { regulatedVoltageByAmbient } from '../tables/regulated-voltage.ts';

function windowOf(low: number, high: number, source: Source): SourcedInterval {
  return { low, best: (low + high) / 2, high, unit: 'V', source };
}

function endAt(end: 'lowV' | 'highV', ambientC: number): number {
  const { rows } = regulatedVoltageByAmbient;
  return interpolate(
    tablePoints(rows, (row) => [row.ambientC, row[end]]),
    ambientC,
  );
}

/**
 * The window in which a conventional regulator holds the charging voltage at an ambient temperature
 * in Cel, in V, on a 12 V (where absent) or a 24 V system. It falls by 14.9 mV a kelvin and 12 V,
 * since a warm battery takes charge more easily.
 *
 * Straight lines between the table's steps; below -18 and above 49 Cel its ends. Without a
 * temperature it is the general window of a warm system, 13.5 to 14.8 V. A generator that the engine
 * computer commands has no window by temperature. Source: TM 9-6115-464-12, Table 4-5; the general
 * window is common practice, no source. Throws `value-not-finite`.
 *
 * @example
 * regulatedVoltageWindow(27); // 14.0 to 14.3 V
 */
export function regulatedVoltageWindow(
  ambientC: number | undefined,
  nominalV: 12 | 24 = 12,
): SourcedInterval {
  const series = nominalV / 12;
  if (ambientC === undefined) {
    const { lowV, highV, source } = chargingWindow.rows.conventional;
    return windowOf(lowV * series, highV * series, source);
  }
  if (!Number.isFinite(ambientC)) {
    throw new ElectricsError('value-not-finite', { ambientC: String(ambientC) });
  }
  return windowOf(
    endAt('lowV', ambientC) * series,
    endAt('highV', ambientC) * series,
    regulatedVoltageByAmbient.source,
  );
}
