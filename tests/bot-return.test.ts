/**
 * The bot at the counter: a part comes back in the chat, from its command with the price to the
 * decision with the arithmetic of the shop's terms, or without any amount. The shop is invented.
 */
import { fileURLToPath } from 'node:url';
import { hearsByHand } from '@keyturn/conversation';
import type { OfferedFlow } from '@keyturn/conversation/kept';
import {
  shippedFlow,
  shippedLocales,
  shippedTexts,
  shippedVehicle,
  shopTerms,
} from '@keyturn/flows';
import { encodeFindings } from '@keyturn/sheets';
import { describe, expect, onTestFinished, test } from 'vitest';
import { vehicleSaid } from '@keyturn/telegram';
import { driver, startBot, type Driver } from './support/bot-driver.ts';
import { noStart } from './support/no-start.ts';
import { answers, open, take, type Answers } from './support/play.ts';

const policy = shopTerms(fileURLToPath(new URL('../examples/shop-terms.yaml', import.meta.url)));

function offeredOn(terms: Pick<NonNullable<OfferedFlow['opening']>, 'policy'>): OfferedFlow[] {
  return ['starter-return', 'battery-return'].map((name) => ({
    chart: shippedFlow(name, 'en').chart,
    texts: (locale) => shippedTexts(name, locale),
    locales: shippedLocales(name),
    opening: { context: { role: 'clerk' }, ...terms },
    vehicleOf: (text) =>
      vehicleSaid(noStart.chart, name === 'starter-return' ? 'starter' : 'battery', text),
    byHandIn: (locale) => hearsByHand(() => shippedVehicle(locale)),
  }));
}

/** A clerk in a chat on the last day of March 2026, with the shop's terms or without. */
async function clerk(
  given: { readonly terms?: typeof policy | undefined; readonly language?: string } = {
    terms: policy,
  },
): Promise<Driver> {
  const { terms, language = 'en' } = given;
  const running = await startBot({
    offered: offeredOn(terms === undefined ? {} : { policy: terms }),
    now: () => new Date('2026-03-31T10:00:00Z'),
  });
  onTestFinished(async () => {
    await running.stop();
    expect(running.errors).toEqual([]);
  });
  return driver(running, { person: 7, language });
}

/** Answers one thing after another; all that was said from the command on. */
async function play(person: Driver, ...lines: readonly string[]): Promise<string> {
  for (const line of lines) await person.say(line);
  const said = person.all().map(({ text }) => text);
  return said
    .join('\n\n')
    .replaceAll(/[\u2066-\u2069]/gu, '')
    .replaceAll('\u00a0', ' ');
}

const unused = [
  'receipt',
  'it matches',
  '2026-03-10',
  'not needed',
  'never fitted',
  'sound',
  'whole',
  'teeth fine',
  'dry',
  'right part',
];

/** A battery of 119.90 sold on 15 January 2025 that gives way under load. */
const worn = [
  'receipt',
  'ours',
  '2025-01-15',
  'slow',
  'it was fitted',
  'flooded',
  'whole and dry',
  'posts are fine',
  'right one',
  'covered',
  'voltmeter, load tester, thermometer',
  '12.7',
  '21',
  '640',
  'EN',
  'yes',
  '8.6',
];

test('an unused starter comes back for its price less restocking', async () => {
  const said = await play(await clerk(), '/starter_return 142,50', ...unused);
  expect(said).toContain('We take it back');
  // 15 % of 142.50 is 21.375: 121.125 is rounded in the customer's favour, so 21.37 is kept.
  for (const line of ['€142.50 paid for the part', '€21.37: 15 %', '€121.13 in all']) {
    expect(said).toContain(line);
  }
  expect(said).toContain('Consumer law where you live comes first');
});

test('a worn battery comes back by the steps of its warranty', async () => {
  const said = await play(await clerk(), '/battery_return 119.90', ...worn);
  expect(said).toContain('We take it back');
  // 15 January 2025 to 31 March 2026: 14 whole months; 60 % of 119.90 is 71.94.
  expect(said).toContain('months of use: 14; 60 % of the price is paid back');
  expect(said).toContain('€71.94 in all');
});

test('a day put right afterwards changes decision and amount', async () => {
  const person = await clerk();
  await play(person, '/battery_return 119.90', ...worn);
  const said = await play(person, 'correction date of sale 2024-01-15');
  // 26 whole months: 30 % of 119.90 is 35.97.
  expect(said).toContain('€35.97 in all');
  const late = await play(person, 'correction date of sale 2023-01-15');
  expect(late).toContain('We can’t take it back');
});

test('a starter out of time is not taken back, and no amount is told', async () => {
  const said = await play(await clerk(), '/starter_return 142.50', 'receipt', 'ours', '2024-03-30');
  expect(said).toContain('We can’t take it back');
  expect(said).not.toContain('€');
});

test.each([
  ['no price', { terms: policy }, '/starter_return'],
  ['no terms', {}, '/starter_return 142.50'],
])('with %s the part is judged the same and no amount is told', async (_, given, command) => {
  const lines = unused.map((line) => (!('terms' in given) && line.startsWith('2026') ? '1' : line));
  const said = await play(await clerk(given), command, ...lines);
  expect(said).toContain('We take it back');
  expect(said).not.toContain('€');
});

test.each([
  ['about 20', { terms: policy }, 'No price was taken'],
  ['142.505', { terms: policy }, 'No price was taken'],
  ['-5', { terms: policy }, 'No price was taken'],
  ['142,50', {}, 'No price was taken'],
  ['rund 20', { terms: policy, language: 'de' }, 'Kein Preis wurde übernommen'],
])('“%s” is told not to be taken, and the return begins', async (price, given, told) => {
  const person = await clerk(given);
  const said = await play(person, `/battery_return ${price}`);
  expect(said).toContain(told);
  expect(said.length).toBeGreaterThan(told.length + 200);
});

/** The code of a vehicle's case of the first of January 2026. */
function codeOf(vehicle: Record<string, unknown>, found: Answers): string {
  const { case: kase } = take(open(vehicle), answers(found));
  return encodeFindings(noStart.chart.flow, kase);
}

/** A battery that is charged and a clamp that loses too much, so that it is not the starter. */
const badClamp: Answers = { 'battery-rest': 12.6, 'drop-clamps': 1 };

describe('the code of the vehicle’s case, typed into a return', () => {
  const sold = ['receipt', 'ours', '2025-06-15'];

  test('is taken, and what the vehicle says is not asked any more', async () => {
    const code = codeOf({}, badClamp);
    const grouped = code.replaceAll(/(.{4})/gu, '$1 ').toLowerCase();
    const said = await play(
      await clerk(),
      '/starter_return 142.50',
      ...sold,
      `the code is ${grouped} thanks`,
    );
    expect(said).toContain('The case of the vehicle is of January 1, 2026');
    expect(said).toContain('What the vehicle says: something else bad.');
  });

  test.each([
    ['older than the part', (code: string) => code, '2026-02-01', 'not later than the sale of'],
    ['with a wrong letter', swapped, '2025-06-15', 'Letters of the code are wrong or missing'],
  ])('that is %s changes nothing', async (_, typed, day, told) => {
    const person = await clerk();
    const lines = ['/starter_return 142.50', 'receipt', 'ours', day];
    const said = await play(person, ...lines, typed(codeOf({}, badClamp)));
    expect(said).toContain(told);
    expect(said).not.toContain('What the vehicle says:');
  });

  test('and the day of the sale told afterwards shows that it is older', async () => {
    const person = await clerk();
    const code = codeOf({}, badClamp);
    const said = await play(
      person,
      '/starter_return 142.50',
      code,
      'receipt',
      'ours',
      '2026-02-01',
    );
    expect(said).toContain('What the vehicle says: nothing, or not enough');
  });
});

/** A code with its last two letters in each other's place, or another last one. */
function swapped(code: string): string {
  const [other, last] = [code.at(-2) ?? '', code.at(-1) ?? ''];
  return code.slice(0, -2) + (other === last ? (last === 'A' ? 'BA' : 'AB') : last + other);
}

/** A starter on which a shop without terms finds nothing, as far as the vehicle. */
const nothingFound = [
  'receipt',
  'ours',
  'in warranty',
  'slow',
  'fitted',
  'sound',
  'whole',
  'teeth fine',
  'dry',
  'right part',
  'no marks',
  'free one way',
  'bench',
  '12 V',
  'car',
  'geared',
  'yes',
  'comes out and stays',
  '12.5 V',
  '78 A',
  'even',
  'the same',
];

describe('readings of the vehicle, typed where it is asked for', () => {
  test('are judged by the flow of vehicles, with why, and are none of the bench’s', async () => {
    const person = await clerk({});
    await person.say('/starter_return');
    const said = await play(person, ...nothingFound, '10.9 cranking, 2.6 on the plus side');
    expect(said).toContain(
      'Heard as readings of the vehicle: Battery voltage while starting 10.9 V and Loss on the plus side 2.6 V.',
    );
    expect(said).toContain('This points elsewhere: Loss on the plus side 2.6 V (');
    expect(said).toContain('What the vehicle says: something else bad.');
    expect(said).not.toContain('Supply at the starter: 10.9');
  });

  test('what it takes still for them to speak against the part is said', async () => {
    const person = await clerk({});
    await person.say('/starter_return');
    const said = await play(person, ...nothingFound, '12.75 at rest, 10.9 cranking');
    expect(said).toContain(
      'to speak against the part: Loss on the plus side and Loss on the ground side.',
    );
    expect(said).toContain('What the vehicle says: nothing, or not enough.');
  });
});
