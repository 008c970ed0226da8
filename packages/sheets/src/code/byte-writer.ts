import { decimalOf, type Decimal } from './decimal.ts';

/** Collects the bytes of a code. */
export class ByteWriter {
  readonly bytes: number[] = [];

  /** A whole number of so many bytes, the highest first. */
  fixed(value: number, length: number): void {
    for (let at = length - 1; at >= 0; at -= 1) {
      this.bytes.push(Math.floor(value / 256 ** at) % 256);
    }
  }

  /** A whole number from 0 on, seven bits a byte, the lowest first. */
  whole(value: bigint | number): void {
    let rest = BigInt(value);
    while (rest >= 128n) {
      this.bytes.push(Number(rest % 128n) + 128);
      rest /= 128n;
    }
    this.bytes.push(Number(rest));
  }

  /** A whole number of either sign. */
  signed(value: bigint): void {
    this.whole(value < 0n ? -2n * value - 1n : 2n * value);
  }

  /** Digits and a power of ten. */
  decimal({ digits, power }: Decimal): void {
    this.signed(BigInt(power));
    this.signed(digits);
  }

  /** Any finite number, to its last digit. */
  number(value: number): void {
    this.decimal(decimalOf(value));
  }

  /** A text in UTF-8 behind its length in bytes. */
  text(text: string): void {
    const utf8 = new TextEncoder().encode(text);
    this.whole(utf8.length);
    this.bytes.push(...utf8);
  }
}
