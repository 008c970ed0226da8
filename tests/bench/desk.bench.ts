/**
 * The dispatcher's desk with two hundred open cases against one: what drawing, scrolling and taking
 * up a case cost. Ratios against the baseline of the same run.
 */
import { stdout } from 'node:process';
import { shippedFlow } from '@keyturn/terminal';
import { positionOf } from '@keyturn/core';
import type { Browser, Page } from 'playwright-core';
import { servePages } from '../../tools/pages.mjs';
import { startBrowser, whyNoBrowser } from '../support/browser.ts';
import { deskCase, openDesk, seed } from '../support/desk-page.ts';
import { playUntil } from '../support/element-page.ts';

const print = (line: string): void => void stdout.write(`${line}\n`);
const median = (numbers: readonly number[]): number =>
  numbers.toSorted((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? NaN;

/** The runner names functions through a call that a page does not know. */
const naming = 'globalThis.__name = (named) => named;';

/** A desk with so many cases beside the one in hand. */
async function deskWith(browser: Browser, url: string, others: number): Promise<Page> {
  const { chart } = shippedFlow('no-start', 'en');
  const played = playUntil(
    chart,
    (kase) => {
      const position = positionOf(kase);
      return position.awaiting === 'answer' && position.check === 'complaint';
    },
    {
      context: { role: 'dispatcher', place: 'parking' },
      choices: { scene: ['safe'], drive: ['petrol'] },
    },
  );
  const { page } = await openDesk(browser, url);
  await page.addInitScript(naming);
  const all = Array.from({ length: others + 1 }, (_, index) =>
    deskCase(played, {
      id: `case-${String(index)}`,
      touchedAt: new Date(Date.now() - index * 60_000).toISOString(),
    }),
  );
  await seed(
    page,
    all,
    Object.fromEntries(all.map(({ id }) => [id, { name: id, where: 'Reed Lane 3' }])),
  );
  await page.keyboard.press('/');
  await page.locator('keyturn-desk .paper').waitFor();
  return page;
}

/** Milliseconds of one drawing of the whole desk, laid out; and of taking up the next case. */
async function costs(page: Page): Promise<Readonly<Record<string, number>>> {
  const measured = await page.evaluate(async () => {
    const desk = document.querySelector('keyturn-desk')?.shadowRoot as ShadowRoot;
    const press = (key: string): void => {
      window.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, composed: true }));
    };
    const laidOut = (): void => void desk.querySelector('.sheet')?.getBoundingClientRect();
    const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
    const drawing: number[] = [];
    for (let count = 0; count < 30; count += 1) {
      await pause(30);
      const from = performance.now();
      press('*');
      laidOut();
      drawing.push(performance.now() - from);
    }
    const taking: number[] = [];
    for (let count = 0; count < 15; count += 1) {
      await pause(400);
      const before = desk.querySelector<HTMLInputElement>('input[name=name]')?.value;
      const from = performance.now();
      press('/');
      while (desk.querySelector<HTMLInputElement>('input[name=name]')?.value === before) {
        await pause(0);
        if (performance.now() - from > 2_000) break;
      }
      laidOut();
      taking.push(performance.now() - from);
    }
    const frames: number[] = [];
    await new Promise<void>((done) => {
      let last = performance.now();
      let count = 0;
      const frame = (): void => {
        const at = performance.now();
        frames.push(at - last);
        last = at;
        scrollBy(0, count < 60 ? 120 : -120);
        count += 1;
        if (count < 120) requestAnimationFrame(frame);
        else done();
      };
      requestAnimationFrame(frame);
    });
    return { drawing, taking, frames };
  });
  return {
    'draw the whole desk anew': median(measured.drawing),
    'take up the next case': median(measured.taking),
    'a frame while scrolling': median(measured.frames),
    'the longest frame of 120': Math.max(...measured.frames),
  };
}

if (whyNoBrowser !== undefined) print(`not measured here: ${whyNoBrowser}`);
else {
  const [browser, site] = await Promise.all([startBrowser(), servePages()]);
  const url = `${site.url}desk/?lang=en`;
  const few = await costs(await deskWith(browser, url, 2));
  const many = await costs(await deskWith(browser, url, 200));
  print('the desk, ms (median)               2 others   200 others   x baseline');
  for (const [name, base] of Object.entries(few)) {
    const now = many[name] ?? NaN;
    print(
      `  ${name.padEnd(32)} ${base.toFixed(1).padStart(9)} ${now.toFixed(1).padStart(12)} ${(now / base).toFixed(1).padStart(12)}`,
    );
  }
  await browser.close();
  site.close();
}
