/**
 * Whether a figure can be a reading of its check, and what was likely meant where it cannot.
 */
import {
  convert,
  isUnit,
  readingRange,
  type Quantity,
  type ReadingRange,
} from '@keyturn/electrics';
import type { AnswerForm } from '../flow/flow.ts';

/** What a figure is as a reading. */
export type FigureJudgement =
  | { readonly type: 'plausible' }
  | {
      readonly type: 'implausible';
      readonly range: ReadingRange;
      /** A missing decimal point, millivolts taken for volts, or leads the wrong way round. */
      readonly likely?: Quantity;
      /** True where the figure would be right on a 24 V vehicle. */
      readonly isRightAt24: boolean;
    }
  | { readonly type: 'unknown-unit' }
  | { readonly type: 'wrong-unit' };

/** Judges a figure, in whatever unit, as a reading on a 12 V or 24 V vehicle. Never throws. */
export function judgeFigure(
  quantity: { readonly value: number; readonly unit: string },
  form: Extract<AnswerForm, { kind: 'reading' }>,
  nominal: 12 | 24,
): FigureJudgement {
  const { value, unit } = quantity;
  if (!isUnit(unit)) return { type: 'unknown-unit' };
  let inUnit: number;
  try {
    inUnit = convert({ value, unit }, form.unit).value;
  } catch {
    return { type: 'wrong-unit' };
  }
  const range = readingRange(form.range, nominal);
  if (isWithin(inUnit, range)) return { type: 'plausible' };
  const powers = [10, 100, 1000];
  // A drop is often read off in millivolts, and a hydrometer in points of a thousandth.
  const isInThousandths = form.range === 'drop' || form.range === 'density-difference';
  const scales = isInThousandths ? powers.toReversed() : powers;
  const meant = [-inUnit, ...scales.map((scale) => inUnit / scale)].find(
    (one) => isWithin(one, range) && one !== inUnit,
  );
  const likely =
    meant === undefined ? {} : { likely: { value: Number(meant.toPrecision(6)), unit: form.unit } };
  const isRightAt24 = nominal === 12 && isWithin(inUnit, readingRange(form.range, 24));
  return { type: 'implausible', range, ...likely, isRightAt24 };
}

function isWithin(value: number, { low, high }: ReadingRange): boolean {
  return value >= low && value <= high;
}
