/**
 * What was worked out, by what it was worked out from.
 */
export class Kept<Value> {
  readonly #most: number;
  readonly #values = new Map<string, Value>();

  /** Keeps `most` values; the one that has not been wanted for longest goes. */
  constructor(most: number) {
    this.#most = most;
  }

  /** The value of a key, worked out where it is not kept. */
  of(key: string, workOut: () => Value): Value {
    const known = this.#values.get(key);
    if (known !== undefined) {
      this.#values.delete(key);
      this.#values.set(key, known);
      return known;
    }
    const made = workOut();
    const [oldest] = this.#values.keys();
    if (this.#values.size >= this.#most && oldest !== undefined) this.#values.delete(oldest);
    this.#values.set(key, made);
    return made;
  }
}
