/**
 * The line of the counter: what a clerk says in words, and what is said back.
 */
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import { answer, asks, eventually, follow, say } from './support/counter-hands.ts';
import { asked, inside, plain, press, settled, typeSlowly } from './support/counter-page.ts';

atCounter('the clerk’s own words', ({ practising }) => {
  test('a battery that boils is a complaint, and words that answer nothing are not passed over by one key', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await press(page, '2', 'Enter');
    expect(await asked(page)).toBe('What is the complaint?');
    await inside(page, 'input[name=line]').fill('qwxz blorb');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('qwxz');
    });
    await page.waitForTimeout(settled);
    await page.keyboard.press('0', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('Your words were not taken.');
    });
    expect(await asked(page)).toBe('What is the complaint?');
    await say(page, 'it boils');
    expect(await plain(inside(page, '.found'))).toContain('What the customer says: leaks.');
    // Said a second time the key counts.
    await press(page, '-');
    await inside(page, 'input[name=line]').fill('qwxz');
    await inside(page, '#asked').focus();
    await page.waitForTimeout(settled);
    await page.keyboard.press('0', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('Your words were not taken.');
    });
    await page.keyboard.press('0', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('What the customer says: not known.');
    });
  });

  test('says an error until the clerk goes on, and no longer', async () => {
    const page = await practising();
    const notes = inside(page, '.notes');
    const price = inside(page, 'input[name=price]');
    await price.fill('12x');
    await price.press('Tab');
    // What is wrong with a price stands at its field.
    const wrong = inside(page, '.price .wrong');
    await eventually(async () => {
      expect(await plain(wrong)).toBe(
        '“12x” is no amount in EUR. Expected: a figure such as 129.00.',
      );
    });
    expect(await notes.locator('p').count()).toBe(0);
    await inside(page, 'input[name=number]').fill('ST-9');
    expect(await wrong.count()).toBe(0);
    await inside(page, 'input[name=line]').fill('qwxz');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(notes)).toContain('qwxz');
    });
    // What looks like a receipt or a label is not held against the answers of a question.
    await inside(page, 'input[name=line]').fill('XYZ-9999');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(notes)).toContain('Nothing here has “XYZ-9999”');
    });
    expect(await plain(notes)).not.toContain('qwxz');
    await page.keyboard.press('Escape');
    await press(page, '!');
    expect(await notes.locator('p').count()).toBe(0);
  });

  test('leaves one thing out of a sentence that was not meant so', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await say(page, 'only clicks, studs fine');
    await inside(page, '.told .fix').first().click();
    expect(await inside(page, '.told li').count()).toBe(1);
    await press(page, '1');
    expect(await inside(page, '.found .line').count()).toBe(1);
  });

  test('no sign of a code answers a question, however slowly the scanner types', async () => {
    const page = await practising();
    await follow(page, asks(page, 'All true?'));
    const found = await inside(page, '.ledger .line').count();
    for (const key of 'W-99121') await page.keyboard.press(key, { delay: 120 });
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('W-99121');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('W-99121');
    });
    expect(await asked(page)).toBe('All true?');
    expect(await inside(page, '.ledger .line').count()).toBe(found);
    await typeSlowly(page, 'W-10377');
    await press(page, 'Enter');
    expect(await inside(page, '.field input').nth(2).inputValue()).toBe('W-10377');
  });

  test('a sentence begins wherever it is typed, and a command pressed in the line is none of it', async () => {
    const page = await practising();
    await page.keyboard.press('Escape');
    await page.keyboard.press('*');
    await page.keyboard.press('*');
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('');
    await page.keyboard.press('Escape');
    await typeSlowly(page, 'the part we sold');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('What is the complaint?');
  });

  test('shows all that one sentence tells before it is taken, and says what was not understood', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await say(page, 'bought in March, only clicks, studs fine, box is opened');
    expect(await asked(page)).toBe('Is that what you found?');
    const told = await plain(inside(page, '.told'));
    expect(told).toMatch(/What the customer says:\s+engine does not turn/u);
    expect(told).toMatch(/Studs:\s+sound/u);
    // March alone is no day, and whose box was opened nobody can tell.
    expect(told).not.toMatch(/sale|opened/iu);
    const left = await plain(inside(page, '.not-told'));
    expect(left).toMatch(/“bought in March” .*can’t be read as a day/u);
    expect(left).toContain('“box is opened”');
    expect(await plain(inside(page, '.found'))).not.toContain('Studs');
    await press(page, '1');
    expect(await plain(inside(page, '.found'))).toContain('Studs: sound');
    expect(await plain(inside(page, '.notes'))).toContain('“bought in March”');
  });

  test('takes nothing of a sentence that was not meant so', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await say(page, 'only clicks, studs fine');
    await press(page, '2');
    expect(await plain(inside(page, '.found'))).toContain('Nothing yet');
    expect(await asked(page)).toBe('Any proof of sale?');
  });
});
