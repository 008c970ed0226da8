import { describe, expect, test } from 'vitest';
import { measure } from './measure.ts';
import { wrap } from './wrap.ts';

const setting = { size: 10, weight: 'regular' } as const;
const widthOf = (text: string): number => measure(text, setting);

describe('a text too wide for its room', () => {
  test.each([
    ['stays on one line where it fits', 'main fuse', 200, ['main fuse']],
    ['is broken between words', 'main fuse', 40, ['main', 'fuse']],
    [
      'is broken at a soft hyphen where a word is too wide',
      'Haupt\u00adsicherung',
      55,
      ['Haupt-', 'sicherung'],
    ],
    ['loses soft hyphens that are not needed', 'Haupt\u00adsicherung', 200, ['Hauptsicherung']],
    ['has no line where there is no text', '  ', 200, []],
  ])('%s', (_, text, width, lines) => {
    expect(wrap(text, width, setting)).toEqual(lines);
  });

  test('ends an isolate with its line, and opens it again', () => {
    expect(wrap('a \u2068main fuse\u2069 b', 40, setting)).toEqual([
      'a \u2068main\u2069',
      '\u2068fuse\u2069 b',
    ]);
  });

  test('is broken between letters where nothing else helps, and nothing is lost', () => {
    const lines = wrap('zusammengebrochen und mehr', 50, setting);
    expect(lines.join('').replaceAll(' ', '')).toBe('zusammengebrochenundmehr');
    for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(50);
  });
});
