/**
 * Values by what has been found. A key is some whole numbers, each exact, so that two states are
 * never taken for one.
 */
export interface Memo {
  readonly words: number;
  capacity: number;
  size: number;
  keys: Float64Array;
  /** What is stored, or NaN in an empty place. */
  values: Float64Array;
  /** 1 where the value is exact, 0 where it is only a lower bound. */
  exact: Uint8Array;
  /** The option that was best; -1 for acting. */
  options: Int16Array;
}

/** An empty memo for keys of so many words. */
export function createMemo(words: number): Memo {
  const capacity = 1024;
  return {
    words,
    capacity,
    size: 0,
    keys: new Float64Array(capacity * words),
    values: new Float64Array(capacity).fill(Number.NaN),
    exact: new Uint8Array(capacity),
    options: new Int16Array(capacity),
  };
}

/** Where a key is, or where it is to be put; `isKnown` tells which. */
export function placeOf(memo: Memo, key: Float64Array): number {
  const { words, keys, values, capacity } = memo;
  let hash = 0;
  for (let word = 0; word < words; word += 1) {
    const part = key[word] as number;
    hash = mixed(hash ^ (part | 0));
    hash = mixed(hash ^ (part / 4294967296));
  }
  const mask = capacity - 1;
  let place = hash & mask;
  for (;;) {
    if (Number.isNaN(values[place])) return place;
    let word = 0;
    while (word < words && keys[place * words + word] === key[word]) word += 1;
    if (word === words) return place;
    place = (place + 1) & mask;
  }
}

/** Spreads the bits of a number over all of it: the keys of a search differ in few. */
function mixed(bits: number): number {
  const once = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  const twice = Math.imul(once ^ (once >>> 13), 0xc2b2ae35);
  return twice ^ (twice >>> 16);
}

/** Whether a place holds a value. */
export function isKnown(memo: Memo, place: number): boolean {
  return !Number.isNaN(memo.values[place]);
}

/** Keeps a value under a key; what was there before is replaced. */
export function remember(
  memo: Memo,
  key: Float64Array,
  entry: { readonly value: number; readonly exact: boolean; readonly option: number },
): void {
  let place = placeOf(memo, key);
  if (!isKnown(memo, place)) {
    if (memo.size * 2 >= memo.capacity) {
      grow(memo);
      place = placeOf(memo, key);
    }
    memo.size += 1;
    memo.keys.set(key, place * memo.words);
  }
  memo.values[place] = entry.value;
  memo.exact[place] = entry.exact ? 1 : 0;
  memo.options[place] = entry.option;
}

function grow(memo: Memo): void {
  const { keys, values, exact, options, words } = memo;
  memo.capacity *= 4;
  memo.keys = new Float64Array(memo.capacity * words);
  memo.values = new Float64Array(memo.capacity).fill(Number.NaN);
  memo.exact = new Uint8Array(memo.capacity);
  memo.options = new Int16Array(memo.capacity);
  values.forEach((value, old) => {
    if (Number.isNaN(value)) return;
    const key = keys.subarray(old * words, (old + 1) * words);
    const place = placeOf(memo, key);
    memo.keys.set(key, place * words);
    memo.values[place] = value;
    memo.exact[place] = exact[old] as number;
    memo.options[place] = options[old] as number;
  });
}
