/**
 * Whether a message is meant for the bot: in a group only where it is named or answered. Pure.
 */
import type { Message, UserFromGetMe } from 'grammy/types';

/**
 * The text of a message without the name of the bot; empty where it has none, undefined where the
 * message is meant for others.
 */
export function addressedText(message: Message, me: UserFromGetMe): string | undefined {
  const text = message.text ?? message.caption ?? '';
  if (message.chat.type === 'private') return text;
  if (message.chat.type === 'channel') return undefined;
  const entities = message.entities ?? message.caption_entities ?? [];
  const names = entities.filter((entity) => {
    const named = text.slice(entity.offset, entity.offset + entity.length).toLowerCase();
    const name = `@${me.username.toLowerCase()}`;
    if (entity.type === 'mention') return named === name;
    if (entity.type === 'bot_command') return named.endsWith(name);
    return entity.type === 'text_mention' && entity.user.id === me.id;
  });
  const isAnswer = message.reply_to_message?.from?.id === me.id;
  if (names.length === 0 && !isAnswer) return undefined;
  // From the last to the first, so that the places of the others stay right.
  return names
    .filter(({ type }) => type !== 'bot_command')
    .toReversed()
    .reduce((rest, { offset, length }) => rest.slice(0, offset) + rest.slice(offset + length), text)
    .trim();
}
