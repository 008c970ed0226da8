import { fromMemory, reported } from '../source.ts';
import type { Table } from '../table.ts';

/** What the terminals of a vehicle's circuit are marked with, and what each mark means. */
export const terminalDesignations: Table<Readonly<Record<string, string>>> = {
  title: 'Terminal designations',
  source: reported('DIN 72552, as several reprints of it agree'),
  rows: {
    '15': 'switched positive, from the ignition switch while it is on',
    '15a': 'after the ballast resistor',
    '17': 'glow-start switch, start',
    '19': 'glow-start switch, preheat',
    '30': 'positive, straight from the battery; on a relay also the common contact',
    '30a': 'positive of the second battery, where 12 V is changed over to 24 V',
    '31': 'negative of the battery, ground',
    '31b': 'return to ground through a switch',
    '45': 'output of a separate starter relay, main current of the starter',
    '48': 'start repeating relay, which watches the start',
    '50': 'starter control, straight',
    '50a': 'starter control, out of the changeover relay',
    '61': 'charge warning lamp',
    '85': 'relay coil, as a rule its ground end',
    '86': 'relay coil, as a rule its supply end',
    '87': 'relay contact that closes when the relay pulls in',
    '87a': 'relay contact that opens when the relay pulls in',
  },
};

/** The marks of a generator's terminals. */
export const generatorTerminals: Table<Readonly<Record<string, string>>> = {
  title: 'Terminal designations of a generator',
  source: fromMemory('DIN 72552'),
  rows: {
    'B+': 'generator output, to the positive of the battery',
    'D+': 'generator exciter',
  },
};
