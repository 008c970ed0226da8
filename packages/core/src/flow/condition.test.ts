import { describe, expect, test } from 'vitest';
import { certain, checksOf, holds, type Condition, type Finding, type Known } from './condition.ts';
import type { Truth } from './condition.ts';

type Weights = Readonly<Record<string, number>>;

interface Facts {
  readonly findings?: Readonly<Record<string, readonly (Weights | number)[]>>;
  readonly context?: Readonly<Record<string, unknown>>;
  readonly raised?: readonly string[];
  readonly limits?: Readonly<Record<string, number>>;
}

/** What is known, from plain tables: a number is a figure, anything else the answers' weights. */
function knowing({ findings = {}, context = {}, raised = [], limits = {} }: Facts): Known {
  const all = (check: string): readonly Finding[] =>
    (findings[check] ?? []).map((one) =>
      typeof one === 'number' ? { check, weights: {}, value: one } : { check, weights: one },
    );
  return {
    findings: all,
    finding: (check) => all(check).at(-1),
    context: (path) => context[path],
    raised: (interrupt) => raised.includes(interrupt),
    limit: (name) => limits[name],
  };
}

const answer = (check: string, ...among: string[]): Condition => ({
  kind: 'answer',
  check,
  among,
  ever: false,
});
const ever = (check: string, ...among: string[]): Condition => ({
  kind: 'answer',
  check,
  among,
  ever: true,
});

const known = knowing({ raised: ['smoke'], findings: { dash: [{ dim: 1 }] } });
const parts: Readonly<Record<string, Condition>> = {
  true: { kind: 'raised', interrupt: 'smoke' },
  false: { kind: 'raised', interrupt: 'injury' },
  undefined: answer('headlamps', 'dim'),
};
const truths: readonly Truth[] = [true, false, undefined];
const part = (truth: Truth): Condition => parts[String(truth)]!;

/** Kleene's strong tables, the third value being "not known". */
const both = (a: Truth, b: Truth): Truth =>
  a === false || b === false ? false : a === undefined || b === undefined ? undefined : true;

describe('conditions put together', () => {
  const pairs = truths.flatMap((a) => truths.map((b) => [a, b] as const));

  test.each(pairs)('all of %s and %s', (a, b) => {
    expect(holds({ kind: 'all', of: [part(a), part(b)] }, known)).toBe(both(a, b));
  });

  test.each(pairs)('any of %s and %s', (a, b) => {
    const not = (truth: Truth): Truth => (truth === undefined ? undefined : !truth);
    expect(holds({ kind: 'any', of: [part(a), part(b)] }, known)).toBe(not(both(not(a), not(b))));
  });

  test.each([
    [true, false],
    [false, true],
    [undefined, undefined],
  ])('not %s is %s', (truth, expected) => {
    expect(holds({ kind: 'not', of: part(truth) }, known)).toBe(expected);
  });

  test('all of nothing holds and any of nothing does not', () => {
    expect(holds({ kind: 'all', of: [] }, known)).toBe(true);
    expect(holds({ kind: 'any', of: [] }, known)).toBe(false);
  });

  test('ask about every check that they name', () => {
    const whole: Condition = {
      kind: 'all',
      of: [
        answer('dash', 'dim'),
        { kind: 'not', of: { kind: 'any', of: [ever('clutch', 'up'), part(true)] } },
        { kind: 'reading', check: 'battery-rest', range: { below: 12 } },
        { kind: 'answered', check: 'tap' },
      ],
    };
    expect(checksOf(whole)).toEqual(['dash', 'clutch', 'battery-rest', 'tap']);
  });
});

describe('an answer', () => {
  test.each<readonly [string, readonly Weights[], Truth]>([
    ['that was not given is not known', [], undefined],
    ['that was given holds', [{ dim: 1 }], true],
    ['that is another does not hold', [{ bright: 1 }], false],
    ['of several that hold together is one of them', [{ bright: 1, dim: 1 }], true],
    ['that was given once counts no more after another', [{ dim: 1 }, { bright: 1 }], false],
  ])('%s', (_, given, expected) => {
    expect(holds(answer('dash', 'dim'), knowing({ findings: { dash: given } }))).toBe(expected);
  });

  test.each<readonly [string, readonly Weights[], Truth]>([
    ['was never asked for', [], undefined],
    ['was given first', [{ up: 1 }, { down: 1 }], true],
    ['was given last', [{ down: 1 }, { up: 1 }], true],
    ['was never given', [{ down: 1 }, { down: 1 }], false],
    ['may have been given', [{ up: 0.5, down: 0.5 }, { down: 1 }], undefined],
  ])('that %s: was', (_, given, expected) => {
    expect(holds(ever('clutch', 'up'), knowing({ findings: { clutch: given } }))).toBe(expected);
  });

  test('that says something has been answered', () => {
    const condition: Condition = { kind: 'answered', check: 'dash' };
    expect(holds(condition, known)).toBe(true);
    expect(holds(condition, knowing({}))).toBe(false);
  });
});

describe('a borderline reading', () => {
  test('is certain from 19 in 20 on', () => {
    expect(certain).toBe(0.95);
  });

  test.each<readonly [number, Truth]>([
    [1, true],
    [0.951, true],
    [0.95, true],
    [0.949, undefined],
    [0.5, undefined],
    [0.051, undefined],
    [0.049, false],
    [0, false],
  ])('that is discharged by %s', (share, expected) => {
    const findings = { rest: [{ discharged: share, ready: 1 - share }] };
    expect(holds(answer('rest', 'discharged'), knowing({ findings }))).toBe(expected);
  });

  test('lies surely in one of two bands though in neither surely', () => {
    const findings = { rest: [{ flat: 0.5, discharged: 0.48, ready: 0.02 }] };
    const facts = knowing({ findings });
    expect(holds(answer('rest', 'flat'), facts)).toBe(undefined);
    expect(holds(answer('rest', 'flat', 'discharged'), facts)).toBe(true);
    expect(holds(answer('rest', 'ready'), facts)).toBe(false);
  });

  test.each<readonly [string, readonly Weights[], Truth]>([
    ['not read is none', [], false],
    ['clearly in its band is none', [{ discharged: 0.02, ready: 0.98 }], false],
    ['in none surely is one', [{ discharged: 0.5, ready: 0.5 }], true],
    ['read again counts as it was read last', [{ ready: 0.5, flat: 0.5 }, { ready: 1 }], false],
    ['whose bands are not known may be one', [{}], undefined],
  ])('%s', (_, found, expected) => {
    const condition: Condition = { kind: 'borderline', check: 'rest' };
    expect(holds(condition, knowing({ findings: { rest: found } }))).toBe(expected);
    expect(checksOf(condition)).toEqual(['rest']);
  });

  test('whose limit cannot be given lies in no band', () => {
    expect(holds(answer('rest', 'flat'), knowing({ findings: { rest: [{}] } }))).toBe(false);
  });
});

describe('a range', () => {
  test.each<readonly [string, Extract<Condition, { kind: 'reading' }>['range'], Truth]>([
    ['below its end', { below: 12.1 }, true],
    ['below itself', { below: 12 }, false],
    ['at most itself', { atMost: 12 }, true],
    ['above itself', { above: 12 }, false],
    ['at least itself', { atLeast: 12 }, true],
    ['between two ends', { above: 11, below: 13 }, true],
    ['outside one of two ends', { above: 12.5, below: 13 }, false],
    ['below a limit', { below: 'battery.rest.full' }, true],
    ['above a limit', { above: 'battery.rest.full' }, false],
    ['below a limit that cannot be given', { below: 'battery.tester.poor' }, undefined],
    ['outside, whatever the other limit', { above: 13, below: 'battery.tester.poor' }, false],
    ['without ends', {}, true],
  ])('12 V is %s', (_, range, expected) => {
    const facts = knowing({ findings: { rest: [12] }, limits: { 'battery.rest.full': 12.4 } });
    expect(holds({ kind: 'reading', check: 'rest', range }, facts)).toBe(expected);
  });

  test('of what was not read by a meter is not known', () => {
    const condition: Condition = { kind: 'reading', check: 'rest', range: { below: 12 } };
    expect(holds(condition, knowing({}))).toBe(undefined);
    expect(holds(condition, knowing({ findings: { rest: [{ flat: 1 }] } }))).toBe(undefined);
  });

  test.each<readonly [unknown, Truth]>([
    [-5, true],
    [-4.9, false],
    [undefined, undefined],
  ])('of the context: coldest %s', (coldest, expected) => {
    const condition: Condition = { kind: 'context-number', path: 'coldest', range: { atMost: -5 } };
    expect(holds(condition, knowing({ context: { coldest } }))).toBe(expected);
  });
});

describe('a field of the context', () => {
  const kit: Condition = { kind: 'context', path: 'kit', among: ['voltmeter', 'clamp-meter'] };

  test.each<readonly [string, unknown, Truth]>([
    ['holds one of them', ['helper', 'voltmeter'], true],
    ['holds none of them', ['helper'], false],
    ['is empty', [], false],
    ['is not known', undefined, undefined],
  ])('a list that %s', (_, value, expected) => {
    expect(holds(kit, knowing({ context: { kit: value } }))).toBe(expected);
  });

  test('is one of the values, not like one of them', () => {
    const nominal: Condition = { kind: 'context', path: 'vehicle.nominal', among: [24] };
    expect(holds(nominal, knowing({ context: { 'vehicle.nominal': 24 } }))).toBe(true);
    expect(holds(nominal, knowing({ context: { 'vehicle.nominal': '24' } }))).toBe(false);
  });

  test('is known whatever its value', () => {
    const condition: Condition = { kind: 'context-known', path: 'vehicle.startStop' };
    expect(holds(condition, knowing({ context: { 'vehicle.startStop': false } }))).toBe(true);
    expect(holds(condition, knowing({}))).toBe(false);
  });
});
