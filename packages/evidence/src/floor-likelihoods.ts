/**
 * The least likelihood of anything that physics does not forbid; a probability. So no one finding
 * weighs more than 30 decibans, and an error can be outweighed by later findings.
 * Source: common practice, no source.
 */
export const LIKELIHOOD_FLOOR = 0.001;

/**
 * Raises each probability above 0 to the floor; 0 stays 0, for it says that physics forbids it.
 * For rows of probabilities, not of densities, whose size depends on their unit.
 *
 * @param row - P(what was seen | each hypothesis), 0 to 1
 */
export function floorLikelihoods(row: readonly number[]): readonly number[] {
  return row.map((likelihood) =>
    likelihood > 0 && likelihood < LIKELIHOOD_FLOOR ? LIKELIHOOD_FLOOR : likelihood,
  );
}
