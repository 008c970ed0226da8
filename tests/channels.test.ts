/**
 * The contract of a channel, held by three of them.
 */
import { PassThrough } from 'node:stream';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, vi } from 'vitest';
import { runTerminal } from '../adapters/terminal/src/run-terminal.ts';
import { createTextMessages } from '../examples/text-messages.ts';
import { holdChannel, type ChannelSession, type TestedChannel } from './channel-contract.ts';
import { driver, startBot } from './support/bot-driver.ts';
import type { Sent } from './support/bot-api.ts';

// A speaker's words are made ready with its first text, which a busy machine takes seconds over.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const first = 'hello, the car does not start';

const plainMessages: TestedChannel = {
  name: 'plain text messages',
  open: async (language) => {
    const messages = createTextMessages(language);
    const from = 'an invented number';
    let count = 0;
    let last = { key: '', text: '' };
    let minutes = 0;
    const send = async (key: string, text: string): Promise<string> => {
      last = { key, text };
      return (await messages.receive(from, key, text)).join('\n');
    };
    const say = (text: string): Promise<string> => {
      count += 1;
      return send(`message ${String(count)}`, text);
    };
    return Promise.resolve<ChannelSession>({
      say,
      begin: () => say(first),
      again: () => send(last.key, last.text),
      both: async (one, other) => (await Promise.all([say(one), say(other)])).join('\n'),
      wait: async (more) => {
        minutes += more;
        return (await messages.goOn(new Date(Date.now() + minutes * 60_000))).join('\n');
      },
      end: () => Promise.resolve(),
    });
  },
};

const terminal: TestedChannel = {
  name: 'the terminal',
  open: async (language) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'channels-'));
    const stdin = new PassThrough();
    let out = '';
    let isOver = false;
    const run = runTerminal({
      args: ['--case', path.join(folder, 'case.jsonl'), '--locale', language],
      program: 'keyturn',
      env: {},
      stdin: Object.assign(stdin, { isTTY: true }),
      stdout: { columns: 80, write: (text) => (out += text) },
      stderr: { write: (text) => (out += text) },
      now: () => new Date(),
      onInterrupt: () => undefined,
    }).then(() => (isOver = true));
    const answer = async (): Promise<string> => {
      while (!out.endsWith('\n> ') && !isOver) await sleep(2);
      const said = out;
      out = '';
      // Lines are broken to the width of the page, and some are framed; what they say is not.
      return said.replaceAll(/[!\s]+/g, ' ');
    };
    return Promise.resolve<ChannelSession>({
      isOfOneLanguage: true,
      begin: answer,
      say: (text) => {
        stdin.write(`${text}\n`);
        return answer();
      },
      end: async () => {
        stdin.end();
        await run;
        rmSync(folder, { recursive: true });
      },
    });
  },
};

const bot: TestedChannel = {
  name: 'the bot',
  open: async (language) => {
    let minutes = 0;
    const running = await startBot({ now: () => new Date(Date.now() + minutes * 60_000) });
    const writer = { person: 42, language };
    const person = driver(running, writer);
    const textOf = (sent: readonly Sent[]): string =>
      sent.flatMap(({ text, keys }) => [text, ...keys.map((key) => key.text)]).join('\n');
    let lastUpdate = running.api.write(writer, '/start');
    let lastTap: { label: string; on: Sent } | undefined;
    const after = async (act: () => unknown): Promise<string> => {
      const before = person.all().length;
      act();
      await running.quiet();
      return textOf(person.all().slice(before));
    };
    const write = (text: string) => (lastUpdate = running.api.write(writer, text));
    return {
      begin: async () => {
        await running.quiet();
        return textOf(person.all());
      },
      say: (text) => after(() => write(text)),
      tap: async (label) => {
        lastTap = { label, on: person.keyboard() };
        return textOf(await person.tap(label));
      },
      tapAgain: async () => textOf(await person.tap(lastTap!.label, lastTap!.on)),
      edit: (text) => after(() => running.api.edit(lastUpdate.message, text)),
      again: () => after(() => running.api.deliver(lastUpdate)),
      both: (one, other) => after(() => [write(one), write(other)]),
      wait: (more) =>
        after(() => {
          minutes += more;
        }).then(async (said) => {
          // A timer is looked for once a second.
          await sleep(1200);
          await running.quiet();
          return said === '' ? textOf(person.all().slice(-1).filter(isTold)) : said;
        }),
      end: async () => {
        await running.stop();
        expect(running.errors).toEqual([]);
        expect(running.api.refused).toEqual([]);
      },
    };
  },
};

const isTold = ({ text }: Sent): boolean => text.includes('The time is up.');

for (const channel of [plainMessages, terminal, bot]) holdChannel(channel);
