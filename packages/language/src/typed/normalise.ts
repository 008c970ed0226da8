import type { Spelling } from '../words/words.ts';

/**
 * One spelling for what people type in many: lower case, no accents, no vowel signs, one form of
 * each Arabic letter, ASCII digits, plain fractions and signs. Linear in the length of the text.
 */
export function normalise(text: string, spelling: Spelling = {}): string {
  const letters = spelling.letters ?? [];
  // What only a mark tells apart is told apart before the marks go.
  const told = letters
    .filter(([typed]) => marked.test(typed))
    .reduce(
      (before, [typed, kept]) => before.replaceAll(typed, kept),
      fromLatin(text, spelling.latin),
    );
  const plainText = Array.from(spellFractions(told).normalize('NFKD').toLowerCase(), plain).join(
    '',
  );
  const parted = partApostrophes(plainText, spelling.elides === true ? ' ' : '');
  const spelled = letters.reduce((before, [typed, kept]) => before.replaceAll(typed, kept), parted);
  const plainly = spelled.replaceAll(hamza, '');
  return spelling.digits === undefined || arabic.test(text)
    ? plainly
    : spellDigits(plainly, spelling.digits);
}

/**
 * Digits within a word in Latin letters, behind it or before it: `mofta7`, `3andi`, but not `12v`.
 */
const digitsInWord =
  /(?<=[a-z]{2})\d(?!\d|[.,]\d)|(?<=[a-z])\d(?=[a-z])|(?<![\w.,])\d(?=[a-z]{2}[a-z\d]|a[dlmnt]\b)/gu;

const arabic = /\p{Script=Arabic}/u;

/** Digits that are typed for letters, as those letters, where the text was typed in Latin ones. */
function spellDigits(text: string, letters: Readonly<Record<string, string>>): string {
  if (!/[a-z]/.test(text)) return text;
  return text.replaceAll(digitsInWord, (digit) => letters[digit] ?? digit);
}

/**
 * Words of another script that are typed in Latin letters and in the figures that stand for some of
 * its own, found as they are or by their consonants, since everybody spells vowels as they like:
 * `khamsa`.
 */
function fromLatin(text: string, words: Spelling['latin']): string {
  if (words === undefined) return text;
  return text.replace(/[a-z0-9]+/gi, (typed) => {
    const word = typed.toLowerCase();
    const consonants = collapseRepeats(
      word
        .replaceAll('ch', 'sh')
        .replaceAll('th', 't')
        .replaceAll('5', 'kh')
        .replace(/[aeiouy]/g, ''),
    );
    // A word that is spelled out stands before what has the same consonants.
    const known = [word, consonants].find((one) => Object.hasOwn(words, one));
    return known === undefined ? typed : (words[known] ?? typed);
  });
}

/** Left out by many; last, so that a language may tell words apart by it. */
const hamza = 'ء';

/** Fractions in one character, which `normalize` would glue to the number before them. */
const fractions: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' };

function spellFractions(text: string): string {
  const spelled = Array.from(text, (character) => {
    const fraction = fractions[character];
    if (fraction !== undefined) return ` ${fraction} `;
    // The sign of an ordinal is typed for degrees, and would become an o.
    if (character === 'º') return '°';
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
  '，': ',',
  '、': ',',
  '。': '.',
  '’': "'",
  '‘': "'",
  '´': "'",
  ʼ: "'",
  '`': "'",
  ß: 'ss',
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ı: 'i',
  æ: 'ae',
  œ: 'oe',
  // Arabic: the marks of its numbers and sentences, and letters that are typed for one another.
  '٫': '.',
  '٬': ',',
  '،': ',',
  '؛': ';',
  '؟': '?',
  '٪': '%',
  ى: 'ي',
  ی: 'ي',
  ې: 'ي',
  ة: 'ه',
  ک: 'ك',
  ٱ: 'ا',
  ـ: '',
  پ: 'ب',
  ڤ: 'ف',
  چ: 'ج',
  گ: 'ك',
};

const marked = /\p{Mn}/u;

/** Marks over and under letters, and signs that only steer how text is shown. */
const unseen = /^[\p{Mn}\p{Cf}]$/u;
const digit = /^\p{Nd}$/u;

function plain(character: string): string {
  if (character <= '~') return character;
  const known = replaced[character];
  if (known !== undefined) return known;
  if (unseen.test(character)) return '';
  return digit.test(character) ? valueOf(character) : character;
}

/** The digits of every script stand together from nought to nine. */
function valueOf(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  let value = 0;
  while (value < 9 && digit.test(String.fromCodePoint(code - value - 1))) value += 1;
  return String(value);
}

/**
 * Apostrophes within a number are its decimal mark, or part its thousands; elsewhere they become
 * `between`. A V within a number ("12V4") is its decimal mark as well.
 */
function partApostrophes(text: string, between: '' | ' '): string {
  let parted = '';
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at] ?? '';
    if (character !== "'" && character !== 'v') {
      parted += character;
      continue;
    }
    const behind = isDigit(text[at - 1]) ? digitsFrom(text, at + 1) : 0;
    if (character === 'v') {
      const end = at + 1 + behind;
      const isWithin = behind > 0 && behind < 3 && !isPartOfNumber(text.slice(end, end + 2));
      parted += isWithin ? '.' : 'v';
    } else if (behind > 0) parted += behind === 3 ? '' : '.';
    else parted += between;
  }
  return parted;
}

function digitsFrom(text: string, start: number): number {
  let count = 0;
  while (count < 4 && isDigit(text[start + count])) count += 1;
  return count;
}

function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= '0' && character <= '9';
}

/** True for a digit, a V, and a mark with a digit behind it: not the comma of "0V7, so ...". */
function isPartOfNumber([character, next]: string): boolean {
  const isMark = character === '.' || character === ',';
  return (isMark && isDigit(next)) || character === 'v' || isDigit(character);
}

/** A word with every run of the same letter made one: `noooo` and `no`, `dimmed` and `dimed`. */
export function collapseRepeats(word: string): string {
  let collapsed = '';
  for (const letter of word) {
    if (!collapsed.endsWith(letter) || isDigit(letter)) collapsed += letter;
  }
  return collapsed;
}
