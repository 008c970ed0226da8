import { glyphWidths } from './glyph-widths.ts';

/** How a text is set. */
export interface Setting {
  /** Font size, in units of the picture. */
  readonly size: number;
  readonly weight: 'regular' | 'bold';
}

const widthOf = {
  regular: byCharacter(glyphWidths.regular),
  bold: byCharacter(glyphWidths.bold),
};

function byCharacter(table: Readonly<Record<number, string>>): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(table).flatMap(([width, characters]) =>
      Array.from(characters, (character) => [character, Number(width)] as const),
    ),
  );
}

/** Marks over letters, joiners, soft hyphens and the controls of direction take no room. */
const noRoom = /^[\p{M}\p{Cf}]$/u;

/** A character that the table does not know is taken to be as wide as it is high. */
const unknown = 1000;

/** The width of a text on one line, in units of the picture; never too small for the font. */
export function measure(text: string, { size, weight }: Setting): number {
  const table = widthOf[weight];
  let width = 0;
  for (const character of text) {
    width += table.get(character) ?? (noRoom.test(character) ? 0 : unknown);
  }
  return (width * size) / 1000;
}
