/**
 * The ready bot: reads its settings, opens its store, runs until it is told to stop.
 */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { CasesError, openPostgresStore, openSqliteStore, type CaseStore } from '@keyturn/cases';
import { hearsByHand } from '@keyturn/conversation';
import type { OfferedFlow } from '@keyturn/conversation/kept';
import type { Policy } from '@keyturn/core';
import {
  FlowError,
  shippedFlow,
  shippedFlowNames,
  shippedLocales,
  shippedTexts,
  shippedVehicle,
  shopTerms,
  TermsError,
} from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import { Bot, GrammyError } from 'grammy';
import type { LanguageCode } from 'grammy/types';
import { describeError } from './describe-error.ts';
import { keyturn } from './keyturn.ts';
import { pollUpdates, updateTypes } from './poll-updates.ts';
import { commands, flowCommand } from './read-command.ts';
import { serveWebhook } from './serve-webhook.ts';
import { readSettings, type Settings } from './settings.ts';
import { vehicleSaid } from './vehicle-code.ts';

/** The world outside, as the bot meets it. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdout: { readonly write: (text: string) => unknown };
  readonly stderr: { readonly write: (text: string) => unknown };
  /** Given when the bot is to stop. */
  readonly signal: AbortSignal;
}

/** What a case is about unless another command began it. */
const usualFlow = 'no-start';

/** After the Bot API was out of reach it is tried again after so long, milliseconds. */
const pauseMs = 5_000;

interface Reporting {
  readonly signal: AbortSignal;
  readonly onError: (error: unknown) => void;
}

const outOfReach =
  'the Bot API is out of reach and is tried again every five seconds: see that this machine has a connection, and that neither a firewall nor BOT_API_ROOT leads elsewhere';

const unknownToken =
  'bot: the Bot API does not know this BOT_TOKEN: copy it whole, or have @BotFather show it once more by /token\n';

/** Runs the bot until the signal is given; gives the exit code. */
export async function runBot(around: Surroundings): Promise<0 | 1 | 2> {
  const read = readSettings(around.env);
  if (read.type === 'no-token') {
    around.stderr.write(noToken);
    return 2;
  }
  if (read.type === 'wrong') {
    around.stderr.write(`bot: ${read.reason}\n`);
    return 2;
  }
  const { settings } = read;
  const onError = (error: unknown): void => {
    around.stderr.write(`bot: ${describeError(error, settings.token)}\n`);
  };
  try {
    await holdBot(settings, around, onError);
    return 0;
  } catch (error) {
    onError(error);
    if (error instanceof GrammyError && [401, 404].includes(error.error_code)) {
      around.stderr.write(unknownToken);
      return 2;
    }
    const isSetUpWrong = [CasesError, FlowError, TermsError].some((kind) => error instanceof kind);
    return isSetUpWrong ? 2 : 1;
  }
}

async function holdBot(
  settings: Settings,
  { stdout, signal }: Surroundings,
  onError: (error: unknown) => void,
): Promise<void> {
  const { token, apiRoot, webhook, terms } = settings;
  const policy = terms === undefined ? undefined : shopTerms(terms);
  const store = await openStore(settings);
  try {
    const bot = new Bot(token, {
      client: { timeoutSeconds: 60, ...(apiRoot === undefined ? {} : { apiRoot }) },
    });
    const { chart } = shippedFlow(usualFlow, 'en');
    const texts = (locale: string) => shippedTexts(usualFlow, locale);
    const plugin = keyturn({ bot, store, chart, texts, offered: offeredFlows(policy), onError });
    bot.use(plugin);
    if (!(await isReached(plugin.start, { signal, onError }))) return;
    try {
      await nameCommands(bot).catch(onError);
      const way =
        webhook === undefined ? 'fetches updates' : `is brought updates on ${webhook.url}`;
      stdout.write(`bot: @${bot.botInfo.username} ${way}; Ctrl-C ends it\n`);
      if (webhook === undefined) {
        await bot.api.deleteWebhook();
        await pollUpdates(bot, { signal, onError });
      } else await holdWebhook(bot, webhook, { signal, onError });
    } finally {
      await plugin.stop();
    }
  } finally {
    await store.close();
  }
}

/** The other flows, each begun by its own command; a part is taken back by a clerk on the terms. */
function offeredFlows(policy: Policy | undefined): readonly OfferedFlow[] {
  const vehicles = shippedFlow(usualFlow, 'en').chart;
  return shippedFlowNames()
    .filter((name) => name !== usualFlow)
    .map((name) => {
      const { chart } = shippedFlow(name, 'en');
      const { part } = chart.flow;
      const terms = policy === undefined ? {} : { policy };
      return {
        chart,
        texts: (locale) => shippedTexts(name, locale),
        locales: shippedLocales(name),
        ...(part === undefined
          ? {}
          : {
              opening: { context: { role: 'clerk' }, ...terms },
              vehicleOf: (text: string) => vehicleSaid(vehicles, part, text),
              byHandIn: (locale: string) => hearsByHand(() => shippedVehicle(locale)),
            }),
      };
    });
}

/** Tries until the Bot API is reached; false where the signal was given first. */
async function isReached(
  start: () => Promise<void>,
  { signal, onError }: Reporting,
): Promise<boolean> {
  for (let tries = 1; !signal.aborted; tries += 1) {
    try {
      await start();
      return true;
    } catch (error) {
      if (error instanceof GrammyError && error.error_code < 500) throw error;
      onError(error);
      if (tries === 1) onError(new Error(outOfReach));
      await sleep(pauseMs, undefined, { signal }).catch(() => undefined);
    }
  }
  return false;
}

async function openStore({ databaseUrl, folder }: Settings): Promise<CaseStore> {
  if (databaseUrl !== undefined) return openPostgresStore(databaseUrl);
  mkdirSync(folder, { recursive: true });
  return openSqliteStore(path.join(folder, 'cases.sqlite'));
}

async function holdWebhook(
  bot: Bot,
  { url, port, secret }: NonNullable<Settings['webhook']>,
  given: Reporting,
): Promise<void> {
  const server = await serveWebhook(bot, { port, secret, onError: given.onError });
  await bot.api.setWebhook(url, { secret_token: secret, allowed_updates: updateTypes });
  if (!given.signal.aborted) {
    await new Promise<void>((resolve) => {
      given.signal.addEventListener('abort', () => resolve(), { once: true });
    });
  }
  await new Promise((resolve) => {
    server.close(resolve);
    server.closeIdleConnections();
  });
}

/** The commands as the app lists them, in each language. */
async function nameCommands(bot: Bot): Promise<void> {
  for (const locale of localeTags) {
    const speaker = createSpeaker({ locale, flowTexts: shippedTexts(usualFlow, locale) });
    const named = Object.entries(commands).map(([command, { text }]) => ({
      command,
      description: speaker.key(text),
    }));
    const others = shippedFlowNames()
      .filter((name) => name !== usualFlow && shippedLocales(name).includes(locale))
      .map((name) => ({
        command: flowCommand(name),
        description: shippedTexts(name, locale).name,
      }));
    // Those without a language are for everybody else.
    const language = { language_code: locale as LanguageCode };
    await bot.api.setMyCommands([...named, ...others], locale === 'en' ? {} : language);
  }
}

const noToken = `bot: there is no BOT_TOKEN, so there is nothing to connect to.

  A token belongs to one bot and is given by the messenger itself: open its app, write to
  @BotFather, send /newbot and choose a name. Then:

    BOT_TOKEN=123456:ABC-DEF… npm run bot

  From then on the bot answers whoever writes to it, by tapping or in words, in ${String(localeTags.length)} languages,
  and keeps every case in the folder “data”. A machine that can reach the internet is enough;
  nothing needs to reach it. The token opens the bot to whoever has it: keep it out of files that
  you share.

  BOT_API_ROOT           another server of the Bot API than the public one
  KEYTURN_DATA           another folder than “data”
  KEYTURN_DATABASE_URL   a PostgreSQL database, where several machines share the work
  KEYTURN_TERMS          a file of the terms on which a shop takes parts back, YAML or JSON;
                         /battery_return 119.90 begins with the price that was paid
  BOT_WEBHOOK_URL, BOT_WEBHOOK_PORT, BOT_WEBHOOK_SECRET
                         where updates are to be brought instead of fetched
`;
