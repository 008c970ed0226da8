import { expect, test } from 'vitest';
import { prettifyIssue } from './issue.ts';
import { loadFlow } from './load.ts';
import { smallTable } from './small-table.ts';

/** What is told of the small flow with one thing changed in one of its files. */
function told(file: string, change: (text: string) => string): readonly string[] {
  const files = smallTable.map(({ path, text }) => ({
    path,
    text: path === file ? change(text) : text,
  }));
  const result = loadFlow(files);
  return result.type === 'issues' ? result.issues.map(prettifyIssue) : [];
}

test('a flow that ends in decisions needs neither faults nor evidence', () => {
  const result = loadFlow(smallTable);
  expect(result).toMatchObject({
    type: 'flow',
    flow: { endsIn: 'decision', part: 'starter', verdictAfter: 'vehicle', faults: {} },
  });
});

test.each<[what: string, file: string, from: string, to: string, issue: string]>([
  [
    'a check that no line hangs on',
    'checks.yaml',
    'checks:\n',
    'checks:\n  smell: { choice: [none, burnt], at: bench, minutes: 0.1 }\n',
    'checks.yaml:2:3 checks.smell has "smell"; expected a check that some line of the decisions hangs on',
  ],
  [
    'a last line with a condition',
    'decisions.yaml',
    '  - { decide: decline, reason: good }',
    '  - { when: { proof: elsewhere }, decide: decline, reason: good }',
    'decisions.yaml:19:13 decisions.13.when has {"proof":"elsewhere"}; expected no condition: the last line holds whatever was found',
  ],
  [
    'a line in between that always holds',
    'decisions.yaml',
    'when: { sale-date: expired }, ',
    '',
    'decisions.yaml:4:5 decisions.2 is missing; expected the property when; only the last line goes without',
  ],
  [
    'an answer that the check does not have',
    'decisions.yaml',
    'run: silent',
    'run: loud',
    'decisions.yaml:9:20 decisions.7.when.run has "loud"; expected an answer of run: even, silent',
  ],
  [
    'a check to be asked once more that is none',
    'decisions.yaml',
    'again: [sale-date]',
    'again: [sold]',
    'decisions.yaml:3:87 decisions.1.again.0 has "sold"; expected a check of the flow: part-number, sale-date, stud, look, wear, kit, nominal, run, amperes, recharged, proof',
  ],
  [
    'what is voided with nothing asked once more',
    'decisions.yaml',
    '    again: [recharged]\n    voids: [proof]',
    '    voids: [proof]',
    'decisions.yaml:14:12 decisions.9.voids has ["proof"]; expected the property again beside it: nothing else voids them',
  ],
  [
    'a day without the part whose terms count',
    'flow.yaml',
    'part: starter\n',
    '',
    'checks.yaml:4:11 checks.sale-date.date is missing; expected the part that was sold, as part of the flow',
  ],
  [
    'a day whose bands end in no term',
    'checks.yaml',
    'policy.warranty',
    '730',
    'checks.yaml:4:60 checks.sale-date.date.warranty has 730; expected a term of the shop, or above: policy.return-window, policy.warranty',
  ],
  [
    'a good band that is none',
    'checks.yaml',
    'good: normal',
    'good: usual',
    'checks.yaml:22:11 checks.amperes.good has "usual"; expected an answer of this check: low, normal, high',
  ],
  [
    'what comes before a check and is none',
    'checks.yaml',
    'after: [nominal]',
    'after: [volts]',
    'checks.yaml:29:13 checks.amperes.after.0 has "volts"; expected a check of the flow: part-number, sale-date, stud, look, wear, kit, nominal, run, amperes, recharged, proof',
  ],
])('%s is told with its place', (_, file, from, to, issue) => {
  expect(told(file, (text) => text.replace(from, to))).toContain(issue);
});

test.each([
  ['faults', 'faults:\n  worn: { best: open, remedy: visit, send: nobody }\n'],
  ['priors', 'priors:\n  worn: { weight: 1, source: made up }\n'],
  ['verdict-after', 'verdict-after: bench\n'],
  ['by-worth', 'by-worth: [bench]\n'],
])('%s beside decisions are refused', (section, text) => {
  const issues = told('flow.yaml', (before) => before + text);
  expect(issues.join('\n')).toMatch(
    new RegExp(`${section}.* expected nothing of the sort, as the flow ends in decisions`, 'u'),
  );
});

test('a flow needs one of the two', () => {
  const issues = told('decisions.yaml', () => 'ends-in: outcome\n');
  expect(issues.join('\n')).toContain('faults, at least one, or decisions');
});
