import type {
  BatteryLocation,
  BatteryTechnology,
  LimitContext,
  RatingStandard,
} from '@keyturn/electrics';
import { listText } from './figure-text.ts';
import { problem, type Problem } from './kind.ts';
import type { Question, SaidFigure } from './question.ts';
import type { FigureKind } from './said-units.ts';
import { figures, giveFigure, type Wanted } from './wanted.ts';

/** A kind of battery as people say it. */
export function takeTechnology(question: Question): BatteryTechnology | undefined {
  if (question.says('agm', 'glass mat', 'absorbent glass mat')) return 'agm';
  if (question.says('gel')) return 'gel';
  if (question.says('efb', 'enhanced flooded')) return 'efb';
  return question.says('flooded', 'wet', 'lead acid', 'wet cell') ? 'flooded' : undefined;
}

const standardWords: Readonly<Record<RatingStandard, readonly string[]>> = {
  sae: ['sae', 'cca', 'bci'],
  en: ['en'],
  din: ['din'],
  iec: ['iec'],
  jis: ['jis'],
  mca: ['mca'],
};

const standards = Object.entries(standardWords) as [RatingStandard, readonly string[]][];

/** Every word that says that a current is a label's. */
export const ratingWords: readonly string[] = [
  ...Object.values(standardWords).flat(),
  ...['label', 'rating', 'rated', 'battery of'],
];

/** The standards that a question names, each once, in the order in which they stand there. */
export function takeStandards(question: Question): readonly RatingStandard[] {
  const named = question.tokens.flatMap(
    ({ text }) => standards.find(([, words]) => words.includes(text))?.[0] ?? [],
  );
  for (const [, words] of standards) question.says(...words);
  return [...new Set(named)];
}

/** 12 V or 24 V, where the question speaks of the vehicle's system. */
export function takeNominal(question: Question): 12 | 24 | undefined {
  const systems = ['system', 'vehicle', 'truck', 'lorry', 'bus', 'car', 'machine', 'side'];
  const [said] = question
    .figures('voltage')
    .filter(
      ({ quantity, text }) => /v/i.test(text) && (quantity.value === 24 || quantity.value === 12),
    )
    .filter(({ tokens: [, behind] }) => systems.includes(question.tokens[behind]?.text ?? ''));
  question.says(...systems);
  if (said === undefined) return undefined;
  question.take(said);
  return said.quantity.value === 24 ? 24 : 12;
}

function takeFuel(question: Question): 'petrol' | 'diesel' | undefined {
  if (question.says('diesel', 'tdi')) return 'diesel';
  return question.says('petrol', 'gasoline', 'gas') ? 'petrol' : undefined;
}

function takeLocation(question: Question): BatteryLocation | undefined {
  if (question.says('boot', 'trunk')) return 'boot';
  if (question.says('seat', 'under seat')) return 'seat';
  return question.says('engine bay', 'bonnet', 'hood') ? 'engine-bay' : undefined;
}

const cylinderWords: Readonly<Record<string, number>> = {
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
};

/** How many cylinders, said in figures, in a word or by the shape of the engine. */
export function takeCylinders(question: Question): number | Problem | undefined {
  const [said] = question.figures('cylinders');
  if (said !== undefined) {
    question.take(said);
    const { value } = said.quantity;
    return Number.isInteger(value) && value >= 1 && value <= 16
      ? value
      : problem(`${said.text} cannot be right: engines here have 1 to 16 cylinders`, said);
  }
  const word = Object.keys(cylinderWords).find((each) =>
    question.says(`${each} cylinder`, `${each} cylinders`, `${each} cyl`),
  );
  if (word !== undefined) return cylinderWords[word];
  const shape = ['v6', 'v8', 'v10', 'v12'].find((each) => question.says(each));
  return shape === undefined ? undefined : Number(shape.slice(1));
}

/** A vehicle as far as a question tells it, in the terms of the limits, and in words. */
export type SaidVehicle = {
  readonly type: 'vehicle';
  readonly context: LimitContext;
};

type Field = {
  readonly field: keyof LimitContext;
  readonly want: Wanted;
  readonly labels?: readonly string[];
};

const labelA: Wanted = { ...figures.currentA, name: 'a label’s current', low: 50, high: 2500 };

/** The figures of a vehicle; those with labels must have one beside them. */
const fields: readonly Field[] = [
  { field: 'rating', want: labelA, labels: ratingWords },
  {
    field: 'expectedCurrent',
    want: figures.currentA,
    labels: ['usual', 'usually', 'normal', 'normally', 'owner'],
  },
  {
    field: 'restVoltage',
    want: figures.systemV,
    labels: ['rest', 'rested', 'resting', 'standing', 'at rest', 'open circuit'],
  },
  {
    field: 'crankVoltage',
    want: figures.systemV,
    labels: ['crank', 'cranking', 'while cranking', 'loaded', 'start held'],
  },
  { field: 'crankCurrent', want: figures.currentA },
  { field: 'temperature', want: figures.temperatureC },
  { field: 'displacement', want: figures.displacementL },
  { field: 'batteryAge', want: figures.years },
];

function takeField(question: Question, { want, labels }: Field): SaidFigure | Problem | undefined {
  const { kind }: { kind: FigureKind } = want;
  if (labels !== undefined) return question.labelled(kind, labels);
  const [first, second] = question.figures(kind);
  if (second !== undefined && first !== undefined) {
    return problem(`${first.text} and ${second.text}: which of both is meant for what?`, second);
  }
  if (first !== undefined) question.take(first);
  return first;
}

/** Reads what a question says of the vehicle. What it does not say stays unknown. */
export function takeVehicle(question: Question): SaidVehicle | Problem {
  const nominal = takeNominal(question);
  const cylinders = takeCylinders(question);
  if (typeof cylinders === 'object') return cylinders;
  const context: Record<string, unknown> = {
    nominal,
    cylinders,
    fuel: takeFuel(question),
    technology: takeTechnology(question),
    batteryLocation: takeLocation(question),
  };
  if (question.says('not turning', 'does not turn', 'locked', 'stalled', 'seized'))
    context['turning'] = false;
  else if (question.says('turning', 'turns')) context['turning'] = true;
  for (const each of fields) {
    const said = takeField(question, each);
    if (said === undefined) continue;
    if ('type' in said) return said;
    const given = giveFigure(said, each.want);
    if ('type' in given) return given;
    context[each.field] = given.value;
  }
  if (context['rating'] !== undefined) context['ratingStandard'] = takeStandards(question)[0];
  question.says('battery', 'engine', 'starter', 'car', 'vehicle', 'old', 'age', 'current', 'air');
  return { type: 'vehicle', context };
}

type Unsaid = {
  readonly field: keyof LimitContext;
  readonly words: string;
  /** Values by which it is told whether it matters. */
  readonly values: readonly unknown[];
};

const unsaid: readonly Unsaid[] = [
  { field: 'nominal', words: '24 V', values: [24] },
  { field: 'fuel', words: 'fuel', values: ['petrol', 'diesel'] },
  { field: 'displacement', words: 'displacement', values: [1, 4] },
  { field: 'temperature', words: 'temperature', values: [-20, 0, 30] },
  { field: 'technology', words: 'kind of battery', values: ['flooded', 'agm'] },
  { field: 'rating', words: 'the battery’s label', values: [400, 800] },
  { field: 'ratingStandard', words: 'standard of the label', values: ['sae', 'din'] },
  { field: 'restVoltage', words: 'rest voltage', values: [11.9, 12.7] },
  { field: 'batteryAge', words: 'age of the battery', values: [1, 9] },
  { field: 'batteryLocation', words: 'where the battery sits', values: ['boot', 'engine-bay'] },
  { field: 'crankCurrent', words: 'cranking current', values: [100, 250] },
  { field: 'crankVoltage', words: 'cranking voltage', values: [8, 10.5] },
  { field: 'turning', words: 'whether it turns', values: [true, false] },
];

/**
 * What was left open and would change the answer, in words. `answer` gives the answer for a context
 * in a form that is equal for equal answers.
 */
export function unsaidText(
  { context }: SaidVehicle,
  answer: (context: LimitContext) => string,
): readonly string[] {
  const told = answer(context);
  const matters = ({ field, values }: Unsaid): boolean =>
    context[field] === undefined &&
    values.some((value) => answer({ ...context, [field]: value }) !== told);
  const open = unsaid.filter(matters);
  const others = open.filter(({ field }) => field !== 'nominal').map(({ words }) => words);
  return [
    ...(open.length > others.length ? ['12 V'] : []),
    ...(others.length === 0 ? [] : [`not said, and would change the figure: ${listText(others)}`]),
  ];
}
