/**
 * The parts counter in a browser, for the files of tests that work at it.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, vi } from 'vitest';
import { servePages } from '../../tools/pages.mjs';
import { prepare } from '../../tools/prepare.mjs';
import { again, startBrowser, whyNoBrowser } from './browser.ts';
import { inside, openCounter, type OpenedCounter, press } from './counter-page.ts';

/** The counter as a test opens it. */
export interface AtCounter {
  /** In English; closed when the test has ended, and then without any fault. */
  readonly counter: (
    options?: Parameters<typeof openCounter>[2],
    lang?: string,
  ) => Promise<OpenedCounter>;
  /** With the invented shop, whose guided starter lies there. */
  readonly practising: (
    options?: Parameters<typeof openCounter>[2],
    lang?: string,
  ) => Promise<Page>;
}

/** Tests at the counter in a browser, which they share, as they do its pages. */
export function atCounter(name: string, tests: (at: AtCounter) => void): void {
  // A browser on a machine busy with other tests takes its time.
  vi.setConfig({ testTimeout: 120_000, hookTimeout: 180_000 });
  describe.skipIf(whyNoBrowser !== undefined)(name, again, () => {
    let browser: Browser;
    let site: Awaited<ReturnType<typeof servePages>>;

    beforeAll(async () => {
      await prepare();
      [browser, site] = await Promise.all([startBrowser(), servePages()]);
    });
    afterAll(async () => {
      await browser.close();
      site.close();
    });

    /** The counter in English; closed when the test has ended, and then without any fault. */
    async function counter(
      options: Parameters<typeof openCounter>[2] = {},
      lang = 'en',
    ): Promise<OpenedCounter> {
      const opened = await openCounter(
        browser,
        `${site.url}desk/counter.html?lang=${lang}`,
        options,
      );
      onTestFinished(async () => {
        await opened.context.close();
        expect(opened.faults).toEqual([]);
      });
      return opened;
    }

    /** The counter with the invented shop, whose guided starter lies there. */
    async function practising(
      options: Parameters<typeof openCounter>[2] = {},
      lang = 'en',
    ): Promise<Page> {
      const { page } = await counter(options, lang);
      await press(page, '3');
      await inside(page, '.ledger').waitFor();
      return page;
    }

    tests({ counter, practising });
  });
}
