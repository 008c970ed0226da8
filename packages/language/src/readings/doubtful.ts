import { type FigureJudgement, judgeFigure } from '@keyturn/core';
import type { SaidNumber } from '../typed/token.ts';
import type { CheckPhrases } from '../understand/lexicon.ts';
import type { Doubt } from '../understand/understood.ts';
import type { LineContext, SaidFigure } from './line-figures.ts';

/** A reading that was understood: which check, and its figure in the unit that was typed. */
export interface SaidReading {
  readonly check: string;
  readonly value: {
    readonly value: number;
    readonly unit: string;
    readonly resolution?: number;
    /** The load under which a voltage was read, where it is told: "9.2 V at 270 A". */
    readonly under?: { readonly value: number; readonly unit: string };
  };
}

/** Figures that are no readings as they stand: what may be meant, and what speaks against it. */
export interface Doubtful {
  readonly type: 'doubtful';
  readonly readings: readonly SaidReading[];
  readonly doubt?: Doubt;
}

/** A reading with the step in which it was typed. */
function readingOf(
  check: CheckPhrases,
  { value, decimals }: Pick<SaidNumber, 'value' | 'decimals'>,
  unit: string,
): SaidReading {
  const resolution = Number((10 ** -decimals).toFixed(decimals));
  // "0" is said of a display that shows nothing, however fine it is.
  const isBareZero = value === 0 && decimals === 0;
  return { check: check.id, value: { value, unit, ...(isBareZero ? {} : { resolution }) } };
}

/**
 * A figure as a reading of its check. Where a mark before three digits may be either, the way that
 * a meter can show there is taken; a figure that none can show is questioned.
 */
export function judgeReading(
  check: CheckPhrases,
  { value, decimals, digits, other, inWords, unit: said }: SaidFigure,
  { nominal, unitHere }: LineContext,
): SaidReading | Doubtful {
  const { form } = check.check;
  if (form.kind !== 'reading') return readingOf(check, { value, decimals }, said ?? '');
  const unit = said ?? unitHere(form.unit);
  const judge = (figure: number): FigureJudgement =>
    judgeFigure({ value: figure, unit }, form, nominal);
  const judged = judge(value);
  const reading = readingOf(check, { value, decimals }, unit);
  // "03" is 0.3 with its point left out.
  if (decimals === 0 && digits.length > 1 && digits.startsWith('0')) {
    const pointed = Number(`0.${digits.slice(1)}`);
    const meant = readingOf(check, { value: pointed, decimals: digits.length - 1 }, unit);
    return { type: 'doubtful', readings: [meant] };
  }
  // A meter out of its range shows a lone 1, and a hydrometer 1.265.
  if (said === undefined && form.range === 'battery-voltage' && isNoVoltage(value, decimals))
    return { type: 'doubtful', readings: decimals === 0 ? [reading] : [] };
  if (
    said === undefined &&
    form.range === 'rating' &&
    value < mostHours &&
    judged.type !== 'implausible'
  )
    return { type: 'doubtful', readings: [reading] };
  // Ten or a tenth: a loss is the tenth, a battery has the ten, and of a signal nobody can tell.
  if (inWords === true && other !== undefined && form.range !== 'battery-voltage') {
    const small = readingOf(check, other, unit);
    if (form.range === 'drop') return small;
    return { type: 'doubtful', readings: [reading, small] };
  }
  if (judged.type !== 'implausible') {
    // "1.24" of a battery is 12.4 sooner than next to nothing.
    const tenfold = Number((value * 10).toFixed(decimals));
    const isTenth = form.range === 'battery-voltage' && decimals > 0;
    if (!isTenth || judge(tenfold).type !== 'plausible') return reading;
    const meant = readingOf(check, { value: tenfold, decimals: decimals - 1 }, unit);
    return { type: 'doubtful', readings: [meant, reading] };
  }
  if (other !== undefined && judge(other.value).type === 'plausible')
    return readingOf(check, other, unit);
  const { likely, range, isRightAt24 } = judged;
  return {
    type: 'doubtful',
    readings:
      likely === undefined || isRightAt24
        ? []
        : [{ check: check.id, value: { value: likely.value, unit: likely.unit } }],
    doubt: { check: check.id, given: reading.value, range, isRightAt24 },
  };
}

/**
 * Ah that stand beside the amperes on a car's label, at most: without its unit a figure below may be
 * either those or the amperes of a motorcycle's. Common practice, no source.
 */
const mostHours = 120;

function isNoVoltage(value: number, decimals: number): boolean {
  return (value === 1 && decimals === 0) || (decimals === 3 && value > 1 && value < 1.4);
}

/**
 * What two or three figures for one reading may mean: a whole number and its decimals that were
 * typed apart ("12 4", "twelve four"), or any one of them, as "6 or 7" says itself. The same figure
 * said twice is one.
 */
export function meantByFigures(
  check: CheckPhrases,
  figures: readonly SaidFigure[],
  { nominal, unitHere, isEither }: LineContext & { readonly isEither: boolean },
): readonly SaidReading[] {
  const { form } = check.check;
  if (form.kind !== 'reading') return [];
  const unit = figures.find((figure) => figure.unit !== undefined)?.unit ?? unitHere(form.unit);
  const isPlausible = ({ value }: SaidReading): boolean =>
    judgeFigure(value, form, nominal).type === 'plausible';
  const [whole, decimals, more] = figures;
  const isApart =
    !isEither &&
    whole?.decimals === 0 &&
    decimals?.decimals === 0 &&
    more === undefined &&
    whole.unit === undefined &&
    decimals.value >= 0 &&
    decimals.value < 100;
  if (isApart) {
    const digits = String(decimals.value);
    const value = Number(`${String(whole.value)}.${digits}`);
    const joined = readingOf(check, { value, decimals: digits.length }, unit);
    return isPlausible(joined) ? [joined] : [];
  }
  return figures
    .map((figure) => readingOf(check, figure, figure.unit ?? unit))
    .filter(isPlausible)
    .slice(0, mostMeant);
}

const mostMeant = 3;
