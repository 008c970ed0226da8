/**
 * Readings of the vehicle that are told by hand: the case that they make, and what it says of the
 * part that came out of it.
 */
import {
  caseByHand,
  flowByHand,
  proofGrounds,
  vehicleProof,
  type Input,
  type SoldPart,
} from '@keyturn/core';
import { createSpeaker, readingsSaid, textsByHand, type VehicleListener } from '@keyturn/language';
import { decodeFindings, encodeFindings, replayFindings } from '@keyturn/sheets';
import { describe, expect, test } from 'vitest';
import { shippedTexts } from '@keyturn/terminal';
import { noStart } from './support/no-start.ts';

const { chart } = noStart;
const opening = { id: 'v1', at: '2026-03-01T08:00:00.000Z' };

/** What the shop knows of the vehicle that the part was sold for. */
const car = { nominal: 12, fuel: 'petrol' };

function listenerIn(locale: string): VehicleListener {
  const flow = flowByHand(chart.flow);
  const flowTexts = textsByHand(flow, shippedTexts('no-start', locale));
  return { flow, speaker: createSpeaker({ locale, flowTexts, checks: flow.checks }) };
}

type Readings = Readonly<Record<string, number>>;

function told(readings: Readings, claim: string | undefined, part: SoldPart, vehicle = car) {
  return caseByHand(chart, opening, {
    part,
    claim,
    vehicle,
    readings: Object.entries(readings).map(([check, value]) => ({
      check,
      value: { value, unit: check === 'crank-current' ? 'A' : 'V', resolution: 0.01 },
    })),
  });
}

function says(readings: Readings, claim: string | undefined, part: SoldPart = 'starter') {
  const { state } = told(readings, claim, part).case;
  const proof = vehicleProof(chart.flow, state, part);
  return { proof, ...proofGrounds(chart.flow, state, part) };
}

/** Battery, both sides and the signal are good. */
const good = {
  'battery-rest': 12.75,
  'battery-crank': 10.9,
  'drop-positive': 0.15,
  'drop-ground': 0.1,
  'control-signal': 11,
};

const without = (check: string): Readings =>
  Object.fromEntries(Object.entries(good).filter(([one]) => one !== check));

describe('readings of a vehicle told by hand', () => {
  test('speak against a starter where all that feeds it is good, and it does not crank or is slow', () => {
    expect(says(good, 'no-crank')).toEqual({ proof: 'against-part', elsewhere: [], lacking: [] });
    expect(says(without('control-signal'), 'slow-crank').proof).toBe('against-part');
    // With the current that was measured its limit is known.
    const withCurrent = { ...good, 'drop-positive': 0.35, 'crank-current': 300 };
    expect(says(withCurrent, 'slow-crank').proof).toBe('against-part');
  });

  test.each<[string, Readings, string | undefined, readonly string[]]>([
    [
      'only what was read while cranking',
      { 'battery-crank': 10.9, 'drop-positive': 0.15 },
      'slow-crank',
      ['drop-ground', 'battery-rest'],
    ],
    ['no start signal', without('control-signal'), 'no-crank', ['control-signal']],
    [
      'a battery too close to call',
      { ...good, 'battery-rest': 12.5 },
      'slow-crank',
      ['battery-rest'],
    ],
    [
      'a loss that is too close to call without the current',
      { ...good, 'drop-positive': 0.35 },
      'slow-crank',
      ['drop-positive'],
    ],
    [
      'a battery that gives way',
      { ...good, 'battery-crank': 8.9 },
      'slow-crank',
      ['battery-crank'],
    ],
    ['a noise', good, 'noise', ['complaint']],
    ['nothing that the customer said', good, undefined, ['complaint']],
  ])('say with %s what it takes still', (_, readings, claim, lacking) => {
    expect(says(readings, claim)).toEqual({ proof: 'incomplete', elsewhere: [], lacking });
  });

  test.each<[string, Readings, readonly string[]]>([
    ['a bad plus side', { 'drop-positive': 3 }, ['drop-positive']],
    ['an empty battery', { 'battery-rest': 11.4 }, ['battery-rest']],
    ['no start signal', { ...good, 'control-signal': 0.1 }, ['control-signal']],
    [
      'both sides bad',
      { ...good, 'drop-positive': 3, 'drop-ground': 2.9 },
      ['drop-positive', 'drop-ground'],
    ],
  ])('point elsewhere with %s, by that', (_, readings, elsewhere) => {
    expect(says(readings, 'no-crank')).toMatchObject({ proof: 'points-elsewhere', elsewhere });
  });

  test('tell of a battery only whether it is charged', () => {
    expect(says({ charging: 12.4 }, 'goes-flat', 'battery')).toMatchObject({
      proof: 'points-elsewhere',
      elsewhere: ['charging'],
    });
    const right = { proof: 'incomplete', elsewhere: [], lacking: [] };
    expect(says({ charging: 14.3 }, 'goes-flat', 'battery')).toEqual(right);
  });

  test('make a case whose code says the same', () => {
    const { case: kase } = told(good, 'no-crank', 'starter');
    const code = encodeFindings(chart.flow, kase);
    const again = replayFindings(chart, decodeFindings([chart.flow], code)).case;
    expect(again.state.answers).toEqual(kase.state.answers);
    expect(vehicleProof(chart.flow, again.state, 'starter')).toBe('against-part');
  });

  test('go by the volts of the part, and what no meter shows there is refused', () => {
    const truck = { ...good, 'battery-rest': 25.5, 'battery-crank': 21.8, 'control-signal': 22 };
    const { state } = told(truck, 'no-crank', 'starter', {
      nominal: 24,
      fuel: 'diesel',
    }).case;
    expect(vehicleProof(chart.flow, state, 'starter')).toBe('against-part');
    const { case: kase, messages } = told({ ...good, 'battery-crank': 109 }, 'no-crank', 'starter');
    expect(messages).toMatchObject([{ kind: 'refused', check: 'battery-crank' }]);
    expect(kase.state.answers).toEqual({});
  });
});

describe('a text with readings of a vehicle', () => {
  const heard = (text: string, locale = 'en', part: SoldPart = 'starter') => {
    const meant = { type: 'unclear', code: 'not-understood', given: text, possible: [] } as const;
    const said = readingsSaid(text, listenerIn(locale), { part, nominal: 12, meant });
    if (said?.type !== 'readings') return said?.type;
    const readings = said.readings.map(({ check, value }) =>
      'value' in value ? `${check} ${String(value.value)} ${value.unit}` : check,
    );
    return [...readings, ...said.left.map((one) => `left: ${one.said}`)].join(', ');
  };

  test.each([
    ['10.9 cranking, 0.3 on the plus side', 'battery-crank 10.9 V, drop-positive 0.3 V'],
    [
      '10.9 V at the battery while cranking and 0.3 V on the positive side',
      'battery-crank 10.9 V, drop-positive 0.3 V',
    ],
    ['battery 12.6, cranking 10.9', 'battery-rest 12.6 V, battery-crank 10.9 V'],
    ['300 mV on the plus side', 'drop-positive 300 mV'],
    ['10.9 V cranking and it clicks once', 'battery-crank 10.9 V, left: it clicks once'],
  ])('“%s” is heard by the flow of vehicles', (text, readings) => {
    expect(heard(text)).toBe(readings);
  });

  test.each([
    ['es', '10,9 al arrancar, 0,3 en el lado positivo'],
    ['de', '10,9 beim Starten, 0,3 auf der Plusseite'],
    ['fr', '10,9 au démarrage, 0,3 côté plus'],
    ['pl', '10,9 przy rozruchu, 0,3 po stronie plusa'],
    ['ar', '10.9 أثناء التشغيل، 0.3 جهة الموجب'],
  ])('is heard in %s', (locale, text) => {
    expect(heard(text, locale)).toBe('battery-crank 10.9 V, drop-positive 0.3 V');
  });

  test('a figure that stands alone, or that no meter shows there, is asked back', () => {
    expect(heard('10.9')).toBe('unclear');
    expect(heard('124 cranking')).toBe('unclear');
  });

  test('a danger and a correction come before them', () => {
    const of = (input: Input) =>
      readingsSaid('10.9 cranking', listenerIn('en'), {
        part: 'starter',
        nominal: 12,
        meant: { type: 'input', inputs: [input] },
      });
    expect(of({ type: 'interrupt', interrupt: 'smoke' })).toBeUndefined();
    const claim = { check: 'claim', value: ['noise'] };
    expect(of({ type: 'correction', answers: [claim] })).toBeUndefined();
  });

  test('without a figure there are none, and of a battery only how it is charged', () => {
    expect(heard('all else good')).toBeUndefined();
    expect(heard('14.3 charging', 'en', 'battery')).toBe('charging 14.3 V');
  });
});
