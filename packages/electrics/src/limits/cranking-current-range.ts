import { interpolate, tablePoints, type TablePoints } from '../interpolate.ts';
import type { Interval } from '../quantity/interval.ts';
import type { LimitContext } from './limit-context.ts';
import { possibleDisplacements, type Fuel } from '../circuit/possible-displacement.ts';
import type { Table } from '../table.ts';
import {
  coldCrankingFactor,
  dieselCrankingCurrent,
  inrushMultiple,
  petrolCrankingCurrent,
  type CrankingCurrentRows,
} from '../tables/cranking-current.ts';

/** From the least to the greatest value that a figure may have while something is not known. */
type Span = { readonly low: number; readonly high: number };

/**
 * The range of normal cranking currents, in A. Its `lower` and its `upper` end are spans, since
 * each depends on what is not known.
 */
export type CrankingCurrentRange = { readonly lower: Span; readonly upper: Span };

/** Where today's geared and older starters differ, an owner's figure is the middle of ±25 %. */
const aroundOwnersFigure: Span = { low: 0.75, high: 1.25 };

function column(table: Table<CrankingCurrentRows>, end: 'low' | 'high'): TablePoints {
  return tablePoints(table.rows, (row) => [row.displacement, row[end]]);
}

function spanOf(values: readonly number[]): Span {
  return { low: Math.min(...values), high: Math.max(...values) };
}

function warm12VoltRange(context: LimitContext): CrankingCurrentRange {
  const fuels: readonly Fuel[] =
    context.fuel !== undefined
      ? [context.fuel]
      : context.nominal === 24
        ? ['diesel']
        : ['petrol', 'diesel'];
  const ends = (end: 'low' | 'high'): Span =>
    spanOf(
      fuels.flatMap((fuel) => {
        const table = fuel === 'petrol' ? petrolCrankingCurrent : dieselCrankingCurrent;
        return possibleDisplacements(context, fuel).map((size) =>
          interpolate(column(table, end), size),
        );
      }),
    );
  return { lower: ends('low'), upper: ends('high') };
}

function times(span: Span, factor: Span): Span {
  return { low: span.low * factor.low, high: span.high * factor.high };
}

/** At 24 V about half of the current gives the same power: common practice, no source. */
function supplyFactor(context: LimitContext): Span {
  return context.nominal === 24 ? { low: 0.45, high: 0.55 } : { low: 1, high: 1 };
}

/**
 * How much more current a cold engine takes: 1.4 at 0 Cel, 1.8 at -18 Cel, 1 from 20 Cel on.
 * Common practice, no source. An unknown temperature is between 0 and 20 Cel.
 */
function coldFactor(temperature: number | undefined): Span {
  if (temperature === undefined) {
    return { low: 1, high: 1.4 };
  }
  const factor = interpolate(coldCrankingFactor.rows, temperature);
  return { low: factor, high: factor };
}

/** The normal range for a warm engine, at the vehicle's own nominal voltage. */
function warmRange(context: LimitContext): CrankingCurrentRange {
  const { expectedCurrent } = context;
  if (expectedCurrent !== undefined) {
    const lower = expectedCurrent * aroundOwnersFigure.low;
    const upper = expectedCurrent * aroundOwnersFigure.high;
    return { lower: { low: lower, high: lower }, upper: { low: upper, high: upper } };
  }
  const { lower, upper } = warm12VoltRange(context);
  const factor = supplyFactor(context);
  return { lower: times(lower, factor), upper: times(upper, factor) };
}

/** The range of normal cranking currents for a vehicle at its temperature. */
export function crankingCurrentRange(context: LimitContext): CrankingCurrentRange {
  const { lower, upper } = warmRange(context);
  const factor = coldFactor(context.temperature);
  return { lower: times(lower, factor), upper: times(upper, factor) };
}

/**
 * The current to expect while the engine turns, in A: from the lowest normal current to the
 * highest, with the middle of the normal range as best figure.
 *
 * The owner's figure goes before general ones; those go by fuel, displacement or cylinders, and
 * temperature. 24 V vehicles take about half. Source: common practice, no source.
 */
export function expectedCrankingCurrent(context: LimitContext): Interval {
  const { lower, upper } = crankingCurrentRange(context);
  const best = (lower.low + lower.high + upper.low + upper.high) / 4;
  return { low: lower.low, best, high: upper.high, unit: 'A' };
}

/**
 * The current to expect while start is held and the engine does not turn, in A.
 *
 * 2.5 to 5 times the warm running current, as the inrush of the first moment is: common practice,
 * no source (400 to 900 A for a car). Cold does not raise it, since the battery gives less.
 */
export function expectedStallCurrent(context: LimitContext): Interval {
  const { lower, upper } = warmRange(context);
  const least = (lower.low + upper.low) / 2;
  const most = (lower.high + upper.high) / 2;
  const { low, high } = inrushMultiple.rows;
  return { low: low * least, best: (3.5 * (least + most)) / 2, high: high * most, unit: 'A' };
}
