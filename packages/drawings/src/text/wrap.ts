import { measure, type Setting } from './measure.ts';

const softHyphen = '\u00ad';

/**
 * A text in lines of at most `width`, broken at spaces and, where a word alone is too wide, at its
 * soft hyphens or, failing those, between any two letters. Nothing is left out.
 */
export function wrap(text: string, width: number, setting: Setting): string[] {
  const fits = (line: string): boolean => measure(line, setting) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter((one) => one !== '')) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (fits(joined)) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = fits(word) ? [word] : breakWord(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  return [...lines, line].filter((one) => one !== '').map(withoutSoftHyphens);
}

function withoutSoftHyphens(line: string): string {
  return line.replaceAll(softHyphen, '');
}

function breakWord(word: string, fits: (line: string) => boolean): string[] {
  const syllables = word.split(softHyphen);
  const lines: string[] = [];
  let line = '';
  syllables.forEach((syllable, index) => {
    const hyphen = index < syllables.length - 1 ? '-' : '';
    if (fits(line + syllable + hyphen)) {
      line += syllable;
      return;
    }
    if (line !== '') lines.push(`${line}-`);
    const pieces = fits(syllable + hyphen) ? [syllable] : breakLetters(syllable, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  });
  return [...lines, line];
}

function breakLetters(word: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const letter of word) {
    if (line !== '' && !fits(line + letter)) {
      lines.push(line);
      line = '';
    }
    line += letter;
  }
  return [...lines, line];
}
