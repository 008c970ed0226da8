import type { AskMessage, Flow } from '@keyturn/core';
import { optionsOf } from '@keyturn/core';

/** A check asked out of its turn, to put its answer right; undefined where there is no such check. */
export function askAgain(
  { flow }: { readonly flow: Pick<Flow, 'checks'> },
  id: string,
): AskMessage | undefined {
  const check = flow.checks[id];
  if (check === undefined) return undefined;
  const { form, minutes } = check;
  return {
    kind: 'ask',
    check: id,
    form: form.kind === 'choice' && form.several ? 'choices' : form.kind,
    options: optionsOf(check),
    lamp: [],
    ...(form.kind === 'reading' ? { unit: form.unit } : {}),
    minutes,
    time: 1,
    remembered: false,
  };
}
