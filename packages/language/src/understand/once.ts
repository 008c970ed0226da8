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
