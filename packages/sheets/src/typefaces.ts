import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Typeface } from './print/typeface.ts';

const require = createRequire(import.meta.url);

/**
 * The files of a typeface, in the order in which a letter is looked for: whole letters with an
 * accent before those of which one is put together, and could not be copied out of a PDF.
 */
const latin = {
  'Keyturn Latin Extended':
    '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-ext',
  'Keyturn Latin': '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin',
};
const arabic = { 'Keyturn Arabic': '@fontsource/vazirmatn/files/vazirmatn-arabic' };

/**
 * The typefaces that a sheet needs to look the same on every machine, to be put into its file:
 * Atkinson Hyperlegible, and Vazirmatn for a language that runs from right to left: of the Arabic
 * typefaces tried it is one whose letters can be copied out of a PDF again. Reads files of packages.
 */
export function sheetTypefaces(direction: 'ltr' | 'rtl'): readonly Typeface[] {
  const families = direction === 'rtl' ? { ...latin, ...arabic } : latin;
  return Object.entries(families).flatMap(([family, file]) =>
    ([400, 700] as const).map((weight) => ({
      family,
      weight,
      woff2: readFileSync(require.resolve(`${file}-${String(weight)}-normal.woff2`), 'base64'),
    })),
  );
}
