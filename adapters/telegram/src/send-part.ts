/**
 * One part sent.
 */
import type { Part } from '@keyturn/conversation';
import type { Api } from 'grammy';
import { apiSignal } from './api-signal.ts';
import { isUneditable, isUnchanged } from './fate.ts';
import { messageOf } from './message-of.ts';
import { placeOf } from './place.ts';

/** So long may the sending of a message take, milliseconds. */
const longestSendingMs = 10_000;

/** Sends a part to its conversation, or puts it in the place of the message that it replaces. */
export async function sendPart(api: Api, to: string, part: Part): Promise<void> {
  const { chat, thread } = placeOf(to);
  const message = messageOf(part);
  const signal = apiSignal(AbortSignal.timeout(longestSendingMs));
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
  await api.raw.sendMessage({ chat_id: chat, ...where, ...message }, signal);
}
