/**
 * The case of the vehicle at the counter: its code and its file, and what it says of a part.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import {
  answer,
  asks,
  daysAgo,
  eventually,
  follow,
  isDecided,
  slipOn,
} from './support/counter-hands.ts';
import { asked, inside, plain, press, scan, settled, typeSlowly } from './support/counter-page.ts';
import { playUntil } from './support/element-page.ts';
import { againstStarter, chart, codeOf } from './support/vehicle-code.ts';

atCounter('the vehicle’s case at the counter', ({ counter, practising }) => {
  test('takes the case of the vehicle, and the evidence with it', async () => {
    const page = await practising();
    await follow(page, asks(page, 'What is the complaint'));
    await scan(page, codeOf(againstStarter, daysAgo(2)));
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
    expect(await plain(inside(page, '.card .to-do'))).toContain('all else good');
    await press(page, '1');
    expect(await plain(inside(page, '.found'))).toContain('all else good');
    await follow(page, isDecided(page));
    expect(await plain(inside(page, '.slip-title'))).toBe('We take it back');
    expect(await slipOn(page)).toContain('€189.00');
  });

  test.each([
    [
      'of a vehicle with another fuel',
      () =>
        codeOf(
          {
            ...againstStarter,
            context: { ...againstStarter.context, vehicle: { fuel: 'diesel' } },
            choices: { ...againstStarter.choices, drive: ['diesel'] },
          },
          daysAgo(2),
        ),
      'another fuel',
    ],
    [
      'with a letter that is wrong',
      () =>
        codeOf(againstStarter, daysAgo(2)).replace(
          /(.{20})(.)/u,
          (_, head: string, letter: string) => head + (letter === 'A' ? 'B' : 'A'),
        ),
      'wrong or missing',
    ],
    ['that is cut off', () => codeOf(againstStarter, daysAgo(2)).slice(0, -6), 'wrong or missing'],
  ])('leaves a code out %s, and loses nothing', async (_, code, said) => {
    const page = await practising();
    await follow(page, asks(page, 'What is the complaint'));
    const before = await plain(inside(page, '.found'));
    await scan(page, code());
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain(said);
    });
    expect(await asked(page)).toBe('What is the complaint?');
    expect(await plain(inside(page, '.found'))).toBe(before);
  });

  test('a case of before the sale tells on what the part was bought, and nothing of the part', async () => {
    const page = await practising();
    await scan(page, codeOf(againstStarter, daysAgo(120)));
    await eventually(async () => {
      expect(await plain(inside(page, '.card .to-do'))).toContain('not later than the sale');
    });
    await page.waitForTimeout(settled);
    await page.keyboard.press('1', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.facts'))).toContain('measured');
    });
    expect(await plain(inside(page, '.found'))).not.toContain('What the vehicle says');
  });

  test('a code belongs to one return', async () => {
    const page = await practising();
    const code = codeOf(againstStarter, daysAgo(2));
    await scan(page, code);
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
    await press(page, '1');
    await scan(page, 'BT-0640');
    await eventually(async () => {
      expect(await inside(page, 'input[name=number]').inputValue()).toBe('BT-0640');
      // Without a sale nobody knows what was paid.
      expect(await inside(page, 'input[name=price]').inputValue()).toBe('');
    });
    await scan(page, code);
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('another return already');
    });
  });

  test('reads a case from its file, and says so where a file holds none', async () => {
    const page = await practising();
    const { events } = playUntil(chart, ({ state }) => state.verdict !== null, {
      ...againstStarter,
      at: daysAgo(2),
    });
    const choose = (text: string) =>
      inside(page, '.vehicle input[type=file]').setInputFiles({
        name: 'case.jsonl',
        mimeType: 'application/jsonl',
        buffer: Buffer.from(text),
      });
    await choose('{"not": "a case"}\n');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('holds no case');
    });
    // The last line was cut off while it was written.
    await choose(`${events.map((event) => JSON.stringify(event)).join('\n')}\n{"type":"ans`);
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
  });

  test('reads a code by the camera where the browser can, and offers none where it cannot', async () => {
    const without = await counter({
      before: (page) =>
        page.addInitScript(() => Reflect.deleteProperty(globalThis, 'BarcodeDetector')),
    });
    const cameraKey = (page: Page) =>
      page.locator('keyturn-counter').getByRole('button', { name: 'Use the camera' });
    expect(await cameraKey(without.page).count()).toBe(0);
    const page = await practising({
      // A browser with the detector and a camera, neither of which the test's has.
      before: (one) =>
        one.addInitScript(() => {
          Object.assign(globalThis, {
            BarcodeDetector: class {
              detect(): Promise<readonly object[]> {
                return Promise.resolve([{ rawValue: 'W-09815' }]);
              }
            },
          });
          const stream = (): Promise<MediaStream> =>
            Promise.resolve(document.createElement('canvas').captureStream());
          Object.defineProperty(navigator, 'mediaDevices', { value: { getUserMedia: stream } });
          HTMLMediaElement.prototype.play = () => Promise.resolve();
        }),
    });
    await cameraKey(page).click();
    await eventually(async () => {
      expect(await inside(page, 'input[name=receipt]').inputValue()).toBe('W-09815');
    });
    expect(await inside(page, 'video').count()).toBe(0);
  });

  test('a case that tells of another trouble than the customer is held against that', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await typeSlowly(page, daysAgo(40).slice(0, 10));
    await press(page, 'Enter');
    await answer(page, 'makes a noise');
    await scan(page, codeOf(againstStarter, daysAgo(2)));
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
    const card = await plain(inside(page, '.card .to-do'));
    expect(card).toContain('The customer says another thing: makes a noise. Ask which it is.');
    expect(card).toContain('all else good');
    expect(card).not.toContain('verdict');
  });

  test('a case of this vehicle with another part in it tells on what the part was bought, and no more', async () => {
    const page = await practising();
    await scan(page, codeOf(againstStarter, daysAgo(2)));
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
    await answer(page, 'Yes, but with another part in it');
    expect(await plain(inside(page, '.facts'))).toContain('measured');
    expect(await plain(inside(page, '.found'))).not.toContain('What the vehicle says');
  });

  test('a code that is malformed is one wherever it is typed, and no reading', async () => {
    const page = await practising();
    await follow(page, asks(page, 'Which figures?'));
    await inside(page, '#figure-bench-supply').fill('KT1-12.4');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain(
        'Letters of the code are wrong or missing',
      );
    });
    await inside(page, 'input[name=line]').fill('the code is KT1 7F3A 12');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain(
        'Letters of the code are wrong or missing',
      );
    });
    expect(await plain(inside(page, '.found'))).not.toContain('Supply');
  });
});
