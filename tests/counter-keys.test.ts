/**
 * Keys of the parts counter beside those that answer, and what is invented kept from what is real.
 */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import {
  asked,
  inside,
  numberOf,
  openCounter,
  plain,
  press,
  scan,
  settled,
  typeSlowly,
} from './support/counter-page.ts';

// A browser on a machine busy with other tests takes its time.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 180_000 });

const eventually = (holds: () => Promise<void>): Promise<void> =>
  vi.waitFor(holds, { timeout: 20_000, interval: 100 });

describe.skipIf(whyNoBrowser !== undefined)('at the parts counter', again, () => {
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

  /** The counter with the invented shop; closed when the test has ended, and then without any fault. */
  async function practising(options: BrowserContextOptions = {}): Promise<Page> {
    const opened = await openCounter(browser, `${site.url}desk/counter.html?lang=en`, options);
    onTestFinished(async () => {
      await opened.context.close();
      expect(opened.faults).toEqual([]);
    });
    await press(opened.page, '3');
    await inside(opened.page, '.ledger').waitFor();
    return opened.page;
  }

  /** The invented battery that came in flat, before its first figures. */
  async function batteryInHand(page: Page): Promise<void> {
    await scan(page, 'W-09815');
    await inside(page, '#figure-case-temperature').waitFor();
  }

  test('a part is put aside by one key, also out of the field of a figure', async () => {
    const page = await practising();
    await batteryInHand(page);
    await page.keyboard.press('F9');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toMatch(/Put aside since \d\d:\d\d/u);
    });
    const waiting = inside(page, '.others-list li').filter({ hasText: 'W-09815' });
    expect(await plain(waiting)).toMatch(/put aside since .* \d\d:\d\d/u);
  });

  test('a second minus before a figure is none', async () => {
    const page = await practising();
    await batteryInHand(page);
    await inside(page, '#figure-case-temperature').focus();
    await typeSlowly(page, '--5');
    expect(await inside(page, '#figure-case-temperature').inputValue()).toBe('-5');
  });

  test('what cannot be done as a caution asks is said by the same key as anywhere', async () => {
    const page = await practising();
    for (const label of ['it is the part we sold', 'turns slowly', 'fitted'])
      await press(page, await numberOf(page, [label]));
    await press(page, 'Enter');
    expect(await asked(page)).toBe('All safe, as warned?');
    await page.waitForTimeout(settled);
    await page.keyboard.press('/');
    await eventually(async () => {
      expect(await plain(inside(page, '.taken'))).toContain('Throw of the solenoid: not known.');
    });
  });

  test('a line that is typed while an answer is corrected answers that, and nothing else unasked', async () => {
    const page = await practising();
    for (const label of ['it is the part we sold', 'turns slowly', 'fitted'])
      await press(page, await numberOf(page, [label]));
    const say = async (text: string): Promise<void> => {
      await page.waitForTimeout(settled);
      await page.keyboard.press('-');
      await eventually(async () => {
        expect(await asked(page)).toContain('Fitted, or taken apart');
      });
      await typeSlowly(page, text);
      await page.keyboard.press('Enter');
    };
    await say('the stud turns');
    await eventually(async () => {
      expect(await plain(inside(page, '.card'))).toContain('Is that what you found?');
    });
    await press(page, '2');
    await say('it was never fitted');
    await eventually(async () => {
      expect(await plain(inside(page, '.ledger'))).toContain('What was done with it: unused');
    });
    expect(await plain(inside(page, '.ledger'))).not.toContain('Stud');
  });

  test('minus goes back one answer after the other, also from the field of a day, and plus begins a return there', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await press(page, await numberOf(page, ['receipt shown']), 'Enter');
    await press(page, await numberOf(page, ['it is the part we sold']));
    expect(await asked(page)).toBe('When was it sold?');
    await press(page, '-');
    expect(await asked(page)).toBe('Is this the battery sold?');
    await press(page, '-');
    expect(await asked(page)).toBe('Any proof of sale?');
    await page.keyboard.press('Escape');
    await eventually(async () => {
      expect(await asked(page)).toBe('When was it sold?');
    });
    // Behind figures a minus belongs to the day.
    await typeSlowly(page, '2026-0');
    expect(await inside(page, '.day-entry input').inputValue()).toBe('2026-0');
    await press(page, '+');
    expect(await asked(page)).toBe('What has come back?');
  });

  test('what is said stands above the question, on a phone as well', async () => {
    const page = await practising({ viewport: { width: 390, height: 844 } });
    await inside(page, 'input[name=line]').fill('qwxz');
    await page.keyboard.press('Enter', { delay: 60 });
    const notes = inside(page, '.notes');
    await eventually(async () => {
      expect(await plain(notes)).toContain('qwxz');
    });
    const [said, question] = await Promise.all([
      notes.boundingBox(),
      inside(page, '#asked').boundingBox(),
    ]);
    expect((said?.y ?? 0) + (said?.height ?? Infinity)).toBeLessThanOrEqual(question?.y ?? 0);
    expect(said?.y).toBeGreaterThanOrEqual(0);
  });

  test('what was taken last is told beside a key that came too early', async () => {
    const page = await practising();
    await press(page, await numberOf(page, ['it is the part we sold']));
    await page.keyboard.press('2');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toMatch(
        /Not taken: 2\..*Taken last: .*[^.]\.$/su,
      );
    });
  });

  test('from the invented shop one key leads to one’s own', async () => {
    const page = await practising();
    await press(page, '+');
    expect(await plain(inside(page, '.practice'))).toContain('This is an invented shop.');
    // The sentence is the same in both shops.
    await page.waitForTimeout(settled);
    await page.keyboard.press(await numberOf(page, ['To my own shop']));
    await eventually(async () => {
      expect(await inside(page, '.practice').count()).toBe(0);
    });
    expect(await plain(page.locator('keyturn-counter'))).not.toContain('(invented)');
  });

  test('what practice laid there is not listed among what a clerk took in', async () => {
    const page = await practising();
    const putDown = async (): Promise<void> => {
      await eventually(async () => {
        expect(await inside(page, '.card .key[data-key="2"]').innerText()).toContain('day’s list');
      });
      await press(page, '2');
    };
    await press(page, await numberOf(page, ['the customer’s old unit, in our box']));
    await putDown();
    await press(page, '1');
    await press(page, await numberOf(page, ['no proof']), 'Enter');
    await press(page, await numberOf(page, ['the customer’s old unit, in our box']));
    await putDown();
    await inside(page, 'button').filter({ hasText: 'The day’s list' }).click();
    await eventually(async () => {
      expect(await inside(page, 'h3.played').count()).toBe(1);
    });
    expect(await inside(page, 'table').count()).toBe(2);
    expect(await plain(inside(page, 'table').last())).toContain('W-10482');
    expect(await plain(inside(page, 'table').first())).not.toContain('W-10482');
  });
});
