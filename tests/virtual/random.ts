/**
 * Chance from a seed: the small fast counting generator (sfc32), which passes the usual batteries of
 * tests and gives the same numbers everywhere.
 */

/** How likely each of some outcomes is; they need not add up to 1. */
export type Chances<Outcome extends string = string> = Readonly<Partial<Record<Outcome, number>>>;

/** A stream of random numbers that its seed alone decides. */
export class Random {
  #a: number;
  #b: number;
  #c: number;
  #counter = 1;
  #spare: number | undefined;

  constructor(seed: number) {
    this.#a = seed | 0;
    this.#b = Math.imul(seed, 0x9e37_79b9) | 0;
    this.#c = 0x2545_f491;
    // The first numbers still resemble the seed.
    for (let index = 0; index < 16; index += 1) this.uniform();
  }

  /** From 0 (included) to 1 (not included). */
  uniform(): number {
    const sum = (((this.#a + this.#b) | 0) + this.#counter) | 0;
    this.#counter = (this.#counter + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = (this.#c << 21) | (this.#c >>> 11);
    this.#c = (this.#c + sum) | 0;
    return (sum >>> 0) / 4_294_967_296;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** Normal with mean 0 and spread 1 (Marsaglia's polar method). */
  normal(): number {
    if (this.#spare !== undefined) {
      const spare = this.#spare;
      this.#spare = undefined;
      return spare;
    }
    for (;;) {
      const x = 2 * this.uniform() - 1;
      const y = 2 * this.uniform() - 1;
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      this.#spare = y * scale;
      return x * scale;
    }
  }

  normals(count: number): Float64Array {
    const drawn = new Float64Array(count);
    for (let index = 0; index < count; index += 1) drawn[index] = this.normal();
    return drawn;
  }

  happens(chance: number): boolean {
    return this.uniform() < chance;
  }

  /** One of the outcomes, in proportion to their chances. */
  pick<Outcome extends string>(chances: Chances<Outcome>): Outcome {
    const entries = Object.entries(chances) as [Outcome, number][];
    let left = this.uniform() * entries.reduce((sum, [, chance]) => sum + chance, 0);
    for (const [outcome, chance] of entries) {
      left -= chance;
      if (left < 0) return outcome;
    }
    return entries.at(-1)![0];
  }
}
