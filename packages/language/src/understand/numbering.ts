/** Names, which are numbers of 32 bits spread evenly, counted in the order in which they are first added. */
export interface Numbering {
  /** Which one a name is, from nought; it is added where it is new. */
  readonly add: (name: number) => number;
  /** Which one it is; -1 where it was not added. */
  readonly find: (name: number) => number;
  /** Adds it; true where it was not added before. */
  readonly isNew: (name: number) => boolean;
  readonly size: () => number;
  /** All that were added. */
  readonly names: () => Int32Array;
  /** Forgets them; the next one is the first again. */
  readonly clear: () => void;
}

/** So many names have room at first. */
const firstRoom = 512;

/** A table of places by the last bits of each name; where one is taken it is the next that is free. */
export function createNumbering(): Numbering {
  let names = new Int32Array(firstRoom);
  // Which name stands at a place, counted from one: nought is free.
  let places = new Int32Array(2 * firstRoom);
  let count = 0;

  const placeOf = (name: number): number => {
    const last = places.length - 1;
    let place = name & last;
    for (let at = places[place] ?? 0; at > 0 && names[at - 1] !== name; at = places[place] ?? 0)
      place = (place + 1) & last;
    return place;
  };
  const find = (name: number): number => (places[placeOf(name)] ?? 0) - 1;
  const grow = (): void => {
    const before = names;
    names = new Int32Array(2 * count);
    names.set(before);
    places = new Int32Array(4 * count);
    for (let at = 0; at < count; at += 1) places[placeOf(names[at] ?? 0)] = at + 1;
  };
  const add = (name: number): number => {
    const known = find(name);
    if (known >= 0) return known;
    if (count === names.length) grow();
    names[count] = name;
    places[placeOf(name)] = count + 1;
    count += 1;
    return count - 1;
  };
  const isNew = (name: number): boolean => {
    const before = count;
    add(name);
    return count > before;
  };
  const clear = (): void => {
    places.fill(0);
    count = 0;
  };
  return { add, find, isNew, size: () => count, names: () => names.slice(0, count), clear };
}
