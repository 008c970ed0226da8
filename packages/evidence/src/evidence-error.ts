/**
 * Why a call was refused; a closed list.
 *
 * - `no-hypotheses`: a model needs at least one hypothesis.
 * - `duplicate-hypothesis`: two hypotheses bear one name.
 * - `unknown-hypothesis`: the model has no hypothesis of that name.
 * - `length-mismatch`: a row does not have one number for each thing it speaks of.
 * - `out-of-range`: a number is NaN, infinite, or outside its stated range.
 * - `not-a-distribution`: probabilities or weights do not add up to what they must.
 * - `impossible-finding`: the findings together forbid every hypothesis.
 * - `missing-part`: a problem lacks something that it cannot be without.
 * - `duplicate-id`: two things of one kind bear one id.
 * - `unknown-id`: there is nothing of that kind with that id.
 * - `no-way-out`: a case could never end, for no verdict fixes some fault.
 */
export type EvidenceErrorCode =
  | 'no-hypotheses'
  | 'duplicate-hypothesis'
  | 'unknown-hypothesis'
  | 'length-mismatch'
  | 'out-of-range'
  | 'not-a-distribution'
  | 'impossible-finding'
  | 'missing-part'
  | 'duplicate-id'
  | 'unknown-id'
  | 'no-way-out';

/** The facts of a refusal by name: the finding, the hypothesis, the value seen. */
export type EvidenceErrorFacts = Readonly<Record<string, string | number | readonly string[]>>;

/** The one error of this package. The message is for authors, never for the person at the vehicle. */
export class EvidenceError extends Error {
  /** What kind of refusal this is. */
  readonly code: EvidenceErrorCode;
  /** What was seen, and where. */
  readonly facts: EvidenceErrorFacts;

  /**
   * Makes a refusal from its kind, its sentence and its facts.
   *
   * @param code - the kind of refusal
   * @param message - what was wrong, where, and what to do
   * @param facts - the values seen, by name
   */
  constructor(code: EvidenceErrorCode, message: string, facts: EvidenceErrorFacts) {
    super(message);
    this.name = 'EvidenceError';
    this.code = code;
    this.facts = facts;
  }
}
