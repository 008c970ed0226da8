/** A typeface that is put into a file, in one weight. */
export interface Typeface {
  readonly family: string;
  readonly weight: 400 | 700;
  /** The font in WOFF2 (W3C Recommendation), in base64. */
  readonly woff2: string;
}

/** The rules that give a page these typefaces. */
export function typefaceCss(typefaces: readonly Typeface[]): string {
  return typefaces
    .map(
      ({ family, weight, woff2 }) =>
        `@font-face{font-family:'${family}';font-weight:${String(weight)};src:url(data:font/woff2;base64,${woff2}) format('woff2')}`,
    )
    .join('');
}

/** The names to set text in, the page's own typefaces first. */
export function familyNames(typefaces: readonly Typeface[]): string {
  const own = [...new Set(typefaces.map(({ family }) => `'${family}'`))];
  return [...own, "'Atkinson Hyperlegible'", 'system-ui', "'DejaVu Sans'", 'sans-serif'].join(',');
}
