import { encode } from 'uqr';
import type { Picture } from '../sheet.ts';

/** Modules kept free round a symbol: ISO/IEC 18004 asks for four. */
const quiet = 4;

/**
 * A text as a QR code (ISO/IEC 18004, level M: 15 % of it may be soiled). It is black on white and
 * as wide as the page makes it. The same text gives the same bytes.
 *
 * Throws RangeError for a text that no code can hold.
 */
export function drawQr(text: string, caption: string): Picture {
  const { size, data } = encodeOrSay(text);
  const rows = data.flatMap((row, y) =>
    runsOf(row).map(
      ({ from, length }) =>
        `M${String(from + quiet)} ${String(y + quiet)}h${String(length)}v1h-${String(length)}z`,
    ),
  );
  const side = String(size + 2 * quiet);
  return {
    svg:
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" role="img" aria-hidden="true" ` +
      `shape-rendering="crispEdges"><rect width="${side}" height="${side}" fill="#fff"/>` +
      `<path d="${rows.join('')}" fill="#000"/></svg>`,
    description: caption,
  };
}

function encodeOrSay(text: string): ReturnType<typeof encode> {
  try {
    return encode(text, { ecc: 'M', boostEcc: false, border: 0 });
  } catch {
    throw new RangeError(`a text of ${String(text.length)} characters is too long for a QR code`);
  }
}

/** Where dark modules stand side by side. */
function runsOf(
  row: readonly boolean[],
): readonly { readonly from: number; readonly length: number }[] {
  const runs: { from: number; length: number }[] = [];
  for (const [x, dark] of row.entries()) {
    const last = runs.at(-1);
    if (!dark) continue;
    if (last !== undefined && last.from + last.length === x) last.length += 1;
    else runs.push({ from: x, length: 1 });
  }
  return runs;
}
