import type { Message, Update, UserFromGetMe } from 'grammy/types';
import { describe, expect, test } from 'vitest';
import { readUpdate } from './read-update.ts';

const me = { id: 7, username: 'Invented_bot', is_bot: true, first_name: 'x' } as UserFromGetMe;
const from = { id: 42, is_bot: false, first_name: 'x', language_code: 'pl' };
const message = (more: object, edited = false): Update => {
  const one = {
    message_id: 5,
    date: 1_700_000_000,
    from,
    chat: { id: 42, type: 'private' },
    ...more,
  };
  return { update_id: 1, [edited ? 'edited_message' : 'message']: one as unknown as Message };
};
const command = (text: string, more: object = {}): Update =>
  message({
    text,
    entities: [{ type: 'bot_command', offset: 0, length: text.split(' ')[0]?.length }],
    ...more,
  });

describe('a message', () => {
  test('is a text with its writer, place, language and time', () => {
    expect(readUpdate(message({ text: '12,4 V' }), me)).toEqual({
      place: { chat: 42 },
      person: 42,
      locale: 'pl',
      writtenAt: '2023-11-14T22:13:20.999Z',
      content: { type: 'text', text: '12,4 V', id: '5' },
    });
  });

  test('with a picture is its caption, or cannot be read', () => {
    expect(readUpdate(message({ photo: [], caption: '12 V' }), me)?.content).toMatchObject({
      text: '12 V',
    });
    expect(readUpdate(message({ photo: [] }), me)?.content).toEqual({ type: 'unreadable' });
  });

  test('of another bot, or of who came and went, is nobody’s', () => {
    expect(readUpdate(message({ text: 'x', from: { ...from, is_bot: true } }), me)).toBeUndefined();
    expect(readUpdate(message({ new_chat_title: 'x' }), me)).toBeUndefined();
    expect(readUpdate(message({ text: 'x', from: undefined }), me)).toBeUndefined();
  });

  test('that is edited says which one it was', () => {
    expect(readUpdate(message({ text: '12.6' }, true), me)?.content).toEqual({
      type: 'edited',
      of: '5',
      text: '12.6',
    });
    // A place that moves is edited again and again, and holds no text.
    expect(readUpdate(message({ location: {} }, true), me)).toBeUndefined();
  });

  test.each([
    ['/start', { type: 'repeat' }],
    ['/start from-a-link', { type: 'repeat' }],
    ['/AGAIN', { type: 'repeat' }],
    ['/new', { type: 'begin' }],
    ['/stop@invented_bot', { type: 'stop' }],
    ['/help', { type: 'help' }],
    ['/constructor', { type: 'help' }],
  ])('%s is a command', (text, content) => {
    expect(readUpdate(command(text), me)?.content).toEqual(content);
  });

  test('may name a flow, and behind it the price of what comes back', () => {
    const of = (text: string): unknown =>
      readUpdate(command(text), me, ['battery-return'])?.content;
    expect(of('/battery_return')).toEqual({ type: 'begin', flow: 'battery-return' });
    const paid = { type: 'begin', flow: 'battery-return', price: '119,90' };
    expect(of('/battery_return  119,90 ')).toEqual(paid);
  });

  test('with a command of another is marked so, and of another bot is a text', () => {
    expect(readUpdate(command('/weather'), me)?.isForeign).toBe(true);
    expect(readUpdate(command('/stop@other_bot'), me)?.content.type).toBe('text');
  });
});

describe('in a group', () => {
  const chat = { id: -9, type: 'supergroup' };

  test('only what names or answers the bot is for it', () => {
    expect(readUpdate(message({ chat, text: 'hello' }), me)).toBeUndefined();
    expect(readUpdate(command('/new', { chat }), me)).toBeUndefined();
    expect(readUpdate(command('/new@invented_bot', { chat }), me)?.content.type).toBe('begin');
    const entities = [{ type: 'mention', offset: 6, length: 13 }];
    const named = message({ chat, text: 'hello @INVENTED_bot clicks', entities });
    expect(readUpdate(named, me)?.content).toMatchObject({ text: 'hello  clicks' });
    const reply_to_message = { from: me };
    expect(readUpdate(message({ chat, text: 'yes', reply_to_message }), me)?.place).toEqual({
      chat: -9,
    });
  });

  test('a topic is a place of its own, a chain of replies is not', () => {
    const text = '@invented_bot x';
    const more = { chat, text, entities: [{ type: 'mention', offset: 0, length: 13 }] };
    const thread = { message_thread_id: 3 };
    expect(readUpdate(message({ ...more, ...thread }), me)?.place).toEqual({ chat: -9 });
    const topic = message({ ...more, ...thread, is_topic_message: true });
    expect(readUpdate(topic, me)?.place).toEqual({ chat: -9, thread: 3 });
  });
});

describe('a tap', () => {
  const tap = (data: string): Update => ({
    update_id: 1,
    callback_query: {
      id: 'q',
      from,
      chat_instance: 'c',
      data,
      message: { message_id: 8, date: 1, chat: { id: 42, type: 'private', first_name: 'x' } },
    } as unknown as NonNullable<Update['callback_query']>,
  });

  test('of one of our keys says which, and on what', () => {
    expect(readUpdate(tap('keyturn:3.1'), me)).toMatchObject({
      query: 'q',
      content: { type: 'key', id: '3.1', on: 8 },
    });
  });

  test('of a key of somebody else is left to them', () => {
    expect(readUpdate(tap('other:3.1'), me)).toBeUndefined();
  });
});
