/**
 * What the densities of the cells of one battery come to: the best less the worst. A hydrometer shows
 * 1.26 or 1260, and nobody does the sum who can type what it shows. Common practice, no source.
 */
import type { Token } from '../typed/token.ts';
import { onceFor } from '../once.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import type { SaidReading } from './doubtful.ts';
import { type LineContext, type SaidFigure, findFigures } from './line-figures.ts';
import { hasPhrase } from './word-run.ts';

/** A density that a cell can have, from empty to far too strong. */
interface Density {
  readonly value: number;
  readonly decimals: number;
}

/** Two cells tell how far they are apart; unasked, figures are those of cells from three on. */
const [fewest, fewestUnasked] = [2, 3];

/** A battery of 24 V has so many cells. */
const mostCells = 12;

/** How far the cells of a text are apart; undefined where it tells of none. */
export function readCells(tokens: readonly Token[], context: LineContext): SaidReading | undefined {
  const { inHand, lexicon } = context;
  const check = checkOfCells(lexicon);
  if (check === undefined) return undefined;
  const figures = findFigures(tokens, { ...context, inHand: check });
  const cells = figures.flatMap((figure) => densityOf(figure) ?? []);
  const isNamed = check === inHand || hasPhrase(tokens, figureWordsOf(lexicon.words).otherMeters);
  if (cells.length < (isNamed ? fewest : fewestUnasked)) return undefined;
  if (!isNamed && cells.some(({ decimals }) => decimals < thousandths)) return undefined;
  const values = cells.map(({ value }) => value);
  const decimals = Math.max(...cells.map((cell) => cell.decimals));
  const value = Number((Math.max(...values) - Math.min(...values)).toFixed(decimals));
  const others = figures.filter((figure) => densityOf(figure) === undefined);
  if (!others.every((figure) => figure.value === value || isNumberOfCell(figure))) return undefined;
  const resolution = Number((10 ** -decimals).toFixed(decimals));
  return { check: check.id, value: { value, unit: '1', resolution } };
}

const checkOfCells = onceFor(({ checks }: Lexicon): CheckPhrases | undefined =>
  [...checks.values()].find(
    ({ check: { form } }) => form.kind === 'reading' && form.range === 'density-difference',
  ),
);

const thousandths = 3;

/** "1.26", and "1260" with its point left out, which "1,260" may be as well. */
function densityOf({ value, decimals, unit }: SaidFigure): Density | undefined {
  if (unit !== undefined) return undefined;
  if (decimals > 1) return isDensity(value) ? { value, decimals } : undefined;
  return decimals === 0 && isDensity(value / 1000)
    ? { value: value / 1000, decimals: thousandths }
    : undefined;
}

function isDensity(value: number): boolean {
  return value >= 1 && value <= 1.4;
}

/** Which cell it is, or how many there are: "cell 4: 1.110". */
function isNumberOfCell({ value, decimals, unit }: SaidFigure): boolean {
  return unit === undefined && decimals === 0 && value >= 1 && value <= mostCells;
}
