import { loadCurrent, type Load, type LoadKind } from '@keyturn/electrics';
import { intervalText } from './figure-text.ts';
import { problem, type Kind, type Problem } from './kind.ts';
import type { Question } from './question.ts';
import { figures, takeFigures, type Wanted } from './wanted.ts';

/** What can be switched on, as people say it. */
const loadWords: readonly (readonly [LoadKind, readonly string[]])[] = [
  ['h1', ['h1']],
  ['h3', ['h3']],
  ['h4-main', ['h4 main', 'h4 main beam', 'h4 high beam']],
  ['h4-dipped', ['h4 dipped', 'h4 dipped beam', 'h4 low beam', 'h4']],
  ['h7', ['h7']],
  ['h17-main', ['h17 main']],
  ['h17-dipped', ['h17 dipped', 'h17']],
  ['p21w', ['p21w']],
  ['py21w', ['py21w']],
  ['p21-5w-bright', ['p21/5w bright', 'p21/5w', 'p21-5w']],
  ['r5w', ['r5w']],
  ['w5w', ['w5w']],
  ['r10w', ['r10w']],
  ['led-lamp', ['led', 'led lamp', 'led headlamp']],
  ['gas-discharge-lamp', ['xenon', 'gas discharge', 'hid']],
  [
    'rear-window-heater',
    [
      'rear window heater',
      'rear heater',
      'rear screen heater',
      'heated rear window',
      'rear demister',
      'rear defroster',
    ],
  ],
  ['horn-pair', ['horn pair', 'pair of horns', 'horn']],
  ['blower-full', ['blower', 'fan', 'heater blower']],
  ['window-motor-stalled', ['window motor stalled', 'stalled window motor', 'window motor held']],
  ['window-motor-moving', ['window motor', 'power window', 'electric window']],
];

/** What is switched on, taken from the question; of two words for one thing the longer counts. */
export function takeLoads(question: Question): readonly Load[] {
  return loadWords.flatMap(([kind, words]) => {
    const said = [...words].sort((one, other) => other.length - one.length);
    const counts = said.map((each) => question.countOf(each));
    const count = counts.find((each) => each > 0) ?? 0;
    return count === 0 ? [] : [{ kind, count }];
  });
}

function loadNames(loads: readonly Load[]): string {
  return loads.map(({ kind, count = 1 }) => `${count} × ${kind.replaceAll('-', ' ')}`).join(', ');
}

/** A problem where lamps are spoken of without saying which. */
export function headlampWithoutKind(question: Question): Problem | undefined {
  const saysLamps = question.says(
    'headlamp',
    'headlight',
    'head lamp',
    'head light',
    'light',
    'lamp',
  );
  return saysLamps && !question.tokens.some(({ text }) => /^(?:[hwr]\d|py?21|led|xenon)/.test(text))
    ? problem('which lamps (as in two H7) is missing')
    : undefined;
}

/** Why lamps that hold their power give no current. */
export const constantPower =
  'LED and gas-discharge lamps hold their power whatever the voltage: no current can be told by what is switched on. Measure it with a clamp.';

/** The current of what is switched on. */
export const switchedOn: Kind = {
  group: 'Battery',
  examples: ['current of two H7 and rear heater at 12.2 V'],
  read: (question) => {
    const loads = takeLoads(question);
    if (loads.length === 0 || question.figures('voltage').length > 1) return undefined;
    question.says(
      'current',
      'draw',
      'amp',
      'on',
      'switched on',
      'headlamp',
      'headlight',
      'lamp',
      'light',
    );
    const voltage: Wanted = { ...figures.voltageV, name: 'a voltage', low: 8, high: 16 };
    const found = takeFigures(question, {}, { voltage });
    if (found.type === 'problem') return found;
    const told = loadCurrent(loads, found.voltage?.value ?? 12);
    if (told.type === 'refused') return { type: 'answer', lines: [constantPower], sources: [] };
    const { source, ...current } = told.current;
    return {
      type: 'answer',
      lines: [intervalText(current), loadNames(loads)],
      assumed: found.voltage === undefined ? ['at 12 V'] : [],
      sources: [source],
    };
  },
};
