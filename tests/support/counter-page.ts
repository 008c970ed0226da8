/**
 * The parts counter opened in a browser, and what a clerk does at it.
 */
import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  Locator,
  Page,
} from 'playwright-core';

/** A counter opened, and every breach of the policy and every error that it met. */
export interface OpenedCounter {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly faults: readonly string[];
}

/** Opens the counter and waits until it can be worked at. */
export async function openCounter(
  browser: Browser,
  url: string,
  options: BrowserContextOptions & { readonly before?: (page: Page) => Promise<unknown> } = {},
): Promise<OpenedCounter> {
  const { before, ...rest } = options;
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...rest });
  const faults: string[] = [];
  const page = await context.newPage();
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  await before?.(page);
  await page.goto(url);
  await page.locator('keyturn-counter #asked').waitFor();
  return { page, context, faults };
}

/** A place within the counter. */
export const inside = (page: Page, selector: string): Locator =>
  page.locator(`keyturn-counter ${selector}`);

/** The large sentence. */
export const asked = (page: Page): Promise<string> => inside(page, '#asked').innerText();

/** The text without the marks that keep directions apart. */
export async function plain(locator: Locator): Promise<string> {
  return (await locator.innerText()).replaceAll(/[\u2066-\u2069]/gu, '').replaceAll('\u00a0', ' ');
}

/** So long after a question is put a key is one that bounces, and answers nothing; milliseconds. */
export const settled = 400;

/** What is asked: the large sentence, and the lines of a list under it. */
const whole = (page: Page): Promise<string> =>
  inside(page, '#asked, .usual li')
    .allInnerTexts()
    .then((texts) => texts.join('\n'));

/** Reads what is asked, presses keys and waits until something else is asked. */
export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  await page.waitForTimeout(settled);
  const before = await whole(page);
  for (const key of keys) await page.keyboard.press(key, { delay: 60 });
  await page.waitForFunction((said) => {
    const counter = document.querySelector('keyturn-counter')?.shadowRoot;
    const now = counter?.querySelectorAll<HTMLElement>('#asked, .usual li') ?? [];
    const text = [...now].map((one) => one.innerText).join('\n');
    return text !== '' && text !== said && counter?.querySelector('.busy') === null;
  }, before);
}

/** The number of the key in the card with one of these labels. */
export async function numberOf(page: Page, labels: readonly string[]): Promise<string> {
  const found = await inside(page, '.card .key[data-key]').evaluateAll(
    (keys, wanted) =>
      keys
        .find((key) => wanted.includes(key.querySelector('.label')?.textContent.trim() ?? ''))
        ?.getAttribute('data-key') ?? undefined,
    labels,
  );
  if (found === undefined) throw new Error(`no key is called one of ${labels.join(', ')}`);
  return found;
}

/** Types a figure as a hand does. */
export async function typeSlowly(page: Page, text: string): Promise<void> {
  for (const key of text) await page.keyboard.press(key, { delay: 60 });
}

/** What a scanner does that is plugged in as a keyboard: the whole code at once, and Enter. */
export async function scan(page: Page, code: string): Promise<void> {
  await page.evaluate((text) => {
    const deepest = (): Element => {
      const counter = document.querySelector('keyturn-counter');
      return counter?.shadowRoot?.activeElement ?? document.activeElement ?? document.body;
    };
    // The time of an event is that of its making: as a scanner's, however busy the page is.
    const events = [...Array.from(text), 'Enter'].map((key) => {
      const how = { key, bubbles: true, composed: true, cancelable: true };
      return new KeyboardEvent('keydown', how);
    });
    for (const event of events) {
      const { key } = event;
      const target = deepest();
      const isFree = target.dispatchEvent(event);
      if (isFree && key.length === 1 && target instanceof HTMLInputElement) {
        target.value += key;
        target.dispatchEvent(new Event('input', { bubbles: true }));
      }
    }
  }, code);
}
