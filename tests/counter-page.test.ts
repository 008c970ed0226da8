/**
 * Whole returns at the counter by keys alone, and what holds of every screen.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
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
import { keptIn } from './support/kept-in-browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules of WCAG 2.2, A and AA. */
const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

atCounter('the parts counter', ({ counter, practising }) => {
  test('goes round every part on the counter by one key, and tells a decision that may change', async () => {
    const page = await practising();
    const receipt = (): Promise<string> => inside(page, 'input[name=receipt]').inputValue();
    const receipts = new Set<string>();
    for (let turns = 0; turns < 3; turns += 1) {
      receipts.add(await receipt());
      // Out of a figure's field, which takes whatever is typed.
      await page.keyboard.press('Escape');
      await press(page, 'F8');
    }
    expect(receipts.size).toBe(3);
    await press(page, 'F8');
    await press(page, 'F8');
    expect(await receipt()).toBe('W-09815');
    // But for what begins no figure nobody types a command into its field.
    const cannot = inside(page, '.card .key.small').filter({ hasText: 'I can’t' });
    expect(await cannot.locator('kbd').allInnerTexts()).toEqual(['/']);
    await typeSlowly(page, '12.1');
    await page.keyboard.press('Enter', { delay: 60 });
    await typeSlowly(page, '20');
    await press(page, 'Enter');
    await press(page, '1');
    await page.waitForTimeout(settled);
    await page.keyboard.press('/');
    await inside(page, '.standing').waitFor();
    expect(await plain(inside(page, '.standing'))).toContain('so it has to be charged first');
    expect(await inside(page, '.standing .key').count()).toBeGreaterThan(1);
    expect(await asked(page)).toContain('charger');
  });

  test('guides a new clerk by keys alone to a decline with its reasons', async () => {
    const page = await practising();
    expect(await asked(page)).toBe('Is this the part sold?');
    // A person who reads each line and presses a key takes some three seconds for it.
    expect(await follow(page, isDecided(page))).toBeLessThanOrEqual(40);
    expect(await asked(page)).toBe('We can’t take it back');
    const slip = await slipOn(page);
    expect(slip).toContain('Every figure of it tested good here');
    expect(slip).toMatch(/Supply at the starter:\s+11\.70 V/u);
    // What would turn the decision is not for whoever looks at the screen across the counter.
    expect(await plain(inside(page, '.bench'))).not.toMatch(/would (have )?change/u);
    expect(slip).toContain('Measure on the vehicle before another part is fitted');
    expect(slip).toContain('Consumer law where you live comes first');
    expect(slip).not.toContain('What is paid back');
    await press(page, '2');
    expect(await plain(inside(page, '.notes'))).toContain('In the day’s list.');
    expect(await inside(page, '.others-list li').count()).toBe(2);
  });

  test('takes all that one look shows by one key, and nothing beside that', async () => {
    const page = await practising();
    await follow(page, asks(page, 'All true?'));
    const rows = await plain(inside(page, '.usual ol'));
    expect(rows).toMatch(/Studs\s+sound\s+2\s+Housing\s+whole/u);
    expect(rows).toMatch(/Suits the vehicle\s+right one/u);
    // What was done with it has no usual answer.
    expect(rows).not.toContain('fitted');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('All safe, as warned?');
    expect(await inside(page, '.usual').count()).toBe(0);
    expect(await plain(inside(page, '.found'))).toMatch(/Studs.*sound.*Drive/su);
    expect(await plain(inside(page, '.taken'))).toMatch(/sound\s+whole\s+clean/u);
    // One that is otherwise is answered by its own key, and the rest stays a list.
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await typeSlowly(page, daysAgo(40).slice(0, 10));
    await press(page, 'Enter');
    await answer(page, 'turns slowly', 'fitted');
    await press(page, '1');
    expect(await asked(page)).toBe('What do the electrical studs look like?');
    // It is left again with nothing changed, by the key that leaves everything.
    await press(page, 'Escape');
    expect(await plain(inside(page, '.usual ol'))).toBe(rows);
    await press(page, '1');
    await answer(page, 'burnt');
    const rest = await plain(inside(page, '.usual ol'));
    expect(rest).toContain('whole');
    // A part whose studs are burnt is judged by no heat and no drive.
    expect(rest).not.toContain('heat');
    expect(rest).not.toContain('drive');
  });

  test('takes a dragging starter back with the arithmetic of the shop’s terms', async () => {
    const page = await practising();
    await scan(page, 'W-10377');
    await eventually(async () => {
      expect(await inside(page, 'input[name=receipt]').inputValue()).toBe('W-10377');
    });
    await follow(page, isDecided(page));
    expect(await asked(page)).toBe('We take it back');
    // What is taken back anyway needs no lead.
    expect(await plain(inside(page, '.card'))).not.toContain('goodwill');
    const slip = await slipOn(page);
    expect(slip).toContain('€142.50');
    // The old unit is still owed, so that its deposit is paid back with the price.
    expect(slip).toContain('€45.00');
    expect(slip).toContain('€187.50');
    await press(page, '2');
    await inside(page, '.head-key').first().click();
    const list = await plain(inside(page, '.day-list'));
    expect(list).toContain('the motor drags');
    expect(list).toContain('Paid back in EUR: €187.50, of that deposits €45.00');
    await inside(page, '.head-key').nth(1).click();
    // Two parts of the day before were bought on a workshop's word as well: one good, one not.
    const led = inside(page, '.led li').filter({ hasText: 'the word of a workshop' });
    expect(await plain(led)).toContain('1 good, 2 failed');
    expect(await led.locator('circle.good').count()).toBe(1);
    expect(await led.locator('circle.failed').count()).toBe(2);
  });

  test('takes a tired battery back by the months that are left', async () => {
    const page = await practising();
    await scan(page, 'w09815');
    await eventually(async () => {
      expect(await inside(page, 'input[name=name]').inputValue()).toContain('Battery');
    });
    await follow(page, isDecided(page));
    expect(await asked(page)).toBe('We take it back');
    // 430 days are 14 whole months of 36: 119.90 × 22 / 36 is 73.27 to the cent.
    expect(await slipOn(page)).toContain('€73.27');
  });

  test('keeps what was typed and where the return stood through a reload', async () => {
    const page = await practising();
    await follow(page, asks(page, 'Which figures?'));
    await typeSlowly(page, '11.6');
    const name = 'Starter with a dent <b>bold</b>';
    await inside(page, 'input[name=name]').fill(name);
    await eventually(async () => {
      expect(await inside(page, '#figure-bench-supply-means').innerText()).not.toBe('');
      expect((await keptIn(page, 'keyturn-counter'))['returns']).toContainEqual(
        expect.objectContaining({ name, typed: { 'bench-supply': '11.6' } }),
      );
    });
    await page.reload();
    await inside(page, '.figures').waitFor();
    expect(await inside(page, '#figure-bench-supply').inputValue()).toBe('11.6');
    expect(await inside(page, 'input[name=name]').inputValue()).toBe(name);
    expect(await inside(page, '.printed b').count()).toBe(0);
    expect(await asked(page)).toBe('Which figures?');
  });

  test('the manager takes a part back as goodwill, by name and without an amount', async () => {
    const page = await practising();
    const goodwill = page.locator('keyturn-counter').getByRole('button', { name: 'goodwill' });
    // There is nothing to be kind about before it is decided.
    expect(await goodwill.count()).toBe(0);
    await follow(page, isDecided(page));
    await goodwill.click();
    await typeSlowly(page, 'Mo');
    await press(page, 'Enter');
    await eventually(async () => {
      expect(await slipOn(page)).toContain('by Mo');
    });
    expect(await slipOn(page)).not.toContain('What is paid back');
    await press(page, '2');
    await inside(page, '.head-key').first().click();
    expect(await plain(inside(page, '.day-list'))).toContain('goodwill by Mo');
  });

  test('a second press in haste answers no second question, by key or by click', async () => {
    const page = await practising();
    await page.waitForTimeout(500);
    await page.keyboard.press('1');
    await eventually(async () => {
      expect(await asked(page)).not.toBe('Is this the part sold?');
    });
    await page.keyboard.press('2');
    await page.keyboard.press('0');
    await page.waitForTimeout(600);
    expect(await asked(page)).toBe('What is the complaint?');
    await inside(page, '.card .key[data-key]').first().dblclick();
    await page.waitForTimeout(600);
    expect(await asked(page)).toBe('Fitted, or taken apart?');
  });

  test('puts a battery aside on the charger with a slip that says since when, and what follows', async () => {
    const page = await practising();
    await page.evaluate(() => {
      window.print = () => {
        const paper = document
          .querySelector('keyturn-counter')
          ?.shadowRoot?.querySelector('.printed');
        document.title = paper?.textContent ?? 'nothing';
      };
    });
    await scan(page, 'W-09815');
    await eventually(async () => {
      expect(await inside(page, '.figures').count()).toBe(1);
    });
    await typeSlowly(page, '12.1');
    await page.keyboard.press('Enter', { delay: 60 });
    await typeSlowly(page, '20');
    await press(page, 'Enter');
    await press(page, '1');
    expect(await asked(page)).toContain('charger');
    await inside(page, '.card .key').filter({ hasText: 'Put aside' }).click();
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toMatch(/Put aside since \d\d:\d\d/u);
    });
    const paper = await page.title();
    expect(paper).toContain('Not decided yet');
    const day = new Intl.DateTimeFormat('en', { dateStyle: 'full', timeZone: 'Europe/Berlin' });
    expect(paper).toContain(day.format(new Date()));
    expect(paper).toMatch(/What follows\s*Charging it\s*Looked at again/u);
    // How it is done is no matter of the customer's.
    expect(paper).not.toMatch(/After an hour|No flame/u);
    const waiting = inside(page, '.others-list li').filter({ hasText: 'W-09815' });
    expect(await plain(waiting)).toMatch(/put aside since .* \d\d:\d\d/u);
    // Whoever goes on with it takes it up again.
    await waiting.locator('button').click();
    await press(page, '1');
    await inside(page, '.card .key').filter({ hasText: 'New return' }).click();
    await eventually(async () => {
      expect(await plain(inside(page, '.others-list'))).not.toContain('put aside');
    });
  });

  test('single keys can be switched off', async () => {
    const { page } = await counter();
    await inside(page, '.head-key').nth(3).click();
    await page
      .locator('keyturn-counter')
      .getByRole('button', { name: 'Single keys work everywhere' })
      .click();
    await page.keyboard.press('Escape');
    await page.keyboard.press('1', { delay: 60 });
    await page.waitForTimeout(200);
    expect(await asked(page)).toBe('What has come back?');
  });

  test.each(['light', 'dark'] as const)('meets WCAG 2.2 AA on every screen, %s', async (scheme) => {
    // A line that is being printed fades in, and has no contrast of its own until it stands.
    const page = await practising({ colorScheme: scheme, reducedMotion: 'reduce' });
    const check = async (): Promise<void> => {
      const found = await page.evaluate<readonly string[]>(
        `(async () => { ${axe}; return (await axe.run(document, { runOnly: ${JSON.stringify(wcag)} })).violations.map(({ id, nodes }) => id + ' ' + nodes.map(({ target }) => target).join(' ; ')) })()`,
      );
      expect(found).toEqual([]);
    };
    await check();
    await follow(page, asks(page, 'Which figures?'));
    await typeSlowly(page, '11');
    await check();
    await inside(page, '#figure-bench-supply').fill('');
    await follow(page, isDecided(page));
    await check();
    await press(page, '2');
    for (const index of [0, 1, 2, 3]) {
      await inside(page, '.head-key').nth(index).click();
      await check();
    }
  });

  test('runs from right to left in Arabic, and nothing is wider than 320 px', async () => {
    const page = await practising({ viewport: { width: 320, height: 640 } }, 'ar');
    expect(await inside(page, '.page').getAttribute('dir')).toBe('rtl');
    for (const index of [0, 1, 2, 3]) {
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
      await inside(page, '.head-key').nth(index).click();
    }
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('ar');
  });

  test('prints the slip and nothing else', async () => {
    const page = await practising();
    await follow(page, isDecided(page));
    await page.emulateMedia({ media: 'print' });
    expect(await inside(page, '.head').isVisible()).toBe(false);
    expect(await inside(page, '.card').isVisible()).toBe(false);
    expect(await inside(page, '.facts').isVisible()).toBe(false);
    const printed = inside(page, '.printed');
    await printed.waitFor();
    const paper = await plain(printed);
    expect(paper).toMatch(/Starter · Geared starter 1\.4 kW · ST-2140\s+Receipt\s+W-10482/u);
    expect(paper).toContain('Consumer law where you live');
    expect(await printed.locator('.to-sign').isVisible()).toBe(true);
    expect(await printed.locator('.code svg').isVisible()).toBe(true);
  });
});
