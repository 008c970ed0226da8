import { describe, expect, test } from 'vitest';
import { controllerResets, crankPhases, type CrankPhase } from './crank-phases.ts';

describe('phases of a start (common practice, no source)', () => {
  test.each<Omit<CrankPhase, 'source'>>([
    {
      phase: 'pull-in',
      ms: { low: 0, high: 30 },
      dropV: { low: 0.2, high: 0.6 },
      currentA: { low: 40, high: 100 },
    },
    { phase: 'inrush', ms: { low: 30, high: 100 }, voltageV: { low: 7, high: 10 } },
    { phase: 'acceleration', ms: { low: 100, high: 400 } },
    {
      phase: 'cranking',
      ms: { low: 400 },
      voltageV: { low: 9.6, high: 11.5 },
      rippleV: { low: 0.2, high: 1 },
      ripplePercent: { low: 20, high: 60 },
    },
    { phase: 'release', voltageV: { low: 13.5 }, currentA: { low: 0, high: 0 } },
  ])('$phase: $ms ms, $voltageV V, $currentA A', (phase) => {
    const { source, ...figures } = crankPhases.find((one) => one.phase === phase.phase)!;
    expect(figures).toEqual(phase);
    expect(source.provenance).toBe('common practice');
  });

  test('follow each other without a gap until the engine fires', () => {
    const ends = crankPhases.flatMap(({ ms }) => (ms === undefined ? [] : [ms.low, ms.high]));
    expect(ends).toEqual([0, 30, 30, 100, 100, 400, 400, undefined]);
  });
});

test.each([
  ['many control units', 5.5, 6.5, /control units/],
  ['first dip of the start profiles, by their level', 3, 8, /ISO 16750-2/],
])('control units reset, from memory: %s %d to %d V', (of, low, high, text) => {
  const row = controllerResets.rows.find((one) => one.of === of);
  expect(row).toMatchObject({ low, high, unit: 'V', source: { provenance: 'from memory' } });
  expect(row!.source.text).toMatch(text);
});
