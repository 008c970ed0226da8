import { assert, double, option, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Quantity } from '../quantity/quantity.ts';
import { circuitLosses, type LossyPart, type MeasuredCircuit } from './circuit-losses.ts';

/** Read with a meter that does not err. */
function exactly(value: number, unit: Quantity['unit']): Quantity {
  return { value, unit, meter: { percent: 0, digits: 0 } };
}

const slow: MeasuredCircuit = {
  rest: exactly(12.6, 'V'),
  crank: exactly(9.6, 'V'),
  positive: exactly(0.3, 'V'),
  ground: exactly(0.5, 'V'),
  contacts: exactly(0.2, 'V'),
  current: exactly(150, 'A'),
};

function lossOf(part: LossyPart, measured: MeasuredCircuit) {
  const found = circuitLosses(measured).losses.find((loss) => loss.part === part);
  if (found === undefined) throw new Error(`no loss of ${part}`);
  return found;
}

describe('12.6 V at rest, 9.6 V while cranking with 150 A, drops of 0.3, 0.5 and 0.2 V', () => {
  // By hand: 3.0 + 0.5 + 0.3 + 0.2 V are 4.0 V; each loss / 150 A is its resistance.
  test.each<readonly [LossyPart, number, number, number]>([
    ['battery', 3000, 20, 0.75],
    ['ground', 500, 10 / 3, 0.125],
    ['positive', 300, 2, 0.075],
    ['contacts', 200, 4 / 3, 0.05],
  ])('%s loses %f mV by %f mOhm, a share of %f', (part, millivolts, milliohms, share) => {
    const found = lossOf(part, slow);
    for (const [interval, best, unit] of [
      [found.loss, millivolts, 'mV'],
      [found.resistance, milliohms, 'mOhm'],
    ] as const) {
      expect(interval?.unit).toBe(unit);
      expect(interval?.low).toBeCloseTo(best, 9);
      expect(interval?.best).toBeCloseTo(best, 9);
      expect(interval?.high).toBeCloseTo(best, 9);
    }
    expect(found.share).toBeCloseTo(share, 12);
  });

  test('the greatest loss comes first', () => {
    const parts = circuitLosses(slow).losses.map(({ part }) => part);
    expect(parts).toEqual(['battery', 'ground', 'positive', 'contacts']);
  });

  test('8.6 V reach the motor', () => {
    const { atMotor } = circuitLosses(slow);
    expect(atMotor?.unit).toBe('V');
    expect(atMotor?.best).toBeCloseTo(8.6, 12);
    expect(atMotor?.low).toBeCloseTo(8.6, 12);
    expect(atMotor?.high).toBeCloseTo(8.6, 12);
  });

  test('is the same in mV and mA', () => {
    const inSmallUnits: MeasuredCircuit = {
      rest: exactly(12_600, 'mV'),
      crank: exactly(9600, 'mV'),
      positive: exactly(300, 'mV'),
      ground: exactly(500, 'mV'),
      contacts: exactly(200, 'mV'),
      current: exactly(150_000, 'mA'),
    };
    const found = circuitLosses(inSmallUnits);
    for (const [index, one] of circuitLosses(slow).losses.entries()) {
      expect(found.losses[index]?.part).toBe(one.part);
      expect(found.losses[index]?.loss.best).toBeCloseTo(one.loss.best, 9);
      expect(found.losses[index]?.resistance?.best).toBeCloseTo(one.resistance?.best ?? NaN, 9);
    }
    expect(found.atMotor?.best).toBeCloseTo(8.6, 9);
  });

  test('a bad ground outweighs a sound battery', () => {
    // 0.9 V of 1.5 V: 60 %.
    const found = circuitLosses({
      rest: exactly(12.6, 'V'),
      crank: exactly(12.2, 'V'),
      positive: exactly(0.2, 'V'),
      ground: exactly(0.9, 'V'),
    });
    expect(found.losses[0]).toMatchObject({ part: 'ground' });
    expect(found.losses[0]?.share).toBeCloseTo(0.6, 12);
  });
});

describe('the ends are two standard uncertainties away (JCGM 100:2008, 5.1.2 and 4.3.7)', () => {
  const onePercent = { percent: 1, digits: 0 };
  const read = (quantity: Quantity | undefined): Quantity => ({
    ...(quantity ?? exactly(0, 'V')),
    meter: onePercent,
  });
  const measured: MeasuredCircuit = {
    rest: read(slow.rest),
    crank: read(slow.crank),
    positive: read(slow.positive),
    ground: read(slow.ground),
    contacts: read(slow.contacts),
    current: read(slow.current),
  };

  test('of a drop: ±1 % of 0.5 V are 5 mV, twice that over √3 is 5.77 mV', () => {
    const { low, best, high } = lossOf('ground', measured).loss;
    expect(best - low).toBeCloseTo(5.7735, 4);
    expect(high - best).toBeCloseTo(5.7735, 4);
  });

  test('of a drop read in mV: the same', () => {
    const { low, best } = lossOf('ground', { ground: read(exactly(500, 'mV')) }).loss;
    expect(best - low).toBeCloseTo(5.7735, 4);
  });

  test('of the battery: √(0.126² + 0.096²) V are 0.1584 V, twice that over √3 is 182.9 mV', () => {
    const { low, best, high } = lossOf('battery', measured).loss;
    expect(best - low).toBeCloseTo(182.91, 2);
    expect(high - best).toBeCloseTo(182.91, 2);
  });

  test('of a resistance: the parts of drop and current add as squares', () => {
    // 3.333 mOhm × 2 × 0.01/√3 × √2
    const { low, best, high } = lossOf('ground', measured).resistance ?? {};
    expect(best! - low!).toBeCloseTo(0.054_433, 6);
    expect(high! - best!).toBeCloseTo(0.054_433, 6);
  });

  test('of what reaches the motor: all four voltages', () => {
    // 2/√3 × √(96² + 3² + 5² + 2²) mV
    const { low, best, high } = circuitLosses(measured).atMotor ?? {};
    expect(best! - low!).toBeCloseTo(0.111_08, 5);
    expect(high! - best!).toBeCloseTo(0.111_08, 5);
  });

  test("are nearer with the user's finer meter: ±(0.1 % + 2 of 6000 counts), not ±(0.5 % + 2)", () => {
    const drop = { value: 0.3, unit: 'V', resolution: 0.001 } as const;
    const meter = { percent: 0.1, digits: 2, counts: 6000 };
    const usual = lossOf('positive', { positive: drop }).loss;
    const fine = lossOf('positive', { positive: { ...drop, meter } }).loss;
    // 2 × √((0.3 + 2)² / 3 + 1² / 12) mV, and (1.5 + 2)² in the place of it.
    expect(fine.high - fine.best).toBeCloseTo(2.7177, 3);
    expect(usual.high - usual.best).toBeCloseTo(4.0825, 3);
  });

  test('a resistance that may be none begins at 0', () => {
    const small = { value: 0.001, unit: 'V' } as const;
    const { low, best } = lossOf('positive', {
      positive: small,
      current: slow.current,
    }).resistance!;
    expect(low).toBe(0);
    expect(best).toBeGreaterThan(0);
  });
});

describe('a reading below 0 counts as no loss', () => {
  const offset = { ...slow, positive: exactly(-0.02, 'V') };

  test('it has no share, no resistance, and comes last', () => {
    const { losses } = circuitLosses(offset);
    expect(losses.at(-1)).toEqual({
      part: 'positive',
      loss: { low: 0, best: 0, high: 0, unit: 'mV' },
      resistance: { low: 0, best: 0, high: 0, unit: 'mOhm' },
      share: 0,
    });
    expect(losses.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test('it adds nothing to what reaches the motor', () => {
    expect(circuitLosses(offset).atMotor?.best).toBeCloseTo(9.6 - 0.5 - 0.2, 12);
  });

  test('a battery that reads more while cranking than at rest has lost nothing', () => {
    const rising = { ...slow, rest: exactly(12.4, 'V'), crank: exactly(12.45, 'V') };
    expect(lossOf('battery', rising)).toMatchObject({ loss: { best: 0 }, share: 0 });
  });
});

describe('what was not measured', () => {
  test('leaves nothing to tell', () => {
    expect(circuitLosses({})).toEqual({ losses: [] });
    expect(circuitLosses({ current: exactly(150, 'A') })).toEqual({ losses: [] });
  });

  test.each([
    ['rest', { ...slow, rest: undefined }],
    ['crank', { ...slow, crank: undefined }],
  ])('without %s nothing is said of the battery', (_, measured) => {
    expect(circuitLosses(measured).losses.map(({ part }) => part)).toEqual([
      'ground',
      'positive',
      'contacts',
    ]);
  });

  test('without a current there are no resistances', () => {
    for (const loss of circuitLosses({ ...slow, current: undefined }).losses) {
      expect(loss).not.toHaveProperty('resistance');
    }
  });

  test.each(['crank', 'positive', 'ground', 'contacts'] as const)(
    'without %s nobody knows what reaches the motor',
    (missing) => {
      expect(circuitLosses({ ...slow, [missing]: undefined })).not.toHaveProperty('atMotor');
    },
  );

  test('the rest voltage is not wanted for what reaches the motor', () => {
    expect(circuitLosses({ ...slow, rest: undefined }).atMotor?.best).toBeCloseTo(8.6, 12);
  });

  test('where nothing is lost nothing has a share', () => {
    const { losses } = circuitLosses({ positive: exactly(0, 'V'), ground: exactly(0, 'V') });
    expect(losses.map(({ share }) => share)).toEqual([0, 0]);
  });
});

describe('misuse', () => {
  test.each([0, -150, NaN])('a current of %d A is refused', (value) => {
    const measured = { ...slow, current: exactly(value, 'A') };
    expect(() => circuitLosses(measured)).toThrow('value-out-of-range');
  });

  test('volts as current, and amperes as a drop, are refused', () => {
    expect(() => circuitLosses({ ...slow, current: exactly(150, 'V') })).toThrow('unit-mismatch');
    expect(() => circuitLosses({ ...slow, ground: exactly(5, 'A') })).toThrow('unit-mismatch');
  });

  test('a drop that is no number is refused', () => {
    expect(() => circuitLosses({ ...slow, ground: exactly(NaN, 'V') })).toThrow('value-not-finite');
  });
});

test('of whatever was measured the shares are 1 together and every interval has its ends in order', () => {
  const volts = (min: number, max: number) =>
    option(
      double({ min, max, noNaN: true }).map((value): Quantity => ({ value, unit: 'V' })),
      { nil: undefined },
    );
  const measured = record({
    rest: volts(8, 14),
    crank: volts(0, 13),
    positive: volts(-0.2, 13),
    ground: volts(-0.2, 13),
    contacts: volts(-0.2, 13),
    current: option(
      double({ min: 1, max: 900, noNaN: true }).map((value): Quantity => ({ value, unit: 'A' })),
      { nil: undefined },
    ),
  });
  assert(
    property(measured, (one) => {
      const { losses } = circuitLosses(one);
      const shares = losses.map(({ share }) => share);
      expect(shares).toEqual(shares.toSorted((a, b) => b - a));
      const isLost = losses.some(({ loss }) => loss.best > 0);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(isLost ? 1 : 0, 12);
      for (const { loss, resistance } of losses) {
        for (const { low, best, high } of [
          loss,
          ...(resistance === undefined ? [] : [resistance]),
        ]) {
          expect(low).toBeLessThanOrEqual(best);
          expect(best).toBeLessThanOrEqual(high);
          expect(best).toBeGreaterThanOrEqual(0);
        }
      }
    }),
  );
});
