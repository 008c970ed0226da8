/**
 * Which checks may be asked at this moment: by kit, place, preconditions and hard stops.
 */
import { holds, type Known } from '../flow/condition.ts';
import type { Check, Cover, Flow, Stop } from '../flow/flow.ts';
import type { CaseState } from './state.ts';

/** The hard stops in force. */
export function stopsInForce(flow: Flow, known: Known): readonly Stop[] {
  return flow.stops.filter((stop) => holds(stop.when, known) === true);
}

/** How a check may be put: done now, answered from memory, or not at all. */
export function wayToAsk(check: Check, stops: readonly Stop[]): 'do' | 'remember' | 'never' {
  const against = stops.filter(
    (stop) => !stop.except.includes(check.id) && covers(stop.forbids, check),
  );
  if (against.length === 0) return 'do';
  return against.every((stop) => stop.remembered.includes(check.id)) ? 'remember' : 'never';
}

/** The kit that a check needs and the case is known to lack. */
export function lackingKit(check: Check, state: CaseState): readonly string[] {
  const kit = state.context['kit'];
  if (!Array.isArray(kit)) return [];
  const missing = check.needs.filter((anyOf) => !anyOf.some((item) => kit.includes(item)));
  return missing.map((anyOf) => anyOf[0] ?? '');
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
