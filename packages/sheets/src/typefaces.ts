import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Typeface } from './print/typeface.ts';

const require = createRequire(import.meta.url);

/** The files of a typeface, in the order in which a letter is looked for. */
const latin = {
  'Keyturn Latin': '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin',
  'Keyturn Latin Extended':
    '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-ext',
};
const arabic = { 'Keyturn Arabic': '@fontsource/noto-sans-arabic/files/noto-sans-arabic-arabic' };

/**
 * The typefaces that a sheet needs to look the same on every machine, to be put into its file:
 * Atkinson Hyperlegible, and Noto Sans Arabic for a language that runs from right to left. Reads
 * files of packages.
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
