import { describe, expect, test } from 'vitest';
import { cableDrop } from '../conductor/cable.ts';
import type { LimitContext } from '../limits/limit-context.ts';
import { limit, type LimitName } from '../limits/limit.ts';
import type { Provenance } from '../source.ts';
import { dropLimits, type DropLimit, type DropPath } from './drop-limits.ts';

type Row = readonly [string, DropPath, 12 | 24, number | undefined, number, Provenance];

function expectRow(text: string, row: Partial<DropLimit>, provenance: Provenance): void {
  const { path, nominal, low, high, unit } = row;
  const found = dropLimits.rows.filter(
    (one) =>
      one.path === path &&
      one.nominal === nominal &&
      one.low === low &&
      one.high === high &&
      one.unit === unit &&
      one.source.text.startsWith(text),
  );
  expect(found.map(({ source }) => source.provenance)).toContain(provenance);
}

describe('limits of voltage drop, each with the text that prints it', () => {
  test.each<Row>([
    ['TM 9-2320-211-20', 'cable', 24, undefined, 0.2, 'published'],
    ['TM 10-3930-671-24', 'positive', 12, undefined, 0.4, 'published'],
    ['TM 10-3930-671-24', 'joint', 12, undefined, 0, 'published'],
    ['TM 10-3930-671-24', 'circuit', 12, 0.4, 1, 'published'],
    ['TM 5-3895-382-24', 'positive', 12, undefined, 0.5, 'published'],
    ['TM 5-3895-382-24', 'positive', 24, undefined, 1, 'published'],
    ['TM 5-3895-382-24', 'ground', 12, undefined, 0.7, 'published'],
    ['TM 5-3895-382-24', 'ground', 24, undefined, 1.4, 'published'],
    ['TM 5-3895-382-24', 'isolator', 12, undefined, 0.5, 'published'],
    ['TM 5-3895-382-24', 'isolator', 24, undefined, 1, 'published'],
    ["a vehicle maker's service manual", 'positive', 12, undefined, 0.5, 'published'],
    ['TM 5-2420-230-24-2', 'control', 12, undefined, 1, 'published'],
    ['TM 5-2420-230-24-2', 'control', 24, undefined, 2, 'published'],
    ['TM 10-3930-671-24', 'control', 12, 0.1, 1.25, 'published'],
    ['TM 10-3930-671-24', 'control', 12, 1.25, 2, 'published'],
  ])('%s, %s, %d V: from %s to %d V', (text, path, nominal, low, high, provenance) => {
    expectRow(
      text,
      { path, nominal, ...(low === undefined ? {} : { low }), high, unit: 'V' },
      provenance,
    );
  });

  test.each<readonly [DropPath, number | undefined, number]>([
    ['positive', undefined, 0.2],
    ['positive', undefined, 0.5],
    ['ground', undefined, 0.2],
    ['joint', undefined, 0.1],
    ['contacts', 0.2, 0.3],
    ['control', 0.5, 0.9],
  ])('handbooks (common practice, no source), %s: from %s to %d V', (path, low, high) => {
    const row = {
      path,
      nominal: 12,
      ...(low === undefined ? {} : { low }),
      high,
      unit: 'V',
    } as const;
    expectRow('handbooks', row, 'common practice');
  });

  test('TM 10-3930-671-24 has 0.20 V for every 100 A, 2 mOhm', () => {
    expectRow(
      'TM 10-3930-671-24',
      { path: 'circuit', nominal: 12, high: 2, unit: 'mOhm' },
      'published',
    );
  });

  test('TM 9-2320-211-20 has its 0.2 V twice, and the ground of handbooks is cable and side', () => {
    expect(dropLimits.rows.filter(({ path }) => path === 'cable')).toHaveLength(2);
    expect(
      dropLimits.rows.filter(({ path, high }) => path === 'ground' && high === 0.2),
    ).toHaveLength(2);
    expect(dropLimits.rows).toHaveLength(24);
  });
});

describe('what the limits in use take from them', () => {
  function middle(name: LimitName, context: LimitContext): number {
    const result = limit(name, context);
    if (result.type === 'unknown') throw new Error(result.missing.join(', '));
    return (result.bound.low + result.bound.high) / 2;
  }

  test.each<readonly [LimitName, LimitContext, number]>([
    ['drop.positive', { crankCurrent: 100 }, 0.2],
    ['drop.ground', { crankCurrent: 100 }, 0.2],
    ['drop.ground', { crankCurrent: 250 }, 0.5],
    ['drop.clamp', {}, 0.1],
    ['contacts.high', {}, 0.3],
  ])('%s %j is %d V', (name, context, volts) => {
    expect(middle(name, context)).toBeCloseTo(volts, 9);
  });

  test('the start signal may be 1.0 V, at 24 V 2.0 V, below the battery', () => {
    expect(10 - middle('control.low', { crankVoltage: 10 })).toBeCloseTo(1, 9);
    expect(20 - middle('control.low', { crankVoltage: 20, nominal: 24 })).toBeCloseTo(2, 9);
  });

  test('a flat 0.2 V fails a perfect cable: 0.234 V on 1.5 m of 25 mm2 at 200 A', () => {
    const { value } = cableDrop({ areaMm2: 25, lengthM: 1.5, currentA: 200 });
    expect(value).toBeCloseTo(0.234, 9);
    expect(value).toBeLessThan(middle('drop.ground', { crankCurrent: 200 }));
  });
});
