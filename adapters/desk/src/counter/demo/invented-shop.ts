/**
 * An invented shop: its terms, its parts, its sales, and three parts that have come back.
 */
import type { SoldPart } from '@keyturn/core';
import type { Diagnosis } from '../return/counter-return.ts';
import type { Shop } from '../shop/shop.ts';

/** A part of the shop that has come back, and what is found of it. */
export interface InventedReturn {
  readonly id: string;
  readonly receipt: string;
  readonly part: SoldPart;
  /** Check to an answer, several, or a figure in the check's own unit; what is missing is not known. */
  readonly answers: Readonly<Record<string, readonly string[] | number>>;
  /** How many questions have been answered when it lies on the counter. */
  readonly answered: number;
  readonly diagnosis: Diagnosis;
}

/** The day so many days before another, ISO 8601. */
function daysBefore(day: string, days: number): string {
  const at = new Date(`${day}T12:00:00Z`);
  at.setUTCDate(at.getUTCDate() - days);
  return at.toISOString().slice(0, 10);
}

/** The shop as it is on a day, ISO 8601: its sales lie before it. */
export function inventedShop(today: string): Shop {
  return {
    isInvented: true,
    policy: {
      shop: 'Wexcombe Motor Parts (invented)',
      currency: 'EUR',
      'return-window': { days: 30, restocking: { percent: 10 } },
      warranty: { starter: { months: 24 }, battery: { months: 36, 'pro-rata': 'by-month' } },
      'exchange-deposit': { starter: 4500, battery: 1200 },
    },
    kit: [
      'bench-tester',
      'speed-meter',
      'voltmeter',
      'charger',
      'load-tester',
      'electronic-tester',
      'thermometer',
    ],
    parts: [
      {
        number: 'ST-2140',
        name: 'Geared starter 1.4 kW',
        part: 'starter',
        price: 18900,
        context: {
          part: {
            nominal: 12,
            build: 'geared',
            class: 'car',
            limits: { 'no-load-current': { low: 35, high: 80, unit: 'A' } },
          },
        },
      },
      {
        number: 'ST-0917',
        name: 'Direct starter 0.9 kW',
        part: 'starter',
        price: 14250,
        context: { part: { nominal: 12, build: 'direct', class: 'car' } },
      },
      {
        number: 'BT-0640',
        name: 'Battery 64 Ah 640 A',
        part: 'battery',
        price: 11990,
        context: {
          part: {
            nominal: 12,
            battery: { technology: 'flooded', rating: 640, standard: 'en' },
          },
        },
      },
    ],
    sales: [
      {
        receipt: 'W-10482',
        number: 'ST-2140',
        sold: daysBefore(today, 96),
        price: 18900,
        oldUnit: 'returned',
        vehicle: { fuel: 'petrol', nominal: 12 },
      },
      {
        receipt: 'W-10377',
        number: 'ST-0917',
        sold: daysBefore(today, 200),
        price: 14250,
        oldUnit: 'owed',
        vehicle: { fuel: 'diesel', nominal: 12 },
      },
      {
        receipt: 'W-09815',
        number: 'BT-0640',
        sold: daysBefore(today, 430),
        price: 11990,
        oldUnit: 'returned',
        vehicle: { fuel: 'petrol', nominal: 12 },
      },
      ...soldBefore.map(([receipt, number, days, price]) => ({
        receipt,
        number,
        sold: daysBefore(today, days),
        price,
      })),
    ],
  };
}

/** Sales of the parts that came back the day before: receipt, number, so many days ago, price. */
const soldBefore = [
  ['W-10211', 'ST-2140', 180, 18900],
  ['W-10236', 'ST-0917', 171, 14250],
  ['W-09702', 'BT-0640', 460, 11990],
  ['W-10240', 'ST-2140', 170, 18900],
  ['W-10258', 'ST-0917', 160, 14250],
  ['W-10263', 'ST-2140', 158, 18900],
  ['W-10277', 'ST-0917', 150, 14250],
] as const;

/** How parts of the day before ended: what each was bought on, and what it came to. */
export const endedReturns: readonly {
  readonly receipt: string;
  readonly diagnosis: Diagnosis;
  readonly decide: string;
  readonly reason: string;
}[] = [
  {
    receipt: 'W-10211',
    diagnosis: { by: 'own-guess' },
    decide: 'decline',
    reason: 'no-fault-found',
  },
  {
    receipt: 'W-10236',
    diagnosis: { by: 'own-guess' },
    decide: 'decline',
    reason: 'cause-elsewhere',
  },
  {
    receipt: 'W-09702',
    diagnosis: { by: 'own-guess' },
    decide: 'decline',
    reason: 'no-fault-found',
  },
  { receipt: 'W-10240', diagnosis: { by: 'own-guess' }, decide: 'accept', reason: 'motor-open' },
  { receipt: 'W-10258', diagnosis: { by: 'workshop' }, decide: 'accept', reason: 'solenoid-fault' },
  {
    receipt: 'W-10263',
    diagnosis: { by: 'workshop' },
    decide: 'decline',
    reason: 'cause-elsewhere',
  },
  {
    receipt: 'W-10277',
    diagnosis: { by: 'case', fault: 'starter-motor', strength: 'proved' },
    decide: 'accept',
    reason: 'motor-resistance',
  },
];

/** The three parts, the guided one first. */
export const inventedReturns: readonly InventedReturn[] = [
  {
    id: 'guided-starter',
    receipt: 'W-10482',
    part: 'starter',
    answered: 0,
    diagnosis: { by: 'own-guess' },
    answers: {
      'part-number': ['matches-sale'],
      claim: ['slow-crank'],
      handling: ['fitted'],
      stud: ['sound'],
      housing: ['sound'],
      pinion: ['clean'],
      soiling: ['dry'],
      'suits-vehicle': ['suits'],
      'heat-marks': ['none'],
      'drive-turn': ['one-way'],
      plunger: ['throws-and-holds'],
      'bench-run': ['even'],
      'bench-supply': 11.7,
      'no-load-current': 62,
      'no-load-speed': 3150,
      'warm-repeat': ['same'],
      'vehicle-proof': ['incomplete'],
    },
  },
  {
    id: 'dragging-starter',
    receipt: 'W-10377',
    part: 'starter',
    answered: 11,
    diagnosis: { by: 'workshop' },
    answers: {
      'part-number': ['matches-sale'],
      claim: ['noise'],
      handling: ['fitted'],
      stud: ['sound'],
      housing: ['sound'],
      pinion: ['clean'],
      soiling: ['dry'],
      'suits-vehicle': ['suits'],
      'heat-marks': ['none'],
      'drive-turn': ['one-way'],
      plunger: ['throws-and-holds'],
      'bench-run': ['scraping'],
      'bench-supply': 11.4,
      'no-load-current': 132,
      'no-load-speed': 4100,
      'warm-repeat': ['same'],
      'vehicle-proof': ['incomplete'],
    },
  },
  {
    id: 'tired-battery',
    receipt: 'W-09815',
    part: 'battery',
    answered: 7,
    diagnosis: { by: 'not-told' },
    answers: {
      'part-number': ['matches-sale'],
      claim: ['slow-crank'],
      handling: ['fitted'],
      'battery-look': ['sound'],
      posts: ['sound'],
      'suits-vehicle': ['suits'],
      electrolyte: ['covered'],
      'case-temperature': 20,
      'received-volts': 12.62,
      'battery-load-test': 8.7,
      'battery-tester': 330,
      'stand-loss': 0.04,
      'vehicle-proof': ['incomplete'],
    },
  },
];
