import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { glyphWidths } from './glyph-widths.ts';

const resolve = createRequire(import.meta.url).resolve;

/** Advance widths in thousandths of the font size: tables head, hhea, hmtx and cmap format 4. */
function readAdvances(name: string): (codePoint: number) => number {
  const bytes = readFileSync(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  const table = (tag: string): number => {
    for (let entry = 12; entry < 12 + bytes.readUInt16BE(4) * 16; entry += 16) {
      if (bytes.toString('latin1', entry, entry + 4) === tag) return bytes.readUInt32BE(entry + 8);
    }
    throw new Error(`no table ${tag}`);
  };
  const [cmap, hmtx] = [table('cmap'), table('hmtx')];
  const unitsPerEm = bytes.readUInt16BE(table('head') + 18);
  const metrics = bytes.readUInt16BE(table('hhea') + 34);
  const entries = Array.from(
    { length: bytes.readUInt16BE(cmap + 2) },
    (_, at) => cmap + 4 + at * 8,
  );
  const unicode = entries.find((at) => bytes.readUInt32BE(at) === 0x00030001);
  if (unicode === undefined) throw new Error('no Unicode map');
  const map = cmap + bytes.readUInt32BE(unicode + 4);
  const segments = bytes.readUInt16BE(map + 6);
  const glyphOf = (codePoint: number): number => {
    for (let at = 0; at < segments; at += 2) {
      if (codePoint > bytes.readUInt16BE(map + 14 + at)) continue;
      const start = bytes.readUInt16BE(map + 16 + segments + at);
      if (codePoint < start) return 0;
      const delta = bytes.readUInt16BE(map + 16 + 2 * segments + at);
      const place = map + 16 + 3 * segments + at;
      const offset = bytes.readUInt16BE(place);
      if (offset === 0) return (codePoint + delta) & 0xffff;
      return bytes.readUInt16BE(place + offset + (codePoint - start) * 2);
    }
    return 0;
  };
  return (codePoint) => {
    const glyph = Math.min(glyphOf(codePoint), metrics - 1);
    return (bytes.readUInt16BE(hmtx + 4 * glyph) * 1000) / unitsPerEm;
  };
}

describe.each([
  ['regular', 'DejaVuSans'],
  ['bold', 'DejaVuSans-Bold'],
] as const)('%s characters', (weight, file) => {
  const advance = readAdvances(file);
  const rows = Object.entries(glyphWidths[weight]);

  test('are as wide as in the font file, at most 20 thousandths wider', () => {
    const wrong = rows.flatMap(([width, characters]) =>
      Array.from(characters).filter((character) => {
        const spare = Number(width) - advance(character.codePointAt(0) ?? 0);
        return spare < 0 || spare > 20;
      }),
    );
    expect(wrong).toEqual([]);
  });

  test('stand in the table once each, and letters and figures are among them', () => {
    const all = rows.flatMap(([, characters]) => Array.from(characters));
    expect(new Set(all).size).toBe(all.length);
    expect(all).toEqual(expect.arrayContaining(Array.from('0123456789AZaz.,äéñłż±–«ءي')));
  });
});
