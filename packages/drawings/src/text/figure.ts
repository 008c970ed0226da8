import type { Figure, Teller } from '@keyturn/language';

/** A figure with its unit's sign as its language writes it, never broken between the two. */
export function sayFigure(figure: Figure, speaker: Teller): string {
  return speaker.formatQuantity(figure).replaceAll(' ', '\u00a0');
}
