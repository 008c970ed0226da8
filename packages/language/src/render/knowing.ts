import type { TestFigures } from '@keyturn/core';
import type { KnowingLine } from '../flow-texts.ts';
import type { Figures } from '../numbers/figures.ts';

/** Lines with the figures of the part put into them, as far as these are known. */
export function knowingLines(
  lines: readonly KnowingLine[],
  known: TestFigures | undefined,
  figures: Figures,
): string[] {
  const told = known === undefined ? {} : toldOf(known, figures);
  return lines.map((line) => {
    if (typeof line === 'string') return line;
    const isKnown = [...line.knowing.matchAll(place)].every(([, name = '']) => name in told);
    if (!isKnown) return line.else;
    return line.knowing.replace(place, (_, name: string) => told[name] ?? '');
  });
}

/** A place to be filled by the name of a figure. */
const place = /\{\{(\w+)\}\}/gu;

/** The figures as they are written; a standard goes by its letters in every language. */
function toldOf(
  { load, rating, standard, rest }: TestFigures,
  { formatQuantity }: Figures,
): Readonly<Record<string, string>> {
  return {
    ...(load === undefined ? {} : { load: formatQuantity(load) }),
    ...(rating === undefined ? {} : { rating: formatQuantity(rating) }),
    ...(standard === undefined ? {} : { standard: standard.toUpperCase() }),
    ...(rest === undefined ? {} : { rest: formatQuantity(rest) }),
  };
}
