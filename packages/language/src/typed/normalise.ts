/**
 * One spelling for what people type in many: lower case, no accents, no apostrophes, ASCII digits,
 * plain fractions and signs. Linear in the length of the text.
 */
export function normalise(text: string): string {
  return Array.from(spellFractions(text).normalize('NFKD').toLowerCase(), plain).join('');
}

/** Fractions in one character, which `normalize` would glue to the number before them. */
const fractions: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' };

function spellFractions(text: string): string {
  const spelled = Array.from(text, (character) => {
    const fraction = fractions[character];
    if (fraction !== undefined) return ` ${fraction} `;
    return isRaised(character) ? ' ' : character;
  });
  return spelled.join('');
}

/** Raised and lowered digits are powers and footnotes, never part of a figure. */
function isRaised(character: string): boolean {
  return (character >= '⁰' && character <= '₉') || '²³¹'.includes(character);
}

const replaced: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '—': '-',
  '‐': '-',
  '‑': '-',
  '⁄': '/',
  '·': ' ',
  '⋅': ' ',
  '٫': '.',
  '，': ',',
  '、': ',',
  '。': '.',
  "'": '',
  '’': '',
  '‘': '',
  ʼ: '',
  '`': '',
};

/** The first digits of the decimal digits of other scripts, ten code points each. */
const firstDigits = [0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50] as const;

function plain(character: string): string {
  const known = replaced[character];
  if (known !== undefined) return known;
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x0300) return character;
  if (code <= 0x036f) return '';
  const first = firstDigits.find((digit) => code >= digit && code < digit + 10);
  return first === undefined ? character : String(code - first);
}

/** A word with every run of the same letter made one: `noooo` and `no`, `dimmed` and `dimed`. */
export function collapseRepeats(word: string): string {
  let collapsed = '';
  for (const letter of word) {
    if (!collapsed.endsWith(letter) || (letter >= '0' && letter <= '9')) collapsed += letter;
  }
  return collapsed;
}
