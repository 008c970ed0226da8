import { fuseColour, fuseCurrent, fuseTimeWindow, type FuseStyle } from '@keyturn/electrics';
import { figureText, intervalText, numberText } from './figure-text.ts';
import { problem, type Answer, type Kind, type Problem } from './kind.ts';
import type { Question, SaidFigure } from './question.ts';
import { figures, giveFigure, takeFigures, type Given, type Wanted } from './wanted.ts';

const ratingA: Wanted = {
  ...figures.currentA,
  name: 'the fuse’s rating',
  example: '15 A',
  low: 0.5,
  high: 120,
};

/** The rating of the fuse, and the current through it where there is one more. */
function takeRating(
  question: Question,
): { readonly rating: Given; readonly current?: SaidFigure } | Problem {
  const beside = question.labelled('current', ['fuse', 'rated', 'rating']);
  const [first, second, third] = [
    ...(beside === undefined ? [] : [beside]),
    ...question.figures('current'),
  ];
  if (first === undefined) return problem('the fuse’s rating (as in 15 A) is missing');
  if (third !== undefined)
    return problem('more than two currents: give the rating and the current', third);
  question.take(first);
  const rating = giveFigure(first, ratingA);
  if ('type' in rating) return rating;
  if (second === undefined) return { rating };
  question.take(second);
  return { rating, current: second };
}

function dropAnswer(question: Question, rating: Given): Answer | Problem {
  const isMini = question.says('mini');
  const isStandard = question.says('standard', 'regular', 'ato', 'blade');
  const found = takeFigures(question, { drop: { ...figures.dropV, low: -1, high: 15 } }, {});
  if (found.type === 'problem') return found;
  const style: FuseStyle = isMini ? 'mini' : 'standard';
  const told = fuseCurrent({ drop: found.drop.quantity, ratingA: rating.value, style });
  const assumed = isMini || isStandard ? [] : ['a standard blade fuse'];
  if (told.type === 'no-sound-fuse') {
    return {
      type: 'answer',
      lines: [
        `No sound fuse: none drops more than ${figureText(told.greatestDropMv, 'mV')}. It has opened, its sockets are bad, or it is about to open.`,
      ],
      assumed,
      sources: [told.source],
    };
  }
  const { source, ...current } = told.current;
  return {
    type: 'answer',
    lines: [
      intervalText(current),
      ...(told.resolved ? [] : ['The meter does not part it from none at all: use a finer range.']),
    ],
    assumed: [...assumed, 'a voltmeter of usual accuracy'],
    sources: [source],
  };
}

const longHours = 3600;

function timeText(seconds: number): string {
  return seconds >= longHours ? `${numberText(seconds / 3600)} h` : figureText(seconds, 's');
}

function windowAnswer(rating: Given, current: Given): Answer {
  const told = fuseTimeWindow({ currentA: current.value, ratingA: rating.value });
  const percent = `${Math.round((100 * current.value) / rating.value)}% of its rating`;
  if (told.type === 'need-not-open') {
    return {
      type: 'answer',
      lines: [
        `It need not open at all: at ${percent} it may carry the current for ever.`,
        `It holds for ${timeText(told.earliest.valueS)} at the least. From 135% on it must open.`,
      ],
      assumed: ['a blade fuse', 'a steady current'],
      sources: [told.earliest.source],
    };
  }
  const { earliest, latest } = told;
  return {
    type: 'answer',
    lines: [
      `not before ${timeText(earliest.valueS)}, and ${timeText(latest.valueS)} at the latest, at ${percent}`,
    ],
    assumed: ['a blade fuse', 'a steady current'],
    sources: [latest.source, earliest.source],
  };
}

function colourAnswer(rating: Given): Answer | Problem {
  const row = fuseColour(rating.value);
  if (row === undefined) {
    return problem(
      `no blade fuse of ${rating.text} is in the table: 1, 2, 3, 5, 7.5, 10 to 40 A`,
      rating.said,
    );
  }
  const rival = row.rivalColour === undefined ? '' : `; another text says ${row.rivalColour}`;
  return {
    type: 'answer',
    lines: [`${row.colour}${rival}`, 'A colour only hints: the number on the fuse decides.'],
    assumed: ['a blade fuse'],
    sources: [row.source],
  };
}

/** The colour of a fuse. */
export const colourOfFuse: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['colour of a 15 A fuse'],
  read: (question) => {
    if (!question.says('colour', 'color') || question.figures('gauge').length > 0) return undefined;
    question.says('blade', 'fuse', 'mini', 'standard');
    const found = takeRating(question);
    if ('type' in found) return found;
    return colourAnswer(found.rating);
  },
};

function saysFuse(question: Question): boolean {
  return question.tokens.some(({ text }) => /^fuses?$/.test(text));
}

/** When a fuse opens. */
export const openingOfFuse: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['fuse 10 A at 20 A opens when'],
  read: (question) => {
    if (!saysFuse(question) || question.figures('voltage').length > 0) return undefined;
    const found = takeRating(question);
    if ('type' in found) return found;
    question.says('fuse', 'open', 'blow', 'blows', 'long', 'time', 'current', 'carry', 'carries');
    question.says('blade', 'standard', 'mini', 'hold', 'pop', 'trip');
    if (found.current === undefined) {
      return problem(
        'what of the fuse is meant: the drop across it (0.4 mV), the current through it (20 A), or its colour?',
      );
    }
    const given = giveFigure(found.current, { ...figures.currentA, low: 0 });
    return 'type' in given ? given : windowAnswer(found.rating, given);
  },
};

/** What flows through a fuse by the drop across it. */
export const currentOfFuse: Kind = {
  group: 'Fuses, relays, terminals',
  examples: ['fuse 15 A mini 0.4 mV'],
  read: (question) => {
    if (!saysFuse(question)) return undefined;
    const found = takeRating(question);
    if ('type' in found) return found;
    question.says('fuse', 'drop', 'current', 'across', 'draw');
    return dropAnswer(question, found.rating);
  },
};
