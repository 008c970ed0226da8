import {
  awgAreaMm2,
  awgDiameterMm,
  cableOrConnection,
  conductorResistance,
  expectedDrop,
  sizeThatIsEnough,
  type DropPart,
} from '@keyturn/electrics';
import { figureText, gaugeText, intervalText, shareText, spanText } from './figure-text.ts';
import type { Kind } from './kind.ts';
import { saysSize, takeConductor, takeMaterial, takeSize } from './said-conductor.ts';
import { figures, takeFigures } from './wanted.ts';

/** What a cable drops. */
export const cableDrop: Kind = {
  group: 'Cables',
  examples: ['drop of 1.5 m of 25 mm² at 200 A', 'drop of 5 ft of 2 AWG at 200 A at 80 °C'],
  read: (question) => {
    const isAsked = question.says('drop', 'loss', 'lose');
    question.says('voltage', 'cable', 'wire', 'lead', 'conductor');
    const hasCurrent = question.figures('current').length > 0;
    if (!(saysSize(question) && hasCurrent) && !isAsked) return undefined;
    const found = takeFigures(question, { current: figures.currentA }, {});
    const cable = takeConductor(question, found);
    if (cable.type === 'problem') return cable;
    if (found.type === 'problem') return found;
    const { source, ...drop } = expectedDrop({ ...cable.conductor, currentA: found.current.value });
    return {
      type: 'answer',
      lines: [
        intervalText({ ...drop, best: drop.high }),
        'The first figure is the most that a sound cable drops, without its connections.',
      ],
      assumed: cable.assumed,
      sources: [source],
    };
  },
};

const verdicts = {
  cable: 'The cable: its own resistance explains the drop.',
  connection: 'A connection: the cable alone does not explain the drop.',
  'too-near': 'Cannot tell: the drop is too near to what the cable itself takes.',
  'less-than-the-cable':
    'Cannot tell: it is less than the cable alone must drop. Less current flowed, or the cable is another one.',
} as const;

/** Whether a drop that was measured is the cable's or a connection's. */
export const causeOfDrop: Kind = {
  group: 'Cables',
  examples: ['0.44 V over 1.5 m of 25 mm² at 200 A'],
  read: (question) => {
    if (!saysSize(question) || question.figures('voltage').length === 0) return undefined;
    question.says('drop', 'cable', 'wire', 'lead', 'conductor', 'connection', 'or', 'measured');
    const needed = { drop: figures.dropV, current: figures.currentA };
    const found = takeFigures(question, needed, {});
    const cable = takeConductor(question, found);
    if (cable.type === 'problem') return cable;
    if (found.type === 'problem') return found;
    const told = cableOrConnection({
      measuredDrop: found.drop.quantity,
      currentA: found.current.value,
      conductor: cable.conductor,
    });
    const part = ({ drop, resistance }: DropPart): string =>
      `${intervalText(drop)}; ${intervalText(resistance)}`;
    return {
      type: 'answer',
      lines: [
        verdicts[told.verdict === 'cannot-tell' ? told.reason : told.verdict],
        `the cable: ${part(told.cable)}`,
        `connections: ${part(told.connection)}`,
        `${shareText(told.probability)} that connections add more than is worth a repair`,
      ],
      assumed: [
        ...cable.assumed.map((each) => each.replace('at 20 °C', 'at 0 to 40 °C')),
        'meters of usual accuracy',
      ],
      sources: [told.source],
    };
  },
};

/** The smallest cable that drops no more than is allowed. */
export const cableSize: Kind = {
  group: 'Cables',
  examples: ['cable for 4.5 m at 250 A and 0.3 V'],
  read: (question) => {
    const isAsked = question.says(
      'cable for',
      'cable size',
      'size',
      'thick',
      'thick enough',
      'what cable',
      'which cable',
    );
    question.says(
      'cable',
      'wire',
      'lead',
      'enough',
      'drop',
      'most',
      'need',
      'do',
      'big',
      'allowed',
    );
    const isTask = question.figures('length').length * question.figures('voltage').length > 0;
    if (saysSize(question) || !(isAsked || isTask)) return undefined;
    const material = takeMaterial(question);
    const { lengthM, currentA, dropV, temperatureC } = figures;
    const needed = {
      length: lengthM,
      current: currentA,
      drop: { ...dropV, name: 'the drop allowed' },
    };
    const found = takeFigures(question, needed, { temperature: temperatureC });
    if (found.type === 'problem') return found;
    const task = {
      material,
      lengthM: found.length.value,
      currentA: found.current.value,
      dropV: found.drop.value,
      temperatureC: found.temperature?.value,
    };
    const enough = sizeThatIsEnough(task);
    const assumed = [
      material === undefined ? 'flexible (class 5) copper' : `${material} cable`,
      ...(found.temperature === undefined ? ['the cable at 20 °C'] : []),
      'the length is the conductor’s own: a return cable counts as well',
    ];
    if (enough.type === 'none') {
      const least = figureText(enough.leastDrop.value, enough.leastDrop.unit);
      return {
        type: 'answer',
        lines: [`No usual battery cable is enough: even 4/0 AWG drops ${least}.`],
        assumed,
        sources: [enoughSource],
      };
    }
    const { areaMm2, awg } = enough;
    const sizes = [
      ...(areaMm2 === undefined ? [] : [{ name: `${areaMm2} mm²`, size: { areaMm2 } }]),
      ...(awg === undefined ? [] : [{ name: gaugeText(awg), size: { awg } }]),
    ];
    return {
      type: 'answer',
      lines: [
        sizes.map(({ name }) => name).join(', or '),
        ...sizes.map(
          ({ name, size }) => `${name} drops ${spanText(expectedDrop({ ...task, ...size }))}`,
        ),
        'By the drop alone: how warm a cable gets, and its fuse, is another matter.',
      ],
      assumed,
      sources: [enoughSource],
    };
  },
};

const enoughSource = {
  provenance: 'computed',
  text: 'Ohm’s law with the greatest resistance of IEC 60228 class 5 (reported)',
} as const;

/** The resistance of a piece of cable. */
export const cableResistance: Kind = {
  group: 'Cables',
  examples: ['resistance of 1.5 m of 25 mm²'],
  read: (question) => {
    const isCable = saysSize(question) || question.figures('length').length > 0;
    if (!question.says('resistance') || !isCable) return undefined;
    question.says('cable', 'wire', 'lead', 'conductor');
    const cable = takeConductor(question);
    if (cable.type === 'problem') return cable;
    const { source, ...resistance } = conductorResistance(cable.conductor);
    return {
      type: 'answer',
      lines: [intervalText(resistance)],
      assumed: cable.assumed,
      sources: [source],
    };
  },
};

const gauges = Array.from({ length: 44 }, (_, index) => index - 3);

/** One size in the other's terms. */
export const cableGauge: Kind = {
  group: 'Cables',
  examples: ['2 AWG in mm²', '25 mm² in AWG'],
  read: (question) => {
    if (!saysSize(question)) return undefined;
    question.says('mm2', 'awg', 'gauge', 'sq mm', 'cable', 'wire', 'size');
    const found = takeSize(question);
    if ('type' in found) return found;
    const { size } = found;
    const source = { provenance: 'computed', text: 'AWG after ASTM B258, one solid wire' } as const;
    if ('awg' in size) {
      const [area, diameter] = [awgAreaMm2(size.awg), awgDiameterMm(size.awg)];
      return {
        type: 'answer',
        lines: [`${figureText(area, 'mm2')}, a solid wire of ${figureText(diameter, 'mm')}`],
        sources: [source],
      };
    }
    const nearest = gauges.reduce((best, each) =>
      Math.abs(Math.log(awgAreaMm2(each) / size.areaMm2)) <
      Math.abs(Math.log(awgAreaMm2(best) / size.areaMm2))
        ? each
        : best,
    );
    return {
      type: 'answer',
      lines: [`${gaugeText(nearest)} is nearest, with ${figureText(awgAreaMm2(nearest), 'mm2')}`],
      sources: [source],
    };
  },
};
