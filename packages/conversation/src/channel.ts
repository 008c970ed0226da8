/**
 * What a channel is: its limits, and the parts that it sends. It holds no logic of the flow.
 */
import type { Json } from '@keyturn/cases';
import type { Picture } from './picture.ts';

/** What a channel can do. */
export interface ChannelLimits {
  /** The longest text of one part, in UTF-16 code units. */
  readonly textLength: number;
  /** The longest label of a key, in UTF-16 code units; 0 where there are no keys to tap. */
  readonly keyLength: number;
  /** Keys at a time. */
  readonly keys: number;
  /** True where pictures can be sent. */
  readonly pictures: boolean;
}

/** One thing to tap, and what to give back when it is. */
export interface Key {
  readonly id: string;
  readonly label: string;
  /** True where it is one of several that hold, and has been picked. */
  readonly isPicked?: true;
}

/** What a part ends with, so that a channel may set it off. */
export type PartKind =
  | 'said'
  | 'caution'
  | 'question'
  | 'finding'
  | 'verdict'
  | 'refused'
  | 'done'
  | 'summary'
  | 'picture';

/** A line of a part; an empty one stands between what belongs apart. */
export interface Line {
  readonly text: string;
  /** What may be set in bold. */
  readonly isTitle?: true;
}

/** One message as it goes out: plain text, never markup. */
export interface Part {
  readonly kind: PartKind;
  readonly lines: readonly Line[];
  /** What is to be drawn; its lines tell it to who cannot see it. */
  readonly picture?: Picture;
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
  /** When it was written, ISO 8601, where the channel knows. */
  readonly writtenAt?: string;
  /** The language of the person's profile, BCP 47, where it is known. */
  readonly locale?: string;
  readonly content: Content;
}

/** What was written, tapped or asked for. */
export type Content =
  /** `id` is what a later edit of it will name. */
  | { readonly type: 'text'; readonly text: string; readonly id?: string }
  /** A key that was tapped, and what it was tapped on, as the channel knows that. */
  | { readonly type: 'key'; readonly id: string; readonly on?: Json }
  /** An earlier text was put into other words: what it answered is corrected. */
  | { readonly type: 'edited'; readonly of: string; readonly text: string }
  /** What stands now, said again; where nothing stands, a case is begun. */
  | { readonly type: 'repeat' }
  /** To put the case aside. */
  | { readonly type: 'stop' }
  /** What can be done here. */
  | { readonly type: 'help' }
  /**
   * To begin anew; with the name of a flow where it is not the usual one, and the price that was
   * paid, as it was typed, where a part is taken back.
   */
  | { readonly type: 'begin'; readonly flow?: string; readonly price?: string }
  /** Something that cannot be read: a picture, a voice. */
  | { readonly type: 'unreadable' };

/** The text of a part on a channel without bold and without keys: a line for each of them. */
export function plainText({ lines, keys }: Part): string {
  const labels = keys.flat().map(({ label }) => label);
  const texts = lines.map(({ text }) => text).filter((text) => text !== '');
  return [...texts, ...labels].join('\n');
}
