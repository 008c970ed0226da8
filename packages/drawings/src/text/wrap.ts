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
  return isolatedAlone([...lines, line].filter((one) => one !== '').map(withoutSoftHyphens));
}

/**
 * An isolate that is broken ends with its line and is opened again on the next, since each line is
 * a text of its own.
 */
function isolatedAlone(lines: readonly string[]): string[] {
  let open = '';
  return lines.map((line) => {
    const begun = open + line;
    for (const [control] of line.matchAll(/[\u2066-\u2069]/gu)) {
      open = control === '\u2069' ? open.slice(0, -1) : open + control;
    }
    return begun + '\u2069'.repeat(open.length);
  });
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
