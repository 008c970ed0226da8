/**
 * Which checks may be asked at this moment: by kit, place, preconditions and hard stops.
 */
import { holds, type Known } from '../flow/condition.ts';
import type { Check, Cover, Flow, Stop } from '../flow/flow.ts';
import { isSaid, type Answer, type CaseState } from './state.ts';

/** The hard stops in force. */
export function stopsInForce(flow: Flow, known: Known): readonly Stop[] {
  return flow.stops.filter((stop) => holds(stop.when, known) === true);
}

/** How a check may be put: done now, answered from memory, or not at all. */
export function wayToAsk(check: Check, stops: readonly Stop[]): 'do' | 'remember' | 'never' {
  if (stops.length === 0) return 'do';
  const against = stops.filter(
    (stop) => !stop.except.includes(check.id) && covers(stop.forbids, check),
  );
  if (against.length === 0) return 'do';
  return against.every((stop) => stop.remembered.includes(check.id)) ? 'remember' : 'never';
}

/** True where the stops in force leave somebody on the spot any work of the flow. */
export function mayWork({ checks }: Flow, stops: readonly Stop[]): boolean {
  const work = Object.values(checks).filter(({ form }) => form.kind === 'work');
  return work.length === 0 || work.some((check) => wayToAsk(check, stops) === 'do');
}

/** What the stops in force forbid wherever it is done: `boost`, `held-start`. */
export function forbiddenActivities(stops: readonly Stop[]): readonly string[] {
  return stops.flatMap(({ forbids }) =>
    forbids.flatMap((cover) => (cover.at || cover.checks ? [] : (cover.does ?? []))),
  );
}

/** The kit that a check needs and the case lacks. */
export function lackingKit(flow: Flow, check: Check, state: CaseState): readonly string[] {
  const has = kitOf(flow, state);
  return check.needs.flatMap((anyOf) => (anyOf.some(has) ? [] : [anyOf[0] ?? '']));
}

/** True where the case has the kit that a check needs, or may have it. */
export function hasKit(flow: Flow, check: Check, state: CaseState): boolean {
  if (check.needs.length === 0) return true;
  const has = kitOf(flow, state);
  return check.needs.every((anyOf) => anyOf.some(has));
}

/**
 * Whether an item is in the kit. Where the kit was never told, an item is lacking once a check
 * that needs nothing else that is missing could not be done.
 */
function kitOf(flow: Flow, state: CaseState): (item: string) => boolean {
  const { kit } = state.context;
  return Array.isArray(kit) ? (item) => kit.includes(item) : kitShown(flow, state);
}

/** What the answers so far show of a kit that nobody told. */
function kitShown(flow: Flow, state: CaseState): (item: string) => boolean {
  const needsOf = (
    wanted: (latest: Answer | undefined) => boolean,
  ): readonly (readonly string[])[] =>
    Object.entries(state.answers)
      .filter(([, answers]) => wanted(answers.at(-1)))
      .map(([id]) => (flow.checks[id]?.needs ?? []).flat());
  const used = new Set(needsOf(isSaid).flat());
  const missing = needsOf((latest) => latest === 'cannot').map((needs) =>
    needs.filter((item) => !used.has(item)),
  );
  const lacking = new Set(missing.filter(({ length }) => length === 1).flat());
  return (item) => !lacking.has(item);
}

/** True where a check bears on this case: not known to be beside the point, and not premature. */
export function bearsOn(check: Check, known: Known): boolean {
  if (check.when !== undefined && holds(check.when, known) === false) return false;
  return check.requires === undefined || holds(check.requires, known) === true;
}

/** True when some cover matches the check. */
export function covers(list: readonly Cover[], check: Check): boolean {
  return list.some(
    (cover) =>
      (cover.does === undefined || cover.does.some((one) => check.does.includes(one))) &&
      (cover.checks === undefined || cover.checks.includes(check.id)) &&
      (cover.at === undefined || cover.at.includes(check.at)),
  );
}

/** True for a cover that leaves out no check. */
export function coversAll(cover: Cover): boolean {
  return Object.keys(cover).length === 0;
}
