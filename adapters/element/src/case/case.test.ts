import { readdirSync, readFileSync } from 'node:fs';
import { compileFlow, positionOf, stripOf, type Input } from '@keyturn/core';
import { loadFlow } from '@keyturn/core/load';
import { circuitOf, probesInHand } from '@keyturn/drawings';
import { describe, expect, test } from 'vitest';
import { askAgain } from './ask-again.ts';
import { findSitting, forgetSitting, keepSitting, type KeptPlace } from './kept-sitting.ts';
import { packFlow, unpackFlow } from './packed-flow.ts';
import { openSitting, takeInputs, type Sitting } from './sitting.ts';

const folder = new URL('../../../../flows/no-start/', import.meta.url);
const loaded = loadFlow(
  readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => ({ path: file, text: readFileSync(new URL(file, folder), 'utf8') })),
);
if (loaded.type === 'issues') throw new Error('the flow has issues');
const { flow } = loaded;
const chart = compileFlow(flow);
const at = '2026-01-01T08:00:00.000Z';

const opened = openSitting(chart, { id: 'k1', at, context: { place: 'home', kit: ['voltmeter'] } });
const take = (sitting: Sitting, ...inputs: readonly Input[]): Sitting =>
  takeInputs(chart, sitting, { at, inputs }).sitting;
const choice = (check: string, ...value: readonly string[]): Input => ({
  type: 'answers',
  answers: [{ check, value }],
});
const volts = (check: string, value: number): Input => ({
  type: 'answers',
  answers: [{ check, value: { value, unit: 'V', resolution: 0.01 } }],
});
const safe = take(opened, choice('scene', 'safe'));

describe('a flow', () => {
  test('comes out of its packing as it went in', () => {
    const carried = JSON.parse(JSON.stringify(packFlow(flow))) as ReturnType<typeof packFlow>;
    expect(unpackFlow(carried)).toEqual(flow);
  });

  test('is packed to less than a quarter of its likelihoods', () => {
    const before = JSON.stringify(flow.likelihoods).length;
    expect(JSON.stringify(packFlow(flow).likelihoods).length).toBeLessThan(before / 4);
  });
});

describe('a sitting', () => {
  test('says the opening once, and keeps every event', () => {
    expect(opened.said).toEqual([{ kind: 'tell', tell: 'opening' }]);
    expect(safe.said).toEqual([]);
    expect(safe.events.map(({ type }) => type)).toEqual(['opened', expect.any(String)]);
  });

  test('keeps the cautions of the step in hand while the step is talked about', () => {
    const cautioned = {
      ...safe,
      cautions: [{ kind: 'caution', caution: 'c', word: 'warning', confirm: true }],
    } as const;
    expect(take(cautioned, { type: 'talk', talk: 'why' }).cautions).toEqual(cautioned.cautions);
    expect(take(cautioned, choice('drive', 'petrol')).cautions).toEqual([]);
  });

  test('says back what was told without being asked, or put right, and nothing that was asked', () => {
    const asked = take(safe, choice('drive', 'petrol'));
    expect(asked.said).toEqual([]);
    const told = take(safe, choice('complaint', 'slow-crank'));
    expect(told.said).toMatchObject([{ kind: 'noted', check: 'complaint' }]);
    const right = { check: 'drive', value: ['diesel'] };
    const corrected = take(asked, { type: 'correction', answers: [right] });
    expect(corrected.said).toContainEqual({ kind: 'noted', check: 'drive', answer: ['diesel'] });
  });

  test('says a second danger that is told in one turn beside the one in hand', () => {
    const raised = ['injury', 'smoke'].map((interrupt): Input => ({
      type: 'interrupt',
      interrupt,
    }));
    const told = take(safe, ...raised);
    expect(told.said).toMatchObject([{ kind: 'interrupt', interrupt: 'injury' }]);
    expect(positionOf(told.case)).toEqual({ awaiting: 'resume', interrupt: 'smoke' });
    expect(take(safe, ...raised.slice(0, 1)).said).toEqual([]);
  });

  test('shows how the faults stand until something moves them', () => {
    const told = take(safe, choice('complaint', 'slow-crank'));
    expect(told.ranking).toMatchObject({ kind: 'ranking' });
    expect(take(told, { type: 'talk', talk: 'why' }).ranking).toBe(told.ranking);
  });
});

describe('the strip', () => {
  const measured = take(safe, choice('complaint', 'slow-crank'), volts('battery-rest', 12.64));

  test('prints every answer in the order in which it was given', () => {
    const { findings, verdict, proving } = stripOf(chart, measured.case);
    expect(findings.map(({ check }) => check)).toEqual(['scene', 'complaint', 'battery-rest']);
    expect(findings.at(-1)?.message).toMatchObject({ kind: 'reading', quantity: { value: 12.64 } });
    expect(verdict).toBe(null);
    expect(proving).toEqual([]);
  });

  test('prints a corrected answer anew, and what nobody knows as such', () => {
    const corrected = take(
      measured,
      { type: 'correction', answers: [{ check: 'complaint', value: ['silent'] }] },
      { type: 'talk', talk: 'dont-know' },
    );
    const { findings } = stripOf(chart, corrected.case);
    const answers = findings.map(({ check, message }) => [
      check,
      'answer' in message ? message.answer : 'reading',
    ]);
    expect(answers).toContainEqual(['complaint', ['silent']]);
    expect(answers).toContainEqual([expect.any(String), []]);
  });

  test('has a question for every line, to put it right', () => {
    for (const check of Object.keys(flow.checks)) expect(askAgain(chart, check)?.check).toBe(check);
    expect(askAgain(chart, 'no-such-check')).toBe(undefined);
  });

  test('has the circuit drawn with what was measured in it', () => {
    const view = circuitOf(chart, measured.case, (id) => `the ${id}`);
    expect(view.found).toMatchObject([
      { check: 'battery-rest', probes: { red: 'battery-positive-post' } },
    ]);
    expect(view.suspect?.name).toBe(`the ${view.suspect?.id ?? ''}`);
    expect(probesInHand(chart, opened.case)).toBe(undefined);
  });
});

describe('a kept sitting', () => {
  const store = (): KeptPlace & { readonly all: Map<string, string> } => {
    const all = new Map<string, string>();
    return {
      all,
      getItem: (key) => all.get(key) ?? null,
      setItem: (key, value) => void all.set(key, value),
      removeItem: (key) => void all.delete(key),
    };
  };

  test('is found as it was left, and gone once forgotten', () => {
    const place = store();
    expect(findSitting(place, 'k', chart)).toEqual({ type: 'nothing' });
    expect(keepSitting(place, 'k', safe)).toBe(true);
    const found = findSitting(place, 'k', chart);
    expect(found).toMatchObject({
      type: 'sitting',
      sitting: { case: safe.case, events: safe.events },
    });
    expect(found.type === 'sitting' && positionOf(found.sitting.case)).toEqual(
      positionOf(safe.case),
    );
    forgetSitting(place, 'k');
    expect(findSitting(place, 'k', chart)).toEqual({ type: 'nothing' });
  });

  test.each([
    '{',
    'null',
    '{"format":0}',
    '{"format":1,"events":[]}',
    '{"format":1,"events":[{"type":"opened","flow":{"id":"other"}}]}',
  ])('that is %s is put aside and not lost', (text) => {
    const place = store();
    place.setItem('k', text);
    expect(findSitting(place, 'k', chart)).toEqual({ type: 'unfit' });
    expect(place.all.get('k.unfit')).toBe(text);
  });

  test('is said not to be kept where the browser refuses', () => {
    const full = {
      ...store(),
      setItem: () => {
        throw new Error('full');
      },
    };
    expect(keepSitting(full, 'k', safe)).toBe(false);
    expect(keepSitting(undefined, 'k', safe)).toBe(false);
  });
});
