import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import {
  addOutcome,
  emptyCounts,
  type Counts,
  type FlowKey,
  type ForecastOutcome,
} from '@keyturn/evidence';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { noOutcomes, textOf, type KeptOutcomes } from './kept-outcomes.ts';
import { runOutcomes } from './run-outcomes.ts';

const flow: FlowKey = { id: 'no-start', version: '1' };

const outcome = (id: string, change: Partial<ForecastOutcome> = {}): ForecastOutcome => ({
  id,
  flow,
  role: 'mechanic',
  channel: 'terminal',
  cause: 'battery-worn',
  answers: { when: ['after-standing'] },
  forecast: {
    fault: 'battery-worn',
    probability: 0.7,
    ranking: [
      ['battery-worn', 0.7],
      ['ground-cable', 0.2],
    ],
  },
  ...change,
});

function countsOf(outcomes: readonly ForecastOutcome[], of: FlowKey = flow): Counts {
  return outcomes.reduce((counts, one) => {
    const added = addOutcome(counts, { ...one, flow: of });
    if (added.type === 'refused') throw new Error(added.message);
    return added.counts;
  }, emptyCounts(of));
}

const keptOf = (...outcomes: readonly ForecastOutcome[]): KeptOutcomes => ({
  ...noOutcomes(flow),
  outcomes,
});

let folder = '';
let kept = '';

const inFolder = (name: string): string => path.join(folder, name);
const read = (file: string): string => readFileSync(file, 'utf8');

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'outcomes-'));
  kept = inFolder('kept.json');
});

afterEach(() => rmSync(folder, { recursive: true }));

function run(...args: readonly string[]) {
  const said = { out: '', err: '' };
  const code = runOutcomes({
    args: ['--kept', kept, ...args],
    stdout: { write: (text) => (said.out += text) },
    stderr: { write: (text) => (said.err += text) },
  });
  return { code, ...said };
}

describe('a report', () => {
  test('scores the verdicts by role and channel (worked by hand: .7 .2 .1, first, then second, true)', () => {
    const driver = outcome('a2', { role: 'driver', cause: 'ground-cable' });
    writeFileSync(kept, textOf(keptOf(outcome('a1'), driver)));
    const { code, out } = run('report');
    expect(code).toBe(0);
    const scores = (name: string): readonly string[] | undefined =>
      out
        .split('\n')
        .find((line) => line.startsWith(`${name} `))
        ?.slice(name.length)
        .trim()
        .split(/ +/);
    // .09 + .04 + .01 and -ln .7; .49 + .64 + .01 and -ln .2
    expect(scores('role mechanic')).toEqual(['1', '1', '0.140', '0.357']);
    expect(scores('role driver')).toEqual(['1', '0', '1.140', '1.609']);
    expect(scores('all')).toEqual(['2', '1', '0.640', '0.983']);
    expect(scores('channel terminal')).toEqual(['2', '1', '0.640', '0.983']);
    expect(scores('70 to 80 %')).toEqual(['2', '1', '70', '%', '50', '%']);
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test('takes what the ranking does not name as one class', () => {
    writeFileSync(kept, textOf(keptOf(outcome('a1', { cause: 'solenoid' }))));
    // .49 + .04 + .81 and -ln .1
    expect(run('report').out).toMatch(/^all +1 +0 +1\.340 +2\.303$/m);
  });

  test('of one role leaves the others out, and draws it', () => {
    const driver = outcome('a2', { role: 'driver', cause: 'ground-cable' });
    writeFileSync(kept, textOf(keptOf(outcome('a1'), driver)));
    const { code, out } = run('report', '--role', 'driver', '--picture', inFolder('r.svg'));
    expect(code).toBe(0);
    expect(out).not.toContain('mechanic');
    expect(read(inFolder('r.svg'))).toContain('Verdicts and confirmed causes: role driver</title>');
    expect(read(inFolder('r.svg'))).toContain('came true in 0 of 1.');
  });

  test('of a role without cases says so', () => {
    writeFileSync(kept, textOf(keptOf(outcome('a1'))));
    expect(run('report', '--role', 'clerk').out).toContain('nothing entered here');
  });
});

describe('counts', () => {
  test('that are exported, imported and exported again are the same, byte for byte', () => {
    writeFileSync(kept, textOf(keptOf(outcome('a1'), outcome('a2', { role: 'driver' }))));
    expect(run('export', inFolder('one.json')).code).toBe(0);
    kept = inFolder('other.json');
    expect(run('import', inFolder('one.json')).code).toBe(0);
    expect(run('export', inFolder('two.json')).code).toBe(0);
    expect(read(inFolder('two.json'))).toBe(read(inFolder('one.json')));
  });

  test('that are imported add up with what was entered', () => {
    writeFileSync(kept, textOf(keptOf(outcome('a1'))));
    writeFileSync(inFolder('in.json'), textOf(countsOf([outcome('b1'), outcome('b2')])));
    expect(run('import', inFolder('in.json')).out).toContain('2 outcomes');
    run('export', inFolder('out.json'));
    expect(read(inFolder('out.json'))).toBe(
      textOf(countsOf([outcome('a1'), outcome('b1'), outcome('b2')])),
    );
  });

  test('of a later export take the place of the earlier one', () => {
    writeFileSync(inFolder('may.json'), textOf(countsOf([outcome('b1')])));
    writeFileSync(inFolder('june.json'), textOf(countsOf([outcome('b1'), outcome('b2')])));
    run('import', inFolder('may.json'));
    expect(run('import', inFolder('june.json')).out).toContain('take the place');
    run('export', inFolder('out.json'));
    expect(read(inFolder('out.json'))).toBe(read(inFolder('june.json')));
  });

  test.each([
    ['outcomes entered here', [outcome('a1'), outcome('b1')], flow, '1 of the 2 outcomes'],
    [
      'another version of the flow',
      [outcome('b1')],
      { id: 'no-start', version: '2' },
      'of no-start 1, not of no-start 2',
    ],
  ])('with %s are refused, and nothing is changed', (_, outcomes, of, reason) => {
    writeFileSync(kept, textOf(keptOf(outcome('a1'))));
    writeFileSync(inFolder('in.json'), textOf(countsOf(outcomes, of)));
    const before = read(kept);
    const { code, out, err } = run('import', inFolder('in.json'));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(reason);
    expect(read(kept)).toBe(before);
  });

  const good = textOf(countsOf([outcome('b1')]));
  test.each([
    ['no JSON', good.replace('"format": 1,', '"format": 1'), 'line 3: it is not JSON'],
    ['half a file', good.slice(0, 100), 'line 8: it is not JSON'],
    ['another format', good.replace('"format": 1', '"format": 2'), 'line 2: format: counts of'],
    ['words', good.replace('"mechanic"', '"Mr Example"'), 'Mr Example: the name is not an id'],
    ['half a case', good.replace('"done": 1', '"done": 0.5'), 'line 19: groups.mechanic.terminal'],
    ['a case kept as events', '{"type":"opened"}\n{"type":"answered"}\n', 'line 2: it is not JSON'],
  ])('that are %s are refused by file, line and reason, and nothing is kept', (_, text, said) => {
    writeFileSync(inFolder('in.json'), text);
    const { code, out, err } = run('import', inFolder('in.json'));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(`outcomes: ${inFolder('in.json')}, line `);
    expect(err).toContain(said);
    expect(readdirSync(folder)).toEqual(['in.json']);
  });

  test('are never written over another file unless that is asked for', () => {
    writeFileSync(kept, textOf(keptOf(outcome('a1'))));
    writeFileSync(inFolder('mine'), 'mine');
    expect(run('export', inFolder('mine'))).toMatchObject({ code: 1 });
    expect(run('report', '--picture', inFolder('mine'))).toMatchObject({ code: 1, out: '' });
    expect(read(inFolder('mine'))).toBe('mine');
    expect(run('export', inFolder('mine'), '--replace').code).toBe(0);
    expect(read(inFolder('mine'))).toBe(textOf(countsOf([outcome('a1')])));
    expect(readdirSync(folder).sort()).toEqual(['kept.json', 'mine']);
  });
});

describe('a file of outcomes', () => {
  const changed = (from: string, to: string): string =>
    textOf(keptOf(outcome('a1'))).replace(from, to);
  test.each([
    ['a field more', changed('"role"', '"note": "said the owner", "role"'), 'line 8: outcomes.0'],
    ['words for an id', changed('"mechanic"', '"Mr Example"'), 'line 14: outcomes.0.role'],
    ['more than certainty', changed('0.2', '0.9'), 'more than 1'],
    ['another format', changed('"format": 1', '"format": 7'), 'line 2: format: this reads'],
    ['no end', changed('"imported"', '"imported'), 'it is not JSON'],
    [
      'the same outcome twice',
      textOf(keptOf(outcome('a1'), outcome('a1'))),
      'line 38: outcomes.1.id: it is there twice',
    ],
    [
      'counts that contradict themselves',
      textOf({ ...keptOf(), imported: [{ ...countsOf([outcome('b1')]), outcomes: {} }] }),
      'line 16: groups: the confirmed causes add up to 1',
    ],
  ])('with %s is refused by its line and left as it is', (_, text, said) => {
    writeFileSync(kept, text);
    const { code, out, err } = run('report');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(`${kept}, line `);
    expect(err).toContain(said);
    expect(read(kept)).toBe(text);
  });

  test('that is not there yet is said to be empty', () => {
    expect(run('report')).toMatchObject({ code: 1, out: '' });
    expect(run('undo', 'a1').err).toContain('no outcome has been entered yet');
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('wrong use is refused with exit code 2:', () => {
  test.each([
    [[], 'say what to do: confirm, undo, export, import, report'],
    [['constructor'], 'say what to do'],
    [['confirm', 'a.jsonl'], 'never taken from the verdict'],
    [['confirm', '--cause', 'battery-worn'], 'confirm needs the file of a case'],
    [['confirm', 'a.jsonl', '--cause', ''], 'empty'],
    [['undo'], 'undo needs the file of a case, or the id'],
    [['undo', 'a', 'b'], 'too much: b'],
    [['report', 'a'], 'too much: a'],
    [['export', 'a', '--cause', 'x'], 'export takes no --cause'],
    [['report', '--colour'], '--colour'],
  ])('%j', (args, said) => {
    const { code, out, err } = run(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(said);
    expect(err).toContain('--help');
  });
});

test('the help fits 80 columns', () => {
  const { code, out } = run('--help');
  expect(code).toBe(0);
  expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
});
