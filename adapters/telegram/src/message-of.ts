/**
 * A part as a message of the Bot API: bold by entities, so that no text can hold markup. Pure.
 */
import type { ChannelLimits, Key, Part } from '@keyturn/conversation';
import type { InlineKeyboardButton, MessageEntity } from 'grammy/types';
import { keyMark } from './read-update.ts';

/**
 * What the Bot API takes: 4096 code units of text, 100 keys, 64 bytes with each. A longer label
 * would be cut by a telephone held upright.
 */
export const limits: ChannelLimits = { textLength: 4096, keyLength: 40, keys: 90, pictures: true };

/** What a message is made of, wherever it is sent or put in the place of another. */
export interface MessageOf {
  readonly text: string;
  readonly entities: MessageEntity[];
  readonly reply_markup?: { readonly inline_keyboard: InlineKeyboardButton.CallbackButton[][] };
  readonly link_preview_options: { readonly is_disabled: true };
}

/** The message of a part. */
export function messageOf({ lines, keys }: Part): MessageOf {
  const entities: MessageEntity[] = [];
  let text = '';
  for (const [index, line] of lines.entries()) {
    if (index > 0) text += '\n';
    const shown = line.text.replaceAll(/\p{Cs}/gu, '\uFFFD');
    if (line.isTitle === true && shown !== '') {
      entities.push({ type: 'bold', offset: text.length, length: shown.length });
    }
    text += shown;
  }
  return {
    text,
    entities,
    ...(keys.length === 0
      ? {}
      : { reply_markup: { inline_keyboard: keys.map((row) => row.map(buttonOf)) } }),
    link_preview_options: { is_disabled: true },
  };
}

function buttonOf({ id, label, isPicked }: Key): InlineKeyboardButton.CallbackButton {
  return { text: isPicked === true ? `✓ ${label}` : label, callback_data: keyMark + id };
}
