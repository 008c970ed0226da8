/**
 * Measured reports as tables to read.
 */
import type { CalibrationBin, Figures, Report, SystematicError } from './measure.ts';

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const two = (value: number): string => value.toFixed(2);
const none = '–';

type Row = readonly [title: string, read: (figures: Figures) => string];

const rows: readonly Row[] = [
  ['vehicles', ({ vehicles }) => String(vehicles)],
  ['expected total cost, minutes', ({ cost }) => cost.toFixed(1)],
  ['  of these for what is done', ({ cost, minutes }) => (cost - minutes).toFixed(1)],
  ['minutes of checks', ({ minutes }) => two(minutes)],
  ['checks', ({ checks }) => two(checks)],
  ['first-ranked fault is right', ({ accuracy }) => percent(accuracy)],
  ['proved', ({ proved }) => percent(proved)],
  ['  of these right', ({ proved, provedRight }) => (proved > 0 ? percent(provedRight) : none)],
  ['wrong part fitted', ({ wrongParts }) => percent(wrongParts)],
  ['wrong help sent (dispatcher)', ({ wrongHelp }) => percent(wrongHelp)],
  ['log loss, nats', ({ logLoss }) => two(logLoss)],
];

/** What the same answers allow; left out where no column has it. */
const bestRows: readonly Row[] = [
  ['independent posterior, same answers:', () => ''],
  ['  its first-ranked fault is right', ({ best }) => (best ? percent(best.accuracy) : none)],
  ['  its log loss, nats', ({ best }) => (best ? two(best.logLoss) : none)],
  ['  our log loss over it', ({ best, logLoss }) => (best ? two(logLoss / best.logLoss) : none)],
  ['  it gives the truth 0.9 or more', ({ best }) => (best ? percent(best.whereSure) : none)],
  ['  there ours is right', ({ best }) => (best ? percent(best.accuracyWhereSure) : none)],
  ['  its mean Monte Carlo error', ({ best }) => (best ? best.error.toFixed(3) : none)],
];

/** What a baseline costs, that the others are told as a share of. */
const shareRows = (base: Figures): readonly Row[] => [
  ['cost, over the written order', ({ cost }) => two(cost / base.cost)],
  [
    '  were nothing asked, and done as it is',
    ({ cost, minutes }) => two((cost - minutes) / base.cost),
  ],
  ['minutes of checks, over it', ({ minutes }) => two(minutes / base.minutes)],
];

const width = 40;

function line(cells: readonly string[]): string {
  return cells
    .map((cell, index) => (index === 0 ? cell.padEnd(width) : cell.padStart(14)))
    .join('');
}

/** A column for each group of figures; with a baseline also what they are a share of. */
export function figuresTable(columns: Readonly<Record<string, Figures>>, base?: Figures): string {
  const all = [...rows, ...(base ? shareRows(base) : []), ...bestRows];
  const lines = all.map(([title, read]) => line([title, ...Object.values(columns).map(read)]));
  return [line(['', ...Object.keys(columns)]), ...lines].join('\n');
}

function binCells({ count, forecast, frequency }: CalibrationBin): readonly string[] {
  return count === 0 ? ['0', '', ''] : [String(count), two(forecast), two(frequency)];
}

/** Ten bins of the first-ranked fault's probability: how many, mean forecast, how often it was true. */
export function calibrationTable({ calibration, bestCalibration }: Report): string {
  const lines = calibration.map((bin, index) =>
    line([
      `${(index / 10).toFixed(1)} to ${((index + 1) / 10).toFixed(1)}`,
      ...binCells(bin),
      ...binCells(bestCalibration[index]!),
    ]),
  );
  const head = ['forecast', 'came true'];
  return [line(['first-ranked', 'ours', ...head, 'independent', ...head]), ...lines].join('\n');
}

/** The worst errors that the answers did not force. */
export function errorsTable(errors: readonly SystematicError[], most: number): string {
  return errors
    .slice(0, most)
    .map(({ cause, said, seeds, excess }) => {
      const shown = seeds.slice(0, 6).join(', ');
      return `${excess.toFixed(1).padStart(7)}  ${String(seeds.length).padStart(3)} ×  ${cause} taken for ${said} (seeds ${shown})`;
    })
    .join('\n');
}
