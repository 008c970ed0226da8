import { sharpBound } from '../conformance/bound.ts';
import { commonPractice, published } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';

/** Below it, leads the right way round, a battery was charged backwards: 0 V. */
export function receivedReversed(): LimitResult {
  return knownLimit(sharpBound(0, 'V', commonPractice('plus reads below minus')));
}

/** Below it a battery was discharged so deeply that it is harmed: 10.5 V. */
export function receivedDeep(): LimitResult {
  return knownLimit(sharpBound(10.5, 'V', published('TM 9-6140-200-14: deep-discharge damage')));
}

const counterTemperature = commonPractice('batteries are judged between freezing and 45 °C');

/** Below it a battery is too cold to be judged: 0 Cel. */
export function caseCold(): LimitResult {
  return knownLimit(sharpBound(0, 'Cel', counterTemperature));
}

/** Above it a battery is too hot to be judged: 45 Cel. */
export function caseHot(): LimitResult {
  return knownLimit(sharpBound(45, 'Cel', counterTemperature));
}

/** Up to this difference of density between cells they are even: 0.025. */
export function cellsEven(): LimitResult {
  return knownLimit(sharpBound(0.025, '1', published('TM 9-6140-200-14 (1998)')));
}

/** Up to this difference a battery is charged and read again, above it is replaced: 0.050. */
export function cellsRecheck(): LimitResult {
  return knownLimit(sharpBound(0.05, '1', published('TM 5-3805-281-24-2; TM 5-3740-214-14')));
}

/** Up to it a battery stands well, 24 to 72 h after its charge and off the vehicle: 0.10 V. */
export function standLoss(): LimitResult {
  const source = commonPractice('what the surface charge leaves in one to three days');
  return knownLimit(sharpBound(0.1, 'V', source));
}
