/**
 * The keys that answer a question: one for each answer, or the pad for a reading.
 */
import { judgeFigure, type AnswerInput } from '@keyturn/core';
import type { Rendered } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { pickedBefore } from '../case/picked-before.ts';
import { pad } from './pad.ts';
import type { Shown } from './shown.ts';

type Question = Extract<Rendered, { kind: 'question' }>;
type ReadingForm = Parameters<typeof judgeFigure>[1];

/** Draws the keys of a question; `give` is called with its answer. */
export function answerKeys(
  shown: Shown,
  question: Question,
  give: (value: AnswerInput['value']) => void,
): TemplateResult {
  const { entry, options, unit, check } = question;
  const form = shown.chart.flow.checks[check]?.form;
  if (entry === 'reading' && options.length === 0 && form?.kind === 'reading') {
    return pad({
      figure: shown.hand.figure,
      locale: shown.locale,
      unit,
      isSigned: mayBeNegative(form),
      texts: shown.texts,
      change: (figure) => {
        shown.act.hand({ figure });
      },
      take: (value, resolution) => {
        give({ value, unit: shown.speaker.figures.unitHere(form.unit), resolution });
      },
    });
  }
  return entry === 'choices'
    ? severalKeys(shown, question, give)
    : singleKeys(shown, question, give);
}

/** True for a reading that may be below zero, as the air may be. */
export function mayBeNegative(form: ReadingForm): boolean {
  return judgeFigure({ value: -1, unit: form.unit }, form, 12).type === 'plausible';
}

/** What stands where an answer is put right; nothing where it is asked for the first time. */
function pickedToCorrect({ hand, sitting }: Shown, check: string): readonly string[] {
  return hand.correcting === check ? pickedBefore(sitting.case, check) : [];
}

function singleKeys(
  shown: Shown,
  { options, entry, check }: Question,
  give: (value: readonly string[]) => void,
): TemplateResult {
  const stands = pickedToCorrect(shown, check);
  return html`<div class="keys">
    ${options.map(
      ({ id, key, label }) =>
        html`<button
          type="button"
          class="key pick"
          data-key=${key}
          aria-pressed=${stands.includes(id) ? 'true' : nothing}
          @click=${() => {
            give([id]);
          }}
        >
          ${entry === 'choice' ? number(key, shown) : nothing}<span class="label">${label}</span>
        </button>`,
    )}
  </div>`;
}

function severalKeys(
  shown: Shown,
  { check, options }: Question,
  give: (value: readonly string[]) => void,
): TemplateResult {
  const { hand, act, speaker, sitting } = shown;
  // What was told of the list before it was asked is ticked already.
  const picked = hand.picked ?? sitting.case.state.mentioned?.[check] ?? [];
  const pick = (id: string): void => {
    // “None” beside something ticked is a slip of one or the other: it is seen before it is taken.
    if (id === 'none' && picked.length === 0) give([id]);
    else act.hand({ picked: pickedWith(picked, id) });
  };
  // A long list is not gone through to say that nothing of it holds.
  const noneFirst = options.toSorted(
    (one, other) => Number(other.id === 'none') - Number(one.id === 'none'),
  );
  return html`<div class="keys">
    ${noneFirst.map(
      ({ id, key, label }) =>
        html`<button
          type="button"
          class="key pick"
          data-key=${key}
          aria-pressed=${id === 'none' && picked.length === 0 ? nothing : String(picked.includes(id))}
          @click=${() => {
            pick(id);
          }}
        >
          ${id === 'none' ? nothing : number(key, shown)}<span class="label">${label}</span>
          <span class="tick" aria-hidden="true">${picked.includes(id) ? '✓' : ''}</span>
        </button>`,
    )}
    <button
      type="button"
      class="key take"
      ?disabled=${picked.length === 0}
      @click=${() => {
        give(picked);
      }}
    >
      <span class="label">${speaker.key('take')}</span>
    </button>
  </div>`;
}

/** What is ticked after one more press: nothing stands beside “none”. */
function pickedWith(picked: readonly string[], id: string): readonly string[] {
  if (picked.includes(id)) return picked.filter((one) => one !== id);
  return id === 'none' ? [id] : [...picked.filter((one) => one !== 'none'), id];
}

/** The number of a key, in the digits of the pad. */
function number(key: string, { locale }: Shown): TemplateResult {
  const written = new Intl.NumberFormat(locale).format(Number(key));
  return html`<span class="at" aria-hidden="true">${written}</span>`;
}
