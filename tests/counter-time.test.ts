/**
 * How long a return takes a clerk at the counter, by the keys that are pressed and the words that
 * are read and spoken: two minutes at most. What it comes to in full: `npm run bench counter`.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import { judgePart, secondsFor } from './support/counter-clerk.ts';
import { counterWithShop, partsInHand } from './support/counter-parts.ts';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 180_000 });

describe.skipIf(whyNoBrowser !== undefined)('a return at the counter', again, () => {
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

  test.each([
    ['starter by hand', 42, 17, 112.5, 'We can’t take it back'],
    ['battery by hand', 54, 18, 115, 'We can’t take it back'],
    ['starter by hand, with readings of the vehicle', 65, 23, 133, 'We can’t take it back'],
    [
      'flat battery by hand, its cells read with a hydrometer that the shop does not list',
      73,
      19,
      110,
      'We take it back',
    ],
    ['starter with receipt and code', 22, 12, 97, 'We can’t take it back'],
    ['battery with receipt and code', 27, 12, 96, 'We can’t take it back'],
  ])(
    '%s takes %i keys and %i decisions, less than two minutes, and %i s at most of somebody who is new',
    async (name, keys, decided, anew, decision) => {
      const part = partsInHand()[name];
      if (part === undefined) throw new Error(`no part is called ${name}`);
      const { page, context, faults } = await counterWithShop(browser, site.url);
      const effort = await judgePart(page, part);
      await context.close();
      expect(faults).toEqual([]);
      expect(effort.decision).toBe(decision);
      const seconds = secondsFor(effort);
      expect({ keys: effort.keys, decided: effort.decided }).toEqual({ keys, decided });
      expect(seconds.anew).toBeLessThan(anew);
      expect(seconds.used).toBeLessThan(120);
    },
  );
});
