import { requireInRange, requireLength } from '../require-numbers.ts';

/**
 * The likelihoods of a check's answers with one fault, after what was seen in confirmed cases:
 * (w L + n) / (w + N), the mean of a Dirichlet distribution; with two answers, as of one answer of
 * several that does or does not hold, it is the beta-binomial estimate.
 *
 * @param likelihoods - P(each answer | the fault), 0 to 1, sum 1
 * @param rowCases - w, how many cases the written row is worth: above 0; about 20 is usual (common
 *   practice, no source)
 * @param seen - how many of the confirmed cases gave each answer: whole numbers, in the same order
 * @returns one likelihood for each answer; the written ones, bit for bit, when nothing was seen
 * @throws EvidenceError `length-mismatch`, `out-of-range`
 */
export function learnedRow(
  likelihoods: readonly number[],
  rowCases: number,
  seen: readonly number[],
): readonly number[] {
  requireLength(seen, likelihoods.length, { what: 'the row of counts' });
  requireInRange(rowCases, {
    what: 'the weight of a row in cases',
    least: Number.MIN_VALUE,
    greatest: Number.MAX_SAFE_INTEGER,
  });
  likelihoods.forEach((likelihood, answer) => {
    requireInRange(likelihood, { what: 'a likelihood', least: 0, greatest: 1, facts: { answer } });
  });
  seen.forEach((count, answer) => {
    requireInRange(count, {
      what: 'a count of cases',
      least: 0,
      greatest: Number.MAX_SAFE_INTEGER,
      whole: true,
      facts: { answer },
    });
  });
  const all = seen.reduce((sum, count) => sum + count, 0);
  if (all === 0) return [...likelihoods];
  return likelihoods.map(
    (likelihood, answer) => (rowCases * likelihood + (seen[answer] ?? 0)) / (rowCases + all),
  );
}
