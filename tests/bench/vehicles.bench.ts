/**
 * How often the shipped flow finds the fault of virtual vehicles, what it costs, and how far that
 * is from the best that the answers allow. `VEHICLES` and `SEED` say how many and from which seed on.
 *
 * Baselines, on the same vehicles: the written order and one by chance, each until a fault has
 * 0.95, and "replace the usual part first", which asks for the complaint alone. Beside them stands what
 * it would cost were the fault known at once and the flow's own remedy for it done. The vehicles,
 * people, costs and the posterior that serves as the best are common practice, no source
 * (tests/virtual).
 */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { env } from 'node:process';
import { reportOf, systematicErrors, type PlayedVehicle } from '../virtual/measure.ts';
import { calibrationTable, errorsTable, figuresTable } from '../virtual/report-table.ts';
import { print } from './print-figures.ts';

const program = new URL('../virtual/play-share.ts', import.meta.url);
const vehicles = Number(env['VEHICLES'] ?? 300);
const seed = Number(env['SEED'] ?? 20_261_125);
const processes = 2;

/** Plays all vehicles, an equal share in each process. */
async function playAll(chooser: string, best = ''): Promise<readonly PlayedVehicle[]> {
  const shares = Array.from({ length: processes }, async (_, index) => {
    const count = Math.ceil((vehicles - index) / processes);
    const options = [chooser, seed + index, count, processes, best].map(String);
    const child = fork(program, options, { execArgv: ['--import', 'tsx', '--conditions=source'] });
    const [played] = (await once(child, 'message')) as [readonly PlayedVehicle[]];
    return played;
  });
  return (await Promise.all(shares)).flat();
}

const begin = performance.now();
const played = await playAll('by-worth', 'best');
const ours = reportOf(played);
const written = reportOf(await playAll('written'));
const random = reportOf(await playAll('random'));
const usual = reportOf(await playAll('usual-part'));
const known = reportOf(await playAll('known'));
const seconds = ((performance.now() - begin) / 1000).toFixed(0);

print(`${String(vehicles)} virtual vehicles, seeds ${String(seed)} and on, ${seconds} s`);
print();
print(
  'ways of finding the fault: by worth (as shipped), the written order and one by chance until a',
);
print(
  'fault has 0.95, the usual part at once; and what would be done were the fault known at once',
);
const ways = {
  'by worth': ours.all,
  written: written.all,
  'by chance': random.all,
  'usual part': usual.all,
  'known at once': known.all,
};
print(figuresTable(ways, written.all));
print();
print('by worth, by role');
print(figuresTable(ours.byRole));
print();
print('by worth, how well forecasts came true');
print(calibrationTable(ours));
print();
print('by worth, the worst errors that the answers did not force, in nats');
print(errorsTable(systematicErrors(played), 10));
print();
print(JSON.stringify({ seed, vehicles, flow: ours, written: written.all }));
