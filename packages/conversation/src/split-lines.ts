/**
 * Lines put together to texts that are short enough for a channel.
 */

/** Groups of lines, each at most `most` long with line breaks between; longer lines are cut at spaces. */
export function splitLines(lines: readonly string[], most: number): readonly (readonly string[])[] {
  const groups: string[][] = [];
  let room = -1;
  for (const line of lines.flatMap((long) => cutLine(long, most))) {
    if (line.length + 1 > room) {
      groups.push([line]);
      room = most - line.length;
    } else {
      groups.at(-1)?.push(line);
      room -= line.length + 1;
    }
  }
  return groups;
}

/** A line in pieces of at most `most` code units, cut at a space where there is one. */
function cutLine(line: string, most: number): string[] {
  const pieces: string[] = [];
  let rest = line;
  while (rest.length > most) {
    const space = rest.lastIndexOf(' ', most);
    // Never between the halves of a character.
    const at = space > 0 ? space : isHalf(rest, most) ? most - 1 : most;
    pieces.push(rest.slice(0, at));
    rest = rest.slice(space > 0 ? at + 1 : at);
  }
  return [...pieces, rest];
}

function isHalf(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code >= 0xdc00 && code <= 0xdfff;
}
