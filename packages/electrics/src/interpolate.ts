/** A point of a table: at `x` the table gives `y`. */
export type TablePoint = readonly [x: number, y: number];

/** Points in ascending order of x, at least one. */
export type TablePoints = readonly [TablePoint, ...TablePoint[]];

/** The points that a table's rows, in ascending order, give one by one. */
export function tablePoints<Row>(
  [first, ...rest]: readonly [Row, ...Row[]],
  point: (row: Row) => TablePoint,
): TablePoints {
  return [point(first), ...rest.map(point)];
}

/**
 * The table's value at `x`: straight lines between its points, and outside them its end values.
 */
export function interpolate(points: TablePoints, x: number): number {
  let lower = points[0];
  if (x <= lower[0]) {
    return lower[1];
  }
  for (const upper of points) {
    if (x <= upper[0]) {
      return lower[1] + ((upper[1] - lower[1]) * (x - lower[0])) / (upper[0] - lower[0]);
    }
    lower = upper;
  }
  return lower[1];
}
