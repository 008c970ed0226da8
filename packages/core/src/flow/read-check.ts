/**
 * A check as written in a flow file, turned into data.
 */
import type { SaleTerm } from '../policy/sale-terms.ts';
import type { AnswerForm, BandEnd, Check, Cover } from './flow.ts';
import type { ConditionSource, FlowFile } from './flow-file.ts';
import { expectName, type Place } from './place.ts';
import type { Entry } from './sections.ts';
import type { Condition } from './condition.ts';

/** A check as its file has it. */
export type CheckSource = NonNullable<FlowFile['checks']>[string];

/** Reads a condition that stands at a place. */
export type ConditionReader = (source: ConditionSource, place: Place) => Condition;

/** The answers that a check may be given: choices, band ids, or `done`. */
export function answersOf(source: CheckSource): readonly string[] {
  const bands = source.bands ?? source.date;
  return source.choice ?? source.choices ?? (bands ? Object.keys(bands) : ['done']);
}

/** Reads one check; `source` already holds what it shares with the check it is `like`. */
export function readCheck(
  { id, value: source, place }: Entry<CheckSource>,
  readCondition: ConditionReader,
): Check {
  for (const required of ['at', 'minutes'] as const) {
    if (source[required] === undefined) {
      place.tell('missing', `the property ${required}`, { value: '' });
    }
  }
  const answers = { names: answersOf(source), what: 'an answer of this check' };
  for (const [index, answer] of (source.again ?? []).entries()) {
    expectName(answer, answers, place.in('again', index));
  }
  for (const answer of Object.keys(source.sets ?? {})) {
    expectName(answer, { ...answers, onKey: true }, place.in('sets', answer));
  }
  for (const [index, band] of (source['settled-in-time'] ?? []).entries()) {
    expectName(band, answers, place.in('settled-in-time', index));
  }
  if (source.good !== undefined) expectName(source.good, answers, place.in('good'));
  if (source.usual !== undefined) expectName(source.usual, answers, place.in('usual'));
  for (const [lamp, band] of Object.entries(source.lamp ?? {})) {
    expectName(band, answers, place.in('lamp', lamp));
  }
  return {
    id,
    form: formOf(source, place),
    at: source.at ?? 'memory',
    needs: (source.needs ?? []).map((need) => need.split(' or ')),
    minutes: source.minutes ?? 0,
    does: source.does ?? [],
    again: source.again ?? [],
    after: source.after ?? [],
    sets: source.sets ?? {},
    lapses: source.lapses ?? false,
    ...(source.probes ? { probes: source.probes } : {}),
    ...(source.when ? { when: readCondition(source.when, place.in('when')) } : {}),
    ...(source.requires ? { requires: readCondition(source.requires, place.in('requires')) } : {}),
    ...(source.wait ? { waitMinutes: source.wait.minutes } : {}),
    ...(source.writes === undefined ? {} : { writes: source.writes }),
    ...(source.like === undefined ? {} : { like: source.like }),
  };
}

/** Bands as an ascending list; told when the last is not open or numbers do not ascend. */
export function readBands<End extends BandEnd | SaleTerm>(
  source: Readonly<Record<string, End>>,
  place: Place,
): readonly { readonly id: string; readonly to: End }[] {
  const bands = Object.entries(source).map(([id, to]) => ({ id, to }));
  for (const [index, band] of bands.entries()) {
    const last = index === bands.length - 1;
    if ((band.to === 'above') !== last) {
      place
        .in(band.id)
        .tell(
          'bad-bands',
          last ? 'above, for the last band' : 'an upper bound; only the last band is above',
        );
    }
    const before = bands[index - 1]?.to;
    if (typeof band.to === 'number' && typeof before === 'number' && band.to <= before) {
      place.in(band.id).tell('bad-bands', `more than ${String(before)}, the bound before it`);
    }
  }
  return bands;
}

function formOf(source: CheckSource, place: Place): AnswerForm {
  const given = [source.choice, source.choices, source.reading, source.date, source.work].filter(
    (form) => form !== undefined,
  );
  if (given.length !== 1) {
    place.tell('wrong-shape', 'exactly one of: choice, choices, reading, date, work');
  }
  if (source.reading !== undefined) {
    for (const required of ['bands', 'range'] as const) {
      if (source[required] === undefined) {
        place.tell('missing', `the property ${required}, as it is a reading`, { value: '' });
      }
    }
    return {
      kind: 'reading',
      unit: source.reading,
      bands: readBands(source.bands ?? {}, place.in('bands')),
      lamp: source.lamp ?? {},
      range: source.range ?? 'battery-voltage',
      ...(source.expect === undefined ? {} : { expect: source.expect }),
      settledBy: source['settled-by'] ?? [],
      settledInTime: source['settled-in-time'] ?? [],
      ...(source.good === undefined ? {} : { good: source.good }),
      ...(source['upper-spread'] === undefined ? {} : { upperSpread: source['upper-spread'] }),
    };
  }
  if (source.date !== undefined) {
    return { kind: 'date', bands: readBands(source.date, place.in('date')) };
  }
  if (source.work !== undefined) return { kind: 'work' };
  return {
    kind: 'choice',
    choices: source.choice ?? source.choices ?? [],
    several: source.choices !== undefined,
    ...(source.usual === undefined ? {} : { usual: source.usual }),
  };
}

type CoverSource = NonNullable<NonNullable<FlowFile['cautions']>[string]['before']>;

/** Which checks a caution or a stop covers. */
export function readCovers(source: CoverSource): readonly Cover[] {
  if (source === 'everything') return [{}];
  return [source].flat().map((cover) => ({
    ...(cover.does === undefined ? {} : { does: [cover.does].flat() }),
    ...(cover.checks === undefined ? {} : { checks: [cover.checks].flat() }),
    ...(cover.at === undefined ? {} : { at: [cover.at].flat() }),
  }));
}

type ProofSource = NonNullable<FlowFile['faults']>[string]['prove'];

/** The checks that prove a repair, each with a list of answers that count as good. */
export function readProof(source: ProofSource): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(
    Object.entries(source ?? {}).map(([check, good]) => [check, [good].flat()]),
  );
}
