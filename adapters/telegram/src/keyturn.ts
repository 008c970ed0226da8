/**
 * The bot as a plugin: it can live in a bot that does other things as well.
 */
import type { CaseStore, Json } from '@keyturn/cases';
import { createLearner, type Part } from '@keyturn/conversation';
import { createConversations, type ConversationsOptions } from '@keyturn/conversation/kept';
import { Composer, type Bot, type Context } from 'grammy';
import { newCaseId } from './case-id.ts';
import { limits } from './message-of.ts';
import { createOrdered } from './ordered.ts';
import { startOutbox, type Outbox } from './outbox.ts';
import { conversationAt, conversationsOf } from './place.ts';
import { createRateLimit, type RateLimit } from './rate-limit.ts';
import { readUpdate, type ReadUpdate } from './read-update.ts';

/** What the plugin is made with. */
export interface KeyturnOptions extends Pick<ConversationsOptions, 'chart' | 'texts' | 'offered'> {
  /** The bot through which messages are sent. */
  readonly bot: Bot;
  /** Where cases are kept; several bots and machines may share one. */
  readonly store: CaseStore;
  /** What is known of every case before it begins. A driver writes unless it says otherwise. */
  readonly opening?: ConversationsOptions['opening'];
  /**
   * `begun` leaves to the bot whatever comes outside a case: one is begun by `/new`, or by a key.
   *
   * @defaultValue 'everything'
   */
  readonly takes?: 'everything' | 'begun';
  /**
   * What one person may send.
   *
   * @defaultValue thirty at once, and one more every two seconds
   */
  readonly rateLimit?: RateLimit;
  /**
   * False learns what people are heard to say in a language when somebody first writes in it, who
   * then waits for seconds; true once somebody is first answered in it, between updates.
   *
   * @defaultValue true
   */
  readonly learnsAhead?: boolean;
  /** @defaultValue the machine's clock */
  readonly now?: () => Date;
  /** Told of what went wrong and could not be helped; what it is told may hold the token. */
  readonly onError?: (error: unknown) => void;
}

/** The plugin: middleware, and what sends. */
export interface Keyturn extends Composer<Context> {
  /** Begins to send what waits, also from before a restart. Asks the Bot API who the bot is. */
  readonly start: () => Promise<void>;
  /** Resolves once nothing is being sent any more. The store stays open. */
  readonly stop: () => Promise<void>;
}

/**
 * Makes the plugin.
 *
 * An update is done with once the middleware has resolved: it is in the store then, and so is the
 * answer. Whatever fetches updates should wait for that before it confirms them.
 *
 * @example
 * const plugin = keyturn({ bot, store, chart, texts });
 * bot.use(plugin);
 * await plugin.start();
 */
export function keyturn(options: KeyturnOptions): Keyturn {
  const { bot, store, chart, texts, takes = 'everything', onError = () => undefined } = options;
  const { now = () => new Date(), offered = [] } = options;
  const learner = (options.learnsAhead ?? true) ? createLearner(betweenUpdates) : undefined;
  const flows = offered.map(({ chart: { flow } }) => flow.id);
  const conversations = createConversations({
    store,
    chart,
    texts,
    offered,
    limits,
    opening: { context: { role: 'driver' }, ...options.opening },
    newId: () => newCaseId(now()),
    ...(learner === undefined ? {} : { learn: learner.learn }),
  });
  const ordered = createOrdered();
  const allowances = createRateLimit(options.rateLimit ?? { burst: 30, perSecond: 0.5 });
  let outbox: Outbox | undefined;

  const isOurs = async (read: ReadUpdate, conversation: string): Promise<boolean> => {
    if (takes === 'everything' || read.content.type === 'begin' || read.content.type === 'key') {
      return true;
    }
    return read.isForeign !== true && (await conversations.isOpen(conversation));
  };

  const tellTooFast = async (ctx: Context, { locale, query }: ReadUpdate, to: string) => {
    const text = conversations.speakerOf(locale).key('tooFast');
    if (query !== undefined) return answerQuery(ctx, { text, show_alert: true });
    const part: Part = { kind: 'refused', lines: [{ text }], keys: [], locale: locale ?? 'en' };
    const outgoing = [{ to, body: part as unknown as Json }];
    await store.commit({ at: now().toISOString(), received: nameOf(ctx), outgoing });
  };

  const nameOf = (ctx: Context): string =>
    `${conversationsOf(ctx.me.id)}update ${String(ctx.update.update_id)}`;

  const take = async (ctx: Context, read: ReadUpdate, conversation: string): Promise<void> => {
    const { locale, writtenAt, content, query, person } = read;
    let isTaken = false;
    try {
      const taking = await conversations.receive({
        conversation,
        key: nameOf(ctx),
        at: now().toISOString(),
        ...(locale === undefined ? {} : { locale }),
        ...(writtenAt === undefined ? {} : { writtenAt }),
        content,
      });
      // An update that comes again has had its answer.
      isTaken = taking === 'taken';
    } finally {
      if (!isTaken) allowances.giveBack(person);
    }
    if (query !== undefined && isTaken) void answerQuery(ctx, {});
  };

  const composer = new Composer<Context>();
  composer.use(async (ctx, next) => {
    const read = readUpdate(ctx.update, ctx.me, flows);
    if (read === undefined) return next();
    const conversation = conversationAt(ctx.me.id, read.place);
    const isTaken = await ordered.run(conversation, ctx.update.update_id, async () => {
      if (!(await isOurs(read, conversation))) return false;
      const allowance = allowances.ask(read.person, now().getTime());
      // Awake by now, it takes what is about to be kept in the same moment.
      outbox?.wake();
      if (allowance === 'take') await take(ctx, read, conversation);
      if (allowance === 'tell') await tellTooFast(ctx, read, conversation);
      return true;
    });
    outbox?.wake();
    if (!isTaken) return next();
  });

  return Object.assign(composer, {
    start: async () => {
      // Asked once here: the library's own way tries for ever, and says nothing.
      if (!bot.isInited()) bot.botInfo = await bot.api.getMe();
      const of = conversationsOf(bot.botInfo.id);
      outbox ??= startOutbox({ store, conversations, api: bot.api, of, now, onError });
    },
    stop: async () => {
      learner?.stop();
      await outbox?.stop();
      outbox = undefined;
    },
  });
}

/** Lets updates go first; it keeps no process alive. */
function betweenUpdates(goOn: () => void): () => void {
  const timer = setTimeout(goOn, 5).unref();
  return () => {
    clearTimeout(timer);
  };
}

/** Ends the waiting of a key. A query that is too old has been given up by the telephone. */
async function answerQuery(
  ctx: Context,
  other: { readonly text?: string; readonly show_alert?: boolean },
): Promise<void> {
  await ctx.answerCallbackQuery(other).catch(() => undefined);
}
