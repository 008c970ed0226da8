/**
 * The demonstration: an invented vehicle that answers every check of the no-start flow as one with
 * a bad ground cable would. Every figure in it is made up.
 */
import { positionOf, type Case } from '@keyturn/core';
import type { Lines } from './lines.ts';

/** What is said to each check, in the words of somebody at the vehicle; in order where asked again. */
export const demoAnswers: Readonly<Record<string, string | readonly string[]>> = {
  place: 'at home',
  scene: 'yes, safe',
  drive: 'petrol',
  complaint: 'it turns slowly',
  when: 'after standing',
  history: 'none of these',
  'fuel-level': 'has fuel',
  'flooded-smell': 'no smell',
  'crank-rhythm': 'even',
  'charge-lamp': 'no, it was out',
  'battery-age': '2 years',
  kit: 'voltmeter, somebody to help, hand tools',
  transmission: 'manual',
  ignition: 'turning a key',
  selector: 'in neutral',
  clutch: 'down all the way',
  isolator: 'on',
  'brake-lamps': 'they light',
  'steering-wheel': 'the key turns now',
  'ready-lamp': 'READY comes on',
  'security-lamp': 'goes out as usual',
  'battery-look': 'whole and dry',
  terminals: 'clean and tight',
  dash: 'it goes dim',
  headlamps: 'they go dim',
  'neutral-try': 'no change',
  retry: 'no change',
  'other-key': 'no change',
  'main-fuse': 'whole',
  'starter-fuse': 'whole',
  'glow-lamp': 'it lights, then goes out',
  'pump-sound': 'a hum is heard',
  'rev-counter': 'it moves',
  codes: 'no codes',
  'air-temperature': '12 degrees',
  'battery-rest': '12.68',
  'battery-halves': '0.02 V',
  'battery-tester': '520 A',
  'battery-load-test': '10.4 V',
  'battery-lamps': '12.3 V',
  boost: 'it turns slowly',
  'battery-crank': '11.2 V',
  'drop-clamps': '0.03 V',
  'crank-current': '95 A',
  'drop-positive': '0.15 V',
  'drop-ground': '1.42 V',
  relay: 'it clicks',
  'relay-feed': '12.6 V',
  'relay-command': '12.4 V',
  'relay-swap': 'no change',
  'clutch-switch-contacts': 'close',
  'control-signal': '11.0 V',
  'drop-contacts': '0.08 V',
  'turn-engine': 'it turns',
  tap: 'no change',
  spark: 'there is a spark',
  'battery-recharged': '12.7 V',
  repair: 'done',
  'look-after': 'whole and dry',
  'turn-after': 'it turns',
  'fuel-after': 'fuel in the tank',
  'start-after': 'it starts',
  'crank-after': '10.9 V',
  'drop-clamps-after': '0.03 V',
  'drop-positive-after': '0.14 V',
  'drop-ground-after': '0.06 V',
  charging: '14.2 V',
  'charging-later': '14.2 V',
};

/** More turns than any way through the flow takes. */
const mostTurns = 200;

/** Lines that answer whatever is asked. An answer that is not taken is followed by "don't know". */
export function demoLines(): Lines {
  const times = new Map<string, number>();
  let turns = 0;
  return {
    next: (kase) => {
      turns += 1;
      return Promise.resolve(turns > mostTurns ? undefined : demoLine(kase, times));
    },
  };
}

function demoLine(kase: Case, times: Map<string, number>): string | undefined {
  const position = positionOf(kase);
  switch (position.awaiting) {
    case 'confirm':
      return 'yes';
    case 'wait':
      return 'ready';
    case 'resume':
      return 'it is over';
    case 'nothing':
      return undefined;
    case 'answer': {
      const { check } = position;
      const time = times.get(check) ?? 0;
      times.set(check, time + 1);
      const given = demoAnswers[check];
      const answers = typeof given === 'string' ? [given] : (given ?? []);
      return answers[time] ?? 'don’t know';
    }
  }
}
