import { ElectricsError } from '@keyturn/electrics';
import { kinds } from './kinds.ts';
import type { Answer, Kind, Problem } from './kind.ts';
import { figureKinds } from './said-units.ts';
import { createQuestion, isNumberWord, type Place, type Question } from './question.ts';

/** What is said to a question: its answer, or why there is none and what could be asked instead. */
export type Reply =
  | { readonly type: 'answered'; readonly answer: Answer; readonly leftOut: readonly string[] }
  | {
      readonly type: 'unanswered';
      readonly reasons: readonly string[];
      readonly place?: Place | undefined;
      readonly examples: readonly string[];
    };

/** No question is longer; what is longer was pasted by mistake. */
const longestQuestion = 300;

/** What is shown where nothing in the question is like any example. */
const usualExamples = [
  'drop of 1.5 m of 25 mm² at 200 A',
  'load-test minimum at -7 °C',
  'torque of an M8 8.8 bolt',
] as const;

const mostExamples = 3;

/** The longer words of a text and what its figures are of, by which texts are likened. */
function traitsOf(text: string): ReadonlySet<string> {
  const question = createQuestion(text);
  const words = question.tokens.filter(
    ({ kind, text: said }) => kind === 'word' && said.length > 3,
  );
  const kindsOfFigures = figureKinds.filter((kind) => question.figures(kind).length > 0);
  return new Set([...words.map(({ text: said }) => said.replace(/s$/, '')), ...kindsOfFigures]);
}

/** The examples that share most words with a question. */
function nearestExamples(text: string): readonly string[] {
  const said = traitsOf(text);
  const ranked = kinds
    .flatMap(({ examples }) => examples)
    .map((example) => ({
      example,
      shared: [...traitsOf(example)].filter((word) => said.has(word)).length,
    }))
    .filter(({ shared }) => shared > 0)
    .sort((one, other) => other.shared - one.shared)
    .map(({ example }) => example);
  return [...new Set([...ranked, ...usualExamples])].slice(0, mostExamples);
}

/** What makes a question unreadable, whatever it asks. */
function unreadable(question: Question): Problem | undefined {
  const wrong = (reason: string, place: Place): Problem => ({
    type: 'problem',
    reasons: [reason],
    place,
  });
  const malformed = question.tokens.find(({ kind }) => kind === 'malformed');
  if (malformed !== undefined) {
    const said = question.text.slice(malformed.start, malformed.end);
    return said.includes('/')
      ? wrong(`${said}: write it with a decimal point, as 0.5`, malformed)
      : wrong(`${said} is no number`, malformed);
  }
  const [degrees] = question.figures('degrees');
  if (degrees !== undefined) return wrong(`${degrees.text}: °C or °F?`, degrees);
  const [megohms] = question.figures('megohms');
  return megohms === undefined
    ? undefined
    : wrong(`${megohms.text}: write mΩ for milliohms; megohms are not asked for here`, megohms);
}

/** A number outside the range of a rule, in words. Every other error is a fault of this program. */
function refusal(error: unknown): Problem {
  if (!(error instanceof ElectricsError) || error.code !== 'value-out-of-range') throw error;
  const { low, high, ...seen } = error.facts;
  const figures = Object.entries(seen).map(([name, value]) => {
    const words = name.replace(/[A-Z][a-z]*/g, (part) => ` ${part.toLowerCase()}`);
    return `${words} ${value}`;
  });
  const ends = [low, high].filter((end) => end !== undefined);
  const range = ends.length === 0 ? '' : `: ${ends.join(' to ')}`;
  return { type: 'problem', reasons: [`${figures.join(', ')} is out of range${range}`] };
}

function readKind(kind: Kind, question: Question): Answer | Problem | undefined {
  try {
    return kind.read(question);
  } catch (error) {
    return refusal(error);
  }
}

/** What a figure without a known unit says of itself. */
function unitHints(question: Question): readonly (Place & { readonly reason: string })[] {
  const unknown = question.unknownUnits();
  const hints = unknown.map((place) => {
    const [number = '', unit = ''] = question.text.slice(place.start, place.end).split(/\s+/);
    const word = unit === '' ? number.replace(/^[-\d.,]+/, '') : unit;
    return { ...place, reason: `“${word}” is no unit known here` };
  });
  const bare = question
    .figures('bare')
    .filter(({ start }) => !unknown.some((each) => each.start === start));
  return [
    ...hints,
    ...bare.map(({ start, end, text }) => ({ start, end, reason: `${text} has no unit` })),
  ];
}

function unanswered(question: Question, found: Problem, kind?: Kind): Reply {
  const examples = kind?.examples ?? [];
  const hints = found.place === undefined ? unitHints(question) : [];
  return {
    type: 'unanswered',
    reasons: [...found.reasons, ...hints.map(({ reason }) => reason)],
    place: found.place ?? hints[0],
    examples: [...new Set([...examples, ...nearestExamples(question.text)])].slice(0, mostExamples),
  };
}

/** Answers a question in plain trade words. Never throws for what a person may type. */
export function answerQuestion(text: string): Reply {
  if (text.length > longestQuestion) {
    const reason = `the question is longer than ${longestQuestion} characters`;
    return { type: 'unanswered', reasons: [reason], examples: usualExamples };
  }
  const whole = createQuestion(text);
  const wrong = unreadable(whole);
  if (wrong !== undefined) return unanswered(whole, wrong);
  for (const kind of kinds) {
    const question = createQuestion(text);
    const found = readKind(kind, question);
    if (found === undefined) continue;
    if (found.type === 'problem') return unanswered(question, found, kind);
    // A figure of which nobody knows what it is of may change the answer.
    if (question.figures('bare').length > 0) {
      return unanswered(question, { type: 'problem', reasons: [] }, kind);
    }
    const spelled = question
      .leftOver()
      .find(({ start, end }) => isNumberWord(text.slice(start, end).toLowerCase()));
    if (spelled !== undefined) {
      const reason = `“${text.slice(spelled.start, spelled.end)}”: write numbers in figures`;
      return unanswered(question, { type: 'problem', reasons: [reason], place: spelled }, kind);
    }
    const leftOut = question.leftOver().map(({ start, end }) => text.slice(start, end));
    return { type: 'answered', answer: found, leftOut };
  }
  return unanswered(whole, { type: 'problem', reasons: ['not understood'] });
}
