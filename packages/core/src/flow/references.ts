/**
 * Names in a flow that must exist, and definitions that must be used.
 */
import { contextFields } from '../case/context.ts';
import type { Cover, Flow } from './flow.ts';
import type { ReadFile, Sections } from './merge.ts';
import { optionsOf } from './options-of.ts';
import type { Report } from './report.ts';
import type { Path } from './source-file.ts';

/** Tells every name that nothing defines and every definition that nothing uses. */
export function checkReferences(flow: Flow, sections: Sections, files: readonly ReadFile[]): void {
  const checks = Object.keys(flow.checks);
  const answers = [...checks, ...Object.keys(flow.computed)];
  const cautions = Object.keys(flow.cautions);
  const faults = Object.keys(flow.faults);

  const staged = new Map<string, string>();
  for (const { value, at, report, id } of sections.entries('stages')) {
    for (const [index, check] of value.entries()) {
      expect(check, checks, 'a check of the flow', report, [...at, index]);
      const other = staged.get(check);
      if (other !== undefined)
        report('twice', [...at, index], `${check} in one stage only, it is in ${other}`);
      staged.set(check, id);
    }
  }
  for (const { id, value, at, report } of sections.entries('checks')) {
    if (!staged.has(id)) report('unused', at, 'a check that some stage asks', { onKey: true });
    for (const [choice, patch] of Object.entries(value.sets ?? {})) {
      for (const path of Object.keys(patch))
        expectPath(path, report, [...at, 'sets', choice, path]);
    }
    if (value.writes !== undefined) expectPath(value.writes, report, [...at, 'writes']);
  }
  for (const { id, value, at, report } of sections.entries('cautions')) {
    expectCover(flow.cautions[id]?.before ?? [], checks, report, [...at, 'before']);
    const said = Object.values(flow.faults).some((fault) => fault.cautions.includes(id));
    if (value.before === undefined && !said) {
      report('unused', at, 'a caution that covers checks or goes with a remedy', { onKey: true });
    }
  }
  for (const [index, { at, report, value }] of sections.entries('stops').entries()) {
    expectCover(flow.stops[index]?.forbids ?? [], checks, report, [...at, 'forbids']);
    for (const list of ['except', 'remembered'] as const) {
      for (const [position, check] of (value[list] ?? []).entries()) {
        expect(check, checks, 'a check of the flow', report, [...at, list, position]);
      }
    }
  }
  for (const { id, value, at, report } of sections.entries('faults')) {
    value.cautions?.forEach((caution, index) => {
      expect(caution, cautions, 'a caution of the flow', report, [...at, 'cautions', index]);
    });
    expectProof(value.prove ?? {}, flow, report, [...at, 'prove']);
    if (flow.priors[id] === undefined) {
      report('missing', at, `a prior for ${id}`, { onKey: true, value: '' });
    }
    if (value.best === 'proved' && value.proof === undefined) {
      report('missing', at, 'a proof, since it can be proved', { value: '' });
    }
    if (value.best !== 'proved' && value.proof !== undefined) {
      report('wrong-shape', [...at, 'proof'], `no proof, since it is ${value.best} at best`);
    }
  }
  for (const { value, at, report } of sections.entries('interrupts')) {
    expectProof(value.prove ?? {}, flow, report, [...at, 'prove']);
  }
  for (const { at, report, id } of sections.entries('priors')) {
    expect(id, faults, 'a fault of the flow', report, at);
  }
  for (const section of ['roots', 'groups'] as const) {
    for (const { value, at, report } of sections.entries(section)) {
      const named = Array.isArray(value) ? value : value.faults;
      for (const fault of named) expect(fault, faults, 'a fault of the flow', report, at);
    }
  }
  for (const { value, at, report } of sections.entries('measured')) {
    expect(value, checks, 'a check of the flow', report, at);
  }
  for (const { source, data } of files) {
    const report = sections.reporter(source);
    if (data['verdict-after'] !== undefined) {
      const stages = flow.stages.map(({ id }) => id);
      expect(data['verdict-after'], stages, 'a stage of the flow', report, ['verdict-after']);
    }
    data['common-causes']?.forEach(({ checks: named }, index) => {
      named.forEach((check, position) => {
        expect(check, answers, 'a check of the flow', report, [
          'common-causes',
          index,
          'checks',
          position,
        ]);
      });
    });
  }
}

function expect(
  id: string,
  known: readonly string[],
  what: string,
  report: Report,
  at: Path,
): void {
  if (!known.includes(id)) report('unknown-id', at, `${what}: ${known.join(', ')}`);
}

function expectPath(path: string, report: Report, at: Path): void {
  if (contextFields[path] === undefined) {
    report('unknown-id', at, `a field of the context: ${Object.keys(contextFields).join(', ')}`);
  }
}

function expectCover(
  covers: readonly Cover[],
  checks: readonly string[],
  report: Report,
  at: Path,
): void {
  for (const check of covers.flatMap((cover) => cover.checks ?? [])) {
    expect(check, checks, 'a check of the flow', report, at);
  }
}

function expectProof(
  proof: Readonly<Record<string, string | readonly string[]>>,
  flow: Flow,
  report: Report,
  at: Path,
): void {
  for (const [check, good] of Object.entries(proof)) {
    const known = flow.checks[check];
    if (known === undefined) {
      report('unknown-id', [...at, check], 'a check of the flow', { onKey: true });
      continue;
    }
    for (const answer of [good].flat()) {
      expect(answer, optionsOf(known), `an answer of ${check}`, report, [...at, check]);
    }
  }
}
