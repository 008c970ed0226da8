/**
 * What a flow says of costs, of what is asked by its worth, and of how likely answers are: refused
 * with file, line and reason where it cannot be meant.
 */
import { describe, expect, test } from 'vitest';
import { prettifyIssue } from './issue.ts';
import { loadFlow } from './load.ts';
import { smallCosts, smallFlow } from './small-flow.ts';
import type { FileText } from './source-file.ts';

/** The small flow and its costs, with one text put in the place of another. */
function told(from: string, to: string): readonly string[] {
  const whole: readonly FileText[] = [...smallFlow, smallCosts];
  expect(whole.filter(({ text }) => text.includes(from))).toHaveLength(1);
  const result = loadFlow(whole.map(({ path, text }) => ({ path, text: text.replace(from, to) })));
  return result.type === 'issues' ? result.issues.map(prettifyIssue) : [];
}

test('a flow with costs, some of its stages asked by worth, is loaded', () => {
  expect(told('voltmeter: 4', 'voltmeter: 5')).toEqual([]);
});

describe('costs and what is asked by worth', () => {
  test.each([
    [
      'a stage that is none',
      ['[look, measure]', '[look, mesure]'],
      'costs.yaml:1:18 by-worth.1 has "mesure"; expected a stage up to the verdict: make-safe, what-happens, look, measure',
    ],
    [
      'a stage after the verdict, which is never weighed',
      ['[look, measure]', '[look, prove-it]'],
      'costs.yaml:1:18 by-worth.1 has "prove-it"; expected a stage up to the verdict: make-safe, what-happens, look, measure',
    ],
    [
      'a stage named twice',
      ['[look, measure]', '[look, look]'],
      'costs.yaml:1:18 by-worth.1 has "look"; expected look once only',
    ],
    [
      'a remedy without a cost',
      ['    replace-cable: { cost: 90, wrong: 120 }\n', ''],
      'costs.yaml:6:5 costs.remedies is missing; expected costs of replace-cable',
    ],
    [
      'a remedy that is none',
      ['    replace-cable: {', '    fit-cable: {'],
      'costs.yaml:7:5 costs.remedies.fit-cable has "fit-cable"; expected one of the remedies of the flow: recharge-then-prove,',
    ],
    [
      'help that nobody is sent',
      ['boost-van: { cost: 40', 'boost-car: { cost: 40'],
      'costs.yaml:11:5 costs.sends.boost-car has "boost-car"; expected one of the sends of the flow: boost-van,',
    ],
    [
      'something to fetch that is no kit',
      ['voltmeter: 4', 'volt-metre: 4'],
      'costs.yaml:4:13 costs.setups.volt-metre has "volt-metre"; expected an item of kit or a place: ',
    ],
    [
      'a cost below 0',
      ['cost: 90, wrong: 120', 'cost: -90, wrong: 120'],
      'costs.yaml:7:28 costs.remedies.replace-cable.cost has -90; expected ',
    ],
    [
      'a cost that nobody could mean',
      ['cost: 90, wrong: 120', 'cost: 9e9, wrong: 120'],
      'costs.yaml:7:28 costs.remedies.replace-cable.cost has 9000000000; expected ',
    ],
    [
      'minutes to fetch something that are no number',
      ['bonnet: 1', 'bonnet: soon'],
      'costs.yaml:4:35 costs.setups.bonnet has "soon"; expected ',
    ],
    [
      'a mistake that costs less than nothing',
      ['driver: 1.5', 'driver: -1'],
      'costs.yaml:14:26 costs.wrong-times.driver has -1; expected ',
    ],
    [
      'a mistake of a role that is none',
      ['driver: 1.5', 'passer-by: 1.5'],
      'costs.yaml:14:16 costs.wrong-times has {"passer-by":1.5}; expected ',
    ],
  ] as const)('%s', (_, [from, to], expected) => {
    expect(told(from, to).map((one) => one.slice(0, expected.length))).toContain(expected);
  });

  test('are asked for where stages are weighed and there are none', () => {
    const bare = smallCosts.text.slice(0, smallCosts.text.indexOf('costs:'));
    const result = loadFlow([...smallFlow, { path: 'costs.yaml', text: bare }]);
    const issues = result.type === 'issues' ? result.issues.map(prettifyIssue) : [];
    expect(issues).toEqual([
      'costs.yaml:1:11 by-worth is missing; expected the section costs, as checks are weighed',
    ]);
  });

  test('are checked also where nothing is weighed', () => {
    const [, bare = ''] = smallCosts.text.split('by-worth: [look, measure]\n');
    const spoiled = bare.replace('police:', 'polis:');
    const result = loadFlow([...smallFlow, { path: 'costs.yaml', text: spoiled }]);
    const issues = result.type === 'issues' ? result.issues.map(prettifyIssue) : [];
    expect(issues.join('\n')).toContain('costs.sends.polis has "polis"; expected one of the sends');
  });
});

describe('how likely answers are', () => {
  test.each([
    [
      'a check that is none',
      ['  drop-ground:\n    - mistaken', '  drop-earth:\n    - mistaken'],
      'faults.yaml:43:3 likelihoods.drop-earth has "drop-earth"; expected a check of the flow',
    ],
    [
      'an answer that is none',
      ['ground-cable: { good: 4, high: 96 }', 'ground-cable: { fine: 4, high: 96 }'],
      'faults.yaml:46:25 likelihoods.drop-ground.0.of-100.ground-cable.fine has ',
    ],
    [
      'a share below 0',
      ['ground-cable: { good: 4, high: 96 }', 'ground-cable: { good: -4, high: 104 }'],
      'faults.yaml:46:31 likelihoods.drop-ground.0.of-100.ground-cable.good has -4; expected ',
    ],
    [
      'an answer that would be impossible',
      [
        'battery-discharged: { low: 10, full: 90 }\n        otherwise: { low: 60, full: 40 }',
        'battery-discharged: { full: 100 }\n        otherwise: { full: 100 }',
      ],
      'faults.yaml:50:9 likelihoods.battery-recharged.0.of-100 has no vehicle that answers low; expected a share of low above 0 in some row, or it would be impossible',
    ],
    [
      'a prior below 0',
      ['ground-cable: { weight: 30', 'ground-cable: { weight: -30'],
      'faults.yaml:28:27 priors.ground-cable.weight has -30; expected ',
    ],
  ] as const)('%s', (_, [from, to], expected) => {
    expect(told(from, to).map((one) => one.slice(0, expected.length))).toContain(expected);
  });

  test('an answer given only by mistake is possible', () => {
    expect(
      told('        otherwise: { good: 95, high: 5 }', '        otherwise: { good: 100, high: 0 }'),
    ).toEqual([]);
  });
});
