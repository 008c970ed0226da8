/**
 * Plays a share of the virtual vehicles in a process of its own. Started with a chooser's name, a
 * first seed, how many vehicles, and a step between their seeds; sends what came of each.
 */
import { argv } from 'node:process';
import { noStart, speaker } from '../support/no-start.ts';
import { flowChooser, playVehicle, usualPartFirst, type Chooser } from './measure.ts';

const choosers: Readonly<Record<string, Chooser>> = {
  flow: flowChooser(noStart.chart, speaker),
  'usual-part': usualPartFirst,
};

const [, , name = '', first, count, step] = argv;
const choose = choosers[name];
if (choose === undefined) throw new Error(`there is no chooser called ${name}`);
const played = Array.from({ length: Number(count) }, (_, index) =>
  playVehicle(Number(first) + index * Number(step), choose),
);
process.send?.(played, () => process.disconnect());
