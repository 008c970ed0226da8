/**
 * Where a conversation is held: a chat, or one thread of it.
 */

/** A chat, and the thread in it where it has threads. */
export interface Place {
  readonly chat: number;
  readonly thread?: number;
}

/** What the names of all conversations of a bot begin with. */
export function conversationsOf(bot: number): string {
  return `telegram ${String(bot)} `;
}

/** The name of the conversation at a place. */
export function conversationAt(bot: number, { chat, thread }: Place): string {
  const place = thread === undefined ? String(chat) : `${String(chat)} ${String(thread)}`;
  return conversationsOf(bot) + place;
}

/** The place of a conversation. */
export function placeOf(conversation: string): Place {
  const [, , chat, thread] = conversation.split(' ');
  const place = { chat: Number(chat) };
  return thread === undefined ? place : { ...place, thread: Number(thread) };
}
