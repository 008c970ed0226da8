/**
 * A normal distribution in some places of a vector, for proposals.
 */
import type { Random } from './random.ts';

/** Its mean, and the lower triangle whose product with its own transpose is the covariance. */
export type Gaussian = {
  readonly mean: Float64Array;
  readonly root: readonly Float64Array[];
  /** Log of the density's factor, without the part of 2π. */
  readonly logFactor: number;
};

/** The normal that fits weighted points, with some of the standard normal mixed in for safety. */
export function fitGaussian(points: readonly Float64Array[], weights: readonly number[]): Gaussian {
  const size = points[0]!.length;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = new Float64Array(size);
  for (const [index, point] of points.entries()) {
    for (let i = 0; i < size; i += 1) mean[i]! += (weights[index]! * point[i]!) / total;
  }
  const effective = total ** 2 / weights.reduce((sum, weight) => sum + weight ** 2, 0);
  // Few points make a covariance of few directions: the unit matrix counts as some more of them.
  const own = effective / (effective + 6);
  const covariance = Array.from({ length: size }, () => new Float64Array(size));
  for (const [index, point] of points.entries()) {
    for (let i = 0; i < size; i += 1) {
      for (let j = 0; j <= i; j += 1) {
        covariance[i]![j]! +=
          (weights[index]! * (point[i]! - mean[i]!) * (point[j]! - mean[j]!)) / total;
      }
    }
  }
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) covariance[i]![j]! *= own * 1.3;
    covariance[i]![i]! += 0.25 * (1 - own) + 0.0004;
  }
  return { mean, ...rootOf(covariance) };
}

/** Independent normals: each place's mean and spread. */
export function plainGaussian(mean: Float64Array, spreads: Float64Array): Gaussian {
  const root = Array.from(spreads, (spread, index) => {
    const row = new Float64Array(mean.length);
    row[index] = spread;
    return row;
  });
  return { mean, root, logFactor: -spreads.reduce((sum, spread) => sum + Math.log(spread), 0) };
}

function rootOf(covariance: readonly Float64Array[]): Pick<Gaussian, 'root' | 'logFactor'> {
  const size = covariance.length;
  const root = Array.from({ length: size }, () => new Float64Array(size));
  let logFactor = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = covariance[i]![j]!;
      for (let k = 0; k < j; k += 1) sum -= root[i]![k]! * root[j]![k]!;
      root[i]![j] = i === j ? Math.sqrt(Math.max(sum, 1e-9)) : sum / root[j]![j]!;
    }
    logFactor -= Math.log(root[i]![i]!);
  }
  return { root, logFactor };
}

/** A point drawn from it. */
export function drawPoint({ mean, root }: Gaussian, random: Random): Float64Array {
  const noise = random.normals(mean.length);
  return mean.map((value, i) => {
    let sum = value;
    for (let k = 0; k <= i; k += 1) sum += root[i]![k]! * noise[k]!;
    return sum;
  });
}

/** Log density, without the part of 2π that is the same for all. */
export function logDensity({ mean, root, logFactor }: Gaussian, point: Float64Array): number {
  const solved = new Float64Array(point.length);
  let square = 0;
  for (let i = 0; i < point.length; i += 1) {
    let sum = point[i]! - mean[i]!;
    for (let k = 0; k < i; k += 1) sum -= root[i]![k]! * solved[k]!;
    solved[i] = sum / root[i]![i]!;
    square += solved[i]! ** 2;
  }
  return logFactor - 0.5 * square;
}

/** Log density of the standard normal, without the same part. */
export function standardLogDensity(point: Float64Array): number {
  let square = 0;
  for (const value of point) square += value ** 2;
  return -0.5 * square;
}
