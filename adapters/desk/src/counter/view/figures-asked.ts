import type { CaseState, Flow } from '@keyturn/core';

/**
 * The readings that are asked for together: the check in hand, and what the same run of the bench
 * shows besides. Empty where the check is no reading.
 */
export function figuresAsked(
  flow: Flow,
  state: Pick<CaseState, 'answers' | 'context' | 'decision'>,
  id: string,
): readonly string[] {
  const check = flow.checks[id];
  if (check?.form.kind !== 'reading') return [];
  const stage = flow.stages.find(({ checks }) => checks.includes(id))?.checks ?? [];
  const kit = (state.context['kit'] ?? []) as readonly string[];
  const isOpen = (other: string): boolean =>
    state.answers[other] === undefined || state.decision?.voids?.includes(other) === true;
  const beside = stage.filter((other) => {
    const one = flow.checks[other];
    if (one?.form.kind !== 'reading' || other === id || check.does.length === 0) return false;
    return (
      isOpen(other) &&
      one.does.join() === check.does.join() &&
      one.needs.every((any) => any.some((item) => kit.includes(item)))
    );
  });
  return [id, ...beside];
}
