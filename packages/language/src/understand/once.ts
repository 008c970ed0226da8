/** Made when it is first asked for, and kept. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => (made ??= { value: make() }).value;
}

/** Made of each thing when it is first asked for, and kept for as long as the thing is in hand. */
export function onceFor<Thing extends object, Value>(
  make: (thing: Thing) => Value,
): (thing: Thing) => Value {
  const kept = new WeakMap<Thing, { readonly value: Value }>();
  return (thing) => {
    const known = kept.get(thing) ?? { value: make(thing) };
    kept.set(thing, known);
    return known.value;
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
