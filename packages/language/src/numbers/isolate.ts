/**
 * Isolation of figures and foreign words in text that runs from right to left, so that "12.4 V" is
 * never shown as "V 12.4" (Unicode Standard Annex 9, 2.4 and 3.3.2: isolates).
 */

/** Left-to-right isolate, right-to-left isolate, first strong isolate, and what ends each. */
const [leftToRight, rightToLeftIsolate, firstStrong, end] = [
  '\u2066',
  '\u2067',
  '\u2068',
  '\u2069',
];

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
  const within = (begin: string, text: string): string =>
    text === '' || isWhole(text) ? text : `${begin}${text}${end}`;
  return {
    words: (text) => within(beginOf(text), text),
    figure: (text) => within(leftToRight, text),
  };
}

/**
 * How an isolate of some words begins. What is isolated within says nothing to the algorithm of the
 * direction of the whole (UAX 9, rule P2), so that words that are all isolates have theirs said.
 */
function beginOf(text: string): string {
  if (/\p{L}/u.test(outsideOf(text))) return firstStrong;
  const [letter] = /\p{L}/u.exec(text) ?? [];
  if (letter === undefined) return firstStrong;
  return /[\p{Script=Arabic}\p{Script=Hebrew}]/u.test(letter) ? rightToLeftIsolate : leftToRight;
}

const begins: readonly string[] = [leftToRight, rightToLeftIsolate, firstStrong];

/** What of a text stands in no isolate. */
function outsideOf(text: string): string {
  let depth = 0;
  let outside = '';
  for (const character of text) {
    if (begins.includes(character)) depth += 1;
    else if (character === end) depth = Math.max(0, depth - 1);
    else if (depth === 0) outside += character;
  }
  return outside;
}

/** True where the whole text is one isolate already. */
function isWhole(text: string): boolean {
  if (!begins.includes(text.charAt(0))) return false;
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (begins.includes(text.charAt(at))) depth += 1;
    if (text[at] === end) depth -= 1;
    if (depth === 0) return at === text.length - 1;
  }
  return false;
}
