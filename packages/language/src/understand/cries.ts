import type { Spoken } from './learned.ts';

/** A word alone is no cry for help: "petrol" is an answer as well. */
const fewestWords = 2;

/** What each text is heard to raise, word for word. */
export function criesOf(
  heard: Readonly<Record<string, readonly string[]>>,
  read: (said: readonly string[]) => readonly Spoken[],
): ReadonlyMap<string, string> {
  const cries = new Map<string, string>();
  for (const [id, said] of Object.entries(heard)) {
    for (const { words } of read(said))
      if (words.length >= fewestWords) cries.set(words.join(' '), id);
  }
  return cries;
}
