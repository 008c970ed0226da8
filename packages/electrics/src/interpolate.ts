/** A point of a table: at `x` the table gives `y`. */
export type TablePoint = readonly [x: number, y: number];

/**
 * The table's value at `x`: straight lines between its points, and outside them its end values.
 *
 * `points` is in ascending order of x and holds at least one point.
 */
export function interpolate(points: readonly [TablePoint, ...TablePoint[]], x: number): number {
  let [lowerX, lowerY] = points[0];
  if (x <= lowerX) {
    return lowerY;
  }
  for (const [upperX, upperY] of points.slice(1)) {
    if (x <= upperX) {
      return lowerY + ((upperY - lowerY) * (x - lowerX)) / (upperX - lowerX);
    }
    [lowerX, lowerY] = [upperX, upperY];
  }
  return lowerY;
}
