/**
 * Bytes as letters that a person can type and a scanner reads in its denser mode: five bits a
 * letter. The alphabet is Crockford's, which leaves out I, L, O and U (from memory).
 */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Letters that are taken for the ones they look like. */
const lookalikes: Readonly<Record<string, string>> = { I: '1', L: '1', O: '0' };

/** What stands in a text where a letter is expected, and at which of the letters, from 1. */
export interface WrongLetter {
  readonly letter: string;
  readonly at: number;
}

/** The letters of some bytes. */
export function toLetters(bytes: readonly number[]): string {
  let letters = '';
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      letters += alphabet[(held >> bits) & 31] ?? '';
    }
    held &= (1 << bits) - 1;
  }
  return bits === 0 ? letters : letters + (alphabet[(held << (5 - bits)) & 31] ?? '');
}

/** The bytes of letters in upper case; the few bits of the last letter that make no byte are dropped. */
export function fromLetters(letters: string): readonly number[] | WrongLetter {
  const bytes: number[] = [];
  let bits = 0;
  let held = 0;
  for (const [index, letter] of Array.from(letters).entries()) {
    const value = alphabet.indexOf(lookalikes[letter] ?? letter);
    if (value < 0) return { letter, at: index + 1 };
    held = (held << 5) | value;
    bits += 5;
    if (bits >= 8) {
      bits -= 8;
      bytes.push((held >> bits) & 255);
      held &= (1 << bits) - 1;
    }
  }
  return bytes;
}
