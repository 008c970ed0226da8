/**
 * How often the shipped flow finds the fault of random vehicles, what it costs, and how far that is
 * from the best that the answers allow. `VEHICLES` and `SEED` say how many and from which seed on.
 *
 * Baseline, on the same vehicles: "replace the usual part first". The vehicles, people, costs and
 * the posterior that serves as the best are common practice, no source (tests/virtual).
 */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { env } from 'node:process';
import { reportOf, systematicErrors, type PlayedVehicle } from '../virtual/measure.ts';
import { calibrationTable, errorsTable, figuresTable } from '../virtual/report-table.ts';

const program = new URL('../virtual/play-share.ts', import.meta.url);
const vehicles = Number(env['VEHICLES'] ?? 300);
const seed = Number(env['SEED'] ?? 20_261_125);
const processes = 2;

/** Plays all vehicles, an equal share in each process. */
async function playAll(chooser: string): Promise<readonly PlayedVehicle[]> {
  const shares = Array.from({ length: processes }, async (_, index) => {
    const count = Math.ceil((vehicles - index) / processes);
    const options = [chooser, seed + index, count, processes].map(String);
    const child = fork(program, options, { execArgv: ['--import', 'tsx', '--conditions=source'] });
    const [played] = (await once(child, 'message')) as [readonly PlayedVehicle[]];
    return played;
  });
  return (await Promise.all(shares)).flat();
}

const begin = performance.now();
const played = await playAll('flow');
const seconds = (performance.now() - begin) / 1000;
const report = reportOf(played);
const usual = reportOf(await playAll('usual-part'));

const heading = `${String(vehicles)} virtual vehicles from seed ${String(seed)}, ${seconds.toFixed(0)} s`;
process.stdout.write(
  `${[
    heading,
    '',
    figuresTable(report),
    '',
    calibrationTable(report),
    '',
    '"replace the usual part first", same vehicles:',
    figuresTable(usual),
    '',
    'errors that the answers did not force, in nats:',
    errorsTable(systematicErrors(played), 10),
    '',
    JSON.stringify({ seed, vehicles, flow: report, usualPart: usual.all }),
  ].join('\n')}\n`,
);
