import { convert, type Quantity, type UnitCode } from '@keyturn/electrics';
import type { Problem } from './kind.ts';
import type { Question, SaidFigure } from './question.ts';
import { unitSign, type FigureKind } from './said-units.ts';

/** A figure that a question of some kind needs: what it is called, how it is typed, its range. */
export type Wanted = {
  readonly kind: FigureKind;
  readonly unit: UnitCode;
  readonly name: string;
  readonly example: string;
  readonly low: number;
  readonly high: number;
};

/** A figure as given: in the unit that was wanted, as the quantity that was typed, and as text. */
export type Given = {
  readonly value: number;
  readonly quantity: Quantity;
  readonly said: SaidFigure;
  readonly text: string;
};

type Wants = Readonly<Record<string, Wanted>>;

type Found<Needed extends Wants, Possible extends Wants> = {
  readonly type: 'found';
} & { readonly [Name in keyof Needed]: Given } & {
  readonly [Name in keyof Possible]: Given | undefined;
};

const wanted = (kind: FigureKind, unit: UnitCode, rest: Omit<Wanted, 'kind' | 'unit'>): Wanted => ({
  kind,
  unit,
  ...rest,
});

/** The names of the figures that kinds of questions ask for. */
export type FigureName =
  | 'lengthM'
  | 'areaMm2'
  | 'gauge'
  | 'currentA'
  | 'voltageV'
  | 'systemV'
  | 'dropV'
  | 'temperatureC'
  | 'capacityAh'
  | 'resistanceOhm'
  | 'speed'
  | 'rate'
  | 'displacementL'
  | 'minutes'
  | 'years';

/** The figures that kinds of questions ask for, with the range in which one can be meant. */
export const figures: Readonly<Record<FigureName, Wanted>> = {
  lengthM: wanted('length', 'm', {
    name: 'a length',
    example: '1.5 m or 5 ft',
    low: 0.01,
    high: 100,
  }),
  areaMm2: wanted('area', 'mm2', { name: 'an area', example: '25 mm²', low: 0.1, high: 500 }),
  gauge: wanted('gauge', '1', { name: 'a gauge', example: '2 AWG or 2/0 AWG', low: -3, high: 40 }),
  currentA: wanted('current', 'A', {
    name: 'a current',
    example: '200 A',
    low: 0.000_1,
    high: 5000,
  }),
  voltageV: wanted('voltage', 'V', { name: 'a voltage', example: '12.4 V', low: 1, high: 16 }),
  systemV: wanted('voltage', 'V', { name: 'a voltage', example: '12.4 V', low: 1, high: 36 }),
  dropV: wanted('voltage', 'V', { name: 'a drop', example: '0.3 V', low: 0.000_1, high: 30 }),
  temperatureC: wanted('temperature', 'Cel', {
    name: 'a temperature',
    example: '-7 °C or 20 °F',
    low: -60,
    high: 150,
  }),
  capacityAh: wanted('charge', 'A.h', { name: 'a capacity', example: '60 Ah', low: 1, high: 1000 }),
  resistanceOhm: wanted('resistance', 'Ohm', {
    name: 'a resistance',
    example: '85 Ω',
    low: 0,
    high: 1e7,
  }),
  speed: wanted('frequency', '/min', { name: 'a speed', example: '150 rpm', low: 1, high: 10_000 }),
  rate: wanted('frequency', 'Hz', { name: 'a rate', example: '6 Hz', low: 0.01, high: 200 }),
  displacementL: wanted('volume', 'L', {
    name: 'a displacement',
    example: '2.0 L',
    low: 0.1,
    high: 30,
  }),
  minutes: wanted('time', 'min', { name: 'a time', example: '40 min', low: 0, high: 1e6 }),
  years: wanted('time', 'a', { name: 'an age', example: '3 years', low: 0, high: 30 }),
};

const plural: Readonly<Partial<Record<FigureKind, string>>> = {
  length: 'lengths',
  area: 'areas',
  gauge: 'gauges',
  current: 'currents',
  voltage: 'voltages',
  temperature: 'temperatures',
  charge: 'capacities',
  resistance: 'resistances',
  frequency: 'speeds',
  volume: 'displacements',
  time: 'times',
};

/** A figure in the unit that is wanted, or what keeps it from being meant. */
export function giveFigure(said: SaidFigure, want: Wanted): Given | Problem {
  const { quantity } = said;
  const own = said.kind === 'gauge' || said.kind === 'bare';
  const value = own ? quantity.value : convert(quantity, want.unit).value;
  if (value >= want.low && value <= want.high) return { value, quantity, said, text: said.text };
  const end = (figure: number): string =>
    said.kind === 'gauge' && figure < 1 ? `${1 - figure}/0` : String(figure);
  const range = `${end(want.low)} to ${end(want.high)} ${said.kind === 'gauge' ? 'AWG' : unitSign(want.unit)}`;
  return {
    type: 'problem',
    reasons: [`${said.text} cannot be right for ${want.name}: it goes from ${range.trim()}`],
    place: said,
  };
}

function pick(question: Question, want: Wanted): Given | Problem | undefined {
  const [first, second] = question.figures(want.kind);
  if (first === undefined) return undefined;
  if (second !== undefined) {
    return {
      type: 'problem',
      reasons: [
        `two ${plural[want.kind] ?? 'figures'}, ${first.text} and ${second.text}: give one`,
      ],
      place: second,
    };
  }
  question.take(first);
  return giveFigure(first, want);
}

/**
 * Takes the figures that a kind of question needs, and those that it may have. All that are missing
 * are named at once.
 */
export function takeFigures<Needed extends Wants, Possible extends Wants>(
  question: Question,
  needed: Needed,
  possible: Possible,
): Found<Needed, Possible> | Problem {
  const all: Record<string, Given | undefined> = {};
  const missing: string[] = [];
  for (const [name, want] of [...Object.entries(needed), ...Object.entries(possible)]) {
    const given = pick(question, want);
    if (given !== undefined && 'type' in given) return given;
    if (given === undefined && Object.hasOwn(needed, name)) {
      missing.push(`${want.name} (as in ${want.example})`);
    }
    all[name] = given;
  }
  if (missing.length > 0)
    return { type: 'problem', reasons: missing.map((each) => `${each} is missing`) };
  return { type: 'found', ...all } as Found<Needed, Possible>;
}
