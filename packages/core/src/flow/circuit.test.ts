/**
 * What a flow says of how its faults shape the starting circuit: refused with file, line and reason
 * where it cannot be meant.
 */
import { describe, expect, test } from 'vitest';
import { prettifyIssue } from './issue.ts';
import { loadFlow } from './load.ts';
import { smallFlow } from './small-flow.ts';

const circuit = `circuit:
  states: 8
  usual:
    - source: made up for this flow
      figures:
        { charge: [60, 100], emptied: 0, dead-cells: 0, taken: 95, surface: 0, supply: 2, control: 8, brushes: 0,
          field: 1, windings: 1, friction: 25, operate: 7, release: 3.5, stall: 30, starts: 0, wake: 0 }
  readings:
    battery-rest: { reads: rest, spread: 0.06, odd: 1, source: made up for this flow }
  choices: {}
  pairs:
    - { faults: [ground-cable, battery-discharged], times: 2, source: made up for this flow }
  faults:
    battery-discharged:
      source: made up for this flow
      fails: true
      modes:
        - { figures: { charge: [0, 20, 45] } }
    otherwise:
      source: made up for this flow
      modes:
        - { figures: {} }
`;

/** The small flow, its circuit written with one text in the place of another. */
function told(from = '', to = ''): readonly string[] {
  expect(circuit.split(from).length).toBeGreaterThan(1);
  const result = loadFlow([
    // A reading is weighed by the circuit or by a table, not by both.
    ...smallFlow.map(({ path, text }) => ({
      path,
      text: text.replace(/ {2}battery-rest:\n {4}- of-100:\n(?: {8}.*\n){2}/u, ''),
    })),
    { path: 'circuit.yaml', text: circuit.replace(from, to) },
  ]);
  return result.type === 'issues' ? result.issues.map(prettifyIssue) : [];
}

test('a flow whose battery is weighed by its circuit is loaded', () => {
  expect(told()).toEqual([]);
});

describe('refused is', () => {
  test.each([
    [
      'a fault that the flow has not',
      ['    battery-discharged:\n', '    battery-flat:\n'],
      'circuit.yaml:14:5 circuit.faults.battery-flat has "battery-flat"; expected ',
    ],
    [
      'a fault whose circuit nobody told',
      ['    otherwise:\n', '    electrical:\n'],
      'circuit.yaml:14:5 circuit.faults is missing; expected modes of unlisted, or otherwise',
    ],
    [
      'a figure that no vehicle is said to have',
      ['stall: 30, ', ''],
      'circuit.yaml:4:5 circuit.usual is missing; expected what stall any vehicle has',
    ],
    [
      'more charge than a battery holds',
      ['[0, 20, 45]', '[0, 20, 145]'],
      'circuit.yaml:18:32 circuit.faults.battery-discharged.modes.0.figures.charge has [0,20,145]; expected values from 0 to 100',
    ],
    [
      'values that go up and down',
      ['[0, 20, 45]', '[0, 45, 20]'],
      'expected values in order',
    ],
    [
      'a figure that the circuit has not',
      ['charge: [0, 20, 45]', 'colour: 3'],
      'circuit.yaml:18:',
    ],
    [
      'a fault that is only there under a condition',
      ['- { figures: { charge', '- { when: { place: home }, figures: { charge'],
      'circuit.yaml:15:7 circuit.faults.battery-discharged has',
    ],
    [
      'a reading that the flow does not take',
      ['battery-rest: { reads', 'battery-warm: { reads'],
      'circuit.yaml:9:5 circuit.readings.battery-warm has "battery-warm"; expected ',
    ],
    [
      'a reading of nothing in the circuit',
      ['reads: rest', 'reads: tyres'],
      'circuit.yaml:9:28 circuit.readings.battery-rest.reads has "tyres"; expected ',
    ],
    [
      'a spread of nothing, by which no meter would ever be right',
      ['spread: 0.06', 'spread: 0'],
      'circuit.yaml:9:42 circuit.readings.battery-rest.spread has 0; expected ',
    ],
    [
      'a choice whose answers are not those of the circuit',
      ['choices: {}', 'choices: { battery-look: dash }'],
      'circuit.yaml:10:28 circuit.choices.battery-look has "dash"; expected a check that has off, dim, goes-out, stays-bright',
    ],
    [
      'a pair of a fault with itself',
      ['[ground-cable, battery-discharged]', '[ground-cable, ground-cable]'],
      'circuit.yaml:12:17 circuit.pairs.0.faults has ["ground-cable","ground-cable"]; expected two faults',
    ],
    [
      'a pair with a fault that the flow has not',
      ['[ground-cable, battery-discharged]', '[ground-strap, battery-discharged]'],
      'circuit.yaml:12:18 circuit.pairs.0.faults.0 has "ground-strap"; expected a fault of the flow: ',
    ],
    [
      'fewer states than spread over anything',
      ['states: 8', 'states: 2'],
      'circuit.yaml:2:11 circuit.states has 2; expected ',
    ],
  ] as const)('%s', (_, [from, to], reason) => {
    expect(told(from, to).join('\n')).toContain(reason);
  });
});
