/**
 * The cautions that go before a check, and when a confirmation lapses.
 */
import { holds, type Known } from '../flow/condition.ts';
import type { Caution, Check, Flow, SignalWord } from '../flow/flow.ts';
import { covers } from './possible.ts';

const gravity: readonly SignalWord[] = ['danger', 'warning', 'caution', 'notice'];

/** The cautions of a check in this case, gravest first. None where it is answered from memory. */
export function cautionsFor(
  flow: Flow,
  check: Check,
  scope: { readonly known: Known; readonly remembered: boolean },
): readonly Caution[] {
  // Remembering cannot hurt, except where the person stands.
  const covered = scope.remembered ? { ...check, does: [], at: 'memory' as const } : check;
  return Object.values(flow.cautions)
    .filter(
      (caution) =>
        covers(caution.before, covered) &&
        (caution.when === undefined || holds(caution.when, scope.known) === true),
    )
    .sort((a, b) => gravity.indexOf(a.word) - gravity.indexOf(b.word));
}

/** Fields of the context after whose change every confirmation lapses. */
export const lapsingFields: readonly string[] = ['place', 'role'];
