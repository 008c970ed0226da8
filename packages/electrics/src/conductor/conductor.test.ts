import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  conductorResistance,
  copperResistance,
  type Conductor,
  type ConductorMake,
} from './conductor.ts';

/** Every make, each with the construction that it may have. */
const makes: readonly ConductorMake[] = [
  {},
  { material: 'copper', construction: 'solid' },
  { construction: 'stranded' },
  { construction: 'class-2' },
  { construction: 'class-5' },
  { material: 'tinned-copper' },
  { material: 'aluminium' },
  { material: 'aluminium', construction: 'solid' },
];

describe('solid copper at 20 Cel has the resistance of the wire tables', () => {
  // Ohm/km computed from the International Annealed Copper Standard; ohm per 1000 ft is the column
  // of a printed handbook table, which NBS Handbook 100 has as well (from memory).
  test.each([
    ['4/0', -3, 0.1608, 4, 0.049, 4],
    ['3/0', -2, 0.2028, 4, 0.0618, 4],
    ['2/0', -1, 0.2557, 4, 0.0779, 4],
    ['1/0', 0, 0.3224, 4, 0.0983, 4],
    ['1', 1, 0.4066, 4, 0.1239, 4],
    ['2', 2, 0.5127, 4, 0.1563, 4],
    ['4', 4, 0.8152, 4, 0.2485, 4],
    ['6', 6, 1.2961, 4, 0.3951, 4],
    ['8', 8, 2.0609, 4, 0.6282, 4],
    ['12', 12, 5.211, 3, 1.588, 3],
    ['14', 14, 8.285, 3, 2.525, 3],
    ['16', 16, 13.17, 2, 4.016, 3],
    ['18', 18, 20.95, 2, 6.385, 3],
  ])('AWG %s', (_, awg, perKm, digits, perThousandFeet, digitsInFeet) => {
    const ohms = (lengthM: number): number => copperResistance({ awg, lengthM }).value / 1000;
    expect(ohms(1000)).toBeCloseTo(perKm, digits);
    // AWG 16 comes to 4.0155, which is printed as 4.016.
    const difference = Math.abs(ohms(304.8) - perThousandFeet);
    expect(difference).toBeLessThan(0.51 * 10 ** -digitsInFeet);
  });

  test('AWG 10 comes to 0.9988 ohm per 1000 ft, where the handbook prints 0.9989', () => {
    const { value } = copperResistance({ awg: 10, lengthM: 304.8 });
    expect(value / 1000).toBeCloseTo(0.9988, 4);
    expect(Math.abs(value / 1000 - 0.9989)).toBeLessThan(0.000_11);
    expect(copperResistance({ awg: 10, lengthM: 1000 }).value / 1000).toBeCloseTo(3.277, 4);
  });

  test('1 m of 1 mm2 has 1/58 ohm (Industrial Power Engineering Handbook p. 970)', () => {
    const { value, unit } = copperResistance({ areaMm2: 1, lengthM: 1 });
    expect(unit).toBe('mOhm');
    expect(value).toBeCloseTo(1000 / 58, 2);
  });

  test('a wire 1 % thicker or thinner lies between its ends (ASTM B3, from memory)', () => {
    const wire = { lengthM: 1, construction: 'solid' } as const;
    const { low, high } = conductorResistance({ ...wire, areaMm2: 10 });
    const thick = copperResistance({ areaMm2: 10 * 1.01 ** 2, lengthM: 1 }).value;
    const thin = copperResistance({ areaMm2: 10 * 0.99 ** 2, lengthM: 1 }).value;
    expect(low / thick).toBeCloseTo(1, 3);
    expect(high / thin).toBeCloseTo(1, 3);
  });
});

describe('the greatest resistance is that of IEC 60228, as reprints report it', () => {
  test.each([
    [10, 1.83, 1.91, 1.95],
    [16, 1.15, 1.21, 1.24],
    [25, 0.727, 0.78, 0.795],
    [35, 0.524, 0.554, 0.565],
    [50, 0.387, 0.386, 0.393],
    [70, 0.268, 0.272, 0.277],
    [95, 0.193, 0.206, 0.21],
  ])(
    '%d mm2: class 2 %d, class 5 %d, tinned %d ohm/km',
    (areaMm2, class2, class5, class5Tinned) => {
      const perKm = (make: ConductorMake): number =>
        conductorResistance({ areaMm2, lengthM: 1, ...make }).high;
      expect(perKm({ construction: 'class-2' })).toBe(class2);
      expect(perKm({ construction: 'class-5' })).toBe(class5);
      expect(perKm({ material: 'tinned-copper' })).toBe(class5Tinned);
      expect(perKm({})).toBe(class5);
    },
  );

  test('a real cable has up to 5 % less (common practice, no source)', () => {
    const { low, best, high, source } = conductorResistance({ areaMm2: 25, lengthM: 1 });
    expect(low / high).toBeCloseTo(0.95, 9);
    expect(best).toBeCloseTo((low + high) / 2, 9);
    expect(source).toMatchObject({ provenance: 'computed' });
    expect(source.text).toMatch(/IEC 60228.*common practice/);
  });

  test('a size between two listed ones lies between them', () => {
    const greatest = (areaMm2: number): number => conductorResistance({ areaMm2, lengthM: 1 }).high;
    expect(greatest(30)).toBeGreaterThan(0.554);
    expect(greatest(30)).toBeLessThan(0.78);
  });

  test.each([
    ['below 10 mm2', 5, 1.91 * 2],
    ['above 95 mm2', 190, 0.206 / 2],
  ])('%s it goes by the area', (_, areaMm2, perKm) => {
    expect(conductorResistance({ areaMm2, lengthM: 1 }).high).toBeCloseTo(perKm, 9);
  });
});

describe('other conductors', () => {
  test('a strand has 2 % more than solid copper (common practice, no source)', () => {
    const stranded = conductorResistance({ awg: 2, lengthM: 1, construction: 'stranded' });
    const solid = copperResistance({ awg: 2, lengthM: 1 }).value;
    expect(stranded.best / solid).toBeCloseTo(1.02, 9);
    expect(stranded.low / solid).toBeCloseTo(1, 9);
    expect(stranded.high / solid).toBeCloseTo(1.04, 9);
  });

  test('1 m of 1 mm2 of aluminium has 28.264 mOhm (IEC 60889, from memory)', () => {
    const { best } = conductorResistance({
      areaMm2: 1,
      lengthM: 1,
      material: 'aluminium',
      construction: 'solid',
    });
    expect(best).toBeCloseTo(28.264, 3);
  });

  test('aluminium wants 1.6 times the area of copper (common practice)', () => {
    const stranded = { lengthM: 1, construction: 'stranded' } as const;
    const aluminium = conductorResistance({ ...stranded, areaMm2: 16.4, material: 'aluminium' });
    expect(aluminium.best / conductorResistance({ ...stranded, areaMm2: 10 }).best).toBeCloseTo(
      1,
      2,
    );
  });
});

describe('by temperature', () => {
  // Copper: 0.00393 per kelvin at 20 Cel (Industrial Power Engineering Handbook p. 970). Aluminium:
  // 0.00403 (from memory).
  test.each([
    ['copper', -18, 0.851],
    ['copper', 20, 1],
    ['copper', 80, 1.236],
    ['tinned-copper', 80, 1.236],
    ['aluminium', -18, 0.847],
    ['aluminium', 80, 1.242],
  ] as const)('%s at %d Cel has %d of its resistance at 20 Cel', (material, temperatureC, part) => {
    const run = { areaMm2: 25, lengthM: 1, material };
    const warm = conductorResistance(run).best;
    expect(conductorResistance({ ...run, temperatureC }).best / warm).toBeCloseTo(part, 3);
  });
});

describe('of two conductors', () => {
  const make = fc.constantFrom(...makes);
  const areaMm2 = fc.double({ min: 0.5, max: 300, noNaN: true });
  const lengthM = fc.double({ min: 0.01, max: 50, noNaN: true });
  const temperatureC = fc.double({ min: -60, max: 200, noNaN: true });
  const strands = fc.integer({ min: 1, max: 6 });
  const conductor: fc.Arbitrary<Conductor> = fc
    .record({ make, areaMm2, lengthM, temperatureC, strands })
    .map(({ make: made, ...run }) => ({ ...run, ...made }));

  test.each([
    ['longer', 'lengthM', lengthM, 1],
    ['thinner', 'areaMm2', areaMm2, -1],
    ['hotter', 'temperatureC', temperatureC, 1],
  ] as const)('the %s never has less resistance', (_, name, values, sign) => {
    fc.assert(
      fc.property(conductor, values, values, (piece, a, b) => {
        const [better, worse] = a * sign < b * sign ? [a, b] : [b, a];
        const less = conductorResistance({ ...piece, [name]: better });
        const more = conductorResistance({ ...piece, [name]: worse });
        expect(more.low).toBeGreaterThanOrEqual(less.low * (1 - 1e-12));
        expect(more.best).toBeGreaterThanOrEqual(less.best * (1 - 1e-12));
        expect(more.high).toBeGreaterThanOrEqual(less.high * (1 - 1e-12));
      }),
      { numRuns: 1000 },
    );
  });

  test('the one of a higher AWG number never has less resistance', () => {
    const awg = fc.integer({ min: -3, max: 40 });
    fc.assert(
      fc.property(make, awg, awg, (made, a, b) => {
        const of = (number: number): number =>
          conductorResistance({ lengthM: 1, awg: number, ...made }).best;
        expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)));
      }),
    );
  });

  test('n equal ones in parallel have 1/n of the resistance', () => {
    fc.assert(
      fc.property(conductor, fc.integer({ min: 1, max: 12 }), (piece, count) => {
        const single = conductorResistance({ ...piece, strands: 1 });
        const several = conductorResistance({ ...piece, strands: count });
        expect((several.best * count) / single.best).toBeCloseTo(1, 12);
        expect((several.high * count) / single.high).toBeCloseTo(1, 12);
      }),
    );
  });

  test('every one has its ends in order', () => {
    fc.assert(
      fc.property(conductor, (piece) => {
        const { low, best, high } = conductorResistance(piece);
        expect(low).toBeGreaterThan(0);
        expect(best).toBeGreaterThan(low);
        expect(high).toBeGreaterThan(best);
      }),
    );
  });
});

test.each<readonly [string, Conductor]>([
  ['no area', { areaMm2: 0, lengthM: 1 }],
  ['an area that is no number', { areaMm2: NaN, lengthM: 1 }],
  ['no length', { areaMm2: 25, lengthM: 0 }],
  ['an endless length', { areaMm2: 25, lengthM: Infinity }],
  ['copper below -60 Cel', { areaMm2: 25, lengthM: 1, temperatureC: -61 }],
  ['copper above 200 Cel', { areaMm2: 25, lengthM: 1, temperatureC: 201 }],
  ['no temperature', { areaMm2: 25, lengthM: 1, temperatureC: NaN }],
  ['no strand', { areaMm2: 25, lengthM: 1, strands: 0 }],
  ['half a strand', { areaMm2: 25, lengthM: 1, strands: 1.5 }],
  ['an AWG number beyond 4/0', { awg: -4, lengthM: 1 }],
])('%s is refused', (_, conductor) => {
  expect(() => conductorResistance(conductor)).toThrow('value-out-of-range');
});
