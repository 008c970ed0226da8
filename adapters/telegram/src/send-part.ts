/**
 * One part sent.
 */
import type { Part } from '@keyturn/conversation';
import type { Api } from 'grammy';
import { apiSignal } from './api-signal.ts';
import { isUneditable, isUnchanged } from './fate.ts';
import { messageOf } from './message-of.ts';
import type { Pictures } from './pictures.ts';
import { placeOf } from './place.ts';

/** So long may the sending of a message take, milliseconds. */
const longestSendingMs = 10_000;

/** What sends. */
export interface Sending {
  readonly api: Api;
  readonly pictures: Pictures;
}

/** Sends a part to its conversation, or puts it in the place of the message that it replaces. */
export async function sendPart(sending: Sending, to: string, part: Part): Promise<void> {
  const givingUp = new AbortController();
  const timer = setTimeout(() => givingUp.abort(), longestSendingMs);
  try {
    await sendWithin(apiSignal(givingUp.signal), sending, { to, part });
  } finally {
    clearTimeout(timer);
  }
}

async function sendWithin(
  signal: ReturnType<typeof apiSignal>,
  { api, pictures }: Sending,
  { to, part }: { readonly to: string; readonly part: Part },
): Promise<void> {
  const { chat, thread } = placeOf(to);
  const message = messageOf(part);
  if (typeof part.replaces === 'number') {
    try {
      await api.raw.editMessageText(
        { chat_id: chat, message_id: part.replaces, ...message },
        signal,
      );
      return;
    } catch (error) {
      if (isUnchanged(error)) return;
      if (!isUneditable(error)) throw error;
    }
  }
  const where = thread === undefined ? {} : { message_thread_id: thread };
  if (part.picture === undefined) {
    await api.raw.sendMessage({ chat_id: chat, ...where, ...message }, signal);
    return;
  }
  const { picture, locale } = part;
  const photo = await pictures.take(picture, locale);
  const caption = { caption: message.text, caption_entities: message.entities };
  const sent = await api.raw.sendPhoto({ chat_id: chat, ...where, photo, ...caption }, signal);
  const fileId = sent.photo.at(-1)?.file_id;
  if (fileId !== undefined) pictures.keep(picture, locale, fileId);
}
