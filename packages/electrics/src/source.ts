/**
 * How well a figure is founded: `published` was read in the text named, `reported` only in a
 * second text that reports it, `from memory` is known from the text named but was not seen,
 * `common practice` has no source, and `computed` follows from figures that have theirs.
 */
export type Provenance = 'published' | 'reported' | 'from memory' | 'common practice' | 'computed';

/** Where a figure comes from: how well it is founded, and the text or the rule. */
export type Source = { readonly provenance: Provenance; readonly text: string };

/** A figure read in the text named. */
export function published(text: string): Source {
  return { provenance: 'published', text };
}

/** A figure of the text named, seen only in a second text that reports it. */
export function reported(text: string): Source {
  return { provenance: 'reported', text };
}

/** A figure known from the text named, which was not seen. */
export function fromMemory(text: string): Source {
  return { provenance: 'from memory', text };
}

/** A figure of common practice, without a source; `text` says what it goes by. */
export function commonPractice(text: string): Source {
  return { provenance: 'common practice', text };
}

/** A figure that follows from others; `text` says from which, with their sources. */
export function computed(text: string): Source {
  return { provenance: 'computed', text };
}
