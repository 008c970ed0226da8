/** A date in a PDF's information, ISO 32000-1, 7.9.4: "D:20260101080000+00'00'". */
const pdfDate = /\((D:\d{14}[^)]*)\)/g;

/**
 * A PDF with every date of its information set to one moment, in UTC. Each keeps its length, so
 * that what the file says of its own places stays right.
 */
export function dated(pdf: Uint8Array, at: string): Uint8Array {
  const text = bytesAsText(pdf);
  const moment = `D:${new Date(at).toISOString().replace(/\D/gu, '').slice(0, 14)}`;
  const set = text.replace(pdfDate, (_, date: string) => {
    const zone = "+00'00'".padEnd(date.length - moment.length, ' ').slice(0, date.length - 16);
    return `(${moment}${zone})`;
  });
  return Uint8Array.from(set, (character) => character.charCodeAt(0));
}

/** One character for each byte. */
function bytesAsText(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
}
