/**
 * The typeface shipped beside the script, made known to the document. A page whose policy forbids
 * it is shown in the system's typeface.
 */

const family = 'Keyturn Hyperlegible';

const faces = [
  ['latin-400-normal', '400', 'U+0000-00FF,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212'],
  ['latin-700-normal', '700', 'U+0000-00FF,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212'],
  ['latin-ext-400-normal', '400', 'U+0100-02BA,U+1E00-1E9F,U+1EF2-1EFF'],
  ['latin-ext-700-normal', '700', 'U+0100-02BA,U+1E00-1E9F,U+1EF2-1EFF'],
] as const;

let isAdded = false;

/** Adds the typeface; a face is fetched only once a text needs it. */
export function addTypeface(base: string): void {
  if (isAdded) return;
  isAdded = true;
  for (const [name, weight, unicodeRange] of faces) {
    const url = new URL(`fonts/atkinson-hyperlegible-${name}.woff2`, base).href;
    document.fonts.add(
      new FontFace(family, `url("${url}")`, { weight, unicodeRange, display: 'swap' }),
    );
  }
}
