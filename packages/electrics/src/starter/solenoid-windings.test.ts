import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  windingCheck,
  windingResistance,
  type MeasuredWinding,
  type Winding,
} from './solenoid-windings.ts';
import {
  smallSolenoidWindings,
  solenoidWindings,
  windingPulseS,
  type SolenoidKind,
} from '../tables/solenoid-windings.ts';
import { startRelayCurrents } from '../tables/start-relay.ts';

describe('windings of solenoids', () => {
  test.each([
    // TM 5-2420-230-24-2 p. 13-33, published: four sizes at 10 V.
    [0, 69, 13],
    [1, 74, 19],
    [2, 97, 18],
    [3, 86, 15],
  ])('size %i: %d A together, %d A hold-in alone', (index, both, holdIn) => {
    const row = solenoidWindings.rows[index]!;
    expect(row).toMatchObject({
      kind: 'machine',
      voltageV: 10,
      bothA: { low: both, high: both },
      holdInA: { low: holdIn, high: holdIn },
    });
    expect(row.source.provenance).toBe('published');
    expect(row.source.text).toContain('TM 5-2420-230-24-2');
  });

  test("a car's: hold-in 10 to 20 A, both 60 to 85 A at 10 V (a vehicle maker's manual)", () => {
    expect(solenoidWindings.rows[4]).toMatchObject({
      kind: 'car',
      voltageV: 10,
      holdInA: { low: 10, high: 20 },
      bothA: { low: 60, high: 85 },
      source: { provenance: 'published' },
    });
  });

  test('24 V: pull-in 0.16 to 0.20 ohm, hold-in 1.45 to 1.65 ohm (TM 9-4940-568-34)', () => {
    expect(solenoidWindings.rows[5]).toMatchObject({
      kind: '24-volt',
      voltageV: 20,
      pullInOhm: { low: 0.16, high: 0.2 },
      holdInOhm: { low: 1.45, high: 1.65 },
      pullInA: { low: 100, high: 125 },
      holdInA: { low: 12, high: 14 },
      source: { provenance: 'published' },
    });
  });

  test('a small machine: pull-in about 40 A, hold-in about 5 A (TM 5-3895-382-24)', () => {
    expect(smallSolenoidWindings.rows).toEqual({ pullInA: 40, holdInA: 5 });
    expect(smallSolenoidWindings.source.provenance).toBe('published');
    expect(smallSolenoidWindings.source.text).toContain('TM 5-3895-382-24');
  });

  test('a pulse lasts at most 15 s (TM 5-2420-230-24-2 and a service manual)', () => {
    expect(windingPulseS.rows).toBe(15);
    expect(windingPulseS.source.provenance).toBe('published');
  });

  test('a start relay: coil 1 A, contacts 100 to 300 A (TM 5-3895-382-24)', () => {
    expect(startRelayCurrents.rows).toEqual({
      coilA: 1,
      contactRatingA: { low: 100, high: 300 },
      contactLoadA: { low: 5, high: 50 },
      ignitionSwitchA: { low: 5, high: 20 },
    });
    expect(startRelayCurrents.source.provenance).toBe('published');
    expect(startRelayCurrents.source.text).toContain('TM 5-3895-382-24');
  });
});

describe('resistances of windings (computed from the currents)', () => {
  test.each<readonly [SolenoidKind, Exclude<Winding, 'both'>, number, number]>([
    // 10 V / 19 A and 10 V / 13 A; 10 V / (97 - 18) A and 10 V / (74 - 19) A.
    ['machine', 'hold-in', 0.526, 0.769],
    ['machine', 'pull-in', 0.127, 0.182],
    ['car', 'hold-in', 0.5, 1],
    // 10 V / (85 - 10) A and 10 V / (60 - 20) A.
    ['car', 'pull-in', 0.133, 0.25],
    // As the text gives them.
    ['24-volt', 'hold-in', 1.45, 1.65],
    ['24-volt', 'pull-in', 0.16, 0.2],
  ])('%s %s: %d to %d ohm', (kind, winding, low, high) => {
    const resistance = windingResistance(kind, winding);
    expect(resistance.low).toBeCloseTo(low, 3);
    expect(resistance.high).toBeCloseTo(high, 3);
    expect(resistance.best).toBeCloseTo((resistance.low + resistance.high) / 2, 9);
    expect(resistance.unit).toBe('Ohm');
    expect(resistance.source.provenance).toBe('computed');
  });

  test.each<readonly [Winding, number, number]>([
    ['pull-in', 100, 125],
    // Printed as 12 to 14 A.
    ['hold-in', 12.12, 13.79],
    ['both', 112.12, 138.79],
  ])('24 V, %s: by its resistances %d to %d A at 20 V, as printed', (winding, low, high) => {
    const current = { value: 13, unit: 'A' } as const;
    const { sound } = windingCheck({ kind: '24-volt', winding, current, voltageV: 20 });
    expect(sound.low).toBeCloseTo(low, 2);
    expect(sound.high).toBeCloseTo(high, 2);
  });
});

describe("what a winding's current says (a vehicle maker's service manual)", () => {
  // A clamp of ±(2 % + 3 digits) in steps of 0.1 A tells 20 A to 0.75 A and 60 A to 1.55 A.
  test.each<readonly [SolenoidKind, Winding, number, number, string]>([
    ['car', 'hold-in', 10, 14, 'sound'],
    ['car', 'hold-in', 10, 10.2, 'cannot-tell'],
    ['car', 'hold-in', 10, 9, 'high-resistance'],
    ['car', 'hold-in', 10, 20, 'cannot-tell'],
    ['car', 'hold-in', 10, 21, 'shorted-turns'],
    ['car', 'hold-in', 10, 0.3, 'open'],
    ['car', 'hold-in', 10, 0, 'open'],
    ['car', 'both', 10, 70, 'sound'],
    ['car', 'both', 10, 55, 'high-resistance'],
    ['car', 'both', 10, 90, 'shorted-turns'],
    ['car', 'pull-in', 10, 55, 'sound'],
    // At 12 V a winding takes a fifth more.
    ['car', 'hold-in', 12, 21, 'sound'],
    ['car', 'both', 12, 65, 'high-resistance'],
    ['machine', 'hold-in', 10, 16, 'sound'],
    ['machine', 'pull-in', 10, 60, 'sound'],
    ['machine', 'pull-in', 10, 40, 'high-resistance'],
    ['24-volt', 'pull-in', 20, 112, 'sound'],
    ['24-volt', 'pull-in', 24, 128, 'sound'],
    ['24-volt', 'hold-in', 20, 11, 'high-resistance'],
  ])('%s, %s at %d V, %d A: %s', (kind, winding, voltageV, value, verdict) => {
    const current = { value, unit: 'A', resolution: 0.1 } as const;
    expect(windingCheck({ kind, winding, current, voltageV }).verdict).toBe(verdict);
  });

  test('a pull-in winding alone is never put down as both', () => {
    fc.assert(
      fc.property(fc.constantFrom<SolenoidKind>('machine', 'car', '24-volt'), (kind) => {
        const bound = (winding: Winding): MeasuredWinding => ({
          kind,
          winding,
          current: { value: 50, unit: 'A' },
          voltageV: 10,
        });
        const alone = windingCheck(bound('pull-in')).sound;
        const both = windingCheck(bound('both')).sound;
        expect(alone.low).toBeLessThan(both.low);
        expect(alone.high).toBeLessThan(both.high);
      }),
    );
  });

  test.each([
    [-1, 10],
    [14, 0],
    [14, Number.NaN],
  ])('%d A at %d V is refused', (value, voltageV) => {
    expect(() =>
      windingCheck({ kind: 'car', winding: 'hold-in', current: { value, unit: 'A' }, voltageV }),
    ).toThrow('value-out-of-range');
  });
});
