/**
 * The figures of the bench at the counter: typed, marked on their scales, refused and taken.
 */
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import {
  answer,
  asks,
  batteryLookedAt,
  batteryOnTheBench,
  daysAgo,
  eventually,
  follow,
  say,
  slipOn,
} from './support/counter-hands.ts';
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
import { againstStarter, codeOf } from './support/vehicle-code.ts';

atCounter('the figures of the counter', ({ counter, practising }) => {
  test('marks a figure on its scale while it is typed, and says why one is none', async () => {
    const page = await practising();
    await follow(page, asks(page, 'Which figures?'));
    const means = inside(page, '#figure-bench-supply-means');
    expect(await means.innerText()).toBe('');
    expect(await inside(page, '.bench-ruler .mark').count()).toBe(0);
    await typeSlowly(page, '9.8');
    await eventually(async () => {
      expect(await means.innerText()).toContain('The bench sags');
    });
    const at = await inside(page, '.bench-ruler .mark').first().getAttribute('d');
    await typeSlowly(page, '0');
    await page.keyboard.press('Control+A');
    await typeSlowly(page, '118');
    await eventually(async () => {
      expect(await inside(page, '.means.wrong').innerText()).toContain('118');
    });
    // What was refused is typed over.
    await page.keyboard.press('Enter', { delay: 60 });
    await typeSlowly(page, '11.8');
    await eventually(async () => {
      expect(await inside(page, '.bench-ruler .mark').first().getAttribute('d')).not.toBe(at);
    });
  });

  test('a figure that is none stays in its field, and is typed over', async () => {
    const page = await practising();
    await follow(page, asks(page, 'Which figures?'));
    await inside(page, '#figure-bench-supply').fill('abc');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await inside(page, '.means.wrong').innerText()).toContain('abc');
    });
    await page.waitForTimeout(settled);
    await typeSlowly(page, '11.7');
    await page.keyboard.press('Enter', { delay: 60 });
    await page.waitForTimeout(200);
    await typeSlowly(page, '62');
    expect(await inside(page, '#figure-bench-supply').inputValue()).toBe('11.7');
    expect(await inside(page, '#figure-no-load-current').inputValue()).toBe('62');
  });

  test('a figure that is left out is gone past, and no other lands in its field', async () => {
    const page = await practising({ viewport: { width: 1540, height: 900 } });
    await follow(page, asks(page, 'Which figures?'));
    // However much stands above, what takes them and what else can be done is in view.
    const keys = inside(page, '.card > .keys.row').last();
    const box = await keys.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? Number.NaN)).toBeLessThanOrEqual(900);
    expect(await plain(keys)).toMatch(/^Del\s+I don’t know\s+\/\s+I can’t/u);
    await typeSlowly(page, '11.7');
    for (let times = 0; times < 2; times += 1) {
      await page.keyboard.press('Enter', { delay: 60 });
      await page.waitForTimeout(settled);
    }
    const fields = inside(page, '.figure input');
    expect(await asked(page)).toBe('Which figures?');
    expect(await fields.nth(0).inputValue()).toBe('11.7');
    await typeSlowly(page, '4100');
    expect(await fields.nth(1).inputValue()).toBe('');
    expect(await fields.nth(2).inputValue()).toBe('4100');
    // Of the one in hand nobody knows it.
    await fields.nth(1).focus();
    await page.waitForTimeout(settled);
    await page.keyboard.press('Delete', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('Current running free: not known');
    });
  });

  test('takes what each cell shows, though no hydrometer was ticked, and letters for no figure', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await answer(page, 'receipt shown', 'it is the part we sold');
    await typeSlowly(page, daysAgo(200).slice(0, 10));
    await press(page, 'Enter');
    await answer(page, 'goes flat', 'fitted', 'flooded, with caps');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Which figures?');
    const volts = inside(page, '#figure-received-volts');
    for (const typed of ['12,4x', 'x12.4', '12.4 kg']) {
      await volts.fill(typed);
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        expect(await plain(inside(page, '.means.wrong'))).toBe(
          `“${typed}” is no figure, or has a unit that is not known here. Possible: a figure (V).`,
        );
      });
      await page.waitForTimeout(settled);
    }
    await volts.fill('11.1');
    await inside(page, '#figure-label-rating').fill('1.260 1.255 1.260 1.110 1.260 1.255');
    await page.waitForTimeout(settled);
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('0.150');
    });
    // Of several figures the one in hand can't be told; the others stay.
    await inside(page, '#figure-case-temperature').focus();
    await page.waitForTimeout(settled);
    await page.keyboard.press('/', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('Temperature: not known');
    });
    expect(await volts.inputValue()).toBe('11.1');
  });

  test('without a thermometer asks whether a battery has stood indoors, and charges none that came out of the frost', async () => {
    const { page } = await counter();
    const toTheRoom = async (): Promise<void> => {
      await press(page, '2');
      await answer(page, 'receipt shown', 'it is the part we sold', 'within the warranty');
      await answer(page, 'goes flat', 'fitted', 'flooded, sealed');
      await press(page, 'Enter');
    };
    await toTheRoom();
    await press(
      page,
      await numberOf(page, ['a voltmeter']),
      await numberOf(page, ['a charger']),
      'Enter',
    );
    expect(await inside(page, '.figure').count()).toBe(1);
    await typeSlowly(page, '11.9');
    await press(page, 'Enter');
    expect(await asked(page)).toBe('Has it stood indoors, free of frost, for 8 hours?');
    await press(page, await numberOf(page, ['no, it came in out of the frost']));
    // Under the decision it is not asked again: one key stands there for when it has.
    expect(await plain(inside(page, '#asked'))).toMatch(
      /^Here since .+, \d\d:\d\d\. The 8 hours are over on .+, \d\d:\d\d\.$/u,
    );
    expect(await inside(page, '.card .key[data-key]').allInnerTexts()).toHaveLength(1);
    expect(await plain(inside(page, '.standing'))).toContain('Leave it in this room for 8 hours');
    expect(await plain(inside(page, '.card'))).not.toContain('On the charger');
    // Among the parts that lie here it says from when on it can be gone on with.
    await press(page, '+');
    expect(await plain(inside(page, '.others-list li .more').first())).toMatch(
      /^since \d\d:\d\d\nready .+, \d\d:\d\d at the earliest$/u,
    );
    // Before that by this clock it is taken all the same, and said.
    await press(page, 'F8');
    await answer(page, 'it has stood here for 8 hours');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toMatch(
        /Taken, though by this clock the 8 hours are over only on .+ correct “Temperature”\./u,
      );
    });
    // Where nobody knows, it is looked at for ice before it is charged.
    await press(page, '+');
    await toTheRoom();
    await typeSlowly(page, '11.9');
    await press(page, 'Enter');
    await answer(page, 'no, or nobody knows');
    expect(await asked(page)).toBe('All safe, as warned?');
    expect(await plain(inside(page, '.signs'))).toContain('A frozen one can burst on the charger');
    // Once it has stood there nothing more is asked of its temperature.
    await press(page, '+');
    await toTheRoom();
    await typeSlowly(page, '11.9');
    await press(page, 'Enter');
    await answer(page, 'yes, 8 hours or more');
    expect(await plain(inside(page, '.signs'))).not.toContain('frozen');
  });

  test('a battery with caps that is low after its charge has its cells read, where a hydrometer is at hand', async () => {
    const page = await practising();
    const chargedLow = async (): Promise<void> => {
      await press(page, '+');
      await batteryLookedAt(page);
      await press(
        page,
        ...Array.from('11.9'),
        'Enter',
        ...Array.from('540 EN'),
        'Enter',
        '2',
        '0',
        'Enter',
      );
      await press(page, '1');
      await answer(page, 'takes the charge');
      await press(page, ...Array.from('12.3'), 'Enter');
      expect(await asked(page)).toBe('A hydrometer at hand?');
    };
    await chargedLow();
    await answer(page, 'yes: its six cells');
    expect(await asked(page)).toBe('Density of its six cells?');
    expect(await plain(inside(page, '.signs'))).toContain('Acid burns');
    await press(page, ...Array.from('1.26 1.26 1.25 1.26 1.12 1.26'), 'Enter');
    expect(await slipOn(page)).toContain('We take it back');
    // Without one it is charged once more, and not asked again.
    await chargedLow();
    await page.waitForTimeout(settled);
    await page.keyboard.press('/', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.standing'))).toContain('Charge it fully once more');
    });
    expect(await asked(page)).toBe('Its voltage after this charge and rest?');
  });

  test('that a battery can burst stands above all that follows, as long as it lies here', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await say(page, 'matches, receipt shown, in warranty, goes flat, was fitted, bulging');
    await press(page, '1');
    const warned = async (): Promise<void> => {
      expect(await plain(inside(page, '.signs').first())).toContain('This battery can burst.');
    };
    const into = inside(page, '.card .key.take[data-key="2"]');
    for (let turns = 0; (await into.count()) === 0; turns += 1) {
      expect(turns).toBeLessThan(12);
      await warned();
      await press(page, (await inside(page, '.usual').count()) > 0 ? 'Enter' : '1');
    }
    await warned();
    // What must not be done with it is said where it is decided, and not on paper alone.
    expect(await plain(inside(page, '.card .to-do'))).toContain('hazardous waste');
    await press(page, '+');
    expect(await inside(page, '.signs').count()).toBe(0);
    // The other parts that lie here come round before it does.
    const isIt = async (): Promise<boolean> =>
      (await plain(inside(page, '.found'))).includes('bulging');
    for (let turns = 0; turns === 0 || !(await isIt()); turns += 1) {
      expect(turns).toBeLessThan(5);
      await press(page, 'F8');
    }
    await warned();
  });

  test('a caution stands above what it is for, and is confirmed before that is asked', async () => {
    const page = await practising({ viewport: { width: 1280, height: 720 } });
    await follow(page, asks(page, 'All true?'));
    // Whatever one look tells is taken without scrolling.
    const take = inside(page, '.usual .key.take');
    const bottom = async (): Promise<number> => {
      const box = await take.boundingBox();
      return (box?.y ?? 0) + (box?.height ?? Number.NaN);
    };
    expect(await bottom()).toBeLessThan(720);
    await press(page, 'Enter');
    expect(await asked(page)).toBe('All safe, as warned?');
    const caution = await plain(inside(page, '.signs'));
    await press(page, '1');
    expect(await asked(page)).toBe('All true?');
    expect(await plain(inside(page, '.signs'))).toBe(caution);
    expect(await bottom()).toBeLessThan(720);
  });

  test('remembers what there is to test with, and changes it by one key', async () => {
    const { page } = await counter();
    const toTheBench = async (): Promise<void> => {
      await press(page, '1');
      await answer(page, 'receipt shown', 'it is the part we sold');
      await answer(page, 'within the warranty');
      await answer(page, 'turns slowly', 'fitted');
      await press(page, 'Enter');
    };
    await toTheBench();
    expect(await asked(page)).toBe('What is there to test it with?');
    await press(page, '1', 'Enter');
    await press(page, '+');
    await toTheBench();
    expect(await asked(page)).toBe('All true?');
    const picked = inside(page, '.card .key.pick[aria-pressed=true] .label');
    await inside(page, '.key.kit').click();
    expect(await picked.allInnerTexts()).toEqual(['a starter bench']);
    await press(page, '2', 'Enter');
    await press(page, '+');
    await toTheBench();
    await press(page, 'F7');
    expect(await picked.allInnerTexts()).toEqual(['a starter bench', 'a speed meter']);
  });

  test('a scanner that types into a figure’s field leaves the figure as it was', async () => {
    const page = await practising();
    await follow(page, asks(page, 'Which figures?'));
    await typeSlowly(page, '11.6');
    await page.waitForTimeout(100);
    await scan(page, codeOf(againstStarter, daysAgo(2)));
    await eventually(async () => {
      expect(await asked(page)).toBe('Is this the customer’s vehicle?');
    });
    await press(page, '2');
    expect(await inside(page, '#figure-bench-supply').inputValue()).toBe('11.6');
  });

  test('a figure or a day that is typed ahead is kept whole', async () => {
    const { page } = await counter();
    const inOneGo = async (...keys: readonly string[]): Promise<void> => {
      for (const key of keys) {
        await page.keyboard.press(key);
        await page.waitForTimeout(75);
      }
    };
    await batteryLookedAt(page);
    await page.waitForTimeout(settled);
    await inOneGo('1', '3', '6', 'Enter', '1', '2', '.', '6');
    await eventually(async () => {
      expect(await asked(page)).toBe('Which figures?');
      expect(await inside(page, '.figures input').first().inputValue()).toBe('12.6');
    });
    await page.keyboard.press('Escape');
    await press(page, '+');
    await inside(page, '.head-key').nth(2).click();
    const policy = {
      shop: 'Corner',
      currency: 'EUR',
      'return-window': { days: 14 },
      warranty: { starter: { months: 24 } },
    };
    await inside(page, '.report input[type=file]').setInputFiles({
      name: 'shop.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...policy })),
    });
    await eventually(async () => {
      expect(await plain(inside(page, '.report'))).toContain('The terms of Corner are in use.');
    });
    await press(page, 'Escape');
    await press(page, '1');
    await answer(page, 'receipt shown');
    await page.waitForTimeout(settled);
    await inOneGo('1', ...Array.from('2025-11-05'));
    await eventually(async () => {
      expect(await inside(page, '.day-entry input').inputValue()).toBe('2025-11-05');
    });
    expect(await asked(page)).toBe('When was it sold?');
  });

  test('says which keys came too soon, and takes none of those that followed at once', async () => {
    const page = await practising();
    await page.waitForTimeout(settled);
    for (const key of ['1', '1', '2', '0', '2', '5', '/']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(150);
    }
    const notes = await plain(inside(page, '.notes'));
    expect(notes).toContain('Not taken: 1 2 0 2 5 /.');
    expect(await asked(page)).toBe('What is the complaint?');
    await page.waitForTimeout(1000);
    await press(page, '2');
    expect(await plain(inside(page, '.notes'))).not.toContain('Not taken');
  });

  test('asks back amperes of the label that are its ampere-hours, and a load that is not half of it', async () => {
    const { page } = await counter();
    await batteryOnTheBench(page);
    const rating = inside(page, '.figures [name=label-rating]');
    await rating.fill('64');
    await eventually(async () => {
      expect(await plain(inside(page, '.means.wrong'))).toContain('64 A');
    });
    await rating.fill('640 EN');
    await press(page, 'Enter');
    expect(await plain(inside(page, '.found'))).toMatch(/Standard.*EN/su);
    await answer(page, 'Yes');
    expect(await asked(page)).toContain('15 seconds under load');
    await typeSlowly(page, '9.9 V at 270 A');
    await eventually(async () => {
      expect(await plain(inside(page, '.means.wrong'))).toMatch(/270 A.*640 A.*320 A/u);
    });
    await inside(page, '.figures input').fill('9.9 V at 315 A');
    await press(page, 'Enter');
    expect(await plain(inside(page, '.found'))).toMatch(/Load test, after 15 seconds\s+9\.9 V/u);
  });

  test('what is to be minded stands before the figures and the keys, and a message moves nothing', async () => {
    const page = await practising();
    const top = async (selector: string): Promise<number> =>
      (await inside(page, selector).last().boundingBox())?.y ?? Number.NaN;
    // How it is done is shown by a key, and stays until it is hidden by the same.
    expect(await inside(page, '.how-to').count()).toBe(0);
    await page.keyboard.press('?', { delay: 60 });
    await inside(page, '.how-to').waitFor();
    expect(await top('.card .how-to')).toBeLessThan(await top('.card .key[data-key="1"]'));
    const before = await top('#asked');
    await inside(page, 'input[name=line]').fill('qwxz');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('qwxz');
    });
    expect(await top('#asked')).toBe(before);
    await page.keyboard.press('Escape');
    await follow(page, asks(page, 'Which figures?'));
    expect(await top('.figure .how-to')).toBeLessThan(await top('.figure .display'));
    const button = await top('.figures .key.take');
    await typeSlowly(page, '11.7');
    await eventually(async () => {
      expect(await inside(page, '#figure-bench-supply-means').innerText()).not.toBe('');
    });
    expect(await top('.figures .key.take')).toBe(button);
  });

  test.each([
    [1440, 900],
    [1280, 560],
  ])(
    'at %i by %i the key that takes the figures is in sight, and no message covers it',
    async (width, height) => {
      const page = await practising({ viewport: { width, height } });
      await follow(page, asks(page, 'Which figures?'));
      await typeSlowly(page, '11.7');
      const box = async (selector: string): Promise<{ top: number; bottom: number }> => {
        const { y = 0, height: tall = Number.NaN } =
          (await inside(page, selector).last().boundingBox()) ?? {};
        return { top: y, bottom: y + tall };
      };
      expect((await box('.figures .key.take')).bottom).toBeLessThanOrEqual(height);
      await inside(page, 'input[name=line]').fill('qwxz');
      await page.keyboard.press('Enter', { delay: 60 });
      await eventually(async () => {
        expect(await plain(inside(page, '.notes'))).toContain('qwxz');
      });
      const [key, message] = [await box('.figures .key.take'), await box('.notes')];
      expect(message.bottom).toBeLessThanOrEqual(height);
      expect(key.bottom <= message.top || key.top >= message.bottom).toBe(true);
    },
  );

  test('a figure on its ruler beside the card has bounds written whole, and no band but its own is tinted', async () => {
    const { page } = await counter();
    await press(page, '2');
    await say(page, 'voltage as received 12.1 V, difference between the cells 0.035');
    expect(await asked(page)).toBe('Is that what you found?');
    await press(page, '1');
    const rulers = await inside(page, '.ledger .ruler').allTextContents();
    expect(rulers.join(' ')).toContain('0.025');
    const fills = await inside(page, '.ledger .band:not(.here)').evaluateAll((bands) => [
      ...new Set(bands.map((band) => getComputedStyle(band).fill)),
    ]);
    expect(fills).toHaveLength(1);
  });

  test('names the good band of a scale over it, on a narrow page too', async () => {
    const page = await practising({ viewport: { width: 390, height: 844 } }, 'de');
    await follow(page, async () => (await inside(page, '.figures').count()) > 0);
    const rulers = await inside(page, '.bench-ruler').evaluateAll((all) =>
      all.map((ruler) => ({
        good: ruler.querySelector('.band.good')?.getBoundingClientRect().toJSON() as DOMRect,
        names: [...ruler.querySelectorAll('.label')].map(
          (name) => name.getBoundingClientRect().toJSON() as DOMRect,
        ),
      })),
    );
    expect(rulers).toHaveLength(3);
    for (const { good, names } of rulers) {
      const [name] = names;
      if (name === undefined) throw new Error('a scale names no band');
      expect(names).toHaveLength(1);
      expect(name.left).toBeGreaterThanOrEqual(0);
      expect(name.right).toBeLessThanOrEqual(390);
      expect(name.left).toBeLessThan(good.right);
      expect(name.right).toBeGreaterThan(good.left);
      expect(name.bottom).toBeLessThanOrEqual(good.top);
    }
  });

  test('a sentence that is typed into the field of a figure is heard, and none of it is lost', async () => {
    const { page } = await counter();
    await batteryLookedAt(page);
    await press(page, '1', '3', '6', 'Enter');
    await page.waitForTimeout(settled);
    const volts = inside(page, '#figure-received-volts');
    await volts.fill('12.6 V, posts sound, and gibberish');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await asked(page)).toBe('Is that what you found?');
    });
    expect(await plain(inside(page, '.told'))).toMatch(/Voltage as received:\s+12\.6 V/u);
    expect(await plain(inside(page, '.not-told'))).toContain('gibberish');
    await press(page, '2');
    expect(await asked(page)).toBe('Which figures?');
    await volts.fill('lorem ipsum dolor sit amet consectetur elit');
    await page.keyboard.press('Enter');
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('“lorem ipsum dolor sit amet');
    });
    expect(await volts.inputValue()).toBe('');
  });
});
