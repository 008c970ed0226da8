/**
 * How well some readings taken with one meter fit what stands at the vehicle.
 */

/** One reading against what a perfect meter would show there; spreads are independent of the meter. */
export type Fit = {
  readonly shown: number;
  readonly figure: number;
  /** Wavering and resolution. */
  readonly spread: number;
  /** Where a gross error may lie, in the reading's unit. */
  readonly range: number;
};

const logTwoPi = Math.log(2 * Math.PI);

/**
 * Log density of readings with one meter, whose gain and offset are the same at each: a normal with
 * the covariance diag(spread²) + gain² y y' + offset² 1 1', by the matrix lemma for two columns. At
 * most one of them may be a gross error.
 */
export function readingsLogDensity(
  fits: readonly Fit[],
  meter: { readonly gain: number; readonly offset: number },
  grossError: number,
): number {
  if (fits.length === 0) return 0;
  const { gain, offset } = meter;
  const terms = fits.map(({ shown, figure, spread }) => {
    const weight = 1 / spread ** 2;
    const rest = shown - figure;
    const first = gain * figure;
    return {
      rest: rest * rest * weight,
      log: Math.log(spread) * 2,
      gg: first * first * weight,
      go: first * offset * weight,
      oo: offset * offset * weight,
      gr: first * rest * weight,
      or: offset * rest * weight,
    };
  });
  const sum = { rest: 0, log: 0, gg: 1, go: 0, oo: 1, gr: 0, or: 0 };
  for (const term of terms) {
    sum.rest += term.rest;
    sum.log += term.log;
    sum.gg += term.gg;
    sum.go += term.go;
    sum.oo += term.oo;
    sum.gr += term.gr;
    sum.or += term.or;
  }
  const density = (all: typeof sum, count: number): number => {
    const determinant = all.gg * all.oo - all.go * all.go;
    const explained =
      (all.oo * all.gr * all.gr - 2 * all.go * all.gr * all.or + all.gg * all.or * all.or) /
      determinant;
    return -0.5 * (all.rest - explained + all.log + Math.log(determinant) + count * logTwoPi);
  };
  const whole = density(sum, fits.length) + fits.length * Math.log1p(-grossError);
  let most = whole;
  const parts = [whole];
  for (const [index, term] of terms.entries()) {
    const without = {
      rest: sum.rest - term.rest,
      log: sum.log - term.log,
      gg: sum.gg - term.gg,
      go: sum.go - term.go,
      oo: sum.oo - term.oo,
      gr: sum.gr - term.gr,
      or: sum.or - term.or,
    };
    const part = density(without, fits.length - 1) + Math.log(grossError / fits[index]!.range);
    parts.push(part);
    most = Math.max(most, part);
  }
  return most + Math.log(parts.reduce((total, part) => total + Math.exp(part - most), 0));
}
