/**
 * The files of a flow merged into one, every shorthand written out and every name looked up.
 */
import { deepFreeze } from './deep-freeze.ts';
import type { Costs, Flow } from './flow.ts';
import type { ConditionSource } from './flow-file.ts';
import type { Issue } from './issue.ts';
import type { LoadResult } from './load-result.ts';
import type { Place } from './place.ts';
import {
  answersOf,
  readBands,
  readCheck,
  readCovers,
  readProof,
  type CheckSource,
  type ConditionReader,
} from './read-check.ts';
import { readCondition, type Names } from './read-condition.ts';
import { readCircuit } from './read-circuit.ts';
import { readTable } from './read-evidence.ts';
import { checkReferences } from './references.ts';
import { Sections, type Entry, type ReadFile } from './sections.ts';

/** Merges files that each fit the schema. */
export function mergeFlow(files: readonly ReadFile[]): LoadResult {
  const issues: Issue[] = [];
  const sections = new Sections(files, issues);
  const checks = sections.entries('checks').map((entry) => withLike(entry, sections));
  const names = namesOf(checks, sections);
  const condition: ConditionReader = (source, place) => readCondition(source, names, place);
  const turning = sections.single('turning', false);
  const flow: Flow = {
    id: sections.single('flow', true)?.value ?? '',
    version: sections.single('version', true)?.value ?? '',
    ...readEnd(sections, condition),
    byWorth: sections.single('by-worth', false)?.value ?? [],
    stages: sections.entries('stages').map(({ id, value }) => ({ id, checks: value })),
    checks: toRecord(checks, (entry) => readCheck(entry, condition)),
    computed: toRecord(sections.entries('computed'), ({ id, value, place }) => ({
      id,
      formula: value.formula,
      unit: value.unit,
      bands: readBands(value.bands, place.in('bands')),
      ...(value.expect === undefined ? {} : { expect: value.expect }),
    })),
    interrupts: toRecord(sections.entries('interrupts'), ({ id, value }) => ({
      id,
      word: value.word,
      then: value.then,
      reopens: value.reopens ?? [],
      prove: readProof(value.prove),
    })),
    measured: toRecord(sections.entries('measured'), ({ value = '' }) => value),
    parts: readParts(sections, condition),
    mistakenTimes: sections.single('mistaken-times', false)?.value ?? {},
    commonCauses: sections.single('common-causes', false)?.value ?? [],
    ...readCosts(sections),
    ...(turning ? { turning: condition(turning.value, turning.place) } : {}),
    ...readSafety(sections, condition),
    ...readFaults(sections, condition),
    likelihoods: readLikelihoods(sections, names, condition),
    ...readCircuitOf(sections, names, condition),
  };
  checkReferences(flow, sections);
  return issues.length > 0 ? { type: 'issues', issues } : { type: 'flow', flow: deepFreeze(flow) };
}

/** Where a flow ends: at a verdict on faults, or at the line of a table that holds first. */
function readEnd(
  sections: Sections,
  condition: ConditionReader,
): Pick<Flow, 'verdictAfter' | 'decisions' | 'endsIn' | 'part'> {
  const table = sections.single('decisions', false);
  const last = sections.entries('stages').at(-1)?.id ?? '';
  const part = sections.single('part', false)?.value;
  return {
    verdictAfter:
      table === undefined ? (sections.single('verdict-after', true)?.value ?? '') : last,
    endsIn: sections.single('ends-in', false)?.value ?? 'decision',
    ...(part === undefined ? {} : { part }),
    decisions: (table?.value ?? []).map((line, index) => ({
      decide: line.decide,
      reason: line.reason,
      ...(line.says === undefined ? {} : { says: line.says }),
      again: line.again ?? [],
      voids: line.voids ?? [],
      measure: line.measure ?? [],
      besides: Object.entries(line.besides ?? {}).map(([id, when]) => ({
        id,
        when: condition(when, (table as NonNullable<typeof table>).place.in(index, 'besides', id)),
      })),
      ...(line.pays === undefined ? {} : { pays: line.pays }),
      ...(table === undefined ? {} : whenOf(line, table.place.in(index), condition)),
    })),
  };
}

function readParts(sections: Sections, condition: ConditionReader): Flow['parts'] {
  return toRecord(sections.entries('parts'), ({ value, place }) => ({
    faults: value?.faults ?? [],
    ...(value?.against ? { against: condition(value.against, place.in('against')) } : {}),
    ...(value?.elsewhere ? { elsewhere: condition(value.elsewhere, place.in('elsewhere')) } : {}),
    byHand: {
      readings: value?.['by-hand']?.readings ?? [],
      complaint: value?.['by-hand']?.complaint ?? {},
    },
  }));
}

function namesOf(checks: readonly Entry<CheckSource>[], sections: Sections): Names {
  return {
    answers: new Map<string, readonly string[]>([
      ...checks.map(({ id, value }) => [id, answersOf(value)] as const),
      ...sections
        .entries('computed')
        .map(({ id, value }) => [id, Object.keys(value.bands)] as const),
    ]),
    readings: new Set([
      ...checks.filter(({ value }) => value.reading !== undefined).map(({ id }) => id),
      ...sections.entries('computed').map(({ id }) => id),
    ]),
    interrupts: new Set(sections.entries('interrupts').map(({ id }) => id)),
  };
}

function readCosts(sections: Sections): Pick<Flow, 'costs'> {
  const costs = sections.single('costs', false)?.value;
  if (costs === undefined) return {};
  const { source, setups, remedies, sends, 'wrong-times': wrongTimes = {} } = costs;
  const acting = (given: typeof remedies): Costs['remedies'] =>
    Object.fromEntries(
      Object.entries(given).map(([id, { cost, wrong, always = false }]) => [
        id,
        { cost, wrong, always },
      ]),
    );
  return {
    costs: { source, setups, remedies: acting(remedies), sends: acting(sends), wrongTimes },
  };
}

function readSafety(
  sections: Sections,
  condition: ConditionReader,
): Pick<Flow, 'cautions' | 'stops'> {
  return {
    cautions: toRecord(sections.entries('cautions'), ({ id, value, place }) => ({
      id,
      word: value.word,
      confirm: value.confirm,
      before: value.before === undefined ? [] : readCovers(value.before),
      ...whenOf(value, place, condition),
    })),
    stops: sections.entries('stops').map(({ id, value, place }) => ({
      id,
      when: condition(value.when, place.in('when')),
      forbids: readCovers(value.forbids),
      except: value.except ?? [],
      remembered: value.remembered ?? [],
      ...(value.instead ? { instead: value.instead } : {}),
    })),
  };
}

function readFaults(
  sections: Sections,
  condition: ConditionReader,
): Pick<Flow, 'faults' | 'roots' | 'priors'> {
  return {
    faults: toRecord(sections.entries('faults'), ({ id, value, place }) => ({
      id,
      best: value.best,
      proofs: [value.proof ?? []]
        .flat()
        .map((proof, index) =>
          condition(proof, place.in('proof', ...(Array.isArray(value.proof) ? [index] : []))),
        ),
      remedies:
        typeof value.remedy === 'string'
          ? [{ remedy: value.remedy, does: [] }]
          : value.remedy.map((remedy, index) => ({
              remedy: remedy.do,
              does: remedy.does ?? [],
              ...(remedy.from === undefined ? {} : { from: remedy.from }),
              ...(remedy.send === undefined ? {} : { send: remedy.send }),
              ...(remedy.prove === undefined ? {} : { prove: readProof(remedy.prove) }),
              ...whenOf(remedy, place.in('remedy', index), condition),
            })),
      send: value.send,
      cautions: value.cautions ?? [],
      prove: readProof(value.prove),
      licensed: value.licensed ?? false,
    })),
    roots: sections.entries('roots').map(({ id, value, place }) => ({
      id,
      faults: value.faults,
      when: condition(value.when, place.in('when')),
    })),
    priors: toRecord(sections.entries('priors'), ({ value, place }) => ({
      weight: value.weight,
      source: value.source,
      factors: (value.times ?? []).map((factor, index) => ({
        when: condition(factor.when, place.in('times', index, 'when')),
        times: factor.by,
      })),
    })),
  };
}

function readCircuitOf(
  sections: Sections,
  names: Names,
  condition: ConditionReader,
): Pick<Flow, 'circuit'> {
  const circuit = sections.single('circuit', false);
  if (circuit === undefined) return {};
  return {
    circuit: readCircuit(
      circuit.value,
      {
        faults: sections.entries('faults').map(({ id }) => id),
        groups: toRecord(sections.entries('groups'), ({ value }) => value),
        answers: names.answers,
        readings: names.readings,
      },
      { place: circuit.place, condition },
    ),
  };
}

function readLikelihoods(
  sections: Sections,
  names: Names,
  condition: ConditionReader,
): Flow['likelihoods'] {
  const faults = sections.entries('faults').map(({ id }) => id);
  const groups = toRecord(sections.entries('groups'), ({ value }) => value);
  const several = new Set(
    sections
      .entries('checks')
      .filter(({ value }) => value.choices !== undefined)
      .map(({ id }) => id),
  );
  const circuit = sections.single('circuit', false)?.value;
  const ofCircuit = new Set([
    ...Object.keys(circuit?.readings ?? {}),
    ...Object.keys(circuit?.choices ?? {}),
  ]);
  return toRecord(sections.entries('likelihoods'), ({ id, value, place }) => {
    if (!names.answers.has(id)) place.tell('unknown-id', 'a check of the flow', { onKey: true });
    const answers = names.answers.get(id) ?? [];
    return value.map((table, index) =>
      readTable(
        table,
        { faults, groups, answers, several: several.has(id), circuit: ofCircuit.has(id) },
        { place: place.in(index), condition },
      ),
    );
  });
}

function whenOf(
  source: { readonly when?: ConditionSource | undefined },
  place: Place,
  condition: ConditionReader,
): { readonly when?: ReturnType<ConditionReader> } {
  return source.when ? { when: condition(source.when, place.in('when')) } : {};
}

/** Fills in what a check shares with the check that it is `like`: all but when it is asked. */
function withLike(entry: Entry<CheckSource>, sections: Sections): Entry<CheckSource> {
  const { like } = entry.value;
  if (like === undefined) return entry;
  const base = sections.entries('checks').find(({ id }) => id === like);
  if (base === undefined || base.value.like !== undefined) {
    entry.place.in('like').tell('unknown-id', 'a check that is itself like no other');
    return entry;
  }
  const { when: _when, requires: _requires, again: _again, after: _after, ...shared } = base.value;
  return { ...entry, value: { ...shared, ...entry.value } };
}

function toRecord<Value, Result>(
  entries: readonly Entry<Value>[],
  read: (entry: Entry<Value>) => Result,
): Readonly<Record<string, Result>> {
  // Without a prototype, so that no id is found which every object has.
  const record = Object.create(null) as Record<string, Result>;
  for (const entry of entries) record[entry.id] = read(entry);
  return record;
}
