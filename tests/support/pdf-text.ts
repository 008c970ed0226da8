/**
 * What a reader program finds in a PDF: PDF.js, which has no part in making one.
 */
import bidiFactory from 'bidi-js';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Paragraph } from './sheet-paragraphs.ts';

/** A page, in points of 1/72 inch. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  /** The pieces of text in the order of the file. */
  readonly pieces: readonly PdfPiece[];
}

/** Some letters side by side, as they are seen from left to right. */
interface PdfPiece {
  readonly seen: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Below this a page has only its number and what it belongs to. */
const footHeight = 40;

/** The pages of a PDF. */
export async function pdfPages(pdf: Uint8Array): Promise<readonly PdfPage[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item): readonly PdfPiece[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , , x = 0, y = 0] = item.transform as readonly number[];
      const letters = item.str.normalize('NFKC');
      // PDF.js turns what runs from right to left into the order in which it is read.
      const seen = item.dir === 'rtl' ? Array.from(letters).toReversed().join('') : letters;
      return seen === '' ? [] : [{ seen, x, y, width: item.width }];
    });
    pages.push({ width, height, pieces });
  }
  await document.destroy();
  return pages;
}

/** Every letter of the pages in the order of the file, without what stands at the foot of each. */
export function lettersOf(pages: readonly PdfPage[]): string {
  const letters = pages.flatMap(bodyOf).map(({ seen }) => seen);
  return bare(letters.join(''));
}

/** The lines of the pages as they are seen: pieces that follow each other from left to right. */
export function linesOf(pages: readonly PdfPage[]): readonly string[] {
  return pages.flatMap((page) => {
    const lines: string[] = [];
    let last: PdfPiece | undefined;
    for (const piece of bodyOf(page)) {
      if (unmarked(piece.seen) === '') continue;
      const goesOn = last !== undefined && isNextOf(last, piece);
      if (goesOn) lines[lines.length - 1] = `${lines.at(-1) ?? ''}${piece.seen}`;
      else lines.push(piece.seen);
      last = piece;
    }
    return lines;
  });
}

/** Wider than any space between words. */
const wideGap = 8;

function isNextOf(last: PdfPiece, { x, y }: PdfPiece): boolean {
  const gap = x - (last.x + last.width);
  return Math.abs(y - last.y) < 0.5 && x >= last.x - 0.5 && gap < wideGap;
}

function bodyOf({ pieces }: PdfPage): readonly PdfPiece[] {
  return pieces.filter(({ y }) => y > footHeight);
}

/** Letters and figures alone: no spaces, no controls of direction. */
export function bare(text: string): string {
  return text.normalize('NFKC').replace(/[\s\p{Cf}\p{Cc}]/gu, '');
}

const bidi = bidiFactory();

/**
 * Holds lines as they are seen to paragraphs as they are read: each line must be the next words of
 * its paragraph in the order that Unicode Standard Annex 9 gives them (worked out by bidi-js, which
 * has no part in making the page). Gives the first line that is not, or paragraphs that are missing.
 */
export function firstWrongLine(
  lines: readonly string[],
  paragraphs: readonly Paragraph[],
): string | undefined {
  let [at, from] = [0, 0];
  for (const line of lines) {
    const paragraph = paragraphs[at];
    if (paragraph === undefined) return `“${line}” is too many`;
    const end = endOf(line, paragraph, from);
    if (end === undefined)
      return `“${line}” is not the beginning of “${paragraph.text.slice(from)}”`;
    from = end;
    if (bare(paragraph.text.slice(from)) === '') [at, from] = [at + 1, 0];
  }
  return at === paragraphs.length ? undefined : `“${paragraphs[at]?.text ?? ''}” is missing`;
}

/** Where the words end that a line shows; undefined where it shows others, or in another order. */
function endOf(line: string, { text, base }: Paragraph, from: number): number | undefined {
  const levels = bidi.getEmbeddingLevels(text, base);
  const shown = unmarked(line);
  for (let end = from + 1; end <= text.length; end += 1) {
    const read = unmarked(text.slice(from, end));
    if (read.length > shown.length) return undefined;
    if (read.length < shown.length) continue;
    const seen = unmarked(bidi.getReorderedString(text, levels, from, end - 1).slice(from, end));
    if (seen === shown) return end;
  }
  return undefined;
}

/** Without marks over letters, which stand before or after theirs as the typeface has it. */
function unmarked(text: string): string {
  return bare(text).replace(/\p{M}/gu, '');
}
