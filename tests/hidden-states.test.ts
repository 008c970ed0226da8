/**
 * Readings and signs that hang on one circuit, judged together: what the trade would say of them.
 * Figures of each case are common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { answers, open, take, type Answers } from './support/play.ts';

const petrol = {
  vehicle: {
    fuel: 'petrol',
    transmission: 'manual',
    ignition: 'key',
    nominal: 12,
    displacement: 1.6,
  },
  temperature: 20,
  role: 'mechanic',
  place: 'home',
  kit: ['voltmeter', 'clamp-meter', 'helper', 'hand-tools'],
};

/** How likely a fault is after these answers; 0 where it is not worth showing. */
function likely(fault: string, given: Answers, context: Record<string, unknown> = petrol): number {
  const { leaders } = take(open(context), answers({ scene: 'safe', ...given })).case.state;
  return leaders.find(([id]) => id === fault)?.[1] ?? 0;
}

/** The fault that leads after these answers. */
function leader(given: Answers, context: Record<string, unknown> = petrol): string {
  const { leaders } = take(open(context), answers({ scene: 'safe', ...given })).case.state;
  return leaders[0]?.[0] ?? '';
}

const slow = { complaint: 'slow-crank', when: 'after-standing', history: 'none' } as const;

describe('a battery', () => {
  test('that rests charged, sags, and gives little current has too much resistance: it is worn', () => {
    const found = { ...slow, 'battery-rest': 12.5, 'battery-crank': 9, 'crank-current': 140 };
    expect(leader(found)).toBe('battery-worn');
    expect(likely('battery-worn', found)).toBeGreaterThan(0.8);
  });

  test('that rests half charged is worn where current and voltage tell a resistance beyond that', () => {
    // 12.25 V is half of the charge; 3.5 V lost at 130 A are 27 mOhm, several times a sound battery.
    const found = { ...slow, 'battery-rest': 12.25, 'battery-crank': 8.75, 'crank-current': 130 };
    expect(likely('battery-worn', found)).toBeGreaterThan(likely('battery-discharged', found));
  });

  test('that rests near empty and sags is discharged', () => {
    const found = {
      complaint: 'rapid-clicking',
      when: 'after-standing',
      history: 'lights-left-on',
      dash: 'goes-out',
      'battery-rest': 11.8,
    } as const;
    expect(leader(found)).toBe('battery-discharged');
  });

  test('at 10.5 V after standing has a dead cell rather than no charge; at 8 V it is empty', () => {
    const at = (volts: number) => ({
      complaint: 'rapid-clicking',
      when: 'after-standing',
      history: 'none',
      dash: 'dim',
      'battery-rest': volts,
    });
    expect(leader(at(10.5))).toBe('battery-worn');
    expect(leader({ ...at(8), complaint: 'silent' })).toBe('battery-discharged');
  });

  test('that was not charged is not condemned by a tester alone', () => {
    const kit = [...petrol.kit, 'electronic-tester'];
    const vehicle = { ...petrol.vehicle, battery: { rating: 560, standard: 'sae' } };
    const found = { complaint: 'rapid-clicking', history: 'parked-long', dash: 'goes-out' };
    const context = { ...petrol, kit, vehicle };
    const flat = { ...found, 'battery-rest': 11.9, 'battery-tester': 230 };
    expect(leader(flat, context)).toBe('battery-discharged');
    // The same figure once it has been charged fully speaks for wear.
    expect(leader({ ...flat, 'battery-recharged': 12.68 }, context)).toBe('battery-worn');
  });

  test('pulled down by twice the usual current is not the fault', () => {
    const found = { ...slow, 'battery-rest': 12.6, 'battery-crank': 9.9, 'crank-current': 380 };
    expect(likely('battery-worn', found) + likely('battery-discharged', found)).toBeLessThan(0.2);
  });
});

describe('where the volts go', () => {
  test('a good battery that still clicks, with lamps going out, has a bad joint at its posts', () => {
    const found = {
      complaint: 'rapid-clicking',
      when: 'comes-and-goes',
      history: 'none',
      dash: 'goes-out',
      'battery-rest': 12.65,
      'battery-crank': 12.1,
    } as const;
    expect(leader(found)).toBe('battery-connection');
  });

  test('readings taken while the solenoid chatters are means, and do not blame the contacts', () => {
    const found = {
      complaint: 'rapid-clicking',
      history: 'lights-left-on',
      dash: 'goes-out',
      'battery-rest': 11.85,
      'battery-crank': 7.2,
      'drop-contacts': 3.1,
    } as const;
    expect(likely('battery-discharged', found)).toBeGreaterThan(0.6);
    expect(likely('solenoid', found)).toBeLessThan(0.1);
  });

  test('0.12 V at a clamp is a sound joint at 400 A and a bad one at 40 A', () => {
    const at = (current: number) => ({
      ...slow,
      'battery-rest': 12.6,
      'crank-current': current,
      'drop-clamps': 0.12,
    });
    expect(likely('battery-connection', at(380))).toBeLessThan(0.03);
    expect(likely('battery-connection', at(380))).toBeLessThan(
      likely('battery-connection', at(40)),
    );
  });

  test('a drop is judged by the current that was measured', () => {
    const base = {
      ...slow,
      'battery-rest': 12.6,
      dash: 'stays-bright',
      'drop-clamps': 0.01,
    } as const;
    const found = { ...base, 'battery-crank': 11.6, 'crank-current': 90, 'drop-positive': 2.4 };
    expect(leader(found)).toBe('positive-cable');
  });
});

describe('sound circuits', () => {
  test('in deep frost turn a cold engine slowly: what burns may be at fault all the same', () => {
    const given = { complaint: 'slow-crank', when: 'after-standing', history: 'none' };
    const running = ['fuel-empty', 'fuel-delivery', 'ignition-spark', 'flooded-engine'];
    const share = (temperature: number) =>
      running.reduce((sum, id) => sum + likely(id, given, { ...petrol, temperature }), 0);
    expect(share(-20)).toBeGreaterThan(2 * share(20));
  });

  test('dark brake lamps prove nothing on a flat battery', () => {
    const context = { ...petrol, vehicle: { ...petrol.vehicle, ignition: 'button' } };
    const given = { complaint: 'silent', history: 'parked-long', 'brake-lamps': 'dark' } as const;
    expect(leader({ ...given, dash: 'off' }, context)).not.toBe('brake-switch');
    const found = take(open(context), answers({ scene: 'safe', ...given, dash: 'stays-bright' }))
      .case.state;
    expect(found.verdict?.strength).not.toBe('proved');
  });

  test('a full hybrid with a flat 12 V battery is no drive that refuses', () => {
    const vehicle = {
      fuel: 'petrol',
      ignition: 'button',
      transmission: 'automatic',
      hybrid: 'full',
    };
    const given = {
      complaint: 'silent',
      history: 'parked-long',
      dash: 'dim',
      'battery-rest': 10.9,
    };
    const context = { ...petrol, vehicle };
    expect(leader(given, context)).toBe('battery-discharged');
    expect(likely('hybrid-not-ready', given, context)).toBeLessThan(0.05);
  });

  test('a second key that starts what starts now and then proves no fob', () => {
    const context = { ...petrol, kit: ['second-key'] };
    const given = { complaint: 'silent', when: 'comes-and-goes', 'other-key': 'starts' } as const;
    const { verdict } = take(open(context), answers({ scene: 'safe', ...given })).case.state;
    expect(verdict?.strength).not.toBe('proved');
  });
});

describe('what is believed', () => {
  const found = {
    complaint: 'slow-crank',
    dash: 'dim',
    'battery-rest': 12.31,
    'battery-crank': 9.1,
    'crank-current': 170,
    'drop-positive': 0.21,
  } as const;
  const entries = Object.entries(found);
  const after = (given: Answers) =>
    take(open(petrol), answers({ scene: 'safe', ...given })).case.state;

  test('is the same whatever the order of the answers', () => {
    const forth = after(found).leaders;
    const back = after(Object.fromEntries(entries.toReversed())).leaders;
    for (const [fault, share] of forth) {
      expect(Math.abs(share - (back.find(([id]) => id === fault)?.[1] ?? 0))).toBeLessThan(1e-12);
    }
  });

  test('is what it was, exactly, once a reading is taken back', () => {
    const before = after(Object.fromEntries(entries.slice(0, -1)));
    const undone = take(
      open(petrol),
      answers({ scene: 'safe', ...Object.fromEntries(entries.slice(0, -1)) }),
      answers({ 'drop-positive': 0.21 }),
      { type: 'talk', talk: 'back' },
    ).case.state;
    expect(undone.leaders).toEqual(before.leaders);
  });

  test('of instruments and head lamps, which dim by one cause, is not counted twice', () => {
    const heard = { complaint: 'slow-crank' } as const;
    const battery = (given: Answers): number => {
      const share = likely('battery-worn', given) + likely('battery-discharged', given);
      return share / (1 - share);
    };
    const none = battery(heard);
    const one = battery({ ...heard, dash: 'dim' }) / none;
    const other = battery({ ...heard, headlamps: 'dim' }) / none;
    const both = battery({ ...heard, dash: 'dim', headlamps: 'dim' }) / none;
    expect(both).toBeGreaterThan(Math.max(one, other) * 0.99);
    expect(both).toBeLessThan(0.8 * one * other);
  });
});
