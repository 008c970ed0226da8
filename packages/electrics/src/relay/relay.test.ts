import { describe, expect, test } from 'vitest';
import type { Quantity } from '../quantity/quantity.ts';
import { coilCheck, contactCheck, relayContinuousLimit } from './relay.ts';
import { relayCoils, type RelayKind } from '../tables/relay-coil.ts';
import { relayContactDrop } from '../tables/relay-contact.ts';

describe('coils of 12 V relays (relay data sheets, published)', () => {
  test.each<readonly [RelayKind, object]>([
    ['mini', { ohms: 85, powerW: 1.7, currentA: 0.14, operateV: 8, releaseV: 1.5 }],
    ['mini-75-ohm', { ohms: 75, operateV: 6.5, releaseV: 1 }],
    ['sealed-power', { ohms: 90, powerW: 1.6, operateV: 6.9, releaseV: 1.2 }],
    ['starter-rated', { ohms: 75 }],
    ['micro', { ohms: 109, powerW: 1.3 }],
  ])('%s: %j', (kind, figures) => {
    const { source, ...row } = relayCoils.rows[kind];
    expect(row).toEqual(figures);
    expect(source.provenance).toBe('published');
    expect(source.text).toContain('data sheet');
  });

  test('their power and current are those of 12 V across the resistance', () => {
    for (const { ohms, powerW, currentA } of Object.values(relayCoils.rows)) {
      expect(powerW ?? 144 / ohms).toBeCloseTo(144 / ohms, 1);
      expect(currentA ?? 12 / ohms).toBeCloseTo(12 / ohms, 2);
    }
  });
});

describe('what the resistance of a coil says', () => {
  const ohms = (value: number): Quantity => ({ value, unit: 'Ohm', resolution: 0.1 });

  test('by hand: a mini coil of 85 ohms ±10 % from -20 to 60 Cel (spreads common practice)', () => {
    const { sound, shorted, open } = coilCheck(ohms(85), 'mini');
    expect(sound.low).toBeCloseTo(76.5 * (1 - 0.00393 * 40), 9);
    expect(sound.high).toBeCloseTo(93.5 * (1 + 0.00393 * 40), 9);
    expect(shorted.high).toBeCloseTo(sound.low / 2, 9);
    expect(open.low).toBeCloseTo(sound.high * 10, 9);
    expect(sound.source.provenance).toBe('computed');
    expect(sound.source.text).toContain('common practice');
  });

  // Sound from 64.5 to 108.2 ohms, shorted below 32.2, open above 1082; the meter ±(1 % + 0.3).
  test.each([
    [0, 'shorted'],
    [31, 'shorted'],
    [32.2, 'cannot-tell'],
    [50, 'cannot-tell'],
    [64.5, 'cannot-tell'],
    [66, 'sound'],
    [85, 'sound'],
    [106, 'sound'],
    [108, 'cannot-tell'],
    [300, 'cannot-tell'],
    [1082, 'cannot-tell'],
    [1200, 'open'],
  ])('%d ohms of a mini coil: %s', (value, verdict) => {
    expect(coilCheck(ohms(value), 'mini').verdict).toBe(verdict);
  });

  test('an overload on the display is an open coil', () => {
    expect(coilCheck('overload', 'micro').verdict).toBe('open');
  });

  test.each(Object.keys(relayCoils.rows) as RelayKind[])('%s: its data sheet is sound', (kind) => {
    expect(coilCheck(ohms(relayCoils.rows[kind].ohms), kind).verdict).toBe('sound');
  });

  test('in other units it says the same', () => {
    expect(coilCheck({ value: 85_000, unit: 'mOhm' }, 'mini').verdict).toBe('sound');
  });

  test('a resistance below 0 and a voltage are refused', () => {
    expect(() => coilCheck(ohms(-1), 'mini')).toThrow('value-out-of-range');
    expect(() => coilCheck({ value: 12, unit: 'V' }, 'mini')).toThrow('unit-mismatch');
  });
});

describe('contacts of 12 V relays', () => {
  test('new ones drop 15 to 20 mV at 10 A, at most 200 to 300 mV (data sheets, published)', () => {
    expect(relayContactDrop.rows).toEqual({
      currentA: 10,
      typicalLowMv: 15,
      typicalHighMv: 20,
      mostLowMv: 200,
      mostHighMv: 300,
    });
    expect(relayContactDrop.source.provenance).toBe('published');
  });

  test.each([
    [-40, 50],
    [23, 50],
    [54, 42.5],
    [85, 35],
    [105, 25],
    [125, 15],
  ])(
    'at %d Cel a mini relay carries %d A all the time (data sheet, published)',
    (ambient, amps) => {
      const { low, high, unit, source } = relayContinuousLimit(ambient);
      expect(low).toBeCloseTo(amps, 9);
      expect(high).toBe(low);
      expect(unit).toBe('A');
      expect(source.provenance).toBe('published');
    },
  );

  test('beyond 125 Cel it has no limit', () => {
    expect(() => relayContinuousLimit(126)).toThrow('value-out-of-range');
    expect(() => relayContinuousLimit(Number.NaN)).toThrow('value-out-of-range');
  });

  // At 10 A ±0.55 A the limits are 0.2 and 0.3 V, each told to 6 %.
  test.each([
    [0.015, 10, 'sound'],
    [0.02, 10, 'sound'],
    [0.18, 10, 'sound'],
    [0.2, 10, 'cannot-tell'],
    [0.25, 10, 'cannot-tell'],
    [0.3, 10, 'cannot-tell'],
    [0.33, 10, 'high-resistance'],
    [2, 10, 'high-resistance'],
    [0.18, 5, 'high-resistance'],
    [0.3, 20, 'sound'],
    [12, 0, 'open'],
    [6.5, 0, 'open'],
    [6, 0, 'cannot-tell'],
    [0, 0, 'cannot-tell'],
    [0.01, 0.9, 'cannot-tell'],
    [0.001, 0.9, 'cannot-tell'],
    [0.005, 1, 'sound'],
    [-0.02, -10, 'sound'],
  ])('%d V at %d A: %s', (dropV, currentA, verdict) => {
    const drop = { value: dropV, unit: 'V', resolution: 0.001 } as const;
    const current = { value: currentA, unit: 'A', resolution: 0.1 } as const;
    expect(contactCheck({ drop, current }).verdict).toBe(verdict);
  });

  test('the limit goes with the current', () => {
    const { limit } = contactCheck({
      drop: { value: 0.02, unit: 'V' },
      current: { value: 20, unit: 'A' },
    });
    expect(limit.low).toBeCloseTo(0.4, 9);
    expect(limit.high).toBeCloseTo(0.6, 9);
    expect(limit.source.provenance).toBe('computed');
  });

  test('a drop in ampere is refused', () => {
    expect(() =>
      contactCheck({ drop: { value: 1, unit: 'A' }, current: { value: 1, unit: 'A' } }),
    ).toThrow('unit-mismatch');
  });
});
