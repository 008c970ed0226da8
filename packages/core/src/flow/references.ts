/**
 * Names in a flow that must exist, and definitions that must be used.
 */
import { contextFields, readContext, valuesOf } from '../case/context.ts';
import type { Flow } from './flow.ts';
import { optionsOf } from './options-of.ts';
import { expectName, type Place } from './place.ts';
import { checkDecisions } from './decision-references.ts';
import type { Sections } from './sections.ts';

/** Tells every name that nothing defines and every definition that nothing uses. */
export function checkReferences(flow: Flow, sections: Sections): void {
  checkStages(flow, sections);
  checkContext(flow, sections);
  checkSafety(flow, sections);
  if (flow.decisions.length > 0) checkDecisions(flow, sections);
  else checkFaults(flow, sections);
  const checks = [...Object.keys(flow.checks), ...Object.keys(flow.computed)];
  for (const { value = '', place } of sections.entries('measured')) {
    expectName(value, { names: checks, what: 'a check of the flow' }, place);
  }
  const common = sections.single('common-causes', false);
  common?.value.forEach(({ checks: named }, index) => {
    for (const [position, check] of named.entries()) {
      const place = common.place.in(index, 'checks', position);
      expectName(check, { names: checks, what: 'a check of the flow' }, place);
    }
  });
}

/** States that every case has beside its stages, and every stage beside its checks. */
const reservedStages: readonly string[] = ['choosing', 'verdict', 'returning'];
const reservedCheck = 'choosing';

function checkStages(flow: Flow, sections: Sections): void {
  const staged = new Map<string, string>();
  for (const { id, value, place } of sections.entries('stages')) {
    if (reservedStages.includes(id)) {
      place.tell(
        'wrong-shape',
        `another name: ${reservedStages.join(', ')} are states of every case`,
        {
          onKey: true,
        },
      );
    }
    for (const [index, check] of value.entries()) {
      const at = place.in(index);
      expectName(check, { names: Object.keys(flow.checks), what: 'a check of the flow' }, at);
      const other = staged.get(check);
      if (other !== undefined) at.tell('twice', `${check} in one stage only; it is in ${other}`);
      staged.set(check, id);
    }
  }
  for (const { id, place } of sections.entries('checks')) {
    if (id === reservedCheck) {
      place.tell('wrong-shape', `another name: ${id} is a state of every stage`, { onKey: true });
    }
    if (!staged.has(id)) place.tell('unused', 'a check that some stage asks', { onKey: true });
  }
  const stages = { names: flow.stages.map(({ id }) => id), what: 'a stage of the flow' };
  const verdict = sections.single('verdict-after', false);
  if (verdict) expectName(verdict.value, stages, verdict.place);
  checkWorth(flow, sections);
  checkCosts(flow, sections);
}

/** Only what is asked before the verdict can be weighed, and each stage is named once. */
function checkWorth(flow: Flow, sections: Sections): void {
  const worth = sections.single('by-worth', false);
  if (worth === undefined) return;
  const last = flow.stages.findIndex(({ id }) => id === flow.verdictAfter);
  // With a verdict after no stage there is, that is told, and not that every stage comes too late.
  const asked = last < 0 ? flow.stages : flow.stages.slice(0, last + 1);
  const stages = { names: asked.map(({ id }) => id), what: 'a stage up to the verdict' };
  for (const [index, stage] of worth.value.entries()) {
    const at = worth.place.in(index);
    expectName(stage, stages, at);
    if (worth.value.indexOf(stage) < index) at.tell('twice', `${stage} once only`);
  }
  if (sections.single('costs', false) === undefined) {
    worth.place.tell('missing', 'the section costs, as checks are weighed', { value: '' });
  }
}

/** Every remedy and everyone who may be sent has a cost, and no other. */
function checkCosts(flow: Flow, sections: Sections): void {
  const costs = sections.single('costs', false);
  if (costs === undefined) return;
  const faults = Object.values(flow.faults);
  const insteads = flow.stops.flatMap(({ instead }) => (instead === undefined ? [] : [instead]));
  const wanted = {
    remedies: [
      ...faults.flatMap(({ remedies }) => remedies.map(({ remedy }) => remedy)),
      ...insteads.map(({ remedy }) => remedy),
    ],
    sends: [
      ...faults.flatMap(({ send, remedies }) => [send, ...remedies.map((one) => one.send ?? send)]),
      ...insteads.map(({ send }) => send),
    ],
  };
  for (const kind of ['remedies', 'sends'] as const) {
    const names = [...new Set(wanted[kind])];
    const place = costs.place.in(kind);
    for (const given of Object.keys(costs.value[kind])) {
      expectName(
        given,
        { names, what: `one of the ${kind} of the flow`, onKey: true },
        place.in(given),
      );
    }
    const missing = names.filter((name) => costs.value[kind][name] === undefined);
    if (missing.length > 0) place.tell('missing', `costs of ${missing.join(', ')}`, { value: '' });
  }
  const setups = {
    names: [...kitItems, 'seat', 'bonnet', 'below'],
    what: 'an item of kit or a place',
  };
  for (const given of Object.keys(costs.value.setups)) {
    expectName(given, { ...setups, onKey: true }, costs.place.in('setups', given));
  }
}

const kitItems = contextFields['kit']?.kind === 'list' ? contextFields['kit'].values : [];

function checkContext(flow: Flow, sections: Sections): void {
  const fields = { names: Object.keys(contextFields), what: 'a field of the context' };
  const kit = { names: kitItems, what: 'an item of kit' };
  const checks = { names: Object.keys(flow.checks), what: 'a check of the flow' };
  for (const { value, place } of sections.entries('checks')) {
    for (const [index, check] of (value['settled-by'] ?? []).entries()) {
      expectName(check, checks, place.in('settled-by', index));
    }
    for (const [index, check] of (value.after ?? []).entries()) {
      expectName(check, checks, place.in('after', index));
    }
    for (const [index, need] of (value.needs ?? []).entries()) {
      for (const item of need.split(' or ')) expectName(item, kit, place.in('needs', index));
    }
    for (const [choice, patch] of Object.entries(value.sets ?? {})) {
      for (const [path, set] of Object.entries(patch)) {
        const at = place.in('sets', choice, path);
        expectName(path, { ...fields, onKey: true }, at);
        const field = contextFields[path];
        if (field !== undefined && readContext({ [path]: set }).type === 'faults') {
          at.tell('wrong-shape', `a value of ${path}: ${valuesOf(field).join(', ')}`);
        }
      }
    }
    if (value.date !== undefined && flow.part === undefined) {
      place
        .in('date')
        .tell('missing', 'the part that was sold, as part of the flow', { value: '' });
    }
    if (value.writes !== undefined) expectName(value.writes, fields, place.in('writes'));
  }
}

function checkSafety(flow: Flow, sections: Sections): void {
  const checks = { names: Object.keys(flow.checks), what: 'a check of the flow' };
  const expectCovered = (covers: Flow['stops'][number]['forbids'], place: Place): void => {
    for (const check of covers.flatMap((cover) => cover.checks ?? [])) {
      expectName(check, checks, place);
    }
  };
  for (const { id, value, place } of sections.entries('cautions')) {
    expectCovered(flow.cautions[id]?.before ?? [], place.in('before'));
    const isSaid = Object.values(flow.faults).some((fault) => fault.cautions.includes(id));
    if (value.before === undefined && !isSaid) {
      place.tell('unused', 'a caution that covers checks or goes with a remedy', { onKey: true });
    }
  }
  for (const { id, value, place } of sections.entries('stops')) {
    expectCovered(flow.stops.find((stop) => stop.id === id)?.forbids ?? [], place.in('forbids'));
    for (const list of ['except', 'remembered'] as const) {
      for (const [index, check] of (value[list] ?? []).entries()) {
        expectName(check, checks, place.in(list, index));
      }
    }
  }
  for (const { value, place } of sections.entries('interrupts')) {
    expectProof(value.prove ?? {}, flow, place.in('prove'));
    for (const [index, check] of (value.reopens ?? []).entries()) {
      expectName(check, checks, place.in('reopens', index));
    }
  }
}

function checkFaults(flow: Flow, sections: Sections): void {
  const faults = { names: Object.keys(flow.faults), what: 'a fault of the flow' };
  if (faults.names.length === 0) sections.tellMissing('faults, at least one, or decisions');
  const cautions = { names: Object.keys(flow.cautions), what: 'a caution of the flow' };
  for (const { id, value, place } of sections.entries('faults')) {
    for (const [index, caution] of (value.cautions ?? []).entries()) {
      expectName(caution, cautions, place.in('cautions', index));
    }
    expectProof(value.prove ?? {}, flow, place.in('prove'));
    const remedies = typeof value.remedy === 'string' ? [] : value.remedy;
    for (const [index, { prove }] of remedies.entries()) {
      expectProof(prove ?? {}, flow, place.in('remedy', index, 'prove'));
    }
    if (flow.priors[id] === undefined) {
      place.tell('missing', `a prior for ${id}`, { onKey: true, value: '' });
    }
    if (value.best === 'proved' && value.proof === undefined) {
      place.tell('missing', 'a proof, since it can be proved', { value: '' });
    }
    if (value.best !== 'proved' && value.proof !== undefined) {
      place.in('proof').tell('wrong-shape', `no proof, since it is ${value.best} at best`);
    }
  }
  for (const { id, place } of sections.entries('priors')) {
    expectName(id, { ...faults, onKey: true }, place);
  }
  for (const { value, place } of sections.entries('roots')) {
    for (const [index, fault] of value.faults.entries()) {
      expectName(fault, faults, place.in('faults', index));
    }
  }
  for (const { value, place } of sections.entries('parts')) {
    for (const [index, fault] of (value?.faults ?? []).entries()) {
      expectName(fault, faults, place.in('faults', index));
    }
    expectByHand(value?.['by-hand'], flow, place.in('by-hand'));
  }
  for (const { value, place } of sections.entries('groups')) {
    for (const [index, fault] of value.entries()) expectName(fault, faults, place.in(index));
  }
}

function expectByHand(
  byHand: { readings: string[]; complaint?: Record<string, string> | undefined } | undefined,
  flow: Flow,
  place: Place,
): void {
  const readings = Object.keys(flow.checks).filter(
    (id) => flow.checks[id]?.form.kind === 'reading',
  );
  for (const [index, id] of (byHand?.readings ?? []).entries()) {
    expectName(id, { names: readings, what: 'a reading of the flow' }, place.in('readings', index));
  }
  const { complaint } = flow.checks;
  const names = complaint === undefined ? [] : optionsOf(complaint);
  for (const [said, id] of Object.entries(byHand?.complaint ?? {})) {
    expectName(id, { names, what: 'an answer of complaint' }, place.in('complaint', said));
  }
}

function expectProof(
  proof: Readonly<Record<string, string | readonly string[]>>,
  flow: Flow,
  place: Place,
): void {
  for (const [id, good] of Object.entries(proof)) {
    const check = flow.checks[id];
    if (check === undefined) {
      place.in(id).tell('unknown-id', 'a check of the flow', { onKey: true });
      continue;
    }
    const answers = { names: optionsOf(check), what: `an answer of ${id}` };
    for (const answer of [good].flat()) expectName(answer, answers, place.in(id));
  }
}
