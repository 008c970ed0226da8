/**
 * Parts that come over the counter of the invented shop, as a clerk has them in hand: with nothing
 * but the customer's word, or with a receipt and the code of the vehicle's case to scan.
 */
import { encodeFindings } from '@keyturn/sheets';
import { shippedFlow } from '@keyturn/terminal';
import type { Browser } from 'playwright-core';
import type { PartInHand } from './counter-clerk.ts';
import { openCounter, inside, press, type OpenedCounter } from './counter-page.ts';
import { playUntil } from './element-page.ts';

/** The runner of a bench names functions through a call that a page does not know. */
const naming = 'globalThis.__name = (named) => named;';

/** The counter in English with the invented shop, and nothing in hand. */
export async function counterWithShop(browser: Browser, url: string): Promise<OpenedCounter> {
  const opened = await openCounter(browser, `${url}desk/counter.html?lang=en`, {
    before: (page) => page.addInitScript(naming),
  });
  await press(opened.page, '3');
  await inside(opened.page, '.ledger').waitFor();
  await press(opened.page, '+');
  return opened;
}

/** A day so many days ago, ISO 8601. */
const daysAgo = (days: number): string => new Date(Date.now() - days * 86_400_000).toISOString();

const sold = daysAgo(300).slice(0, 10);

/** A starter that is good: everything there is to be asked of one is asked. */
const goodStarter = {
  'part-number': 'matches-sale',
  'sale-proof': 'shown',
  'sale-date': sold,
  claim: 'slow-crank',
  handling: 'fitted',
  stud: 'sound',
  housing: 'sound',
  pinion: 'clean',
  soiling: 'dry',
  'suits-vehicle': 'suits',
  'heat-marks': 'none',
  'drive-turn': 'one-way',
  'part-voltage': 'twelve',
  'part-class': 'car',
  'part-build': 'geared',
  plunger: 'throws-and-holds',
  'bench-run': 'even',
  'bench-supply': '11.7',
  'no-load-current': '62',
  'no-load-speed': '3150',
  'warm-repeat': 'same',
  'vehicle-proof': 'incomplete',
};

/** A battery that is good. */
const goodBattery = {
  'part-number': 'matches-sale',
  'sale-proof': 'shown',
  'sale-date': sold,
  claim: 'slow-crank',
  handling: 'fitted',
  'battery-look': 'sound',
  posts: 'sound',
  'suits-vehicle': 'suits',
  electrolyte: 'covered',
  'battery-kind': 'flooded',
  'case-temperature': '20',
  'received-volts': '12.62',
  'label-rating': '640 EN',
  'label-standard': 'en',
  'battery-load-test': '10.4',
  'battery-tester': '610',
  'vehicle-proof': 'incomplete',
};

/** A battery with a dead cell, sold in a month of which nobody knows the day. */
const batteryWithDeadCell = {
  ...goodBattery,
  'sale-date': 'warranty',
  claim: 'goes-flat',
  'received-volts': '11.9',
  'label-rating': '540 EN',
  'charge-take': 'takes',
  'battery-recharged': '12.3',
  'cell-spread': '1.26 1.26 1.25 1.26 1.12 1.26',
};

const measured = {
  context: { place: 'workshop', kit: ['voltmeter', 'helper'], vehicle: { fuel: 'petrol' } },
  choices: {
    scene: ['safe'],
    drive: ['petrol'],
    complaint: ['slow-crank'],
    'battery-look': ['sound'],
    terminals: ['clean-tight'],
  },
  readings: {
    'battery-rest': 12.65,
    'battery-crank': 10.6,
    'drop-clamps': 0.02,
    'drop-positive': 0.1,
    'drop-ground': 0.6,
    'air-temperature': 20,
  },
};

/** What was read on such a vehicle, in the order of the fields; of the start command nothing. */
const readOut = ['12.7', '10.6', '0.2', '1.6', '', '170'];

/** The code of a vehicle on which something else is bad. */
function codeOfVehicle(): string {
  const { chart } = shippedFlow('no-start', 'en');
  const given = { ...measured, at: daysAgo(2) };
  const { case: kase } = playUntil(chart, ({ state }) => state.verdict !== null, given);
  return encodeFindings(chart.flow, kase);
}

/** The parts by what each shows. */
export function partsInHand(): Readonly<Record<string, PartInHand>> {
  const code = codeOfVehicle();
  const starter = {
    begin: '1',
    texts: shippedFlow('starter-return', 'en').texts,
    found: goodStarter,
  };
  const battery = {
    begin: '2',
    texts: shippedFlow('battery-return', 'en').texts,
    found: goodBattery,
  };
  return {
    'starter by hand': { ...starter, scans: [] },
    'battery by hand': { ...battery, scans: [] },
    'starter by hand, with readings of the vehicle': { ...starter, scans: [], readOut },
    'flat battery by hand, its cells read with a hydrometer that the shop does not list': {
      ...battery,
      found: batteryWithDeadCell,
      paid: '89.9',
      scans: [],
    },
    'starter with receipt and code': { ...starter, scans: ['W-10211', code] },
    'battery with receipt and code': { ...battery, scans: ['W-09702', code] },
  };
}
