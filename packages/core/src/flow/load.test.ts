import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { flowSchema } from './flow-schema.ts';
import { prettifyIssue, prettifyIssues, type Issue } from './issue.ts';
import { loadFlow } from './load.ts';
import { smallFlow } from './small-flow.ts';
import type { FileText } from './source-file.ts';

function issuesOf(files: readonly FileText[]): readonly Issue[] {
  const result = loadFlow(files);
  return result.type === 'issues' ? result.issues : [];
}

/** The small flow with one text put in the place of another, which must stand there. */
function spoiled(...changes: readonly (readonly [from: string, to: string])[]): FileText[] {
  return changes.reduce<FileText[]>(
    (files, [from, to]) => {
      expect(files.some(({ text }) => text.includes(from))).toBe(true);
      return files.map(({ path, text }) => ({ path, text: text.replace(from, to) }));
    },
    [...smallFlow],
  );
}

describe('a good flow', () => {
  test('is loaded with every shorthand written out', () => {
    const result = loadFlow(smallFlow);
    expect(prettifyIssues(issuesOf(smallFlow))).toBe('');
    if (result.type !== 'flow') return;
    const { flow } = result;
    expect(flow.stages.map(({ id }) => id)).toEqual([
      'make-safe',
      'what-happens',
      'look',
      'measure',
      'put-right',
      'prove-it',
    ]);
    expect(flow.checks['feed']?.needs).toEqual([['voltmeter', 'test-lamp']]);
    expect(flow.checks['drop-ground-after']?.form).toEqual(flow.checks['drop-ground']?.form);
    expect(flow.checks['drop-ground-after']?.does).toEqual(['held-start']);
    expect(flow.cautions['traffic']?.before).toEqual([{}]);
    expect(flow.faults['ground-cable']?.prove).toEqual({
      'start-after': ['starts'],
      'drop-ground-after': ['good'],
    });
  });

  test('may prove one of the remedies of a fault in another way than the others', () => {
    const files = spoiled([
      'remedy: recharge-then-prove',
      'remedy: [{ do: recharge-then-prove, prove: { drop-ground-after: good } }]',
    ]);
    const result = loadFlow(files);
    const remedies =
      result.type === 'flow' ? result.flow.faults['battery-discharged']?.remedies : [];
    expect(remedies).toMatchObject([{ prove: { 'drop-ground-after': ['good'] } }]);
  });

  test('need not measure every quantity that a limit can depend on', () => {
    const files = spoiled([', crankVoltage: battery-crank, groundDrop: drop-ground', '']);
    expect(prettifyIssues(issuesOf(files))).toBe('');
  });

  test('gives every fault a row: its own, then its group’s, then otherwise', () => {
    const result = loadFlow(smallFlow);
    const rows = result.type === 'flow' ? result.flow.likelihoods['complaint']?.[0]?.rows : {};
    expect(rows).toEqual({
      'battery-discharged': { silent: 0.2, 'slow-crank': 0.8 },
      'ground-cable': { silent: 0.2, 'slow-crank': 0.8 },
      unlisted: { silent: 0.7, 'slow-crank': 0.3 },
    });
  });

  test('holds no answer to be impossible', () => {
    const result = loadFlow(
      spoiled(['ground-cable: { good: 4, high: 96 }', 'ground-cable: { good: 0, high: 100 }']),
    );
    if (result.type !== 'flow') throw new Error('issues');
    const every = Object.values(result.flow.likelihoods)
      .flat()
      .flatMap(({ rows }) => Object.values(rows))
      .flatMap((row) => Object.values(row));
    expect(Math.min(...every)).toBeGreaterThan(0);
    expect(Math.max(...every)).toBeLessThan(1);
  });

  test('is frozen throughout', () => {
    const result = loadFlow(smallFlow);
    const soft: string[] = [];
    const look = (value: unknown, at: string): void => {
      if (typeof value !== 'object' || value === null) return;
      if (!Object.isFrozen(value)) soft.push(at);
      for (const [key, inner] of Object.entries(value)) look(inner, `${at}.${key}`);
    };
    look(result.type === 'flow' ? result.flow : undefined, 'flow');
    expect(result.type).toBe('flow');
    expect(soft).toEqual([]);
  });

  test('is the same in one file as in several, in whatever order they are given', () => {
    const whole = loadFlow([
      { path: 'whole.yaml', text: smallFlow.map(({ text }) => text).join('') },
    ]);
    const split = loadFlow(smallFlow);
    expect(split.type).toBe('flow');
    expect(whole).toEqual(split);
    expect(loadFlow(smallFlow.toReversed())).toEqual(split);
  });
});

/** The text from the line and column of an issue on. */
function standingAt(files: readonly FileText[], { file, line, column }: Issue): string {
  const text = files.find(({ path }) => path === file)?.text ?? '';
  return (text.split('\n')[line - 1] ?? '').slice(column - 1);
}

interface Spoiling {
  readonly what: string;
  readonly from: string;
  readonly to: string;
  readonly told: string;
}

describe('a flow with one thing wrong', () => {
  test.each<Spoiling>([
    {
      what: 'a condition without a part',
      from: 'turning: { complaint: slow-crank }',
      to: 'turning: {}',
      told: 'flow.yaml:11:10 turning has {}; expected a check of the flow or a field of the context',
    },
    {
      what: 'unknown among other values',
      from: 'when: { place: shoulder }',
      to: 'when: { place: [shoulder, unknown] }',
      told: 'faults.yaml:58:89 cautions.traffic.when.place.1 has "unknown"; expected a value of place: live-lane, shoulder, parking, home, workshop',
    },
    {
      what: 'a caution that covers nothing there is',
      from: 'before: { does: charge }',
      to: 'before: { done: charge }',
      told: 'faults.yaml:56:56 cautions.battery-gas.before has {"done":"charge"}; expected everything, or what is covered by does, checks or at; left out where it is said only with a remedy',
    },
    {
      what: 'a number where a text is due',
      from: "version: '1'",
      to: 'version: 1',
      told: 'flow.yaml:2:10 version has 1; expected a string',
    },
    {
      what: 'a signal word that no standard knows',
      from: 'smoke: { word: danger',
      to: 'smoke: { word: alarm',
      told: 'flow.yaml:13:18 interrupts.smoke.word has "alarm"; expected one of: danger, warning, caution, notice',
    },
    {
      what: 'a property that is none',
      from: 'lapses: true',
      to: 'lapse: true',
      told: 'checks.yaml:27:5 checks.clutch.lapse has "lapse"; expected one of: choice, choices, reading, work, date, bands, good, usual, upper-spread, lamp, range, expect, settled-by, settled-in-time, at, needs, minutes, probes, does, when, requires, again, after, wait, sets, writes, lapses, like',
    },
    {
      what: 'an id with a capital',
      from: 'flow: small',
      to: 'flow: Small',
      told: 'flow.yaml:1:7 flow has "Small"; expected lower-case words joined by hyphens',
    },
    {
      what: 'no version',
      from: "version: '1'\n",
      to: '',
      told: "flow.yaml:1:1 (top) is missing; expected version, in one of the flow's files",
    },
    {
      what: 'a check without its minutes',
      from: 'battery-look: { choice: [sound, leaking], at: bonnet, minutes: 0.5 }',
      to: 'battery-look: { choice: [sound, leaking], at: bonnet }',
      told: 'checks.yaml:20:17 checks.battery-look is missing; expected the property minutes',
    },
    {
      what: 'a caution without its word',
      from: 'battery-gas: { word: warning, confirm: true',
      to: 'battery-gas: { confirm: true',
      told: 'faults.yaml:56:16 cautions.battery-gas is missing; expected the property word',
    },
    {
      what: 'a check of two kinds at once',
      from: 'repair: { work: done,',
      to: 'repair: { work: done, choice: [a, b],',
      told: 'checks.yaml:76:11 checks.repair has {"work":"done","choice":["a","b"],"at":"bonnet","minutes":0}; expected exactly one of: choice, choices, reading, date, work',
    },
    {
      what: 'a reading without its range',
      from: '    range: signal-voltage\n',
      to: '',
      told: 'checks.yaml:56:5 checks.feed is missing; expected the property range, as it is a reading',
    },
    {
      what: 'a remedy that is a number, told once and with nothing in its train',
      from: 'remedy: recharge-then-prove',
      to: 'remedy: 5',
      told: 'faults.yaml:5:13 faults.battery-discharged.remedy has 5; expected lower-case words joined by hyphens',
    },
    {
      what: 'an activity that is none',
      from: 'before: { does: charge }',
      to: 'before: { does: charging }',
      told: 'faults.yaml:56:64 cautions.battery-gas.before.does has "charging"; expected one of: held-start, ignition-on, boost, charge, load, starter, spark',
    },
    {
      what: 'a check that two stages ask',
      from: 'put-right: [repair]',
      to: 'put-right: [repair, scene]',
      told: 'flow.yaml:8:23 stages.put-right.1 has "scene"; expected scene in one stage only; it is in make-safe',
    },
    {
      what: 'a check that nothing defines',
      from: 'put-right: [repair]',
      to: 'put-right: [repair, oil]',
      told: 'flow.yaml:8:23 stages.put-right.1 has "oil"; expected a check of the flow: scene, complaint, history,',
    },
    {
      what: 'a check that no stage asks',
      from: 'measure: [battery-rest, battery-crank, drop-ground, feed,',
      to: 'measure: [battery-rest, battery-crank, drop-ground,',
      told: 'checks.yaml:55:3 checks.feed has "feed"; expected a check that some stage asks',
    },
    {
      what: 'a verdict after a stage that is none',
      from: 'verdict-after: measure',
      to: 'verdict-after: guess',
      told: 'flow.yaml:10:16 verdict-after has "guess"; expected a stage of the flow: make-safe, what-happens,',
    },
    {
      what: 'a condition on an answer that the check has not',
      from: 'turning: { complaint: slow-crank }',
      to: 'turning: { complaint: grinding }',
      told: 'flow.yaml:11:23 turning.complaint has "grinding"; expected an answer of complaint: silent, slow-crank',
    },
    {
      what: 'a condition on a field that the context has not',
      from: 'when: { vehicle.transmission: manual }',
      to: 'when: { vehicle.gearbox: manual }',
      told: 'checks.yaml:25:13 checks.clutch.when.vehicle.gearbox has "vehicle.gearbox"; expected a check of the flow or a field of the context',
    },
    {
      what: 'a condition on a value that the field cannot have',
      from: 'when: { vehicle.transmission: manual }',
      to: 'when: { vehicle.transmission: steam }',
      told: 'checks.yaml:25:35 checks.clutch.when.vehicle.transmission has "steam"; expected a value of vehicle.transmission: manual, automatic, unknown',
    },
    {
      what: 'a range for a field that is no number',
      from: 'when: { vehicle.transmission: manual }',
      to: 'when: { vehicle.transmission: { below: 3 } }',
      told: 'checks.yaml:25:35 checks.clutch.when.vehicle.transmission has {"below":3}; expected one of: manual, automatic',
    },
    {
      what: 'a lamp’s answer that stands for no band',
      from: 'dim: low, bright: present',
      to: 'dim: weak, bright: present',
      told: 'checks.yaml:58:32 checks.feed.lamp.dim has "weak"; expected an answer of this check: absent, low, present',
    },
    {
      what: 'a caution with a remedy that is none',
      from: '    cautions: [battery-gas]',
      to: '    cautions: [gas]',
      told: 'faults.yaml:7:16 faults.battery-discharged.cautions.0 has "gas"; expected a caution of the flow: vehicle-moves,',
    },
    {
      what: 'a stop that excepts a check that is none',
      from: 'except: [scene]',
      to: 'except: [scenery]',
      told: 'faults.yaml:60:68 stops.unsafe.except.0 has "scenery"; expected a check of the flow: scene,',
    },
    {
      what: 'a caution that covers nothing',
      from: ', before: { checks: [drop-ground] } }',
      to: ' }',
      told: 'faults.yaml:57:3 cautions.short-circuit has "short-circuit"; expected a caution that covers checks or goes with a remedy',
    },
    {
      what: 'a fault without its prior',
      from: '  unlisted: { weight: 10, source: made up for this flow }\n',
      to: '',
      told: 'faults.yaml:15:3 faults.unlisted is missing; expected a prior for unlisted',
    },
    {
      what: 'a prior for a fault that is none',
      from: 'priors:\n',
      to: 'priors:\n  gremlins: { weight: 1, source: made up for this flow }\n',
      told: 'faults.yaml:24:3 priors.gremlins has "gremlins"; expected a fault of the flow: battery-discharged,',
    },
    {
      what: 'a fault that can be proved and has no proof',
      from: '    proof: { drop-ground: high }\n',
      to: '',
      told: 'faults.yaml:10:5 faults.ground-cable is missing; expected a proof, since it can be proved',
    },
    {
      what: 'a proof of a fault that stays open',
      from: 'best: open\n',
      to: 'best: open\n    proof: { drop-ground: good }\n',
      told: 'faults.yaml:17:12 faults.unlisted.proof has {"drop-ground":"good"}; expected no proof, since it is open at best',
    },
    {
      what: 'a repair proved by an answer that the check has not',
      from: 'prove: { start-after: starts }\n  ground-cable',
      to: 'prove: { start-after: runs }\n  ground-cable',
      told: 'faults.yaml:8:27 faults.battery-discharged.prove.start-after has "runs"; expected an answer of start-after: starts, no-change',
    },
    {
      what: 'bands that do not ascend',
      from: '{ absent: 2, low: 8, present: above }',
      to: '{ absent: 8, low: 2, present: above }',
      told: 'checks.yaml:57:30 checks.feed.bands.low has 2; expected more than 8, the bound before it',
    },
    {
      what: 'a last band that is closed',
      from: '{ low: 12.5, full: above }',
      to: '{ low: 12.5, full: 13 }',
      told: 'checks.yaml:66:31 checks.battery-recharged.bands.full has 13; expected above, for the last band',
    },
    {
      what: 'an open band that is not the last',
      from: '{ low: 12.5, full: above }',
      to: '{ low: above, full: above }',
      told: 'checks.yaml:66:19 checks.battery-recharged.bands.low has "above"; expected an upper bound; only the last band is above',
    },
    {
      what: 'shares that do not add up',
      from: 'ground-cable: { good: 4, high: 96 }',
      to: 'ground-cable: { good: 4, high: 95 }',
      told: 'faults.yaml:46:23 likelihoods.drop-ground.0.of-100.ground-cable has a sum of 99; expected shares that add up to 100',
    },
    {
      what: 'a row for no fault',
      from: 'ground-cable: { good: 4, high: 96 }',
      to: 'ground-strap: { good: 4, high: 96 }',
      told: 'faults.yaml:46:9 likelihoods.drop-ground.0.of-100.ground-strap has "ground-strap"; expected a fault, a group or otherwise: battery-discharged,',
    },
  ])('$what', ({ from, to, told }) => {
    const files = spoiled([from, to]);
    const issues = issuesOf(files);
    const [first, ...others] = issues.map(prettifyIssue);
    expect(first?.slice(0, told.length)).toBe(told);
    expect(others).toEqual([]);
    const { code, value } = issues[0]!;
    // What is quoted is what stands at the line and column, unless it is a sum or a whole mapping.
    if (code === 'missing' || /^\{|sum/u.test(value)) return;
    expect(standingAt(files, issues[0]!).replace(/^["']/u, '')).toMatch(
      new RegExp(`^${value.replaceAll('"', '')}`, 'u'),
    );
  });

  test('text that is no YAML', () => {
    const files = spoiled(["version: '1'", "version: '1': 2"]);
    expect(issuesOf(files)[0]).toMatchObject({
      code: 'not-yaml',
      file: 'flow.yaml',
      line: 2,
      column: 10,
      path: '',
    });
  });

  test('likelihoods of a check that is none', () => {
    const files = spoiled([
      '  battery-recharged:\n    - of-100',
      '  battery-charged:\n    - of-100',
    ]);
    expect(issuesOf(files)[0]).toEqual({
      code: 'unknown-id',
      file: 'faults.yaml',
      line: 48,
      column: 3,
      path: 'likelihoods.battery-charged',
      value: '"battery-charged"',
      expected: 'a check of the flow',
    });
  });

  test('likeness to a check that is none', () => {
    const files = spoiled(['{ like: drop-ground }', '{ like: drop-body }']);
    expect(issuesOf(files)).toContainEqual({
      code: 'unknown-id',
      file: 'checks.yaml',
      line: 78,
      column: 30,
      path: 'checks.drop-ground-after.like',
      value: '"drop-body"',
      expected: 'a check that is itself like no other',
    });
  });

  test('a fault that no row of a table speaks of', () => {
    const files = spoiled(['        otherwise: { silent: 70, slow-crank: 30 }\n', '']);
    expect(issuesOf(files)).toEqual([
      {
        code: 'bad-row',
        file: 'faults.yaml',
        line: 33,
        column: 9,
        path: 'likelihoods.complaint.0.of-100',
        value: '{"electrical":{"silent":20,"slow-crank":80}}',
        expected: 'a row for unlisted, or otherwise',
      },
    ]);
  });

  test.each<readonly [Issue['code'], string, string]>([
    ['not-yaml', 'stages:\n', 'stages: [\n'],
    ['wrong-shape', "version: '1'", 'version: 1'],
    ['unknown-property', 'lapses: true', 'lapse: true'],
    ['missing', "version: '1'\n", ''],
    ['twice', 'put-right: [repair]', 'put-right: [repair, scene]'],
    ['unknown-id', 'verdict-after: measure', 'verdict-after: guess'],
    ['unused', 'feed, battery-recharged]', 'battery-recharged]'],
    ['bad-bands', '{ low: 12.5, full: above }', '{ low: 12.5, full: 13 }'],
    ['bad-row', 'ground-cable: { good: 4, high: 96 }', 'ground-cable: { good: 4, high: 90 }'],
  ])('is told as %s', (code, from, to) => {
    expect(issuesOf(spoiled([from, to])).map((issue) => issue.code)).toContain(code);
  });
});

describe('nothing is taken in silence that could never work', () => {
  test.each<Omit<Spoiling, 'told'>>([
    {
      what: 'kit that nobody can have',
      from: 'needs: [charger, voltmeter]',
      to: 'needs: [chargers, voltmeter]',
    },
    {
      what: 'a choice that sets a value which its field cannot have',
      from: 'manual: { vehicle.transmission: manual }',
      to: 'manual: { vehicle.transmission: steam }',
    },
    {
      what: 'a condition on a boolean written as text',
      from: 'turning: { complaint: slow-crank }',
      to: "turning: { vehicle.startStop: 'true' }",
    },
    {
      what: 'a condition on a number written as text',
      from: 'turning: { complaint: slow-crank }',
      to: "turning: { vehicle.nominal: '24' }",
    },
    {
      what: 'a range for the answer of a choice',
      from: 'turning: { complaint: slow-crank }',
      to: 'turning: { complaint: { below: 3 } }',
    },
    {
      what: 'a stage named like a state of every case',
      from: 'make-safe: [scene]',
      to: 'verdict: [scene]',
    },
  ])('$what', ({ from, to }) => {
    expect(issuesOf(spoiled([from, to]))).not.toEqual([]);
  });

  test('a flow without a fault', () => {
    const text = `flow: bare
version: '1'
verdict-after: ask
stages: { ask: [scene] }
checks: { scene: { choice: [safe, unsafe], at: memory, minutes: 1 } }
`;
    expect(issuesOf([{ path: 'bare.yaml', text }])).toMatchObject([{ code: 'missing' }]);
  });

  test('no file at all', () => {
    expect(loadFlow([]).type).toBe('issues');
  });
});

describe('a flow with several things wrong', () => {
  test('tells them all at once, in the order of the files and their lines', () => {
    const files = spoiled(
      ['verdict-after: measure', 'verdict-after: guess'],
      ['turning: { complaint: slow-crank }', 'turning: { complaint: grinding }'],
      ['{ low: 12.5, full: above }', '{ low: 12.5, full: 13 }'],
      ['weight: 60', 'weight: 60 # as told\n    times: [{ by: 2, when: { history: hail } }]'],
      ['    times: [{ by: 2, when: { history: lights-left-on } }]\n', ''],
      ['ground-cable: { good: 4, high: 96 }', 'ground-cable: { good: 4, high: 90 }'],
    );
    expect(prettifyIssues(issuesOf(files))).toMatchInlineSnapshot(`
      "flow.yaml:10:16 verdict-after has "guess"; expected a stage of the flow: make-safe, what-happens, look, measure, put-right, prove-it
      flow.yaml:11:23 turning.complaint has "grinding"; expected an answer of complaint: silent, slow-crank
      checks.yaml:66:31 checks.battery-recharged.bands.full has 13; expected above, for the last band
      faults.yaml:26:39 priors.battery-discharged.times.0.when.history has "hail"; expected an answer of history: lights-left-on, water, none
      faults.yaml:46:23 likelihoods.drop-ground.0.of-100.ground-cable has a sum of 94; expected shares that add up to 100"
    `);
  });

  test('tells of an entry with two things wrong without losing its section', () => {
    const files = spoiled(['    send: boost-van', '    sends: boost-van']);
    expect(prettifyIssues(issuesOf(files))).toMatchInlineSnapshot(`
      "faults.yaml:3:5 faults.battery-discharged is missing; expected the property send
      faults.yaml:6:5 faults.battery-discharged.sends has "sends"; expected one of: best, proof, remedy, send, cautions, prove, licensed"
    `);
  });

  test('tells everything that the schema finds in every file', () => {
    const files = spoiled(
      ["version: '1'", 'version: 1'],
      ['lapses: true', 'lapse: true'],
      ['weight: 60', 'weight: -60'],
      ['best: open', 'best: perhaps'],
    );
    expect(prettifyIssues(issuesOf(files))).toMatchInlineSnapshot(`
      "flow.yaml:2:10 version has 1; expected a string
      checks.yaml:27:5 checks.clutch.lapse has "lapse"; expected one of: choice, choices, reading, work, date, bands, good, usual, upper-spread, lamp, range, expect, settled-by, settled-in-time, at, needs, minutes, probes, does, when, requires, again, after, wait, sets, writes, lapses, like
      faults.yaml:16:11 faults.unlisted.best has "perhaps"; expected one of: proved, likely, open
      faults.yaml:25:13 priors.battery-discharged.weight has -60; expected a value that must be > 0"
    `);
  });

  test('tells a section, and an id, that two files give', () => {
    const files = [
      ...smallFlow,
      {
        path: 'more.yaml',
        text: 'flow: other\nchecks:\n  repair: { work: done, at: seat, minutes: 1 }\n',
      },
    ];
    expect(prettifyIssues(issuesOf(files))).toMatchInlineSnapshot(`
      "more.yaml:1:1 flow has "flow"; expected flow only once in the flow
      more.yaml:3:3 checks.repair has "repair"; expected repair only once in the flow"
    `);
  });
});

describe('files that are no flow', () => {
  test.each([
    ['nothing at all', ''],
    ['a list', '[1, 2]'],
    ['a text', 'hello'],
    ['two documents', 'flow: a\n---\nflow: b\n'],
    ['the same key twice', 'flow: a\nflow: b\n'],
    ['an alias of nothing', 'flow: *other\n'],
    [
      'aliases without end',
      `a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c]\n`,
    ],
  ])('%s: told, never thrown', (_, text) => {
    const issues = issuesOf([{ path: 'a.yaml', text }]);
    expect(issues.length).toBeGreaterThan(0);
    expect(
      issues.every(({ file, line, column }) => file === 'a.yaml' && line > 0 && column > 0),
    ).toBe(true);
  });
});

describe('the JSON Schema of a flow file', () => {
  const draft = 'https://json-schema.org/draft/2020-12/schema';

  test('is valid by the meta-schema of draft 2020-12', () => {
    const ajv = new Ajv2020();
    expect(flowSchema['$schema']).toBe(draft);
    expect(ajv.validateSchema(flowSchema)).toBe(true);
    expect(ajv.validateSchema({ ...flowSchema, type: 'flow' })).toBe(false);
  });

  test('is the one that is published', () => {
    const file = new URL('../../schema/flow.schema.json', import.meta.url);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(flowSchema);
  });
});
