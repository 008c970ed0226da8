/**
 * A table of decisions: that it is whole, that nothing of a diagnosis stands beside it, and that
 * every check of the flow can matter.
 */
import { checksOf, fieldsOf, type Condition } from './condition.ts';
import { fieldsFilled } from './fields-filled.ts';
import type { Flow } from './flow.ts';
import { expectName } from './place.ts';
import type { Sections, SingleSection } from './sections.ts';

/** Sections of a flow that ends in a verdict on faults. */
const mapsOfFaults = ['faults', 'roots', 'groups', 'priors', 'likelihoods'] as const;
const partsOfFaults: readonly SingleSection[] = [
  'verdict-after',
  'by-worth',
  'costs',
  'common-causes',
  'circuit',
];

/** Tells what is wrong with the table of a flow that has one. */
export function checkDecisions(flow: Flow, sections: Sections): void {
  const table = sections.single('decisions', false);
  if (table === undefined) return;
  const none = 'nothing of the sort, as the flow ends in decisions and not in faults';
  for (const key of mapsOfFaults) {
    const [first] = sections.entries(key);
    first?.place.tell('wrong-shape', none, { onKey: true });
  }
  for (const key of partsOfFaults) {
    sections.single(key, false)?.place.tell('wrong-shape', none, { onKey: true });
  }
  const checks = { names: Object.keys(flow.checks), what: 'a check of the flow' };
  const last = table.value.length - 1;
  for (const [index, { when, again = [], voids = [] }] of table.value.entries()) {
    const place = table.place.in(index);
    if (index === last && when !== undefined) {
      place.in('when').tell('wrong-shape', 'no condition: the last line holds whatever was found');
    }
    if (index !== last && when === undefined) {
      place.tell('missing', 'the property when; only the last line goes without', { value: '' });
    }
    for (const [position, check] of again.entries()) {
      expectName(check, checks, place.in('again', position));
    }
    for (const [position, check] of voids.entries()) {
      expectName(check, checks, place.in('voids', position));
    }
    if (voids.length > 0 && again.length === 0) {
      place
        .in('voids')
        .tell('wrong-shape', 'the property again beside it: nothing else voids them');
    }
  }
  const mattering = matteringChecks(flow);
  for (const { id, place } of sections.entries('checks')) {
    if (mattering.has(id)) continue;
    place.tell('unused', 'a check that some line of the decisions hangs on', { onKey: true });
  }
}

/** The checks that lines and stops hang on, and those that these in turn hang on. */
function matteringChecks(flow: Flow): ReadonlySet<string> {
  const found = new Set<string>();
  const lines = flow.decisions.flatMap(({ when }) => (when ? [when] : []));
  const open = namedBy(flow, [...lines, ...flow.stops.map(({ when }) => when)]);
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const check = flow.checks[id];
    if (check === undefined || found.has(id)) continue;
    found.add(id);
    const { when, requires, after } = check;
    open.push(
      ...after,
      ...namedBy(
        flow,
        [when, requires].filter((one) => one !== undefined),
      ),
    );
  }
  return found;
}

/** The checks that conditions name, and those that fill the fields that they name. */
function namedBy(flow: Flow, conditions: readonly Condition[]): string[] {
  const fields = conditions.flatMap(fieldsOf);
  const writers = Object.values(flow.checks).filter((check) =>
    fieldsFilled(check).some((field) => fields.includes(field)),
  );
  return [...conditions.flatMap(checksOf), ...writers.map(({ id }) => id)];
}
