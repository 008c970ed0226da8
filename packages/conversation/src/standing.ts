/**
 * Where a conversation stands between two things that come in: plain JSON, kept with its case.
 */
import type { Json } from '@keyturn/cases';
import type { Offer } from '@keyturn/language';
import type { Tap } from './tap.ts';

/** The version of this form. A conversation of another is begun anew. */
const format = 1;

/** A text that was taken, and the checks that it answered: what an edit of it corrects. */
export interface Taken {
  readonly id: string;
  readonly checks: readonly string[];
}

/** Where a conversation stands. */
export interface Standing {
  readonly format: typeof format;
  /** The case in hand; null before the first. */
  readonly case: string | null;
  /** The flow of that case; left out in what was kept before there were several. */
  readonly flow?: string;
  /** BCP 47 tag. */
  readonly locale: string;
  /** Counts what was asked, so that the keys of an earlier question answer none. */
  readonly asked: number;
  /** What the keys of the last question do, by their number. */
  readonly taps: readonly Tap[];
  /** The key that was tapped last: tapped once more by the same finger it is not another answer. */
  readonly tapped: string | null;
  /** When cautions were put that still wait for their confirmation, ISO 8601; null where none do. */
  readonly cautionedAt: string | null;
  /** The check or verdict that a picture was last sent for. */
  readonly pictured: string | null;
  /** Answers that the last text may have meant. */
  readonly offers: readonly Offer[];
  /** Picked so far where several may hold. */
  readonly picked: readonly string[];
  /** The last texts, oldest first. */
  readonly taken: readonly Taken[];
  /** True once the person has asked for a pause, or for somebody else. */
  readonly isAside: boolean;
  /** True while a timer is set for the wait in hand. */
  readonly isTimed: boolean;
}

/** A conversation in which nothing has been said. */
export function blankStanding(locale: string): Standing {
  return {
    format,
    case: null,
    locale,
    asked: 0,
    taps: [],
    tapped: null,
    cautionedAt: null,
    pictured: null,
    offers: [],
    picked: [],
    taken: [],
    isAside: false,
    isTimed: false,
  };
}

/** Reads a standing as it was kept; undefined where it is of another form. */
export function readStanding(body: Json): Standing | undefined {
  const isObject = typeof body === 'object' && body !== null && !Array.isArray(body);
  const kept = (isObject ? body : {}) as Partial<Standing>;
  return kept.format === format ? (kept as Standing) : undefined;
}

/** A standing as it is kept. */
export function keptStanding(standing: Standing): Json {
  return standing as unknown as Json;
}

/** The name of a key: which question it belongs to, and its number there. */
export function keyId(asked: number, index: number): string {
  return `${String(asked)}.${String(index)}`;
}

/** What a key does; `old` where it belongs to an earlier question, undefined where to none. */
export function tapOf(standing: Standing, id: string): Tap | 'old' | undefined {
  const [, asked, index] = /^(\d{1,9})\.(\d{1,3})$/.exec(id) ?? [];
  if (asked === undefined || index === undefined) return undefined;
  return Number(asked) === standing.asked ? standing.taps[Number(index)] : 'old';
}

/** So many of the last texts can be corrected by editing them. */
const mostTaken = 20;

/** A standing that remembers what a text answered. */
export function withTaken(standing: Standing, one: Taken): Standing {
  const others = standing.taken.filter(({ id }) => id !== one.id);
  return { ...standing, taken: [...others, one].slice(-mostTaken) };
}
