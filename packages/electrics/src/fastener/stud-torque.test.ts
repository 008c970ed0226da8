import { describe, expect, test } from 'vitest';
import { boltTorque } from './fastener.ts';
import { convert, type Quantity } from '../quantity/quantity.ts';
import { studTorque, terminalTorque } from './stud-torque.ts';

describe('studs of a terminal', () => {
  test.each([
    ['M6', 'copper', 3, 5],
    ['M8', 'copper', 8, 12],
    ['M10', 'copper', 15, 20],
    ['M6', 'brass', 3, 5],
    ['M8', 'brass', 8, 12],
    ['M10', 'brass', 15, 20],
  ] as const)(
    '%s of %s: %d to %d N.m (common practice, no source)',
    (size, material, low, high) => {
      const { torque } = studTorque({ size, material });
      expect(torque).toMatchObject({ low, best: (low + high) / 2, high, unit: 'N.m' });
      expect(torque.source.provenance).toBe('common practice');
    },
  );

  test.each([
    ['M6', 4.5, 7.9],
    ['M8', 6.6, 10.7],
    ['M10', 10.4, 16],
  ] as const)("%s battery insert: %d to %d N.m (a battery maker's manual)", (size, low, high) => {
    const { torque } = studTorque({ size, material: 'battery-insert' });
    expect(torque).toMatchObject({ low, high, unit: 'N.m' });
    expect(torque.source.provenance).toBe('published');
  });

  const materials = ['copper', 'brass', 'battery-insert'] as const;
  const sizes = ['M6', 'M8', 'M10'] as const;
  const studs = materials.flatMap((material) => sizes.map((size) => ({ size, material })));

  test.each(studs)('$material $size carries the caution of a soft stud', (stud) => {
    expect(studTorque(stud).cautions).toEqual(['soft-stud']);
  });

  test.each(studs)('$material $size takes less than the dry steel bolt of its thread', (stud) => {
    const bolt = boltTorque({ size: stud.size, propertyClass: '8.8', condition: 'dry' });
    const part = stud.material === 'battery-insert' ? 0.8 : 0.5;
    expect(bolt.type === 'torque' && studTorque(stud).torque.high < bolt.torque.best * part).toBe(
      true,
    );
  });
});

describe('terminals by their place', () => {
  test.each([
    ['starter-battery', 24, 32, 'published', ['soft-stud']],
    ['starter-switch', 1, 1.3, 'published', ['soft-stud']],
    ['battery-clamp', 5, 8, 'common practice', []],
  ] as const)('%s: %d to %d N.m, %s', (terminal, low, high, provenance, cautions) => {
    const { torque, cautions: carried } = terminalTorque(terminal);
    expect(torque).toMatchObject({ low, best: (low + high) / 2, high, unit: 'N.m' });
    expect(torque.source.provenance).toBe(provenance);
    expect(carried).toEqual(cautions);
  });

  // TM 5-3895-382-24 prints both units.
  test.each<readonly [string, Quantity, number]>([
    [
      '18 lbf.ft',
      { value: 18, unit: '[lbf_av].[ft_i]' },
      terminalTorque('starter-battery').torque.low,
    ],
    [
      '24 lbf.ft',
      { value: 24, unit: '[lbf_av].[ft_i]' },
      terminalTorque('starter-battery').torque.high,
    ],
    [
      '9 lbf.in',
      { value: 9, unit: '[lbf_av].[in_i]' },
      terminalTorque('starter-switch').torque.low,
    ],
    [
      '12 lbf.in',
      { value: 12, unit: '[lbf_av].[in_i]' },
      terminalTorque('starter-switch').torque.high,
    ],
  ])('%s is the figure in N.m, within its rounding', (_, quantity, newtonMetres) => {
    expect(Math.abs(convert(quantity, 'N.m').value / newtonMetres - 1)).toBeLessThan(0.05);
  });
});
