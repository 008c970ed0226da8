import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import prettier from 'prettier';
import { describe, expect, test } from 'vitest';
import type { LimitContext } from './limit-context.ts';
import { limit, limitNames, type LimitName } from './limit.ts';
import {
  limitsReport,
  referenceVehicle,
  type LimitField,
  type LimitReport,
} from './limits-report.ts';
import { limitsTable } from './limits-table.ts';

const readmeFile = path.join(import.meta.dirname, '../../README.md');

const report = limitsReport();

function reported(name: LimitName): LimitReport {
  return report.find((one) => one.name === name)!;
}

const optional = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(value, { nil: undefined });

const values: { readonly [Field in LimitField]-?: fc.Arbitrary<LimitContext[Field]> } = {
  nominal: optional(fc.constantFrom(12 as const, 24 as const)),
  temperature: optional(fc.double({ min: -40, max: 50, noNaN: true })),
  technology: optional(fc.constantFrom('flooded', 'efb', 'agm', 'gel')),
  rating: optional(fc.double({ min: 200, max: 1000, noNaN: true })),
  ratingStandard: optional(fc.constantFrom('sae', 'en', 'din', 'iec', 'jis', 'mca')),
  fuel: optional(fc.constantFrom('petrol', 'diesel')),
  displacement: optional(fc.double({ min: 0.5, max: 15, noNaN: true })),
  cylinders: optional(fc.integer({ min: 2, max: 12 })),
  batteryLocation: optional(fc.constantFrom('engine-bay', 'boot', 'seat')),
  batteryAge: optional(fc.double({ min: 0, max: 15, noNaN: true })),
  starterBuild: optional(fc.constantFrom('direct', 'geared')),
  starterClass: optional(fc.constantFrom('car', 'heavy')),
  turning: optional(fc.boolean()),
  expectedCurrent: optional(fc.double({ min: 60, max: 600, noNaN: true })),
  restVoltage: optional(fc.double({ min: 8, max: 14, noNaN: true })),
  crankVoltage: optional(fc.double({ min: 4, max: 12, noNaN: true })),
  crankCurrent: optional(fc.double({ min: 0, max: 900, noNaN: true })),
  smartCharging: optional(fc.boolean()),
  boltSize: optional(fc.constantFrom('M5', 'M6', 'M8', 'M10', 'M12', 'M14', 'M16')),
  boltClass: optional(fc.constantFrom('8.8', '10.9', '12.9')),
  boltInto: optional(fc.constantFrom('steel', 'aluminium')),
  studSize: optional(fc.constantFrom('M6', 'M8', 'M10')),
  studMaterial: optional(fc.constantFrom('copper', 'brass', 'steel')),
  postKind: optional(fc.constantFrom('tapered', 'insert-m6', 'insert-m8', 'insert-m10')),
};

const context: fc.Arbitrary<LimitContext> = fc.record(values);

describe('the limits report', () => {
  test('tells of every limit, in one sentence, with a bound for the reference vehicle', () => {
    expect(report.map(({ name }) => name)).toEqual(limitNames);
    for (const { parts, result } of report) {
      expect(parts).toMatch(/^(?:Above|At|Below|From|Up to) [^.]+\.$/);
      expect(result.type).toBe('bound');
    }
    expect(new Set(report.map(({ parts }) => parts)).size).toBe(limitNames.length);
  });

  test('gives the same bound as the limit itself', () => {
    for (const { name, result } of report) {
      expect(result).toEqual(limit(name, referenceVehicle));
    }
  });

  test.each<readonly [LimitName, readonly LimitField[]]>([
    ['battery.age.new', []],
    ['battery.rest.frozen', ['nominal']],
    ['battery.rest.full', ['nominal', 'temperature', 'technology']],
    ['battery.load-test.minimum', ['nominal', 'temperature']],
    ['battery.tester.poor', ['rating', 'ratingStandard']],
    ['battery.crank.low', ['nominal', 'temperature', 'fuel']],
    ['control.low', ['nominal', 'turning', 'restVoltage', 'crankVoltage']],
    [
      'drop.positive',
      [
        'nominal',
        'temperature',
        'fuel',
        'displacement',
        'cylinders',
        'batteryLocation',
        'turning',
        'expectedCurrent',
        'crankCurrent',
      ],
    ],
  ])('%s depends on %j', (name, fields) => {
    expect(reported(name).dependsOn).toEqual(fields);
  });

  test('no field beside those named changes a limit, of whatever vehicle', () => {
    fc.assert(
      fc.property(context, context, fc.constantFrom(...limitNames), (one, other, name) => {
        const { dependsOn } = reported(name);
        const named = Object.fromEntries(dependsOn.map((field) => [field, one[field]]));
        const [before, after] = [limit(name, one), limit(name, { ...other, ...named })];
        expect(figures(after)).toEqual(figures(before));
      }),
      { numRuns: 3000 },
    );
  });
});

function figures(result: ReturnType<typeof limit>): unknown {
  return result.type === 'bound' ? [result.bound.low, result.bound.high] : result.missing;
}

describe('the README', () => {
  test('holds the table as it is now; `npm run -s limits` renews it', async () => {
    const [, table] = /<!-- limits: begin -->(.*)<!-- limits: end -->/s.exec(
      readFileSync(readmeFile, 'utf8'),
    )!;
    const options = { ...(await prettier.resolveConfig(readmeFile)), parser: 'markdown' };
    expect(table!.trim()).toBe((await prettier.format(limitsTable(), options)).trim());
  });
});
