/**
 * The decision tables of the counter over every combination of answers that there is: each comes to
 * one decision with its reason, the one that the plain rules of `support/counter-rules.ts` give, and
 * to no amount but what the terms of the shop give. Nothing is drawn at random.
 */
import type { Flow, Policy } from '@keyturn/core';
import { loadFlow } from '@keyturn/core/load';
import { shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { decisionOf } from '../packages/core/src/case/decision.ts';
import { blankState, type CaseState } from '../packages/core/src/case/state.ts';
import { batteryRules, starterRules, type StarterReturn } from './support/counter-rules.ts';
import { walkTable, type Example, type Rule, type Walked } from './support/table-walk.ts';

const product = (...sizes: readonly number[]): bigint =>
  sizes.reduce((ways, size) => ways * BigInt(size), 1n);
const sum = (counts: Iterable<bigint>): bigint => [...counts].reduce((all, one) => all + one, 0n);

/** A number that nobody read is one that can't be read. */
const unread: Rule = (part) =>
  part['part-number'] === 'unanswered'
    ? { decision: 'test-further', reason: ['part-unidentified'] }
    : undefined;

/** Where the kit was never told, whoever could answer nothing by a bench has none. */
function hasBench(part: StarterReturn & { readonly kit?: string }): boolean {
  if (part.kit !== 'unanswered') return part.kit === 'bench-tester';
  const byBench = ['plunger', 'bench-run', 'bench-supply'] as const;
  return byBench.some((check) => part[check] !== 'unanswered');
}

const tables = [
  {
    part: 'starter',
    flow: shippedFlow('starter-return', 'en').chart.flow,
    rules: [unread, ...(starterRules(hasBench) as readonly Rule[])],
    combinations: product(
      ...[5, 4, 5], // number, proof; sale: three terms, none given, not known
      7, // claim
      ...[4, 5, 4, 4, 4], // handling, stud, housing, pinion, soiling
      ...[4, 4, 3, 3, 4], // suits, ring teeth, heat, cranked for, drive
      4, // kit
      ...[4, 5], // plunger, run
      ...[5, 9, 5], // supply, current, speed: bands, between them, no bound, not measured
      ...[3, 4], // warm, vehicle
    ),
  },
  {
    part: 'battery',
    flow: shippedFlow('battery-return', 'en').chart.flow,
    rules: [unread, ...(batteryRules as readonly Rule[])],
    combinations: product(
      ...[4, 4, 5],
      6,
      ...[3, 6, 4, 4, 4], // handling, look, posts, suits, electrolyte
      ...[7, 9, 4], // temperature, received, charge
      // Read again: not at all, once, or a second time after any first.
      ...[1 + 6 + 36, 1 + 6 + 36, 1 + 4 + 16, 1 + 6 + 36], // recharged, cells, load, tester
      ...[5, 4], // stand, vehicle
    ),
  },
] as const;

describe.each(tables)('the table for a $part', ({ part, flow, rules, combinations }) => {
  let walked: Walked;

  test('gives every combination of answers the one decision that the rules give', async (context) => {
    walked = walkTable(flow, rules, ['sale-date']);
    expect(walked.disagreements.slice(0, 3)).toEqual([]);
    expect(walked.combinations).toBe(combinations);
    expect(sum(walked.decides.values())).toBe(combinations);
    await context.annotate(`${combinations.toLocaleString('en')} combinations`);
  });

  test('has no line that decides nothing, and a reason in each', () => {
    expect([...walked.decides.keys()].sort((one, other) => one - other)).toEqual(
      flow.decisions.map((_, index) => index + 1),
    );
    for (const { decide, reason } of flow.decisions) {
      expect(['accept', 'decline', 'test-further']).toContain(decide);
      expect(reason).toMatch(/^[a-z-]+$/u);
    }
  });

  test('pays nothing that the terms, the price and the day do not give', () => {
    const paid = new Set<number>();
    for (const example of walked.examples.filter(isPlain)) {
      const { pays } = flow.decisions[example.line - 1] ?? {};
      for (const sale of pays === undefined ? sales.slice(-1) : sales) {
        const state = stateOf(flow, example, sale);
        const { line, refund } = decisionOf(flow, state);
        const owed = owedBy(part, flow.decisions[line - 1]?.pays, { ...sale, sold: soldOf(state) });
        expect(refund?.total, JSON.stringify({ line, ...sale, answers: state.answers })).toBe(owed);
        if (refund !== undefined) paid.add(line);
      }
    }
    const paying = flow.decisions.flatMap(({ pays }, index) => (pays ? [index + 1] : []));
    expect([...paid].sort((one, other) => one - other)).toEqual(paying);
  });
});

test('a table that says otherwise in one term is found out', () => {
  const { flow, rules } = tables[0];
  const decisions = flow.decisions.map((line) =>
    line.reason === 'fluid-damage'
      ? {
          ...line,
          when: { kind: 'answer', check: 'soiling', among: ['soaked-oil'], ever: false } as const,
        }
      : line,
  );
  const { disagreements } = walkTable({ ...flow, decisions }, rules);
  expect(disagreements.length).toBeGreaterThan(0);
  expect(disagreements.map(({ ruled }) => ruled?.reason)).toContainEqual(['fluid-damage']);
  for (const { answers } of disagreements) expect(answers['soiling']).toBe('soaked-water');
});

describe('a table counted by hand', () => {
  const small = smallFlow();
  const rules: readonly Rule[] = [
    ({ look }) => (look === 'cracked' ? { decision: 'decline', reason: ['cracked'] } : undefined),
    ({ volts }) => {
      const read = volts as readonly string[];
      if (read.at(-1) === 'full') return { decision: 'decline', reason: ['good'] };
      const reason = read.length < 2 ? 'read-again' : 'worn';
      return { decision: read.length < 2 ? 'test-further' : 'accept', reason: [reason] };
    },
  ];

  // Look: sound, cracked, unanswered. Volts: low, between, full, no bound; none of them, one, or
  // two in a row: 1 + 4 + 16 = 21. Together 3 × 21 = 63.
  test('comes to what was counted', () => {
    const walked = walkTable(small, rules);
    expect(walked.disagreements).toEqual([]);
    expect(walked.combinations).toBe(63n);
    expect(Object.fromEntries(walked.decides)).toEqual({
      1: 21n, // cracked, whatever is read
      2: 10n, // not cracked: 2 × (full once, or after any of 4)
      3: 8n, // 2 × (nothing, or one of 3 that are not full)
      4: 24n, // 2 × (one of 3 after any of 4)
    });
  });

  test('with a line taken away, or without a last one, is told from the rules', () => {
    const without = (index: number): Flow => ({
      ...small,
      decisions: small.decisions.filter((_, at) => at !== index),
    });
    const uncracked = walkTable(without(0), rules).disagreements;
    expect(new Set(uncracked.map(({ line }) => line?.reason))).toEqual(
      new Set(['good', 'read-again', 'worn']),
    );
    for (const { answers } of uncracked) expect(answers['look']).toBe('cracked');
    const cut = walkTable(without(3), rules).disagreements;
    expect(cut.map(({ line }) => line)).toEqual(cut.map(() => undefined));
    expect(cut.length).toBeGreaterThan(0);
  });
});

/** A table of four lines in which one check is read again. */
function smallFlow(): Flow {
  const text = `flow: small-return
version: '1'
part: battery
stages: { look: [look, volts] }
checks:
  look: { choice: [sound, cracked], at: bench, minutes: 1 }
  volts:
    reading: V
    bands: { low: 12.5, full: above }
    range: battery-voltage
    at: bench
    minutes: 1
decisions:
  - { when: { look: cracked }, decide: decline, reason: cracked }
  - { when: { volts: full }, decide: decline, reason: good }
  - { when: { not: { volts: twice } }, decide: test-further, reason: read-again, again: [volts] }
  - { decide: accept, reason: worn }
`;
  const loaded = loadFlow([{ path: 'flow.yaml', text }]);
  if (loaded.type === 'issues') throw new Error(JSON.stringify(loaded.issues));
  return loaded.flow;
}

/** What is known of a sale beside its day. */
interface Sale {
  readonly terms: keyof typeof policies | 'none';
  readonly price: number | undefined;
  readonly oldUnit: 'owed' | 'returned';
}

const shop = { shop: 'Corner Parts', currency: 'EUR', 'time-zone': 'Europe/Lisbon' };

/** Terms of invented shops: all there can be, the least of each, and no warranty at all. */
const policies = {
  full: {
    ...shop,
    'return-window': { days: 30, restocking: { percent: 15 } },
    warranty: {
      starter: { months: 24 },
      battery: {
        months: 36,
        'pro-rata': [
          { from: 0, to: 12, percent: 100 },
          { from: 12, to: 24, percent: 60 },
          { from: 24, to: 36, percent: 30 },
        ],
      },
    },
    'exchange-deposit': { starter: 4500, battery: 1000 },
  },
  plain: {
    ...shop,
    'return-window': { days: 30 },
    warranty: {
      starter: { months: 24, 'pro-rata': 'by-month' },
      battery: { months: 36, 'pro-rata': 'by-month' },
    },
  },
  unwarranted: {
    ...shop,
    'return-window': { days: 30 },
    warranty: {},
    'exchange-deposit': { starter: 4500 },
  },
} satisfies Readonly<Record<string, Policy>>;

const sales: readonly Sale[] = (['none', 'full', 'plain', 'unwarranted'] as const).flatMap(
  (terms) =>
    [undefined, 10_000].flatMap((price) =>
      (['returned', 'owed'] as const).map((oldUnit) => ({ terms, price, oldUnit })),
    ),
);

/** Back on the last of June 2026: sold 10 days, 17 months and more than six years before. */
const opened = '2026-06-30T10:00:00.000Z';
const soldOn: Readonly<Record<string, string>> = {
  'return-window': '2026-06-20',
  warranty: '2025-01-30',
  expired: '2020-01-01',
};

/**
 * What 100.00 comes to by each of the terms, worked by hand: 15 % kept back; a battery in its
 * second year 60 %; of 24 months 7 are left, 2916.67; of 36 months 19, 5277.78.
 */
const given = {
  full: {
    'return-window': { '2026-06-20': 8500 },
    warranty: {
      starter: { '2026-06-20': 10_000, '2025-01-30': 10_000 },
      battery: { '2026-06-20': 10_000, '2025-01-30': 6000 },
    },
    deposit: { starter: 4500, battery: 1000 },
  },
  plain: {
    'return-window': { '2026-06-20': 10_000 },
    warranty: {
      starter: { '2026-06-20': 10_000, '2025-01-30': 2917 },
      battery: { '2026-06-20': 10_000, '2025-01-30': 5278 },
    },
    deposit: {},
  },
  unwarranted: {
    'return-window': { '2026-06-20': 10_000 },
    warranty: {},
    deposit: { starter: 4500 },
  },
} as const;

type ByDay = Readonly<Record<string, number>>;

/** Minor units that are owed on a line; undefined where nothing says how much. */
function owedBy(
  part: 'starter' | 'battery',
  pays: string | undefined,
  { terms, price, oldUnit, sold }: Sale & { readonly sold: string },
): number | undefined {
  if (pays === undefined || terms === 'none') return undefined;
  const by = given[terms];
  const deposit =
    oldUnit === 'owed' ? (by.deposit as Readonly<Record<string, number>>)[part] : undefined;
  if (pays === 'deposit') return deposit;
  if (price === undefined) return undefined;
  const days: Readonly<Record<string, ByDay | undefined>> = {
    'return-window': by['return-window'],
    warranty: (by.warranty as Readonly<Record<string, ByDay>>)[part],
  };
  const back = pays === 'price' ? price : days[pays]?.[sold];
  return back === undefined ? undefined : back + (deposit ?? 0);
}

/** True for an example whose answers can be given by their ids alone. */
function isPlain({ answers }: Example): boolean {
  return [...answers].every(
    ([check, { latest }]) =>
      !latest.includes('~') && (latest !== 'no-bound' || check === 'sale-date'),
  );
}

/** The case of an example, with a day of sale in place of a band. */
function stateOf(flow: Flow, { answers }: Example, { terms, price, oldUnit }: Sale): CaseState {
  const kit = answers.get('kit');
  const said = [...answers].map(([check, { latest, times }]) => {
    const words = check === 'sale-date' ? (soldOn[latest] ?? '2026-06-20') : latest;
    return [check, times === 0 ? ['cannot'] : Array.from({ length: times }, () => [words])];
  });
  return {
    ...blankState,
    at: opened,
    opened,
    policy: terms === 'none' ? null : policies[terms],
    context: {
      ...(kit === undefined || kit.times === 0 ? {} : { kit: [kit.latest] }),
      ...(price === undefined ? {} : { 'sale.price': price }),
      'sale.oldUnit': oldUnit,
    },
    answers: Object.fromEntries(said) as CaseState['answers'],
    order: flow.stages.flatMap(({ checks }) => checks).filter((check) => answers.has(check)),
  };
}

function soldOf({ answers }: CaseState): string {
  const day = answers['sale-date']?.at(-1);
  return Array.isArray(day) ? String(day[0]) : '';
}
