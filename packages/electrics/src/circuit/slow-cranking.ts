import { expectedReading } from './expected-reading.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { LimitContext } from '../limits/limit-context.ts';
import { standardUncertainty } from '../quantity/meter.ts';
import { probabilityBelow } from '../conformance/probability-below.ts';
import { convert, intervalFactor, type Quantity } from '../quantity/quantity.ts';

/** An engine that turns slowly, by its current: the share of each, together 1, and what to expect. */
export type SlowCranking = {
  /** Something drags: the engine, or the starter itself. */
  readonly tooMuchCurrent: number;
  /** The current is as it should be, so that the voltage is lost on its way or in the battery. */
  readonly usualCurrent: number;
  /** Resistance stands in its way: battery, cables, ground, contacts, brushes. */
  readonly tooLittleCurrent: number;
  readonly expected: SourcedInterval;
};

/**
 * Tells "too much current and slow" from "too little current and slow".
 *
 * The measured current is held against what the sound vehicle of the context would draw; the
 * reading's error is normal with its standard uncertainty. Source of the meaning: TM 10-3930-671-24
 * pp. F-299 to F-309 and an automotive training text. Throws `unit-mismatch`, `value-not-finite`.
 */
export function slowCranking(current: Quantity, context: LimitContext): SlowCranking | undefined {
  const expected = expectedReading('crank-current', context);
  if (expected === undefined) return undefined;
  const { value } = convert(current, 'A');
  const uncertainty = standardUncertainty(current) * intervalFactor(current.unit, 'A');
  const tooLittleCurrent = probabilityBelow(value, uncertainty, expected.low);
  const tooMuchCurrent = 1 - probabilityBelow(value, uncertainty, expected.high);
  const usualCurrent = Math.max(0, 1 - tooLittleCurrent - tooMuchCurrent);
  return { tooMuchCurrent, usualCurrent, tooLittleCurrent, expected };
}
