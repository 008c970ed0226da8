/**
 * What an update means to a conversation. Pure.
 */
import type { Content } from '@keyturn/conversation';
import type { CallbackQuery, Message, Update, User, UserFromGetMe } from 'grammy/types';
import { addressedText } from './addressed-text.ts';
import { readCommand } from './read-command.ts';
import type { Place } from './place.ts';

/** What the data of our keys begins with, so that those of others are left to them. */
export const keyMark = 'keyturn:';

/** An update that is ours. */
export interface ReadUpdate {
  readonly place: Place;
  readonly person: number;
  /** The language of the person's profile, BCP 47. */
  readonly locale?: string;
  readonly writtenAt?: string;
  readonly content: Content;
  /** The callback query to be answered. */
  readonly query?: string;
  /** True for a command that is not one of ours. */
  readonly isForeign?: true;
}

/** Reads an update; undefined where it is not for us. `flows` are those begun by their name. */
export function readUpdate(
  update: Update,
  me: UserFromGetMe,
  flows: readonly string[] = [],
): ReadUpdate | undefined {
  const { callback_query: query, message, edited_message: edited } = update;
  if (query !== undefined) return readTap(query);
  if (message !== undefined) return readMessage(message, me, { isEdited: false, flows });
  if (edited !== undefined) return readMessage(edited, me, { isEdited: true, flows });
  return undefined;
}

function readTap({ id, from, data, message }: CallbackQuery): ReadUpdate | undefined {
  if (message === undefined || data?.startsWith(keyMark) !== true) return undefined;
  return {
    place: placeOfMessage(message),
    ...personOf(from),
    query: id,
    content: { type: 'key', id: data.slice(keyMark.length), on: message.message_id },
  };
}

function readMessage(
  message: Message,
  me: UserFromGetMe,
  { isEdited, flows }: { readonly isEdited: boolean; readonly flows: readonly string[] },
): ReadUpdate | undefined {
  const { from, date, message_id: id } = message;
  if (from === undefined || from.is_bot) return undefined;
  const text = addressedText(message, me);
  if (text === undefined) return undefined;
  const command = readCommand(message, me, flows);
  const content = isEdited
    ? editedContent(text, id)
    : (command?.content ?? contentOf(message, text));
  if (content === undefined) return undefined;
  return {
    place: placeOfMessage(message),
    ...personOf(from),
    // The date is in whole seconds: it was written at the end of them at the latest.
    writtenAt: new Date(date * 1000 + 999).toISOString(),
    content,
    ...(command?.isForeign === true && !isEdited ? { isForeign: true } : {}),
  };
}

function contentOf(message: Message, text: string): Content | undefined {
  if (text !== '') return { type: 'text', text, id: String(message.message_id) };
  return unreadable.some((kind) => kind in message) ? { type: 'unreadable' } : undefined;
}

function editedContent(text: string, id: number): Content | undefined {
  return text === '' ? undefined : { type: 'edited', of: String(id), text };
}

/** What a message may hold that is no text. Of other messages, such as who joined, nothing is said. */
const unreadable = [
  'animation',
  'audio',
  'contact',
  'document',
  'location',
  'photo',
  'poll',
  'sticker',
  'story',
  'venue',
  'video',
  'video_note',
  'voice',
] as const satisfies readonly (keyof Message)[];

function personOf({ id, language_code: locale }: User) {
  return { person: id, ...(locale === undefined ? {} : { locale }) };
}

function placeOfMessage(message: NonNullable<CallbackQuery['message']>): Place {
  const { chat } = message;
  // A chain of replies has a number of this kind as well, and is no thread to write into.
  const isThread = 'is_topic_message' in message && message.is_topic_message;
  const thread = isThread ? message.message_thread_id : undefined;
  return thread === undefined ? { chat: chat.id } : { chat: chat.id, thread };
}
