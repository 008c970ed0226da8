import { describe, expect, test } from 'vitest';
import { correctedSpecificGravity } from '../battery/electrolyte.ts';
import { gravityCorrection, rivalGravityCorrections } from './gravity-correction.ts';

function corrected(gravity: number, fahrenheit: number): number {
  return correctedSpecificGravity(gravity, (fahrenheit - 32) / 1.8);
}

describe('temperature correction of a hydrometer: TM 5-4210-230-14&P-1', () => {
  test('is 0.004 for every 10 degF from 80 degF', () => {
    expect(gravityCorrection).toMatchObject({ step: 0.004, stepF: 10, baseF: 80 });
    expect(gravityCorrection.source.provenance).toBe('published');
    expect(corrected(1.25, 80)).toBeCloseTo(1.25, 9);
  });

  test.each([
    ["a vehicle maker's service manual", 1.25, 90, 1.254],
    ["a vehicle maker's service manual", 1.25, 70, 1.246],
    ['manual TP-5606 p. 48 of an engine set', 1.25, 20, 1.226],
    ['manual TP-5606 p. 48 of an engine set', 1.235, 100, 1.243],
  ])('%s: %d read at %d degF is %d', (_, gravity, fahrenheit, expected) => {
    expect(corrected(gravity, fahrenheit)).toBeCloseTo(expected, 9);
  });
});

describe('rival corrections of a hydrometer', () => {
  test('an encyclopedia has 0.003 for every 10 degF from 70 degF', () => {
    const [older] = rivalGravityCorrections;
    expect(older).toMatchObject({ step: 0.003, stepF: 10, baseF: 70 });
    expect(older?.source.provenance).toBe('published');
  });

  test('stationary batteries have 0.001 for every 3 degF from 77 degF (from memory)', () => {
    const [, stationary] = rivalGravityCorrections;
    expect(stationary).toMatchObject({ step: 0.001, stepF: 3, baseF: 77 });
    expect(stationary?.source.provenance).toBe('from memory');
  });

  test.each([60, 80, 100])('at %d degF they differ by 0.005 at most', (fahrenheit) => {
    const used = corrected(1.25, fahrenheit) - 1.25;
    for (const { step, stepF, baseF } of rivalGravityCorrections) {
      expect(Math.abs(((fahrenheit - baseF) * step) / stepF - used)).toBeLessThan(0.0051);
    }
  });
});
