import type { Provenance, Source } from '@keyturn/electrics';
import { columnsOf, wrapBehind, wrapText } from '../wrap.ts';
import type { Reply } from './answer-question.ts';
import { groups, kinds } from './kinds.ts';

const width = 80;

/** How each kind of source is named, in the words of the rest of the project. */
const founded: Readonly<Record<Provenance, string>> = {
  published: 'published',
  reported: 'published, as another text reports it',
  'from memory': 'from memory, not looked up',
  'common practice': 'common practice, no source',
  computed: 'computed',
};

/** Unit codes that sources are written with, as a reader knows them. */
const readable: readonly (readonly [RegExp, string])[] = [
  [/\bCel\b/g, '°C'],
  [/\bdegF\b/g, '°F'],
  [/\bmOhm\b/g, 'mΩ'],
  [/\bA\.h\b/g, 'Ah'],
  [/\bN\.m\b/g, 'N·m'],
  [/\bmm2\b/g, 'mm²'],
];

function sourceText({ provenance, text }: Source): string {
  const said = readable.reduce((written, [code, sign]) => written.replace(code, sign), text);
  return `source: ${founded[provenance]} (${said})`;
}

/** A line whose further lines stand two columns in. */
function hanging(text: string): readonly string[] {
  const [first = '', ...more] = wrapText(text, width);
  const rest = more.join(' ');
  return rest === '' ? [first] : [first, ...wrapBehind('  ', rest, width)];
}

function answerLines({ answer, leftOut }: Extract<Reply, { type: 'answered' }>): readonly string[] {
  const { lines, assumed = [], cautions = [], sources } = answer;
  return [
    ...lines,
    ...(assumed.length === 0 ? [] : [`assumed: ${assumed.join('; ')}`]),
    ...cautions,
    ...(leftOut.length === 0
      ? []
      : [`left out, not understood or of no effect here: ${leftOut.join(', ')}`]),
    ...new Set(sources.map(sourceText)),
  ].flatMap(hanging);
}

/** The question with a mark under the place of the problem. */
function pointAt(text: string, start: number, end: number): readonly string[] {
  const shown = text.slice(0, width - 2);
  if (end > shown.length) return [];
  const before = ' '.repeat(columnsOf(shown.slice(0, start)));
  return [
    `  ${shown}`,
    `  ${before}${'^'.repeat(Math.max(1, columnsOf(shown.slice(start, end))))}`,
  ];
}

function refusalLines(
  text: string,
  { reasons, place, examples }: Extract<Reply, { type: 'unanswered' }>,
): readonly string[] {
  return [
    ...hanging(`numbers: ${reasons.join('; ')}`),
    ...(place === undefined ? [] : pointAt(text, place.start, place.end)),
    'What can be asked, for example:',
    ...examples.map((example) => `  ${example}`),
    'Everything that can be asked: npm run -s numbers -- --help',
  ];
}

/** What is shown of a reply, in lines of at most 80 columns. */
export function layOutReply(text: string, reply: Reply): readonly string[] {
  // Control characters would steer the terminal.
  const shown = text.replaceAll(/\p{Cc}/gu, ' ');
  return reply.type === 'answered' ? answerLines(reply) : refusalLines(shown, reply);
}

/** One example of each kind of question under its heading. */
export function layOutHelp(): readonly string[] {
  const examples = groups.flatMap((group) => [
    '',
    group,
    ...kinds.filter((kind) => kind.group === group).map((kind) => `  ${kind.examples[0]}`),
  ]);
  return [
    'Answers one question in plain words with a figure, its spread and its source:',
    '',
    '  npm run -s numbers -- drop of 1.5 m of 25 mm² at 200 A',
    ...examples,
    '',
    ...wrapText(
      'Words in any order; units as you write them: °C or °F, mm² or AWG, m, ft or in, A or mA, V or mV, mΩ, N·m or lbf·ft. What is not said is assumed, and the answer says what. Quote a question that has brackets. Exit code 2 where there is no answer.',
      width,
    ),
  ];
}
