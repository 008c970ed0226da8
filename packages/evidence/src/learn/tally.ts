/** Whole numbers by name, to any depth: what counts are made of. */
export interface Tally {
  readonly [name: string]: number | Tally;
}

/**
 * A record with one entry changed, its names in order, so that equal counts are written alike.
 *
 * @param change - gives the new value; nothing takes the entry away
 */
export function withEntry<Value>(
  record: Readonly<Record<string, Value>>,
  name: string,
  change: (value: Value | undefined) => Value | undefined,
): Readonly<Record<string, Value>> {
  // A Map, since a name may be one that every object has, such as `constructor`.
  const entries = new Map(Object.entries(record));
  const value = change(entries.get(name));
  if (value === undefined) entries.delete(name);
  else entries.set(name, value);
  return inOrder(entries);
}

/** Adds two tallies name by name. */
export function sumTallies(left: Tally, right: Tally): Tally {
  const entries = new Map(Object.entries(left));
  for (const [name, value] of Object.entries(right)) {
    entries.set(name, sumOf(entries.get(name), value));
  }
  return inOrder(new Map([...entries].map(([name, value]) => [name, sorted(value)])));
}

function sumOf(left: number | Tally | undefined, right: number | Tally): number | Tally {
  if (left === undefined) return right;
  return typeof left === 'number' || typeof right === 'number'
    ? Number(left) + Number(right)
    : sumTallies(left, right);
}

function sorted(value: number | Tally): number | Tally {
  return typeof value === 'number' ? value : sumTallies(value, {});
}

function inOrder<Value>(entries: ReadonlyMap<string, Value>): Readonly<Record<string, Value>> {
  return Object.fromEntries([...entries].sort(([a], [b]) => (a < b ? -1 : Number(a > b))));
}
