/**
 * Points that fill a space of many dimensions evenly, the same every time.
 */

const primes = [
  2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97,
  101, 103,
];

/**
 * For each of `count` points its place, 0 to 1, along one dimension: each of `count` equal steps
 * has one point, in the order of the multiples of an irrational number (Kronecker's sequence with
 * roots of primes, from memory), so that dimensions are not tied to each other.
 *
 * @throws RangeError for a dimension of which there is none
 */
export function evenPlaces(count: number, dimension: number): Float64Array {
  const key = `${String(count)}/${String(dimension)}`;
  const known = laidOut.get(key);
  if (known !== undefined) return known;
  const made = layOut(count, dimension);
  laidOut.set(key, made);
  return made;
}

/** Counts and dimensions are few, and the same for every vehicle. */
const laidOut = new Map<string, Float64Array>();

function layOut(count: number, dimension: number): Float64Array {
  const prime = primes[dimension];
  if (prime === undefined) throw new RangeError(`no dimension ${String(dimension)}`);
  const turns = Array.from({ length: count }, (_, point) => ((point + 1) * Math.sqrt(prime)) % 1);
  const order = [...turns.keys()].sort((one, other) => (turns[one] ?? 0) - (turns[other] ?? 0));
  const places = new Float64Array(count);
  for (const [rank, point] of order.entries()) places[point] = (rank + 0.5) / count;
  return places;
}
