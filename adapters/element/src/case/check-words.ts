/**
 * The short words of a check that are printed beside its finding.
 */
import type { AskMessage, Chart } from '@keyturn/core';
import { optionsOf } from '@keyturn/core';
import type { FlowTexts } from '@keyturn/language';

/** The name of a check or of a computed reading; its id where the texts have none. */
export function checkName(chart: Chart, texts: FlowTexts, id: string): string {
  const like = chart.flow.checks[id]?.like ?? id;
  return texts.checks[id]?.name ?? texts.checks[like]?.name ?? texts.computed?.[id]?.name ?? id;
}

/** A check asked out of its turn, to put its answer right; undefined where there is no such check. */
export function askAgain(chart: Chart, id: string): AskMessage | undefined {
  const check = chart.flow.checks[id];
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
