/**
 * The causes that leave one kind of circuit, and the hidden states drawn for it.
 */
import {
  ageLog,
  choicesLog,
  figuresLog,
  places,
  settingFrom,
  type SortedEvidence,
} from './answer-likelihood.ts';
import type { Cause, Electrics } from './causes.ts';
import { at, circuitState, isNoStart, restOf } from './circuit-state.ts';
import {
  drawPoint,
  fitGaussian,
  logDensity,
  plainGaussian,
  standardLogDensity,
  type Gaussian,
} from './gaussian.ts';
import type { Random } from './random.ts';

/** A cause by its place among all, and the log chance of the answers that hang on it alone. */
export type Member = { readonly cause: Cause; readonly index: number; readonly log: number };

type Sample = {
  readonly sought: Float64Array;
  /** Log chance of each member with this state; none where it would start. */
  readonly logs: Float64Array | undefined;
  readonly most: number;
};

/** A state so far behind the best of its kind, in nats, is not looked at further. */
const negligible = 25;
/** What a reading that fits can add, in nats. */
const headroom = 5;
/** So many states that count are enough. */
const enough = 60;
/** Meter, weather and the curve of rest voltage together, V. */
const restSpread = 0.08;

/** Draws states and weighs them (importance sampling, all proposals together in the denominator). */
export class CircuitKind {
  readonly members: readonly Member[];
  readonly #electrics: Electrics;
  readonly #evidence: SortedEvidence;
  readonly #random: Random;
  readonly #samples: Sample[] = [];
  readonly #proposals: { readonly gaussian: Gaussian | undefined; readonly count: number }[] = [];
  #tried = 0;
  #failed = 0;
  #most = -Infinity;
  #mostByChoices = -Infinity;

  constructor(
    electrics: Electrics,
    members: readonly Member[],
    from: { readonly evidence: SortedEvidence; readonly random: Random },
  ) {
    this.#electrics = electrics;
    this.members = members;
    this.#evidence = from.evidence;
    this.#random = from.random;
  }

  /** The best that a state came to, in nats. */
  get most(): number {
    return this.#most;
  }

  /** The same without the readings. */
  get mostByChoices(): number {
    return this.#mostByChoices;
  }

  /** How many states were drawn. */
  get drawn(): number {
    return this.#samples.length;
  }

  /** The relative error of the share that does not start, squared. */
  get startError(): number {
    return (this.#tried - this.#failed) / (this.#tried * Math.max(1, this.#failed));
  }

  /** Draws states as the vehicles are. */
  begin(count: number): void {
    this.#draw(undefined, count);
  }

  /** Draws more of them, some with the charge that was measured, until it is known how many start. */
  go(count: number, mostTries: number): void {
    const guided = this.#guidedByRest();
    this.#draw(guided, count);
    // The share that does not start must be known well, as every weight is divided by it.
    while (this.#failed < mostTries / 20 && this.#tried < mostTries) {
      this.#try(this.#random.normals(places));
    }
  }

  /** Draws states where the weights of those drawn so far lie, unless enough of them count. */
  improve(count: number): void {
    const known = this.#samples.filter(({ most }) => most > -Infinity);
    if (known.length < 3) return;
    const ratios = known.map(({ most, sought }) => most + this.#logRatio(sought));
    if (effectiveCount(ratios, 1) >= enough) return;
    const points = known.map(({ sought }) => sought);
    this.#draw(fitGaussian(points, temperedWeights(ratios)), count);
  }

  /** For every state, how much it adds to each member, over `scale` nats. */
  contributions(scale: number): readonly Float64Array[] {
    const all = this.#samples.length * (this.#failed / this.#tried);
    return this.#samples.flatMap(({ sought, logs }) => {
      if (logs === undefined) return [];
      const ratio = this.#logRatio(sought) - scale - Math.log(all);
      return [logs.map((log) => Math.exp(log + ratio))];
    });
  }

  /** The states' own normal, but for the charge that the battery's rest voltage tells of. */
  #guidedByRest(): Gaussian | undefined {
    const { whole, sought } = this.#evidence;
    const given = whole.given.get('battery-rest');
    const index = sought.indexOf(at.charge);
    if (given?.kind !== 'reading' || index < 0) return undefined;
    const vector = new Float64Array(places);
    const setting = settingFrom(whole, vector);
    const spread = restSpread * (setting.nominal / 12);
    let sum = 0;
    let first = 0;
    let second = 0;
    for (let charge = -4; charge <= 4; charge += 0.05) {
      vector[at.charge] = charge;
      const off = (restOf(setting, this.#electrics, vector) - given.value) / spread;
      const weight = Math.exp(-0.5 * (charge * charge + off * off));
      sum += weight;
      first += weight * charge;
      second += weight * charge * charge;
    }
    if (!(sum > 1e-30)) return undefined;
    const mean = new Float64Array(sought.length);
    const spreads = new Float64Array(sought.length).fill(1);
    mean[index] = first / sum;
    spreads[index] = Math.sqrt(Math.max(0.003, second / sum - (first / sum) ** 2)) * 1.2;
    return plainGaussian(mean, spreads);
  }

  #try(vector: Float64Array): void {
    const setting = settingFrom(this.#evidence.whole, vector);
    this.#tried += 1;
    if (isNoStart(circuitState(setting, this.#electrics, vector))) this.#failed += 1;
  }

  #draw(gaussian: Gaussian | undefined, count: number): void {
    const { sought: wanted } = this.#evidence;
    this.#proposals.push({ gaussian, count });
    for (let time = 0; time < count; time += 1) {
      const vector = this.#random.normals(places);
      const sought =
        gaussian === undefined
          ? new Float64Array(wanted.length).map((_, index) => vector[wanted[index]!]!)
          : drawPoint(gaussian, this.#random);
      for (const [index, place] of wanted.entries()) vector[place] = sought[index]!;
      this.#samples.push({ sought, ...this.#weigh(vector, gaussian === undefined) });
    }
  }

  #weigh(vector: Float64Array, isPlain: boolean): Pick<Sample, 'logs' | 'most'> {
    const evidence = this.#evidence;
    const setting = settingFrom(evidence.whole, vector);
    const state = circuitState(setting, this.#electrics, vector);
    const fails = isNoStart(state);
    if (isPlain) {
      this.#tried += 1;
      if (fails) this.#failed += 1;
    }
    if (!fails) return { logs: undefined, most: -Infinity };
    const chances = evidence.chancesIn(setting);
    const age = ageLog(evidence.whole, setting);
    const gain = headroom * evidence.figures.length;
    let most = -Infinity;
    const logs = new Float64Array(this.members.length).fill(-Infinity);
    for (const [place, { cause, index, log }] of this.members.entries()) {
      const chance = chances[index]!;
      if (chance === 0) continue;
      const supposed = { cause, state };
      const choices = Math.log(chance) + log + age + choicesLog(evidence, supposed);
      this.#mostByChoices = Math.max(this.#mostByChoices, choices);
      if (choices + gain < Math.max(this.#most, most) - negligible) continue;
      logs[place] = choices + figuresLog(evidence, supposed);
      most = Math.max(most, logs[place]);
    }
    this.#most = Math.max(this.#most, most);
    return { logs, most };
  }

  /** Log of the states' own density over that of all proposals together. */
  #logRatio(sought: Float64Array): number {
    const own = standardLogDensity(sought);
    const total = this.#samples.length;
    let mixed = 0;
    for (const { gaussian, count } of this.#proposals) {
      const log = gaussian === undefined ? own : logDensity(gaussian, sought);
      mixed += (count / total) * Math.exp(log - own);
    }
    return -Math.log(mixed);
  }
}

/** Weights raised to such a power that some dozen states count, not one. */
function temperedWeights(logs: readonly number[]): readonly number[] {
  const most = Math.max(...logs);
  const raised = (power: number): number[] => logs.map((log) => Math.exp(power * (log - most)));
  const wanted = Math.min(15, logs.length / 2);
  if (effectiveCount(logs, 1) >= wanted) return raised(1);
  let low = 0;
  let high = 1;
  for (let step = 0; step < 12; step += 1) {
    const power = (low + high) / 2;
    if (effectiveCount(logs, power) >= wanted) low = power;
    else high = power;
  }
  return raised(low);
}

/** How many of the weights, raised to a power, count: the square of their sum over that of squares. */
function effectiveCount(logs: readonly number[], power: number): number {
  const most = Math.max(...logs);
  let sum = 0;
  let squares = 0;
  for (const log of logs) {
    const weight = Math.exp(power * (log - most));
    sum += weight;
    squares += weight * weight;
  }
  return sum ** 2 / squares;
}
