/** A stretch of a note. */
export interface NotePart {
  readonly text: string;
  /** True for a published text, in English. */
  readonly isCited: boolean;
}

/** A note in parts: what is cited in it, and what stands around that. */
export function noteParts(note: string, cited: readonly string[]): readonly NotePart[] {
  const text = cited.find((one) => note.includes(one));
  if (text === undefined) return [{ text: note, isCited: false }];
  const at = note.indexOf(text);
  const parts = [
    { text: note.slice(0, at), isCited: false },
    { text, isCited: true },
    { text: note.slice(at + text.length), isCited: false },
  ];
  return parts.filter((part) => part.text !== '');
}
