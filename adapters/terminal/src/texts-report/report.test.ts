import { describe, expect, test } from 'vitest';
import { flattenTexts } from './flat-texts.ts';
import { isComplete, madeFromNow, reportTexts } from './report.ts';

const english = flattenTexts({
  name: 'The vehicle will not start',
  checks: { dash: { how: ['Sit down.', 'Look.'], said: ['dim'] } },
  ranking: { heading_one: 'One', heading_other: '{{count}} of them' },
});

describe('a translation', () => {
  test('that has every text and was made from these is complete', () => {
    const own = flattenTexts({
      name: 'Das Fahrzeug springt nicht an',
      checks: { dash: { how: ['Setzen.', 'Sehen.'], said: ['dunkel', 'schwach'] } },
      ranking: { heading_one: 'Eins', heading_few: 'x', heading_other: '{{count}}' },
    });
    const report = reportTexts(english, own, madeFromNow(english));
    expect(report).toEqual({ missing: [], unused: [], overlong: [], changed: [] });
    expect(isComplete(report)).toBe(true);
  });

  test('is told what is missing, unused, overlong and changed since', () => {
    const own = flattenTexts({
      name: 'Ein Text, der sehr viel länger ist als der englische und darum nirgends mehr hinpasst',
      checks: { dash: { how: ['Setzen.'] } },
      old: 'x',
    });
    const before = new Map([...english, ['checks.dash.how.0', 'Stand up.']]);
    const report = reportTexts(english, own, madeFromNow(before));
    expect(report.missing).toContain('checks.dash.how.1');
    expect(report.unused).toEqual(['old']);
    expect(report.overlong).toEqual(['name']);
    expect(report.changed).toEqual(['checks.dash.how.0']);
    expect(isComplete(report)).toBe(false);
  });
});
