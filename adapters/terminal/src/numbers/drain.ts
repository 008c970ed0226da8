import { drainTime, keyOffDrain, stateOfCharge } from '@keyturn/electrics';
import { figureText, intervalText } from './figure-text.ts';
import type { Kind } from './kind.ts';
import { takeTechnology } from './vehicle.ts';
import { figures, takeFigures, type Wanted } from './wanted.ts';

const drainA: Wanted = {
  ...figures.currentA,
  name: 'the drain',
  example: '50 mA',
  low: 0,
  high: 100,
};

/** How many days a drained battery still cranks. */
export const drainDays: Kind = {
  group: 'Charging and drain',
  examples: ['50 mA from 60 Ah at -10 °C'],
  read: (question) => {
    const isDrain = question.figures('charge').length > 0;
    if (!isDrain || question.figures('current').length === 0) return undefined;
    question.says(
      'drain',
      'day',
      'days',
      'long',
      'crank',
      'cannot',
      'until',
      'last',
      'stand',
      'battery',
      'parasitic',
      'draw',
      'start',
      'before',
      'flat',
    );
    const truck = question.says('truck', 'lorry', 'bus');
    const technology = takeTechnology(question);
    const found = takeFigures(
      question,
      { drain: drainA, capacity: figures.capacityAh },
      {
        temperature: { ...figures.temperatureC, high: 60 },
        rest: { ...figures.voltageV, name: 'a rest voltage' },
      },
    );
    if (found.type === 'problem') return found;
    const { source, ...days } = drainTime({
      drainMa: found.drain.value * 1000,
      capacityAh: found.capacity.value,
      temperatureC: found.temperature?.value ?? 20,
      vehicle: truck ? 'truck' : 'car',
      ...(technology === undefined ? {} : { technology }),
      ...(found.rest === undefined
        ? {}
        : { stateOfCharge: stateOfCharge(found.rest.value, technology ?? 'flooded') }),
    });
    return {
      type: 'answer',
      lines: [
        days.high > 0
          ? `${intervalText(days)}, until it no longer cranks`
          : '0 days: not even a full battery cranks at that temperature.',
      ],
      assumed: [
        ...(found.temperature === undefined ? ['the start at 20 °C'] : []),
        ...(found.rest === undefined ? ['full at the beginning'] : []),
        ...(truck ? [] : ['a car']),
        'standing at 10 to 27 °C',
        'no module that wakes up',
      ],
      sources: [source],
    };
  },
};

/** Whether a drain with the key off is too much. */
export const keyOff: Kind = {
  group: 'Charging and drain',
  examples: ['key-off drain 80 mA after 70 min'],
  read: (question) => {
    if (!question.says('key off', 'drain', 'parasitic', 'quiescent', 'parasitic draw'))
      return undefined;
    question.says('after', 'draw', 'current', 'key', 'off');
    const found = takeFigures(question, { drain: drainA }, { minutes: figures.minutes });
    if (found.type === 'problem') return found;
    const minutes = found.minutes?.value ?? 60;
    const told = keyOffDrain(found.drain.quantity, minutes);
    const most = figureText(told.limit.high, told.limit.unit);
    const lines = {
      normal: `Normal: not above ${most}.`,
      investigate: `To be looked into: above ${most}.`,
      'cannot-tell': `Too close to call: the meter does not part it from ${most}.`,
      wait: `Wait ${told.type === 'wait' ? figureText(told.minutes, 'min') : ''} more with the doors shut: modules may still be awake.`,
    };
    return {
      type: 'answer',
      lines: [lines[told.type]],
      assumed: [
        ...(found.minutes === undefined ? ['60 min after the last door was shut'] : []),
        'a clamp of usual accuracy',
      ],
      cautions: ['The maker’s own figure goes before it.'],
      sources: [told.limit.source],
    };
  },
};
