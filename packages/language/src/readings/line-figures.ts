import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import type { SaidNumber, Token } from '../typed/token.ts';
import { bareUnit } from '../numbers/units-said.ts';

/** A figure that was, or a figure put in the place of one that is denied. */
export type Earlier = 'was' | 'denied';

/** What the line is read against. */
export interface LineContext {
  readonly lexicon: Lexicon;
  /** The reading in hand, or what a correction without a name means. */
  readonly inHand: CheckPhrases | undefined;
  /** The kit of the case; empty where nothing is known of it. */
  readonly kit: readonly string[];
  /** The unit in which a bare figure of a unit is meant: °F for °C where the region uses it. */
  readonly unitHere: (unit: string) => string;
  /** What the vehicle's system is rated for, in volts. */
  readonly nominal: 12 | 24;
}

/** A figure with its unit and the place of its tokens. */
export interface SaidFigure {
  readonly value: number;
  readonly decimals: number;
  /** The other way to read it: 12.65 for the "12.650" of a language that groups with a dot. */
  readonly other?: SaidNumber;
  readonly unit: string | undefined;
  readonly start: number;
  readonly end: number;
}

/** Tokens as a line of text. */
export function textOf(tokens: readonly Token[]): string {
  return tokens
    .map((token) =>
      token.kind === 'number' ? `${token.value < 0 ? '-' : ''}${token.digits}` : token.text,
    )
    .join(' ')
    .trim();
}

/** Leaves out what is only named to be denied: the "not 12.5" of "not 12.5, 12.1". */
export function withoutDenied(
  tokens: readonly Token[],
  { lexicon }: LineContext,
): { kept: readonly Token[]; isDenied: boolean } {
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  const at = tokens.findIndex(
    (token, index) =>
      token.kind === 'word' &&
      lexicon.words.negators.includes(token.text) &&
      tokens[index + 1]?.kind === 'number',
  );
  if (at < 0 || numbers < 2) return { kept: tokens, isDenied: false };
  const unit = lexicon.readUnit(tokens, at + 2);
  const end = at + 2 + (unit?.length ?? 0);
  return { kept: [...tokens.slice(0, at), ...tokens.slice(end)], isDenied: true };
}

/** Every figure with the unit behind it; a number that belongs to a name is none. */
export function findFigures(tokens: readonly Token[], { lexicon }: LineContext): SaidFigure[] {
  const inNames = numbersInNames(tokens, lexicon);
  return tokens.flatMap((token, start) => {
    if (token.kind !== 'number' || inNames.has(start)) return [];
    const unit = lexicon.readUnit(tokens, start + 1);
    return [
      {
        value: token.value,
        decimals: token.decimals,
        ...(token.other === undefined ? {} : { other: token.other }),
        unit: unit === undefined || unit.code === bareUnit ? undefined : unit.code,
        start,
        end: start + 1 + (unit?.length ?? 0),
      },
    ];
  });
}

/** Where numbers belong to a name, as in "terminal 50: 9.5". */
function numbersInNames(tokens: readonly Token[], { checks, reader }: Lexicon): Set<number> {
  const inside = new Set<number>();
  const named = [...checks.values()].flatMap(({ names }) => names.filter(hasNumber));
  tokens.forEach((token, at) => {
    if (token.kind !== 'number') return;
    for (const name of named) {
      const index = name.indexOf(token.digits);
      const start = at - index;
      const stretch = index < 0 || start < 0 ? [] : tokens.slice(start, start + name.length);
      if (reader.literally(stretch).join(' ') === name.join(' ') && stretch.length > 1)
        inside.add(at);
    }
  });
  return inside;
}

function hasNumber(name: readonly string[]): boolean {
  return name.length > 1 && name.some((term) => /^\d+$/.test(term));
}

/** "less than 12": no figure, only a bound. */
export function hasBoundOnly(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  const before = figures.map(({ start }) => textOf(tokens.slice(Math.max(start - 4, 0), start)));
  return before.some((said) =>
    lexicon.words.boundsOnly.some((word) => said === word || said.endsWith(` ${word}`)),
  );
}

/** True where "was" stands before a figure and something named stands before that. */
export function speaksOfEarlier(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon }: LineContext,
): boolean {
  return figures.some(({ start }) => {
    const before = textOf(tokens.slice(Math.max(start - 4, 0), start));
    return lexicon.words.earlier.some((word) => before.endsWith(` ${word}`));
  });
}
