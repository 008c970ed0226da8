/**
 * How much one person may send. Pure but for what it remembers.
 */

/** What to do with something that a person sent. */
type Allowance =
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

/** Who may send how much. */
export interface Allowances {
  /** What to do with something that a person sends at a time, milliseconds. */
  readonly ask: (person: number, at: number) => Allowance;
  /** What was to be taken was not, or had been taken before: it counts for nothing. */
  readonly giveBack: (person: number) => void;
}

/** Begins with a full allowance for everybody. */
export function createRateLimit({ burst, perSecond }: RateLimit): Allowances {
  const buckets = new Map<number, Bucket>();
  return {
    ask: (person, at) => {
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
    },
    giveBack: (person) => {
      const known = buckets.get(person);
      if (known !== undefined) known.left = Math.min(burst, known.left + 1);
    },
  };
}
