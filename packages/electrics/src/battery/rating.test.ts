import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { RatingStandard } from '../limits/limit-context.ts';
import { convertRating, loadTestCurrent, type LabelRating, type RatingRefusal } from './rating.ts';
import { ratingConversions } from '../tables/rating-conversions.ts';
import { ratingStandards, type RatingName, type RatingTest } from '../tables/rating-standards.ts';

function ratingTest(name: RatingName, edition?: string): RatingTest {
  const found = ratingStandards.rows.find(
    (row) => row.name === name && (edition === undefined || row.edition === edition),
  );
  if (found === undefined) throw new Error(name);
  return found;
}

function converted(ratingA: number, from: RatingName, to: RatingName): SourcedInterval {
  const result = convertRating(ratingA, from, to);
  if (result.type !== 'converted') throw new Error(result.reason);
  return result.current;
}

describe('the tests behind ratings', () => {
  test.each<readonly [RatingName, string | undefined, number, number, number]>([
    // SAE J537, a vehicle maker's service manual; the others by secondary texts.
    ['sae', undefined, -18, 30, 7.2],
    ['mca', undefined, 0, 30, 7.2],
    ['en', undefined, -18, 10, 7.5],
    ['din', undefined, -18, 30, 9],
    ['iec', 'older', -18, 60, 8.4],
    ['iec', '2018', -18, 30, 7.2],
    // From memory.
    ['hca', undefined, 26.7, 30, 7.2],
  ])('%s %s: at %d Cel the rated current for %d s leaves %d V', (name, edition, ...figures) => {
    const [temperature, seconds, limitV] = figures;
    const { lowC, highC, stages } = ratingTest(name, edition);
    expect([lowC, highC]).toEqual([temperature, temperature]);
    expect(stages[0]).toEqual({ load: { type: 'part', part: 1 }, seconds, limitV });
  });

  test('EN goes on after 10 s of rest with 0.6 of the current to 6.0 V for 73 s, from memory', () => {
    const second = ratingTest('en').stages[1];
    expect(second).toMatchObject({
      load: { type: 'part', part: 0.6 },
      seconds: 73,
      limitV: 6,
      restSecondsBefore: 10,
    });
    expect(second?.source?.provenance).toBe('from memory');
  });

  test('the two phases of EN are the 90 s of class C1, class C2 lasts 150 s', () => {
    const { stages, classes } = ratingTest('en');
    const [first, second] = stages;
    const counted = (first?.seconds ?? 0) / 0.6 + (second?.seconds ?? 0);
    expect(Math.round(counted)).toBe(classes?.C1);
    expect(classes).toEqual({ C1: 90, C2: 150 });
  });

  test('DIN 43539-2 goes on to 6.0 V, 150 s from the start', () => {
    expect(ratingTest('din').stages[1]).toMatchObject({
      load: { type: 'part', part: 1 },
      seconds: 150,
      limitV: 6,
      fromStart: true,
    });
  });

  test('JIS D 5301 loads with 150, 300 or 500 A by size at -15 Cel, from memory', () => {
    const { lowC, highC, stages, source } = ratingTest('jis');
    const load = { type: 'fixed', currentsA: [150, 300, 500] };
    expect([lowC, highC]).toEqual([-15, -15]);
    expect(stages).toEqual([
      { load, seconds: 30 },
      { load, limitV: 6, fromStart: true },
    ]);
    expect(source.provenance).toBe('from memory');
  });

  test('reserve capacity is the minutes of 25 A to 10.5 V at 27 Cel', () => {
    const { lowC, highC, stages } = ratingTest('reserve-capacity');
    expect([lowC, highC]).toEqual([27, 27]);
    expect(stages).toEqual([{ load: { type: 'fixed', currentsA: [25] }, limitV: 10.5 }]);
  });

  test('capacity is a twentieth of it for 20 h to 10.5 V at 25 to 27 Cel', () => {
    const { lowC, highC, stages } = ratingTest('capacity-20h');
    expect([lowC, highC]).toEqual([25, 27]);
    expect(stages).toEqual([{ load: { type: 'part', part: 0.05 }, seconds: 72_000, limitV: 10.5 }]);
  });

  test('no text of a standard itself was read', () => {
    const { rows } = ratingStandards;
    expect(
      rows.filter(({ source }) => source.provenance === 'published').map((r) => r.name),
    ).toEqual(['sae', 'reserve-capacity']);
    expect(ratingTest('sae').source.text).toContain('service manual');
    expect(ratingTest('iec', '2018').source.text).toContain('doubtful');
  });
});

describe('conversion of ratings', () => {
  test.each<readonly [RatingName, RatingName, number, number, number]>([
    // Marine training text: 1.3, back 0.77; the spread is common practice, no source.
    ['sae', 'mca', 1170, 1300, 1430],
    ['mca', 'sae', 699.3, 770, 854.7],
    // Common practice, no source.
    ['sae', 'en', 900, 1000, 1100],
    ['en', 'sae', 909.1, 1000, 1111.1],
    ['din', 'sae', 1500, 1650, 1800],
    ['sae', 'din', 555.6, 610, 666.7],
    ['iec', 'sae', 1100, 1250, 1400],
    ['sae', 'iec', 714.3, 800, 909.1],
    ['sae', 'sae', 1000, 1000, 1000],
  ])('1000 A from %s to %s are %d to %d to %d A', (from, to, ...figures) => {
    const { low, best, high, unit } = converted(1000, from, to);
    expect(low).toBeCloseTo(figures[0], 1);
    expect(best).toBeCloseTo(figures[1], 1);
    expect(high).toBeCloseTo(figures[2], 1);
    expect(unit).toBe('A');
  });

  test.each<readonly [string, RatingName, RatingName, number]>([
    // Published: marine training text 1.3 and 0.77; another text "one third higher".
    ['1.3', 'sae', 'mca', 1.3],
    ['one third higher', 'sae', 'mca', 4 / 3],
    ['0.77', 'mca', 'sae', 0.77],
    // Reported of web calculators (0.92); common practice, no source (0.94, 0.96).
    ['0.92', 'sae', 'en', 0.92],
    ['0.94', 'sae', 'en', 0.94],
    ['0.96', 'sae', 'en', 0.96],
    // Common practice, no source.
    ['1.7', 'din', 'sae', 1.7],
    ['1.2', 'iec', 'sae', 1.2],
    ['1.3', 'iec', 'sae', 1.3],
  ])('the factor %s from %s to %s is within the interval', (_, from, to, factor) => {
    const { low, high } = converted(500, from, to);
    expect(low).toBeLessThan(500 * factor);
    expect(high).toBeGreaterThan(500 * factor);
  });

  test.each([135, 200, 300, 500])(
    'DIN %d A times 1.5 and 40 A more is within: common practice',
    (din) => {
      const { low, high } = converted(din, 'din', 'sae');
      expect(low).toBeLessThan(1.5 * din + 40);
      expect(high).toBeGreaterThan(1.5 * din + 40);
    },
  );

  test('only the marine factor is published', () => {
    expect(converted(600, 'sae', 'mca').source.provenance).toBe('published');
    expect(converted(600, 'en', 'sae').source.provenance).toBe('common practice');
    expect(converted(300, 'din', 'sae').source.provenance).toBe('common practice');
    expect(converted(300, 'iec', 'sae').source.provenance).toBe('common practice');
  });

  test.each<readonly [RatingName, RatingName, RatingRefusal]>([
    ['jis', 'sae', 'tested-by-size'],
    ['en', 'jis', 'tested-by-size'],
    ['reserve-capacity', 'sae', 'not-a-current'],
    ['sae', 'reserve-capacity', 'not-a-current'],
    ['capacity-20h', 'en', 'not-a-current'],
    ['reserve-capacity', 'reserve-capacity', 'not-a-current'],
    ['hca', 'sae', 'no-factor-known'],
    ['en', 'din', 'factors-contradict'],
    ['din', 'en', 'factors-contradict'],
    ['mca', 'en', 'factors-contradict'],
    ['iec', 'din', 'factors-contradict'],
  ])('from %s to %s is refused: %s', (from, to, reason) => {
    expect(convertRating(600, from, to)).toEqual({ type: 'refused', reason });
  });

  test('the table says why factors are not chained: 1.7 and 0.92 of one calculator exclude each other', () => {
    const { low, high } = converted(1000, 'en', 'sae');
    expect(1000 * 1.7).toBeGreaterThan(high);
    expect(1000 / 0.92).toBeGreaterThan(low);
    expect(1000 / 0.92).toBeLessThan(high);
  });

  test.each([0, -600, NaN, Infinity])('%d A is no rating', (ratingA) => {
    expect(() => convertRating(ratingA, 'sae', 'en')).toThrow('value-out-of-range');
  });

  test('there and back from anywhere in the interval holds the figure that one began with', () => {
    const pairs = ratingConversions.rows.flatMap(({ from, to }) => [
      [from, to] as const,
      [to, from] as const,
    ]);
    const rating = fc.double({ min: 100, max: 1500, noNaN: true });
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...pairs), rating, place, ([from, to], ratingA, where) => {
        const there = converted(ratingA, from, to);
        for (const figure of [there.best, there.low + where * (there.high - there.low)]) {
          const back = converted(figure, to, from);
          expect(back.low).toBeLessThanOrEqual(back.best);
          expect(back.best).toBeLessThanOrEqual(back.high);
          expect(back.low).toBeLessThanOrEqual(ratingA * (1 + 1e-12));
          expect(back.high).toBeGreaterThanOrEqual(ratingA * (1 - 1e-12));
        }
      }),
    );
  });
});

describe('the current of the load test', () => {
  function load(rating: LabelRating): SourcedInterval {
    const result = loadTestCurrent(rating);
    if (result.type !== 'load') throw new Error(result.reason);
    return result.current;
  }

  test.each([
    // A vehicle maker's service manual, its table of loads.
    [600, 300],
    [625, 310],
    [750, 370],
    [770, 380],
  ])('a label of %d A is loaded with %d A', (crankingA, amperes) => {
    for (const standard of ['sae', 'en'] as const) {
      const { low, best, high, source } = load({ crankingA, standard });
      expect([low, best, high]).toEqual([amperes, amperes, amperes]);
      expect(source.provenance).toBe('published');
    }
  });

  test.each([
    // A vehicle maker's service manual: three times the capacity over 20 h.
    [60, 180],
    [75, 220],
    [100, 300],
  ])('%d Ah without a cranking rating are loaded with %d A', (capacityAh, amperes) => {
    const { low, best, high } = load({ capacityAh });
    expect([low, best, high]).toEqual([amperes, amperes, amperes]);
  });

  test.each<readonly [RatingStandard, number, readonly number[]]>([
    // By the factors above, halved and rounded down to 10 A.
    ['mca', 1000, [340, 380, 420]],
    ['din', 300, [220, 240, 270]],
    ['iec', 400, [220, 250, 280]],
    // 490 A exactly, which falls short of itself by the last bit.
    ['iec', 700, [380, 430, 490]],
  ])('%s %d A is loaded with an interval', (standard, crankingA, amperes) => {
    const { low, best, high, source } = load({ crankingA, standard });
    expect([low, best, high]).toEqual(amperes);
    expect(source.provenance).toBe('computed');
    expect(source.text).toContain('half of the cold-cranking current; ');
  });

  test('JIS gives no current to load with', () => {
    expect(loadTestCurrent({ crankingA: 400, standard: 'jis' })).toEqual({
      type: 'refused',
      reason: 'tested-by-size',
    });
  });

  test.each<readonly [string, LabelRating]>([
    ['49 A', { crankingA: 49, standard: 'sae' }],
    ['no number', { crankingA: NaN, standard: 'sae' }],
    ['9 Ah', { capacityAh: 9 }],
    ['no end of Ah', { capacityAh: Infinity }],
  ])('%s is refused', (_, rating) => {
    expect(() => loadTestCurrent(rating)).toThrow('value-out-of-range');
  });
});
