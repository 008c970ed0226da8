/**
 * What the numbers cost: one full solution of a starting circuit, and one decision at a bound.
 *
 * Baseline, in the same run: a bare loop that does as many multiplications and additions, and calls
 * `Math.asinh`, `Math.sqrt`, `Math.exp` and `Math.hypot` as often, as the code that is measured.
 */
import {
  attemptStart,
  batteryModel,
  decide,
  engineLoad,
  solveCircuit,
  type Bound,
  type CrankingCircuit,
  type Quantity,
} from '@keyturn/electrics';

const rounds = 40;
const perRound = 20_000;

const circuit: CrankingCircuit = {
  battery: batteryModel({
    ratingA: 550,
    health: 0.9,
    restV: 12.55,
    technology: 'flooded',
    temperatureC: 5,
    series: 1,
  }),
  positiveClampOhm: 0.0001,
  negativeClampOhm: 0.0001,
  positiveCableOhm: 0.0009,
  groundCableOhm: 0.0005,
  contactsOhm: 0.0004,
  controlOhm: 0.05,
  solenoid: { pullInOhm: 0.16, holdInOhm: 0.72, operateV: 7, releaseV: 3.5 },
  motor: { emfPerSpeed: 0.36, resistanceOhm: 0.0051, brushV: 0.6, frictionA: 25, efficiency: 0.9 },
  engine: engineLoad({
    fuel: 'petrol',
    displacementL: 1.6,
    oil: '5W-30',
    temperatureC: 5,
    drag: 1,
  }),
};

const low: Bound = {
  low: 9.6,
  high: 9.6,
  unit: 'V',
  source: { provenance: 'published', text: 'load-test table' },
};

/** Readings around the bound, so that nothing can be worked out once for all. */
const readings: readonly Quantity[] = Array.from({ length: 64 }, (_, index) => ({
  value: 9.4 + index / 160,
  unit: 'V',
  resolution: 0.01,
}));

/** Circuits that differ a little, for the same reason. */
const circuits: readonly CrankingCircuit[] = Array.from({ length: 64 }, (_, index) => ({
  ...circuit,
  groundCableOhm: 0.0004 + index / 100_000,
}));

/** How often the code calls a function of Math, in one call of the code. */
function callsOf(name: 'asinh' | 'sqrt' | 'exp' | 'hypot', work: () => unknown): number {
  const functions: Record<string, unknown> = Math as never;
  const original = functions[name] as (...values: readonly number[]) => number;
  let calls = 0;
  functions[name] = (...values: readonly number[]): number => {
    calls += 1;
    return original(...values);
  };
  work();
  functions[name] = original;
  return calls;
}

// Counted by hand in solve-circuit.ts: multiplications, divisions, additions and comparisons of one
// step of the root's search, of which each calls asinh once or twice; and of one decision.
const operationsPerAsinh = 14;
const operationsPerDecision = 45;

/** As many operations of the same kinds, one hanging on the other as in a solution. */
function bareLoop(
  seed: number,
  count: {
    readonly asinh: number;
    readonly sqrt: number;
    readonly exp: number;
    readonly hypot: number;
    readonly operations: number;
  },
): number {
  let value = seed;
  for (let index = 0; index < count.operations; index += 1) value = value * 0.999 + 0.001;
  for (let index = 0; index < count.asinh; index += 1) value = Math.asinh(value) + 1;
  for (let index = 0; index < count.sqrt; index += 1) value = Math.sqrt(value) + 1;
  for (let index = 0; index < count.exp; index += 1) value = Math.exp(-value) + 1;
  for (let index = 0; index < count.hypot; index += 1) value = Math.hypot(value, 1) / 2;
  return value;
}

function countOf(work: () => unknown, operations: (asinh: number) => number) {
  const asinh = callsOf('asinh', work);
  return {
    asinh,
    sqrt: callsOf('sqrt', work),
    exp: callsOf('exp', work),
    hypot: callsOf('hypot', work),
    operations: operations(asinh),
  };
}

let sink = 0;

/** Microseconds for one call, over a round. */
function timed(work: (index: number) => number): number {
  const begin = process.hrtime.bigint();
  for (let index = 0; index < perRound; index += 1) sink += work(index);
  return Number(process.hrtime.bigint() - begin) / 1000 / perRound;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

function compare(
  what: string,
  mostMicro: number,
  work: { readonly ours: (index: number) => number; readonly bare: (index: number) => number },
): void {
  const ours: number[] = [];
  const bare: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    bare.push(timed(work.bare));
    ours.push(timed(work.ours));
  }
  const ratio = median(ours.map((value, index) => value / (bare[index] ?? 1)));
  process.stdout.write(
    `${what}: ${median(ours).toFixed(2)} µs (at most ${String(mostMicro)} µs), ${ratio.toFixed(1)} × the bare loop of ${median(bare).toFixed(2)} µs\n`,
  );
}

const at = <One>(all: readonly One[], index: number): One => all[index % all.length] as One;

const solving = countOf(
  () => solveCircuit(circuit),
  (asinh) => asinh * operationsPerAsinh,
);
compare('one full solution of a starting circuit', 20, {
  ours: (index) => solveCircuit(at(circuits, index)).speed,
  bare: (index) => bareLoop(index, solving),
});

const attempting = countOf(
  () => attemptStart(circuit),
  (asinh) => asinh * operationsPerAsinh,
);
compare('start held: pull-in, first moment and steady speed', 20, {
  ours: (index) => attemptStart(at(circuits, index)).windingA,
  bare: (index) => bareLoop(index, attempting),
});

const deciding = countOf(
  () => decide(at(readings, 7), { low }),
  () => operationsPerDecision,
);
compare('one decision at a bound', 2, {
  ours: (index) => decide(at(readings, index), { low }).probability,
  bare: (index) => bareLoop(index, deciding),
});

if (!Number.isFinite(sink)) throw new Error('a figure was not finite');
