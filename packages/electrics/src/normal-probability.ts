const seriesLimit = 5;

function density(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Half the area under the curve between -z and z, by its power series: good near the middle. */
function centralArea(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > Math.abs(sum) * 1e-17; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return density(z) * sum;
}

/** The area beyond z (above 0), by its continued fraction: good far out, where it converges. */
function tailArea(z: number): number {
  let fraction = z;
  for (let step = 60; step >= 1; step -= 1) {
    fraction = z + step / fraction;
  }
  return density(z) / fraction;
}

/**
 * The probability that a standard normal variable is below `z`: 0 at minus infinity, 1 at plus
 * infinity, accurate to about 1e-14.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 (series) and 26.2.14
 * (continued fraction).
 */
export function normalProbability(z: number): number {
  if (z === Infinity || z === -Infinity) {
    return z > 0 ? 1 : 0;
  }
  if (Math.abs(z) <= seriesLimit) {
    return 0.5 + centralArea(z);
  }
  return z < 0 ? tailArea(-z) : 1 - tailArea(z);
}
