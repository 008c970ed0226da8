/**
 * An invented town, its callers and their vehicles, to practise with and to show the desk. Names
 * and numbers are made up; what the callers answer is said in the words of the flow.
 */
import type { AnswerInput } from '@keyturn/core';
import type { Caller } from '../case/desk-case.ts';

/** A caller who does not exist. */
export interface InventedCaller {
  readonly id: string;
  readonly caller: Caller;
  /** Check to the answer: choices by id, or a figure in the check's own unit. */
  readonly answers: Readonly<Record<string, readonly string[] | number>>;
  /** What it turns out to be. */
  readonly cause: string;
}

/** The caller with whom the desk is learned. */
export const firstCaller: InventedCaller = {
  id: 'quill',
  caller: {
    name: 'Mara Quill',
    callback: '555 0117',
    where: 'Kiln Road 7, Marrowgate',
    vehicle: 'Ostrel Finch · MG 204 K',
  },
  answers: {
    place: ['parking'],
    scene: ['safe'],
    drive: ['petrol'],
    complaint: ['rapid-clicking'],
    'battery-age': 4,
    kit: ['none'],
    when: ['after-standing'],
    history: ['lights-left-on'],
    'battery-look': ['sound'],
    terminals: ['clean-tight'],
    dash: ['goes-out'],
    headlamps: ['go-out'],
    'charge-lamp': ['normal'],
    transmission: ['manual'],
    ignition: ['key'],
    'air-temperature': 9,
  },
  cause: 'battery-discharged',
};

/** Callers of an invented evening, with how long ago they rang and how far each has come. */
export const evening: readonly {
  readonly invented: InventedCaller;
  readonly minutesAgo: number;
  readonly answered: number;
}[] = [
  {
    minutesAgo: 3,
    answered: 3,
    invented: {
      id: 'tavener',
      caller: {
        name: 'Joss Tavener',
        callback: '555 0142',
        where: 'Northern Ring, marker 14, Marrowgate',
        vehicle: 'Brellmoor Otter · MG 88 T',
      },
      answers: { place: ['live-lane'], scene: ['unsafe'], drive: ['diesel'] },
      cause: 'fuel-delivery',
    },
  },
  {
    minutesAgo: 11,
    answered: 5,
    invented: {
      id: 'okoro',
      caller: {
        name: 'Ilse Okoro-Brandt',
        callback: '555 0163',
        where: 'Larch Quay, Marrowgate',
        vehicle: 'Ostrel Heron · MG 310 C',
      },
      answers: {
        place: ['home'],
        scene: ['safe'],
        drive: ['petrol'],
        complaint: ['silent'],
        transmission: ['automatic'],
        ignition: ['key'],
        selector: ['park-neutral'],
        dash: ['stays-bright'],
        'neutral-try': ['cranks'],
      },
      cause: 'selector-switch',
    },
  },
  {
    minutesAgo: 19,
    answered: 4,
    invented: {
      id: 'ardel',
      caller: {
        name: 'Pim Ardel',
        callback: '555 0119',
        where: 'Old Ferry Road, eastbound, Marrowgate',
        vehicle: 'Tamsin Carrier · MG 17 V',
      },
      answers: {
        place: ['shoulder'],
        scene: ['safe'],
        drive: ['diesel'],
        complaint: ['normal-crank'],
        'fuel-level': ['empty'],
      },
      cause: 'fuel-empty',
    },
  },
  {
    minutesAgo: 26,
    answered: 6,
    invented: {
      id: 'sool',
      caller: {
        name: 'Yara Sool',
        callback: '555 0188',
        where: 'Market Hall car park, Marrowgate',
        vehicle: 'Brellmoor Wren · MG 452 L',
      },
      answers: {
        place: ['parking'],
        scene: ['safe'],
        drive: ['diesel'],
        complaint: ['single-click'],
        kit: ['none'],
        'battery-age': 2,
        dash: ['stays-bright'],
        headlamps: ['stay-bright'],
      },
      cause: 'starter-motor',
    },
  },
  {
    minutesAgo: 34,
    answered: 4,
    invented: {
      id: 'venn',
      caller: {
        name: 'Aldo Venn',
        callback: '555 0151',
        where: 'Tanner’s Yard 3, Marrowgate',
        vehicle: 'Ostrel Finch · MG 119 H',
      },
      answers: {
        place: ['home'],
        scene: ['safe'],
        drive: ['petrol'],
        complaint: ['key-stuck'],
        'steering-wheel': ['no-change'],
        ignition: ['key'],
      },
      cause: 'steering-lock',
    },
  },
];

/** Every invented caller. */
const all = [firstCaller, ...evening.map(({ invented }) => invented)];

/** The invented caller of an id. */
export function inventedCaller(id: string | null): InventedCaller | undefined {
  return all.find((one) => one.id === id);
}

/** What an invented caller answers to a check, as a turn takes it; undefined: does not know. */
export function inventedAnswer(
  { answers }: InventedCaller,
  check: string,
  unit: string | undefined,
): AnswerInput['value'] | undefined {
  const answer = Object.hasOwn(answers, check) ? answers[check] : undefined;
  if (typeof answer !== 'number') return answer;
  return unit === undefined ? undefined : { value: answer, unit, resolution: 1 };
}
