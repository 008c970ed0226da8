/** The part of bidi-js that the tests use: it has no types of its own. */
declare module 'bidi-js' {
  interface Paragraph {
    readonly start: number;
    readonly end: number;
    readonly level: number;
  }
  interface EmbeddingLevels {
    readonly levels: Uint8Array;
    readonly paragraphs: readonly Paragraph[];
  }
  interface Bidi {
    getEmbeddingLevels(text: string, base?: 'ltr' | 'rtl'): EmbeddingLevels;
    getReorderedString(text: string, levels: EmbeddingLevels, from?: number, to?: number): string;
  }
  const createBidi: () => Bidi;
  // eslint-disable-next-line no-restricted-exports -- the library has only this one
  export default createBidi;
}
