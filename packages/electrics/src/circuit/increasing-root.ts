const mostSteps = 250;
const precision = 1e-15;

/** A place and the function's value there. */
type Point = { readonly x: number; readonly y: number };

/** The end whose value is nearer to zero. */
function nearer(one: Point, other: Point): Point {
  return Math.abs(one.y) < Math.abs(other.y) ? one : other;
}

/**
 * Where the inverse parabola through three points crosses zero, as a part of the way from the
 * newest end to the other one; the middle where the function is not smooth enough for it.
 */
function nextPart(newest: Point, other: Point, replaced: Point): number {
  const place = (newest.x - other.x) / (replaced.x - other.x);
  const rise = (newest.y - other.y) / (replaced.y - other.y);
  if (!(rise ** 2 < place && (1 - rise) ** 2 < 1 - place)) return 0.5;
  const linear = (newest.y / (other.y - newest.y)) * (replaced.y / (other.y - replaced.y));
  const bend =
    ((replaced.x - newest.x) / (other.x - newest.x)) *
    (newest.y / (replaced.y - newest.y)) *
    (other.y / (replaced.y - other.y));
  return linear + bend;
}

/**
 * Where a continuous increasing function is zero, between `low` (where it is below zero) and `high`
 * (where it is zero or above), to the precision of the numbers.
 *
 * Source: Chandrupatla, Advances in Engineering Software 28 (1997), 145-149 (from memory): a chord,
 * then inverse parabolas, and bisection wherever they would creep, so that both ends close in.
 */
export function increasingRoot(value: (x: number) => number, low: number, high: number): number {
  let newest: Point = { x: high, y: value(high) };
  let other: Point = { x: low, y: value(low) };
  if (other.y >= 0) return low;
  if (newest.y <= 0) return high;
  const chord = newest.y / (newest.y - other.y);
  let part = chord > 0 ? chord : 0.5;
  for (let step = 0; step < mostSteps; step += 1) {
    const x = newest.x + part * (other.x - newest.x);
    const y = value(x);
    const isSameSide = y < 0 === newest.y < 0;
    const replaced = isSameSide ? newest : other;
    if (!isSameSide) other = newest;
    newest = { x, y };
    const best = nearer(newest, other);
    const least = (precision * Math.abs(best.x)) / Math.abs(other.x - newest.x);
    if (best.y === 0 || least > 0.5) return best.x;
    part = Math.min(1 - least, Math.max(least, nextPart(newest, other, replaced)));
  }
  return nearer(newest, other).x;
}
