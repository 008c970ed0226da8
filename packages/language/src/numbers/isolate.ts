/**
 * Isolation of figures and foreign words in text that runs from right to left, so that "12.4 V" is
 * never shown as "V 12.4" (Unicode Standard Annex 9, 2.4 and 3.3.2: isolates).
 */

/** Left-to-right isolate, first strong isolate, and what ends either. */
const [leftToRight, firstStrong, end] = ['\u2066', '\u2068', '\u2069'];

/** Scripts that run from right to left. */
const rightToLeft = ['Arab', 'Hebr', 'Syrc', 'Thaa', 'Nkoo', 'Adlm'];

/** True for a locale whose script runs from right to left. */
export function isRightToLeft(locale: string): boolean {
  return rightToLeft.includes(new Intl.Locale(locale).maximize().script ?? '');
}

/** Isolates what is set into a text; in a language that runs from left to right it is as it was. */
export interface Isolation {
  /** Words, by the direction of their own first letter. */
  readonly words: (text: string) => string;
  /** A figure with an international sign, which runs from left to right in every language. */
  readonly figure: (text: string) => string;
}

/** How one locale sets figures and words into its texts. */
export function isolationIn(locale: string): Isolation {
  if (!isRightToLeft(locale)) return { words: (text) => text, figure: (text) => text };
  const within =
    (begin: string) =>
    (text: string): string =>
      text === '' || isWhole(text) ? text : `${begin}${text}${end}`;
  return { words: within(firstStrong), figure: within(leftToRight) };
}

/** True where the whole text is one isolate already. */
function isWhole(text: string): boolean {
  if (text[0] !== leftToRight && text[0] !== firstStrong) return false;
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === leftToRight || text[at] === firstStrong) depth += 1;
    if (text[at] === end) depth -= 1;
    if (depth === 0) return at === text.length - 1;
  }
  return false;
}
