import type { LimitContext } from './limit-context.ts';
import { limitParts } from './limit-parts.ts';
import { limit, limitNames, type LimitName } from './limit.ts';
import type { LimitResult } from './limit-result.ts';

/** A field of what limits may depend on. */
export type LimitField = keyof LimitContext;

/**
 * One limit as reported: what it parts, its bound with its source for `referenceVehicle`, and the
 * fields on which it depends.
 */
export type LimitReport = {
  readonly name: LimitName;
  readonly parts: string;
  readonly result: LimitResult;
  readonly dependsOn: readonly LimitField[];
};

/**
 * The plain vehicle for which limits are reported: a petrol car of 2.0 L at 20 Cel with a flooded
 * battery, which rested at 12.5 V and holds 10.2 V at 160 A while its engine turns; its starter has
 * M10 bolts of class 8.8 into steel and a copper stud M8.
 */
export const referenceVehicle: LimitContext = {
  nominal: 12,
  temperature: 20,
  technology: 'flooded',
  rating: 600,
  ratingStandard: 'sae',
  fuel: 'petrol',
  displacement: 2,
  cylinders: 4,
  batteryLocation: 'engine-bay',
  batteryAge: 3,
  starterBuild: 'geared',
  starterClass: 'car',
  turning: true,
  restVoltage: 12.5,
  crankVoltage: 10.2,
  crankCurrent: 160,
  boltSize: 'M10',
  boltClass: '8.8',
  boltInto: 'steel',
  studSize: 'M8',
  studMaterial: 'copper',
  postKind: 'tapered',
};

/** Values of every field, such that each step of a rule lies between two of them. */
const variations: { readonly [Field in LimitField]-?: readonly LimitContext[Field][] } = {
  nominal: [12, 24],
  temperature: [undefined, -25, -10, -2, 10, 30],
  technology: [undefined, 'flooded', 'efb', 'agm', 'gel'],
  rating: [undefined, 400, 800],
  ratingStandard: [undefined, 'sae', 'en', 'din', 'iec', 'jis', 'mca'],
  fuel: [undefined, 'petrol', 'diesel'],
  displacement: [undefined, 1, 3, 6],
  cylinders: [undefined, 4, 6, 8],
  batteryLocation: [undefined, 'engine-bay', 'boot', 'seat'],
  batteryAge: [undefined, 1, 4, 9],
  turning: [undefined, true, false],
  expectedCurrent: [undefined, 100, 250],
  restVoltage: [undefined, 11.5, 12.3, 12.7],
  crankVoltage: [undefined, 7, 10.5],
  crankCurrent: [undefined, 100, 250],
  starterBuild: [undefined, 'direct', 'geared'],
  starterClass: [undefined, 'car', 'heavy'],
  smartCharging: [undefined, true, false],
  boltSize: [undefined, 'M8', 'M12'],
  boltClass: [undefined, '8.8', '10.9'],
  boltInto: [undefined, 'steel', 'aluminium'],
  studSize: [undefined, 'M6', 'M10'],
  studMaterial: [undefined, 'copper', 'steel'],
  postKind: [undefined, 'tapered', 'insert-m10'],
};

const fields = Object.keys(variations) as LimitField[];

/**
 * The vehicles about which each field is varied. A figure that is known hides what would else be
 * estimated from, so they know more and less.
 */
const { restVoltage, crankVoltage, crankCurrent, turning, ...unmeasured } = referenceVehicle;
const bases: readonly LimitContext[] = [
  referenceVehicle,
  unmeasured,
  { ...unmeasured, restVoltage },
  {},
];

function figuresOf(result: LimitResult): string {
  return result.type === 'bound'
    ? `${result.bound.low} ${result.bound.high}`
    : result.missing.join(' ');
}

function depends(name: LimitName, field: LimitField): boolean {
  return bases.some((base) => {
    const figures = variations[field].map((value) =>
      figuresOf(limit(name, { ...base, [field]: value })),
    );
    return new Set(figures).size > 1;
  });
}

function reportOf(name: LimitName): LimitReport {
  return {
    name,
    parts: limitParts(name),
    result: limit(name, referenceVehicle),
    dependsOn: fields.filter((field) => depends(name, field)),
  };
}

/**
 * Tells of every limit what it parts, what it is for `referenceVehicle`, on which fields of the
 * context it depends (worked out by varying each), and where its figure comes from.
 */
export function limitsReport(): readonly LimitReport[] {
  return limitNames.map(reportOf);
}
