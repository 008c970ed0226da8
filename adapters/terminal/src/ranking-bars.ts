import type { RenderedFault } from '@keyturn/language';
import { columnsOf, padTo, wrapText } from './wrap.ts';

/** The least move worth drawing the ranking again for, as a share of one. */
const leastMove = 0.05;

/** How many faults are drawn. */
const mostFaults = 5;

/** The percent and the move, with the gaps around them and the bar. */
const figureColumns = 14;

/** True where a fault has moved enough to be worth showing. */
export function hasMoved(faults: readonly RenderedFault[]): boolean {
  return faults.some(({ share, before }) => Math.abs(share - before) >= leastMove);
}

/**
 * Up to five faults as bars of characters, each with its percent and how it moved since the turn
 * before. A name too long for its room is wrapped.
 */
export function rankingBars(faults: readonly RenderedFault[], width: number): string[] {
  const shown = faults.slice(0, mostFaults);
  const barColumns = width < 60 ? 10 : 20;
  const room = Math.max(1, width - barColumns - figureColumns);
  const names = Math.min(room, Math.max(0, ...shown.map(({ name }) => columnsOf(name))));
  return shown.flatMap(({ name, share, before }) => {
    const [first = '', ...more] = wrapText(name, names);
    const percent = shownPercent(share);
    const move = percent - shownPercent(before);
    const moved = move === 0 ? '' : `${move > 0 ? '+' : '-'}${String(Math.abs(move))}`;
    const figures = `${String(percent).padStart(3)} %  ${moved.padStart(4)}`;
    return [`${padTo(first, names)}  ${bar(share, barColumns)} ${figures}`.trimEnd(), ...more];
  });
}

function bar(share: number, columns: number): string {
  const filled = Math.round(share * columns);
  return '#'.repeat(filled) + '.'.repeat(columns - filled);
}

/** Whole percent; short of certainty never 100. */
function shownPercent(share: number): number {
  const rounded = Math.round(share * 100);
  return share < 1 ? Math.min(99, rounded) : 100;
}
