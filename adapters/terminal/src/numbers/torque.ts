import {
  boltTorque,
  convert,
  proofLoad,
  studTorque,
  terminalTorque,
  type Bolt,
  type BoltSize,
  type PropertyClass,
  type SourcedInterval,
  type Stud,
  type StudSize,
  type Terminal,
  type TerminalTorque,
  type ThreadCondition,
} from '@keyturn/electrics';
import { intervalText, listText, quantityText, spanText } from './figure-text.ts';
import { joinProblems, problem, type Answer, type Kind, type Problem } from './kind.ts';
import type { Question } from './question.ts';

const boltSizes: readonly BoltSize[] = ['M5', 'M6', 'M8', 'M10', 'M12', 'M14', 'M16'];
const studSizes: readonly StudSize[] = ['M6', 'M8', 'M10'];
const classes: readonly PropertyClass[] = ['8.8', '10.9', '12.9'];

const manualFirst =
  'A general figure, which gives way to the vehicle’s own manual: look there first.';
const softStud =
  'Caution: a soft stud strips, shears or turns in its moulding. Hold the inner nut with a second spanner; never go by the figure of a steel bolt.';

const softInsert =
  'Caution: an insert of lead or brass strips or turns in its case. Never go by the figure of a steel bolt.';

function inPounds({ low, best, high }: SourcedInterval): string {
  const pounds = (value: number): number =>
    convert({ value, unit: 'N.m' }, '[lbf_av].[ft_i]').value;
  return intervalText({
    low: pounds(low),
    best: pounds(best),
    high: pounds(high),
    unit: '[lbf_av].[ft_i]',
  });
}

/** The thread, one of those for which there are figures. */
function takeThread<Size extends string>(
  question: Question,
  sizes: readonly Size[],
): { readonly size: Size } | Problem {
  const threads = question.tokens.filter(({ kind, text }) => kind === 'word' && /^m\d/.test(text));
  const [first, second] = threads;
  if (first === undefined) return problem('a thread (as in M8) is missing');
  if (second !== undefined) {
    return problem(
      `two threads, ${first.text.toUpperCase()} and ${second.text.toUpperCase()}: give one`,
      second,
    );
  }
  question.says(first.text);
  const size = sizes.find((each) => each.toLowerCase() === first.text);
  return size === undefined
    ? problem(`${first.text.toUpperCase()}: there are figures for ${listText(sizes)} only`, first)
    : { size };
}

function takeClass(question: Question): { readonly propertyClass: PropertyClass } | Problem {
  question.says('class', 'grade', 'property class');
  const said = question.figures('bare');
  const found = said.find(({ text }) => classes.some((each) => each === text.replace(',', '.')));
  if (found === undefined) {
    const [other] = said;
    const which = `${listText(classes, 'or')}, as the head of the bolt says`;
    return other === undefined
      ? problem(`the property class (${which}) is missing`)
      : problem(`${other.text} is no property class known here: ${which}`, other);
  }
  question.take(found);
  return { propertyClass: found.text.replace(',', '.') as PropertyClass };
}

function takeCondition(question: Question): ThreadCondition | undefined {
  if (question.says('anti seize', 'antiseize', 'copper grease', 'copper paste'))
    return 'anti-seize';
  if (question.says('oiled', 'oil', 'oily', 'lubricated', 'greased', 'wet')) return 'oiled';
  return question.says('dry', 'clean') ? 'dry' : undefined;
}

const stretches: Readonly<Record<ThreadCondition, string>> = {
  dry: 'dry',
  oiled: 'oiled',
  'anti-seize': 'with anti-seize',
};

function boltAnswer(bolt: Bolt, question: Question): Answer {
  const condition = takeCondition(question);
  const isAluminium = question.says('aluminium', 'aluminum', 'alu', 'alloy');
  const isSteel = question.says('steel', 'iron');
  question.says('thread', 'bolt', 'nut', 'screw');
  const told = boltTorque({ ...bolt, condition, into: isAluminium ? 'aluminium' : 'steel' });
  if (told.type === 'unknown') {
    return {
      type: 'answer',
      lines: [`No figure: none is published for ${bolt.size} into aluminium.`, manualFirst],
      sources: [],
    };
  }
  const { source, ...torque } = told.torque;
  const clamp = told.clampLoad;
  return {
    type: 'answer',
    lines: [
      `${intervalText(torque)} (${inPounds(told.torque)})`,
      `Set the first figure: it clamps with ${spanText(clamp)}.`,
    ],
    assumed: [
      ...(condition === undefined
        ? ['not known whether the thread is dry or oiled: the least for a dry one']
        : [`the thread ${stretches[condition]}`]),
      ...(isAluminium || isSteel ? [] : ['into steel']),
      'coarse pitch',
    ],
    cautions: [manualFirst],
    sources: [source],
  };
}

function studMaterial(question: Question): Stud['material'] | undefined {
  if (question.says('insert', 'battery insert', 'lead insert', 'brass insert'))
    return 'battery-insert';
  if (question.says('copper')) return 'copper';
  return question.says('brass') ? 'brass' : undefined;
}

function terminalAnswer(
  { torque, cautions }: TerminalTorque,
  assumed: readonly string[],
  caution: string = softStud,
): Answer {
  return {
    type: 'answer',
    lines: [`${intervalText(torque)} (${inPounds(torque)})`],
    assumed,
    cautions: [...(cautions.includes('soft-stud') ? [caution] : []), manualFirst],
    sources: [torque.source],
  };
}

function saysThread(question: Question): boolean {
  return question.tokens.some(({ kind, text }) => kind === 'word' && /^m\d/.test(text));
}

/** Words with which someone asks how tight. */
function asksTorque(question: Question): boolean {
  return question.says('torque', 'tight', 'tighten', 'tightening', 'tightness');
}

/** Terminals whose torque goes by their place. */
const terminals: readonly (readonly [Terminal, readonly string[]])[] = [
  [
    'starter-switch',
    ['starter switch terminal', 'switch terminal', 'starter switch', 'solenoid terminal'],
  ],
  [
    'starter-battery',
    [
      'starter battery terminal',
      'battery terminal of the starter',
      'starter main terminal',
      'starter battery',
      'starter main stud',
    ],
  ],
  ['battery-clamp', ['battery clamp', 'clamp', 'battery terminal', 'battery post']],
];

/** Torque of a terminal by its place. */
export const torqueOfTerminal: Kind = {
  group: 'Bolts and studs',
  examples: ['torque of a battery clamp', 'torque of the starter battery terminal'],
  read: (question) => {
    if (!asksTorque(question) || saysThread(question)) return undefined;
    const found = terminals.find(([, words]) => question.says(...words));
    if (found === undefined) return undefined;
    question.says('bolt', 'nut', 'terminal', 'stud', 'steel', 'starter');
    const [terminal] = found;
    return terminalAnswer(
      terminalTorque(terminal),
      terminal === 'starter-battery' ? ['a large stud of steel'] : [],
    );
  },
};

/** Torque of a nut on a soft stud, or of a bolt in a battery's insert. */
export const torqueOfStud: Kind = {
  group: 'Bolts and studs',
  examples: ['torque of an M8 copper stud', 'torque of an M6 battery insert'],
  read: (question) => {
    const isStud = question.says('stud', 'terminal');
    const greased = question.says('copper grease', 'copper paste');
    const material = studMaterial(question);
    const isAsked = asksTorque(question) || saysThread(question);
    if (!isAsked || !(isStud || material !== undefined) || greased) return undefined;
    if (question.says('steel') && material === undefined) return undefined;
    question.says('nut', 'bolt', 'electrical', 'lead');
    const thread = takeThread(question, studSizes);
    const known =
      material ?? problem('what the stud is of (copper, brass, or a battery insert) is missing');
    const wrong = joinProblems(thread, ...(typeof known === 'string' ? [] : [known]));
    if (wrong !== undefined) return wrong;
    if (material === undefined || 'type' in thread) return undefined;
    const caution = material === 'battery-insert' ? softInsert : softStud;
    return terminalAnswer(studTorque({ ...thread, material }), [], caution);
  },
};

/** The load that a bolt bears. */
export const loadOfBolt: Kind = {
  group: 'Bolts and studs',
  examples: ['proof load of an M10 8.8 bolt'],
  read: (question) => {
    if (!question.says('proof load', 'proof')) return undefined;
    question.says('bolt');
    const thread = takeThread(question, boltSizes);
    const strength = takeClass(question);
    if ('type' in thread || 'type' in strength) return joinProblems(thread, strength);
    return {
      type: 'answer',
      lines: [quantityText(proofLoad({ ...thread, ...strength }))],
      assumed: ['coarse pitch'],
      sources: [{ provenance: 'from memory', text: 'ISO 898-1, stress area times proof stress' }],
    };
  },
};

/** Torque of a steel bolt. */
export const torqueOfBolt: Kind = {
  group: 'Bolts and studs',
  examples: ['torque of an M8 8.8 bolt', 'torque of an M8 8.8 bolt oiled into aluminium'],
  read: (question) => {
    if (question.figures('torque').length > 0) return undefined;
    const isAsked = asksTorque(question);
    const isBolt = question.says('bolt', 'nut', 'screw', 'stud');
    if (!saysThread(question) && !isAsked && !isBolt) return undefined;
    const thread = takeThread(question, boltSizes);
    const strength = takeClass(question);
    if ('type' in thread || 'type' in strength) return joinProblems(thread, strength);
    return boltAnswer({ ...thread, ...strength }, question);
  },
};
