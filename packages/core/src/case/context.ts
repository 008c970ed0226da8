/**
 * What is known of the vehicle, the person and the place. Every field is optional. A case keeps it
 * flat, by dotted path, with figures in one unit each; people and files give it nested.
 */
import { convert, isUnit, type UnitCode } from '@keyturn/electrics';

/** A field's value as a case keeps it: numbers in the field's unit. */
export type ContextValue = string | number | boolean | readonly string[] | PartLimits;

/** The maker's figures for one reading of a part: what lies between them is good. */
export interface PartLimit {
  readonly low?: number;
  readonly high?: number;
  readonly unit: UnitCode;
}

/** The maker's figures for a part, by the names of the checks. */
export type PartLimits = Readonly<Record<string, PartLimit>>;

/** The context of a case: dotted path to value. */
export type Context = Readonly<Record<string, ContextValue>>;

/** What a field may hold. */
export type ContextField =
  | { readonly kind: 'one'; readonly values: readonly (string | number)[] }
  | { readonly kind: 'list'; readonly values: readonly string[] }
  | {
      readonly kind: 'number';
      readonly unit: UnitCode;
      readonly low: number;
      readonly high: number;
    }
  | { readonly kind: 'boolean' }
  | { readonly kind: 'text' }
  | { readonly kind: 'limits' }
  /** Of a person or a place: taken without complaint and never kept in the technical case. */
  | { readonly kind: 'personal' };

const one = (...values: (string | number)[]): ContextField => ({ kind: 'one', values });
const number = (unit: UnitCode, low: number, high: number): ContextField => ({
  kind: 'number',
  unit,
  low,
  high,
});
const boolean: ContextField = { kind: 'boolean' };
const text: ContextField = { kind: 'text' };
const personal: ContextField = { kind: 'personal' };

/** Every field of a case's context, by dotted path. */
export const contextFields: Readonly<Record<string, ContextField>> = {
  'vehicle.fuel': one('petrol', 'diesel', 'electric', 'other'),
  'vehicle.transmission': one('manual', 'automatic'),
  'vehicle.ignition': one('key', 'button'),
  'vehicle.nominal': one(12, 24),
  'vehicle.hybrid': one('none', 'mild', 'full'),
  'vehicle.startStop': boolean,
  'vehicle.smartCharging': boolean,
  'vehicle.cylinders': number('1', 1, 16),
  'vehicle.displacement': number('L', 0.1, 20),
  'vehicle.battery.technology': one('flooded', 'efb', 'agm', 'gel'),
  'vehicle.battery.rating': number('A', 50, 2500),
  'vehicle.battery.standard': one('sae', 'en', 'din', 'iec', 'jis', 'mca'),
  'vehicle.battery.age': number('a', 0, 30),
  'vehicle.battery.location': one('engine-bay', 'boot', 'seat'),
  'vehicle.notes': text,
  'vehicle.notes.expectedCurrent': number('A', 20, 3000),
  'vehicle.notes.starter': text,
  'vehicle.notes.relay': text,
  'vehicle.notes.fuses': text,
  'vehicle.notes.boostPosts': text,
  'vehicle.notes.torques': text,
  // The voltmeter and the clamp meter: a class, or ±(% of the reading + digits) of so many counts.
  'meter.class': one('simple', 'usual', 'fine'),
  'meter.percent': number('%', 0, 10),
  'meter.digits': number('1', 0, 50),
  'meter.counts': number('1', 100, 10_000_000),
  'clamp.class': one('simple', 'usual', 'fine'),
  'clamp.percent': number('%', 0, 10),
  'clamp.digits': number('1', 0, 50),
  'clamp.counts': number('1', 100, 10_000_000),
  // The part that is fitted, or that comes back.
  'part.nominal': one(12, 24),
  'part.build': one('direct', 'geared'),
  'part.class': one('car', 'heavy'),
  'part.battery.technology': one('flooded', 'efb', 'agm', 'gel'),
  'part.battery.rating': number('A', 50, 2500),
  'part.battery.standard': one('sae', 'en', 'din', 'iec', 'jis', 'mca'),
  'part.battery.age': number('a', 0, 30),
  'part.limits': { kind: 'limits' },
  // What holds it: bolt and main stud of a starter, and what the leads of a battery are fixed to.
  'bolt.size': one('M5', 'M6', 'M8', 'M10', 'M12', 'M14', 'M16'),
  'bolt.class': one('8.8', '10.9', '12.9'),
  'bolt.material': one('steel', 'aluminium'),
  'stud.size': one('M6', 'M8', 'M10'),
  'stud.class': one('8.8', '10.9', '12.9'),
  'stud.material': one('copper', 'brass', 'steel'),
  'post.kind': one('tapered', 'insert-m6', 'insert-m8', 'insert-m10'),
  // What was paid for it, in minor units of the shop's currency, and whether the old unit was brought.
  'sale.price': number('1', 0, 1e12),
  'sale.oldUnit': one('returned', 'owed'),
  // A finished no-start case of the vehicle, by its code or its file, and when it was measured.
  case: text,
  'vehicle.measured': text,
  temperature: number('Cel', -60, 70),
  coldest: number('Cel', -60, 70),
  kit: {
    kind: 'list',
    values: [
      'voltmeter',
      'test-lamp',
      'clamp-meter',
      'load-tester',
      'electronic-tester',
      'boost-source',
      'charger',
      'code-reader',
      'second-key',
      'helper',
      'hand-tools',
      'bench-tester',
      'speed-meter',
      'thermometer',
      'hydrometer',
      'torque-wrench',
      'stands',
    ],
  },
  place: one('live-lane', 'shoulder', 'parking', 'home', 'workshop'),
  role: one('driver', 'dispatcher', 'mechanic', 'technician', 'clerk'),
  callback: personal,
  where: personal,
  rolls: personal,
  access: personal,
  trailer: personal,
  people: personal,
};

/** What is wrong with a piece of context. */
export interface ContextFault {
  readonly path: string;
  readonly given: unknown;
  /** Values, or paths, that would have been taken. */
  readonly possible: readonly string[];
}

/** A context that was taken, or what is wrong with it. */
export type ContextResult =
  | { readonly type: 'context'; readonly context: Context }
  | { readonly type: 'faults'; readonly faults: readonly ContextFault[] };

/**
 * Reads a context as people and files give it: nested or by dotted path, quantities as
 * `{ value, unit }` with a UCUM code or as numbers in the field's own unit.
 */
export function readContext(given: Readonly<Record<string, unknown>>): ContextResult {
  const context: Record<string, ContextValue> = {};
  const faults: ContextFault[] = [];
  for (const [path, value] of flatten(given, '')) {
    const field = Object.hasOwn(contextFields, path) ? contextFields[path] : undefined;
    if (field === undefined) {
      faults.push({ path, given: value, possible: Object.keys(contextFields) });
      continue;
    }
    const taken = takeValue(field, value);
    if (taken === undefined) faults.push({ path, given: value, possible: possibleValues(field) });
    else if (field.kind !== 'personal') context[path] = taken;
  }
  return faults.length > 0 ? { type: 'faults', faults } : { type: 'context', context };
}

function flatten(value: unknown, prefix: string): readonly [string, unknown][] {
  return Object.entries(value as object).flatMap(([key, inner]): readonly [string, unknown][] => {
    const path = prefix === '' ? key : `${prefix}.${key}`;
    if (inner === undefined) return [];
    if (isGroup(path) && typeof inner === 'object' && inner !== null && !Array.isArray(inner)) {
      return flatten(inner, path);
    }
    return [[path, inner]];
  });
}

/** True for a path that only holds other fields. */
function isGroup(path: string): boolean {
  return Object.keys(contextFields).some((known) => known.startsWith(`${path}.`));
}

function takeValue(field: ContextField, value: unknown): ContextValue | undefined {
  switch (field.kind) {
    case 'one':
      return field.values.find((known) => known === value);
    case 'list':
      return Array.isArray(value) && value.every((item) => field.values.includes(item as string))
        ? [...new Set(value as string[])]
        : undefined;
    case 'boolean':
      return typeof value === 'boolean' ? value : undefined;
    case 'text':
      return typeof value === 'string' && value.length <= 500 ? value : undefined;
    case 'personal':
      return '';
    case 'limits':
      return limitsIn(value);
    case 'number': {
      const figure = figureIn(value, field.unit);
      return figure !== undefined && figure >= field.low && figure <= field.high
        ? figure
        : undefined;
    }
  }
}

function figureIn(value: unknown, unit: UnitCode): number | undefined {
  if (typeof value === 'number') return value;
  if (typeof value !== 'object' || value === null) return undefined;
  const quantity = value as { value?: unknown; unit?: unknown };
  if (typeof quantity.value !== 'number' || typeof quantity.unit !== 'string') return undefined;
  if (!isUnit(quantity.unit)) return undefined;
  try {
    return convert({ value: quantity.value, unit: quantity.unit }, unit).value;
  } catch {
    return undefined;
  }
}

/** The maker's figures, each with a unit and at least one end, the lower one first. */
function limitsIn(given: unknown): PartLimits | undefined {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return undefined;
  const limits = Object.entries(given).map(([check, limit]) => [check, limitIn(limit)] as const);
  return limits.every(([, limit]) => limit !== undefined)
    ? (Object.fromEntries(limits) as PartLimits)
    : undefined;
}

function limitIn(given: unknown): PartLimit | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const { low, high, unit, ...more } = given as Readonly<Record<string, unknown>>;
  const isEnd = (end: unknown): end is number | undefined =>
    end === undefined || (typeof end === 'number' && Number.isFinite(end));
  if (typeof unit !== 'string' || !isUnit(unit) || !isEnd(low) || !isEnd(high)) return undefined;
  if (Object.keys(more).length > 0 || (low === undefined && high === undefined)) return undefined;
  if (low !== undefined && high !== undefined && low >= high) return undefined;
  return {
    unit,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
  };
}

function possibleValues(field: ContextField): readonly string[] {
  switch (field.kind) {
    case 'one':
    case 'list':
      return field.values.map(String);
    case 'boolean':
      return ['true', 'false'];
    case 'number':
      return [`${String(field.low)} to ${String(field.high)} ${field.unit}`];
    case 'text':
      return ['a text of at most 500 characters'];
    case 'limits':
      return ['{ low, high, unit } under the name of each check, low below high'];
    case 'personal':
      return [];
  }
}

/** The values that a field of the context may have, where they can be listed. */
export function valuesOf(field: ContextField): readonly unknown[] {
  if (field.kind === 'one' || field.kind === 'list') return field.values;
  return field.kind === 'boolean' ? [true, false] : [];
}
