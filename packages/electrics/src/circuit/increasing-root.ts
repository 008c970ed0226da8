const mostSteps = 100;
const precision = 1e-14;

/**
 * Where a continuous increasing function is zero, between `low` (where it is below zero) and `high`
 * (where it is zero or above), to the precision of the numbers.
 *
 * Source: false position after Anderson and Björck, which keeps the root between its two ends.
 */
export function increasingRoot(value: (x: number) => number, low: number, high: number): number {
  let valueLow = value(low);
  let valueHigh = value(high);
  if (valueLow >= 0) return low;
  let root = high;
  for (let step = 0; step < mostSteps; step += 1) {
    const next = (low * valueHigh - high * valueLow) / (valueHigh - valueLow);
    const valueNext = value(next);
    const moved = Math.abs(next - root);
    root = next;
    if (valueNext === 0 || moved <= precision * Math.abs(next)) return root;
    if (valueNext < 0) {
      valueHigh *= remaining(valueNext, valueLow);
      [low, valueLow] = [next, valueNext];
    } else {
      valueLow *= remaining(valueNext, valueHigh);
      [high, valueHigh] = [next, valueNext];
    }
  }
  return root;
}

/** What is left of the value at the end that stays, so that the other does not creep. */
function remaining(next: number, replaced: number): number {
  const left = 1 - next / replaced;
  return left > 0 ? left : 0.5;
}
