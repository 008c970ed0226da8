/**
 * What stands around a virtual case: vehicle, weather, place, person and kit. All shares here are
 * common practice, no source.
 */
import type { Random } from './random.ts';

export type Role = 'driver' | 'dispatcher' | 'mechanic';
type Place = 'shoulder' | 'parking' | 'home' | 'workshop';
export type Technology = 'flooded' | 'efb' | 'agm';

export type Setting = {
  readonly role: Role;
  readonly place: Place;
  readonly kit: readonly string[];
  readonly fuel: 'petrol' | 'diesel';
  readonly transmission: 'manual' | 'automatic';
  readonly ignition: 'key' | 'button';
  readonly nominal: 12 | 24;
  readonly isFullHybrid: boolean;
  readonly displacementL: number;
  readonly technology: Technology;
  readonly ratingA: number;
  readonly location: 'engine-bay' | 'boot';
  readonly ageA: number;
  readonly temperatureC: number;
};

/** The figures of a setting that may not have been told. */
export type Untold =
  'displacementL' | 'technology' | 'ratingA' | 'location' | 'ageA' | 'temperatureC';

const kits: Readonly<Record<Role, Readonly<Record<string, number>>>> = {
  driver: {
    voltmeter: 0.18,
    'test-lamp': 0.06,
    'boost-source': 0.35,
    charger: 0.15,
    'code-reader': 0.08,
    'second-key': 0.35,
    helper: 0.45,
    'hand-tools': 0.2,
  },
  dispatcher: { helper: 0.35, 'boost-source': 0.1, 'second-key': 0.2 },
  mechanic: {
    voltmeter: 0.97,
    'test-lamp': 0.6,
    'clamp-meter': 0.5,
    'load-tester': 0.3,
    'electronic-tester': 0.55,
    'boost-source': 0.85,
    charger: 0.35,
    'code-reader': 0.7,
    'second-key': 0.2,
    helper: 0.75,
    'hand-tools': 0.95,
  },
};

const places: Readonly<Record<Role, Readonly<Record<Place, number>>>> = {
  driver: { shoulder: 0.1, parking: 0.35, home: 0.53, workshop: 0.02 },
  dispatcher: { shoulder: 0.18, parking: 0.37, home: 0.45, workshop: 0 },
  mechanic: { shoulder: 0.06, parking: 0.24, home: 0.25, workshop: 0.45 },
};

/** Figures that may not have been told, in the order of the standard normals that decide them. */
export const untold: readonly Untold[] = [
  'displacementL',
  'technology',
  'ratingA',
  'location',
  'ageA',
  'temperatureC',
];

/** How likely a standard normal lies below a value, to 1e-7 (Abramowitz and Stegun 26.2.17). */
function normalShare(value: number): number {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(value));
  const tail =
    Math.exp(-0.5 * value * value) *
    0.398_942_28 *
    t *
    (0.319_381_53 +
      t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  return value < 0 ? tail : 1 - tail;
}

function displacementOf(known: Pick<Setting, 'fuel' | 'nominal'>, share: number): number {
  if (known.nominal === 24) return 4 + 9 * share;
  const few = known.fuel === 'diesel' ? 0.9 : 0.85;
  // The few large ones are the upper end.
  const within = share < few ? share / few : (share - few) / (1 - few);
  if (known.fuel === 'diesel') return share < few ? 1.5 + 0.9 * within ** 1.5 : 2.4 + 2.6 * within;
  return share < few ? 1 + 1.2 * within : 2.2 + 1.4 * within;
}

/** Rating of the battery usually fitted, A. */
export function usualRating({
  fuel,
  nominal,
  displacementL,
}: Pick<Setting, 'fuel' | 'nominal' | 'displacementL'>): number {
  if (nominal === 24) return 1000;
  return fuel === 'diesel' ? 400 + 165 * displacementL : 280 + 140 * displacementL;
}

/** The figures that so many standard normals decide. */
export function figuresFrom(
  known: Pick<Setting, 'fuel' | 'nominal'>,
  normals: Float64Array,
): Pick<Setting, Untold> {
  const [size, kind, rating, place, age, warmth] = normals as unknown as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const displacementL = Number(displacementOf(known, normalShare(size)).toFixed(1));
  const share = normalShare(kind);
  const usual = usualRating({ ...known, displacementL });
  return {
    displacementL,
    technology: share < 0.6 ? 'flooded' : share < 0.8 ? 'efb' : 'agm',
    ratingA: 10 * Math.round((usual * Math.exp(0.12 * rating)) / 10),
    location: normalShare(place) < 0.12 ? 'boot' : 'engine-bay',
    ageA: Number(Math.min(14, 4.2 * Math.exp(0.65 * age)).toFixed(1)),
    temperatureC: Math.round(Math.max(-28, Math.min(38, 9 + 10 * warmth))),
  };
}

/** Draws a setting. */
export function drawSetting(random: Random): Setting {
  const role = random.pick<Role>({ driver: 0.4, dispatcher: 0.2, mechanic: 0.4 });
  const place = random.pick(places[role]);
  const kit = Object.entries(kits[role]).flatMap(([tool, share]) =>
    random.happens(place === 'workshop' && role === 'mechanic' ? Math.sqrt(share) : share)
      ? [tool]
      : [],
  );
  const nominal = random.happens(0.03) ? 24 : 12;
  const isFullHybrid = nominal === 12 && random.happens(0.05);
  const fuel = nominal === 24 || (!isFullHybrid && random.happens(0.38)) ? 'diesel' : 'petrol';
  return {
    role,
    place,
    kit,
    fuel,
    nominal,
    isFullHybrid,
    transmission: isFullHybrid || random.happens(0.4) ? 'automatic' : 'manual',
    ignition: isFullHybrid || (nominal === 12 && random.happens(0.35)) ? 'button' : 'key',
    ...figuresFrom({ fuel, nominal }, random.normals(untold.length)),
  };
}

/** Which of the figures this person tells at the start. */
export function drawTold(setting: Setting, random: Random): ReadonlySet<Untold> {
  const isMechanic = setting.role === 'mechanic';
  const shares: Readonly<Record<Untold, number>> = {
    displacementL: 0.75,
    technology: isMechanic ? 0.8 : 0.15,
    ratingA: isMechanic ? 0.8 : 0.12,
    location: isMechanic ? 0.9 : 0.4,
    // The age is a question of the flow as well; telling it at once is rare.
    ageA: isMechanic ? 0.25 : 0.1,
    temperatureC: 0.9,
  };
  return new Set(
    (Object.keys(shares) as Untold[]).filter((figure) => random.happens(shares[figure])),
  );
}

/** The setting as a case's context, in the form of a case card. */
export function contextOf(
  setting: Setting,
  told: ReadonlySet<Untold>,
): Readonly<Record<string, unknown>> {
  const { ageA, ratingA, technology, location, displacementL, temperatureC } = setting;
  const battery = {
    ...(told.has('technology') ? { technology } : {}),
    ...(told.has('ratingA') ? { rating: ratingA, standard: 'sae' } : {}),
    ...(told.has('ageA') ? { age: ageA } : {}),
    ...(told.has('location') ? { location } : {}),
  };
  return {
    role: setting.role,
    place: setting.place,
    kit: [...setting.kit],
    ...(told.has('temperatureC') ? { temperature: { value: temperatureC, unit: 'Cel' } } : {}),
    vehicle: {
      fuel: setting.fuel,
      transmission: setting.transmission,
      ignition: setting.ignition,
      nominal: setting.nominal,
      hybrid: setting.isFullHybrid ? 'full' : 'none',
      ...(told.has('displacementL') ? { displacement: displacementL } : {}),
      battery,
    },
  };
}
