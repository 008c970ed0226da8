/** Things by each of their keys, each time in their order. */
export function gather<Thing>(
  things: Iterable<Thing>,
  keysOf: (thing: Thing) => Iterable<string>,
): ReadonlyMap<string, readonly Thing[]> {
  const gathered = new Map<string, Thing[]>();
  for (const thing of things) {
    for (const key of keysOf(thing)) {
      const holders = gathered.get(key);
      if (holders === undefined) gathered.set(key, [thing]);
      else holders.push(thing);
    }
  }
  return gathered;
}
