/**
 * The page element: what it weighs, how soon its first question stands, what a turn costs. Ratios
 * against a baseline of the same run.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { stdout } from 'node:process';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { servePages } from '../../tools/pages.mjs';
import { root } from '../../tools/prepare.mjs';
import { startBrowser, whyNoBrowser } from '../support/browser.ts';

/** The slow profile: 400 kbit/s, 400 ms to and fro, a processor four times slower. */
const slow = { bytesPerSecond: 50_000, latencyMs: 400, cpu: 4 };

const print = (line: string): void => void stdout.write(`${line}\n`);
const gzip = (data: string | Buffer): number => gzipSync(data, { level: 9 }).length / 1000;
const brotli = (data: string | Buffer): number => brotliCompressSync(data).length / 1000;
const built = (file: string): Buffer =>
  readFileSync(path.join(root, 'adapters/element/dist', file));
const median = (numbers: readonly number[]): number =>
  numbers.toSorted((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? NaN;

/** What a page loads in English, in the order in which it does. */
const steps: readonly (readonly [string, readonly string[]])[] = [
  ['until the first question', ['keyturn.js']],
  ['then, to take a case further by its keys', ['keyturn-further.js', 'texts/en.js']],
  ['then, to read what is typed', ['keyturn-understanding.js', 'said/en.js']],
  ['then, to draw', ['keyturn-pictures.js']],
];

function printSizes(): void {
  const texts = Buffer.from(
    JSON.stringify(
      JSON.parse(readFileSync(path.join(root, 'flows/no-start/texts/en.json'), 'utf8')),
    ),
  );
  const row = (name: string, parts: readonly Buffer[]): void => {
    const [packed, smaller] = [gzip, brotli].map((pack) =>
      parts.map(pack).reduce((sum, one) => sum + one, 0),
    ) as [number, number];
    const ratio = (packed / gzip(texts)).toFixed(1);
    print(
      `  ${name.padEnd(42)} ${packed.toFixed(1).padStart(7)} ${smaller.toFixed(1).padStart(7)} ${ratio.padStart(12)}`,
    );
  };
  print('size, kB                                       gzip  brotli   x baseline');
  row('the flow’s English texts alone (baseline)', [texts]);
  for (const [name, files] of steps) row(name, files.map(built));
  row(
    'in all, one language',
    steps.flatMap(([, files]) => files.map(built)),
  );
}

/** The runner names functions through a call that a page does not know. */
const naming = { content: 'globalThis.__name = (named) => named;' };

/** Milliseconds from the start of the visit until the first question, its keys, and all of it. */
async function visit(browser: Browser, url: string, isSlow: boolean): Promise<readonly number[]> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  if (isSlow) {
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: slow.latencyMs,
      downloadThroughput: slow.bytesPerSecond,
      uploadThroughput: slow.bytesPerSecond,
    });
    await session.send('Emulation.setCPUThrottlingRate', { rate: slow.cpu });
  }
  await page.addInitScript(naming);
  await page.addInitScript(() => {
    document.addEventListener('keyturn-loaded', () => performance.mark('loaded'));
    const look = (): void => {
      const inside = document.querySelector('keyturn-case')?.shadowRoot;
      const has = (selector: string): boolean => Boolean(inside?.querySelector(selector));
      if (has('.card h2') && performance.getEntriesByName('first').length === 0)
        performance.mark('first');
      // The first question alone has no place to type in.
      if (has('input[name=line]')) performance.mark('keys');
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto(url);
  await page.waitForFunction(() => performance.getEntriesByName('loaded').length > 0, undefined, {
    timeout: 60_000,
  });
  const times = await page.evaluate(() =>
    ['first', 'keys', 'loaded'].map(
      (name) => performance.getEntriesByName(name)[0]?.startTime ?? NaN,
    ),
  );
  await context.close();
  return times;
}

async function printLoading(browser: Browser, url: string): Promise<void> {
  const rows: (readonly [string, readonly (readonly number[])[]])[] = [];
  for (const isSlow of [false, true]) {
    const runs = [];
    for (let count = 0; count < 3; count += 1) runs.push(await visit(browser, url, isSlow));
    rows.push([isSlow ? 'slow phone (400 kbit/s, 400 ms, 4x CPU)' : 'not slowed (baseline)', runs]);
  }
  const at = (runs: readonly (readonly number[])[], mark: number): number =>
    median(runs.map((times) => times[mark] ?? NaN));
  const base = at(rows[0]?.[1] ?? [], 0);
  print(
    '\nloading, ms (median of 3)                 first question   by keys     all   x baseline',
  );
  for (const [name, runs] of rows) {
    const [first, keys, all] = [0, 1, 2].map((mark) => at(runs, mark)) as [number, number, number];
    print(
      `  ${name.padEnd(40)} ${first.toFixed(0).padStart(13)} ${keys.toFixed(0).padStart(9)} ${all.toFixed(0).padStart(7)}   ${(first / base).toFixed(1).padStart(10)}`,
    );
  }
}

/** What one click costs until the page has been drawn anew, in ms, by the kind of turn. */
async function turns(page: Page): Promise<Readonly<Record<string, readonly number[]>>> {
  return page.evaluate(async () => {
    const element = document.querySelector('keyturn-case') as HTMLElement & {
      say: (line: string) => void;
      clear: () => void;
    };
    const inside = element.shadowRoot as ShadowRoot;
    const costs: Record<string, number[]> = {
      redraw: [],
      written: [],
      'not understood': [],
      why: [],
      planned: [],
    };
    const time = async (kind: string, work: () => void): Promise<void> => {
      await new Promise((resolve) => setTimeout(resolve, 30));
      const from = performance.now();
      work();
      // What is laid out belongs to the turn.
      inside.querySelector('.card')?.getBoundingClientRect();
      costs[kind]?.push(performance.now() - from);
    };
    for (let count = 0; count < 12; count += 1) {
      element.clear();
      await time('redraw', () =>
        inside.querySelector<HTMLButtonElement>('.head-key.more')?.click(),
      );
      await time('redraw', () =>
        inside.querySelector<HTMLButtonElement>('.head-key.more')?.click(),
      );
      await time('written', () => {
        element.say('at home');
      });
      await time('written', () => {
        element.say('yes, safe');
      });
      await time('not understood', () => {
        element.say('qwxz brumm');
      });
      await time('why', () => {
        element.say('why');
      });
      await time('written', () => {
        element.say('petrol');
      });
      await time('planned', () => {
        element.say('it turns over slowly');
      });
      await time('planned', () => {
        element.say('don’t know');
      });
      await time('planned', () => {
        element.say('don’t know');
      });
    }
    return costs;
  });
}

async function printTurns(browser: Browser, url: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.addInitScript(naming);
  await page.addInitScript(() => {
    document.addEventListener('keyturn-loaded', () => performance.mark('loaded'));
  });
  await page.goto(url);
  await page.waitForFunction(() => performance.getEntriesByName('loaded').length > 0);
  const costs = await turns(page);
  const base = median(costs['redraw'] ?? []);
  print('\na turn in the page, understood, taken and drawn, ms   median   worst   x baseline');
  for (const [kind, all] of Object.entries(costs)) {
    const name = kind === 'redraw' ? 'drawing anew alone (baseline)' : kind;
    print(
      `  ${name.padEnd(50)} ${median(all).toFixed(1).padStart(8)} ${Math.max(...all)
        .toFixed(1)
        .padStart(7)}   ${(median(all) / base).toFixed(1).padStart(9)}`,
    );
  }
  await page.close();
}

printSizes();
if (whyNoBrowser === undefined) {
  const [browser, site] = await Promise.all([startBrowser(), servePages()]);
  const url = `${site.url}driver/?lang=en`;
  await printLoading(browser, url);
  await printTurns(browser, url);
  await browser.close();
  site.close();
} else print(`\nLoading and turns are not measured: ${whyNoBrowser}.`);
