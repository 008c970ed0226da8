/**
 * What a channel is: its limits, and the parts that it sends. It holds no logic of the flow.
 */
import type { Json } from '@keyturn/cases';

/** What a channel can do. */
export interface ChannelLimits {
  /** The longest text of one part, in UTF-16 code units. */
  readonly textLength: number;
  /** The longest label of a key; 0 where there are no keys to tap. */
  readonly keyLength: number;
  /** Keys at a time. */
  readonly keys: number;
}

/** One thing to tap, and what to give back when it is. */
export interface Key {
  readonly id: string;
  readonly label: string;
  /** True where it is one of several that hold, and has been picked. */
  readonly isPicked?: true;
}

/** What stands out in a part, so that a channel may set it off. */
export type PartKind = 'said' | 'caution' | 'question' | 'finding' | 'verdict' | 'refused' | 'done';

/** One message as it goes out: plain text, never markup. */
export interface Part {
  readonly kind: PartKind;
  /** What may be set in bold, before the lines; may be empty. */
  readonly title: string;
  readonly lines: readonly string[];
  /** Rows of keys; none on a channel that has none. */
  readonly keys: readonly (readonly Key[])[];
  /** BCP 47 tag of its language. */
  readonly locale: string;
  /** What the key was tapped on that made this part, where it takes that one's place. */
  readonly replaces?: Json;
}

/** What comes in. */
export interface Incoming {
  /** Names the conversation: channel, chat, thread. */
  readonly conversation: string;
  /** Names what came in, so that it is taken once however often it is delivered. */
  readonly key: string;
  /** When it was taken in, ISO 8601. */
  readonly at: string;
  /** The language of the person's profile, BCP 47, where it is known. */
  readonly locale?: string;
  readonly content:
    | { readonly type: 'text'; readonly text: string }
    /** A key that was tapped, and what it was tapped on, as the channel knows that. */
    | { readonly type: 'key'; readonly id: string; readonly on?: Json }
    /** The latest text said again in other words. */
    | { readonly type: 'edited'; readonly text: string }
    /** To begin anew. */
    | { readonly type: 'begin' }
    /** Something that cannot be read: a picture, a voice. */
    | { readonly type: 'unreadable' };
}

/** The text of a part on a channel without bold and without keys: a line for each of them. */
export function plainText({ title, lines, keys }: Part): string {
  const labels = keys.flat().map(({ label }) => label);
  return [title, ...lines, ...labels].filter((line) => line !== '').join('\n');
}
