import {
  convertRating,
  loadTestCurrent,
  type LabelRating,
  type RatingRefusal,
  type RatingStandard,
} from '@keyturn/electrics';
import { intervalText } from './figure-text.ts';
import { joinProblems, problem, type Kind } from './kind.ts';
import { ratingWords, takeStandards } from './vehicle.ts';
import { figures, takeFigures, type Wanted } from './wanted.ts';

const refusals: Readonly<Record<RatingRefusal, string>> = {
  'not-a-current': 'capacity and reserve capacity say nothing of what cranks',
  'tested-by-size': 'JIS loads each size of battery with a current of its own, at -15 °C',
  'no-factor-known': 'nobody gives a factor',
  'factors-contradict': 'the published factors contradict each other',
};

const standardNames: Readonly<Record<RatingStandard, string>> = {
  sae: 'SAE',
  en: 'EN',
  din: 'DIN',
  iec: 'IEC',
  jis: 'JIS',
  mca: 'MCA',
};

const labelCurrent: Wanted = {
  ...figures.currentA,
  name: 'a label’s current',
  low: 50,
  high: 2500,
};

/** The current of a load test by the label. */
export const loadTestLoad: Kind = {
  group: 'Battery',
  examples: ['load-test current of 680 A EN', 'load-test current of 60 Ah'],
  read: (question) => {
    if (!question.says('load test', 'loadtest')) return undefined;
    question.says('current', 'load', 'amp', 'battery', 'rating', 'label', 'rated');
    const found = takeFigures(question, {}, { label: labelCurrent, capacity: figures.capacityAh });
    if (found.type === 'problem') return found;
    const { label, capacity } = found;
    const [standard] = takeStandards(question);
    if (label === undefined && capacity === undefined) {
      return problem('the label (as in 680 A EN, or 60 Ah) is missing');
    }
    const rating: LabelRating =
      label === undefined
        ? { capacityAh: capacity?.value ?? 0 }
        : { crankingA: label.value, standard: standard ?? 'sae' };
    const told = loadTestCurrent(rating);
    if (told.type === 'refused') {
      return { type: 'answer', lines: [`No figure: ${refusals[told.reason]}.`], sources: [] };
    }
    const { source, ...current } = told.current;
    return {
      type: 'answer',
      lines: [`${intervalText(current)}, for 15 s`],
      assumed:
        label === undefined
          ? ['no cold-cranking current is known']
          : standard === undefined
            ? ['the label is SAE']
            : [],
      sources: [source],
    };
  },
};

/** A label's figure after another standard. */
export const ratingInAnother: Kind = {
  group: 'Battery',
  examples: ['600 A SAE in EN'],
  read: (question) => {
    const standards = takeStandards(question);
    if (standards.length === 0 || question.figures('voltage').length > 0) return undefined;
    question.says(
      ...ratingWords,
      'convert',
      'battery',
      'equal',
      'same',
      'cold cranking',
      'current',
    );
    const found = takeFigures(question, { label: labelCurrent }, {});
    const [from, to, third] = standards;
    const wrong = joinProblems(
      found,
      ...(to === undefined
        ? [problem('the other standard (as in 600 A SAE in EN) is missing')]
        : []),
      ...(third === undefined
        ? []
        : [problem('more than two standards: give the label’s and the other')]),
    );
    if (wrong !== undefined || found.type === 'problem' || from === undefined || to === undefined) {
      return wrong;
    }
    const told = convertRating(found.label.value, from, to);
    const both = `from ${standardNames[from]} to ${standardNames[to]}`;
    if (told.type === 'refused') {
      return {
        type: 'answer',
        lines: [`No figure ${both}: ${refusals[told.reason]}.`],
        sources: [],
      };
    }
    const { source, ...current } = told.current;
    return {
      type: 'answer',
      lines: [
        `${intervalText(current)} ${standardNames[to]}`,
        'No standard converts one rating into another: compare like with like where you can.',
      ],
      sources: [source],
    };
  },
};
