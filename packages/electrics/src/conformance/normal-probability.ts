/** A rational function: coefficients of numerator and denominator, the highest power first. */
type Rational = { readonly above: readonly number[]; readonly below: readonly number[] };

// W. J. Cody, Rational Chebyshev approximations for the error function, Mathematics of Computation
// 23 (1969), 631-637 (from memory; each checked against the series in the tests): erf(x)/x in x²,
// then erfc(x)·exp(x²) in x, then in 1/x² what erfc(x)·x·exp(x²) lacks of 1/√π.
const middle: Rational = {
  above: [
    1.857_777_061_846_031_53e-1, 3.161_123_743_870_565_6, 1.138_641_541_510_501_56e2,
    3.774_852_376_853_020_21e2, 3.209_377_589_138_469_47e3,
  ],
  below: [
    1, 2.360_129_095_234_412_09e1, 2.440_246_379_344_441_73e2, 1.282_616_526_077_372_28e3,
    2.844_236_833_439_170_62e3,
  ],
};
const shoulder: Rational = {
  above: [
    2.153_115_354_744_038_46e-8, 5.641_884_969_886_700_89e-1, 8.883_149_794_388_375_94,
    6.611_919_063_714_162_95e1, 2.986_351_381_974_001_31e2, 8.819_522_212_417_690_9e2,
    1.712_047_612_634_070_58e3, 2.051_078_377_826_071_47e3, 1.230_339_354_797_997_25e3,
  ],
  below: [
    1, 1.574_492_611_070_983_47e1, 1.176_939_508_913_124_99e2, 5.371_811_018_620_098_58e2,
    1.621_389_574_566_690_19e3, 3.290_799_235_733_459_63e3, 4.362_619_090_143_247_16e3,
    3.439_367_674_143_721_64e3, 1.230_339_354_803_749_42e3,
  ],
};
const tail: Rational = {
  above: [
    1.631_538_713_730_209_78e-2, 3.053_266_349_612_323_44e-1, 3.603_448_999_498_044_39e-1,
    1.257_817_261_112_292_46e-1, 1.608_378_514_874_227_66e-2, 6.587_491_615_298_378_03e-4,
  ],
  below: [
    1, 2.568_520_192_289_822_42, 1.872_952_849_923_467_25, 5.279_051_029_514_284_12e-1,
    6.051_834_131_244_131_91e-2, 2.335_204_976_268_691_85e-3,
  ],
};

const middleEnd = 0.46875;
const tailStart = 4;

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) {
    sum = sum * x + coefficient;
  }
  return sum;
}

function rational({ above, below }: Rational, x: number): number {
  return polynomial(above, x) / polynomial(below, x);
}

/** The complement of the error function from `middleEnd` on. */
function complement(x: number): number {
  const bell = Math.exp(-x * x);
  if (x <= tailStart) {
    return bell * rational(shoulder, x);
  }
  const inverse = 1 / (x * x);
  return (bell / x) * (1 / Math.sqrt(Math.PI) - inverse * rational(tail, inverse));
}

/**
 * The probability that a standard normal variable is below `z`: 0 at minus infinity, 1 at plus
 * infinity, accurate to about 1e-15, and to 1e-13 of itself far out.
 *
 * Source: half the complement of the error function at -z/√2, Abramowitz and Stegun, Handbook of
 * Mathematical Functions, 26.2.29; the error function after Cody (1969).
 */
export function normalProbability(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  if (x <= middleEnd) {
    return 0.5 + (z / Math.SQRT2 / 2) * rational(middle, x * x);
  }
  const beyond = x === Infinity ? 0 : complement(x) / 2;
  return z < 0 ? beyond : 1 - beyond;
}
