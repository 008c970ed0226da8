/**
 * A pseudo-language for tests of layout: every text is a third longer, accented, and fenced, so that
 * what is cut off, what cannot be shown and what was never translated is seen at once.
 */

const accented: Readonly<Record<string, string>> = {
  a: 'á',
  e: 'ë',
  i: 'ï',
  o: 'ö',
  u: 'ü',
  c: 'ç',
  n: 'ñ',
  y: 'ý',
  A: 'Â',
  E: 'Ê',
  I: 'Î',
  O: 'Ô',
  U: 'Û',
};

/** How much longer a text becomes; the usual allowance for a translation from English. */
const stretch = 1 / 3;

/** One text of the pseudo-language; its placeholders stay. */
export function pseudoText(text: string): string {
  let inside = 0;
  const letters = Array.from(text, (letter) => {
    if (letter === '{') inside += 1;
    if (letter === '}') inside -= 1;
    return inside > 0 ? letter : (accented[letter] ?? letter);
  });
  return `[${letters.join('')}${'~'.repeat(Math.ceil(text.length * stretch))}]`;
}

/** A tree of texts in the pseudo-language: the general ones, or those of a flow. */
export function pseudoTexts<Texts>(texts: Texts): Texts {
  if (typeof texts === 'string') return pseudoText(texts) as Texts;
  if (Array.isArray(texts)) return texts.map((one: unknown) => pseudoTexts(one)) as Texts;
  if (texts === null || typeof texts !== 'object') return texts;
  return Object.fromEntries(
    Object.entries(texts).map(([key, value]: [string, unknown]) => [key, pseudoTexts(value)]),
  ) as Texts;
}
