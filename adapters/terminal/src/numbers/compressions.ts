import { compressionRate, speedByCompressions, weakCylinderSign } from '@keyturn/electrics';
import { figureText, quantityText } from './figure-text.ts';
import { problem, type Kind } from './kind.ts';
import { takeCylinders } from './vehicle.ts';
import { figures, takeFigures } from './wanted.ts';

const source = { provenance: 'computed', text: 'the four strokes: N × speed / 120' } as const;
const evenFiring = 'a four-stroke engine that fires evenly';

/** Compressions a second by the speed, and the speed by the compressions. */
export const compressions: Kind = {
  group: 'The engine and its starter',
  examples: ['150 rpm 4 cylinders', '6 Hz 4 cylinders'],
  read: (question) => {
    if (question.figures('frequency').length === 0) return undefined;
    const cylinders = takeCylinders(question);
    if (typeof cylinders === 'object') return cylinders;
    if (cylinders === undefined)
      return problem('the number of cylinders (as in 4 cylinders) is missing');
    question.says(
      'compression',
      'compressions per second',
      'beat',
      'per second',
      'a second',
      'second',
      'engine',
      'crank',
      'cranking',
      'pulse',
      'speed',
    );
    const [said] = question.figures('frequency');
    const isRate = said?.quantity.unit === 'Hz';
    const found = takeFigures(question, { turns: isRate ? figures.rate : figures.speed }, {});
    if (found.type === 'problem') return found;
    const { value } = found.turns;
    if (isRate) {
      return {
        type: 'answer',
        lines: [quantityText(speedByCompressions(cylinders, value))],
        assumed: [evenFiring],
        sources: [source],
      };
    }
    const beats = compressionRate(cylinders, value);
    const weak = cylinders === 1 ? undefined : weakCylinderSign(cylinders, value);
    return {
      type: 'answer',
      lines: [
        `${figureText(beats.value, '1')} compressions a second`,
        ...(weak === undefined
          ? []
          : [
              `One weak cylinder shows in every ${figureText(weak.everyEvents, '1')} of them, ${figureText(weak.rate.value, '1')} times a second.`,
            ]),
      ],
      assumed: [evenFiring],
      sources: [source],
    };
  },
};
