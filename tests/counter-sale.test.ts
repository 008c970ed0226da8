/**
 * Proof, receipt and day of the sale at the counter, and what came back before.
 */
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import { answer, daysAgo, eventually, follow, isDecided, slipOn } from './support/counter-hands.ts';
import {
  asked,
  inside,
  numberOf,
  plain,
  press,
  scan,
  settled,
  typeSlowly,
} from './support/counter-page.ts';

/**
 * A month, with its year, of which a part lies in one term of the invented shop and a part in another:
 * its window is of 30 days, its warranty for a starter of 24 months.
 */
function monthOfTwoTerms(now: Date): string {
  const first = new Date(now.getTime() - 30 * 86_400_000);
  const at =
    first.getUTCDate() > 1
      ? first
      : new Date(Date.UTC(now.getUTCFullYear() - 2, now.getUTCMonth(), 15));
  return at.toLocaleDateString('en', { month: 'long', year: 'numeric', timeZone: 'UTC' });
}

atCounter('the sale at the counter', ({ counter, practising }) => {
  test('without terms no day is asked for, only what it comes to, also to put it right', async () => {
    const { page } = await counter();
    await press(page, '1');
    const next = await plain(inside(page, '.coming'));
    expect(next).toMatch(/Asked next.*the part sold\?.*When was it sold\?/su);
    // What comes next only lies there to be read.
    expect(await inside(page, '.coming button').count()).toBe(0);
    await answer(page, 'receipt shown', 'it is the part we sold');
    expect(await asked(page)).toBe('When was it sold?');
    expect(await inside(page, '.day-entry').count()).toBe(0);
    await answer(page, 'within the warranty');
    expect(await plain(inside(page, '.taken'))).toContain('within the warranty');
    await press(page, '-');
    expect(await plain(inside(page, '.until'))).toContain('within the warranty');
    await answer(page, 'out of time');
    expect(await asked(page)).toBe('We can’t take it back');
  });

  test('asks for the receipt with its proof, and puts it on the slip', async () => {
    const { page } = await counter();
    await press(page, '1');
    const field = inside(page, '[name=receipt-number]');
    const notes = (): Promise<string> => plain(inside(page, '.notes'));
    await page.waitForTimeout(settled);
    for (const [typed, said] of [
      ['', 'Expected: the number of the receipt, or the number of an answer.'],
      ['lost', '“lost” is no receipt number. Expected: one such as 40881'],
      ['7', '“7” is no receipt number.'],
    ] as const) {
      await typeSlowly(page, typed);
      await page.keyboard.press('Enter');
      await eventually(async () => {
        expect(await notes()).toContain(said);
      });
      expect(await field.inputValue()).toBe(typed);
    }
    // What was refused is typed over.
    await typeSlowly(page, '40881');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Is this the part sold?');
    expect(await inside(page, 'input[name=receipt]').inputValue()).toBe('40881');
    expect(await plain(inside(page, '.found'))).toContain('Proof of sale: receipt shown.');
    await answer(page, 'another part');
    expect(await slipOn(page)).toContain('40881');
    // Any other answer is picked by its number in the same field.
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'no proof');
    expect(await plain(inside(page, '.found'))).toContain('Proof of sale: no proof.');
  });

  test('asks for the price with the receipt, and says that the shop’s list has no such receipt', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    expect(await inside(page, 'input[name=price]').count()).toBe(1);
    await page.waitForTimeout(settled);
    // A single digit is marked as the answer that it picks.
    await typeSlowly(page, '3');
    const picked = inside(page, '.card .key[aria-pressed=true]');
    expect(await plain(picked)).toContain('no proof');
    await page.keyboard.press('Backspace');
    expect(await picked.count()).toBe(0);
    await typeSlowly(page, '40881');
    // Where a price is asked for, Enter goes on to it.
    await page.keyboard.press('Enter', { delay: 60 });
    await typeSlowly(page, '12..5');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.day-entry .wrong'))).toContain('“12..5” is no amount');
    });
    expect(await asked(page)).toBe('Any proof of sale?');
    await typeSlowly(page, '125');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Is this the part sold?');
    expect(await inside(page, 'input[name=price]').inputValue()).toBe('125.00');
    await eventually(async () => {
      const said = '40881 is not in this shop’s list';
      expect(await plain(inside(page, '.facts'))).toContain(said);
      // Beside its field, and nowhere else.
      expect(await plain(inside(page, '.notes'))).not.toContain(said);
    });
    // One that it has is fetched without a word.
    await inside(page, 'input[name=receipt]').fill('W-10377');
    await inside(page, 'input[name=receipt]').press('Tab');
    await eventually(async () => {
      expect(await plain(inside(page, '.facts'))).not.toContain('not in this shop’s list');
    });
  });

  test('puts the number of a receipt right where its proof is put right', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await typeSlowly(page, '40881');
    await page.keyboard.press('Enter', { delay: 60 });
    await typeSlowly(page, '125');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Is this the battery sold?');
    await press(page, '-');
    const number = inside(page, 'input[name=receipt-number]');
    expect(await number.inputValue()).toBe('40881');
    await number.fill('40882');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Is this the battery sold?');
    expect(await inside(page, 'input[name=receipt]').inputValue()).toBe('40882');
  });

  test('keeps a receipt that is given before the part, and asks for it once', async () => {
    const { page } = await counter();
    await inside(page, 'input[name=line]').fill('R-2291');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('kept as the receipt’s number');
    });
    await press(page, '1');
    expect(await inside(page, '[name=receipt-number]').inputValue()).toBe('R-2291');
    await press(page, 'Enter');
    expect(await inside(page, 'input[name=receipt]').inputValue()).toBe('R-2291');
    // The next part has a receipt of its own.
    await press(page, '+');
    await press(page, '2');
    expect(await inside(page, '[name=receipt-number]').inputValue()).toBe('');
  });

  test('a receipt typed before the part goes into the line, whatever digits it begins with', async () => {
    const page = await practising();
    await press(page, '+');
    const line = inside(page, 'input[name=line]');
    await page.waitForTimeout(settled);
    await typeSlowly(page, '14093');
    await eventually(async () => {
      expect(await line.inputValue()).toBe('14093');
    });
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('“14093” is kept');
    });
    await press(page, '2');
    expect(await inside(page, '[name=receipt-number]').inputValue()).toBe('14093');
  });

  test('a receipt that begins with no answer may be typed slowly before the part; a digit that is one answers at once', async () => {
    const page = await practising();
    await press(page, '+');
    const line = inside(page, 'input[name=line]');
    await page.waitForTimeout(settled);
    for (const digit of '40881') {
      await page.keyboard.press(digit, { delay: 60 });
      await page.waitForTimeout(600);
    }
    expect(await line.inputValue()).toBe('40881');
    await line.fill('');
    await page.keyboard.press('Escape');
    await press(page, '2');
    expect(await asked(page)).toBe('Any proof of sale?');
    expect(await line.inputValue()).toBe('');
    // What a quick clerk types next is the number of the receipt.
    await typeSlowly(page, '20882');
    expect(await inside(page, '[name=receipt-number]').inputValue()).toBe('20882');
  });

  test('the price of a receipt that the shop knows stands in its field, and what is typed from the paper goes there', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await page.waitForTimeout(settled);
    await typeSlowly(page, 'W-09702');
    await page.keyboard.press('Enter', { delay: 60 });
    const price = inside(page, '.day-entry input[name=price]');
    expect(await price.inputValue()).toBe('119.90');
    await typeSlowly(page, '110');
    expect(await price.inputValue()).toBe('110');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Is this the battery sold?');
    expect(await inside(page, '.facts input[name=price]').inputValue()).toBe('110.00');
  });

  test('where the month of a sale is all that is known, it is the term that all of it lies in', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    // The terms stand under the field before anything is typed.
    expect(await plain(inside(page, '.card'))).toContain('within the return window');
    await page.waitForTimeout(settled);
    await typeSlowly(page, 'last January');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('within the warranty');
    });
  });

  test('a month that lies in two terms is asked back with both', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await page.waitForTimeout(settled);
    await typeSlowly(page, monthOfTwoTerms(new Date()));
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('Possible: within the return window');
    });
    expect(await plain(inside(page, '.card'))).toContain('within the return window');
    const term = await numberOf(page, ['within the warranty']);
    await press(page, term, 'Enter');
    expect(await plain(inside(page, '.found'))).toContain('within the warranty');
  });

  test('what is no day is said so, with the terms to pick', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await page.waitForTimeout(settled);
    await typeSlowly(page, 'last winter');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('“last winter” can’t be read as a day');
    });
    expect(await plain(inside(page, '.card'))).toContain('within the return window');
  });

  test('an answer that is put right stays open until it is, or is left', async () => {
    const { page } = await counter();
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await press(page, '-');
    const tag = (): Promise<string> => plain(inside(page, '.card .tag'));
    const said: readonly (readonly [string, string])[] = [
      ['qwxz blorb', '“qwxz blorb” answers nothing here, and what was answered stays.'],
      ['XYZ-9999', '“XYZ-9999” answers nothing here'],
    ];
    for (const [line, why] of said) {
      await inside(page, 'input[name=line]').fill(line);
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        expect(await plain(inside(page, '.notes'))).toContain(why);
      });
      expect(await tag()).toBe('To be put right');
    }
    await page.keyboard.press('Escape');
    await eventually(async () => {
      expect(await asked(page)).toBe('When was it sold?');
    });
    expect(await inside(page, '.notes p').count()).toBe(0);
  });

  test('a day that the terms refuse leaves the correction open', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await typeSlowly(page, daysAgo(40).slice(0, 10));
    await press(page, 'Enter');
    await press(page, '-');
    await page.waitForTimeout(settled);
    await typeSlowly(page, daysAgo(-1).slice(0, 10));
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes .refused'))).toMatch(/to come|future|today/iu);
    });
    expect(await plain(inside(page, '.card .tag'))).toBe('To be put right');
    await typeSlowly(page, daysAgo(50).slice(0, 10));
    await press(page, 'Enter');
    expect(await asked(page)).toBe('What is the complaint?');
  });

  test('without terms says what a day comes to, and asks for none', async () => {
    const { page } = await counter();
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    for (const line of ['zzz qwx', '2026-03-12']) {
      await inside(page, 'input[name=line]').fill(line);
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        const said = await plain(inside(page, '.notes'));
        expect(said).toContain(line);
        expect(said).toContain(
          'Possible: within the return window, within the warranty, or out of time.',
        );
        expect(said).not.toContain('year, month and day');
      });
      expect(await asked(page)).toBe('When was it sold?');
    }
  });

  test('a day told in words is a day, whatever digit it begins with, and a season is none', async () => {
    const { page } = await counter();
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await page.waitForTimeout(settled);
    await typeSlowly(page, '2 years ago');
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('2 years ago');
    const notes = (): Promise<string> => plain(inside(page, '.notes'));
    for (const said of [
      / means for Date of sale\. Say which it is\./u,
      /^“last winter, maybe January” is not one/u,
    ]) {
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        expect(await notes()).toMatch(said);
      });
      expect(await asked(page)).toBe('When was it sold?');
      expect(await plain(inside(page, '.card'))).not.toContain('Yes, that is it');
      await inside(page, 'input[name=line]').fill('last winter, maybe January');
    }
    await page.keyboard.press('Escape');
    // A digit by itself is the answer of that number.
    await press(page, '2');
    expect(await plain(inside(page, '.taken'))).toContain('within the warranty');
  });

  test('a receipt that came with another part is told, with what and when, and taken', async () => {
    const page = await practising();
    const before = (): Promise<string> => plain(inside(page, '.before'));
    const battery = async (receipt: string): Promise<void> => {
      await press(page, '2');
      await page.waitForTimeout(settled);
      await typeSlowly(page, receipt);
      // Of the battery the list has no price: it is asked for, and passed.
      await page.keyboard.press('Enter', { delay: 60 });
      await press(page, 'Enter');
      expect(await asked(page)).toBe('Is this the battery sold?');
    };
    expect(await inside(page, '.before').count()).toBe(0);
    const receipt = await inside(page, 'input[name=receipt]').inputValue();
    const name = await inside(page, 'input[name=name]').inputValue();
    await press(page, '+');
    await battery(receipt);
    await eventually(async () => {
      expect(await before()).toMatch(
        new RegExp(
          `^Receipt ${receipt} lies here already \\(Starter · ${name}\\), since .+ both\\?$`,
          'u',
        ),
      );
    });
    // Once the starter is in the list that is told of it.
    await press(page, 'F8');
    await follow(page, isDecided(page));
    await press(page, '2');
    await battery(receipt);
    await eventually(async () => {
      expect(await before()).toMatch(
        new RegExp(
          `Receipt ${receipt} is in the list of .+ already \\(Starter · ${name}\\): `,
          'u',
        ),
      );
    });
  });

  test('a receipt that nobody knows takes no key of the answer that follows', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await page.keyboard.press('*', { delay: 60 });
    await typeSlowly(page, 'W-99999');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('W-99999');
    });
    await press(page, '1', 'Enter');
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('');
    expect(await asked(page)).toBe('Is this the part sold?');
  });

  test('refuses a part sold tomorrow, and says what was expected', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    expect(await asked(page)).toBe('When was it sold?');
    const tomorrow = daysAgo(-1).slice(0, 10);
    await inside(page, '.day-entry input').fill(tomorrow);
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes .refused'))).toMatch(/to come|future|today/iu);
    });
    expect(await asked(page)).toBe('When was it sold?');
    // What is no day at all is said without what was refused before.
    await inside(page, '.day-entry input').fill('12,4,5');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      const said = await plain(inside(page, '.notes'));
      expect(said).toContain('“12,4,5” can’t be read as a day');
      expect(said).not.toContain(tomorrow);
    });
    await inside(page, '.day-entry input').fill(daysAgo(40).slice(0, 10));
    await press(page, 'Enter');
    expect(await asked(page)).toBe('What is the complaint?');
  });

  test('takes the day of sale as it is typed, and asks back where it can be read two ways', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '1');
    await answer(page, 'receipt shown', 'it is the part we sold');
    // Nobody types a command into the field of a day, but for those that begin no day.
    expect(await inside(page, '.card .key.small kbd').allInnerTexts()).toEqual([
      'Del',
      '/',
      '?',
      '-',
      '!',
      '+',
      'F9',
    ]);
    const refusals: readonly (readonly [string, RegExp])[] = [
      ['124', /“124” can’t be read as a day.* 2026-01-31/u],
      ['0', /“0” can’t be read as a day/u],
      ['2025-02-30', /February|2025-02-30|calendar/u],
    ];
    for (const [typed, said] of refusals) {
      // What was refused is typed over.
      await typeSlowly(page, typed);
      expect(await inside(page, '.day-entry input').inputValue()).toBe(typed);
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        expect(await plain(inside(page, '.notes'))).toMatch(said);
      });
      expect(await asked(page)).toBe('When was it sold?');
    }
    await typeSlowly(page, '05/11/2025');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await inside(page, '.card .key[data-key]').count()).toBe(2);
    });
    // Either is picked by its number, which is no day.
    await press(page, await numberOf(page, ['November 5, 2025']), 'Enter');
    expect(await asked(page)).toBe('What is the complaint?');
    expect(await plain(inside(page, '.taken'))).toContain('November 5, 2025');
    expect(await plain(inside(page, '.found'))).toContain('November 5, 2025');
    expect(await inside(page, '.notes p').count()).toBe(0);
  });

  test('opens what lies on the counter by the number and the receipt written of it', async () => {
    const { page } = await counter();
    await press(page, '2');
    await inside(page, 'input[name=number]').fill('B-8100');
    await inside(page, 'input[name=receipt]').fill('K 77');
    const number = (): Promise<string> => inside(page, 'input[name=number]').inputValue();
    const enter = async (text: string): Promise<void> => {
      await inside(page, 'input[name=line]').fill(text);
      await press(page, 'Enter');
    };
    await page.keyboard.press('Escape');
    await press(page, '+');
    await enter('b8100');
    expect(await number()).toBe('B-8100');
    await page.keyboard.press('Escape');
    await press(page, '+');
    await press(page, '1');
    expect(await number()).toBe('');
    await scan(page, 'K-77');
    await eventually(async () => {
      expect(await number()).toBe('B-8100');
    });
    expect(await inside(page, '.notes p').count()).toBe(0);
  });

  test('says of a receipt that has come back before where that is listed', async () => {
    const page = await practising();
    await scan(page, 'W-10240');
    await eventually(async () => {
      expect(await plain(inside(page, '.before'))).toMatch(
        /W-10240 is in the list of .* taken back/u,
      );
    });
    await scan(page, 'W-10377');
    await eventually(async () => {
      expect(await inside(page, '.field input').nth(2).inputValue()).toBe('W-10377');
    });
    expect(await inside(page, '.notes p').count()).toBe(0);
    expect(await inside(page, '.before').count()).toBe(0);
  });

  test('says of a receipt that came back before for as long as it lies there, and prints its slip again', async () => {
    const page = await practising();
    await follow(page, isDecided(page));
    await press(page, '2');
    await scan(page, 'W-10482');
    const before = inside(page, '.before');
    await before.waitFor();
    expect(await plain(before)).toContain('W-10482 is in the list of');
    await answer(page, 'it is the part we sold');
    expect(await plain(before)).toContain('not taken back');
    await page.reload();
    await before.waitFor();
    await page.evaluate(() => {
      window.print = () => {
        const paper = document
          .querySelector('keyturn-counter')
          ?.shadowRoot?.querySelector('.printed');
        document.title = paper?.textContent ?? 'nothing';
      };
    });
    await inside(page, '.head-key').first().click();
    await inside(page, '.slip-again').filter({ hasText: 'W-10482' }).click();
    await eventually(async () => {
      expect(await page.title()).toContain('We can’t take it back');
    });
    await page.emulateMedia({ media: 'print' });
    expect(await inside(page, '.day-list .wide').isVisible()).toBe(false);
    expect(await inside(page, '.printed').isVisible()).toBe(true);
  });
});
