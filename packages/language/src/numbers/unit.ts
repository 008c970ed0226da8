/** What a unit measures, so far as telling readings apart needs it. */
type UnitKind =
  | 'voltage'
  | 'current'
  | 'charge'
  | 'resistance'
  | 'temperature'
  | 'torque'
  | 'time'
  | 'age'
  | 'frequency'
  | 'other';

/** A unit's sign as SI writes it, or how `Intl` or a text says it. */
export interface UnitSign {
  readonly kind: UnitKind;
  /** The international sign, put behind the figure. */
  readonly sign?: string;
  /** The unit's name for `Intl.NumberFormat`, and whether it is written out. */
  readonly intl?: { readonly unit: string; readonly display: 'short' | 'long' };
  /** The general text that says it. */
  readonly text?: 'unit.rpm' | 'unit.bare';
}

const sign = (kind: UnitKind, text: string): UnitSign => ({ kind, sign: text });
const intl = (kind: UnitKind, unit: string, display: 'short' | 'long' = 'short'): UnitSign => ({
  kind,
  intl: { unit, display },
});

/** How each UCUM code is shown. Signs: SI brochure, 9th edition; pound-foot as the trade has it. */
export const unitSigns: Readonly<Record<string, UnitSign>> = {
  V: sign('voltage', 'V'),
  mV: sign('voltage', 'mV'),
  A: sign('current', 'A'),
  mA: sign('current', 'mA'),
  kA: sign('current', 'kA'),
  'A.h': sign('charge', 'A·h'),
  Ohm: sign('resistance', 'Ω'),
  mOhm: sign('resistance', 'mΩ'),
  K: sign('temperature', 'K'),
  Cel: sign('temperature', '°C'),
  '[degF]': sign('temperature', '°F'),
  'N.m': sign('torque', 'N·m'),
  '[lbf_av].[ft_i]': sign('torque', 'lbf·ft'),
  '[lbf_av].[in_i]': sign('torque', 'lbf·in'),
  'kgf.m': sign('torque', 'kgf·m'),
  ms: sign('time', 'ms'),
  s: sign('time', 's'),
  min: intl('time', 'minute'),
  h: intl('time', 'hour'),
  d: intl('age', 'day', 'long'),
  wk: intl('age', 'week', 'long'),
  mo: intl('age', 'month', 'long'),
  a: intl('age', 'year', 'long'),
  Hz: sign('frequency', 'Hz'),
  '/min': { kind: 'frequency', text: 'unit.rpm' },
  L: sign('other', 'L'),
  '[cin_i]': sign('other', 'in³'),
  mm2: sign('other', 'mm²'),
  mm: sign('other', 'mm'),
  m: sign('other', 'm'),
  '[in_i]': sign('other', 'in'),
  '[ft_i]': sign('other', 'ft'),
  N: sign('other', 'N'),
  kN: sign('other', 'kN'),
  W: sign('other', 'W'),
  kW: sign('other', 'kW'),
  '[HP]': sign('other', 'hp'),
  kPa: sign('other', 'kPa'),
  bar: sign('other', 'bar'),
  '[psi]': sign('other', 'psi'),
  '%': sign('other', '%'),
  '1': { kind: 'other', text: 'unit.bare' },
};

/** True where a figure in the one unit can be a figure of the other. */
export function isAlike(unit: string, other: string): boolean {
  const kind = unitSigns[unit]?.kind;
  return (
    unit === other || (kind !== undefined && kind !== 'other' && kind === unitSigns[other]?.kind)
  );
}

/** Units in which people say how long they waited or held the key. */
export const durations: readonly string[] = ['ms', 's', 'min', 'h'];
