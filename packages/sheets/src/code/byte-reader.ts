import { numberOf, type Decimal } from './decimal.ts';

/** There are fewer bytes than what they begin would take. */
export class OutOfBytes extends Error {}

/** Takes bytes apart as `ByteWriter` puts them together. Throws OutOfBytes where they end early. */
export class ByteReader {
  readonly #bytes: readonly number[];
  #at = 0;

  constructor(bytes: readonly number[]) {
    this.#bytes = bytes;
  }

  get isAtEnd(): boolean {
    return this.#at >= this.#bytes.length;
  }

  fixed(length: number): number {
    let value = 0;
    for (let count = 0; count < length; count += 1) value = value * 256 + this.#next();
    return value;
  }

  whole(): bigint {
    let value = 0n;
    for (let shift = 0n; ; shift += 7n) {
      const byte = this.#next();
      value += BigInt(byte & 127) << shift;
      if (byte < 128) return value;
    }
  }

  signed(): bigint {
    const value = this.whole();
    return value % 2n === 0n ? value / 2n : -(value + 1n) / 2n;
  }

  decimal(): Decimal {
    const power = Number(this.signed());
    return { power, digits: this.signed() };
  }

  number(): number {
    return numberOf(this.decimal());
  }

  text(): string {
    const length = Number(this.whole());
    const utf8 = Uint8Array.from({ length }, () => this.#next());
    return new TextDecoder().decode(utf8);
  }

  #next(): number {
    const byte = this.#bytes[this.#at];
    if (byte === undefined) throw new OutOfBytes();
    this.#at += 1;
    return byte;
  }
}
