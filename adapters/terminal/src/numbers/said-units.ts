import { unitDimension, type Dimension, type UnitCode } from '@keyturn/electrics';
import type { Token } from './tokens.ts';

/** What a figure is of: a dimension, or what only a question has. */
export type FigureKind =
  Dimension | 'gauge' | 'cylinders' | 'counts' | 'digits' | 'degrees' | 'megohms' | 'bare';

/** Every kind of figure by which questions are likened; figures without a unit say too little. */
export const figureKinds: readonly FigureKind[] = [
  'voltage',
  'current',
  'charge',
  'resistance',
  'temperature',
  'torque',
  'time',
  'frequency',
  'volume',
  'area',
  'length',
  'gauge',
  'cylinders',
];

/** A unit as said: what it is of, its code where it has one, and how many words it takes. */
export type SaidUnit = {
  readonly kind: FigureKind;
  readonly unit: UnitCode;
  readonly factor: number;
  readonly length: number;
};

const codes: Readonly<Partial<Record<UnitCode, string>>> = {
  V: 'v, volt, volts, vdc, v dc, volts dc, vac, v ac, volts ac',
  mV: 'mv, millivolt, millivolts, mv ac, mv dc',
  A: 'a, amp, amps, ampere, amperes',
  mA: 'ma, milliamp, milliamps, milliampere, milliamperes',
  kA: 'ka, kiloamp, kiloamps, kiloampere, kiloamperes',
  'A.h': 'ah, a h, amp hour, amp hours, ampere hour, ampere hours',
  Ohm: 'ω, ohm, ohms',
  mOhm: 'mω, mohm, mohms, milliohm, milliohms',
  Cel: '°c, c, celsius, deg c, degrees c, degree c, degrees celsius, centigrade',
  '[degF]': '°f, f, fahrenheit, deg f, degrees f, degree f, degrees fahrenheit',
  'N.m': 'nm, n m, newton metre, newton metres, newton meter, newton meters',
  '[lbf_av].[ft_i]':
    'lbf ft, lb ft, lbs ft, ft lb, ft lbs, ft lbf, lbft, ftlb, ftlbs, foot pound, foot pounds, pound foot, pound feet',
  '[lbf_av].[in_i]': 'lbf in, lb in, lbs in, in lb, in lbs, in lbf, inch pound, inch pounds',
  'kgf.m': 'kgf m, kg m, kgm',
  ms: 'ms, millisecond, milliseconds',
  s: 's, sec, secs, second, seconds',
  min: 'min, mins, minute, minutes',
  h: 'h, hr, hrs, hour, hours',
  d: 'd, day, days',
  wk: 'week, weeks',
  mo: 'month, months',
  a: 'year, years, yr, yrs',
  Hz: 'hz, hertz',
  '/min': 'rpm, r min, revs, revs per minute, turns a minute, turns per minute',
  L: 'l, litre, litres, liter, liters',
  '[cin_i]': 'cu in, cubic inch, cubic inches, cid',
  mm2: 'mm2, mm^2, sq mm, mm sq, square mm, mm squared, square millimetre, square millimetres, square millimeters, qmm',
  mm: 'mm, millimetre, millimetres, millimeter, millimeters',
  m: 'm, metre, metres, meter, meters',
  '[in_i]': "in, inch, inches, \", ''",
  '[ft_i]': "ft, foot, feet, '",
  W: 'w, watt, watts',
  kW: 'kw, kilowatt, kilowatts',
  '%': '%, percent, per cent',
};

/** Units that are a multiple of one with a code. */
const multiples: readonly (readonly [string, UnitCode, number])[] = [
  ['cm, centimetre, centimetres, centimeter, centimeters', 'm', 0.01],
  ['cc, ccm, cm3', 'L', 0.001],
  ['μa', 'mA', 0.001],
];

const ownKinds: readonly (readonly [string, FigureKind])[] = [
  ['awg, gauge, ga', 'gauge'],
  ['cylinder, cylinders, cyl, cyls, pots', 'cylinders'],
  ['count, counts', 'counts'],
  ['digit, digits, dgt, dgts', 'digits'],
  ['°, deg, degree, degrees', 'degrees'],
];

type UnitEntry = readonly [words: string, unit: Omit<SaidUnit, 'length'>];

function entries(said: string, unit: UnitEntry[1]): UnitEntry[] {
  return said.split(', ').map((words) => [words, unit]);
}

const units: ReadonlyMap<string, UnitEntry[1]> = new Map([
  ...Object.entries(codes).flatMap(([code, said]) => {
    const unit = code as UnitCode;
    return entries(said, { kind: unitDimension(unit), unit, factor: 1 });
  }),
  ...multiples.flatMap(([said, unit, factor]) =>
    entries(said, { kind: unitDimension(unit), unit, factor }),
  ),
  ...ownKinds.flatMap(([said, kind]) => entries(said, { kind, unit: '1', factor: 1 })),
]);

const longest = 3;

/** Words behind which "a" and "in" are still units: "200 a over 1.5 m", "60 in of 25 mm2". */
const connectors: readonly string[] = [
  ...['at', 'over', 'through', 'of', 'and', 'for', 'with', 'from', 'on', 'long', 'what', 'is'],
  ...['petrol', 'diesel', 'sae', 'en', 'din', 'iec', 'jis', 'mca', 'cca', 'fuse', 'mini'],
  ...['standard', 'opens', 'when', 'rest', 'cable'],
];

/** "12.45 a reading", "600 in EN", "12.4 meter 1 %": what only looks like a unit. */
function isNoUnit(tokens: readonly Token[], at: number): boolean {
  const [before, said, next, afterNext] = tokens.slice(at - 1, at + 3);
  if (said?.text === 'meter') return next?.kind === 'number' && afterNext?.text === '%';
  if (said?.text === 'in')
    return next?.kind === 'word' && !connectors.slice(0, 12).includes(next.text);
  if (said?.text !== 'a' || said.isCapital || before?.end === said.start) return false;
  return next?.kind === 'word' && !connectors.includes(next.text);
}

/** The unit that begins at a place, the longest that fits. */
export function readUnit(tokens: readonly Token[], at: number): SaidUnit | undefined {
  const words = tokens
    .slice(at, at + longest)
    .map((token) => (token.kind === 'word' ? token.text : '0'));
  for (let length = words.length; length > 0; length -= 1) {
    const found = units.get(words.slice(0, length).join(' '));
    if (found !== undefined && !(length === 1 && isNoUnit(tokens, at))) return { ...found, length };
  }
  return undefined;
}

const signs: Readonly<Partial<Record<UnitCode, string>>> = {
  'A.h': 'Ah',
  Ohm: 'Ω',
  mOhm: 'mΩ',
  Cel: '°C',
  '[degF]': '°F',
  'N.m': 'N·m',
  '[lbf_av].[ft_i]': 'lbf·ft',
  '[lbf_av].[in_i]': 'lbf·in',
  'kgf.m': 'kgf·m',
  '/min': 'rpm',
  d: 'days',
  wk: 'weeks',
  mo: 'months',
  a: 'years',
  '[cin_i]': 'cu in',
  mm2: 'mm²',
  '[in_i]': 'in',
  '[ft_i]': 'ft',
  '[HP]': 'hp',
  '[psi]': 'psi',
  '1': '',
};

/** How a unit is written for a reader. */
export function unitSign(unit: UnitCode): string {
  return signs[unit] ?? unit;
}
