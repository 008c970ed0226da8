import { expect, test } from 'vitest';
import { limit } from '../limits/limit.ts';
import { soundRestVoltages } from '../tables/sound-rest-voltage.ts';
import { soundRestVoltage } from './sound-rest-voltage.ts';

const { rested, recharged } = soundRestVoltages.rows;

test.each([
  ['battery.rest.full', 'rested'],
  ['battery.recharged.full', 'recharged'],
] as const)('a sound battery begins where %s does', (name, when) => {
  for (const technology of ['flooded', 'efb', 'agm', 'gel'] as const) {
    const result = limit(name, { technology, temperature: 20 });
    const { low } = soundRestVoltage(technology, when);
    expect(result.type === 'bound' && result.bound.low).toBe(low);
  }
});

test('flooded and efb are wet, agm and gel are sealed', () => {
  expect(soundRestVoltage('flooded')).toEqual(rested.wet);
  expect(soundRestVoltage('efb', 'recharged')).toEqual(recharged.wet);
  expect(soundRestVoltage('agm')).toEqual(rested.sealed);
  expect(soundRestVoltage('gel', 'recharged')).toEqual(recharged.sealed);
});

test('one of unknown kind reaches over both', () => {
  for (const when of ['rested', 'recharged'] as const) {
    const { wet, sealed } = soundRestVoltages.rows[when];
    expect(soundRestVoltage(undefined, when)).toEqual({
      low: wet.low,
      best: wet.best,
      high: sealed.high,
    });
    expect(wet.low).toBeLessThan(sealed.low);
  }
});

test('its figures are common practice, no source', () => {
  expect(soundRestVoltages.source.provenance).toBe('common practice');
});
