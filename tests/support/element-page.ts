/**
 * The served pages with a case brought to where a test wants it.
 */
import { hearInputs } from '@keyturn/conversation';
import {
  openCase,
  positionOf,
  type Case,
  type CaseEvent,
  type Chart,
  type Input,
} from '@keyturn/core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

/** An invented person at home with a voltmeter and a charger. */
const atHome = { role: 'driver', place: 'home', kit: ['voltmeter', 'charger', 'helper'] };

/** A case as the element keeps it. */
interface Kept {
  readonly case: Case;
  readonly events: readonly CaseEvent[];
}

/**
 * Plays a case until `isThere`. Readings are taken from `readings`, choices from `choices`; what is
 * in neither is not known.
 */
export function playUntil(
  chart: Chart,
  isThere: (kase: Case) => boolean,
  given: {
    readonly context?: object;
    readonly choices?: Readonly<Record<string, readonly string[]>>;
    readonly readings?: Readonly<Record<string, number>>;
    readonly at?: string;
    /** A case that was played before, and what is told then. */
    readonly from?: Kept;
    readonly told?: readonly Input[];
  } = {},
): Kept {
  const at = given.at ?? new Date().toISOString();
  const opened =
    given.from ?? openCase(chart, { id: 'played', at, context: { ...atHome, ...given.context } });
  const told = hearInputs(chart, opened.case, { at, inputs: given.told ?? [] });
  let kept: Kept = { case: told.case, events: [...opened.events, ...told.events] };
  for (let turns = 0; !isThere(kept.case); turns += 1) {
    if (turns > 120) throw new Error(`never there; now ${JSON.stringify(positionOf(kept.case))}`);
    const heard = hearInputs(chart, kept.case, { at, inputs: [inputFor(chart, kept.case, given)] });
    kept = { case: heard.case, events: [...kept.events, ...heard.events] };
  }
  return kept;
}

function inputFor(
  chart: Chart,
  kase: Case,
  given: Parameters<typeof playUntil>[2] & object,
): Input {
  const position = positionOf(kase);
  switch (position.awaiting) {
    case 'confirm':
      return { type: 'confirm' };
    case 'wait':
      return { type: 'waited' };
    case 'resume':
      return { type: 'resume' };
    case 'nothing':
      throw new Error('the case is closed');
    case 'answer': {
      const { check } = position;
      const form = chart.flow.checks[check]?.form;
      const choice = form?.kind === 'work' ? ['done'] : given.choices?.[check];
      const reading = given.readings?.[check];
      if (form?.kind === 'reading' && reading !== undefined) {
        const value = { value: reading, unit: form.unit, resolution: 0.01 };
        return { type: 'answers', answers: [{ check, value }] };
      }
      if (choice === undefined) return { type: 'talk', talk: 'dont-know' };
      return { type: 'answers', answers: [{ check, value: choice }] };
    }
  }
}

/** A page opened, and every breach of the policy and every error that it met. */
export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly faults: readonly string[];
}

/** How a page is opened. */
export interface PageOptions extends BrowserContextOptions {
  readonly kept?: Kept;
  /** True for a clock that the test turns. */
  readonly hasClock?: boolean;
}

/** Opens a page, where wanted with a case that was kept there before. */
export async function openPage(
  browser: Browser,
  url: string,
  options: PageOptions = {},
): Promise<Opened> {
  const { kept, hasClock = false, ...rest } = options;
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...rest });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  if (kept !== undefined) {
    const text = JSON.stringify({
      format: 1,
      said: [],
      cautions: [],
      ranking: null,
      offers: [],
      ...kept,
    });
    await page.addInitScript(
      ([name, value]) => {
        if (name !== undefined && value !== undefined && localStorage.getItem(name) === null) {
          localStorage.setItem(name, value);
        }
      },
      ['keyturn-case', text],
    );
  }
  if (hasClock) await page.clock.install();
  await page.goto(url);
  await page.locator('keyturn-case #asked').waitFor();
  // A typeface that comes late moves every line.
  await page.evaluate(() => document.fonts.ready.then(() => true));
  return { page, context, faults };
}

/** Holds a key as a finger does. */
export async function hold(page: Page, ms = 1_000): Promise<void> {
  const key = page.locator('keyturn-case .hold');
  await key.scrollIntoViewIfNeeded();
  const box = await key.boundingBox();
  if (box === null) throw new Error('there is no key to hold');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(ms);
  await page.mouse.up();
}

/** A finger on a key: how it comes down there, and how it is lifted. */
export interface Finger {
  readonly down: () => Promise<void>;
  readonly up: () => Promise<void>;
}

/** A finger over the key that has to be held; where it comes down it stays, whatever is drawn there. */
export async function fingerOnHold(page: Page): Promise<Finger> {
  const key = page.locator('keyturn-case .hold');
  await key.scrollIntoViewIfNeeded();
  const box = await key.boundingBox();
  if (box === null) throw new Error('there is no key to hold');
  const point = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const screen = await page.context().newCDPSession(page);
  const touch = async (type: 'touchStart' | 'touchEnd', touchPoints: object[]): Promise<void> => {
    await screen.send('Input.dispatchTouchEvent', { type, touchPoints: touchPoints as never });
  };
  return { down: () => touch('touchStart', [point]), up: () => touch('touchEnd', []) };
}
