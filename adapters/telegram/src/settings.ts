/**
 * What the ready bot is told by its environment.
 */

/** How the bot is to run. */
export interface Settings {
  readonly token: string;
  /** Another server of the Bot API than the public one. */
  readonly apiRoot?: string;
  /** The folder in which cases are kept, where there is no database. */
  readonly folder: string;
  readonly databaseUrl?: string;
  /** A file of the shop's terms, where parts are taken back. */
  readonly terms?: string;
  /** Where updates are brought; otherwise they are fetched. */
  readonly webhook?: { readonly url: string; readonly port: number; readonly secret: string };
}

/** Settings, or why there are none. */
export type ReadSettings =
  | { readonly type: 'settings'; readonly settings: Settings }
  | { readonly type: 'no-token' }
  | { readonly type: 'wrong'; readonly reason: string };

type Env = Readonly<Record<string, string | undefined>>;

/** Reads the settings. */
export function readSettings(env: Env): ReadSettings {
  const given = (name: string): string | undefined => {
    const value = env[name]?.trim();
    return value === '' ? undefined : value;
  };
  const token = given('BOT_TOKEN');
  if (token === undefined) return { type: 'no-token' };
  if (!/^\d+:[\w-]+$/.test(token)) {
    return wrong('BOT_TOKEN is not of the form 123456:ABC-DEF…, as it was given to you');
  }
  const apiRoot = given('BOT_API_ROOT')?.replace(/\/$/, '');
  if (apiRoot !== undefined && !isUrl(apiRoot, ['http:', 'https:'])) {
    return wrong('BOT_API_ROOT is no address such as http://localhost:8081');
  }
  const databaseUrl = given('KEYTURN_DATABASE_URL');
  if (databaseUrl !== undefined && !isUrl(databaseUrl, ['postgres:', 'postgresql:'])) {
    return wrong('KEYTURN_DATABASE_URL is no address such as postgres://user@host:5432/name');
  }
  const terms = given('KEYTURN_TERMS');
  const webhook = readWebhook(given);
  if (typeof webhook === 'string') return wrong(webhook);
  return {
    type: 'settings',
    settings: {
      token,
      folder: given('KEYTURN_DATA') ?? 'data',
      ...(terms === undefined ? {} : { terms }),
      ...(apiRoot === undefined ? {} : { apiRoot }),
      ...(databaseUrl === undefined ? {} : { databaseUrl }),
      ...(webhook === undefined ? {} : { webhook }),
    },
  };
}

function readWebhook(
  given: (name: string) => string | undefined,
): Settings['webhook'] | string | undefined {
  const names = ['BOT_WEBHOOK_URL', 'BOT_WEBHOOK_PORT', 'BOT_WEBHOOK_SECRET'] as const;
  const [url, port, secret] = names.map(given);
  if (url === undefined && port === undefined && secret === undefined) return undefined;
  if (url === undefined || port === undefined || secret === undefined) {
    return `${names.filter((name) => given(name) === undefined).join(' and ')} must be set as well`;
  }
  if (!isUrl(url, ['https:', 'http:'])) {
    return 'BOT_WEBHOOK_URL is no address such as https://bot.example.org/hook';
  }
  const number = Number(port);
  if (!Number.isInteger(number) || number < 1 || number > 65_535) {
    return 'BOT_WEBHOOK_PORT is no port from 1 to 65535';
  }
  // What the Bot API takes; shorter than this it could be guessed.
  if (!/^[\w-]{16,256}$/.test(secret)) {
    return 'BOT_WEBHOOK_SECRET is not made of 16 to 256 letters, digits, “_” and “-”';
  }
  return { url, port: number, secret };
}

function isUrl(text: string, protocols: readonly string[]): boolean {
  return URL.canParse(text) && protocols.includes(new URL(text).protocol);
}

const wrong = (reason: string): ReadSettings => ({ type: 'wrong', reason });
