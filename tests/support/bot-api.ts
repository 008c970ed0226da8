/**
 * A local server that speaks the published Bot API, as strictly as it is documented: what the real
 * one refuses, it refuses (limits and errors: the Bot API's own pages; 100 keys in a keyboard and 8
 * in a row: from memory).
 */
import { once } from 'node:events';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type {
  ApiError,
  CallbackQuery,
  InlineKeyboardButton,
  Message,
  MessageEntity,
  Update,
  User,
  UserFromGetMe,
} from 'grammy/types';

/** A token that only this server knows. */
export const token = '110201543:AAHdqTcvCH1vGWJxfSeofSAs0K5PALDsaw-test';

/** The bot, as the server tells it. */
export const me: UserFromGetMe = {
  id: 110_201_543,
  is_bot: true,
  first_name: 'Tests',
  username: 'invented_bot',
  can_join_groups: true,
  can_read_all_group_messages: false,
  supports_inline_queries: false,
} as UserFromGetMe;

/** A message that the bot has sent, as it stands now. */
export interface Sent {
  readonly chat: number;
  readonly id: number;
  readonly thread?: number;
  text: string;
  entities: readonly MessageEntity[];
  keys: readonly InlineKeyboardButton.CallbackButton[];
  /** The PNG that is shown, and whether it was uploaded with this message. */
  readonly photo?: { readonly png: Buffer; readonly isUploaded: boolean };
  edits: number;
}

/** What the server does with a call instead of what it should. */
export type Fault =
  | { readonly type: 'error'; readonly error: Omit<ApiError, 'ok'> }
  /** Nothing is ever answered. */
  | { readonly type: 'hang' }
  /** It is done, and the connection breaks before that is told. */
  | { readonly type: 'break' };

/** A call that was not done. */
export interface Refused {
  readonly method: string;
  readonly description: string;
}

/** Who writes, and where. */
export interface Writer {
  readonly person: number;
  readonly chat?: number;
  readonly thread?: number;
  readonly language?: string;
}

type Params = Readonly<Record<string, unknown>>;
type Payload = Omit<Update, 'update_id'>;

class Refusal extends Error {
  readonly code: number;

  constructor(code: number, message: string) {
    super(message);
    this.code = code;
  }
}

const bad = (reason: string): never => {
  throw new Refusal(400, `Bad Request: ${reason}`);
};

/** The server, and everybody who writes to the bot. */
export class BotApi {
  readonly sent: Sent[] = [];
  readonly refused: Refused[] = [];
  readonly answered: { readonly id: string; readonly text?: string }[] = [];
  readonly commands: Params[] = [];
  /** Set by `setWebhook`. */
  webhook: { readonly url: string; readonly secret?: string } | undefined;
  /** Called for every message that is sent or edited. */
  onSent: (sent: Sent) => void = () => undefined;
  /** Asked before every call but `getUpdates`; what it gives is done instead. */
  faultOf: (method: string, params: Params) => Fault | undefined = () => undefined;
  /** Chats that have blocked the bot. */
  readonly blocked = new Set<number>();
  /** True where updates are given with the last first. */
  isReversed = false;

  readonly #server = createServer((request, response) => void this.#handle(request, response));
  readonly #chats = new Set<number>();
  readonly #threads = new Set<string>();
  /** Those that wait for an answer. */
  readonly #queries = new Set<string>();
  readonly #waiting = new Set<() => void>();
  readonly #files = new Map<string, Buffer>();
  #updates: Update[] = [];
  #isDeferred = false;
  #lastUpdate = 1000;
  #lastMessage = 0;
  #byId = new Map<string, Sent>();

  /** Where it is. */
  get root(): string {
    return `http://127.0.0.1:${String((this.#server.address() as AddressInfo).port)}`;
  }

  /** How many updates have not been confirmed. */
  get unconfirmed(): number {
    return this.#updates.length;
  }

  async start(): Promise<this> {
    // A connection that is closed just as it is used again would be a fault that nobody asked for.
    this.#server.keepAliveTimeout = 60_000;
    this.#server.listen(0, '127.0.0.1');
    await once(this.#server, 'listening');
    return this;
  }

  async stop(): Promise<void> {
    for (const wake of this.#waiting) wake();
    this.#server.closeAllConnections();
    this.#server.close();
    await once(this.#server, 'close');
  }

  /** Somebody writes; the update that comes of it. */
  write(writer: Writer, text: string, more: Partial<Message> = {}): Update & { message: Message } {
    const command = /^\/[\w@]+/.exec(text)?.[0];
    const entities: MessageEntity[] =
      command === undefined ? [] : [{ type: 'bot_command', offset: 0, length: command.length }];
    const message = {
      ...this.#message(writer),
      ...(text === '' ? {} : { text }),
      ...(entities.length > 0 ? { entities } : {}),
      ...more,
    };
    return this.push({ message } as Payload) as Update & { message: Message };
  }

  /** Somebody puts an earlier message into other words. */
  edit(message: Message, text: string): Update {
    const edited_message = { ...message, text, edit_date: message.date + 60 } as Message;
    return this.push({ edited_message } as Payload);
  }

  /** Somebody taps a key of a message. */
  tap(writer: Writer, on: Sent, key: InlineKeyboardButton.CallbackButton): Update {
    const id = `query ${String(this.#lastUpdate + 1)}`;
    this.#queries.add(id);
    const callback_query = {
      id,
      from: userOf(writer),
      chat_instance: String(on.chat),
      data: key.callback_data,
      message: { ...this.#message({ ...writer, chat: on.chat }), message_id: on.id, from: me },
    } as unknown as CallbackQuery;
    return this.push({ callback_query });
  }

  /** An update to be delivered. */
  push(payload: Payload): Update {
    this.#lastUpdate += 1;
    const update = { update_id: this.#lastUpdate, ...payload };
    this.deliver(update);
    return update;
  }

  /** Delivers an update, also one that was delivered before. */
  deliver(update: Update): void {
    this.#updates.push(update);
    if (this.#isDeferred) return;
    for (const wake of this.#waiting) wake();
  }

  /** What is written meanwhile is delivered together. */
  deferred(write: () => void): void {
    this.#isDeferred = true;
    write();
    this.#isDeferred = false;
    for (const wake of this.#waiting) wake();
  }

  /** A message is deleted by the person. */
  forget({ chat, id }: Sent): void {
    this.#byId.delete(`${String(chat)} ${String(id)}`);
  }

  /** The messages of a chat, or of one thread of it. */
  messagesTo(chat: number, thread?: number): readonly Sent[] {
    return this.sent.filter((one) => one.chat === chat && one.thread === thread);
  }

  #message(writer: Writer): Message {
    const { person, thread } = writer;
    const chat = writer.chat ?? person;
    this.#lastMessage += 1;
    this.#chats.add(chat);
    if (thread !== undefined) this.#threads.add(`${String(chat)} ${String(thread)}`);
    return {
      message_id: this.#lastMessage,
      date: Math.floor(Date.now() / 1000),
      from: userOf(writer),
      chat:
        chat > 0
          ? { id: chat, type: 'private', first_name: 'Invented' }
          : { id: chat, type: 'supergroup', title: 'Invented' },
      ...(thread === undefined ? {} : { message_thread_id: thread, is_topic_message: true }),
    };
  }

  async #handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const [, given, method = ''] = /^\/bot([^/]*)\/(\w+)$/.exec(request.url ?? '') ?? [];
    const params = paramsOf(request, Buffer.concat(chunks));
    const fault = method === 'getUpdates' ? undefined : this.faultOf(method, params);
    if (fault?.type === 'hang') return;
    let body: unknown;
    let status = 200;
    try {
      if (fault?.type === 'error') {
        status = fault.error.error_code;
        body = { ok: false, ...fault.error };
      } else {
        if (given !== token) throw new Refusal(401, 'Unauthorized');
        body = { ok: true, result: await this.#call(method, params) };
      }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      status = error.code;
      this.refused.push({ method, description: error.message });
      body = { ok: false, error_code: status, description: error.message };
    }
    if (fault?.type === 'break') {
      response.destroy();
      return;
    }
    response.writeHead(status, { 'content-type': 'application/json' });
    response.end(JSON.stringify(body));
  }

  #call(method: string, params: Params): unknown {
    switch (method.toLowerCase()) {
      case 'getme':
        return me;
      case 'getupdates':
        return this.#getUpdates(params);
      case 'sendmessage':
        return this.#sendMessage(params);
      case 'sendphoto':
        return this.#sendPhoto(params);
      case 'editmessagetext':
        return this.#editMessageText(params);
      case 'answercallbackquery':
        return this.#answerCallbackQuery(params);
      case 'setmycommands':
        return this.#setMyCommands(params);
      case 'deletewebhook':
        this.webhook = undefined;
        return true;
      case 'setwebhook':
        return this.#setWebhook(params);
      default:
        throw new Refusal(404, 'Not Found');
    }
  }

  async #getUpdates({ offset = 0, limit = 100, timeout = 0 }: Params): Promise<readonly Update[]> {
    if (this.webhook !== undefined) {
      throw new Refusal(
        409,
        "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
      );
    }
    this.#updates = this.#updates.filter(({ update_id }) => update_id >= Number(offset));
    if (this.#updates.length === 0 && Number(timeout) > 0) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, Number(timeout) * 1000);
        const wake = (): void => {
          clearTimeout(timer);
          this.#waiting.delete(wake);
          resolve();
        };
        this.#waiting.add(wake);
      });
    }
    const given = this.#updates.slice(0, Number(limit));
    return this.isReversed ? given.toReversed() : given;
  }

  #sendMessage(params: Params): Message {
    const sent = this.#send(params, contentOf(params));
    return { message_id: sent.id, date: 0, chat: { id: sent.chat }, text: sent.text } as Message;
  }

  #sendPhoto(params: Params): Message {
    const given = params['photo'];
    const known = typeof given === 'string' ? this.#files.get(given) : undefined;
    const png = Buffer.isBuffer(given) ? given : known;
    if (png === undefined) return bad('wrong file identifier/HTTP URL specified');
    holdPhoto(png);
    const fileId = known === undefined ? `file ${String(this.#files.size)}` : String(given);
    this.#files.set(fileId, png);
    const content = captionOf(params);
    const sent = this.#send(params, {
      ...content,
      photo: { png, isUploaded: known === undefined },
    });
    const photo = [{ file_id: fileId, file_unique_id: fileId, ...sizeOf(png) }];
    return { message_id: sent.id, date: 0, chat: { id: sent.chat }, photo } as Message;
  }

  #send(params: Params, content: Omit<Sent, 'chat' | 'id' | 'thread' | 'edits'>): Sent {
    const chat = Number(params['chat_id']);
    if (this.blocked.has(chat)) {
      throw new Refusal(403, 'Forbidden: bot was blocked by the user');
    }
    if (!this.#chats.has(chat)) bad('chat not found');
    const thread = params['message_thread_id'] as number | undefined;
    if (thread !== undefined && !this.#threads.has(`${String(chat)} ${String(thread)}`)) {
      bad('message thread not found');
    }
    this.#lastMessage += 1;
    const sent: Sent = {
      chat,
      id: this.#lastMessage,
      ...(thread === undefined ? {} : { thread }),
      ...content,
      edits: 0,
    };
    this.sent.push(sent);
    this.#byId.set(`${String(chat)} ${String(sent.id)}`, sent);
    this.onSent(sent);
    return sent;
  }

  #editMessageText(params: Params): true {
    const chat = Number(params['chat_id']);
    const sent = this.#byId.get(`${String(chat)} ${String(params['message_id'])}`);
    if (sent === undefined) return bad('message to edit not found');
    const content = contentOf(params);
    const { text, entities, keys } = sent;
    if (JSON.stringify(content) === JSON.stringify({ text, entities, keys })) {
      bad(
        'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
      );
    }
    Object.assign(sent, content, { edits: sent.edits + 1 });
    this.onSent(sent);
    return true;
  }

  #answerCallbackQuery({ callback_query_id: id, text }: Params): true {
    const query = String(id);
    if (!this.#queries.has(query)) {
      bad('query is too old and response timeout expired or query ID is invalid');
    }
    if (typeof text === 'string' && text.length > 200) bad('MESSAGE_TOO_LONG');
    this.#queries.delete(query);
    this.answered.push({ id: query, ...(typeof text === 'string' ? { text } : {}) });
    return true;
  }

  #setMyCommands(params: Params): true {
    const commands = params['commands'] as { command: string; description: string }[];
    if (commands.length > 100) bad('too many commands');
    for (const { command, description } of commands) {
      if (!/^[a-z0-9_]{1,32}$/.test(command)) bad('BOT_COMMAND_INVALID');
      if (description.length < 1 || description.length > 256) {
        bad('BOT_COMMAND_DESCRIPTION_INVALID');
      }
    }
    this.commands.push(params);
    return true;
  }

  #setWebhook({ url, secret_token: secret }: Params): true {
    if (typeof url !== 'string' || !url.startsWith('https:')) {
      bad('bad webhook: An HTTPS URL must be provided for webhook');
    }
    this.webhook = { url: String(url), ...(typeof secret === 'string' ? { secret } : {}) };
    return true;
  }
}

function userOf({ person, language }: Writer): User {
  const code = language === undefined ? {} : { language_code: language };
  return { id: person, is_bot: false, first_name: 'Invented', ...code };
}

/** What a call was given: as JSON, or in parts where a file comes along. */
function paramsOf(request: IncomingMessage, body: Buffer): Params {
  const boundary = /^multipart\/form-data; *boundary=(.+)$/.exec(
    request.headers['content-type'] ?? '',
  );
  if (boundary?.[1] === undefined) {
    return (body.length === 0 ? {} : JSON.parse(body.toString('utf8'))) as Params;
  }
  const parts = new Map(partsOf(body, boundary[1]));
  const fields = [...parts].map(([name, content]) => {
    const text = content.toString('utf8');
    const attached = parts.get(/^attach:\/\/(.+)$/.exec(text)?.[1] ?? '');
    return [name, attached ?? (/^(?:-?\d+$|[[{])/.test(text) ? JSON.parse(text) : text)] as const;
  });
  return Object.fromEntries(fields);
}

/** The parts of a multipart body by their names, RFC 7578. */
function partsOf(body: Buffer, boundary: string): readonly (readonly [string, Buffer])[] {
  // One byte to a character, so that a file stays as it is.
  return body
    .toString('latin1')
    .split(`--${boundary}`)
    .flatMap((part) => {
      const [head = '', ...rest] = part.split('\r\n\r\n');
      const name = /;\s*name="([^"]+)"/.exec(head)?.[1];
      const content = rest.join('\r\n\r\n').replace(/\r\n$/, '');
      return name === undefined ? [] : [[name, Buffer.from(content, 'latin1')] as const];
    });
}

/** Width and height from the header chunk, PNG specification section 11.2.2. */
function sizeOf(png: Buffer): { readonly width: number; readonly height: number } {
  return { width: png.readUInt32BE(16), height: png.readUInt32BE(20) };
}

/** 10 MB at most, width and height together 10,000, one at most 20 times the other. */
function holdPhoto(png: Buffer): void {
  if (!png.subarray(0, 8).equals(Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]))) {
    bad('IMAGE_PROCESS_FAILED');
  }
  const { width, height } = sizeOf(png);
  if (png.length > 10_000_000) bad('file is too big');
  const isWellSized = width + height <= 10_000 && Math.max(width / height, height / width) <= 20;
  if (!isWellSized) bad('PHOTO_INVALID_DIMENSIONS');
}

/** The caption of a picture, which is shorter than a text may be. */
function captionOf(params: Params): Pick<Sent, 'text' | 'entities' | 'keys'> {
  const { caption, caption_entities: entities } = params;
  if (typeof caption === 'string' && caption.length > 1024) bad('message caption is too long');
  return contentOf({ ...params, text: caption, entities });
}

/** The text, entities and keys of a message, held to their limits. */
function contentOf(params: Params): Pick<Sent, 'text' | 'entities' | 'keys'> {
  const text = params['text'];
  if (typeof text !== 'string' || text.trim() === '') return bad('message text is empty');
  if (text.length > 4096) bad('message is too long');
  if (/\p{Cs}/u.test(text)) bad('strings must be encoded in UTF-8');
  const entities = (params['entities'] ?? []) as readonly MessageEntity[];
  if (entities.length > 100) bad('too many entities');
  for (const { offset, length } of entities) {
    const isWithin = offset >= 0 && length > 0 && offset + length <= text.length;
    if (!isWithin) bad(`entity beginning at UTF-16 offset ${String(offset)} ends after the text`);
  }
  const markup = params['reply_markup'] as
    { inline_keyboard: InlineKeyboardButton.CallbackButton[][] } | undefined;
  const rows = markup?.inline_keyboard ?? [];
  const keys = rows.flat();
  if (keys.length > 100 || rows.some((row) => row.length > 8)) bad('reply markup is too long');
  for (const key of keys) {
    if (key.text.trim() === '') bad('inline keyboard button text is empty');
    const bytes = Buffer.byteLength(key.callback_data);
    if (bytes < 1 || bytes > 64) bad('BUTTON_DATA_INVALID');
  }
  return { text, entities, keys };
}
