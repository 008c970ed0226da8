/**
 * Plays a share of the virtual vehicles in a process of its own. Started with a chooser's name, a
 * first seed, how many vehicles, a step between their seeds, and `best` where the independent
 * posterior is wanted; sends what came of each.
 */
import { argv } from 'node:process';
import { noStart, speaker } from '../support/no-start.ts';
import { knownAtOnce } from './known-at-once.ts';
import { randomOrder, writtenOrder } from './plain-order.ts';
import { flowChooser, playVehicle, usualPartFirst, type Chooser } from './measure.ts';

const choosers: Readonly<Record<string, () => Chooser>> = {
  'by-worth': () => flowChooser(noStart.chart, speaker),
  written: () => writtenOrder(noStart.chart),
  random: () => randomOrder(noStart.chart),
  'usual-part': () => usualPartFirst,
  known: () => knownAtOnce(noStart.chart),
};

const [, , name = '', first, count, step, best] = argv;
const choose = choosers[name]?.();
if (choose === undefined) throw new Error(`there is no chooser called ${name}`);
const played = Array.from({ length: Number(count) }, (_, index) =>
  playVehicle(Number(first) + index * Number(step), choose, best === 'best'),
);
process.send?.(played, () => process.disconnect());
