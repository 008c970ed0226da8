import {
  expectedReading,
  expectedReadings,
  limit,
  limitNames,
  limitParts,
  type ExpectedReading,
  type LimitName,
} from '@keyturn/electrics';
import { intervalText, listText, spanText } from './figure-text.ts';
import { problem, type Kind, type Problem } from './kind.ts';
import type { Question } from './question.ts';
import { takeVehicle, unsaidText } from './vehicle.ts';

/** What people call a reading, where it is not its name with other marks. */
const otherNames: readonly (readonly [ExpectedReading, readonly string[]])[] = [
  ['battery.rest', ['rest voltage', 'battery voltage at rest']],
  ['battery.crank', ['cranking voltage', 'crank voltage', 'voltage while cranking']],
  ['battery.resistance', ['internal resistance', 'battery resistance']],
  ['crank-current', ['cranking current', 'starter current', 'starter draw']],
  ['drop.positive', ['positive drop', 'drop on the positive side', 'plus drop']],
  ['drop.ground', ['ground drop', 'earth drop', 'negative drop', 'drop on the ground side']],
  ['drop.clamp', ['clamp drop']],
  ['drop.contacts', ['contacts drop', 'contact drop', 'drop across the contacts']],
  ['charging', ['charging voltage']],
];

const wordsOf = (name: string): string => name.replaceAll(/[.-]/g, ' ');

/** The name in a question, of several the longest; its parts may stand apart by any mark. */
function takeName<Name extends string>(
  question: Question,
  names: readonly Name[],
): Name | undefined {
  return [...names]
    .sort((one, other) => other.length - one.length)
    .find((name) => question.says(wordsOf(name)));
}

/** Names that share words with the question, those that share most first. */
function similarNames(question: Question, names: readonly string[]): readonly string[] {
  const words = new Set(question.tokens.map(({ text }) => text.replace(/s$/, '')));
  const shared = (name: string): number =>
    wordsOf(name)
      .split(' ')
      .filter((word) => words.has(word.replace(/s$/, ''))).length;
  const most = Math.max(...names.map(shared));
  return most === 0 ? [] : names.filter((name) => shared(name) === most);
}

function whichOf(question: Question, names: readonly string[], what: string): Problem {
  const similar = similarNames(question, names);
  return problem(
    similar.length === 0
      ? `the name of the ${what} is missing, or there is none of that name`
      : `which ${what} is meant: ${listText(similar, 'or')}?`,
  );
}

/** Every limit by name. */
export const limitList: Kind = {
  group: 'Limits and readings',
  examples: ['limits'],
  read: (question) => {
    const words = question.tokens.map(({ text }) => text).join(' ');
    if (!/^(?:all |list |the |all the |list of )*limits(?: list)?$/.test(words)) return undefined;
    question.says('limits', 'all', 'list');
    return {
      type: 'answer',
      lines: [
        ...limitNames.map((name) => `${name}: ${limitParts(name)}`),
        'Ask for one with what is known of the vehicle: limit drop.positive 150 A petrol 2.0 L 20 °C',
      ],
      sources: [],
    };
  },
};

const missingWords: Readonly<Record<string, string>> = {
  rating: 'the battery’s label (as in 600 A SAE)',
  temperature: 'the temperature (as in 20 °C)',
  restVoltage: 'the rest voltage (as in rest 12.5 V)',
  crankVoltage: 'the cranking voltage (as in crank 10.2 V)',
  boltSize: 'a thread: ask for the torque of an M8 8.8 bolt',
  studSize: 'a thread: ask for the torque of an M8 copper stud',
  postKind: 'a post: ask for the torque of an M6 battery insert',
};

/** One limit by its name, for a vehicle. */
export const limitByName: Kind = {
  group: 'Limits and readings',
  examples: ['limit drop.positive 150 A petrol 2.0 L 20 °C', 'limit battery.rest.full agm'],
  read: (question) => {
    const isAsked = question.says('limit', 'limits');
    if (question.says('expected', 'expect', 'should be', 'normal')) return undefined;
    const isWritten = limitNames.some((name) => question.text.toLowerCase().includes(name));
    const name: LimitName | undefined = takeName(question, limitNames);
    if (!isAsked && !(isWritten && name?.includes('.'))) return undefined;
    if (name === undefined) return whichOf(question, limitNames, 'limit');
    const vehicle = takeVehicle(question);
    if (vehicle.type === 'problem') return vehicle;
    const told = limit(name, vehicle.context);
    if (told.type === 'unknown') {
      return problem(
        `${name} needs ${listText(told.missing.map((each) => missingWords[each] ?? each.replace(' Cel', ' °C')))}`,
      );
    }
    return {
      type: 'answer',
      lines: [
        spanText(told.bound),
        limitParts(name),
        ...(told.bound.low === told.bound.high
          ? []
          : ['Between the two figures it is borderline.']),
      ],
      assumed: unsaidText(vehicle, (context) => JSON.stringify(limit(name, context))),
      sources: [told.bound.source],
    };
  },
};

/** What a reading should show on a sound vehicle. */
export const expected: Kind = {
  group: 'Limits and readings',
  examples: [
    'expected crank current petrol 1.6 L -10 °C',
    'expected battery.crank diesel 2.0 L 0 °C',
    'expected drop.positive petrol 2.0 L 150 A',
  ],
  read: (question) => {
    if (!question.says('expected', 'expect', 'should be', 'normal')) return undefined;
    question.says('reading', 'show', 'value');
    const other = otherNames.find(([, words]) => question.says(...words))?.[0];
    const name = other ?? takeName(question, expectedReadings);
    if (name === undefined) return whichOf(question, expectedReadings, 'reading');
    const vehicle = takeVehicle(question);
    if (vehicle.type === 'problem') return vehicle;
    const found = expectedReading(name, vehicle.context);
    if (found === undefined) {
      return problem(`${name} needs the battery’s label (as in 600 A SAE)`);
    }
    const { source, ...interval } = found;
    return {
      type: 'answer',
      lines: [intervalText(interval), `${name}, on a vehicle without a fault`],
      assumed: unsaidText(vehicle, (context) => JSON.stringify(expectedReading(name, context))),
      sources: [source],
    };
  },
};
