import { limit, stateOfCharge, stateOfChargeByGravity, type Bound } from '@keyturn/electrics';
import { openCircuitVoltage } from '@keyturn/electrics/tables';
import { byGravity, saysGravity, takeGravity } from './electrolyte.ts';
import { intervalText, spanText, temperatureText } from './figure-text.ts';
import type { Kind } from './kind.ts';
import { takeNominal, takeTechnology } from './vehicle.ts';
import { figures, takeFigures } from './wanted.ts';

/** The table prints tenths of a volt; between its steps lie straight lines. */
function loadTestLines(bound: Bound): readonly string[] {
  const tenth = (value: number): string => String(Number(value.toFixed(1)));
  const [low, high] = [tenth(bound.low), tenth(bound.high)];
  const exact = spanText(bound);
  const printed = low === high ? `${low} V` : `${low} to ${high} V`;
  return [
    printed,
    `After 15 s at half of the cold-cranking current${exact === printed ? '' : `; ${exact} by straight lines between the steps of the table`}.`,
  ];
}

/** The least voltage of a load test. */
export const loadTestMinimum: Kind = {
  group: 'Battery',
  examples: ['load-test minimum at -7 °C', 'load-test minimum at 20 °F'],
  read: (question) => {
    const isLoadTest = question.says('load test', 'loadtest');
    const isMinimum = question.says(
      'minimum',
      'min',
      'least',
      'lowest',
      'limit',
      'voltage',
      'volt',
    );
    if (!isLoadTest || !isMinimum) return undefined;
    question.says('battery', 'at least', 'pass');
    const nominal = takeNominal(question);
    const found = takeFigures(question, {}, { temperature: figures.temperatureC });
    if (found.type === 'problem') return found;
    const temperature = found.temperature?.value;
    const told = limit('battery.load-test.minimum', { temperature, nominal });
    if (told.type === 'unknown') {
      return {
        type: 'answer',
        lines: [`None: a battery is not load-tested below ${temperatureText(-18)}. Warm it first.`],
        sources: [],
      };
    }
    return {
      type: 'answer',
      lines: loadTestLines(told.bound),
      assumed: [
        ...(nominal === undefined ? ['a 12 V battery'] : []),
        ...(temperature === undefined
          ? ['the battery between freezing and 21 °C, for no temperature was said']
          : []),
      ],
      sources: [told.bound.source],
    };
  },
};

/** How full a rested battery is, by its voltage or its electrolyte. */
export const charge: Kind = {
  group: 'Battery',
  examples: ['charge at 12.4 V agm', 'charge at 1.225'],
  read: (question) => {
    if (!question.says('charge', 'charged', 'state of charge', 'soc', 'full', 'how full'))
      return undefined;
    question.says('battery', 'rest', 'rested', 'resting', 'reading', 'state', 'open circuit');
    saysGravity(question);
    const technology = takeTechnology(question);
    const [system, bare] = [takeNominal(question), question.figures('bare')];
    const isGravity =
      question.figures('voltage').length === 0 &&
      bare.some(({ quantity }) => quantity.value < 2 || quantity.value > 1000);
    if (isGravity) {
      const given = takeGravity(question);
      if ('type' in given) return given;
      return {
        type: 'answer',
        lines: [intervalText(stateOfChargeByGravity(given.value))],
        assumed: ['the gravity at 27 °C (80 °F)'],
        sources: [byGravity],
      };
    }
    const { systemV, voltageV, temperatureC } = figures;
    const found = takeFigures(
      question,
      {
        rest: {
          ...(system === 24 ? systemV : voltageV),
          name: 'a rest voltage or a specific gravity',
          example: '12.4 V or 1.225',
        },
      },
      { temperature: temperatureC },
    );
    if (found.type === 'problem') return found;
    const one = found.rest.value / (system === 24 ? 2 : 1);
    const kind = technology ?? 'flooded';
    return {
      type: 'answer',
      lines: [
        intervalText(stateOfCharge(one, kind, found.temperature?.value)),
        'How full it is says nothing of what it can crank.',
      ],
      assumed: [
        ...(technology === undefined ? ['a flooded battery'] : []),
        'rested, its surface charge gone',
        ...(found.temperature === undefined ? ['at 0 to 40 °C'] : []),
        ...(system === 24 ? ['two equal batteries in series'] : []),
      ],
      sources: openCircuitVoltage[kind].map(({ source }) => source),
    };
  },
};
