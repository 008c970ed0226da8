import { sharpBound } from '../conformance/bound.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { commonPractice } from '../source.ts';

const wearByAge = commonPractice(
  'batteries are seldom worn before 2 years and often from 5 years on',
);

/** Below it a battery is new: 2 years. */
export function ageNew(): LimitResult {
  return knownLimit(sharpBound(2, 'a', wearByAge));
}

/** Below it a battery is of middle age, from it on its age alone can have worn it: 5 years. */
export function ageMiddle(): LimitResult {
  return knownLimit(sharpBound(5, 'a', wearByAge));
}
