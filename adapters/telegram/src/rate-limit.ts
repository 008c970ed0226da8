/**
 * How much one person may send. Pure but for what it remembers.
 */

/** What to do with something that a person sent. */
export type Allowance =
  | 'take'
  /** Not to be taken, and the person is to be told so. */
  | 'tell'
  /** Not to be taken; the person has been told. */
  | 'drop';

interface Bucket {
  left: number;
  at: number;
  isTold: boolean;
}

/** So many persons are remembered; one who is forgotten begins with a full allowance. */
const mostPersons = 10_000;

/** How much may be sent at once, and how many more each second. */
export interface RateLimit {
  readonly burst: number;
  readonly perSecond: number;
}

/** Answers for each person and time, milliseconds, what to do with what they sent. */
export function createRateLimit({
  burst,
  perSecond,
}: RateLimit): (person: number, at: number) => Allowance {
  const buckets = new Map<number, Bucket>();
  return (person, at) => {
    const known = buckets.get(person) ?? { left: burst, at, isTold: false };
    const gained = (Math.max(0, at - known.at) / 1000) * perSecond;
    const left = Math.min(burst, known.left + gained);
    const isAllowed = left >= 1;
    // The one who wrote last stands last, so that the first is the one to forget.
    buckets.delete(person);
    buckets.set(person, {
      left: isAllowed ? left - 1 : left,
      at,
      isTold: !isAllowed,
    });
    const [oldest] = buckets.keys();
    if (buckets.size > mostPersons && oldest !== undefined) buckets.delete(oldest);
    if (isAllowed) return 'take';
    return known.isTold ? 'drop' : 'tell';
  };
}
