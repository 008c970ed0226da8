import { type FigureWords, type Spelling, type Words, figureWordsOf } from '../words/words.ts';
import { readTokens } from './read-tokens.ts';

/** The words of a language, each spelled as what is typed is spelled before it is compared. */
export function spellWords(words: Words): Words {
  const spell = (text: string): string =>
    readTokens(text, words)
      .map((token) => (token.kind === 'number' ? token.digits : token.text))
      .join(' ');
  const all = (texts: readonly string[]): string[] => [
    ...new Set(texts.map(spell).filter((text) => text !== '')),
  ];
  const keys = <Value>(record: Readonly<Record<string, Value>>): Record<string, Value> =>
    Object.fromEntries(Object.entries(record).map(([text, value]) => [spell(text), value]));
  const lists = <Lists extends Readonly<Record<keyof Lists, readonly string[]>>>(
    record: Lists,
  ): Lists =>
    Object.fromEntries(
      Object.entries<readonly string[]>(record).map(([key, texts]) => [key, all(texts)]),
    ) as unknown as Lists;
  const { spelling } = words;
  // The "and" that is written on to the word behind it: `والملصق`.
  const joins = ['', ...words.joins.filter((join) => spelling?.attached?.includes(join))];
  const joined = (texts: readonly string[]): string[] =>
    joins.flatMap((join) => texts.map((text) => join + text));
  const figuresJoined = (figureWords: FigureWords): FigureWords => {
    const said = { ...figureWords };
    for (const key of afterAnd) said[key] = joined(figureWords[key]);
    return said;
  };
  return {
    ...words,
    ...(spelling === undefined ? {} : { spelling: spellSpelling(spelling, all, joined) }),
    cardinals: keys(words.cardinals),
    decimalZero: all(words.decimalZero),
    scales: keys(words.scales),
    point: all(words.point),
    joins: all(words.joins),
    articles: all(words.articles),
    fractions: keys(words.fractions),
    minus: all(words.minus),
    below: all(words.below ?? []).sort((one, other) => other.length - one.length),
    days: { ...words.days, times: all(words.days.times) },
    ordinals: keys(words.ordinals),
    units: lists(words.units),
    bareUnits: all(words.bareUnits),
    boundsOnly: all(words.boundsOnly),
    nearly: all(words.nearly),
    vague: all(words.vague),
    besideFigures: all(words.besideFigures),
    figureWords: lists(figuresJoined(figureWordsOf(words))),
    asides: all(words.asides ?? []),
    sayings: all(words.sayings ?? []),
    courtesies: all(words.courtesies ?? []),
    negators: all(words.negators),
    ...(words.exceptives === undefined ? {} : { exceptives: lists(words.exceptives) }),
    subjects: all(words.subjects ?? []),
    likewise: all(words.likewise ?? []),
    untried: all(words.untried ?? []),
    runsOn: all(words.runsOn ?? []),
    price: all(words.price ?? []),
    rails: all(words.rails ?? []),
    whether: all(words.whether ?? []),
    alternatives: all(words.alternatives ?? []),
    norOr: all(words.norOr ?? []),
    turns: all(joined(words.turns ?? [])),
    perhaps: all(joined(words.perhaps ?? [])),
    clauseBreaks: all(words.clauseBreaks),
    fillers: all(words.fillers),
    endings: all(words.endings).sort((one, other) => other.length - one.length),
    optionWords: all(words.optionWords),
    talk: lists(words.talk),
    corrections: all(words.corrections),
    retractions: all(words.retractions ?? []),
    neverWas: all(words.neverWas ?? []),
    earlier: all(words.earlier),
    statements: words.statements.map(({ set, said }) => ({ set, said: all(said) })),
    accuracy: lists(words.accuracy),
    speaking: all(words.speaking),
    having: all(words.having),
    kit: lists(words.kit),
  };
}

/** What may begin what is said of another figure. */
const afterAnd = [
  'again',
  'allOff',
  'battery',
  'display',
  'expected',
  'label',
  'past',
  'present',
  'sides',
  'vehicle',
] as const;

type Texts = (texts: readonly string[]) => string[];

function spellSpelling(spelling: Spelling, all: Texts, joined: Texts): Spelling {
  const one = (text: string): string => all([text])[0] ?? '';
  const { attached = [], beforeNumbers = [], denyBefore = [], around = [] } = spelling;
  return {
    ...spelling,
    attached: all(attached).sort((one, other) => other.length - one.length),
    beforeNumbers: all(beforeNumbers).sort((one, other) => other.length - one.length),
    denyBefore: all(denyBefore),
    denyNothing: all(joined(spelling.denyNothing ?? [])),
    refusals: all(spelling.refusals ?? []),
    unitsBehind: all(spelling.unitsBehind ?? []),
    around: around.map(([before, behind]) => [one(before), one(behind)]),
    ...(spelling.twoOf === undefined
      ? {}
      : {
          twoOf: Object.fromEntries(
            Object.entries(spelling.twoOf).map(([two, said]) => [one(two), one(said)]),
          ),
        }),
  };
}
