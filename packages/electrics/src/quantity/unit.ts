import { ElectricsError } from '../electrics-error.ts';

/** Every unit that a quantity may carry, by its UCUM code (case-sensitive form). */
export const unitCodes = [
  'V',
  'mV',
  'A',
  'mA',
  'kA',
  'A.h',
  'Ohm',
  'mOhm',
  'K',
  'Cel',
  '[degF]',
  'N.m',
  '[lbf_av].[ft_i]',
  '[lbf_av].[in_i]',
  'kgf.m',
  'N',
  'kN',
  'ms',
  's',
  'min',
  'h',
  'd',
  'wk',
  'mo',
  'a',
  'Hz',
  '/min',
  'L',
  '[cin_i]',
  'mm2',
  'mm',
  'm',
  '[in_i]',
  '[ft_i]',
  'W',
  'kW',
  '[HP]',
  'kPa',
  'bar',
  '[psi]',
  '%',
  '1',
] as const;

/** A UCUM unit code that this package knows. */
export type UnitCode = (typeof unitCodes)[number];

/** What a unit measures. Only units of one dimension convert into each other. */
export type Dimension =
  | 'voltage'
  | 'current'
  | 'charge'
  | 'resistance'
  | 'temperature'
  | 'torque'
  | 'force'
  | 'time'
  | 'frequency'
  | 'volume'
  | 'area'
  | 'length'
  | 'power'
  | 'pressure'
  | 'ratio';

/**
 * One unit: its dimension and how it relates to the base unit of that dimension, as
 * base = (value + offset) × factor.
 */
export type UnitDefinition = {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset: number;
};

function unit(dimension: Dimension, factor: number, offset: number = 0): UnitDefinition {
  return { dimension, factor, offset };
}

const secondsInDay = 86_400;
// Newtons in a pound-force: 0.453 592 37 kg × 9.806 65 m/s², both exact.
const poundForce = 0.453_592_37 * 9.806_65;
const foot = 0.3048;
const inch = 0.0254;

/**
 * The factors to the base units V, A, A.h, Ohm, K, N.m, N, s, Hz, L, mm2, m, W, kPa and 1.
 *
 * Source: NIST SP 811 (2008) Appendix B, from memory, for inch, foot, pound-force, kilogram-force,
 * horsepower (550 ft.lbf/s), psi, bar and degree Fahrenheit; UCUM for the year (365.25 d) and the
 * month (a twelfth of it).
 */
const definitions: Readonly<Record<UnitCode, UnitDefinition>> = {
  V: unit('voltage', 1),
  mV: unit('voltage', 1e-3),
  A: unit('current', 1),
  mA: unit('current', 1e-3),
  kA: unit('current', 1000),
  'A.h': unit('charge', 1),
  Ohm: unit('resistance', 1),
  mOhm: unit('resistance', 1e-3),
  K: unit('temperature', 1),
  Cel: unit('temperature', 1, 273.15),
  '[degF]': unit('temperature', 1 / 1.8, 459.67),
  'N.m': unit('torque', 1),
  '[lbf_av].[ft_i]': unit('torque', poundForce * foot),
  '[lbf_av].[in_i]': unit('torque', poundForce * inch),
  'kgf.m': unit('torque', 9.806_65),
  N: unit('force', 1),
  kN: unit('force', 1000),
  ms: unit('time', 1e-3),
  s: unit('time', 1),
  min: unit('time', 60),
  h: unit('time', 3600),
  d: unit('time', secondsInDay),
  wk: unit('time', 7 * secondsInDay),
  mo: unit('time', (365.25 / 12) * secondsInDay),
  a: unit('time', 365.25 * secondsInDay),
  Hz: unit('frequency', 1),
  '/min': unit('frequency', 1 / 60),
  L: unit('volume', 1),
  '[cin_i]': unit('volume', 0.016_387_064),
  mm2: unit('area', 1),
  mm: unit('length', 1e-3),
  m: unit('length', 1),
  '[in_i]': unit('length', inch),
  '[ft_i]': unit('length', foot),
  W: unit('power', 1),
  kW: unit('power', 1000),
  '[HP]': unit('power', 550 * foot * poundForce),
  kPa: unit('pressure', 1),
  bar: unit('pressure', 100),
  '[psi]': unit('pressure', poundForce / (inch * inch) / 1000),
  '%': unit('ratio', 0.01),
  '1': unit('ratio', 1),
};

// A map, because every decision on a reading looks up units several times.
const byCode: ReadonlyMap<string, UnitDefinition> = new Map(Object.entries(definitions));

/** Tells whether a text is a unit code that this package knows. Case counts: `mV` is not `MV`. */
export function isUnit(text: string): text is UnitCode {
  return byCode.has(text);
}

/**
 * The definition of a unit.
 *
 * Throws `unit-unknown` with the fact `unit`.
 */
export function unitDefinition(code: string): UnitDefinition {
  const definition = byCode.get(code);
  if (definition === undefined) {
    throw new ElectricsError('unit-unknown', { unit: code });
  }
  return definition;
}

/**
 * What a unit measures: `mV` gives `voltage`.
 *
 * Throws `unit-unknown` with the fact `unit`.
 */
export function unitDimension(code: string): Dimension {
  return unitDefinition(code).dimension;
}
