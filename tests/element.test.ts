import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { positionOf, type Case } from '@keyturn/core';
import { localeTags } from '@keyturn/language';
import { shippedFlow } from '@keyturn/terminal';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { servePages } from '../tools/pages.mjs';
import { prepare } from '../tools/prepare.mjs';
import { again, startBrowser, whyNoBrowser } from './support/browser.ts';
import {
  fingerOnHold,
  hold,
  openPage,
  playUntil,
  type Opened,
  type PageOptions,
} from './support/element-page.ts';

// A browser on a machine busy with other tests takes its time.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 180_000 });

const { chart } = shippedFlow('no-start', 'en');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules of WCAG 2.2, A and AA. */
const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const awaits = (awaiting: string) => (kase: Case) => positionOf(kase).awaiting === awaiting;
const asks = (check: string) => (kase: Case) => {
  const position = positionOf(kase);
  return position.awaiting === 'answer' && position.check === check;
};
/** An invented vehicle whose battery is flat, and which starts once it has been seen to. */
const flat = {
  choices: {
    scene: ['safe'],
    complaint: ['slow-crank'],
    'battery-look': ['sound'],
    'start-after': ['starts'],
  },
  readings: { 'battery-rest': 11.9, charging: 13.3 },
};

/** A person in a car park whose battery is likely empty, and who has nothing at hand. */
const noTools = {
  context: { place: 'parking', kit: undefined },
  choices: {
    scene: ['safe'],
    complaint: ['rapid-clicking'],
    when: ['after-standing'],
    history: ['lights-left-on'],
    kit: ['none'],
    'battery-look': ['sound'],
  },
};
const likely = ({ state }: Case) => state.verdict?.strength === 'likely';

describe.skipIf(whyNoBrowser !== undefined)('the element', again, () => {
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

  /** The driver's page in English; closed when the test has ended, and then without any fault. */
  async function driver(options: PageOptions = {}, lang = 'en'): Promise<Opened> {
    return open(`${site.url}driver/?lang=${lang}`, options);
  }
  async function open(url: string, options: PageOptions = {}): Promise<Opened> {
    const opened = await openPage(browser, url, options);
    onTestFinished(async () => {
      await opened.context.close();
      expect(opened.faults).toEqual([]);
    });
    return opened;
  }
  const question = (page: Page) => page.locator('keyturn-case #asked').innerText();
  const key = (page: Page, name: string) =>
    page.locator('keyturn-case').getByRole('button', { name, exact: true });
  const printed = (page: Page) => page.locator('keyturn-case .line .finding').allInnerTexts();

  test('takes a driver on a phone from the first question to a verdict', async () => {
    const { page } = await driver({ hasTouch: true });
    expect(await question(page)).toBe('Where is the vehicle standing now?');
    await page.locator('keyturn-case').getByText('in a parking place').tap();
    await page.evaluate(() => {
      const verdicts: unknown[] = [];
      Object.assign(globalThis, { verdicts });
      document.addEventListener('keyturn-verdict', (event) => {
        verdicts.push((event as CustomEvent).detail);
      });
    });
    const line = page.locator('keyturn-case input[name=line]');
    for (let turns = 0; (await page.locator('keyturn-case .verdict').count()) === 0; turns += 1) {
      expect(turns).toBeLessThan(60);
      if ((await page.locator('keyturn-case .hold').count()) > 0) {
        await hold(page);
        continue;
      }
      const asked = await question(page);
      if (asked.startsWith('When you try to start it')) {
        await line.fill('it turns over slowly');
        await key(page, 'Take it').tap();
      } else if (asked.includes('at hand')) {
        await page.locator('keyturn-case').getByText('voltmeter').tap();
        await key(page, 'That is all').tap();
      } else if (asked.includes('safe where you are')) {
        await page.locator('keyturn-case [data-key="1"]').tap();
      } else await key(page, 'I don’t know').tap();
    }
    expect(await printed(page)).toContain('What you have with you: voltmeter.');
    expect(await page.locator('keyturn-case .verdict h2').innerText()).toMatch(/battery|fault/i);
    expect(await page.evaluate('verdicts')).toMatchObject([
      { strength: expect.any(String) as string },
    ]);
  });

  test('takes an answer to the first question before the rest is loaded', async () => {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await page.route('**/keyturn-further.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(`${site.url}driver/?lang=en`);
    await page.locator('keyturn-case').getByText('at home').click();
    expect(await page.locator('keyturn-case .notes').innerText()).toBe('One moment …');
    letGo();
    await page.locator('keyturn-case .line').waitFor();
    expect(await printed(page)).toEqual(['Where the vehicle is: at home.']);
  });

  /** A page of somebody else, where nothing keeps the element for a place without signal. */
  async function elsewhere(prepared: (page: Page) => Promise<unknown>): Promise<Page> {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    await prepared(page);
    await page.addInitScript(() => {
      document.addEventListener('keyturn-loaded', () => (document.title = 'loaded'));
    });
    await page.goto(`${site.url}driver/?lang=en`);
    await page.locator('keyturn-case #asked').waitFor();
    return page;
  }
  const type = async (page: Page, line: string): Promise<void> => {
    await page.locator('keyturn-case input[name=line]').fill(line);
    await page.keyboard.press('Enter');
  };

  test('goes by its keys before it can read, and then reads what was typed meanwhile', async () => {
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const page = await elsewhere((to) =>
      to.route('**/keyturn-understanding.js', async (route) => {
        await held;
        await route.continue();
      }),
    );
    await page.locator('keyturn-case').getByText('at home').click();
    await page.locator('keyturn-case .line').waitFor();
    await type(page, 'yes, safe');
    expect(await page.locator('keyturn-case .notes').innerText()).toBe('One moment …');
    letGo();
    await page.locator('keyturn-case .line').nth(1).waitFor();
    expect(await printed(page)).toHaveLength(2);
    await page.waitForFunction(() => document.title === 'loaded');
  });

  test('keeps what was typed where it cannot be read without signal, until there is some', async () => {
    const page = await elsewhere((to) =>
      to.route(/said\/en\.js/, (route) => route.abort('internetdisconnected')),
    );
    await type(page, 'at home');
    await page.getByText('once there is signal again').waitFor();
    expect(await printed(page)).toEqual([]);
    await page.unroute(/said\/en\.js/);
    await page.context().setOffline(true);
    await page.context().setOffline(false);
    await page.locator('keyturn-case .line').waitFor();
    expect(await printed(page)).toEqual(['Where the vehicle is: at home.']);
  });

  test('has all it needs once it is loaded, also where the signal is lost then', async () => {
    const page = await elsewhere(() => Promise.resolve());
    await page.waitForFunction(() => document.title === 'loaded');
    await page.context().setOffline(true);
    for (const line of ['at home', 'yes, safe', 'it clicks once', 'battery at rest 12.45 V']) {
      await type(page, line);
    }
    expect(await printed(page)).toHaveLength(4);
    await page.locator('keyturn-case .picture svg').first().waitFor({ state: 'attached' });
  });

  test('takes a reading from the pad and prints it as a ruler', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    for (const digit of ['1', '2', '.', '4', '5']) await key(page, digit).click();
    expect(await page.locator('keyturn-case .display input').inputValue()).toBe('12.45');
    await key(page, 'Done').click();
    const finding = page.locator('keyturn-case .line', { hasText: '12.45 V' });
    expect(await finding.getByRole('img').getAttribute('aria-label')).toContain('12.45 V: ');
  });

  test('takes a figure from the pad in the unit that it shows', async () => {
    const kept = playUntil(chart, asks('air-temperature'), { choices: flat.choices });
    const { page } = await driver({ kept }, 'en-US');
    expect(await page.locator('keyturn-case .display .unit').innerText()).toBe('°F');
    for (const digit of ['4', '0', 'Done']) await key(page, digit).click();
    expect(await printed(page)).toContainEqual(expect.stringContaining('40 °F'));
  });

  test.each([
    ['air-temperature', 1],
    ['battery-age', 0],
    ['battery-rest', 0],
    ['drop-clamps', 0],
  ])(
    'offers a minus on the pad only where a figure may be below zero: %s',
    async (check, count) => {
      const { page } = await driver({
        kept: playUntil(chart, asks(check), { choices: flat.choices }),
      });
      expect(await key(page, 'Minus').count()).toBe(count);
      expect(await key(page, 'Erase').count()).toBe(1);
    },
  );

  test('sets a reading given in millivolts where it belongs on a ruler in volts', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    const marked = async (line: string): Promise<string | null> => {
      await page.locator('keyturn-case input[name=line]').fill(line);
      await page.keyboard.press('Enter');
      return page.locator('keyturn-case .ruler .mark').last().getAttribute('d');
    };
    const volts = await marked('drop clamps 0.05 V');
    expect(volts).toBeTypeOf('string');
    expect(await marked('correct: drop clamps 50 mV')).toBe(volts);
  });

  test('shows where the leads go, and says it to whoever cannot see it', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    const drawn = page.locator('keyturn-case .card .picture svg');
    await drawn.waitFor();
    expect(await drawn.locator('desc').textContent()).toMatch(/plus post/);
  });

  test('shows how a clamp meter is held, and says it to whoever cannot see it', async () => {
    const kept = playUntil(chart, asks('crank-current'), {
      context: { kit: ['clamp-meter', 'voltmeter', 'helper'] },
      choices: flat.choices,
      readings: { 'battery-rest': 12.7 },
    });
    const { page } = await driver({ kept });
    const svg = page.locator('keyturn-case .card .picture svg');
    await svg.waitFor();
    expect(await svg.locator('desc').textContent()).toContain('the jaws round the minus cable');
  });

  test('says what can hurt before what to do, in one place', async () => {
    const kept = playUntil(chart, ({ state }) => state.verdict !== null, {
      context: { place: 'parking', kit: [] },
      choices: {
        scene: ['safe'],
        complaint: ['rapid-clicking'],
        history: ['lights-left-on'],
        'battery-look': ['sound'],
      },
    });
    const { page } = await driver({ kept });
    const said = await page.locator('keyturn-case .verdict').innerText();
    expect(said).toMatch(/bare metal of the stranded engine.*What to do.*Boost it/s);
    expect(said).not.toContain('Knocking');
    expect(await page.locator('keyturn-case .card .sign').count()).toBe(0);
  });

  test('shows nobody on the shoulder how to boost', async () => {
    const kept = playUntil(chart, awaits('nothing'), {
      context: { place: 'shoulder', kit: ['boost-source'] },
      choices: {
        scene: ['safe'],
        complaint: ['rapid-clicking'],
        history: ['lights-left-on'],
      },
    });
    const { page } = await driver({ kept });
    const said = await page.locator('keyturn-case .page').innerText();
    expect(said).toContain('Discharged battery');
    expect(said).toContain('Wait where you are safe');
    expect(said).not.toMatch(/boost it|bare metal|order of the leads/i);
  });

  const seen = (page: Page, selector: string) =>
    page.locator(`keyturn-case ${selector}`).evaluate((element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    });

  test.each([
    ['a phone', { width: 390, height: 844 }, '.head-key.danger'],
    ['a page at 400 %', { width: 320, height: 256 }, '.low-danger'],
  ])('keeps danger within reach on %s, wherever it is scrolled', async (_, viewport, selector) => {
    const kept = playUntil(chart, ({ state }) => state.verdict !== null, flat);
    const { page } = await driver({ kept, viewport });
    // The circuit comes after the words, and moves what is below it.
    await page.locator('keyturn-case .fits').waitFor();
    await page.evaluate(() => {
      scrollTo(0, document.documentElement.scrollHeight);
    });
    expect(await seen(page, selector)).toBe(true);
    await page.locator(`keyturn-case ${selector}`).click();
    expect(await seen(page, '.drawer .key >> nth=0')).toBe(true);
  });

  /** How far the first thing that fits a selector lies below the head, in pixels. */
  const belowHead = async (page: Page, selector: string): Promise<number> => {
    await page.locator(`keyturn-case ${selector}`).first().waitFor();
    return page.locator('keyturn-case .page').evaluate((all, wanted) => {
      const bottom = (all.querySelector('.top') as Element).getBoundingClientRect().bottom;
      const top = (all.querySelector(wanted) as Element).getBoundingClientRect().top;
      return top < innerHeight ? Math.round(top - bottom) : -Infinity;
    }, selector);
  };
  const say = async (page: Page, line: string): Promise<void> => {
    await page.locator('keyturn-case input[name=line]').fill(line);
    await page.keyboard.press('Enter');
  };
  /** A driver at the hard shoulder with one question left, from memory, before help is named. */
  const shoulder = {
    context: { place: 'shoulder', kit: ['helper'] },
    choices: {
      scene: ['safe'],
      drive: ['petrol'],
      complaint: ['rapid-clicking'],
      when: ['soon-after-stopping'],
      history: ['none'],
      headlamps: ['dim'],
    },
  };

  test.each([
    [320, 'de', ['auf dem Parkplatz', 'ja', 'Diesel', '7']],
    [320, 'ar', ['في موقف سيارات', '1', 'ديزل', '7']],
    [390, 'fr', ['sur un parking', 'oui', 'diesel', '7']],
    [360, 'pl', ['na parkingu', 'tak', 'diesel', '7']],
  ] as const)(
    'shows each question whole below the head, %i pixels wide in “%s”',
    async (width, lang, lines) => {
      const viewport = { width, height: 844 };
      const { page } = await driver({ viewport, reducedMotion: 'reduce' }, lang);
      let taken = 0;
      for (const line of lines) {
        await say(page, line);
        taken += 1;
        // What is typed is heard once the words of the language have come.
        await expect.poll(() => page.locator('keyturn-case .line').count()).toBe(taken);
        expect(await belowHead(page, '#asked')).toBeGreaterThanOrEqual(0);
      }
    },
  );

  test('shows what was wrong with an answer below the head, and not under it', async () => {
    const kept = playUntil(chart, asks('scene'), flat);
    const { page } = await driver({ kept, reducedMotion: 'reduce' });
    await say(page, '12.4');
    expect(await belowHead(page, '.refused')).toBeGreaterThanOrEqual(0);
    // The answers stand on the keys below.
    expect(await page.locator('keyturn-case .refused').innerText()).not.toContain('not safe');
  });

  test('shows a new verdict from its first line, and again after a reload', async () => {
    const kept = playUntil(chart, asks('charge-lamp'), shoulder);
    const { page } = await driver({ kept, reducedMotion: 'reduce' });
    await say(page, 'yes');
    expect(await belowHead(page, '.verdict h2')).toBeGreaterThanOrEqual(0);
    await page.reload();
    await page.locator('keyturn-case .verdict').waitFor();
    expect(await belowHead(page, '.verdict h2')).toBeGreaterThanOrEqual(0);
  });

  test('shows what is to be done again after a reload, and not that it is to be said once done', async () => {
    const isThere = (kase: Case) => kase.state.verdict !== null;
    const { page } = await driver({
      kept: playUntil(chart, isThere, flat),
      reducedMotion: 'reduce',
    });
    await page.waitForFunction(() => {
      const title = document
        .querySelector('keyturn-case')
        ?.shadowRoot?.querySelector('.verdict h2')
        ?.getBoundingClientRect();
      return title !== undefined && title.top > 0 && title.bottom < innerHeight;
    });
  });

  test('shows the caution that is to be confirmed, and not the verdict that stands already', async () => {
    const isThere = (kase: Case) => awaits('confirm')(kase) && kase.state.verdict !== null;
    const kept = playUntil(chart, isThere, flat);
    const { page } = await driver({ kept, reducedMotion: 'reduce' });
    await say(page, 'it has started');
    expect(await page.locator('keyturn-case .card .sign .word').innerText()).toBe('NOTICE');
    await page.locator('keyturn-case .card .keys .key').first().click();
    expect(await page.locator('keyturn-case .card .hold').count()).toBe(1);
    expect(await belowHead(page, '.card')).toBeGreaterThanOrEqual(0);
    // How to boost was said with the verdict; to measure while it charges has a caution of its own.
    expect(await page.locator('keyturn-case .card .sign .text').allInnerTexts()).toEqual([
      expect.stringContaining('The engine may turn at any moment'),
    ]);
  });

  test.each([
    [390, 'en'],
    [320, 'de'],
    [320, 'ar'],
  ])(
    'covers nothing that has the focus, %i pixels wide in “%s” (WCAG 2.4.11)',
    async (width, lang) => {
      const kept = playUntil(chart, ({ state }) => state.verdict !== null, flat);
      const viewport = { width, height: 844 };
      const { page } = await driver({ kept, viewport, reducedMotion: 'reduce' }, lang);
      const steps = await page.locator('keyturn-case :is(button, input, summary)').count();
      for (const key of ['Tab', 'Shift+Tab']) {
        for (let step = 0; step < steps; step += 1) {
          await page.keyboard.press(key);
          const covered = await page.evaluate(async () => {
            await new Promise(requestAnimationFrame);
            const root = document.querySelector('keyturn-case')?.shadowRoot;
            const [focused, head] = [root?.activeElement, root?.querySelector('.top')];
            if (!focused || !head || head.contains(focused)) return '';
            const { top, bottom } = focused.getBoundingClientRect();
            const isSeen = top >= head.getBoundingClientRect().bottom && bottom <= innerHeight;
            return isSeen ? '' : focused.outerHTML;
          });
          expect(covered).toBe('');
        }
      }
    },
  );

  /** A case that has ended at the hard shoulder, where help has to come. */
  const ended = () => playUntil(chart, awaits('nothing'), shoulder);

  test.each(localeTags)(
    'shows the line for own words whole below the first question of a phone, in “%s”',
    async (tag) => {
      const { page } = await driver({}, tag);
      const line = await page.locator('keyturn-case .line-entry').boundingBox();
      expect((line?.y ?? 844) + (line?.height ?? 0)).toBeLessThanOrEqual(844);
    },
  );

  test('writes the scale of a reading so that it can be read on the narrowest phone', async () => {
    const readings = { 'battery-age': 7 };
    const kept = playUntil(chart, (kase) => 'battery-age' in kase.state.answers, {
      choices: flat.choices,
      readings,
    });
    const { page } = await driver({ kept, viewport: { width: 320, height: 844 } });
    const ruler = page.locator('keyturn-case .line .ruler');
    // Letters of 11 units on a drawing 260 wide: from 260 pixels on they are as large as written.
    expect((await ruler.boundingBox())?.width).toBeGreaterThanOrEqual(260);
  });

  test('tells a driver who wants a person that nobody was told, with the note to read out', async () => {
    const { page } = await driver({
      kept: ended(),
      permissions: ['clipboard-write', 'clipboard-read'],
    });
    await key(page, 'More').click();
    await key(page, 'Talk to a person').click();
    const drawer = page.locator('keyturn-case .drawer');
    expect(await drawer.innerText()).toMatch(/has told nobody.*emergency number/s);
    expect(await page.locator('keyturn-case .page').innerText()).not.toContain(
      'takes over from here.',
    );
    await key(page, 'Copy it').click();
    await page.locator('keyturn-case .drawer').getByText('Copied.').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toContain('What happens at start: fast clicking.');
    expect(copied).toMatch(/Most likely at fault: |Worn-out battery comes first/u);
    expect(await violations(page)).toEqual([]);
  });

  test('leaves it to the page around where that brings somebody', async () => {
    const { page } = await driver({ kept: playUntil(chart, asks('scene'), flat) });
    await page.evaluate(() => {
      document.addEventListener('keyturn-aside', (event) => {
        event.preventDefault();
      });
    });
    await key(page, 'More').click();
    await key(page, 'Talk to a person').click();
    expect(await page.locator('keyturn-case .drawer').count()).toBe(0);
    expect(await page.locator('keyturn-case .notes').innerText()).toContain('A person takes over');
  });

  test('gives the note at the end, and says nowhere that somebody has it', async () => {
    const { page } = await driver({ kept: ended() });
    expect(await question(page)).toMatch(/Show or send/);
    await key(page, 'Note to pass on').click();
    const note = await page.locator('keyturn-case .drawer .note').innerText();
    expect(note).toContain('What happens at start: fast clicking.');
    await key(page, 'Close').click();
    expect(await page.locator('keyturn-case .drawer').count()).toBe(0);
    await key(page, 'More').click();
    expect(await key(page, 'Stop here for now').count()).toBe(0);
  });

  test('keeps what was ticked in sight where “none” is pressed beside it', async () => {
    const kept = playUntil(chart, asks('history'), flat);
    const { page } = await driver({ kept });
    const asked = await question(page);
    const picks = page.locator('keyturn-case .pick');
    const [none, other] = [picks.first(), picks.nth(1)];
    const ticked = () => page.locator('keyturn-case .pick[aria-pressed=true]').allInnerTexts();
    await other.click();
    await none.click();
    expect(await question(page)).toBe(asked);
    expect(await ticked()).toEqual([expect.stringContaining('none of these')]);
    await other.click();
    expect(await ticked()).toEqual([expect.stringContaining('something was left on')]);
    await other.click();
    await none.click();
    expect(await question(page)).not.toBe(asked);
  });

  test('has the key that ends a long list on the screen once something is ticked', async () => {
    const { page } = await driver({ kept: playUntil(chart, asks('history'), flat) });
    await page.locator('keyturn-case .pick').nth(1).click();
    const end = await key(page, 'That is all').boundingBox();
    expect((end?.y ?? Infinity) + (end?.height ?? 0)).toBeLessThanOrEqual(844);
  });

  test('has ticked already what was told of a list before it was asked', async () => {
    const given = { context: { kit: undefined }, choices: flat.choices };
    const before = playUntil(chart, asks('complaint'), given);
    const answers = [{ check: 'kit', value: ['voltmeter'] }];
    const told = [{ type: 'answers', answers }] as const;
    const kept = playUntil(chart, asks('kit'), { ...given, from: before, told });
    const { page } = await driver({ kept });
    const ticked = page.locator('keyturn-case .pick[aria-pressed=true]');
    expect(await ticked.allInnerTexts()).toEqual([expect.stringContaining('voltmeter')]);
  });

  test('names with a verdict who should come, offers the note, and only then says what to do', async () => {
    const { page } = await driver({ kept: playUntil(chart, likely, noTools) });
    const verdict = page.locator('keyturn-case .verdict');
    expect(await verdict.innerText()).toMatch(
      /Who should come.*Note to pass on.*WARNING.*What to do.*What this rests on/s,
    );
    await key(page, 'Note to pass on').click();
    expect(await page.locator('keyturn-case .drawer .note').innerText()).toContain('Boost van');
  });

  test('says what a verdict that is not proved rests on, and its cause as no fact', async () => {
    const { page } = await driver({ kept: playUntil(chart, likely, noTools) });
    const said = await page.locator('keyturn-case .verdict').innerText();
    const rests = said.slice(said.indexOf('What this rests on'));
    expect(rests).toContain('What happens at start: fast clicking');
    expect(rests).toContain('Why it may have happened');
    expect(rests).not.toContain('Safety where you are');
  });

  test('calls the emergency number by one key where there is danger', async () => {
    const { page } = await driver();
    await key(page, 'Danger here').click();
    await key(page, 'Smoke or fire').click();
    const call = page.locator('keyturn-case .emergency');
    expect(await call.getAttribute('href')).toBe('tel:112');
    expect(await call.innerText()).toContain('112');
  });

  test('asks about as many cautions as it shows', async () => {
    const { page } = await driver({ kept: playUntil(chart, awaits('confirm'), flat) });
    const count = await page.locator('keyturn-case .card .sign').count();
    expect(await question(page)).toContain(count === 1 ? 'this caution' : `${count} cautions`);
  });

  test('asks whoever says that it runs to go on, and names it under no danger', async () => {
    const { page } = await driver({ kept: playUntil(chart, asks('battery-rest'), flat) });
    await key(page, 'Danger here').click();
    expect(await key(page, 'It has started').count()).toBe(0);
    await key(page, 'More').click();
    await key(page, 'It has started').click();
    await key(page, 'Go on').click();
    expect(
      await page.locator('keyturn-case .card .sign, keyturn-case .card h2').count(),
    ).toBeGreaterThan(0);
  });

  test('takes an answer back as not known', async () => {
    const kept = playUntil(chart, asks('battery-rest'), flat);
    const { page } = await driver({ kept });
    await key(page, 'Correct: What happens at start').click();
    await key(page, 'I don’t know').click();
    expect(await printed(page)).toContain('What happens at start: not known.');
  });

  test('questions a figure that no meter shows there, and keeps the question', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    const asked = await question(page);
    await page.locator('keyturn-case .display input').fill('124');
    await page.keyboard.press('Enter');
    expect(await page.locator('keyturn-case .refused').innerText()).toContain('Did you mean');
    expect(await question(page)).toBe(asked);
  });

  test('takes it by a key that a vehicle is one of 24 V, where its figure says so', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    for (const digit of ['2', '4', '.', '2', 'Done']) await key(page, digit).click();
    await key(page, '24 V').click();
    await type(page, 'at rest 24.2 V');
    expect(await printed(page)).toContainEqual(expect.stringContaining('24.2 V'));
  });

  test('puts an answer right where it is printed, beginning with what stands', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept });
    await key(page, 'Correct: What happens at start').click();
    const stands = page.locator('keyturn-case .card .key[aria-pressed=true]');
    expect(await stands.allInnerTexts()).toEqual([expect.stringContaining('it turns slowly')]);
    await page.locator('keyturn-case [data-key="1"]').click();
    expect(await printed(page)).toContainEqual(expect.stringContaining('nothing at all'));
  });

  test('goes on with a hazardous step only once its key has been held', async () => {
    const { page } = await driver({ kept: playUntil(chart, awaits('confirm'), flat) });
    const asked = await question(page);
    expect(await page.locator('keyturn-case .sign').count()).toBeGreaterThan(0);
    await hold(page, 150);
    expect(await question(page)).toBe(asked);
    await hold(page);
    expect(await question(page)).not.toBe(asked);
  });

  test('takes a held key when the finger is lifted, and nothing that then lies under it', async () => {
    const { page } = await driver({
      kept: playUntil(chart, awaits('confirm'), flat),
      hasTouch: true,
      isMobile: true,
    });
    const warned = await question(page);
    const finger = await fingerOnHold(page);
    await finger.down();
    await page.waitForTimeout(1_300);
    // Nothing new lies under a finger that is still down.
    expect(await question(page)).toBe(warned);
    await finger.up();
    await expect.poll(() => question(page)).not.toBe(warned);
    const asked = await question(page);
    const count = (await printed(page)).length;
    await page.waitForTimeout(700);
    expect(await question(page)).toBe(asked);
    expect(await printed(page)).toHaveLength(count);
  });

  test('takes no tap that began before the question stood there', async () => {
    const { page } = await driver({
      kept: playUntil(chart, awaits('confirm'), flat),
      hasTouch: true,
      isMobile: true,
    });
    const finger = await fingerOnHold(page);
    await finger.down();
    // A keyboard may take the step further while a finger still lies on the glass.
    const key = page.locator('keyturn-case .hold');
    await key.evaluate((held: HTMLElement) => {
      held.click();
    });
    await key.evaluate((held: HTMLElement) => {
      held.click();
    });
    await page.locator('keyturn-case .card [data-key], keyturn-case .digit').first().waitFor();
    const asked = await question(page);
    await page.waitForTimeout(100);
    await finger.up();
    await page.waitForTimeout(700);
    expect(await question(page)).toBe(asked);
  });

  test('says to whoever only taps a key that has to be held how long that is', async () => {
    const { page } = await driver({ kept: playUntil(chart, awaits('confirm'), flat) });
    expect(await page.locator('keyturn-case .hint.short').count()).toBe(0);
    await hold(page, 150);
    expect(await page.locator('keyturn-case .hint.short').isVisible()).toBe(true);
  });

  test('opens without signal once it has been loaded, and goes on', async () => {
    const { page, context } = await driver();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.locator('keyturn-case [data-key="4"]').click();
    await context.setOffline(true);
    site.close();
    try {
      await page.reload();
      await page.locator('keyturn-case .line').first().waitFor();
      expect(await printed(page)).toEqual(['Where the vehicle is: at home.']);
      await page.locator('keyturn-case').evaluate((element) => {
        (element as HTMLElement).lang = 'de';
      });
      await page.getByText('Wo das Fahrzeug steht').waitFor();
    } finally {
      site = await servePages();
    }
  });

  test.each(['en_US', 'en-US@posix', 'C'])(
    'opens in English where the system says %s',
    async (lang) => {
      const { page } = await driver({}, lang);
      expect(await question(page)).toBe('Where is the vehicle standing now?');
    },
  );

  test('goes on after a reload, and forgets a case on request', async () => {
    const { page } = await driver();
    await page.locator('keyturn-case [data-key="4"]').click();
    const asked = await question(page);
    await page.reload();
    expect(await question(page)).toBe(asked);
    await key(page, 'More').click();
    await key(page, 'Clear this case from this device').click();
    await key(page, 'Really clear it: nothing of it stays').click();
    expect(await question(page)).toBe('Where is the vehicle standing now?');
    expect(await page.evaluate(() => localStorage.getItem('keyturn-case'))).toBe(null);
  });

  test('comes back to the step in hand, and not to where the strip begins', async () => {
    const { page } = await driver({ kept: playUntil(chart, awaits('wait'), flat) });
    await page.waitForFunction(() => {
      const card = document.querySelector('keyturn-case')?.shadowRoot?.querySelector('.card');
      return card !== null && card !== undefined && card.getBoundingClientRect().top < innerHeight;
    });
  });

  test('says that a case of another version cannot be gone on with, and loses nothing', async () => {
    const { page } = await driver({ kept: { ...playUntil(chart, asks('scene')), events: [] } });
    expect(await page.locator('keyturn-case .refused').innerText()).toContain('A copy of it stays');
    expect(await page.evaluate(() => localStorage.getItem('keyturn-case.unfit'))).toContain(
      'played',
    );
  });

  test('lets a wait be seen, felt and heard, and goes on by itself', async () => {
    const kept = playUntil(chart, awaits('wait'), flat);
    const { page } = await driver({ kept, hasClock: true });
    await page.evaluate(() => {
      const buzzes: unknown[] = [];
      Object.assign(globalThis, { buzzes });
      navigator.vibrate = (pattern) => buzzes.push(pattern) > 0;
    });
    expect(await page.locator('keyturn-case .left').innerText()).toMatch(/^19:\d\d$|^20:00$/);
    const asked = await question(page);
    await page.clock.fastForward('20:05');
    await page.waitForFunction(
      (before) =>
        document.querySelector('keyturn-case')?.shadowRoot?.querySelector('#asked')?.textContent !==
        before,
      asked,
    );
    expect(await page.evaluate('buzzes')).toHaveLength(1);
  });

  test('is written from right to left in Arabic, with figures and units as they are', async () => {
    const kept = playUntil(chart, asks('battery-rest'), { choices: flat.choices });
    const { page } = await driver({ kept }, 'ar');
    expect(await page.locator('keyturn-case .page').getAttribute('dir')).toBe('rtl');
    await page.locator('keyturn-case .display input').fill('12.4');
    expect(
      await page
        .locator('keyturn-case .display')
        .evaluate((element) => getComputedStyle(element).direction),
    ).toBe('ltr');
    await page.keyboard.press('Enter');
    const value = page.locator('keyturn-case .line .value').last();
    expect((await value.innerText()).replaceAll(/[\u2066-\u2069\u200e\u200f]/g, '')).toMatch(
      /^12\.4\s?V$|^12\.4\s?فولت$/u,
    );
    // The figure is seen left of its unit's first letter only if it is not turned round.
    const [one, four] = await value.evaluate((element) => {
      const node = document.createTreeWalker(element, NodeFilter.SHOW_TEXT).nextNode();
      const at = (sign: string): number => {
        const range = document.createRange();
        const text = node as Text;
        const index = text.data.indexOf(sign);
        range.setStart(text, index);
        range.setEnd(text, index + 1);
        return range.getBoundingClientRect().left;
      };
      return [at('1'), at('4')];
    });
    expect(one).toBeLessThan(four);
  });

  test.each([
    '<img src=x onerror="document.title=1">',
    '"><script>document.title=1</script>',
    '${alert(1)} {{constructor}} javascript:alert(1)',
    '\u202Eabc\u0000<svg/onload=alert(1)>',
  ])('shows %s as text', async (hostile) => {
    const { page } = await driver();
    const title = await page.title();
    await page.locator('keyturn-case input[name=line]').fill(hostile);
    await page.keyboard.press('Enter');
    await page.locator('keyturn-case .notes .refused').waitFor();
    expect(await page.title()).toBe(title);
    expect(await page.locator('keyturn-case .page').locator('img, script, [onload]').count()).toBe(
      0,
    );
  });

  test('is done by the keyboard alone', async () => {
    const kept = playUntil(chart, awaits('confirm'), flat);
    const { page } = await driver({ kept });
    const asked = await question(page);
    for (let steps = 0; steps < 80; steps += 1) {
      await page.keyboard.press('Tab');
      const label = await page.evaluate(
        () =>
          document.querySelector('keyturn-case')?.shadowRoot?.activeElement?.textContent.trim() ??
          '',
      );
      if (label.startsWith('Hold')) break;
    }
    await page.keyboard.press('Enter');
    expect(await question(page)).toBe(asked);
    await page.keyboard.press('Enter');
    expect(await question(page)).not.toBe(asked);
    // The focus is where the next answer goes; number keys answer a choice.
    const focused = await page.evaluate(
      () => document.querySelector('keyturn-case')?.shadowRoot?.activeElement?.tagName,
    );
    expect(['H2', 'INPUT']).toContain(focused);
  });

  test.each([
    ['de-AT', 'Bevor Sie einen Anlasser kaufen', 'Wo steht das Fahrzeug jetzt?', 'Deutsch'],
    ['ar-EG', 'قبل أن تشتري بادئ حركة', 'أين تقف المركبة الآن؟', 'العربية'],
  ])(
    'speaks %s in the invented shop, the page and the element alike',
    async (locale, title, asked, name) => {
      const { page } = await open(`${site.url}shop/`, { locale });
      expect(await page.locator('main > h1').innerText()).toBe(title);
      expect(await question(page)).toBe(asked);
      expect(await page.locator('#banner p').last().innerText()).not.toContain('invented');
      await page.locator('keyturn-case .head-key').last().click();
      const picked = page.locator('keyturn-case .language option:checked');
      expect(await picked.innerText()).toBe(name);
      await page.locator('keyturn-case .language select').selectOption('en');
      await page.getByRole('heading', { name: 'Before you buy a starter' }).waitFor();
    },
  );

  test('stands whole in a page whose style is hostile', async () => {
    const plain = await driver();
    const hostile = await open(`${site.url}shop/`, { locale: 'en' });
    const measures = ({ page }: Opened) =>
      page
        .locator('keyturn-case .card .keys .key')
        .first()
        .evaluate((element) => {
          const {
            fontFamily,
            letterSpacing,
            textTransform,
            textAlign,
            lineHeight,
            display,
            cssFloat,
          } = getComputedStyle(element);
          return {
            fontFamily,
            letterSpacing,
            textTransform,
            textAlign,
            lineHeight,
            display,
            cssFloat,
            height: element.clientHeight,
          };
        });
    expect(await measures(hostile)).toEqual(await measures(plain));
  });

  const screens: Readonly<Record<string, () => PageOptions>> = {
    'the first question': () => ({}),
    'several answers': () => ({
      kept: playUntil(chart, asks('kit'), { context: { kit: undefined } }),
    }),
    'the pad': () => ({ kept: playUntil(chart, asks('battery-rest'), flat) }),
    'a hazardous step': () => ({ kept: playUntil(chart, awaits('confirm'), flat) }),
    'a wait': () => ({ kept: playUntil(chart, awaits('wait'), flat) }),
    'a verdict': () => ({ kept: playUntil(chart, ({ state }) => state.verdict !== null, flat) }),
    'the end': () => ({ kept: playUntil(chart, awaits('nothing'), flat) }),
  };

  /**
   * What breaks WCAG, with the page unscrolled and then where it lies when it comes to the step in
   * hand. The strip is measured unscrolled only: it passes under the head as paper does.
   */
  async function violations(page: Page): Promise<readonly string[]> {
    await page.evaluate(axe);
    const measured = (exclude: readonly string[]) =>
      page.evaluate(
        async ([tags, without]) => {
          const { axe: engine } = globalThis as unknown as {
            axe: {
              run: (
                context: object,
                options: object,
              ) => Promise<{
                violations: { id: string; nodes: { html: string; failureSummary: string }[] }[];
              }>;
            };
          };
          const { violations: found } = await engine.run(
            { exclude: without.map((selector) => ({ fromShadowDom: ['keyturn-case', selector] })) },
            { runOnly: { type: 'tag', values: tags } },
          );
          return found.flatMap(({ id, nodes }) =>
            nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
          );
        },
        [wcag, exclude] as const,
      );
    await page.evaluate(() => {
      scrollTo(0, 0);
    });
    const unscrolled = await measured([]);
    await page.locator('keyturn-case').evaluate((element) => {
      (element as HTMLElement & { showStep: () => void }).showStep();
    });
    return [...unscrolled, ...(await measured(['.strip']))];
  }

  describe.each(Object.keys(screens))('%s', (name) => {
    test.each(['light', 'dark'] as const)('keeps to WCAG 2.2 AA in %s', async (colorScheme) => {
      const { page } = await driver({ ...screens[name]?.(), colorScheme, reducedMotion: 'reduce' });
      expect(await violations(page)).toEqual([]);
    });

    test('has every target at least 48 pixels high, and room at 320 pixels and 400 %', async () => {
      // 1280 by 1024 pixels at 400 % are 320 by 256.
      const { page } = await driver({
        ...screens[name]?.(),
        viewport: { width: 320, height: 256 },
      });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(320);
      const small = await page
        .locator(
          'keyturn-case button, keyturn-case input, keyturn-case summary, keyturn-case select',
        )
        .evaluateAll((all) =>
          all
            .map((one) => ({ height: one.getBoundingClientRect().height, is: one.outerHTML }))
            .filter(({ height }) => height > 0 && height < 47.9),
        );
      expect(small).toEqual([]);
    });
  });

  test.each(['danger', 'more'])(
    'keeps to WCAG 2.2 AA with the drawer “%s” open',
    async (drawer) => {
      const { page } = await driver();
      await page.locator(`keyturn-case .head-key.${drawer}`).click();
      expect(await violations(page)).toEqual([]);
    },
  );

  test('holds a danger until it is over, and asks then whether all are safe', async () => {
    const { page } = await driver();
    await key(page, 'Danger here').click();
    await page.locator('keyturn-case .drawer .key').first().click();
    expect(await page.locator('keyturn-case .sign .word').innerText()).toContain('DANGER');
    expect(await violations(page)).toEqual([]);
    await key(page, 'It is over').click();
    // Whatever was asked before: first it is known that all are safe.
    expect(await question(page)).toBe('Before anything else: is everyone safe where you are?');
  });

  test('shows its keys and its marks where colours are forced', async () => {
    const { page } = await driver({
      kept: playUntil(chart, asks('battery-rest'), flat),
      forcedColors: 'active',
    });
    const border = await page
      .locator('keyturn-case .digit')
      .first()
      .evaluate((element) => getComputedStyle(element).borderTopStyle);
    expect(border).toBe('solid');
    expect(await violations(page)).toEqual([]);
  });

  test('shows the sign of a danger where colours are forced', async () => {
    const kept = playUntil(chart, awaits('confirm'), { context: { place: 'shoulder' } });
    const { page } = await driver({ kept, forcedColors: 'active' });
    const [sign, paper] = await page
      .locator('keyturn-case .sign .alert path')
      .first()
      .evaluate((path) => [
        getComputedStyle(path).fill,
        getComputedStyle(path.closest('.sign') as Element).backgroundColor,
      ]);
    expect(sign).not.toBe(paper);
  });

  test('moves nothing for whoever wants no motion', async () => {
    const kept = playUntil(chart, asks('battery-rest'), flat);
    const { page } = await driver({ kept, reducedMotion: 'reduce' });
    const moving = await page.evaluate(
      () => document.querySelector('keyturn-case')?.shadowRoot?.getAnimations().length,
    );
    expect(moving).toBe(0);
  });
});

test.runIf(whyNoBrowser !== undefined)(`not tried here: ${whyNoBrowser ?? ''}`, () => {
  expect(whyNoBrowser).toBeTypeOf('string');
});
