import { describe, expect, test } from 'vitest';
import { readCommandLine, usage } from './command-line.ts';

describe('the command line', () => {
  test('begins a case where nothing is given', () => {
    expect(readCommandLine([])).toEqual({
      type: 'case',
      flow: 'no-start',
      isOldUnitOwed: false,
      json: false,
      locale: 'en',
    });
  });

  test.each([
    ['a case to go on with', ['a.jsonl'], { file: 'a.jsonl' }],
    ['where a new case is kept', ['--case', 'b.jsonl'], { caseFile: 'b.jsonl' }],
    ['what it is about', ['--flow', 'starter-fitting'], { flow: 'starter-fitting' }],
    ['lines of JSON', ['--json'], { json: true }],
    ['outcomes to weigh by', ['--learned', 'kept.json'], { learned: 'kept.json' }],
    ['another flow', ['--flow', 'starter-return'], { flow: 'starter-return' }],
    ['the terms of a shop', ['--terms', 'terms.yaml'], { terms: 'terms.yaml' }],
    [
      'what was paid for it',
      ['--terms', 't.yaml', '--price', '142,50', '--old-unit-owed'],
      { terms: 't.yaml', price: '142,50', isOldUnitOwed: true },
    ],
    ['the case of the vehicle', ['--vehicle', 'case.jsonl'], { vehicle: 'case.jsonl' }],
    ['a language', ['--locale', 'en-GB'], { locale: 'en-GB' }],
  ])('takes %s', (_, args, expected) => {
    expect(readCommandLine(args)).toMatchObject({ type: 'case', ...expected });
  });

  test.each([
    ['an unknown option', ['--colour']],
    ['an option without its value', ['--case']],
    ['two cases', ['a.jsonl', 'b.jsonl']],
    ['a case that is to be kept elsewhere', ['a.jsonl', '--case', 'b.jsonl']],
    ['another flow for a case that has its own', ['a.jsonl', '--flow', 'no-start']],
    ['terms for a case that has its own', ['a.jsonl', '--terms', 'terms.yaml']],
    ['a vehicle for a case that has begun', ['a.jsonl', '--vehicle', 'b.jsonl']],
    ['a price without terms', ['--price', '142.50']],
    ['an old unit without terms', ['--old-unit-owed']],
    ['an empty name', ['']],
    ['an empty name of a file of outcomes', ['--learned', '']],
  ])('refuses %s', (_, args) => {
    expect(readCommandLine(args).type).toBe('wrong');
  });

  test('has a help of 80 columns that names the exit codes', () => {
    const help = usage('npm start --', { locales: ['en'], flows: ['no-start', 'starter-fitting'] });
    expect(help).toContain('Exit codes');
    expect(help).toContain('starter-fitting');
    for (const line of help.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
});
