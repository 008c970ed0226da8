/**
 * One reading made of two figures: the worse of two losses, and what two batteries differ by.
 * Sources: the check asks for the worse side, and for the difference; common practice, no source.
 */
import { isAlike } from '../numbers/unit.ts';
import type { Token } from '../typed/token.ts';
import type { Lexicon } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import { type Doubtful, type SaidReading, judgeReading } from './doubtful.ts';
import { type LineContext, type SaidFigure, findFigures, isCount } from './line-figures.ts';
import { isTooMuchLost, mostLost } from './line-placing.ts';
import { hasPhrase } from './word-run.ts';
import { wordsOfEach } from './words-of-each.ts';

/** The reading that the figures of a text make together; undefined where they make none. */
export function readOfTwo(
  tokens: readonly Token[],
  context: LineContext,
): SaidReading | Doubtful | undefined {
  const form = context.inHand?.check.form;
  if (form?.kind !== 'reading' || form.range !== 'drop') return undefined;
  const figures = findFigures(tokens, context).filter((figure) => !isCount(figure));
  const [first] = figures;
  if (first === undefined || figures.some(({ unit }) => !isAlike(unit ?? 'V', form.unit)))
    return undefined;
  return form.expect === 'battery.halves'
    ? differenceOf(figures, context)
    : worseOf(figures, tokens, context);
}

/** "The worst is 0.6, the other 0.1", "0.02 at the minus and 0.35 at the plus": the greater. */
function worseOf(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  context: LineContext,
): SaidReading | Doubtful | undefined {
  const { inHand, lexicon } = context;
  const { cardinals } = lexicon.words;
  const { worse, sides } = figureWordsOf(lexicon.words);
  const form = inHand?.check.form;
  if (inHand === undefined || form?.kind !== 'reading') return undefined;
  const own = withoutConclusion(figures);
  const ones = Object.keys(cardinals).filter((word) => cardinals[word] === 1);
  const telling = [...sides, ...ones];
  const said = wordsOfEach(own, tokens, { telling, words: lexicon.words });
  // "Minus 0.3" is no less than nothing, but at the minus.
  const hasSide = ({ value, start, end }: SaidFigure, index: number): boolean => {
    const words = said[index] ?? [];
    // "0,3 na plusie" is no temperature above nought.
    const behind = tokens.slice(start + 1, end);
    return (
      (value < 0 && own.length > 1) ||
      [words, behind].some((own) => hasPhrase(own, sides)) ||
      words.some((token) => token.kind === 'mark' && token.text === '+') ||
      words.some((token) => isOne(token, lexicon))
    );
  };
  // "The minus 0.3, the plus next to nothing": each side of the battery has its clamp.
  const isOfClamps = form.expect === 'drop.clamp' && own.length <= sidesOfBattery;
  const isOfSides = isOfClamps && own.every(hasSide) && own.some((one) => !isTooMuchLost(one));
  if (!isOfSides && !hasPhrase(tokens, worse)) return undefined;
  // "0.02 on the worst one, and 10.3 while cranking": what nothing can lose is of another thing.
  const [most] = own
    .filter((one) => !isTooMuchLost(one))
    .map((figure) => ({ ...figure, value: Math.abs(figure.value) }))
    .toSorted((one, other) => inVolts(other) - inVolts(one));
  return most === undefined ? undefined : judgeReading(inHand, most, context);
}

/** "0.05 on the plus and 0.4 on the minus, so 0.4": what follows from the two is said again. */
function withoutConclusion(figures: readonly SaidFigure[]): readonly SaidFigure[] {
  const [one, other, last, more] = figures;
  if (one === undefined || other === undefined || last === undefined || more !== undefined)
    return figures;
  const most = Math.max(inVolts(one), inVolts(other));
  return inVolts(last) === most ? [one, other] : figures;
}

/** How much is lost; a bare figure is one of volts. */
function inVolts({ value, unit }: SaidFigure): number {
  return Math.abs(value) / (unit === 'mV' ? millivolts : 1);
}

const millivolts = 1000;

/** "0.3 on one". */
function isOne(token: Token, { words }: Lexicon): boolean {
  if (token.kind === 'word') return words.cardinals[token.text] === 1;
  return token.kind === 'number' && token.inWords === true && token.value === 1;
}

const sidesOfBattery = 2;

/** "12.6 and 12.2", "one 12.6, the other 12.2, so 0.4": how far they are apart, in V. */
function differenceOf(
  figures: readonly SaidFigure[],
  context: LineContext,
): SaidReading | Doubtful | undefined {
  const { inHand } = context;
  const volts = figures.filter(({ value, unit }) => unit !== 'mV' && value > mostLost);
  const [one, other, more] = volts;
  if (inHand === undefined || one === undefined) return undefined;
  // One voltage is no difference.
  if (other === undefined || more !== undefined) return { type: 'doubtful', readings: [] };
  if (Math.max(one.value, other.value) > mostOfOne) return undefined;
  const decimals = Math.max(one.decimals, other.decimals);
  const value = Number(Math.abs(one.value - other.value).toFixed(decimals));
  const [said, another] = figures.filter((figure) => !volts.includes(figure));
  if (another !== undefined || value > mostLost) return undefined;
  if (
    said !== undefined &&
    Math.abs(Math.abs(said.value) - value) > 10 ** -said.decimals / 2 + 1e-9
  )
    return undefined;
  const digits = value.toFixed(decimals);
  return judgeReading(inHand, { ...one, value, decimals, digits, unit: 'V' }, context);
}

/** V. No battery of 12 V has more. */
const mostOfOne = 18;
