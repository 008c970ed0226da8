import { regulatedVoltageWindow, rippleVerdict } from '@keyturn/electrics';
import { spanText } from './figure-text.ts';
import type { Kind } from './kind.ts';
import { takeNominal } from './vehicle.ts';
import { figures, takeFigures } from './wanted.ts';

/** The window of the charging voltage by temperature. */
export const regulatedVoltage: Kind = {
  group: 'Charging and drain',
  examples: ['regulated voltage at -18 °C'],
  read: (question) => {
    if (
      !question.says('regulated', 'regulator', 'regulated voltage', 'charging voltage', 'charging')
    ) {
      return undefined;
    }
    question.says('voltage', 'volt', 'window', 'alternator', 'generator', 'charging');
    const nominal = takeNominal(question);
    const found = takeFigures(question, {}, { temperature: figures.temperatureC });
    if (found.type === 'problem') return found;
    const { source, ...window } = regulatedVoltageWindow(found.temperature?.value, nominal);
    return {
      type: 'answer',
      lines: [spanText(window)],
      assumed: [
        ...(nominal === undefined ? ['12 V'] : []),
        ...(found.temperature === undefined ? ['a warm system'] : []),
        'a conventional regulator: one that the engine computer commands has no such window',
      ],
      sources: [source],
    };
  },
};

const verdicts = {
  fine: 'Fine.',
  recheck: 'Measure again: neither fine nor clearly a fault.',
  'diode-fault-likely': 'A diode fault is likely.',
} as const;

/** What an AC voltage says of the generator's diodes. */
export const ripple: Kind = {
  group: 'Charging and drain',
  examples: ['0.6 V ripple at the battery'],
  read: (question) => {
    if (!question.says('ripple', 'ac ripple', 'ac')) return undefined;
    const isGenerator = question.says('generator', 'alternator', 'b+', 'b plus');
    const isBattery = question.says('battery', 'post', 'battery post');
    const isTrueRms = question.says('true rms', 'trms');
    const found = takeFigures(
      question,
      { ripple: { ...figures.dropV, name: 'the AC voltage', low: 0 } },
      {},
    );
    if (found.type === 'problem') return found;
    const place = isGenerator && !isBattery ? 'generator-b-plus' : 'battery-posts';
    const told = rippleVerdict({ reading: found.ripple.quantity, place, trueRms: isTrueRms });
    return {
      type: 'answer',
      lines: [
        verdicts[told.verdict],
        ...(told.indicationOnly
          ? ['Only an indication, unless the meter gives the true root mean square.']
          : []),
      ],
      assumed: [
        ...(isGenerator || isBattery ? [] : ['at the battery’s posts']),
        'battery charged, lamps on, engine at 1500 to 3000 rpm',
      ],
      sources: [told.source],
    };
  },
};
