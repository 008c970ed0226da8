import { sharpBound } from '../conformance/bound.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { commonPractice } from '../source.ts';

/** Below it the air is freezing: 0 Cel. */
export function temperatureFreezing(): LimitResult {
  return knownLimit(
    sharpBound(0, 'Cel', commonPractice('frost, from which batteries fail more often')),
  );
}

/** Below it the air is mild, from it on warm: 15 Cel, where diesels start without glowing. */
export function temperatureMild(): LimitResult {
  return knownLimit(
    sharpBound(15, 'Cel', commonPractice('from it on cold hinders neither battery nor engine')),
  );
}
