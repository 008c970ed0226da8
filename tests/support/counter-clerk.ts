/**
 * A clerk who judges a part at the counter by keys alone: every key, every screen and every word is
 * counted, and what that takes is reckoned.
 */
import type { FlowTexts } from '@keyturn/language';
import type { Page } from 'playwright-core';
import { asked, inside, numberOf, plain, press, scan, settled } from './counter-page.ts';

/** A part over the counter, and what is to be found of it. */
export interface PartInHand {
  /** The key by which a return of its kind begins. */
  readonly begin: string;
  readonly texts: FlowTexts;
  /** A check to the id of its answer, or to a day or a figure as it is typed; what is missing can't be done here. */
  readonly found: Readonly<Record<string, string>>;
  /** The price that stands on the receipt; left out where a refusal needs none. */
  readonly paid?: string;
  /** What is scanned before anything is asked: a receipt, the code of the vehicle's case. */
  readonly scans: readonly string[];
  /** What the customer read on the vehicle, in the order of its fields; empty where it was not. */
  readonly readOut?: readonly string[];
}

/** What judging a part took. */
export interface Effort {
  /** Every key that was pressed; those that a scanner types are none. */
  readonly keys: number;
  /** How often something was to be decided or read off: a question, a field, a row. */
  readonly decided: number;
  readonly scans: number;
  /** Words read out to the customer, and those of the customer's answers. */
  readonly aloud: number;
  readonly heard: number;
  /** Words that a clerk reads who knows the page, and one who sees it for the first time. */
  readonly read: number;
  readonly readAnew: number;
  /** The checks that were asked, in order. */
  readonly asked: readonly string[];
  /** The decision, in words. */
  readonly decision: string;
}

/** What only the customer can say; it is read out. */
const ofTheCustomer = ['sale-proof', 'claim', 'suits-vehicle', 'cranked-for', 'vehicle-proof'];

/**
 * Seconds of one act. A key of an average typist who is no secretary, a decision, and a hand that
 * goes to a thing and points it: Card, Moran and Newell, The keystroke-level model, CACM 23 (1980),
 * K 0.28, M 1.35, H 0.40, P 1.10. A word read in silence 238 a minute, aloud 183: Brysbaert, How
 * many words do we read per minute?, J. Mem. Lang. 109 (2019). All from memory. A customer is taken
 * to speak as fast as one reads aloud.
 */
const seconds = {
  key: 0.28,
  decision: 1.35,
  scan: 0.4 + 1.1 + 0.28 + 0.4,
  word: 60 / 238,
  wordAloud: 60 / 183,
} as const;

/** Seconds that a clerk needs who knows the page, and one who sees it for the first time. */
export function secondsFor(effort: Effort): { readonly used: number; readonly anew: number } {
  const acts =
    effort.keys * seconds.key +
    effort.decided * seconds.decision +
    effort.scans * seconds.scan +
    (effort.aloud + effort.heard) * seconds.wordAloud;
  return { used: acts + effort.read * seconds.word, anew: acts + effort.readAnew * seconds.word };
}

/** What stands on the receipt that is shown. */
const receiptNumber = '40881';

/** Judges a part from the empty counter until its decision lies in the day's list. */
export async function judgePart(page: Page, part: PartInHand): Promise<Effort> {
  const counted = { keys: 0, decided: 0, scans: 0, aloud: 0, heard: 0, read: 0, readAnew: 0 };
  const order: string[] = [];
  const pressed = async (...keys: readonly string[]): Promise<void> => {
    counted.keys += keys.length;
    await press(page, ...keys);
  };
  const scanned = async (code: string): Promise<void> => {
    const before = await asked(page);
    counted.scans += 1;
    await scan(page, code);
    await page.waitForFunction(
      (said) =>
        document.querySelector('keyturn-counter')?.shadowRoot?.querySelector<HTMLElement>('#asked')
          ?.innerText !== said,
      before,
      { timeout: 60_000 },
    );
  };
  const [first, ...later] = part.scans;
  if (first === undefined) {
    counted.decided += 1;
    counted.readAnew += await wordsOfCard(page);
    await pressed(part.begin);
  } else await scanned(first);
  for (const code of later) {
    await scanned(code);
    counted.decided += 1;
    const words = await wordsOfCard(page);
    counted.read += words;
    counted.readAnew += words;
    await pressed('1');
  }
  const stands = new Set<string>();
  for (let turns = 0; !(await isDecided(page)); turns += 1) {
    if (turns > 60) throw new Error(`never decided; now it asks “${await asked(page)}”`);
    const words = await wordsOfCard(page, stands);
    counted.readAnew += words;
    if (part.found['sale-proof'] === 'shown' && (await isReceiptAsked(page))) {
      // That there is one, and what its number is.
      counted.decided += 2;
      const said = wordsIn(await asked(page));
      counted.aloud += said;
      counted.readAnew -= said;
      counted.heard += wordsIn(part.texts.checks['sale-proof']?.answers?.['shown']?.label ?? '');
      counted.read += await wordsOf(page, '.card .day-entry label');
      order.push('sale-proof');
      // The price is asked for beside it.
      const { paid = '' } = part;
      if (paid !== '') counted.decided += 1;
      await pressed(...Array.from(receiptNumber), 'Enter', ...Array.from(paid), 'Enter');
      continue;
    }
    const usual = await usualShown(page, part);
    if (usual.length > 0) {
      counted.decided += 1;
      counted.read += await wordsOf(page, '.usual li');
      const otherwise = usual.findIndex(([one, answer]) => part.found[one] !== answer);
      if (otherwise < 0) order.push(...usual.map(([one]) => one));
      await pressed(otherwise < 0 ? 'Enter' : String(otherwise + 1));
      continue;
    }
    const figures = await inside(page, '.figures input').evaluateAll((inputs) =>
      inputs.map((input) => (input as HTMLInputElement).name),
    );
    if (figures.length > 0) {
      order.push(...figures);
      counted.decided += figures.length;
      if (figures.every((check) => part.found[check] === undefined)) {
        counted.keys += 1;
        await page.keyboard.press('Escape');
        await pressed('/');
        continue;
      }
      await pressed(
        ...figures.flatMap((check) => [...Array.from(part.found[check] ?? ''), 'Enter']),
      );
      continue;
    }
    const text = await asked(page);
    const check = checkAsked(part.texts, text);
    counted.decided += 1;
    if (check === undefined) {
      // A caution is read whenever it is said.
      counted.read += words;
      await pressed('1');
      continue;
    }
    order.push(check);
    if (check === 'vehicle-proof' && part.readOut !== undefined) {
      const asking = wordsIn(text);
      counted.aloud += asking;
      counted.readAnew -= asking;
      await pressed('4');
      counted.readAnew +=
        (await wordsOfCard(page, stands)) + (await wordsOf(page, '.card > .hint'));
      counted.decided += part.readOut.length;
      counted.keys += await typeReadOut(page, part.readOut);
      continue;
    }
    const found = part.found[check];
    if (found === undefined) throw new Error(`nothing is to be found of ${check}`);
    const label = part.texts.checks[check]?.answers?.[found]?.label ?? found;
    if (ofTheCustomer.includes(check)) {
      counted.aloud += wordsIn(text);
      counted.heard += wordsIn(label);
      counted.readAnew -= wordsIn(text);
    } else counted.read += wordsIn(text);
    // A day is typed; where nobody knows it, its term is picked in the same field.
    if ((await inside(page, '.day-entry').count()) === 0) {
      await pressed(await numberOf(page, [label]));
    } else if (label === found) await pressed(...Array.from(found), 'Enter');
    else await pressed(await numberOf(page, [label]), 'Enter');
  }
  counted.aloud += wordsIn(await plain(inside(page, '.card .sentence')));
  counted.aloud += wordsIn(await plain(inside(page, '.card .sure').first()));
  counted.decided += 1;
  const decision = await plain(inside(page, '.slip-title'));
  // Where the price is asked for beside it, the number is typed into its field.
  const isPriceAsked = (await inside(page, '.card [name=price]').count()) > 0;
  await pressed('2', ...(isPriceAsked ? ['Enter'] : []));
  return { ...counted, asked: order, decision };
}

/** Types what was read on the vehicle, each field once the one before is left. Gives how many keys. */
async function typeReadOut(page: Page, readOut: readonly string[]): Promise<number> {
  await page.waitForTimeout(settled);
  for (const [index, reading] of readOut.entries()) {
    const at = await page.evaluate(fieldInHand);
    for (const key of reading) await page.keyboard.press(key, { delay: 60 });
    if (index === readOut.length - 1) await press(page, 'Enter');
    else {
      await page.keyboard.press('Enter', { delay: 60 });
      await page.waitForFunction(
        (before) =>
          document.querySelector('keyturn-counter')?.shadowRoot?.activeElement?.id !== before,
        at,
      );
    }
  }
  return readOut.reduce((sum, { length }) => sum + length + 1, 0);
}

/** The field that has the focus. */
const fieldInHand = (): string =>
  document.querySelector('keyturn-counter')?.shadowRoot?.activeElement?.id ?? '';

/** Whether the number of a receipt is asked for. */
async function isReceiptAsked(page: Page): Promise<boolean> {
  return (await inside(page, '[name=receipt-number]').count()) > 0;
}

/** True where the return can be put into the day's list: a decision that stands meanwhile has a slip too. */
async function isDecided(page: Page): Promise<boolean> {
  return (await inside(page, '.card .key.take[data-key="2"]').count()) > 0;
}

/** The check that a sentence asks. */
function checkAsked({ checks }: FlowTexts, text: string): string | undefined {
  return Object.entries(checks).find(([, said]) => said.ask === text || said.again === text)?.[0];
}

/** What can be said at once of the part, by the names and answers that stand there. */
async function usualShown(
  page: Page,
  { texts }: PartInHand,
): Promise<readonly (readonly [check: string, answer: string])[]> {
  const lines = await inside(page, '.usual .label').evaluateAll((all) =>
    all.flatMap((one) => {
      const name = one.querySelector('.what')?.textContent;
      return name === undefined ? [] : [[name, one.querySelector('b')?.textContent ?? '']];
    }),
  );
  return lines.map(([name = '', label = '']) => {
    const said = Object.entries(texts.checks).find(([, check]) => check.name === name);
    const answers = Object.entries(said?.[1].answers ?? {});
    return [said?.[0] ?? name, answers.find(([, one]) => one.label === label)?.[0] ?? label];
  });
}

/**
 * Words of the card that are there to be read for what is asked now: not what is always there, nor
 * what stood there already when the question before was asked.
 */
async function wordsOfCard(page: Page, stands: Set<string> = new Set()): Promise<number> {
  const texts = await inside(
    page,
    '.card .sentence, .card .how-to, .card .signs, .card .sure, .card .to-do, .card .usual li, .card .usual .hint, .card .keys > .key:not(.small) .label, .card .figure label, .card .day-entry label',
  ).allInnerTexts();
  const anew = texts.filter((text) => !stands.has(text));
  stands.clear();
  for (const text of texts) stands.add(text);
  return anew.reduce((sum, text) => sum + wordsIn(text), 0);
}

async function wordsOf(page: Page, selector: string): Promise<number> {
  const texts = await inside(page, selector).allInnerTexts();
  return texts.reduce((sum, text) => sum + wordsIn(text), 0);
}

/** Words between spaces; a sign alone is none. */
function wordsIn(text: string): number {
  return text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}
