/**
 * Lines put together to texts that are short enough for a channel.
 */
import type { Line } from './channel.ts';

/** Groups of lines, each at most `most` long with line breaks between; longer lines are cut at spaces. */
export function splitLines(lines: readonly Line[], most: number): readonly (readonly Line[])[] {
  const groups: Line[][] = [];
  let room = -1;
  for (const line of lines.flatMap((long) => cutLine(long, most))) {
    if (line.text.length + 1 > room) {
      // A gap at the beginning of a text stands between nothing.
      if (line.text === '') continue;
      groups.push([line]);
      room = most - line.text.length;
    } else {
      groups.at(-1)?.push(line);
      room -= line.text.length + 1;
    }
  }
  return groups.map(withoutLastGap);
}

function withoutLastGap(lines: readonly Line[]): readonly Line[] {
  const last = lines.findLastIndex(({ text }) => text !== '');
  return lines.slice(0, last + 1);
}

/** A line in pieces of at most `most` code units, cut at a space where there is one. */
function cutLine({ text, ...line }: Line, most: number): Line[] {
  const pieces: Line[] = [];
  let rest = text;
  while (rest.length > most) {
    const space = rest.lastIndexOf(' ', most);
    // Never between the halves of a character.
    const at = space > 0 ? space : isHalf(rest, most) ? most - 1 : most;
    pieces.push({ ...line, text: rest.slice(0, at) });
    rest = rest.slice(space > 0 ? at + 1 : at);
  }
  return [...pieces, { ...line, text: rest }];
}

function isHalf(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code >= 0xdc00 && code <= 0xdfff;
}
