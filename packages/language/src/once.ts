/** Made when it is first asked for, and kept. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => (made ??= { value: make() }).value;
}

/** What was found out about a thing stands on it and goes with it: a map beside would hold it longer. */
const found = Symbol('found');

/** What was found out about a thing, by what finds it. */
interface Notes {
  readonly of: object;
  readonly notes: Map<unknown, unknown>;
}

/** The notes on a thing; a copy of it comes with those of the first, which are none of its own. */
function notesOf(thing: { [found]?: Notes }): Map<unknown, unknown> {
  const known = thing[found];
  if (known?.of === thing) return known.notes;
  const notes = new Map<unknown, unknown>();
  thing[found] = { of: thing, notes };
  return notes;
}

/** Made of each thing when it is first asked for, and kept for as long as the thing is in hand. */
export function onceFor<Thing extends object, Value>(
  make: (thing: Thing) => Value,
): (thing: Thing) => Value {
  return (thing) => {
    const notes = notesOf(thing);
    const known = notes.get(make);
    if (known !== undefined || notes.has(make)) return known as Value;
    const value = make(thing);
    notes.set(make, value);
    return value;
  };
}

/** The same of a thing together with another. */
export function onceWith<Thing extends object, Other, Value>(
  make: (thing: Thing, other: Other) => Value,
): (thing: Thing, other: Other) => Value {
  const byOther = onceFor<Thing, Map<Other, Value>>(() => new Map());
  return (thing, other) => {
    const notes = byOther(thing);
    const known = notes.get(other);
    if (known !== undefined || notes.has(other)) return known as Value;
    const value = make(thing, other);
    notes.set(other, value);
    return value;
  };
}

/** So many texts are remembered where nothing else is said. */
const mostKept = 2000;

/** Made of each text when it is first asked for, and remembered for a while: `most` texts. */
export function remembered<Value>(
  make: (text: string) => Value,
  most: number = mostKept,
): (text: string) => Value {
  const kept = new Map<string, { readonly value: Value }>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known.value;
    const value = make(text);
    if (kept.size >= most) kept.clear();
    kept.set(text, { value });
    return value;
  };
}
