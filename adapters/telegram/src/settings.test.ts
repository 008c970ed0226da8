import { describe, expect, test } from 'vitest';
import { readSettings } from './settings.ts';

const BOT_TOKEN = '123456:ABC-def_1';
const hook = {
  BOT_WEBHOOK_URL: 'https://bot.example.org/hook',
  BOT_WEBHOOK_PORT: '8443',
  BOT_WEBHOOK_SECRET: 'sixteen-signs-or-more',
};

describe('settings', () => {
  test('need a token and nothing else', () => {
    expect(readSettings({ BOT_TOKEN })).toEqual({
      type: 'settings',
      settings: { token: BOT_TOKEN, folder: 'data' },
    });
    expect(readSettings({ BOT_TOKEN: ' ' })).toEqual({ type: 'no-token' });
  });

  test('may name a server, a folder, a database and where updates are brought', () => {
    const KEYTURN_DATABASE_URL = 'postgres://user@localhost/keyturn';
    const env = { BOT_TOKEN, BOT_API_ROOT: 'http://localhost:8081/', KEYTURN_DATA: 'kept' };
    expect(readSettings({ ...env, KEYTURN_DATABASE_URL, ...hook })).toEqual({
      type: 'settings',
      settings: {
        token: BOT_TOKEN,
        folder: 'kept',
        apiRoot: 'http://localhost:8081',
        databaseUrl: KEYTURN_DATABASE_URL,
        webhook: {
          url: hook.BOT_WEBHOOK_URL,
          port: 8443,
          secret: hook.BOT_WEBHOOK_SECRET,
        },
      },
    });
  });

  test('may name another flow, and the terms of a shop', () => {
    const env = { BOT_TOKEN, KEYTURN_TERMS: 'terms.yaml' };
    expect(readSettings(env)).toMatchObject({
      settings: { terms: 'terms.yaml' },
    });
  });

  test.each([
    [{ BOT_TOKEN: 'https://example.org' }, 'BOT_TOKEN'],
    [{ BOT_API_ROOT: 'localhost' }, 'BOT_API_ROOT'],
    [{ KEYTURN_DATABASE_URL: 'mysql://x' }, 'KEYTURN_DATABASE_URL'],
    [{ ...hook, BOT_WEBHOOK_SECRET: undefined }, 'BOT_WEBHOOK_SECRET must be set as well'],
    [{ ...hook, BOT_WEBHOOK_URL: 'bot.example.org' }, 'BOT_WEBHOOK_URL'],
    [{ ...hook, BOT_WEBHOOK_PORT: '0' }, 'BOT_WEBHOOK_PORT'],
    [{ ...hook, BOT_WEBHOOK_SECRET: 'short' }, 'BOT_WEBHOOK_SECRET'],
  ])('%j are wrong, and the reason names %s', (env, name) => {
    const read = readSettings({ BOT_TOKEN, ...env });
    expect(read).toMatchObject({ type: 'wrong', reason: expect.stringContaining(name) as string });
  });
});
