/**
 * Readings of the vehicle at the counter, where the customer brings no case of it: typed into fields
 * or told in the line, judged by the flow of vehicles, and taken as a case by its code is.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atCounter } from './support/counter-browser.ts';
import { answer, daysAgo, eventually, slipOn } from './support/counter-hands.ts';
import { asked, inside, plain, press, settled, typeSlowly } from './support/counter-page.ts';

const proofAsked = 'Anything measured on the vehicle?';
const fieldsAsked = 'What was read with this part fitted?';

/** A starter of which the bench shows nothing, as far as the question for the vehicle. */
async function upToTheVehicle(page: Page, claim: string): Promise<void> {
  await press(page, '+');
  await press(page, '1');
  await answer(page, 'receipt shown', 'it is the part we sold');
  await typeSlowly(page, daysAgo(40).slice(0, 10));
  await press(page, 'Enter');
  await answer(page, claim, 'fitted');
  for (let turns = 0; (await asked(page)) !== proofAsked; turns += 1) {
    expect(turns).toBeLessThan(20);
    const figures = inside(page, '.figures input');
    if ((await figures.count()) > 0) {
      for (const [index, figure] of ['12.5', '78', '4100'].entries()) {
        if (index < (await figures.count())) await figures.nth(index).fill(figure);
      }
      await inside(page, '.card .key.take').first().click();
      await eventually(async () => {
        expect(await asked(page)).not.toBe('Which figures?');
      });
    } else await press(page, (await inside(page, '.usual').count()) > 0 ? 'Enter' : '1');
  }
}

/** Opens the fields: once the first has the focus for a while, they take what is typed. */
async function openFields(page: Page): Promise<void> {
  await press(page, '4');
  expect(await asked(page)).toBe(fieldsAsked);
  await eventually(async () => {
    expect(await focused(page)).toMatch(/^figure-/u);
  });
  await page.waitForTimeout(settled);
}

/** Opens the fields, types what is given, and goes past what is not, behind the last too. */
async function typeReadings(page: Page, ...readings: readonly string[]): Promise<void> {
  await openFields(page);
  for (const [index, reading] of readings.entries()) {
    const before = await focused(page);
    await typeSlowly(page, reading);
    await page.keyboard.press(reading === '' ? '/' : 'Enter', { delay: 60 });
    if (index === readings.length - 1) break;
    await eventually(async () => {
      expect(await focused(page)).not.toBe(before);
    });
  }
}

/** The field that has the focus. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(
    () => document.querySelector('keyturn-counter')?.shadowRoot?.activeElement?.id ?? '',
  );

const isTooLittle = (page: Page): Promise<void> =>
  eventually(async () => {
    expect(await asked(page)).toBe('Not enough to judge this part by.');
  });

const isFound = (page: Page, said: string): Promise<void> =>
  eventually(async () => {
    expect(await plain(inside(page, '.found'))).toContain(`What the vehicle says: ${said}`);
  });

atCounter('the vehicle by hand at the counter', ({ practising }) => {
  test('readings that are good speak against a starter that does not crank, by the way of a code', async () => {
    const page = await practising();
    await upToTheVehicle(page, 'turns slowly');
    await typeReadings(page, '12.75', '10.9', '0.2', '0.1', '', '260');
    await isFound(page, 'all else good');
    expect(await plain(inside(page, '.vehicle'))).toContain('Readings told by hand');
    await eventually(async () => {
      expect(await plain(inside(page, '.slip-title'))).toBe('We take it back');
    });
    expect(await slipOn(page)).toContain('What the vehicle says\nall else good');
  });

  test('a loss typed without its nought keeps its mark, however soon it follows', async () => {
    const page = await practising();
    await upToTheVehicle(page, 'turns slowly');
    await openFields(page);
    const keys = [
      '1',
      '2',
      '.',
      '7',
      'Enter',
      '1',
      '0',
      '.',
      '9',
      'Enter',
      '.',
      '2',
      'Enter',
      ',',
      '1',
    ];
    for (const key of keys) {
      await page.keyboard.press(key);
      await page.waitForTimeout(75);
    }
    const typed = (check: string): Promise<string> => inside(page, `#figure-${check}`).inputValue();
    await eventually(async () => {
      expect(await typed('drop-ground')).toBe(',1');
    });
    expect(await typed('battery-crank')).toBe('10.9');
    expect(await typed('drop-positive')).toBe('.2');
  });

  test('where they do not judge the part it is told why, and what it takes still, before anything is taken', async () => {
    const page = await practising();
    await upToTheVehicle(page, 'turns slowly');
    const before = await plain(inside(page, '.found'));
    await typeReadings(page, '', '10.9', '0.3');
    // Enter in a field with nothing in it goes past it, and behind the last takes what there is.
    for (const empty of ['drop-ground', 'control-signal', 'crank-current']) {
      await eventually(async () => {
        expect(await focused(page)).toBe(`figure-${empty}`);
      });
      await page.keyboard.press('Enter', { delay: 60 });
    }
    await isTooLittle(page);
    const said = await plain(inside(page, '.card .to-do'));
    expect(said).toContain('Not good: Loss on the plus side 0.3 V');
    expect(said).toContain(
      'Still missing, to speak against the part: Loss on the ground side and Resting voltage',
    );
    expect(await plain(inside(page, '.found'))).toBe(before);
    // Nothing that was typed is lost.
    await press(page, '2');
    expect(await inside(page, '#figure-battery-crank').inputValue()).toBe('10.9');
    await inside(page, '#figure-drop-positive').fill('2.6');
    await inside(page, '.card .key.take').click();
    await isFound(page, 'something else bad');
    const why = 'This points elsewhere: Loss on the plus side 2.6 V (';
    await eventually(async () => {
      expect(await plain(inside(page, '.card'))).toContain(why);
    });
    expect(await slipOn(page)).toContain(why);
    // What was read is the customer's to keep, though it does not speak against the part.
    await eventually(async () => {
      expect(await slipOn(page)).toMatch(
        /Measured on the vehicle\n(?:.*\n)*Loss on the plus side\n2\.6 V, /u,
      );
    });
    expect(await slipOn(page)).not.toContain('Loss on the ground side');
  });

  test('a figure that no meter shows is refused at its field, and nothing is lost', async () => {
    const page = await practising();
    await upToTheVehicle(page, 'turns slowly');
    await press(page, '4');
    await inside(page, '#figure-battery-rest').fill('12.7');
    await inside(page, '#figure-battery-crank').fill('109');
    await inside(page, '.card .key.take').click();
    await eventually(async () => {
      expect(await plain(inside(page, '#figure-battery-crank-means'))).toContain(
        'cannot be right for Battery voltage while starting',
      );
    });
    expect(await asked(page)).toBe(fieldsAsked);
    expect(await inside(page, '#figure-battery-rest').inputValue()).toBe('12.7');
    await page.keyboard.press('Escape');
    expect(await asked(page)).toBe(proofAsked);
  });

  test('a line with readings opens the fields with them, and is never the bench’s', async () => {
    const page = await practising();
    await upToTheVehicle(page, 'turns slowly');
    const before = await plain(inside(page, '.found'));
    const line = inside(page, 'input[name=line]');
    await line.fill('10.9 V at the battery while cranking and 0.3 V on the positive side');
    await press(page, 'Enter');
    expect(await asked(page)).toBe(fieldsAsked);
    expect(await inside(page, '#figure-battery-crank').inputValue()).toBe('10.9');
    expect(await inside(page, '#figure-drop-positive').inputValue()).toBe('0.3');
    await page.keyboard.press('Escape');
    await line.fill('10.9');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.notes'))).toContain('Resting voltage');
    });
    expect(await plain(inside(page, '.found'))).toBe(before);
    // A word of the clerk answers at once, as it always did.
    await press(page, '3');
    expect(await plain(inside(page, '.found'))).toContain('something else bad');
  });

  test('of a battery there is one field: how it is charged', async () => {
    const page = await practising();
    await press(page, '+');
    await press(page, '2');
    await inside(page, 'input[name=line]').fill('vehicle says something else bad');
    await page.keyboard.press('Enter', { delay: 60 });
    await eventually(async () => {
      expect(await plain(inside(page, '.found'))).toContain('something else bad');
    });
    await inside(page, '.found .fix').last().click();
    expect(await asked(page)).toBe(proofAsked);
    await press(page, '4');
    expect(await inside(page, '.figures input').count()).toBe(1);
    await inside(page, '#figure-charging').fill('14.3');
    await page.keyboard.press('Enter', { delay: 60 });
    await isTooLittle(page);
    expect(await plain(inside(page, '.card .to-do'))).toContain(
      'never speaks against a battery by itself',
    );
    await press(page, '1');
    expect(await plain(inside(page, '.found'))).toContain('nothing, or not enough');
  });
});
