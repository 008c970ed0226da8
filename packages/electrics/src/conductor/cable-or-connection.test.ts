import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cableOrConnection, type MeasuredCable } from './cable-or-connection.ts';
import { conductorResistance } from './conductor.ts';

const conductor = { areaMm2: 25, lengthM: 1.5, temperatureC: 20 };

function measured(volts: number, resolution: number = 0.001): MeasuredCable {
  return { measuredDrop: { value: volts, unit: 'V', resolution }, currentA: 200, conductor };
}

describe('a drop over 1.5 m of 25 mm2 at 200 A, of which the cable itself has 0.222 to 0.234 V', () => {
  // The cable after IEC 60228 class 5 less up to 5 %; what a connection may add, a tenth of the
  // cable and 0.1 mOhm at least, is common practice, no source.
  test.each([
    [0.1, 'cannot-tell', 'less-than-the-cable'],
    [0.185, 'cannot-tell', 'less-than-the-cable'],
    [0.21, 'cable', undefined],
    [0.222, 'cable', undefined],
    [0.234, 'cable', undefined],
    [0.25, 'cannot-tell', 'too-near'],
    [0.28, 'connection', undefined],
    [0.834, 'connection', undefined],
    [12.4, 'connection', undefined],
  ])('%d V: %s', (volts, verdict, reason) => {
    const result = cableOrConnection(measured(volts));
    expect(result.verdict).toBe(verdict);
    expect(result.verdict === 'cannot-tell' ? result.reason : undefined).toBe(reason);
  });

  test('a loose joint of 3 mOhm adds 600 mV, and is found as such', () => {
    const { verdict, probability, cable, connection } = cableOrConnection(
      measured(conductorResistance(conductor).best * 0.2 + 0.6),
    );
    expect(verdict).toBe('connection');
    expect(probability).toBeGreaterThan(0.999);
    expect(connection.drop).toMatchObject({ unit: 'mV' });
    expect(connection.drop.best).toBeCloseTo(600, 6);
    expect(connection.resistance).toMatchObject({ unit: 'mOhm' });
    expect(connection.resistance.best).toBeCloseTo(3, 9);
    expect(connection.resistance.low).toBeGreaterThan(2.7);
    expect(connection.resistance.high).toBeLessThan(3.3);
    expect(cable.drop.best).toBeCloseTo(228.15, 6);
    expect(cable.resistance.best).toBeCloseTo(1.14075, 9);
    expect(connection.share).toMatchObject({ unit: '%' });
    expect(connection.share.best).toBeCloseTo(72.45, 2);
    expect(cable.share.best + connection.share.best).toBeCloseTo(100, 9);
  });

  test('a drop where nothing flowed is no cable and no connection', () => {
    const { verdict, cable, connection } = cableOrConnection(measured(0));
    expect(verdict).toBe('cannot-tell');
    expect(cable.share.best).toBe(100);
    expect(connection.drop).toEqual({ low: 0, best: 0, high: 0, unit: 'mV' });
  });

  test('millivolts say the same as volts', () => {
    const inMillivolts: MeasuredCable = {
      ...measured(0),
      measuredDrop: { value: 280, unit: 'mV', resolution: 1 },
    };
    const { probability } = cableOrConnection(measured(0.28));
    expect(cableOrConnection(inMillivolts).probability).toBeCloseTo(probability, 9);
  });
});

describe('what is less sure tells less', () => {
  test('a coarser display', () => {
    expect(cableOrConnection(measured(0.27)).verdict).toBe('connection');
    expect(cableOrConnection(measured(0.27, 0.1)).verdict).toBe('cannot-tell');
  });

  test('a temperature that nobody said: 0 to 40 Cel (common practice, no source)', () => {
    const unsaid = { ...measured(0.27), conductor: { areaMm2: 25, lengthM: 1.5 } };
    expect(cableOrConnection(unsaid).verdict).toBe('cannot-tell');
    const { low, high } = cableOrConnection(unsaid).cable.resistance;
    expect(high - low).toBeGreaterThan(0.1);
  });

  test('the standard uncertainty is that of JCGM 100:2008: a rectangle for cable and meters', () => {
    const { resistance } = cableOrConnection(measured(0.28)).connection;
    // ±(0.5 % + 2 mV) and the step of 1 mV; ±(2 % + 3 A); ±2.5 % of the cable.
    const meter = Math.hypot((1.4 + 2) / Math.sqrt(3), 1 / Math.sqrt(12)) / 200;
    const clamp = 1.4 * ((4 + 3) / Math.sqrt(3) / 200);
    const cable = (0.025 * 1.17) / Math.sqrt(3);
    const deviation = Math.hypot(meter, clamp, cable);
    expect((resistance.high - resistance.low) / 4).toBeCloseTo(deviation, 9);
  });
});

describe('whatever is measured', () => {
  const sound = fc.record({
    areaMm2: fc.constantFrom(16, 25, 35, 50, 70, 95),
    lengthM: fc.double({ min: 0.5, max: 5, noNaN: true }),
    temperatureC: fc.double({ min: -20, max: 80, noNaN: true }),
  });
  const currentA = fc.double({ min: 100, max: 600, noNaN: true });
  const part = fc.double({ min: 0, max: 1, noNaN: true });

  test('a sound cable without a connection is never blamed on one', () => {
    fc.assert(
      fc.property(sound, currentA, part, (piece, amperes, within) => {
        const { low, high } = conductorResistance(piece);
        const value = (low + (high - low) * within) * amperes;
        const { verdict, probability } = cableOrConnection({
          measuredDrop: { value, unit: 'mV', resolution: 1 },
          currentA: amperes,
          conductor: piece,
        });
        expect(verdict).not.toBe('connection');
        expect(probability).toBeLessThan(0.3);
      }),
    );
  });

  test('a connection of as much as the cable, and 0.5 mOhm at least, is found', () => {
    fc.assert(
      fc.property(sound, currentA, (piece, amperes) => {
        const { best } = conductorResistance(piece);
        const { verdict } = cableOrConnection({
          measuredDrop: {
            value: (best + Math.max(best, 0.5)) * amperes,
            unit: 'mV',
            resolution: 1,
          },
          currentA: amperes,
          conductor: piece,
        });
        expect(verdict).toBe('connection');
      }),
    );
  });

  test('more drop makes a connection likelier, and every interval has its ends in order', () => {
    const drop = fc.double({ min: -0.1, max: 13, noNaN: true });
    fc.assert(
      fc.property(sound, drop, drop, (piece, a, b) => {
        const of = (value: number): ReturnType<typeof cableOrConnection> =>
          cableOrConnection({
            measuredDrop: { value, unit: 'V', resolution: 0.01 },
            currentA: 200,
            conductor: piece,
          });
        const [less, more] = [of(Math.min(a, b)), of(Math.max(a, b))];
        expect(more.probability).toBeGreaterThanOrEqual(less.probability - 1e-12);
        for (const { drop: volts, resistance, share } of [more.cable, more.connection]) {
          for (const { low, best, high } of [volts, resistance, share]) {
            expect(low).toBeGreaterThanOrEqual(0);
            expect(low).toBeLessThanOrEqual(best);
            expect(best).toBeLessThanOrEqual(high);
          }
          expect(share.high).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
});

test('no current is refused', () => {
  expect(() => cableOrConnection({ ...measured(0.2), currentA: 0 })).toThrow('value-out-of-range');
});

test('amperes are no drop', () => {
  expect(() =>
    cableOrConnection({ ...measured(0.2), measuredDrop: { value: 1, unit: 'A' } }),
  ).toThrow('unit-mismatch');
});

test('a drop that is no number is refused', () => {
  expect(() => cableOrConnection(measured(NaN))).toThrow('value-not-finite');
});
