import {
  correctedSpecificGravity,
  freezingPoint,
  specificGravityVoltage,
  stateOfChargeByGravity,
  type Source,
} from '@keyturn/electrics';
import { carSpecificGravity, electrolyteFreezing } from '@keyturn/electrics/tables';
import { intervalText, numberText, temperatureText } from './figure-text.ts';
import { joinProblems, problem, type Kind, type Problem } from './kind.ts';
import type { Question } from './question.ts';
import { figures, giveFigure, takeFigures, type Given, type Wanted } from './wanted.ts';

const gravity: Wanted = {
  kind: 'bare',
  unit: '1',
  name: 'a specific gravity',
  example: '1.250',
  low: 1,
  high: 1.4,
};

/** A hydrometer’s figure, which many read as 1250. */
export function takeGravity(question: Question): Given | Problem {
  const [said] = question.figures('bare');
  if (said === undefined) return problem('a specific gravity (as in 1.250) is missing');
  question.take(said);
  const { quantity } = said;
  const isInThousands = quantity.value >= 1000 && quantity.value <= 1400;
  const value = isInThousands ? quantity.value / 1000 : quantity.value;
  return giveFigure({ ...said, quantity: { value, unit: '1' } }, gravity);
}

/** Tells whether the question speaks of the electrolyte. */
export function saysGravity(question: Question): boolean {
  return question.says(
    'gravity',
    'specific gravity',
    'hydrometer',
    'electrolyte',
    'acid',
    'density',
    'sg',
  );
}

/** Where the charge by gravity comes from. */
export const byGravity: Source = {
  provenance: 'published',
  text: 'TM 5-1185, battery filled to 1.280, and a battery maker’s table, filled to 1.265',
};

/** Where the electrolyte freezes. */
export const freezing: Kind = {
  group: 'Battery',
  examples: ['freezing point at 1.150'],
  read: (question) => {
    if (!question.says('freezing', 'freeze', 'freezes', 'freezing point', 'frozen', 'ice'))
      return undefined;
    question.says('point', 'battery');
    saysGravity(question);
    const given = takeGravity(question);
    if ('type' in given) return given;
    return {
      type: 'answer',
      lines: [temperatureText(freezingPoint(given.value).value)],
      assumed: ['the gravity at 27 °C (80 °F)'],
      sources: [electrolyteFreezing.source],
    };
  },
};

/** A hydrometer's reading corrected, and the voltage that belongs to it. */
export const hydrometer: Kind = {
  group: 'Battery',
  examples: ['gravity 1.250 at 90 °F'],
  read: (question) => {
    if (!saysGravity(question)) return undefined;
    question.says('voltage', 'battery', 'reading', 'corrected', 'read');
    const given = takeGravity(question);
    const found = takeFigures(question, {}, { temperature: figures.temperatureC });
    if ('type' in given || found.type === 'problem') return joinProblems(given, found);
    const { temperature } = found;
    const corrected =
      temperature === undefined
        ? given.value
        : correctedSpecificGravity(given.value, temperature.value);
    return {
      type: 'answer',
      lines: [
        `${corrected.toFixed(3)} at 27 °C (80 °F)`,
        `voltage at rest: ${intervalText(specificGravityVoltage(corrected))}`,
        `charge: ${intervalText(stateOfChargeByGravity(corrected))}`,
      ],
      assumed: temperature === undefined ? [`${numberText(given.value)} was read at 27 °C`] : [],
      sources: [
        {
          provenance: 'published',
          text: 'TM 5-4210-230-14&P-1, hydrometer correction; DOE-HDBK-1084-95 equation 6',
        },
        { ...byGravity, text: carSpecificGravity.source.text },
      ],
    };
  },
};
