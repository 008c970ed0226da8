import type { Sheet } from '../sheet.ts';
import { caseSheet } from './case-sheet.ts';
import { fittingRecord } from './fitting-record.ts';
import { returnSlip } from './return-slip.ts';
import type { SheetOptions } from './sheet-options.ts';

/**
 * The whole sheet of a case of any flow: the case sheet where it seeks a fault, the return slip
 * where it decides on a return, the fitting record where it ends in an outcome.
 */
export function sheetOf(options: SheetOptions): Sheet {
  const { decisions, endsIn } = options.chart.flow;
  if (decisions.length === 0) return caseSheet(options);
  return endsIn === 'decision' ? returnSlip(options) : fittingRecord(options);
}
