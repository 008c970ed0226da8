/** Finds the known terms that a typed term may stand for. */
export type Vocabulary = (term: string) => readonly string[];

/** Terms shorter than this must be typed right: "fine" is not "fire". */
const shortestTypo = 5;

/** Terms shorter than this may miss, double or swap a letter, but not have another instead. */
const shortestSubstitution = 6;

/** Longer words than this are not looked at for typing mistakes. */
const longestTypo = 30;

/**
 * A vocabulary of terms, denied or not. A term that is not known is taken for those that differ by
 * one letter left out, put in, changed or swapped with its neighbour; the first must be right.
 */
export function createVocabulary(known: Iterable<string>): Vocabulary {
  const exact = new Set<string>();
  const byStart = new Map<string, string[]>();
  for (const term of known) {
    const bare = term.replace('!', '');
    if (exact.has(bare)) continue;
    exact.add(bare);
    const key = bucket(bare, bare.length);
    byStart.set(key, [...(byStart.get(key) ?? []), bare]);
  }
  return (term) => {
    const sign = term.startsWith('!') ? '!' : '';
    const bare = term.slice(sign.length);
    if (exact.has(bare) || bare.length > longestTypo) return [term];
    const near = [-1, 0, 1]
      .flatMap((step) => byStart.get(bucket(bare, bare.length + step)) ?? [])
      .filter((candidate) => isNear(bare, candidate));
    return near.length === 0 ? [term] : near.map((found) => `${sign}${found}`);
  };
}

function bucket(term: string, length: number): string {
  return `${term.slice(0, 1)}${length}`;
}

/** True where two words are one typing mistake apart. Linear in their length. */
function isNear(one: string, other: string): boolean {
  const length = Math.max(one.length, other.length);
  if (length < shortestTypo || /\d/.test(one)) return false;
  let same = 0;
  while (same < length && one[same] === other[same]) same += 1;
  const tail = (text: string, from: number): string => text.slice(from);
  if (one.length !== other.length) {
    const [short, long] = one.length < other.length ? [one, other] : [other, one];
    return tail(short, same) === tail(long, same + 1);
  }
  const isSwapped = one[same] === other[same + 1] && one[same + 1] === other[same];
  if (isSwapped && tail(one, same + 2) === tail(other, same + 2)) return true;
  return length >= shortestSubstitution && tail(one, same + 1) === tail(other, same + 1);
}
