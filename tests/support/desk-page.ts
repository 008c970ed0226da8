/**
 * The dispatcher's desk opened in a browser, where wanted with cases that were kept there before.
 */
import type { Case, CaseEvent } from '@keyturn/core';
import type { Caller, DeskCase } from '@keyturn/desk';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

/** A desk opened, and every breach of the policy and every error that it met. */
export interface OpenedDesk {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly faults: readonly string[];
}

/** How a desk is opened. */
export interface DeskOptions extends BrowserContextOptions {
  /** What was kept there before. */
  readonly kept?: readonly DeskCase[];
  /** Who called, by the id of the case. */
  readonly callers?: Callers;
  /** True for a clock that the test turns. */
  readonly hasClock?: boolean;
}

type Callers = Readonly<Record<string, Caller>>;

/** Opens the desk and waits until it can be worked at. */
export async function openDesk(
  browser: Browser,
  url: string,
  options: DeskOptions = {},
): Promise<OpenedDesk> {
  const { kept, callers = {}, hasClock = false, ...rest } = options;
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...rest });
  context.setDefaultTimeout(60_000);
  const faults: string[] = [];
  context.on('page', (page) => {
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
    });
  });
  const page = await context.newPage();
  if (kept !== undefined) {
    // Of the same place, and quicker to open than the desk itself.
    await page.goto(new URL('icon.svg', url).href);
    await keep(page, kept, callers);
  }
  if (hasClock) await page.clock.install();
  await page.goto(url);
  await page.locator('keyturn-desk #asked').waitFor();
  return { page, context, faults };
}

/** A case as the desk keeps it, from one that was played. */
export function deskCase(
  played: { readonly case: Case; readonly events: readonly CaseEvent[] },
  more: Partial<DeskCase> = {},
): DeskCase {
  const at = new Date().toISOString();
  return {
    id: 'seeded',
    openedAt: at,
    touchedAt: at,
    sitting: { ...played, said: [], cautions: [], ranking: null, offers: [] },
    sent: null,
    practice: null,
    version: 1,
    ...more,
  };
}

/** Puts cases into the store of the desk, which is made where there is none. */
async function keep(page: Page, cases: readonly DeskCase[], callers: Callers): Promise<void> {
  await page.evaluate(
    ([all, people]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('keyturn-desk', 1);
        // The shelves of version 1, as they lie in the browsers of desks in use.
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('cases', { keyPath: 'id' });
          opening.result.createObjectStore('callers');
          opening.result.createObjectStore('outcomes', { keyPath: 'id' });
        };
        opening.onsuccess = () => {
          const write = opening.result.transaction(['cases', 'callers'], 'readwrite');
          for (const one of all) write.objectStore('cases').put(one);
          for (const [id, caller] of Object.entries(people)) {
            write.objectStore('callers').put(caller, id);
          }
          write.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
        opening.onerror = () => {
          reject(new Error('the store cannot be opened'));
        };
      }),
    [cases, callers] as const,
  );
}

/** Puts cases into the store of a desk that is open, and opens it again. */
export async function seed(
  page: Page,
  cases: readonly DeskCase[],
  callers: Callers = {},
): Promise<void> {
  await keep(page, cases, callers);
  await page.reload();
  await page.locator('keyturn-desk #asked').waitFor();
}

/** The large sentence. */
export const asked = (page: Page): Promise<string> =>
  page.locator('keyturn-desk #asked').innerText();

/** So long after something is put to be said, no digit answers it. */
export const settled = 450;

/** The key that is to be pressed once more, since nobody knows yet where help would go. */
export const onceMore = '.card .key.take[data-key]';

/**
 * Reads what is to be said, presses a key that answers, and waits until something else is to be. Help
 * is sent though it is not known where to.
 */
export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  const before = await asked(page);
  await page.waitForTimeout(settled);
  for (const key of keys) await page.keyboard.press(key);
  const isElse = ([said, again]: readonly string[]): string | undefined => {
    const desk = document.querySelector('keyturn-desk')?.shadowRoot;
    const now = desk?.querySelector<HTMLElement>('#asked')?.innerText;
    if (now === undefined || desk?.querySelector('[aria-busy=true]') !== null) return undefined;
    if (now !== said) return 'else';
    return desk.querySelector(again ?? '') === null ? undefined : 'again';
  };
  const given = [before, onceMore];
  const came = await page.waitForFunction(isElse, given);
  if ((await came.jsonValue()) !== 'again') return;
  await page.waitForTimeout(settled);
  await page.keyboard.press(keys.at(-1) ?? '');
  await page.waitForFunction((said) => {
    const desk = document.querySelector('keyturn-desk')?.shadowRoot;
    return desk?.querySelector<HTMLElement>('#asked')?.innerText !== said;
  }, before);
}

/** The number of the key in the card with one of these labels; undefined where there is none. */
export function numberOf(page: Page, labels: readonly string[]): Promise<string | undefined> {
  return page.locator('keyturn-desk .card .key[data-key]').evaluateAll((keys, wanted) => {
    const labelOf = (key: Element): string => {
      const label = key.querySelector('.label')?.cloneNode(true) as Element | undefined;
      for (const more of label?.querySelectorAll('.more') ?? []) more.remove();
      return label?.textContent.trim() ?? '';
    };
    const found = keys.find((key) => wanted.includes(labelOf(key)));
    return found?.getAttribute('data-key') ?? undefined;
  }, labels);
}
