/**
 * What went wrong: a unit that is not known, two units of different dimensions, a number that is
 * not finite, a number outside the range in which a rule holds, or a limit or a reading that does not
 * exist.
 */
export type ElectricsErrorCode =
  | 'unit-unknown'
  | 'unit-mismatch'
  | 'value-not-finite'
  | 'value-out-of-range'
  | 'limit-unknown'
  | 'reading-unknown';

/** The facts of one error, by name: the unit seen, the value seen, the range that was expected. */
export type ElectricsFacts = Readonly<Record<string, string | number>>;

/**
 * Misuse of this package: the only error that it throws.
 *
 * `code` is closed, `facts` holds the values seen and expected, and the message repeats them for a
 * developer. It is never shown to a user.
 */
export class ElectricsError extends Error {
  override readonly name: string = 'ElectricsError';
  readonly code: ElectricsErrorCode;
  readonly facts: ElectricsFacts;

  constructor(code: ElectricsErrorCode, facts: ElectricsFacts = {}) {
    const listed = Object.entries(facts).map(([name, value]) => `${name} ${value}`);
    super(listed.length === 0 ? code : `${code}: ${listed.join(', ')}`);
    this.code = code;
    this.facts = facts;
  }
}
