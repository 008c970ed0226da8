import {
  batteryFromPair,
  loadCurrent,
  type BatteryFromPair,
  type Quantity,
  type SourcedInterval,
} from '@keyturn/electrics';
import { intervalText, quantityText, spanText } from './figure-text.ts';
import { joinProblems, problem, type Answer, type Kind, type Problem } from './kind.ts';
import type { Question } from './question.ts';
import { constantPower, headlampWithoutKind, takeLoads } from './switched-on.ts';
import { figures, giveFigure, takeFigures, type Wanted } from './wanted.ts';

const posts: Wanted = { ...figures.voltageV, name: 'a voltage at the posts' };

type Pair = { readonly rest: Quantity; readonly loaded: Quantity };

/** Both voltages: by the words beside them, else the higher is the one at rest. */
function takePair(question: Question): Pair | Problem {
  const loadedWords = ['loaded', 'load', 'under load', 'cranking', 'crank', 'with'];
  const labelledRest = question.labelled('voltage', [
    'rest',
    'rested',
    'resting',
    'unloaded',
    'at rest',
  ]);
  const labelledLoaded = question.labelled('voltage', loadedWords.slice(0, 5));
  const all = [labelledRest, labelledLoaded, ...question.figures('voltage')].filter(
    (each) => each !== undefined,
  );
  const [one, other, third] = all;
  if (one === undefined)
    return problem('two voltages, at rest and under load (as in 12.6 V and 10.2 V), are missing');
  if (other === undefined)
    return problem('the second voltage is missing: at rest and under load are needed', one);
  if (third !== undefined)
    return problem('more than two voltages: give the one at rest and the one under load', third);
  for (const each of all) {
    question.take(each);
    const given = giveFigure(each, posts);
    if ('type' in given) return given;
  }
  const isOrdered =
    labelledRest !== undefined ||
    (labelledLoaded === undefined && one.quantity.value >= other.quantity.value);
  return isOrdered
    ? { rest: one.quantity, loaded: other.quantity }
    : { rest: other.quantity, loaded: one.quantity };
}

function pairAnswer(told: BatteryFromPair, assumed: readonly string[]): Answer {
  if (told.type === 'estimated') {
    const { source, ...resistance } = told.resistance;
    return {
      type: 'answer',
      lines: [
        intervalText(resistance),
        `cold-cranking current to expect (SAE): ${intervalText(told.crankingAmps)}`,
        'An estimate and no test: charge, temperature and the length of the load change it.',
      ],
      assumed,
      sources: [source],
    };
  }
  const why =
    told.reason === 'fall-not-told'
      ? `Cannot tell: the voltage falls by no more than the meter’s error. The battery has at most ${quantityText(told.resistanceAtMost)}. Load it more.`
      : told.reason === 'current-not-told'
        ? 'Cannot tell: by the meter’s error the current may be none at all.'
        : 'Cannot tell: the voltage rises under load. One of both was read wrongly, or something charges.';
  return { type: 'answer', lines: [why], assumed, sources: [] };
}

/** The load of a pair of readings: its current, or what is switched on. */
function takeLoad(
  question: Question,
  loadedV: number,
): Quantity | SourcedInterval | Problem | string {
  const loads = takeLoads(question);
  const missingKind = headlampWithoutKind(question);
  const found = takeFigures(question, {}, { current: figures.currentA });
  if (found.type === 'problem') return found;
  if (found.current !== undefined) return found.current.quantity;
  if (missingKind !== undefined) return missingKind;
  if (loads.length === 0) {
    return problem('the load (as in 160 A, or headlamps (two H7) and rear heater) is missing');
  }
  const told = loadCurrent(loads, loadedV);
  return told.type === 'refused' ? constantPower : told.current;
}

/** Internal resistance of a battery from two voltages. */
export const internalResistance: Kind = {
  group: 'Battery',
  examples: [
    'resistance from 12.6 V and 10.2 V at 160 A',
    'resistance from 12.6 V and 11.9 V with headlamps (two H7) and rear heater',
  ],
  read: (question) => {
    const isAsked = question.says('resistance', 'internal resistance', 'inner resistance');
    const isPair =
      question.figures('voltage').length === 2 && question.figures('current').length === 1;
    const isOther = question.figures('resistance').length + question.figures('length').length > 0;
    if (isOther || !(isAsked || isPair)) return undefined;
    question.says('battery', 'internal', 'inner', 'drops', 'drop', 'fall', 'current', 'on');
    const pair = takePair(question);
    const load = takeLoad(question, 'rest' in pair ? Math.max(8, pair.loaded.value) : 12);
    if (typeof load === 'string') return { type: 'answer', lines: [load], sources: [] };
    const found = takeFigures(
      question,
      {},
      { temperature: { ...figures.temperatureC, low: -29, high: 60 } },
    );
    const wrong = joinProblems(pair, load, found);
    if (wrong !== undefined || 'type' in pair || 'type' in load || found.type === 'problem')
      return wrong;
    const told = batteryFromPair({ ...pair, load, temperatureC: found.temperature?.value ?? 20 });
    return pairAnswer(told, [
      'at the posts of one 12 V battery, its surface charge gone',
      'meters of usual accuracy',
      ...(found.temperature === undefined ? ['at 20 °C'] : []),
      ...('low' in load ? [`a load of ${spanText(load)}`] : []),
    ]);
  },
};
