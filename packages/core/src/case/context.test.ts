import { describe, expect, test } from 'vitest';
import { contextFields, readContext, type ContextFault } from './context.ts';

function taken(given: Readonly<Record<string, unknown>>): unknown {
  const read = readContext(given);
  return read.type === 'context' ? read.context : read.faults;
}

describe('a context', () => {
  test('is the same nested and by dotted path', () => {
    const flat = {
      'vehicle.fuel': 'diesel',
      'vehicle.battery.technology': 'agm',
      'vehicle.startStop': false,
      kit: ['voltmeter', 'helper'],
    };
    expect(taken(flat)).toEqual(flat);
    expect(
      taken({
        vehicle: { fuel: 'diesel', battery: { technology: 'agm' }, startStop: false },
        kit: ['voltmeter', 'helper'],
      }),
    ).toEqual(flat);
    expect(taken({ vehicle: { fuel: 'diesel', 'battery.technology': 'agm' } })).toEqual({
      'vehicle.fuel': 'diesel',
      'vehicle.battery.technology': 'agm',
    });
  });

  test('may be empty, and may leave out what is not known', () => {
    expect(taken({})).toEqual({});
    expect(taken({ vehicle: {}, temperature: undefined })).toEqual({});
  });

  test.each([
    ['a number in the field’s own unit', { temperature: -12 }, { temperature: -12 }],
    ['degrees Fahrenheit', { temperature: { value: 14, unit: '[degF]' } }, { temperature: -10 }],
    [
      'months, in years',
      { vehicle: { battery: { age: { value: 30, unit: 'mo' } } } },
      { 'vehicle.battery.age': 2.5 },
    ],
    [
      'amperes',
      { 'vehicle.battery.rating': { value: 600, unit: 'A' } },
      { 'vehicle.battery.rating': 600 },
    ],
  ])('takes %s', (_, given, expected) => {
    const read = taken(given) as Record<string, number>;
    expect(Object.keys(read)).toEqual(Object.keys(expected));
    for (const [path, value] of Object.entries(expected)) expect(read[path]).toBeCloseTo(value, 9);
  });

  test('takes an item of the kit once', () => {
    expect(taken({ kit: ['helper', 'helper'] })).toEqual({ kit: ['helper'] });
  });

  test('keeps the owner’s own notes, text and figure', () => {
    const notes = { vehicle: { notes: { relay: 'left of the glove box', expectedCurrent: 180 } } };
    expect(taken(notes)).toEqual({
      'vehicle.notes.relay': 'left of the glove box',
      'vehicle.notes.expectedCurrent': 180,
    });
  });

  test('drops what is personal, without complaint', () => {
    const personal = Object.entries(contextFields).flatMap(([path, { kind }]) =>
      kind === 'personal' ? [path] : [],
    );
    expect(personal).toEqual(['callback', 'where', 'rolls', 'access', 'trailer', 'people']);
    const given = Object.fromEntries(personal.map((path) => [path, '07700 900123']));
    expect(taken({ ...given, place: 'shoulder' })).toEqual({ place: 'shoulder' });
  });
});

describe('what is no context', () => {
  test.each<readonly [string, Record<string, unknown>, Partial<ContextFault>]>([
    ['a field that is none', { colour: 'red' }, { path: 'colour', given: 'red' }],
    [
      'a nested field that is none',
      { vehicle: { wheels: 4 } },
      { path: 'vehicle.wheels', given: 4 },
    ],
    [
      'a value that the field has not',
      { place: 'moon' },
      {
        path: 'place',
        given: 'moon',
        possible: ['live-lane', 'shoulder', 'parking', 'home', 'workshop'],
      },
    ],
    [
      'a number written as text',
      { 'vehicle.nominal': '24' },
      { path: 'vehicle.nominal', possible: ['12', '24'] },
    ],
    [
      'a temperature of no place on earth',
      { temperature: 71 },
      { path: 'temperature', possible: ['-60 to 70 Cel'] },
    ],
    ['a temperature that is none', { temperature: NaN }, { path: 'temperature' }],
    ['a figure in a unit of something else', { temperature: { value: 3, unit: 'V' } }, {}],
    ['a figure in a unit that is none', { temperature: { value: 3, unit: 'furlong' } }, {}],
    ['a figure without a unit', { temperature: { value: 3 } }, {}],
    ['a kit that is no list', { kit: 'voltmeter' }, { path: 'kit' }],
    ['a kit with an item that is none', { kit: ['voltmeter', 'anvil'] }, { path: 'kit' }],
    [
      'a yes in place of a boolean',
      { vehicle: { startStop: 'yes' } },
      { path: 'vehicle.startStop', possible: ['true', 'false'] },
    ],
    ['a note without end', { vehicle: { notes: 'x'.repeat(501) } }, { path: 'vehicle.notes' }],
    ['nothing where a value is due', { place: null }, { path: 'place', given: null }],
    ['a name that every object has', { constructor: 1 }, { path: 'constructor' }],
  ])('%s', (_, given, fault) => {
    const read = readContext(given);
    expect(read.type).toBe('faults');
    expect(read.type === 'faults' ? read.faults : []).toMatchObject([fault]);
  });

  test('is told whole', () => {
    const read = readContext({ place: 'moon', role: 'pilot', kit: ['helper'] });
    expect(read.type === 'faults' ? read.faults.map(({ path }) => path) : []).toEqual([
      'place',
      'role',
    ]);
  });
});
