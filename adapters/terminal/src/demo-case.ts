/**
 * The demonstration: an invented vehicle that answers every check of the no-start flow as one with
 * a bad ground cable would. Every figure in it is made up.
 */
import { positionOf, type Case } from '@keyturn/core';
import type { Figure } from '@keyturn/language';
import type { Lines } from './lines.ts';

/** What is answered to each check: choice ids, or a figure. */
export type DemoAnswer = readonly string[] | Required<Figure>;

function reading(value: number, unit: string, resolution = 1): Required<Figure> {
  return { value, unit, resolution };
}

/** How the answers are put into the words of a language. */
export interface DemoWords {
  readonly label: (check: string, answer: string) => string;
  readonly figure: (figure: Figure) => string;
  readonly dontKnow: string;
}

/** What is answered to each check. */
export const demoAnswers: Readonly<Record<string, DemoAnswer>> = {
  place: ['home'],
  scene: ['safe'],
  drive: ['petrol'],
  complaint: ['slow-crank'],
  when: ['after-standing'],
  history: ['none'],
  'fuel-level': ['has-fuel'],
  'flooded-smell': ['no'],
  'crank-rhythm': ['even'],
  'charge-lamp': ['normal'],
  'battery-age': reading(2, 'a'),
  kit: ['voltmeter', 'helper', 'hand-tools'],
  transmission: ['manual'],
  ignition: ['key'],
  selector: ['park-neutral'],
  clutch: ['down'],
  isolator: ['on'],
  'brake-lamps': ['light'],
  'steering-wheel': ['frees'],
  'ready-lamp': ['ready'],
  'security-lamp': ['normal'],
  'battery-look': ['sound'],
  terminals: ['clean-tight'],
  dash: ['dim'],
  headlamps: ['dim'],
  'neutral-try': ['no-change'],
  retry: ['no-change'],
  'other-key': ['no-change'],
  'main-fuse': ['intact'],
  'starter-fuse': ['intact'],
  'glow-lamp': ['normal'],
  'pump-sound': ['heard'],
  'rev-counter': ['moves'],
  codes: ['none'],
  'air-temperature': reading(12, 'Cel'),
  'battery-rest': reading(12.68, 'V', 0.01),
  'battery-halves': reading(0.02, 'V', 0.01),
  'battery-tester': reading(520, 'A'),
  'battery-load-test': reading(10.4, 'V', 0.1),
  'battery-lamps': reading(12.3, 'V', 0.1),
  boost: ['cranks-slowly'],
  'battery-crank': reading(11.2, 'V', 0.1),
  'drop-clamps': reading(0.03, 'V', 0.01),
  'crank-current': reading(95, 'A'),
  'drop-positive': reading(0.15, 'V', 0.01),
  'drop-ground': reading(1.42, 'V', 0.01),
  relay: ['clicks'],
  'relay-feed': reading(12.6, 'V', 0.1),
  'relay-command': reading(12.4, 'V', 0.1),
  'relay-swap': ['no-change'],
  'clutch-switch-contacts': ['close'],
  'control-signal': reading(11.0, 'V', 0.1),
  'drop-contacts': reading(0.08, 'V', 0.01),
  'turn-engine': ['turns'],
  tap: ['no-change'],
  spark: ['present'],
  'battery-recharged': reading(12.7, 'V', 0.1),
  repair: ['done'],
  'look-after': ['sound'],
  'turn-after': ['turns'],
  'fuel-after': ['has-fuel'],
  'start-after': ['starts'],
  'crank-after': reading(10.9, 'V', 0.1),
  'drop-clamps-after': reading(0.03, 'V', 0.01),
  'drop-positive-after': reading(0.14, 'V', 0.01),
  'drop-ground-after': reading(0.06, 'V', 0.01),
  charging: reading(14.2, 'V', 0.1),
  'charging-later': reading(14.2, 'V', 0.1),
};

/** More turns than any way through the flow takes. */
const mostTurns = 200;

/** Lines that answer whatever is asked, in words; a second time by not knowing. */
export function demoLines(words: DemoWords): Lines {
  const asked = new Set<string>();
  let turns = 0;
  return {
    next: (kase) => {
      turns += 1;
      return Promise.resolve(turns > mostTurns ? undefined : demoLine(kase, asked, words));
    },
  };
}

function demoLine(kase: Case, asked: Set<string>, words: DemoWords): string | undefined {
  const position = positionOf(kase);
  if (position.awaiting === 'nothing') return undefined;
  if (position.awaiting !== 'answer') return '1';
  const { check } = position;
  if (asked.has(check)) return words.dontKnow;
  asked.add(check);
  return demoSaid(check, words);
}

/** The demonstration's answer to a check, as it is typed. */
export function demoSaid(check: string, words: DemoWords): string {
  const given = demoAnswers[check];
  if (given === undefined) return words.dontKnow;
  if ('value' in given) return words.figure(given);
  // Work that is done has a key and no words of its own.
  return given[0] === 'done' ? '1' : given.map((answer) => words.label(check, answer)).join(', ');
}
