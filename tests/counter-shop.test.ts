/**
 * The terms of a shop at the counter: its file, and the amounts that they give.
 */
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import { answer, eventually, say, slipOn } from './support/counter-hands.ts';
import { asked, inside, plain, press, settled, typeSlowly } from './support/counter-page.ts';

atCounter('the shop’s terms at the counter', ({ counter, practising }) => {
  test('shows no amount that the terms do not give, and asks for none without terms', async () => {
    const { page } = await counter();
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await answer(page, 'within the warranty');
    await answer(page, 'engine does not turn, or only clicks', 'fitted');
    await press(page, '7');
    await answer(page, 'free both ways');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('We take it back');
    expect(await inside(page, 'input[name=price]').count()).toBe(0);
    const slip = await slipOn(page);
    expect(slip).toContain('No amount');
    expect(slip).not.toMatch(/[€$]|\d\.\d\d/u);
  });

  test('takes a shop’s file, and names every gap of one that it cannot take', async () => {
    const { page } = await counter();
    await inside(page, '.head-key').nth(2).click();
    const choose = (data: unknown) =>
      inside(page, '.report input[type=file]').setInputFiles({
        name: 'shop.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(data)),
      });
    const terms = {
      shop: 'Quill & Harrow <i>Parts</i>',
      currency: 'PLN',
      'return-window': { days: 14 },
      warranty: {
        battery: {
          months: 24,
          'pro-rata': [
            { from: 0, to: 6, percent: 100 },
            { from: 8, to: 24, percent: 50 },
          ],
        },
      },
    };
    await choose(terms);
    await eventually(async () => {
      const said = await plain(inside(page, '.report [role=alert]'));
      expect(said).toContain('policy.warranty.battery.pro-rata.1.from');
      expect(said).toContain('6, where the step before ends: no gap');
    });
    const [whole, half] = [
      { from: 0, to: 6, percent: 100 },
      { from: 6, to: 24, percent: 50 },
    ];
    await choose({ ...terms, warranty: { battery: { months: 24, 'pro-rata': [whole, half] } } });
    await eventually(async () => {
      const said = await plain(inside(page, '.report'));
      expect(said).toContain('The terms of Quill & Harrow <i>Parts</i> are in use.');
    });
    expect(await inside(page, 'i').count()).toBe(0);
  });

  test('says which thing an amount lacks', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await say(
      page,
      'matches, receipt shown, 2026-10-01, grinds, was fitted, studs fine, no cracks',
    );
    await press(page, '1');
    await say(page, 'teeth fine, dry, it is the right one, no marks, slips both ways');
    await press(page, '1');
    expect(await asked(page)).toBe('We take it back');
    expect(await slipOn(page)).toContain('Missing: the price paid');
    // It is asked for in the card alone, and refused there.
    expect(await inside(page, 'input[name=price]').count()).toBe(1);
    await page.waitForTimeout(settled);
    await typeSlowly(page, '100x');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.card .wrong'))).toContain('“100x” is no amount in EUR.');
    });
    await typeSlowly(page, '100');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await slipOn(page)).toContain('€100.00');
    });
    const open = 'Deposit for the old unit: not known whether it is still held';
    expect(await plain(inside(page, '.card'))).toContain(open);
    expect(await slipOn(page)).toContain(open);
    await inside(page, '.facts select').first().selectOption('owed');
    await eventually(async () => {
      expect(await slipOn(page)).toContain('€145.00 in all');
    });
    expect(await plain(inside(page, '.card'))).not.toContain('not known whether');
  });
});
