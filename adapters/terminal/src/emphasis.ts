/** How a word is made to stand out beside what its place and signs already say. */
export interface Emphasis {
  readonly bold: (text: string) => string;
  readonly inverse: (text: string) => string;
}

/** Nothing but the text. */
export const plain: Emphasis = { bold: (text) => text, inverse: (text) => text };

/** Bold and inverse by the control sequences of ECMA-48, 8.3.117; no colours. */
export const styled: Emphasis = {
  bold: (text) => `\u001b[1m${text}\u001b[0m`,
  inverse: (text) => `\u001b[1;7m${text}\u001b[0m`,
};
