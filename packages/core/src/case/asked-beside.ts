/**
 * What can be answered together with a question where a table decides: what one look at the part, or
 * one run of it, tells besides. Only what the decision hangs on as well, so that nothing is asked in
 * vain.
 */
import type { Check, Flow } from '../flow/flow.ts';
import { hangingChecks } from './judge.ts';
import type { AskedBeside } from './message.ts';
import type { CaseState } from './state.ts';

/** What can be answered together with a check. */
export function askedBeside(flow: Flow, state: CaseState, check: Check): AskedBeside {
  const hanging = hangingChecks(flow, state).map((one) => one.check);
  return {
    readings: check.form.kind === 'reading' ? readingsBeside(flow, state, { check, hanging }) : [],
    usual: usualOf(check) === undefined ? {} : usualBeside(flow, { check, hanging }),
  };
}

interface Asked {
  readonly check: Check;
  readonly hanging: readonly Check[];
}

/** The readings that would be asked next in any case, and those that are taken anew with this one. */
function readingsBeside(
  flow: Flow,
  { decision }: CaseState,
  { check, hanging }: Asked,
): readonly string[] {
  const voided = Object.values(flow.checks).filter(({ id }) => decision?.voids?.includes(id));
  const after = hanging.slice(hanging.findIndex(({ id }) => id === check.id) + 1);
  const end = after.findIndex((one) => one.form.kind !== 'reading');
  return [...voided, ...(end === -1 ? after : after.slice(0, end))]
    .filter((one) => one.form.kind === 'reading' && isDoneWith(flow, check, one))
    .map(({ id }) => id);
}

function usualBeside(flow: Flow, { check, hanging }: Asked): Readonly<Record<string, string>> {
  const alike = hanging.filter((one) => isDoneWith(flow, check, one));
  return Object.fromEntries(
    alike.flatMap((one) => {
      const usual = usualOf(one);
      return usual === undefined ? [] : [[one.id, usual] as const];
    }),
  );
}

function usualOf({ form }: Check): string | undefined {
  return form.kind === 'choice' ? form.usual : undefined;
}

/** True for what is done in one go with a check, whose cautions have been confirmed by then. */
function isDoneWith({ stages }: Flow, check: Check, other: Check): boolean {
  const stage = stages.find(({ checks }) => checks.includes(check.id));
  return (
    stage?.checks.includes(other.id) === true && other.does.every((one) => check.does.includes(one))
  );
}
