import { gather } from '../gather.ts';

/** Terms shorter than this must be typed right: "fine" is not "fire". */
const shortestTypo = 5;

/** Terms shorter than this may miss, double or swap a letter, but not have another instead. */
const shortestSubstitution = 6;

/**
 * True where two words are one typing mistake apart: a letter left out, put in, changed or swapped
 * with its neighbour; the first must be right. Linear in their length.
 */
export function isNear(one: string, other: string): boolean {
  const length = Math.max(one.length, other.length);
  if (length < shortestTypo || one[0] !== other[0]) return false;
  return isOneMistake(one, other, shortestSubstitution);
}

/** The same beside a figure, where few words are expected: shorter ones may be mistyped as well. */
export function isMistyped(one: string, other: string): boolean {
  const isSameStart = one[0] === other[0] || other.length >= shortestSubstitution;
  return isSameStart && one !== other && isOneMistake(one, other, 0);
}

/** Known words that are one typing mistake away: those with the first letter, about as long. */
export function indexMistakes(words: Iterable<string>): (word: string) => string[] {
  const byStart = gather(words, (word) => [`${word.slice(0, 1)}${String(word.length)}`]);
  return (word) =>
    [word.length - 1, word.length, word.length + 1]
      .flatMap((length) => byStart.get(`${word.slice(0, 1)}${String(length)}`) ?? [])
      .filter((candidate) => isNear(word, candidate));
}

function isOneMistake(one: string, other: string, substitution: number): boolean {
  const length = Math.max(one.length, other.length);
  if (Math.abs(one.length - other.length) > 1) return false;
  let same = 0;
  while (same < length && one[same] === other[same]) same += 1;
  const tail = (text: string, from: number): string => text.slice(from);
  if (one.length !== other.length) {
    const [short, long] = one.length < other.length ? [one, other] : [other, one];
    return tail(short, same) === tail(long, same + 1);
  }
  const isSwapped = one[same] === other[same + 1] && one[same + 1] === other[same];
  if (isSwapped && tail(one, same + 2) === tail(other, same + 2)) return true;
  return length >= substitution && tail(one, same + 1) === tail(other, same + 1);
}
