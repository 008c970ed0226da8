import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { positionOf, type Case } from '@keyturn/core';
import { shippedFlow } from '@keyturn/terminal';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import {
  asked,
  deskCase,
  numberOf,
  onceMore,
  openDesk,
  press,
  seed,
  settled,
  type DeskOptions,
  type OpenedDesk,
} from './support/desk-page.ts';
import { playUntil } from './support/element-page.ts';
import { keptIn } from './support/kept-in-browser.ts';

// A browser on a machine busy with other tests takes its time.
vi.setConfig({ testTimeout: 90_000, hookTimeout: 180_000 });

const { chart, texts } = shippedFlow('no-start', 'en');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules of WCAG 2.2, A and AA. */
const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const asks = (check: string) => (kase: Case) => {
  const position = positionOf(kase);
  return position.awaiting === 'answer' && position.check === check;
};
const awaits = (awaiting: string) => (kase: Case) => positionOf(kase).awaiting === awaiting;
const hasVerdict = ({ state }: Case) => state.verdict !== null;

/** A caller with an empty battery, who has nothing at hand. */
const flat = {
  context: { role: 'dispatcher', place: 'parking', kit: [] },
  choices: {
    scene: ['safe'],
    drive: ['petrol'],
    complaint: ['rapid-clicking'],
    when: ['after-standing'],
    history: ['lights-left-on'],
    'battery-look': ['sound'],
  },
};
const played = (isThere: (kase: Case) => boolean, more: object = {}) =>
  playUntil(chart, isThere, { ...flat, ...more });

/** How fast a sentence is read out, and how long an answer takes: common practice, no source. */
const [wordsPerSecond, answerSeconds] = [2.5, 8];

/** What such a caller answers, by the labels of the keys; a figure is typed. */
const answers = [
  'in a parking place',
  'yes, safe',
  'petrol',
  'fast clicking',
  'after standing for hours or days',
  'something was left on',
  'whole and dry',
];

describe.skipIf(whyNoBrowser !== undefined)('the desk', again, () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof servePages>>;

  beforeAll(async () => {
    await prepare();
    [browser, site] = await Promise.all([startBrowser(), servePages()]);
  });
  afterAll(async () => {
    await browser.close();
    site.close();
  });

  /** The desk in English; closed when the test has ended, and then without any fault. */
  async function desk(options: DeskOptions = {}, lang = 'en'): Promise<OpenedDesk> {
    const opened = await openDesk(browser, `${site.url}desk/?lang=${lang}`, options);
    onTestFinished(async () => {
      await opened.context.close();
      expect(opened.faults).toEqual([]);
    });
    return opened;
  }
  const inside = (page: Page, selector: string, options: { hasText?: string } = {}) =>
    page.locator(`keyturn-desk ${selector}`, options);
  const others = (page: Page) => inside(page, '.others-list li button').allInnerTexts();

  /** Answers by keys alone until it is said what to send; how many keys that took. */
  async function answerAll(page: Page): Promise<number> {
    let keys = 0;
    for (let turns = 0; (await inside(page, '.slip').count()) === 0; turns += 1) {
      expect(turns).toBeLessThan(30);
      const number = await numberOf(page, answers);
      const isSeveral = (await inside(page, '.card .key.take').count()) > 0;
      const isFigure = (await inside(page, '.card .hint').count()) > 0;
      const pressed = [
        ...(isFigure ? ['4'] : number === undefined ? (isSeveral ? [] : ['0']) : [number]),
        ...(isSeveral || isFigure ? ['Enter'] : []),
      ];
      keys += pressed.length;
      await press(page, ...pressed);
    }
    return keys;
  }

  test('takes a call from its first key to what to send, by keys alone', async () => {
    const { page } = await desk();
    await press(page, '+');
    expect(await asked(page)).toBe('Where is the vehicle standing now?');
    const keys = 1 + (await answerAll(page));
    expect(await asked(page)).toBe('Boost van');
    expect(await inside(page, '.sure').innerText()).toMatch(/Discharged battery.*\d\d\s?%/);
    expect(await inside(page, '.slip').innerText()).toContain('fast clicking');
    await press(page, '1');
    expect(await asked(page)).toMatch(/Boost van.?: under way since .?\d\d:\d\d/);
    // What the desk may take of a dispatcher, sending included.
    expect(keys + 1).toBeLessThanOrEqual(25);
  });

  test('guides whoever tries it with an invented caller, in at most 25 keys', async () => {
    const { page } = await desk();
    await press(page, '1');
    let [keys, seconds] = [1, 0];
    for (let turns = 0; (await inside(page, '.slip').count()) === 0; turns += 1) {
      expect(turns).toBeLessThan(25);
      seconds += (await asked(page)).split(/\s+/).length / wordsPerSecond + answerSeconds;
      const guide = await inside(page, '.practice p').last().innerText();
      const figures = guide.match(/\d+/)?.[0].split('') ?? [];
      const pressed = [
        ...(figures.length > 0 ? figures : guide.includes('?') ? ['?'] : []),
        ...(guide.includes('Enter') ? ['Enter'] : []),
      ];
      keys += pressed.length;
      await press(page, ...pressed);
    }
    await press(page, '1');
    keys += 1;
    expect(await asked(page)).toContain('under way');
    expect(keys).toBeLessThanOrEqual(25);
    expect(seconds).toBeLessThanOrEqual(180);
  });

  test('says what an answer would change only where it changes anything', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('complaint')))] });
    await press(page, '/');
    await page.locator('keyturn-desk .card .key', { hasText: 'Locksmith' }).first().waitFor();
    await seed(page, [deskCase(played(asks('scene')))]);
    await page.locator('keyturn-desk .card .key', { hasText: 'yes, safe' }).waitFor();
    await page.waitForTimeout(500);
    expect(await inside(page, '.card .keys').first().innerText()).not.toContain('then ');
  });

  test('takes whole sentences, and asks back for what it cannot place', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('complaint')))] });
    await press(page, '/');
    // Whoever types letters is in the line at once.
    await page.keyboard.type('it just clicks really fast');
    await press(page, 'Enter');
    expect(await inside(page, '.found').innerText()).toContain('fast clicking');
    await page.keyboard.type('wibble wobble');
    await page.keyboard.press('Enter');
    await inside(page, '.notes .refused').waitFor();
    expect(await inside(page, '.notes .refused').innerText()).toContain('wibble wobble');
  });

  test('corrects the last answer with two keys, and the one before with three', async () => {
    const kept = played(asks('battery-look'));
    const [before = '', last = ''] = kept.case.state.order.slice(-2);
    const { page } = await desk({ kept: [deskCase(kept)] });
    await press(page, '/');
    await press(page, '-');
    expect(await asked(page)).toBe(texts.checks[last]?.ask);
    await press(page, '-');
    expect(await asked(page)).toBe(texts.checks[before]?.ask);
    await page.keyboard.press('Escape');
    await press(page, '+');
    await press(page, '3');
    await press(page, '1');
    await press(page, '1');
    await press(page, '-');
    expect(await asked(page)).toBe('What does the vehicle run on?');
    await press(page, '2');
    expect(await inside(page, '.spot').innerText()).toMatch(/What drives it\s*diesel/);
  });

  test('has a key for every answer, also beyond nine', async () => {
    const { page } = await desk();
    await press(page, '+');
    await page.getByRole('button', { name: /^What you have with you/ }).press('Enter');
    await inside(page, '.key.pick').first().waitFor();
    const shown = await inside(page, '.key.pick .at').allInnerTexts();
    expect(shown).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', 'F8', 'F9']);
  });

  test('says on the card what leaves it, and what was picked before stays', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('battery-look')))] });
    await press(page, '/');
    const before = await asked(page);
    await press(page, '!');
    expect(await page.getByRole('button', { name: 'Leave it as it is' }).count()).toBe(1);
    await press(page, 'Escape');
    expect(await asked(page)).toBe(before);
    await press(page, '=');
    await press(page, '1');
    const help = await asked(page);
    await press(page, '4');
    expect(await asked(page)).toBe('Which help?');
    await press(page, 'Escape');
    expect(await asked(page)).toBe(help);
  });

  test('says what is lacking to send anybody', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    await press(page, '/');
    const lacking = inside(page, '.card .lacking');
    expect(await lacking.innerText()).toMatch(/Road, direction, marker · Number to call back/);
    await page.keyboard.press('F2');
    await page.locator('input[name=where]').fill('Reed Lane 3');
    await expect.poll(() => lacking.innerText(), { timeout: 10_000 }).not.toMatch(/Road/);
    await page.locator('input[name=callback]').fill('0555 0100');
    await lacking.waitFor({ state: 'detached' });
  });

  test('takes a second call meanwhile, and goes back to the first', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '3');
    await page.keyboard.press('F2');
    await page.keyboard.type('Ottilie Marr');
    await page.keyboard.press('Escape');
    const first = await asked(page);
    await press(page, '+');
    expect(await others(page)).toEqual([expect.stringContaining('Ottilie Marr')]);
    await press(page, '/');
    expect(await asked(page)).toBe(first);
    expect(await inside(page, 'input[name=name]').inputValue()).toBe('Ottilie Marr');
  });

  test('puts whoever is in danger first, then whoever has waited longest', async () => {
    const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString();
    const one = (id: string, minutes: number, more: object = {}, is = asks('complaint')) =>
      deskCase(played(is, more), { id, openedAt: ago(minutes), touchedAt: ago(minutes) });
    const unsafe = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({
      kept: [
        one('short', 2),
        one('long', 40),
        one('danger', 1, unsafe, awaits('confirm')),
        {
          ...one('sent', 50),
          sent: { help: 'boost-van', at: ago(45), callBackAt: ago(1) },
        },
      ],
      callers: Object.fromEntries(
        ['short', 'long', 'danger', 'sent'].map((id) => [id, { name: id }]),
      ),
    });
    const names = (await others(page)).map((text) => text.split('\n')[0]);
    expect(names).toEqual(['danger', 'sent', 'long', 'short']);
    expect((await others(page))[0]).toContain('in danger');
    expect((await others(page))[1]).toContain('to be called back now');
    expect(await inside(page, '.summary').innerText()).toContain('In danger');
  });

  test('goes round every open caller by one key, the most urgent first, and begins anew', async () => {
    const names = ['danger', 'long', 'middle', 'short'];
    const unsafe = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({
      kept: names.map((id, index) => {
        const kept =
          id === 'danger' ? played(awaits('confirm'), unsafe) : played(asks('complaint'));
        const touchedAt = new Date(Date.now() - (20 - index * 5) * 60_000).toISOString();
        return deskCase(kept, { id, openedAt: touchedAt, touchedAt });
      }),
      callers: Object.fromEntries(names.map((id) => [id, { name: id }])),
    });
    for (const name of [...names, ...names]) {
      await page.keyboard.press('/');
      await expect.poll(() => inside(page, '.whose').allInnerTexts()).toEqual([name]);
    }
    // Whoever has just been spoken to waits least, and the round goes on all the same.
    await page.keyboard.press('/');
    await expect.poll(() => inside(page, '.whose').allInnerTexts()).toEqual(['danger']);
    await page.keyboard.press('/');
    await expect.poll(() => inside(page, '.whose').allInnerTexts()).toEqual(['long']);
    await press(page, '3');
    await page.keyboard.press('/');
    await expect.poll(() => inside(page, '.whose').allInnerTexts()).toEqual(['middle']);
  });

  test('says one thing of whoever is in danger once the police are under way', async () => {
    const lane = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({
      kept: [deskCase(played(asks('scene'), lane))],
      callers: { seeded: { name: 'Ann Reed' } },
    });
    await press(page, '/');
    for (const key of ['2', '=', '1']) await press(page, key);
    expect(await inside(page, '.note h3').innerText()).toBe('To pass on');
    await press(page, '1');
    await press(page, '+');
    expect(await inside(page, '.summary').innerText()).toMatch(/^In danger: .?Ann Reed.?\.$/u);
    const [listed = ''] = await others(page);
    expect(listed).toMatch(/in danger · help is under way, call back at/);
    expect(listed).not.toContain('waits');
  });

  test('says of a caution that cannot be followed that it was said so', async () => {
    const lane = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({ kept: [deskCase(played(awaits('confirm'), lane))] });
    await press(page, '/');
    await press(page, '2');
    for (const place of ['.notes', '.spot']) {
      const said = await inside(page, place).innerText();
      expect(said).toMatch(/Safety where you are:?\s+the caller can’t do that/);
    }
  });

  test('offers the police first to whoever is in danger', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '1');
    expect(await inside(page, '.sign .word').innerText()).toContain('DANGER');
    await press(page, '1');
    await press(page, '2');
    await press(page, '=');
    await press(page, '1');
    expect(await asked(page)).toContain('Police');
  });

  test('goes on asking though the police are under way', async () => {
    const { page } = await desk();
    for (const keys of [['+'], ['1'], ['1'], ['2'], ['='], ['1'], ['1']]) {
      await press(page, ...keys);
    }
    expect(await asked(page)).toContain('under way');
    const key = await numberOf(page, ['Go on asking']);
    await press(page, key ?? '');
    expect(await asked(page)).toContain('Is everyone safe now');
  });

  test('keeps danger in sight on a narrow screen, and before all other keys of the case', async () => {
    const { page } = await desk({
      viewport: { width: 390, height: 844 },
      kept: [deskCase(played(asks('complaint')))],
    });
    await press(page, '/');
    const danger = inside(page, '.low-danger .key');
    expect(await inside(page, '.card .key').first().innerText()).toMatch(/Danger/u);
    await inside(page, '.reach .key').last().scrollIntoViewIfNeeded();
    const box = await danger.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect(box?.y).toBeLessThan(844 / 2);
    await danger.click();
    expect(await asked(page)).toContain('happening there');
  });

  test('says that a number which came too soon was not taken, until one is', async () => {
    const { page } = await desk({ hasClock: true, kept: [deskCase(played(asks('scene')))] });
    await page.clock.pauseAt(Date.now() + 60_000);
    await page.keyboard.press('/');
    await inside(page, '.whose').waitFor();
    await page.keyboard.press('1');
    const note = inside(page, '.notes .refused');
    await note.waitFor();
    expect(await note.innerText()).toMatch(/^Key \u20681\u2069 was not taken/u);
    expect(await asked(page)).toContain('safe');
    await page.clock.resume();
    await press(page, '1');
    expect(await inside(page, '.notes .refused').count()).toBe(0);
  });

  test('sends nobody by a key that bounces after the last question', async () => {
    const { page } = await desk({ hasClock: true, kept: [deskCase(played(asks('battery-look')))] });
    await press(page, '/');
    await page.clock.pauseAt(Date.now() + 60_000);
    await page.keyboard.press('1');
    await page.clock.fastForward(300);
    await inside(page, '.slip').waitFor();
    await page.keyboard.press('1');
    await page.clock.fastForward(300);
    expect(await asked(page)).toBe('Boost van');
    expect((await keptIn(page, 'keyturn-desk'))['cases']).toMatchObject([{ sent: null }]);
    await page.clock.resume();
    await press(page, '1');
    expect(await asked(page)).toContain('under way');
  });

  test.each([
    ['12.1', 90],
    ['12.1', 290],
    ['2 children', 120],
    ['.5 V', 120],
  ])('answers nothing by the digits of a text: %s, a key every %i ms', async (text, gap) => {
    const { page } = await desk({ hasClock: true, kept: [deskCase(played(asks('complaint')))] });
    await press(page, '/');
    const question = await asked(page);
    await page.clock.pauseAt(Date.now() + 60_000);
    for (const key of text) {
      await page.keyboard.type(key);
      await page.clock.fastForward(gap);
    }
    await page.clock.fastForward(1000);
    expect(await asked(page)).toBe(question);
    expect(await inside(page, 'input[name=line]').inputValue()).toBe(text);
  });

  test('takes a number that Enter was pressed behind once', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '3', 'Enter');
    expect(await asked(page)).toContain('is everyone safe');
    expect(await inside(page, 'input[name=line]').evaluate((line) => line.matches(':focus'))).toBe(
      false,
    );
  });

  test('holds a danger until it is over', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('complaint')))] });
    await press(page, '/');
    await press(page, '!');
    await press(page, '1');
    expect(await inside(page, '.sign .word').innerText()).toContain('DANGER');
    await press(page, '1');
    expect(await asked(page)).toContain('safe');
  });

  test('goes on after a reload where it was', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '3');
    await press(page, '1');
    await page.keyboard.press('F2');
    await page.keyboard.press('Tab');
    await page.keyboard.type('555 0199');
    await vi.waitFor(async () => {
      expect((await keptIn(page, 'keyturn-desk'))['callers']).toEqual([{ callback: '555 0199' }]);
    });
    const before = await asked(page);
    await page.reload();
    await page.locator('keyturn-desk input[name=callback]').waitFor();
    expect(await asked(page)).toBe(before);
    expect(await inside(page, 'input[name=callback]').inputValue()).toBe('555 0199');
    expect(await inside(page, '.spot').innerText()).toContain('in a parking place');
  });

  test('keeps the person apart from the case, and forgets them with it', async () => {
    const { page } = await desk({
      kept: [deskCase(played(hasVerdict))],
      callers: {
        seeded: { name: 'Ottilie Marr', where: 'Reed Lane 3' },
      },
    });
    await press(page, '/');
    await press(page, '1');
    const kept = await keptIn(page, 'keyturn-desk');
    expect(JSON.stringify(kept['cases'])).not.toMatch(/Marr|Reed Lane/);
    expect(kept['callers']).toEqual([{ name: 'Ottilie Marr', where: 'Reed Lane 3' }]);
    await press(page, '2');
    await press(page, '1');
    expect(await inside(page, '.notes').innerText()).toContain('Counted');
    const left = await keptIn(page, 'keyturn-desk');
    expect(left).toMatchObject({ cases: [], callers: [] });
    expect(left['outcomes']).toMatchObject([
      { role: 'dispatcher', channel: 'desk', cause: 'battery-discharged' },
    ]);
    expect(JSON.stringify(left['outcomes'])).not.toMatch(/Marr|Reed Lane|seeded/);
  });

  test('counts a cause though help was decided on before the verdict', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('battery-look')))] });
    await press(page, '/');
    await press(page, '=');
    await press(page, '1');
    await press(page, '1');
    await press(page, '2');
    await press(page, '1');
    expect(await inside(page, '.notes').innerText()).toMatch(/Counted as: .?Discharged battery/);
    expect((await keptIn(page, 'keyturn-desk'))['outcomes']).toMatchObject([
      { cause: 'battery-discharged', forecast: { fault: 'battery-discharged' } },
    ]);
  });

  test('holds nothing against a case in which nothing was forecast', async () => {
    const lane = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({ kept: [deskCase(played(asks('scene'), lane))] });
    await press(page, '/');
    for (const key of ['2', '=', '1', '1', '2', '1']) await press(page, key);
    const [outcome] = (await keptIn(page, 'keyturn-desk'))['outcomes'] ?? [];
    expect(outcome).toMatchObject({ channel: 'desk' });
    expect(outcome).not.toHaveProperty('forecast');
    await page.getByRole('button', { name: 'How sure were we?' }).press('Enter');
    const report = await inside(page, '.report').innerText();
    expect(report).toMatch(/nothing was forecast: .?1/u);
    expect(report).not.toMatch(/verdicts named|Said .* on average/);
  });

  test.each([
    ['its key', '1'],
    ['the key that corrects', '-'],
  ])('takes an entered cause back by %s, with the person', async (_, key) => {
    const { page } = await desk({
      kept: [deskCase(played(hasVerdict))],
      callers: { seeded: { name: 'Ottilie Marr' } },
    });
    await press(page, '/');
    for (const one of ['1', '2', '1']) await press(page, one);
    expect(await keptIn(page, 'keyturn-desk')).toMatchObject({
      cases: [],
      callers: [],
      outcomes: [{}],
    });
    await press(page, key);
    expect(await asked(page)).toContain('under way');
    expect(await inside(page, 'input[name=name]').inputValue()).toBe('Ottilie Marr');
    expect(await keptIn(page, 'keyturn-desk')).toMatchObject({
      cases: [{}],
      callers: [{}],
      outcomes: [],
    });
  });

  test('cannot take a case back once another has been taken up', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    await press(page, '/');
    for (const one of ['1', '2', '1']) await press(page, one);
    await press(page, '+');
    expect(await page.getByRole('button', { name: 'Take it back' }).count()).toBe(0);
    expect((await keptIn(page, 'keyturn-desk'))['outcomes']).toHaveLength(1);
  });

  test('drops what is ticked only at a second press', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('history')))] });
    await press(page, '/');
    const before = await asked(page);
    await page.waitForTimeout(settled);
    await page.keyboard.press('2');
    await page.waitForTimeout(settled);
    await page.keyboard.press('0');
    await page.waitForTimeout(settled);
    expect(await inside(page, '.keys.row').last().innerText()).toContain('the ticks are dropped');
    expect(await asked(page)).toBe(before);
    await page.keyboard.press('3');
    await page.waitForTimeout(settled);
    await page.keyboard.press('0');
    await page.waitForTimeout(settled);
    expect(await asked(page)).toBe(before);
    await press(page, '0');
    expect(await inside(page, '.found').innerText()).toContain('What happened before: not known');
  });

  test('begins a correction with what was ticked, and takes it back as not known', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('battery-look')))] });
    await press(page, '/');
    await press(page, '-');
    expect(
      await inside(page, '.card .key.pick').evaluateAll((keys) =>
        keys.map((one) => one.getAttribute('aria-pressed')).indexOf('true'),
      ),
    ).toBe(0);
    await page.waitForTimeout(settled);
    await page.keyboard.press('0');
    await press(page, '0');
    expect(await inside(page, '.found').innerText()).toContain('What happened before: not known');
  });

  test('has a key for what the caller cannot do, also where a figure is typed', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('battery-age')))] });
    await press(page, '/');
    expect(await inside(page, '.keys.row').last().innerText()).toMatch(/Del\s+I can’t/);
    await press(page, 'Delete');
    expect(await inside(page, '.found').innerText()).toContain('Age of the battery: not known');
  });

  test('tells a caller on the shoulder to wait, and nothing of how to boost', async () => {
    const shoulder = { context: { role: 'dispatcher', place: 'shoulder', kit: ['boost-source'] } };
    const { page } = await desk({ kept: [deskCase(played(hasVerdict, shoulder))] });
    await press(page, '/');
    const said = await inside(page, '.briefing').innerText();
    expect(said).toContain('Wait where you are safe');
    expect(said).toContain('Help is being sent to you');
    expect(said).not.toMatch(/boost it|bare metal|order of the leads/i);
  });

  test.each(['frozen', 'swollen'])(
    'tells a caller with a %s battery of no start, no boost and no note',
    async (look) => {
      const choices = { ...flat.choices, 'battery-look': [look] };
      const { page } = await desk({ kept: [deskCase(played(hasVerdict, { choices }))] });
      await press(page, '/');
      const told = await inside(page, '.briefing > section').innerText();
      expect(told).toMatch(/not charged, boosted|Do not charge, boost/);
      expect(told).toContain('Help is on its way');
      expect(told).not.toMatch(/jump forward|Pass on the note|If a boost/);
    },
  );

  test('tells a caller what can hurt before what to do, also after a reload', async () => {
    const context = { ...flat.context, kit: ['boost-source'] };
    const { page } = await desk({ kept: [deskCase(played(hasVerdict, { context }))] });
    await press(page, '/');
    expect(await inside(page, '.told').innerText()).toMatch(
      /Help is on its way.*bare metal.*Boost it only if/s,
    );
  });

  test('tells a caller without leads that help comes, and nothing of how to boost', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    await press(page, '/');
    const isToldToWait = async (): Promise<void> => {
      const told = await inside(page, '.told').innerText();
      expect(told).toContain('Help is on its way');
      expect(told).not.toMatch(/boost it|bare metal|jump forward/i);
    };
    await isToldToWait();
    await press(page, '1');
    await isToldToWait();
    expect(await asked(page)).toContain('under way');
  });

  test('asks once more before help goes to where nobody knows', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    await press(page, '/');
    await page.waitForTimeout(settled);
    await page.keyboard.press('2');
    await inside(page, onceMore).waitFor();
    expect(await inside(page, onceMore).innerText()).toContain('goes without what is missing');
    expect((await keptIn(page, 'keyturn-desk'))['cases']).toMatchObject([{ sent: null }]);
    await page.waitForTimeout(settled);
    await page.keyboard.press('2');
    await expect.poll(() => asked(page)).toContain('under way');
  });

  test('calls back sooner where the police are sent', async () => {
    const lane = { context: { role: 'dispatcher', place: 'live-lane' } };
    const { page } = await desk({ kept: [deskCase(played(awaits('nothing'), lane))] });
    await press(page, '/');
    const keys = await inside(page, '.card > .keys').first().innerText();
    expect(keys).toContain('5 minutes');
    expect(keys).not.toContain('1 hour');
  });

  test('takes the one answer that was offered by Enter, also where nothing more is asked', async () => {
    const lane = {
      context: { role: 'dispatcher', place: undefined },
      choices: { ...flat.choices, place: ['live-lane'] },
    };
    const seeded = deskCase(played(awaits('nothing'), lane));
    const offers = [{ check: 'place', value: 'shoulder', label: 'on the hard shoulder' }];
    const { page } = await desk({ kept: [{ ...seeded, sitting: { ...seeded.sitting, offers } }] });
    await press(page, '/');
    expect(await inside(page, '.notes .key').innerText()).toMatch(/↵\s+on the hard shoulder/);
    await press(page, 'Enter');
    expect(await inside(page, '.spot').innerText()).toContain('on the roadside or hard shoulder');
    expect(await inside(page, '.card').innerText()).not.toContain('closed');
  });

  test('takes nothing that is typed at what to send for what is not asked there', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    await press(page, '/');
    await page.keyboard.type('yes');
    await page.keyboard.press('Enter');
    const note = inside(page, '.notes', { hasText: 'changes nothing' });
    await note.waitFor();
    expect(await note.innerText()).not.toContain('closed');
    expect(await inside(page, '.found').innerText()).not.toContain('The repair');
  });

  test('finds a cause by a word of its name, and stays at the question', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    for (const key of ['/', '1', '2']) await press(page, key);
    const question = await asked(page);
    await page.waitForTimeout(settled);
    await page.keyboard.type('fuse');
    await page.keyboard.press('Enter');
    await expect.poll(() => inside(page, '.card .key[data-key="1"]').innerText()).toMatch(/fuse/i);
    expect(await asked(page)).toBe(question);
  });

  test('takes a minus where a figure may be below zero, and corrects by another key there', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '3');
    await press(page, '1');
    await page.locator('keyturn-desk .fact', { hasText: 'Air temperature' }).click();
    await page.waitForTimeout(settled);
    await page.keyboard.type('-5');
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('-5');
    expect(await inside(page, '.keys.row').last().innerText()).toMatch(/⌫\s+Correct/);
  });

  test('drops a call in which nothing was answered, and takes it back, by one key', async () => {
    const { page } = await desk();
    await press(page, '+');
    const question = await asked(page);
    await press(page, '-');
    expect(await keptIn(page, 'keyturn-desk')).toMatchObject({ cases: [], outcomes: [] });
    await press(page, '-');
    expect(await asked(page)).toBe(question);
  });

  test.each([
    ['complaint', 'en'],
    ['history', 'en'],
    ['battery-look', 'en'],
    ['complaint', 'de'],
    ['history', 'de'],
    ['battery-look', 'fr'],
    ['complaint', 'ar'],
  ])(
    'shows every answer to “%s” whole, the line, its keys and danger, on a screen of 1440 by 900 in “%s”',
    async (check, lang) => {
      const { page } = await desk({ kept: [deskCase(played(asks(check)))] }, lang);
      await press(page, '/');
      await inside(page, '.more').first().waitFor();
      const hidden = await inside(
        page,
        ':is(.card > .keys .key, .reach input, .reach .keys > .key, .head-key.danger)',
      ).evaluateAll((keys) =>
        keys
          .filter((key) => {
            const { left, top, bottom } = key.getBoundingClientRect();
            const over = (key.getRootNode() as ShadowRoot).elementFromPoint(left + 20, bottom - 4);
            return top < 0 || bottom > innerHeight || over === null || !key.contains(over);
          })
          .map((key) => key.textContent),
      );
      expect(hidden).toEqual([]);
      expect(await inside(page, '.head-key.danger').count()).toBe(1);
    },
  );

  test('covers nothing of what is to be sent, nor of what has the focus', async () => {
    const { page } = await desk({
      viewport: { width: 1440, height: 700 },
      kept: [deskCase(played(hasVerdict))],
    });
    await press(page, '/');
    const steps = await inside(page, ':is(button, input, select)').count();
    for (const way of ['Tab', 'Shift+Tab']) {
      for (let step = 0; step < steps; step += 1) {
        await page.keyboard.press(way);
        const covered = await page.evaluate(() => {
          const root = document.querySelector('keyturn-desk')?.shadowRoot;
          const focused = root?.activeElement;
          if (!root || !focused) return '';
          const { left, top, bottom } = focused.getBoundingClientRect();
          const isSeen = [top + 4, bottom - 4].every((y) => {
            const over = root.elementFromPoint(left + 12, y);
            return over !== null && (focused.contains(over) || over.contains(focused));
          });
          return isSeen ? '' : focused.outerHTML;
        });
        expect(covered).toBe('');
      }
    }
  });

  test('keeps what was typed for one caller out of the line of another', async () => {
    const { page } = await desk();
    await press(page, '+');
    await page.keyboard.type('smell of petrol');
    await page.keyboard.press('Escape');
    const line = inside(page, 'input[name=line]');
    await page.keyboard.press('+');
    await page.waitForFunction(
      () =>
        document.querySelector('keyturn-desk')?.shadowRoot?.querySelectorAll('.others-list li')
          .length === 1,
    );
    expect(await line.inputValue()).toBe('');
    await page.keyboard.press('/');
    await page.waitForFunction(
      () =>
        document
          .querySelector('keyturn-desk')
          ?.shadowRoot?.querySelector<HTMLInputElement>('input[name=line]')?.value !== '',
    );
    expect(await line.inputValue()).toBe('smell of petrol');
  });

  test('takes its keys where the line has the focus and nothing in it', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('battery-age')))] });
    await press(page, '/');
    await page.keyboard.press('Enter');
    await page.keyboard.type('-5');
    expect(await inside(page, 'input[name=line]').inputValue()).toBe('-5');
    for (const key of ['Backspace', 'Backspace']) await page.keyboard.press(key);
    await press(page, '?');
    expect(await inside(page, '.found').innerText()).toContain('Age of the battery: not known');
  });

  test('tells two callers of the same minute apart, and says whose case is in hand', async () => {
    const openedAt = (second: string) => `2026-11-02T14:46:${second}.000Z`;
    const { page } = await desk({
      kept: [
        deskCase(played(asks('scene')), { openedAt: openedAt('05') }),
        deskCase(played(asks('complaint')), { id: 'b', openedAt: openedAt('40') }),
      ],
    });
    await press(page, '/');
    const names = [await inside(page, '.whose').innerText(), ...(await others(page))];
    expect(names.map((name) => /:46:(05|40)/u.exec(name)?.[1]).toSorted()).toEqual(['05', '40']);
  });

  test('tells a caller in a traffic lane who is not safe what to do until help is there', async () => {
    const lane = {
      context: { role: 'dispatcher', place: 'live-lane' },
      choices: { scene: ['unsafe'] },
    };
    const { page } = await desk({ kept: [deskCase(played(asks('scene'), lane))] });
    await press(page, '/');
    await press(page, '2');
    await press(page, '=');
    await press(page, '1');
    const told = await inside(page, '.briefing').innerText();
    expect(told).toMatch(/Stay away from traffic.*stay in with seat belts on.*Help is on its way/s);
  });

  test('shows which answer stands where it is put right', async () => {
    const { page } = await desk({ kept: [deskCase(played(asks('drive')))] });
    await press(page, '/');
    await press(page, '-');
    const stands = inside(page, '.card .key[aria-pressed=true] .label');
    expect(await stands.allInnerTexts()).toEqual([expect.stringContaining('yes, safe')]);
  });

  test('shows how sure it was, practice apart from calls', async () => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict), { practice: 'quill' })] });
    await press(page, '/');
    await press(page, '1');
    await press(page, '2');
    await press(page, '1');
    await page.getByRole('button', { name: 'How sure were we?' }).press('Enter');
    const report = await inside(page, '.report').innerText();
    expect(report).toMatch(/Calls at this desk\s+No cause has been entered yet/);
    expect(report).toMatch(/invented.\s+.?1.? of .?1.? verdicts named the cause/s);
    await page.keyboard.press('Escape');
    expect(await asked(page)).toBe('No case is in hand.');
  });

  test('gives the technician a note to copy, and prints nothing else', async () => {
    const { page, context } = await desk({
      kept: [deskCase(played(hasVerdict))],
      callers: { seeded: { where: 'Reed Lane 3' } },
    });
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await press(page, '/');
    await page.waitForTimeout(settled);
    await page.keyboard.press('F8');
    await inside(page, '.notes p').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n')[0]).toBe('Boost van');
    expect(copied).toContain('Reed Lane 3');
    expect(copied).toContain('Most likely: Discharged battery');
    // Ten seconds at four words a second, with time to find one's glasses.
    expect(copied.split(/\s+/).length).toBeLessThan(90);
    await page.emulateMedia({ media: 'print' });
    expect(await inside(page, '.slip').isVisible()).toBe(true);
    for (const hidden of ['.head', '.paper', '.sentence', '.line-entry']) {
      expect(await inside(page, hidden).first().isVisible()).toBe(false);
    }
  });

  test('says so when another window has gone on with the case, and goes on from there', async () => {
    const { page, context } = await desk({ kept: [deskCase(played(asks('complaint')))] });
    await press(page, '/');
    const second = await context.newPage();
    await second.goto(page.url());
    await second.locator('keyturn-desk .others-list button').click();
    await second.locator('keyturn-desk .card [data-key="3"]').waitFor();
    await press(second, '3');
    await page.locator('keyturn-desk .notes', { hasText: 'Another desk' }).waitFor();
    expect(await inside(page, '.notes').innerText()).toContain('Another desk has gone on');
    expect(await asked(page)).toBe(await asked(second));
  });

  const hostile = [
    '<img src=x onerror="document.title=1">',
    '"><script>document.title=1</script>',
    '${alert(1)} {{constructor}} javascript:alert(1)',
    '\u202Eabc<svg/onload=alert(1)>',
  ];

  test.each(hostile)('shows %s as text wherever it is typed', async (text) => {
    const { page } = await desk({ kept: [deskCase(played(hasVerdict))] });
    const title = await page.title();
    await press(page, '/');
    for (const field of await inside(page, '.caller input').all()) await field.fill(text);
    await inside(page, 'input[name=line]').fill(text);
    await page.keyboard.press('Enter');
    await inside(page, '.notes .refused').waitFor();
    expect(await inside(page, '.slip').innerText()).toContain(text.slice(1, 12));
    await press(page, '+');
    await inside(page, '.others-list li').waitFor();
    expect(await page.title()).toBe(title);
    expect(await inside(page, '.page').locator('img, script, [onload], [onerror]').count()).toBe(0);
  });

  test('tells a screen reader what everything is', async () => {
    const { page } = await desk({
      kept: [
        deskCase(played(asks('complaint')), {
          touchedAt: new Date(Date.now() - 60_000).toISOString(),
        }),
        deskCase(played(asks('scene')), { id: 'b' }),
      ],
    });
    await press(page, '/');
    // The question comes from the worker.
    await page.getByRole('heading', { name: 'When you try to start it, what happens?' }).waitFor();
    for (const [role, name] of [
      ['heading', 'When you try to start it, what happens?'],
      ['region', 'When you try to start it, what happens?'],
      ['button', /^fast clicking/],
      ['textbox', 'Or type what the caller says'],
      ['region', 'The paper of this case'],
      ['form', 'Who calls'],
      ['textbox', 'Number to call back'],
      ['button', /^What drives it/],
      ['navigation', 'Other open cases'],
      ['combobox', 'Language'],
      ['status', ''],
    ] as const) {
      expect([role, name, await page.getByRole(role, { name }).count()]).toEqual([role, name, 1]);
    }
  });

  test('takes a digit in a field as a digit', async () => {
    const { page } = await desk();
    await press(page, '+');
    const before = await asked(page);
    await page.keyboard.press('F2');
    await page.keyboard.type('3 Reed Lane + 4');
    expect(await asked(page)).toBe(before);
    expect(await inside(page, 'input[name=name]').inputValue()).toBe('3 Reed Lane + 4');
  });

  test('can do without keys of one character, as WCAG 2.1.4 asks', async () => {
    const { page } = await desk();
    await page.getByRole('button', { name: 'The keys' }).press('Enter');
    await page.getByRole('button', { name: 'Single keys work everywhere' }).press('Enter');
    await page.keyboard.press('Escape');
    await page.keyboard.press('+');
    await page.waitForTimeout(300);
    expect(await asked(page)).toBe('No case is in hand.');
  });

  test('is written from right to left in Arabic, and works by the same keys', async () => {
    const { page } = await desk({}, 'ar');
    expect(await inside(page, '.page').getAttribute('dir')).toBe('rtl');
    await press(page, '+');
    expect(await asked(page)).toBe('أين تقف المركبة الآن؟');
    await press(page, '3');
    await press(page, '1');
    expect(await inside(page, '.spot').innerText()).toContain('في موقف سيارات');
    const [sentence, paper] = await Promise.all(
      ['#asked', '.paper'].map((one) => inside(page, one).boundingBox()),
    );
    expect(sentence?.x).toBeGreaterThan(paper?.x ?? Infinity);
  });

  test('goes on in another language with the case as it is', async () => {
    const { page } = await desk();
    await press(page, '+');
    await press(page, '3');
    await inside(page, '.language select').selectOption('pl');
    await page.waitForFunction(
      () =>
        document.querySelector('keyturn-desk')?.shadowRoot?.querySelector<HTMLElement>('.page')
          ?.lang === 'pl',
    );
    expect(await inside(page, '.spot').innerText()).toContain('na parkingu');
  });

  test('shows two hundred open cases, and any of them can be taken up', async () => {
    const kept = played(asks('complaint'));
    const all = Array.from({ length: 200 }, (_, index) =>
      deskCase(kept, {
        id: `case-${String(index)}`,
        touchedAt: new Date(Date.now() - index * 60_000).toISOString(),
      }),
    );
    const { page } = await desk({ kept: all, callers: { 'case-0': { name: 'Ottilie Marr' } } });
    expect(await inside(page, '.others-list li').count()).toBe(200);
    expect((await others(page)).at(-1)).toContain('Ottilie Marr');
    await inside(page, '.others-list li button').last().press('Enter');
    await inside(page, 'input[name=name]').waitFor();
    expect(await inside(page, 'input[name=name]').inputValue()).toBe('Ottilie Marr');
    expect(await inside(page, '.others-list li').count()).toBe(199);
  });

  /** Every screen: what is kept before, and the keys that lead there. */
  const screens: Readonly<
    Record<string, { readonly is?: (kase: Case) => boolean; readonly keys: readonly string[] }>
  > = {
    'nothing in hand': { keys: [] },
    'a question': { is: asks('complaint'), keys: ['/'] },
    'a question with several answers': { is: asks('history'), keys: ['/'] },
    'a question for a figure': { is: asks('battery-age'), keys: ['/'] },
    'a caution to be confirmed': { is: awaits('confirm'), keys: ['/'] },
    'a correction': { is: asks('battery-look'), keys: ['/', '-'] },
    'every danger': { is: asks('complaint'), keys: ['/', '!'] },
    'a danger': { is: asks('complaint'), keys: ['/', '!', '1'] },
    'what to send': { is: hasVerdict, keys: ['/'] },
    'every kind of help': { is: hasVerdict, keys: ['/', '='] },
    'help under way': { is: hasVerdict, keys: ['/', '1'] },
    'what it was': { is: hasVerdict, keys: ['/', '1', '2'] },
  };
  async function screen(name: string, options: DeskOptions): Promise<Page> {
    const { is, keys } = screens[name] ?? { keys: [] };
    if (is === undefined) return (await desk(options)).page;
    const more =
      name === 'a caution to be confirmed'
        ? { context: { role: 'dispatcher', place: 'live-lane' } }
        : {};
    const { page } = await desk({
      ...options,
      kept: [deskCase(played(is, more)), deskCase(played(asks('scene')), { id: 'other' })],
      callers: { seeded: { name: 'Ottilie Marr' }, other: { where: 'Reed Lane 3' } },
    });
    await page.locator('keyturn-desk .others-list button', { hasText: 'Marr' }).press('Enter');
    await inside(page, '.paper').waitFor();
    for (const key of keys.slice(1)) await press(page, key);
    return page;
  }

  async function violations(page: Page): Promise<readonly string[]> {
    // Through the debugger, which the page's policy does not bind.
    await page.evaluate(axe);
    return page.evaluate(async (tags) => {
      const { axe: engine } = globalThis as unknown as {
        axe: {
          run: (options: object) => Promise<{
            violations: { id: string; nodes: { html: string; failureSummary: string }[] }[];
          }>;
        };
      };
      const { violations: found } = await engine.run({ runOnly: { type: 'tag', values: tags } });
      return found.flatMap(({ id, nodes }) =>
        nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
      );
    }, wcag);
  }

  describe.each(Object.keys(screens))('%s', (name) => {
    test.each(['light', 'dark'] as const)('keeps to WCAG 2.2 AA in %s', async (colorScheme) => {
      const page = await screen(name, { colorScheme, reducedMotion: 'reduce' });
      expect(await violations(page)).toEqual([]);
    });

    test('has room at 320 pixels and 400 %, and targets at least 44 pixels high', async () => {
      // 1280 by 1024 pixels at 400 % are 320 by 256.
      const page = await screen(name, { viewport: { width: 320, height: 256 } });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        320,
      );
      const small = await page
        .locator('keyturn-desk button, keyturn-desk input, keyturn-desk select')
        .evaluateAll((all) =>
          all
            .map((one) => ({ height: one.getBoundingClientRect().height, is: one.outerHTML }))
            .filter(({ height }) => height > 0 && height < 43.9),
        );
      expect(small).toEqual([]);
    });
  });

  test.each(['How sure were we?', 'The keys'])('keeps to WCAG 2.2 AA at “%s”', async (name) => {
    const { page } = await desk();
    await page.getByRole('button', { name }).press('Enter');
    expect(await violations(page)).toEqual([]);
  });

  test('keeps its keys visible where colours are forced, and moves nothing unasked', async () => {
    const page = await screen('a question', { forcedColors: 'active', reducedMotion: 'reduce' });
    const border = await inside(page, '.card .key')
      .first()
      .evaluate((element) => getComputedStyle(element).borderTopStyle);
    expect(border).toBe('solid');
    expect(await violations(page)).toEqual([]);
    const moving = await page.evaluate(
      () => document.querySelector('keyturn-desk')?.shadowRoot?.getAnimations().length,
    );
    expect(moving).toBe(0);
  });
});

test.runIf(whyNoBrowser !== undefined)(`not tried here: ${whyNoBrowser ?? ''}`, () => {
  expect(whyNoBrowser).toBeTypeOf('string');
});
