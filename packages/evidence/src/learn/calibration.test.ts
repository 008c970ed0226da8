import { describe, expect, test } from 'vitest';
import { brierScore, logScore, reliabilityDiagram, reliabilityTable } from '../index.ts';

describe('a forecast of .7 .2 .1', () => {
  const forecast = [0.7, 0.2, 0.1];

  test('of which the first came true has a Brier score of .14 (worked by hand: .09 + .04 + .01)', () => {
    expect(brierScore(forecast, 0)).toBeCloseTo(0.14, 12);
  });

  test('of which the first came true has a log score of .356675 (worked by hand: -ln .7)', () => {
    expect(logScore(forecast, 0)).toBeCloseTo(0.356675, 6);
  });

  test('of which the last came true scores worse (worked by hand: .49 + .04 + .81, -ln .1)', () => {
    expect(brierScore(forecast, 2)).toBeCloseTo(1.34, 12);
    expect(logScore(forecast, 2)).toBeCloseTo(Math.LN10, 12);
  });
});

test('certainty scores 0 when right; when wrong the most, and without end', () => {
  expect([brierScore([1, 0], 0), logScore([1, 0], 0)]).toEqual([0, 0]);
  expect([brierScore([1, 0], 1), logScore([1, 0], 1)]).toEqual([2, Number.POSITIVE_INFINITY]);
});

test.each([
  ['one that does not sum to 1', [0.7, 0.2], 0, 'not-a-distribution'],
  ['a probability above 1', [1.2, -0.2], 0, 'out-of-range'],
  ['no number', [Number.NaN, 1], 0, 'out-of-range'],
  ['a class that it does not have', [0.7, 0.3], 2, 'out-of-range'],
  ['half a class', [0.7, 0.3], 0.5, 'out-of-range'],
])('a forecast is refused for %s', (_, forecast, came, code) => {
  expect(() => brierScore(forecast, came)).toThrow(expect.objectContaining({ code }));
  expect(() => logScore(forecast, came)).toThrow(expect.objectContaining({ code }));
});

describe('a reliability table', () => {
  test('has for each tenth the mean said, how often it came true, and how many (by hand)', () => {
    const table = reliabilityTable([
      { probability: 0.72, came: true },
      { probability: 0.78, came: true },
      { probability: 0.75, came: false },
      { probability: 0.05, came: false },
    ]);
    expect(table).toHaveLength(10);
    expect(table[7]).toMatchObject({ from: 0.7, to: 0.8, count: 3, came: 2 });
    expect(table[7]?.meanForecast).toBeCloseTo(0.75, 12);
    expect(table[7]?.observedFrequency).toBeCloseTo(2 / 3, 12);
    expect(table[0]).toMatchObject({ count: 1, came: 0, meanForecast: 0.05, observedFrequency: 0 });
    expect(table[5]).toEqual({
      ...{ from: 0.5, to: 0.6, count: 0, came: 0 },
      ...{ meanForecast: null, observedFrequency: null },
    });
  });

  test.each([
    [0, 0],
    [0.0999, 0],
    [0.1, 1],
    [0.3, 3],
    [0.6, 6],
    [0.7, 7],
    [0.8999, 8],
    [0.9, 9],
    [1, 9],
  ])('puts %d into bin %d, a bound into the bin above it', (probability, bin) => {
    const table = reliabilityTable([{ probability, came: true }]);
    expect(table.findIndex(({ count }) => count === 1)).toBe(bin);
  });

  test('is refused for what is no probability', () => {
    expect(() => reliabilityTable([{ probability: 1.01, came: true }])).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});

describe('a reliability diagram', () => {
  const table = reliabilityTable([
    ...[true, true, true, false].map((came) => ({ probability: 0.85, came })),
    { probability: 0.32, came: true },
    { probability: 0.12, came: false },
  ]);

  test('is well-formed, whatever its title holds', () => {
    const drawn = reliabilityDiagram(table, 'A & B <script>"\u0007\ud800');
    expect(openElements(drawn)).toEqual([]);
    expect(drawn).toContain('A &amp; B &lt;script&gt;&quot;</title>');
    expect(drawn).not.toContain('<script');
  });

  test('has a title, and says in words what it shows', () => {
    const drawn = reliabilityDiagram(table, 'All cases');
    expect(drawn).toContain(
      'aria-labelledby="reliability-all-cases-title reliability-all-cases-words"',
    );
    expect(drawn).toContain('<title id="reliability-all-cases-title">All cases</title>');
    expect(drawn).toContain('Said 85 % on average: came true in 3 of 4.');
    expect(drawn).toContain('>6 confirmed cases<');
    expect(reliabilityDiagram(reliabilityTable([]), 'None')).toContain('There is no case yet.');
  });

  test('tells what came true more often from what came true less often by shape, not colour alone', () => {
    const drawn = reliabilityDiagram(table, 'All cases');
    const marks = (kind: string): number => drawn.split(`class="${kind}"`).length - 1;
    // One of each stands in the legend.
    expect(marks('rd-disc')).toBe(1 + 1);
    expect(marks('rd-square')).toBe(1 + 2);
  });

  test('places a mark by what was said and what came true (worked by hand)', () => {
    const drawn = reliabilityDiagram(table, 'All cases');
    expect(drawn).toContain('<circle class="rd-disc" cx="204" cy="84" r="7"');
    expect(drawn).toContain('<rect class="rd-square" x="409" y="177"');
  });
});

/** The elements left open, or what closes none: nothing in a text that is well formed. */
function openElements(markup: string): readonly string[] {
  const open: string[] = [];
  let rest = markup;
  for (const [tag, closing, name = '', selfClosing] of markup.matchAll(
    /<(\/?)([a-z]+)(?: [a-zA-Z\d-]+="[^"<]*")*(\/?)>/g,
  )) {
    rest = rest.replace(tag, '');
    if (closing === '/' && open.at(-1) === name) open.pop();
    else if (closing === '/') return [`</${name}>`];
    else if (selfClosing !== '/') open.push(name);
  }
  const stray = /[<>]/.exec(rest);
  return stray === null ? open : [...open, stray[0]];
}
