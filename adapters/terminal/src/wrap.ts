/**
 * Text broken into lines by words, counted in columns as a terminal shows them.
 */

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** East Asian wide forms and emoji take two columns; Unicode Standard Annex 11. */
const wide =
  /[\p{Emoji_Presentation}\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]/u;

/** The single characters of a text as a reader sees them, combining marks with their letter. */
function charactersOf(text: string): readonly string[] {
  return Array.from(graphemes.segment(text), ({ segment }) => segment);
}

/** How many columns a text takes, from 0 up. */
export function columnsOf(text: string): number {
  return charactersOf(text).reduce((sum, character) => sum + columnsOfCharacter(character), 0);
}

/** Marks that stand over others, and signs that only steer the direction, take no column. */
const unseen = /^[\p{Cf}\p{Mn}\p{Me}]+$/u;

function columnsOfCharacter(character: string): number {
  if (wide.test(character)) return 2;
  return unseen.test(character) ? 0 : 1;
}

/** The text with spaces behind it up to `columns`; a longer one as it is. */
export function padTo(text: string, columns: number): string {
  return text + ' '.repeat(Math.max(0, columns - columnsOf(text)));
}

/** As much of a text as fits into `columns`, an ellipsis at its end where something is left out. */
export function cutTo(text: string, columns: number): string {
  if (text.length <= columns && columnsOf(text) <= columns) return text;
  // A cut text needs at most this many code units; what lies behind is not even looked at.
  const [kept = ''] = breakWord(text.slice(0, columns * 8), columns - 1);
  return `${kept}…`;
}

/**
 * Breaks a text into lines of at most `width` columns, at spaces where possible; a longer word is
 * broken. Line breaks in the text are kept. A text without words gives one empty line.
 */
export function wrapText(text: string, width: number): string[] {
  return text.split('\n').flatMap((line) => wrapLine(line, Math.max(1, width)));
}

/** As `wrapText`, the first line behind `first`, the others behind as many spaces. */
export function wrapBehind(first: string, text: string, width: number): string[] {
  const indent = columnsOf(first);
  return wrapText(text, width - indent).map((line, index) =>
    `${index === 0 ? first : ' '.repeat(indent)}${line}`.trimEnd(),
  );
}

function wrapLine(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter((one) => one !== '')) {
    if (line !== '' && columnsOf(line) + 1 + columnsOf(word) <= width) {
      line += ` ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, width);
    line = pieces.pop() ?? '';
    lines.push(...pieces);
  }
  return [...lines, line];
}

function breakWord(word: string, width: number): string[] {
  const pieces: string[] = [];
  let piece = '';
  let taken = 0;
  for (const character of charactersOf(word)) {
    const columns = columnsOf(character);
    if (taken + columns > width && piece !== '') {
      pieces.push(piece);
      piece = '';
      taken = 0;
    }
    piece += character;
    taken += columns;
  }
  return [...pieces, piece];
}
