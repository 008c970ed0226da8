/**
 * What a text means, as statistics and authors of phrases want it: ids and figures in the units
 * of their checks, free of the case that it was typed in.
 */
import { judgeFigure, type AnswerInput, type Check } from '@keyturn/core';
import type { Speaker, Understood } from '@keyturn/language';
import type { Chart } from '@keyturn/core';
import { convert, isUnit } from '@keyturn/electrics';
import type { PhraseLine } from './phrase-line.ts';

/** An answer: a choice's id, or a figure in the check's unit. */
export interface SaidAnswer {
  readonly check: string;
  readonly value: string | { readonly value: number; readonly unit: string };
}

/** What one text means. Nothing understood and no talk: Keyturn asks back. */
export interface Meaning {
  readonly understood: readonly SaidAnswer[];
  readonly talk: string | null;
  readonly offers: readonly SaidAnswer[];
}

/** V, of the vehicle that is spoken of unless it is said to be another. */
const usualNominal = 12;

/** What a text means where this question has just been asked, or none. */
export function meaningOf({ check, text }: PhraseLine, chart: Chart, speaker: Speaker): Meaning {
  const { checks, interrupts } = chart.flow;
  const inHand = check === null ? undefined : checks[check];
  const understood = speaker.understand(text, {
    awaiting: 'answer',
    check,
    checks,
    interrupts: Object.keys(interrupts),
    answered: [],
    kit: [],
    nominal: usualNominal,
    lamp: inHand?.form.kind === 'reading' && Object.keys(inHand.form.lamp).length > 0,
  });
  return {
    understood: answersOf(understood, checks),
    talk: talkOf(understood),
    offers: offersOf(understood, checks),
  };
}

type Checks = Readonly<Record<string, Check>>;

function answersOf(understood: Understood, checks: Checks): SaidAnswer[] {
  if (understood.type !== 'input') return [];
  const { inputs } = understood;
  // "24.8, it's a lorry" says of what vehicle the figure is.
  const isSaid24 = inputs.some(
    (input) => input.type === 'context' && input.set['vehicle.nominal'] === 24,
  );
  const nominal = isSaid24 ? 24 : usualNominal;
  return inputs.flatMap((input) =>
    input.type === 'answers' || input.type === 'correction'
      ? input.answers.flatMap((answer) => saidAnswers(answer, checks, nominal))
      : [],
  );
}

function saidAnswers(
  { check, value }: AnswerInput,
  checks: Checks,
  nominal: 12 | 24,
): SaidAnswer[] {
  const form = checks[check]?.form;
  if (!('value' in value)) {
    // What a test lamp shows stands for a band.
    const bands = form?.kind === 'reading' ? form.lamp : {};
    return value.map((id) => ({ check, value: bands[id] ?? id }));
  }
  if (form?.kind !== 'reading' || judgeFigure(value, form, nominal).type !== 'plausible') return [];
  return [{ check, value: inOwnUnit(value, form.unit) }];
}

function inOwnUnit(
  { value, unit }: { readonly value: number; readonly unit: string },
  own: string,
): { readonly value: number; readonly unit: string } {
  if (unit === own || !isUnit(unit) || !isUnit(own)) return { value, unit };
  const converted = convert({ value, unit }, own).value;
  return { value: Number(converted.toPrecision(12)), unit: own };
}

function talkOf(understood: Understood): string | null {
  return understood.talk ?? null;
}

function offersOf(understood: Understood, checks: Checks): SaidAnswer[] {
  if (understood.type !== 'offers') return [];
  return understood.offers
    .filter((one) => 'check' in one)
    .map(({ check, value }) => {
      const form = checks[check]?.form;
      if (typeof value === 'string' || form?.kind !== 'reading') return { check, value };
      return { check, value: inOwnUnit(value, form.unit) };
    });
}
