/**
 * A list that the context holds, such as kit, told when it was not asked: it adds to what is known,
 * and is no more than a part where nobody has been asked for the whole of it.
 */
import type { Check } from '../flow/flow.ts';
import type { CaseState } from './state.ts';

/** What was told of a check's list in passing, before it was asked. */
export function mentionedOf(state: CaseState, check: string): readonly string[] {
  return state.mentioned?.[check] ?? [];
}

/** The state with more told in passing of a check's list. */
export function withMentioned(
  state: CaseState,
  { check, told }: { readonly check: string; readonly told: readonly string[] },
): CaseState {
  const all = [...new Set([...mentionedOf(state, check), ...told])];
  return { ...state, mentioned: { ...state.mentioned, [check]: all } };
}

/** True where what is told of a list is a part of it: the whole of it was never asked for. */
export function isPart(state: CaseState, check: Check, told: readonly string[]): boolean {
  return (
    isList(check) &&
    !isInHand(state, check) &&
    state.context[check.writes] === undefined &&
    !told.includes('none')
  );
}

/** A list with what is told of it now: added to what was mentioned, or to what is known. */
export function addedTo(
  state: CaseState,
  check: Check,
  told: readonly string[],
): readonly string[] {
  if (!isList(check) || (told.includes('none') && !isInHand(state, check))) return told;
  const held = state.context[check.writes];
  const known = isInHand(state, check) ? mentionedOf(state, check.id) : isTexts(held) ? held : [];
  return known.length === 0
    ? told
    : [...new Set([...known, ...told.filter((one) => one !== 'none')])];
}

/** True for a check whose answer is a list of the context. */
export function isList(check: Check): check is Check & { readonly writes: string } {
  return check.writes !== undefined && check.form.kind === 'choice' && check.form.several;
}

function isInHand({ next }: CaseState, { id }: Check): boolean {
  return next?.to === 'check' && next.check === id;
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value);
}
