import { sharpBound, type Bound } from '../conformance/bound.ts';
import { commonPractice, published } from '../source.ts';
import type { LimitContext } from './limit-context.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';

/** Below it the bench sags too far to judge a starter by: 11.0 V at the part; at 24 V 20 V. */
export function freeRunSupply({ nominal }: LimitContext): LimitResult {
  return knownLimit(
    nominal === 24
      ? sharpBound(20, 'V', published('TM 9-4940-568-34 p. 5-157; TM 5-3810-303-24, Table 10D-1'))
      : sharpBound(11, 'V', published("a vehicle maker's service manual, starter free running")),
  );
}

/** Below it nothing is drawn: 5 A, more than the offset of a clamp meter. */
export function freeRunNone(): LimitResult {
  return knownLimit(sharpBound(5, 'A', commonPractice('more than a clamp meter shows of nothing')));
}

/** Below it too little is drawn: 30 A. */
export function freeRunLow(): LimitResult {
  return knownLimit(
    sharpBound(30, 'A', commonPractice('starters draw 50 A and more running free')),
  );
}

/** How far round its bound the current is borderline: benches, leads and clamps differ. */
const currentSpread = 10;

/**
 * Above it too much is drawn: 95 A of a car's starter, 130 A of a heavy one, 110 A at 24 V, each a
 * zone of ±10 A; between the first two where the class is not known.
 */
export function freeRunHigh({ nominal, starterClass }: LimitContext): LimitResult {
  if (nominal === 24) return knownLimit(currentZone(110, 110, 'TM 5-3810-303-24, Table 10D-1'));
  const car = {
    amperes: 95,
    text: "a vehicle maker's service manual: 90 A, and 5 A for the bench",
  };
  const heavy = { amperes: 130, text: 'TM 5-3895-382-24, starting motor specifications' };
  if (starterClass === undefined) {
    return knownLimit(currentZone(car.amperes, heavy.amperes, `${car.text}; heavy: ${heavy.text}`));
  }
  const { amperes, text } = starterClass === 'car' ? car : heavy;
  return knownLimit(currentZone(amperes, amperes, text));
}

function currentZone(low: number, high: number, text: string): Bound {
  return {
    low: low - currentSpread,
    high: high + currentSpread,
    unit: 'A',
    source: published(text),
  };
}

/** Below it the pinion turns too slowly: 2500 /min geared, 5500 /min direct; a zone if not known. */
export function freeRunSpeed({ starterBuild }: LimitContext): LimitResult {
  const source = commonPractice('2500 to 3500 rpm geared, 6000 rpm and more direct');
  const [geared, direct] = [2500, 5500];
  return knownLimit({
    low: starterBuild === 'direct' ? direct : geared,
    high: starterBuild === 'geared' ? geared : direct,
    unit: '/min',
    source,
  });
}
