/** Made when it is first asked for, and kept. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => (made ??= { value: make() }).value;
}

/** What was found out about a thing stands on it and goes with it: a map beside would hold it longer. */
const found = Symbol('found');

/** A thing with what was found out about it, by what finds it. */
interface Noted {
  readonly [found]?: Map<unknown, unknown>;
}

/** The notes on a thing; a copy that is made of it has none. */
function notesOf(thing: Noted): Map<unknown, unknown> {
  const known = thing[found];
  if (known !== undefined) return known;
  const notes = new Map<unknown, unknown>();
  Object.defineProperty(thing, found, { value: notes });
  return notes;
}

/** Made of each thing when it is first asked for, and kept for as long as the thing is in hand. */
export function onceFor<Thing extends object, Value>(
  make: (thing: Thing) => Value,
): (thing: Thing) => Value {
  return (thing) => {
    const notes = notesOf(thing);
    if (!notes.has(make)) notes.set(make, make(thing));
    return notes.get(make) as Value;
  };
}

/** The same of a thing together with another. */
export function onceWith<Thing extends object, Other, Value>(
  make: (thing: Thing, other: Other) => Value,
): (thing: Thing, other: Other) => Value {
  const byOther = onceFor<Thing, Map<Other, Value>>(() => new Map());
  return (thing, other) => {
    const notes = byOther(thing);
    if (!notes.has(other)) notes.set(other, make(thing, other));
    return notes.get(other) as Value;
  };
}

/** So many texts are remembered. */
const mostKept = 2000;

/** Made of each text when it is first asked for, and remembered for a while. */
export function remembered<Value>(make: (text: string) => Value): (text: string) => Value {
  const kept = new Map<string, { readonly value: Value }>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known.value;
    const value = make(text);
    if (kept.size >= mostKept) kept.clear();
    kept.set(text, { value });
    return value;
  };
}
