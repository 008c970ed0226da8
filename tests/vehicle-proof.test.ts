/**
 * What a case of the vehicle says of the part that came out of it, by the readings in it.
 */
import { vehicleProof, type VehicleProof } from '@keyturn/core';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';
import { answers, next, open, type Answers } from './support/play.ts';

const { flow } = noStart.chart;

function proofOf(part: 'starter' | 'battery', given: Answers): VehicleProof {
  const vehicle = { fuel: 'petrol', displacement: 1.6, battery: { technology: 'flooded' } };
  const kit = ['voltmeter', 'helper', 'load-tester', 'clamp-meter'];
  const opened = open({ place: 'workshop', kit, vehicle, temperature: 20 });
  const { case: kase, messages } = next(opened.case, answers(given));
  expect(messages.filter(({ kind }) => kind === 'refused')).toEqual([]);
  return vehicleProof(flow, kase.state, part);
}

/** Everything that feeds the starter is good, and it turns the engine slowly. */
const slow: Answers = {
  complaint: 'slow-crank',
  'battery-rest': 12.68,
  'battery-load-test': 10.4,
  'battery-crank': 10.6,
  'drop-positive': 0.1,
  'drop-ground': 0.08,
};

/** The same, and it does not turn at all though the start signal is there. */
const silent: Answers = {
  complaint: 'single-click',
  'battery-rest': 12.68,
  'battery-load-test': 10.4,
  'battery-crank': 12.4,
  'drop-positive': 0.02,
  'drop-ground': 0.02,
  'control-signal': 12.1,
};

describe('a starter', () => {
  test('is spoken against where battery and drops are good and it is slow, or silent with its signal', () => {
    expect(proofOf('starter', slow)).toBe('against-part');
    expect(proofOf('starter', silent)).toBe('against-part');
  });

  test.each<[string, Answers]>([
    ['a battery that fails under load', { ...slow, 'battery-load-test': 8.1 }],
    ['a battery that rests empty', { ...silent, 'battery-rest': 11.6 }],
    ['a bad ground side', { ...slow, 'drop-ground': 1.4 }],
    ['a bad positive side', { ...slow, 'drop-positive': 1.5 }],
    ['no start signal', { ...silent, 'control-signal': 0.1 }],
  ])('%s points elsewhere', (_, given) => {
    expect(proofOf('starter', given)).toBe('points-elsewhere');
  });

  test.each<[string, Answers]>([
    ['nothing but the complaint', { complaint: 'slow-crank' }],
    ['no drops', { complaint: 'slow-crank', 'battery-load-test': 10.4, 'battery-crank': 10.6 }],
    [
      'silent and no signal measured',
      Object.fromEntries(Object.entries(silent).filter(([check]) => check !== 'control-signal')),
    ],
  ])('with %s the case is incomplete', (_, given) => {
    expect(proofOf('starter', given)).toBe('incomplete');
  });
});

test('of a battery a no-start case tells nothing against it, since the drain is not measured there', () => {
  expect(proofOf('battery', slow)).toBe('incomplete');
});

test('a proved fault of another part points elsewhere', () => {
  const opened = open({ place: 'workshop' });
  const state = {
    ...opened.case.state,
    verdict: { strength: 'proved', fault: 'ground-cable' },
  } as typeof opened.case.state;
  expect(vehicleProof(flow, state, 'battery')).toBe('points-elsewhere');
  const worn = { ...state, verdict: { strength: 'proved', fault: 'battery-worn' } };
  expect(vehicleProof(flow, worn as typeof state, 'battery')).toBe('incomplete');
});
