import {
  acceptance,
  assumedMeter,
  classAccuracy,
  convert,
  decide,
  expandedUncertainty,
  type Bound,
  type MeterAccuracy,
  type Quantity,
  type ToleranceBounds,
  type UnitCode,
} from '@keyturn/electrics';
import { figureText, numberText, shareText } from './figure-text.ts';
import { problem, type Kind, type Problem } from './kind.ts';
import type { Question, SaidFigure } from './question.ts';
import { unitSign, type FigureKind } from './said-units.ts';

/** What a reading is held against, by the words of the question. */
const comparisons: readonly (readonly ['low' | 'high', readonly string[]])[] = [
  [
    'high',
    ['not above', 'not over', 'not more than', 'no more than', 'at most', 'up to', '<=', '{'],
  ],
  ['low', ['not below', 'not under', 'not less than', 'no less than', 'at least', '>=', '}']],
  ['high', ['below', 'under', 'less than', 'lower than', 'smaller than', '<', 'within']],
  ['low', ['above', 'over', 'more than', 'greater than', 'higher than', '>']],
];

const source = {
  provenance: 'computed',
  text: 'JCGM 106:2012, clauses 7 and 8 (from memory)',
} as const;

type SaidMeter = { readonly accuracy: MeterAccuracy | undefined; readonly isSaid: boolean };

/** "meter 1% + 3", "simple meter", or nothing. */
function takeMeter(question: Question, unit: UnitCode): SaidMeter | Problem {
  const isMeter = question.says('meter', 'multimeter', 'voltmeter', 'clamp', 'clamp meter', 'dmm');
  const [percent] = question.figures('ratio');
  if (percent === undefined) {
    if (!isMeter) return { accuracy: undefined, isSaid: false };
    const isSimple = question.says('simple', 'cheap');
    const isFine = question.says('fine', 'good', 'accurate');
    return isSimple || isFine
      ? { accuracy: classAccuracy(isSimple ? 'simple' : 'fine', unit), isSaid: true }
      : problem(
          'how good the meter is (as in meter 1% + 3, simple meter or fine meter) is missing',
        );
  }
  question.take(percent);
  const digits = [...question.figures('digits'), ...question.figures('bare')].find(
    ({ start }) => start > percent.start,
  );
  const [counts] = question.figures('counts');
  if (digits !== undefined) question.take(digits);
  if (counts !== undefined) question.take(counts);
  return {
    accuracy: {
      percent: percent.quantity.value,
      digits: digits?.quantity.value ?? 0,
      ...(counts === undefined ? {} : { counts: counts.quantity.value }),
    },
    isSaid: true,
  };
}

const kinds: readonly FigureKind[] = [
  ...(['voltage', 'current', 'resistance', 'temperature', 'torque', 'frequency', 'time'] as const),
];

type Compared = {
  readonly reading: Quantity;
  readonly bounds: readonly SaidFigure[];
};

/** The reading, which comes first, and what it is held against: in its unit where it has none. */
function takeCompared(question: Question): Compared | undefined {
  const found = kinds.map((kind) => question.figures(kind)).find((each) => each.length > 0);
  if (found === undefined) return undefined;
  const all = [...found, ...question.figures('bare')].sort((one, other) => one.start - other.start);
  const unit = found[0]?.quantity.unit ?? '1';
  const [reading, ...bounds] = all.map((each) =>
    each.kind === 'bare' ? { ...each, quantity: { ...each.quantity, unit } } : each,
  );
  for (const each of all) question.take(each);
  return reading === undefined ? undefined : { reading: reading.quantity, bounds };
}

function boundAt({ quantity }: SaidFigure): Bound {
  const { value, unit } = quantity;
  return { low: value, high: value, unit, source };
}

function boundsText({ low, high }: ToleranceBounds): string {
  if (low !== undefined && high !== undefined) {
    return `between ${figureText(low.low, low.unit)} and ${figureText(high.high, high.unit)}`;
  }
  return low === undefined
    ? `at most ${figureText(high?.high ?? 0, high?.unit ?? '1')}`
    : `at least ${figureText(low.low, low.unit)}`;
}

function accuracyText({ percent, digits }: MeterAccuracy): string {
  return `±(${percent}% + ${digits} digits)`;
}

/** Which words of comparison stand in the question. */
function takeSide(question: Question): 'low' | 'high' | 'between' | undefined {
  if (question.says('between', 'within range')) return 'between';
  return comparisons.find(([, words]) => question.says(...words))?.[0];
}

/** A reading at a bound: on which side of it, and how surely. */
export const decision: Kind = {
  group: 'Limits and readings',
  examples: ['is 12.45 V at least 12.4', 'is 12.45 V at least 12.4, meter 1% + 3'],
  read: (question) => {
    const isQuestion = question.tokens[0]?.text === 'is';
    const side = takeSide(question);
    const [first] = kinds.flatMap((kind) => question.figures(kind));
    if (side !== undefined && first === undefined && isQuestion) {
      return problem('the unit of the reading (as in 12.45 V) is missing');
    }
    if (side === undefined || first === undefined) return undefined;
    const meter = takeMeter(question, first.quantity.unit);
    const compared = takeCompared(question);
    const needed = side === 'between' ? 2 : 1;
    const count = compared?.bounds.length ?? 0;
    if (count < needed && !isQuestion) return undefined;
    if (compared === undefined || count < needed) {
      return problem(
        `what ${first.text} is held against (as in at least 12.4 V) is missing`,
        first,
      );
    }
    if ('type' in meter) return meter;
    if (count > needed) {
      const [extra] = compared.bounds.slice(needed);
      return problem(
        `more figures than a reading and ${needed === 1 ? 'its bound' : 'two bounds'}`,
        extra,
      );
    }
    return decisionAnswer(question, { ...compared, side, meter });
  },
};

function decisionAnswer(
  question: Question,
  {
    reading,
    bounds,
    side,
    meter,
  }: Compared & { side: 'low' | 'high' | 'between'; meter: SaidMeter },
): ReturnType<Kind['read']> {
  question.says('reading', 'read', 'volt', 'enough');
  const wrong = bounds.find(({ quantity }) => unlike(quantity, reading));
  if (wrong !== undefined)
    return problem(`${wrong.text} cannot be held against a reading in another unit`, wrong);
  const read: Quantity =
    meter.accuracy === undefined ? reading : { ...reading, meter: meter.accuracy };
  const [one, other] = bounds.map(boundAt).sort((a, b) => a.low - b.low);
  const tolerance: ToleranceBounds =
    side === 'between' ? { low: one, high: other } : side === 'low' ? { low: one } : { high: one };
  const told = decide(read, tolerance);
  const error = expandedUncertainty(read);
  const words = { inside: 'Yes', outside: 'No', borderline: 'Too close to call' };
  const guarded = acceptance(inUnitOf(tolerance, reading.unit), {
    expandedUncertainty: error,
    ratio: 1,
  });
  const { percent, digits } = assumedMeter(read);
  return {
    type: 'answer',
    lines: [
      `${words[told.type]}: ${shareText(told.probability)} that it is ${boundsText(tolerance)}`,
      `read: ${figureText(reading.value, reading.unit)} ±${figureText(error, reading.unit)}, 19 times out of 20`,
      ...acceptedLine(guarded, reading.unit),
    ],
    assumed: meter.isSaid
      ? []
      : [`a meter of usual accuracy, ${accuracyText({ percent, digits })}`],
    sources: [source],
  };
}

function unlike(one: Quantity, other: Quantity): boolean {
  try {
    convert(one, other.unit);
    return false;
  } catch {
    return true;
  }
}

function inUnitOf({ low, high }: ToleranceBounds, unit: UnitCode): { low?: number; high?: number } {
  const at = (bound: Bound): number => convert({ value: bound.low, unit: bound.unit }, unit).value;
  return {
    ...(low === undefined ? {} : { low: at(low) }),
    ...(high === undefined ? {} : { high: at(high) }),
  };
}

function acceptedLine(guarded: ReturnType<typeof acceptance>, unit: UnitCode): readonly string[] {
  if (guarded.type === 'accepts-nothing') {
    return ['With such a meter no reading is surely inside.'];
  }
  const exactly = (value: number): string =>
    unit === 'V' ? String(Number(value.toFixed(3))) : numberText(value, unit);
  const { low, high } = guarded;
  if (low !== undefined && high !== undefined) {
    return [`sure from a reading of ${exactly(low)} to ${exactly(high)} ${unitSign(unit)}`];
  }
  return [
    `sure from a reading of ${exactly(low ?? high ?? 0)} ${unitSign(unit)} ${low === undefined ? 'down' : 'up'}`,
  ];
}

/** How exact a reading is. */
export const uncertainty: Kind = {
  group: 'Limits and readings',
  examples: ['how exact is 12.45 V', 'how exact is 12.45 V with a simple meter'],
  read: (question) => {
    if (!question.says('exact', 'accurate', 'uncertainty', 'sure', 'how exact', 'error'))
      return undefined;
    const [first] = kinds.flatMap((kind) => question.figures(kind));
    if (first === undefined) return problem('a reading (as in 12.45 V) is missing');
    question.take(first);
    const meter = takeMeter(question, first.quantity.unit);
    if ('type' in meter) return meter;
    const read: Quantity =
      meter.accuracy === undefined ? first.quantity : { ...first.quantity, meter: meter.accuracy };
    const { percent, digits } = assumedMeter(read);
    return {
      type: 'answer',
      lines: [`±${figureText(expandedUncertainty(read), read.unit)}, 19 times out of 20`],
      assumed: meter.isSaid
        ? []
        : [`a meter of usual accuracy, ${accuracyText({ percent, digits })}`],
      sources: [
        { provenance: 'computed', text: 'JCGM 100:2008, 4.3.7 and 6.2.1, k = 2 (from memory)' },
      ],
    };
  },
};
