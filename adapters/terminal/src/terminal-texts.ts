/**
 * The words of the terminal itself, in each language; what a case says comes from its texts.
 */
import type { TerminalTexts } from './texts/terminal-words.ts';
import { ar } from './texts/ar.ts';
import { de } from './texts/de.ts';
import { en } from './texts/en.ts';
import { es } from './texts/es.ts';
import { fr } from './texts/fr.ts';
import { pl } from './texts/pl.ts';
import { columnsOf, padTo, wrapBehind } from './wrap.ts';

const languages: Readonly<Record<string, TerminalTexts>> = { en, es, de, fr, pl, ar };

/** The terminal's words in a language. Throws RangeError where it has none. */
export function terminalTexts(locale: string): TerminalTexts {
  const texts = languages[locale] ?? languages[locale.split('-', 1)[0] ?? ''];
  if (texts === undefined) throw new RangeError(`the terminal has no words in ${locale}`);
  return texts;
}

/** The help in lines of at most `width` columns: what can be typed, and beside it what it does. */
export function helpLines({ helpNow, help }: TerminalTexts, width: number): string[] {
  const typedColumns = Math.max(...help.map(([typed]) => columnsOf(typed)));
  const isNarrow = width < typedColumns + 40;
  return [
    ...wrapBehind('   ', `${helpNow}:`, width),
    ...help.flatMap(([typed, meaning]) =>
      isNarrow
        ? [...wrapBehind('   ', typed, width), ...wrapBehind('      ', meaning, width)]
        : wrapBehind(`   ${padTo(typed, typedColumns)}  `, meaning, width),
    ),
  ];
}
