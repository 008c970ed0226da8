/**
 * A measured report as a table to read.
 */
import type { CalibrationBin, Figures, Report, SystematicError } from './measure.ts';

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const two = (value: number): string => value.toFixed(2);

const rows: readonly (readonly [title: string, read: (figures: Figures) => string])[] = [
  ['vehicles', ({ vehicles }) => String(vehicles)],
  ['first-ranked fault is right', ({ accuracy }) => percent(accuracy)],
  ['  the most that the same answers allow', ({ attainable }) => percent(attainable)],
  [
    '  where they give the truth 0.9 or more',
    ({ accuracyWhereSure }) => percent(accuracyWhereSure),
  ],
  ['  share of such vehicles', ({ whereSure }) => percent(whereSure)],
  ['proved', ({ proved }) => percent(proved)],
  ['  of these right', ({ provedRight }) => percent(provedRight)],
  ['minutes of asking', ({ minutes }) => two(minutes)],
  ['checks asked', ({ checks }) => two(checks)],
  ['wrong part fitted', ({ wrongParts }) => percent(wrongParts)],
  ['wrong help sent (dispatcher)', ({ wrongHelp }) => percent(wrongHelp)],
  ['expected cost, minutes', ({ cost }) => cost.toFixed(1)],
  ['log loss, nats', ({ logLoss }) => two(logLoss)],
  ['  of the independent posterior', ({ independentLogLoss }) => two(independentLogLoss)],
  ['  its mean Monte Carlo error', ({ independentError }) => independentError.toFixed(3)],
];

function line(cells: readonly string[]): string {
  return cells.map((cell, index) => (index === 0 ? cell.padEnd(42) : cell.padStart(12))).join('');
}

/** One column for all and one for each role. */
export function figuresTable({ all, byRole }: Report): string {
  const columns = { all, ...byRole };
  const lines = rows.map(([title, read]) => line([title, ...Object.values(columns).map(read)]));
  return [line(['', ...Object.keys(columns)]), ...lines].join('\n');
}

function binCells({ count, forecast, frequency }: CalibrationBin): readonly string[] {
  return count === 0 ? ['0', '', ''] : [String(count), two(forecast), two(frequency)];
}

/** Ten bins of the first-ranked fault's probability: how many, mean forecast, how often it was true. */
export function calibrationTable({ calibration, independentCalibration }: Report): string {
  const lines = calibration.map((bin, index) =>
    line([
      `${(index / 10).toFixed(1)} to ${((index + 1) / 10).toFixed(1)}`,
      ...binCells(bin),
      ...binCells(independentCalibration[index]!),
    ]),
  );
  const head = [
    'first-ranked',
    'ours',
    'forecast',
    'came true',
    'independent',
    'forecast',
    'came true',
  ];
  return [line(head), ...lines].join('\n');
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
