import { commonPractice } from '../source.ts';
import type { LimitContext } from './limit-context.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { crankingCurrentRange } from './cranking-current-range.ts';

// A figure of common practice has a spread of its own of 15 to 20 %.
const practiceSpread = 0.15;

const source = commonPractice('normal cranking current by fuel and displacement');

/**
 * Below it nothing is cranked: a solenoid's hold-in winding alone draws 10 to 20 A (TM
 * 5-2420-230-24-2 p. 13-33: 13 to 19 A at 10 V; 24 V units 12 to 14 A), so the limit is not halved
 * at 24 V. Pull-in and hold-in together draw 60 to 100 A and are no "none".
 */
export function crankCurrentNone(): LimitResult {
  return knownLimit({
    low: 20,
    high: 40,
    unit: 'A',
    source: commonPractice(
      'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)',
    ),
  });
}

/** Below it the cranking current is low: the lower end of the normal range. */
export function crankCurrentLow(context: LimitContext): LimitResult {
  const { lower } = crankingCurrentRange(context);
  return knownLimit({
    low: lower.low * (1 - practiceSpread),
    high: lower.high * (1 + practiceSpread),
    unit: 'A',
    source,
  });
}

/** Above it the cranking current is high: 1.6 times the upper end of the normal range. */
export function crankCurrentHigh(context: LimitContext): LimitResult {
  const { upper } = crankingCurrentRange(context);
  return knownLimit({
    low: 1.6 * upper.low * (1 - practiceSpread),
    high: 1.6 * upper.high * (1 + practiceSpread),
    unit: 'A',
    source: commonPractice('1.6 times the normal cranking current by fuel and displacement'),
  });
}
