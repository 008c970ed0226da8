import { ElectricsError } from '../electrics-error.ts';
import { interpolate, tablePoints, type TablePoint, type TablePoints } from '../interpolate.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { requireAbove } from '../require-above.ts';
import { computed, type Source } from '../source.ts';
import type { Table } from '../table.ts';
import { aluminiumConductivity, aluminiumTemperatureCoefficient } from '../tables/aluminium.ts';
import { class2Resistance } from '../tables/class-2-resistance.ts';
import { class5Resistance } from '../tables/class-5-resistance.ts';
import { class5TinnedResistance } from '../tables/class-5-tinned-resistance.ts';
import { copperResistivity, copperTemperatureCoefficient } from '../tables/copper.ts';
import { awgAreaMm2 } from './wire-gauge.ts';

/** A conductor's size: its area in mm2, or its AWG number (1/0 is 0, 2/0 is -1, 4/0 is -3). */
export type ConductorSize = { readonly areaMm2: number } | { readonly awg: number };

/** What a conductor is made of. */
export type ConductorMaterial = 'copper' | 'tinned-copper' | 'aluminium';

/**
 * What a conductor is made of (copper where absent) and how: one wire (`solid`), a strand known by
 * its metal alone (`stranded`), or a conductor of IEC 60228, `class-2` (with class 1, whose figures
 * are the same) or the flexible `class-5`. Where nothing is said it is `class-5`, of aluminium
 * `stranded`.
 */
export type ConductorMake =
  | { readonly material?: ConductorMaterial | undefined; readonly construction?: undefined }
  | {
      readonly material?: 'copper' | undefined;
      readonly construction: 'solid' | 'stranded' | 'class-2' | 'class-5';
    }
  | { readonly material: 'tinned-copper'; readonly construction: 'class-5' }
  | { readonly material: 'aluminium'; readonly construction: 'solid' | 'stranded' };

/**
 * Where a conductor runs: its length in m, above 0, its temperature in Cel, -60 to 200 (20 where
 * absent), and how many equal ones lie in parallel, a whole number from 1 on (1 where absent).
 */
export type ConductorRun = ConductorSize & {
  readonly lengthM: number;
  readonly temperatureC?: number | undefined;
  readonly strands?: number | undefined;
};

/** A piece of conductor: its size, where it runs and how it is made. */
export type Conductor = ConductorRun & ConductorMake;

/** Resistance at 20 Cel: a `figure` in mOhm/m, and the ends and the best as parts of it. */
type PerMetre = {
  readonly figure: number;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly source: Source;
};

/**
 * A table's figure for an area in mm2. Resistance goes by about 1/area, so lines are straight on
 * logarithmic scales, and beyond the ends it goes by 1/area exactly: a thinner conductor never
 * comes out better.
 */
function listedFigure(points: TablePoints, areaMm2: number): number {
  const logarithm = ([area, resistance]: TablePoint): TablePoint => [
    Math.log(area),
    Math.log(resistance),
  ];
  const [first, ...others] = points;
  const smallest = first[0];
  const largest = (others.at(-1) ?? first)[0];
  const listedArea = Math.min(Math.max(areaMm2, smallest), largest);
  const listed = points.find(([area]) => area === listedArea)?.[1];
  const resistance =
    listed ?? Math.exp(interpolate(tablePoints(points, logarithm), Math.log(listedArea)));
  return resistance * (listedArea / areaMm2);
}

/** The standard's figure is the greatest resistance: a real cable stays up to 5 % below it. */
function perMetreByTable({ rows, source }: Table<TablePoints>, areaMm2: number): PerMetre {
  return {
    figure: listedFigure(rows, areaMm2),
    low: 0.95,
    best: 0.975,
    high: 1,
    source: computed(
      `${source.text}: the greatest; a real cable has up to 5 % less (common practice)`,
    ),
  };
}

/**
 * By the metal alone. A drawn wire may be 1 % thicker or thinner; wires laid into a strand are
 * longer than it, and a gauge-sized cable may have slightly less metal than its number says.
 */
function perMetreByMetal(
  material: 'copper' | 'aluminium',
  isStranded: boolean,
  areaMm2: number,
): PerMetre {
  const conductivity = material === 'copper' ? 1 : aluminiumConductivity.rows;
  const metal =
    material === 'copper' ? copperResistivity.source.text : aluminiumConductivity.source.text;
  const figure = (copperResistivity.rows * 1e9) / conductivity / areaMm2;
  return isStranded
    ? {
        figure,
        low: 1,
        best: 1.02,
        high: 1.04,
        source: computed(`${metal}; 2 % more in a strand, ±2 % (common practice)`),
      }
    : {
        figure,
        low: 0.98,
        best: 1,
        high: 1.02,
        source: computed(`${metal}; ±2 % for ±1 % of diameter (ASTM B3, from memory)`),
      };
}

function perMetre(make: ConductorMake, areaMm2: number): PerMetre {
  if (make.material === 'tinned-copper') {
    return perMetreByTable(class5TinnedResistance, areaMm2);
  }
  if (make.material === 'aluminium') {
    return perMetreByMetal('aluminium', make.construction !== 'solid', areaMm2);
  }
  switch (make.construction) {
    case 'solid':
    case 'stranded':
      return perMetreByMetal('copper', make.construction === 'stranded', areaMm2);
    case 'class-2':
      return perMetreByTable(class2Resistance, areaMm2);
    case 'class-5':
    case undefined:
      return perMetreByTable(class5Resistance, areaMm2);
  }
}

function temperatureFactor(material: ConductorMake['material'], temperatureC: number): number {
  if (!(temperatureC >= -60 && temperatureC <= 200)) {
    throw new ElectricsError('value-out-of-range', {
      temperatureC: String(temperatureC),
      low: -60,
      high: 200,
    });
  }
  const coefficient =
    material === 'aluminium' ? aluminiumTemperatureCoefficient : copperTemperatureCoefficient;
  return 1 + coefficient.rows * (temperatureC - 20);
}

/**
 * Resistance of a conductor, in mOhm; `high` is the greatest that a sound one may have.
 *
 * Sources: IEC 60228 (reported) for `class-2` and `class-5`, less up to 5 % (common practice); the
 * International Annealed Copper Standard for the rest, aluminium with 61 % of its conductivity
 * (from memory), a strand with 2 % more than solid (common practice). Throws `value-out-of-range`.
 *
 * @example
 * conductorResistance({ areaMm2: 25, lengthM: 1.5 }); // 1.11 to 1.17 mOhm
 */
export function conductorResistance(conductor: Conductor): SourcedInterval {
  const areaMm2 = 'areaMm2' in conductor ? conductor.areaMm2 : awgAreaMm2(conductor.awg);
  const { material, lengthM, temperatureC = 20, strands = 1 } = conductor;
  requireAbove('areaMm2', areaMm2, 0);
  requireAbove('lengthM', lengthM, 0);
  if (!(Number.isInteger(strands) && strands >= 1)) {
    throw new ElectricsError('value-out-of-range', { strands: String(strands), low: 1 });
  }
  const { figure, low, best, high, source } = perMetre(conductor, areaMm2);
  const milliohms = (figure * lengthM * temperatureFactor(material, temperatureC)) / strands;
  return {
    low: milliohms * low,
    best: milliohms * best,
    high: milliohms * high,
    unit: 'mOhm',
    source,
  };
}

/**
 * Resistance of solid annealed copper, in mOhm.
 *
 * Source: International Annealed Copper Standard. Stranded cable has some 2 % more (common
 * practice, no source). Throws `value-out-of-range`.
 *
 * @example
 * copperResistance({ awg: 2, lengthM: 1000 }); // 513 mOhm
 */
export function copperResistance(run: ConductorRun): Quantity {
  const { best, unit } = conductorResistance({ ...run, material: 'copper', construction: 'solid' });
  return { value: best, unit };
}
