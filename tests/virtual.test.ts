/**
 * The virtual vehicles, and the shipped flow on some of them. How they are made is common practice, no
 * source, except where `tests/virtual` names one.
 */
import { readCards, replayCard } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { crossedStops } from './support/hard-stops.ts';
import { noStart, speaker } from './support/no-start.ts';
import type { Evidence } from './virtual/answer-likelihood.ts';
import { causeChances, causes } from './virtual/causes.ts';
import { outcomeOf, rightRemedies, rightSends } from './virtual/consequences.ts';
import { independentPosterior } from './virtual/independent-posterior.ts';
import { reportOf, usualPartFirst, type PlayedVehicle } from './virtual/measure.ts';
import { grossError, meters } from './virtual/person.ts';
import { Random } from './virtual/random.ts';
import { readingsLogDensity } from './virtual/reading-likelihood.ts';
import { at, circuitState, hidden } from './virtual/circuit-state.ts';
import { trueFigure, type TrueFigure } from './virtual/readings.ts';
import type { Setting } from './virtual/setting.ts';
import { virtualVehicle, type Given } from './virtual/vehicle.ts';

const firstSeed = 7001;
const vehicles = Array.from({ length: 60 }, (_, index) => virtualVehicle(firstSeed + index));
const replayed = vehicles.map((vehicle) => ({
  vehicle,
  found: replayCard(noStart.chart, speaker, vehicle.card),
}));

describe('a virtual vehicle', () => {
  test('is the same for the same seed, and another for another', () => {
    for (const { seed, card, cause } of vehicles.slice(0, 10)) {
      const again = virtualVehicle(seed);
      expect(again.card).toEqual(card);
      expect(again.cause.id).toBe(cause.id);
    }
    const cards = new Set(vehicles.map(({ card: { context } }) => JSON.stringify(context)));
    expect(cards.size).toBeGreaterThan(55);
  });

  test('has a card that reads as a card, with answers in known checks', () => {
    for (const { card } of vehicles) {
      expect(readCards('virtual', JSON.stringify(card))).toEqual([card]);
      expect(card.answers['complaint']).toBeTypeOf('string');
      for (const check of Object.keys(card.answers)) {
        expect(noStart.chart.flow.checks, check).toHaveProperty([check]);
      }
      for (const [check, answer] of Object.entries(card.answers)) {
        const { form } = noStart.chart.flow.checks[check]!;
        if (form.kind !== 'choice') continue;
        for (const one of String(answer).split(', ')) expect(form.choices, check).toContain(one);
      }
    }
  });

  test('names faults that the flow knows, and for each a remedy and help', () => {
    const { faults } = noStart.chart.flow;
    for (const { faults: of } of causes) {
      for (const fault of of) expect(Object.keys(faults)).toContain(fault);
      expect(rightRemedies(of).length).toBeGreaterThan(0);
      expect(rightSends(of).length).toBeGreaterThan(0);
    }
    const known = new Set(causes.flatMap(({ faults: of }) => of));
    expect([...known].sort()).toEqual(Object.keys(faults).sort());
  });

  test('reads drops and currents that agree by the laws of Ohm and Kirchhoff', () => {
    let compared = 0;
    for (const { state, cause, setting } of Array.from({ length: 200 }, (_, index) =>
      virtualVehicle(index + 1),
    )) {
      if (state.attempt.outcome !== 'turning' || cause.ends !== 'none') continue;
      const { steady } = state.attempt;
      const read = (check: string): number => trueFigure(check, cause, state)?.value ?? NaN;
      const { circuit } = state;
      const amperes = read('crank-current');
      const shared = circuit.positiveClampOhm + circuit.negativeClampOhm;
      expect(
        read('drop-positive') + read('drop-ground') + read('drop-contacts') + steady.motorV,
      ).toBeCloseTo(read('battery-crank'), 6);
      expect(read('drop-ground')).toBeCloseTo(
        amperes * (circuit.groundCableOhm + circuit.negativeClampOhm),
        6,
      );
      expect(read('drop-clamps')).toBeLessThanOrEqual(amperes * shared + 1e-9);
      expect(read('battery-crank')).toBeLessThan(read('battery-rest'));
      expect(setting.isFullHybrid).toBe(false);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(30);
  });

  test('is read with its own meter: each figure within five spreads, but for a few gross errors', () => {
    let figures = 0;
    let far = 0;
    for (const { given, cause, state, meter } of vehicles) {
      for (const [check, one] of given) {
        if (one.kind !== 'reading') continue;
        const { value, spread, by } = trueFigure(check, cause, state)!;
        const own = by === 'voltmeter' ? Math.hypot(meter.gain * value, meter.offsetV) : 0;
        const clamp = by === 'clamp' ? Math.hypot(meter.clampGain * value, meter.clampOffsetA) : 0;
        figures += 1;
        if (Math.abs(one.value - value) > 5 * Math.hypot(spread, own, clamp) + one.resolution) {
          far += 1;
        }
      }
    }
    expect(figures).toBeGreaterThan(150);
    expect(far).toBeLessThan(4 * grossError * figures + 3);
  });
});

describe('how often the trade meets a cause', () => {
  const setting = (more: Partial<Setting>): Setting => ({
    ...vehicles[0]!.setting,
    ...warmCar,
    ...more,
  });
  const share = (of: Setting, fault: string): number => {
    const chances = causeChances(of);
    return causes.reduce(
      (sum, { faults }, index) =>
        faults.length === 1 && faults[0] === fault ? sum + chances[index]! : sum,
      0,
    );
  };

  test('a young battery is five times as often empty as worn (common practice)', () => {
    const young = setting({ ageA: 1.5 });
    const ratio = share(young, 'battery-discharged') / share(young, 'battery-worn');
    expect(ratio).toBeGreaterThan(4);
    expect(ratio).toBeLessThan(8);
  });

  test('batteries are three quarters of the roadside, starters a fortieth (JAF, FY2001)', () => {
    const usual = setting({ ageA: 4.5 });
    const batteries = share(usual, 'battery-discharged') + share(usual, 'battery-worn');
    expect(batteries).toBeGreaterThan(0.66);
    expect(batteries).toBeLessThan(0.84);
    const starters = share(usual, 'starter-motor') + share(usual, 'solenoid');
    expect(starters).toBeGreaterThan(0.012);
    expect(starters).toBeLessThan(0.035);
  });

  test('a workshop sees the starter three to five times and more as often', () => {
    const roadside = share(setting({}), 'starter-motor');
    const workshop = share(setting({ place: 'workshop' }), 'starter-motor');
    expect(workshop / roadside).toBeGreaterThan(3);
    expect(workshop / roadside).toBeLessThan(9);
  });
});

const warmCar: Setting = {
  role: 'mechanic',
  place: 'home',
  kit: ['voltmeter', 'helper', 'clamp-meter', 'boost-source', 'charger', 'hand-tools'],
  fuel: 'petrol',
  transmission: 'manual',
  ignition: 'key',
  nominal: 12,
  isFullHybrid: false,
  displacementL: 1.6,
  technology: 'flooded',
  ratingA: 500,
  location: 'engine-bay',
  ageA: 5,
  temperatureC: 15,
};

/** A figure as a usual meter shows it. */
function readingOf({ value, by }: TrueFigure): Given {
  const unit = by === 'voltmeter' ? 'V' : 'A';
  const resolution = unit === 'V' ? 0.01 : 1;
  return { kind: 'reading', value: Math.round(value / resolution) * resolution, resolution, unit };
}

function evidence(given: Readonly<Record<string, Given>>): Evidence {
  return {
    setting: warmCar,
    told: new Set(['displacementL', 'technology', 'ratingA', 'location', 'ageA', 'temperatureC']),
    meter: meters.usual,
    given: new Map(Object.entries(given)),
  };
}

describe('the independent posterior', () => {
  test('adds up to 1, and is the same for the same seed', () => {
    for (const { vehicle, found } of replayed.slice(0, 6)) {
      const given = new Map([...vehicle.given].filter(([check]) => found.asked.includes(check)));
      const { shares, ranking, error } = independentPosterior({ ...vehicle, given }, 5);
      expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(error).toBeLessThan(0.2);
      expect(independentPosterior({ ...vehicle, given }, 5).ranking).toEqual(ranking);
    }
  });

  test.each<[id: string, severity: number, said: readonly string[], read: readonly string[]]>([
    [
      'battery-discharged/drain',
      0,
      ['complaint=rapid-clicking', 'boost=starts'],
      ['battery-rest', 'battery-recharged', 'battery-tester'],
    ],
    [
      'battery-worn/cell',
      0,
      ['complaint=rapid-clicking', 'boost=starts'],
      ['battery-rest', 'battery-recharged'],
    ],
    [
      'battery-connection/negative',
      1,
      ['complaint=silent', 'terminals=loose', 'dash=goes-out'],
      ['battery-rest', 'battery-crank', 'drop-clamps'],
    ],
    [
      'positive-cable/far-end',
      0.5,
      ['complaint=slow-crank', 'dash=stays-bright'],
      ['battery-rest', 'battery-crank', 'drop-positive', 'drop-ground', 'drop-clamps'],
    ],
    [
      'ground-cable/far-end',
      0.5,
      ['complaint=rapid-clicking', 'dash=stays-bright'],
      ['battery-rest', 'battery-crank', 'drop-positive', 'drop-ground', 'drop-clamps'],
    ],
    [
      'engine-locked/seized',
      0,
      ['complaint=single-click', 'turn-engine=locked'],
      ['battery-rest', 'battery-crank', 'crank-current'],
    ],
    [
      'solenoid/contacts-open',
      0,
      ['complaint=single-click', 'dash=stays-bright'],
      ['battery-rest', 'control-signal', 'drop-contacts', 'crank-current'],
    ],
    [
      'position-sensor/crankshaft',
      0,
      ['complaint=normal-crank', 'rev-counter=still', 'codes=position-sensor', 'spark=absent'],
      [],
    ],
    ['steering-lock/held', 0, ['complaint=key-stuck', 'steering-wheel=frees'], []],
    [
      'starter-relay/coil',
      0,
      ['complaint=silent', 'dash=stays-bright', 'relay=silent', 'relay-swap=cranks'],
      ['relay-feed', 'relay-command'],
    ],
  ])('is all but sure of %s on its own readings', (id, severity, said, read) => {
    const cause = causes.find((one) => one.id === id)!;
    const vector = new Float64Array(hidden.length);
    vector[at.severity] = severity;
    const state = circuitState(warmCar, cause.electrics, vector);
    const answers = said.map((one) => one.split('=') as [string, string]);
    const given: Readonly<Record<string, Given>> = {
      ...Object.fromEntries(answers.map(([check, choice]) => [check, { kind: 'choice', choice }])),
      ...Object.fromEntries(
        read.map((check) => [check, readingOf(trueFigure(check, cause, state)!)]),
      ),
    };
    const { ranking } = independentPosterior(evidence(given));
    expect(ranking[0]).toEqual([cause.faults[0], expect.any(Number)]);
    expect(ranking[0]?.[1]).toBeGreaterThan(0.9);
  });

  test('knows no more than how often the trade meets a cause where nothing was answered', () => {
    const chances = causeChances(warmCar);
    const { shares } = independentPosterior(evidence({}));
    const discharged = causes.reduce(
      (sum, { faults }, index) =>
        faults.includes('battery-discharged') ? sum + chances[index]! / faults.length : sum,
      0,
    );
    expect(shares['battery-discharged']).toBeGreaterThan(discharged - 0.02);
    expect(shares['battery-discharged']).toBeLessThan(discharged + 0.02);
  });

  test("takes two readings with one meter for less than two: the meter's offset is in both", () => {
    const fit = { shown: 12.1, figure: 12, spread: 0.01, range: 14 };
    const alone = readingsLogDensity([fit], { gain: 0, offset: 0.1 }, 1e-9);
    const both = readingsLogDensity([fit, fit], { gain: 0, offset: 0.1 }, 1e-9);
    // By hand: variance 0.0101 each, covariance 0.01, so that their sum has the variance 0.0402.
    expect(alone).toBeCloseTo(-0.5 * (0.01 / 0.0101 + Math.log(0.0101 * 2 * Math.PI)), 6);
    expect(both).toBeCloseTo(
      -0.5 * (0.02 / 0.0201 + Math.log(0.0101 ** 2 - 0.01 ** 2) + 2 * Math.log(2 * Math.PI)),
      6,
    );
  });
});

describe('the shipped flow on virtual vehicles', () => {
  test('comes to a verdict on each, and crosses no hard stop', () => {
    for (const { vehicle, found } of replayed) {
      expect(found.asked.length, vehicle.card.id).toBeGreaterThan(0);
      expect(crossedStops(vehicle.card, found), vehicle.card.id).toEqual([]);
    }
  });

  test('finds the fault in at least as many as measured, less three standard errors', () => {
    const right = replayed.filter(({ vehicle, found }) =>
      vehicle.cause.faults.includes(found.fault),
    );
    // Measured over 1,000 others, seeds 30001 to 30500 and 31001 to 31500: 0.66.
    const measured = 0.66;
    const margin = 3 * Math.sqrt((measured * (1 - measured)) / replayed.length);
    expect(right.length / replayed.length).toBeGreaterThan(measured - margin);
  });
});

describe('what a verdict costs', () => {
  const truth = { faults: ['battery-connection'], role: 'driver' } as const;

  test('a wrong part is dearer than handing the vehicle on, and that than the right remedy', () => {
    const cost = (remedy: string): number =>
      outcomeOf({ remedy, send: 'technician-van', minutes: 3 }, truth).cost;
    expect(cost('clean-connection')).toBeLessThan(cost('technician-visit'));
    expect(cost('technician-visit')).toBeLessThan(cost('replace-starter'));
    expect(outcomeOf({ remedy: 'replace-starter', send: '', minutes: 3 }, truth).isWrongPart).toBe(
      true,
    );
  });

  test('a dispatcher is measured by the help that is sent', () => {
    const dispatched = { faults: ['fuel-empty'], role: 'dispatcher' } as const;
    const sent = (send: string) =>
      outcomeOf({ remedy: 'bring-fuel', send, minutes: 2 }, dispatched);
    expect(sent('fuel-van').isWrongHelp).toBe(false);
    expect(sent('boost-van').isWrongHelp).toBe(true);
    // Nothing that is done costs less than the least that is right, or handing on.
    expect(sent('fuel-van').least).toBe(sent('fuel-van').cost - 2);
    const handed = outcomeOf({ remedy: 'technician-visit', send: '', minutes: 0 }, truth);
    expect(handed.least).toBeLessThanOrEqual(handed.cost);
    expect(sent('boost-van').cost).toBeGreaterThan(sent('fuel-van').cost);
  });
});

test('a report sums what was played', () => {
  const one = (more: Partial<PlayedVehicle>): PlayedVehicle => ({
    seed: 1,
    role: 'driver',
    cause: 'fuel-empty/dry',
    faults: ['fuel-empty'],
    found: { ...usualPartFirst(vehicles[0]!), fault: 'fuel-empty', minutes: 4 },
    first: 0.95,
    ours: 0.5,
    best: { truth: 0.95, first: ['fuel-empty', 0.95], error: 0 },
    isWrongPart: false,
    isWrongHelp: false,
    least: 10,
    cost: 10,
    ...more,
  });
  const wrong = one({
    faults: ['fuel-delivery'],
    best: { truth: 0.05, first: ['fuel-empty', 0.95], error: 0 },
    isWrongPart: true,
    cost: 30,
  });
  const { all, calibration } = reportOf([one({}), one({}), one({}), wrong]);
  expect(all).toMatchObject({
    accuracy: 0.75,
    best: { accuracy: 0.75, accuracyWhereSure: 1, whereSure: 0.75 },
    minutes: 4,
    cost: 15,
    wrongParts: 0.25,
  });
  expect(all.logLoss).toBeCloseTo(Math.LN2, 9);
  expect(reportOf([one({ best: null })]).all.best).toBeNull();
  expect(calibration[9]).toEqual({ count: 4, forecast: 0.95, frequency: 0.75 });
});

test('chance follows its seed and is even', () => {
  const random = new Random(3);
  const drawn = Array.from({ length: 4000 }, () => random.uniform());
  const again = new Random(3);
  expect(drawn.slice(0, 5)).toEqual(Array.from({ length: 5 }, () => again.uniform()));
  expect(drawn.reduce((sum, one) => sum + one, 0) / 4000).toBeCloseTo(0.5, 1);
  const normals = [...random.normals(4000)];
  expect(normals.reduce((sum, one) => sum + one * one, 0) / 4000).toBeCloseTo(1, 0);
});
