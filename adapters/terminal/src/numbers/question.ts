import type { Quantity } from '@keyturn/electrics';
import { readUnit, type FigureKind, type SaidUnit } from './said-units.ts';
import { readTokens, type Token } from './tokens.ts';

/** A stretch of the text as typed. */
export type Place = { readonly start: number; readonly end: number };

/** A figure as typed, with what it is of. AWG numbers above 1/0 are negative: 2/0 is -1. */
export type SaidFigure = Place & {
  readonly kind: FigureKind;
  readonly quantity: Quantity;
  /** As typed, with its unit. */
  readonly text: string;
  /** Its first token and the one behind its last. */
  readonly tokens: readonly [first: number, behind: number];
};

/**
 * A question while it is read: what one kind of question has taken of it, and what is left over.
 * Made anew for every kind that looks at it.
 */
export type Question = {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** Tells whether one of the phrases stands in the question, and takes every one that does. */
  readonly says: (...phrases: readonly string[]) => boolean;
  /** The figures of one kind that are not taken yet. */
  readonly figures: (kind: FigureKind) => readonly SaidFigure[];
  /** The one figure of a kind beside which a word stands, taken with its word. */
  readonly labelled: (kind: FigureKind, labels: readonly string[]) => SaidFigure | undefined;
  readonly take: (figure: SaidFigure) => void;
  /** How many of a thing: the number before the phrase, 1 where none stands there; 0 without it. */
  readonly countOf: (phrase: string) => number;
  /** What nobody took, apart from words that mean nothing by themselves. */
  readonly leftOver: () => readonly Place[];
  /** Numbers behind which a word stands that is no unit. */
  readonly unknownUnits: () => readonly Place[];
};

const fillers: ReadonlySet<string> = new Set(
  `a an the of at for with and to in on by from per as or if it its is are be was were do does did
  what which how much many when where why that this there can should must will would may i my me we
  give tell show find please value figure number about some around roughly than so then now have has
  through over across under into out until off up volt volts amp amps take need long no = { } < > ' " '' any one kind`.split(
    /\s+/,
  ),
);

/** Number words. The first eight count things. */
const counted: readonly string[] = [
  '',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
];

const otherNumbers: readonly string[] = [
  ...['nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen'],
  ...['eighteen', 'nineteen', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty'],
  ...['ninety', 'hundred', 'thousand', 'half', 'zero', 'minus'],
];

/** Tells whether a word is a number, which changes an answer and so is never passed over. */
export function isNumberWord(word: string): boolean {
  return otherNumbers.includes(word) || counted.indexOf(word) > 1;
}

/** A word without the "s" of its plural. */
function stem(word: string): string {
  return word.length > 3 && word.endsWith('s') ? word.slice(0, -1) : word;
}

function stepOf(digits: string): number {
  const mark = digits.indexOf('.');
  return mark < 0 ? 1 : 10 ** (mark + 1 - digits.length);
}

function gaugeNumber(said: string): number {
  if (/^0+$/.test(said)) return 1 - said.length;
  return said.endsWith('/0') ? 1 - Number(said.charAt(0)) : Number(said);
}

/** "AWG 2", but not the 200 of "2 AWG 200 A". */
function followsGaugeWord(tokens: readonly Token[], at: number): boolean {
  const [second, before] = at > 1 ? tokens.slice(at - 2, at) : [undefined, tokens[at - 1]];
  return /^(?:awg|gauge)$/.test(before?.text ?? '') && second?.kind !== 'number';
}

function isGauge(tokens: readonly Token[], at: number): boolean {
  const said = tokens[at]?.text ?? '';
  return said.endsWith('/0') || /^0{2,4}$/.test(said) || followsGaugeWord(tokens, at);
}

/** "600 CCA" is a current, and its word stays to say after which standard. */
const labelUnit = { kind: 'current', unit: 'A', factor: 1, length: 0 } as const;

function unitOf(tokens: readonly Token[], at: number): SaidUnit | undefined {
  const behind = readUnit(tokens, at + 1);
  if (isGauge(tokens, at)) {
    const length = behind?.kind === 'gauge' ? behind.length : 0;
    return { kind: 'gauge', unit: '1', factor: 1, length };
  }
  return /^[cm]ca$/.test(tokens[at + 1]?.text ?? '') ? labelUnit : behind;
}

/** A figure and the words that belong to it: its unit, "minus" or "AWG" before it. */
function figureAt(tokens: readonly Token[], at: number, text: string): SaidFigure | undefined {
  const token = tokens[at];
  if (token?.kind !== 'number') return undefined;
  const { factor = 1, unit = '1', kind = 'bare', length = 0 } = unitOf(tokens, at) ?? {};
  const isMinus = tokens[at - 1]?.text === 'minus';
  const first = isMinus || followsGaugeWord(tokens, at) ? at - 1 : at;
  const behind = at + 1 + length;
  const start = tokens[first]?.start ?? token.start;
  const end = tokens[behind - 1]?.end ?? token.end;
  const typed = text.slice(start, end);
  const value = kind === 'gauge' ? gaugeNumber(token.text) : Number(token.text);
  return {
    start,
    end,
    text: typed,
    tokens: [first, behind],
    // A megohm folded to lower case would pass for a milliohm.
    kind: unit === 'mOhm' && /M[oO\u03a9\u2126]/.test(typed) ? 'megohms' : kind,
    quantity: {
      value: (isMinus ? -value : value) * factor,
      unit,
      resolution: kind === 'gauge' ? 1 : stepOf(token.text) * factor,
    },
  };
}

/** Makes a question of a text. Takes time in proportion to its length. */
export function createQuestion(text: string): Question {
  const tokens = readTokens(text);
  const figures = tokens.flatMap((_, at) => figureAt(tokens, at, text) ?? []);
  const inFigures = new Set(
    figures.flatMap(({ tokens: [first, behind] }) => indices(first, behind)),
  );
  const taken = new Set<number>();

  const isFree = ({ tokens: [first, behind] }: SaidFigure): boolean =>
    indices(first, behind).every((at) => !taken.has(at));
  const take = ({ tokens: [first, behind] }: SaidFigure): void => {
    for (const at of indices(first, behind)) taken.add(at);
  };
  const isWordAt = (at: number, said: string): boolean => {
    const token = tokens[at];
    return token !== undefined && stem(token.text) === stem(said);
  };
  /** Where a phrase stands, outside of figures. */
  const placesOf = (phrase: string): readonly (readonly number[])[] => {
    const words = phrase.split(' ');
    return tokens.flatMap((_, at) => {
      const all = indices(at, at + words.length);
      const fits = words.every((said, index) => isWordAt(at + index, said));
      return fits && all.every((one) => tokens[one]?.kind === 'number' || !inFigures.has(one))
        ? [all]
        : [];
    });
  };
  const isNear = (one: number, other: number): boolean =>
    indices(one, other).every((at) => fillers.has(tokens[at]?.text ?? '')) &&
    !/[,;]/.test(text.slice(tokens[one - 1]?.end, tokens[other]?.start));

  return {
    text,
    tokens,
    says: (...phrases) => {
      const places = phrases.flatMap(placesOf);
      for (const at of places.flat()) taken.add(at);
      return places.length > 0;
    },
    figures: (kind) => figures.filter((figure) => figure.kind === kind && isFree(figure)),
    labelled: (kind, labels) => {
      const places = labels.flatMap(placesOf);
      const free = figures.filter((figure) => figure.kind === kind && isFree(figure));
      const pairs = free.flatMap((figure) =>
        places.flatMap((place) => {
          const [first = 0] = place;
          const behind = first + place.length;
          const [from, to] = figure.tokens;
          if (behind <= from && isNear(behind, from)) return [{ figure, place, comes: 'before' }];
          return to <= first && isNear(to, first) ? [{ figure, place, comes: 'behind' }] : [];
        }),
      );
      // "rest 12.6 V, cranking 10.2 V" has its words before its figures throughout, or behind them.
      const firstFigure = Math.min(
        ...figures.filter((each) => each.kind === kind).map(({ tokens: [at] }) => at),
      );
      const leads = places.some(([at = 0]) => at < firstFigure);
      const found = pairs.find(({ comes }) => (comes === 'before') === leads) ?? pairs[0];
      if (found === undefined) return undefined;
      take(found.figure);
      for (const at of found.place) taken.add(at);
      return found.figure;
    },
    take,
    countOf: (phrase) => {
      const [place] = placesOf(phrase);
      if (place === undefined) return 0;
      for (const at of place) taken.add(at);
      const first = (place[0] ?? 0) - 1;
      // "2 x H7"
      const isTimes = tokens[first]?.text === 'x';
      const at = isTimes ? first - 1 : first;
      if (isTimes) taken.add(first);
      const before = tokens[at];
      const number =
        before?.kind === 'number' ? Number(before.text) : counted.indexOf(before?.text ?? 'none');
      if (number < 1) return 1;
      taken.add(at);
      return number;
    },
    leftOver: () =>
      tokens.flatMap((token, at): Place[] => {
        if (taken.has(at)) return [];
        const figure = figures.find(({ tokens: [first, behind] }) => at >= first && at < behind);
        if (figure !== undefined) return figure.tokens[0] === at ? [figure] : [];
        return fillers.has(token.text) ? [] : [token];
      }),
    unknownUnits: () =>
      figures.flatMap((figure) => {
        const next = tokens[figure.tokens[1]];
        const isWord =
          next?.kind === 'word' && !taken.has(figure.tokens[1]) && !fillers.has(next.text);
        return figure.kind === 'bare' && isWord ? [{ start: figure.start, end: next.end }] : [];
      }),
  };
}

function indices(first: number, behind: number): number[] {
  return Array.from({ length: Math.max(0, behind - first) }, (_, index) => first + index);
}
