/**
 * A bot over a store, against the local server of the Bot API, and somebody who writes to it.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { createMemoryStore, type CaseStore } from '@keyturn/cases';
import type { ConversationsOptions } from '@keyturn/conversation/kept';
import { shippedTexts } from '@keyturn/flows';
import { keyturn, pollUpdates, type KeyturnOptions } from '@keyturn/telegram';
import { Bot } from 'grammy';
import { BotApi, token, type Sent, type Writer } from './bot-api.ts';
import { noStart } from './no-start.ts';

/** A bot that runs. */
export interface RunningBot {
  readonly api: BotApi;
  readonly store: CaseStore;
  readonly bot: Bot;
  readonly errors: unknown[];
  /** Waits until everything that came in is taken and everything to be said has been sent. */
  readonly quiet: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Starts a bot that fetches its updates; on a store in memory unless another is given. */
export async function startBot(
  options: Partial<Omit<KeyturnOptions, 'bot'>> & { readonly api?: BotApi } = {},
): Promise<RunningBot> {
  const api = options.api ?? (await new BotApi().start());
  const store = options.store ?? createMemoryStore();
  const errors: unknown[] = [];
  const onError = (error: unknown): void => void errors.push(error);
  const bot = new Bot(token, { client: { apiRoot: api.root, timeoutSeconds: 60 } });
  const plugin = keyturn({
    store,
    chart: noStart.chart,
    texts,
    onError,
    rateLimit: { burst: 10_000, perSecond: 100 },
    // Most of these bots hear a few texts, and learning a whole language takes seconds.
    learnsAhead: false,
    ...options,
    bot,
  });
  bot.use(plugin);
  await plugin.start();
  const over = new AbortController();
  const polling = pollUpdates(bot, { signal: over.signal, onError });
  return {
    api,
    store,
    bot,
    errors,
    quiet: async () => {
      // What is to be sent has a time that has come; a timer of a wait has not.
      while (api.unconfirmed > 0 || (await isDue(store))) await sleep(2);
    },
    stop: async () => {
      over.abort();
      await polling;
      await plugin.stop();
      await store.close();
      await api.stop();
    },
  };
}

const texts: ConversationsOptions['texts'] = (locale) => shippedTexts('no-start', locale);

async function isDue(store: CaseStore): Promise<boolean> {
  const due = await store.nextDue();
  return due !== undefined && Date.parse(due) <= Date.now();
}

/** What the store calls a conversation. */
function conversationName(writer: Writer): string {
  const place = [writer.chat ?? writer.person, ...(writer.thread ? [writer.thread] : [])];
  return `telegram 110201543 ${place.join(' ')}`;
}

/** The case of a conversation: its id, or undefined. */
export async function caseOf(store: CaseStore, writer: Writer): Promise<string | undefined> {
  const kept = await store.conversation(conversationName(writer));
  return (kept?.body as { readonly case?: string } | undefined)?.case;
}

/** Somebody who writes, taps, and reads what comes. */
export interface Driver {
  readonly writer: Writer;
  /** Writes; what is answered. */
  readonly say: (text: string) => Promise<readonly Sent[]>;
  /** Taps the key of the last keyboard that begins so, or its number; what is answered. */
  readonly tap: (label: string | number, on?: Sent) => Promise<readonly Sent[]>;
  readonly all: () => readonly Sent[];
  /** The last message with keys. */
  readonly keyboard: () => Sent;
}

/** Somebody with a telephone. */
export function driver({ api, quiet }: RunningBot, writer: Writer): Driver {
  const all = (): readonly Sent[] => api.messagesTo(writer.chat ?? writer.person, writer.thread);
  const answered = async (act: () => unknown): Promise<readonly Sent[]> => {
    const before = all().length;
    act();
    await quiet();
    return all().slice(before);
  };
  const keyboard = (): Sent => {
    const last = all().findLast(({ keys }) => keys.length > 0);
    if (last === undefined) throw new Error('no message has keys');
    return last;
  };
  return {
    writer,
    all,
    keyboard,
    say: (text) => answered(() => api.write(writer, text)),
    tap: (label, on = keyboard()) => {
      const key =
        typeof label === 'number'
          ? on.keys[label]
          : on.keys.find(({ text }) => text.replace('✓ ', '').startsWith(label));
      if (key === undefined) {
        throw new Error(
          `no key “${String(label)}” among ${on.keys.map(({ text }) => text).join(', ')}`,
        );
      }
      return answered(() => api.tap(writer, on, key));
    },
  };
}
