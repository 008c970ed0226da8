/**
 * What a clerk’s hands do at the counter, and how a test waits for what comes of it.
 */
import type { Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import { asked, inside, numberOf, plain, press, typeSlowly } from './counter-page.ts';

/** Waits until something holds: a case is read in a worker, which takes a while. */
export const eventually = (holds: () => Promise<void>): Promise<void> =>
  vi.waitFor(holds, { timeout: 20_000, interval: 100 });

/** A day so many days ago, ISO 8601. */
export const daysAgo = (days: number): string =>
  new Date(Date.now() - days * 86_400_000).toISOString();

/** What the guide of the practice says now. */
const guideOf = (page: Page): Promise<string> => plain(inside(page, '.practice p').first());

/** Follows the guide by keys alone until `isThere`. */
export async function follow(page: Page, isThere: () => Promise<boolean>): Promise<number> {
  let keys = 0;
  for (let turns = 0; !(await isThere()); turns += 1) {
    expect(turns).toBeLessThan(30);
    const guide = await guideOf(page);
    const figures = [...guide.matchAll(/(?<!\S)(\d[\d.]*) (?:V|A|°C)|(\d,\d{3}) rpm/gu)].map(
      ([, one, rpm]) => one ?? rpm?.replace(',', '') ?? '',
    );
    if ((await inside(page, '.figures').count()) > 0) {
      const typed = figures.flatMap((figure) => [...Array.from(figure), 'Enter']);
      keys += typed.length;
      await press(page, ...typed);
    } else {
      const key = / (\d|Enter)(?: drücken)?\.?$/u.exec(guide)?.[1];
      if (key === undefined) throw new Error(`the guide says no key: ${guide}`);
      keys += 1;
      await press(page, key);
    }
  }
  return keys;
}

/** Whether the decision stands there, and its slip is written. */
export const isDecided = (page: Page) => async () => {
  if ((await inside(page, '.card .key.take[data-key="2"]').count()) === 0) return false;
  await inside(page, '.printed .code').waitFor();
  return true;
};

/** The slip, once it is written. */
export const slipOn = async (page: Page): Promise<string> => {
  await inside(page, '.printed .code').waitFor();
  return plain(inside(page, '.printed'));
};

/** Whether a text is in the large sentence. */
export const asks = (page: Page, text: string) => async () => (await asked(page)).includes(text);

/** Answers by the labels of the keys until another thing is asked. */
export async function answer(page: Page, ...labels: readonly string[]): Promise<void> {
  for (const label of labels) {
    const key = await numberOf(page, [label]);
    // Where the number of a receipt can be typed an answer is picked in the same field.
    const isTyped = (await inside(page, '[name=receipt-number]').count()) > 0;
    await press(page, key, ...(isTyped ? ['Enter'] : []));
  }
}

/** A flooded battery that was looked at. */
export async function batteryLookedAt(page: Page): Promise<void> {
  await press(page, '2');
  await say(page, 'matches, receipt shown, in warranty, slow crank, was fitted, whole and dry');
  await press(page, '1');
  await answer(page, 'flooded, with caps');
  await press(page, 'Enter');
}

/** One of 640 A, at 20 °C and 12.6 V; its figures are not taken yet. */
export async function batteryOnTheBench(page: Page): Promise<void> {
  await batteryLookedAt(page);
  await press(page, '1', '3', '6', 'Enter');
  // What is read in any case is typed together.
  await typeSlowly(page, '12.6');
  await page.keyboard.press('Enter', { delay: 60 });
  await typeSlowly(page, '640 EN');
  await page.keyboard.press('Enter', { delay: 60 });
  await typeSlowly(page, '20');
}

/** Types a line in the clerk's own words. */
export async function say(page: Page, line: string): Promise<void> {
  await inside(page, 'input[name=line]').fill(line);
  await press(page, 'Enter');
}
