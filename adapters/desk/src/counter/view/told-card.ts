/**
 * What a line in the clerk's own words told: shown before it is taken, with what was not understood.
 */
import type { AnswerInput } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { numbered } from '../../view/key.ts';
import { fill } from '../../wording.ts';
import type { HeardLine } from '../engine/counter-engine.ts';
import { emptyHand, type InHand, type Shown } from './shown.ts';
import { sentence } from './sentence.ts';

/** Draws what was told, and asks whether it is meant so. */
export function toldCard(shown: Shown, inHand: InHand, told: HeardLine): TemplateResult {
  const { words, act } = shown;
  const left = [...refusedLines(inHand, told), ...leftLines(shown, inHand, told)];
  const leave = {
    label: words.toldLeave,
    press: () => {
      act.hand(emptyHand);
    },
  };
  const take = { label: words.toldTake, isMain: true, press: act.takeTold };
  const isAny = told.answers.length > 0;
  return html`${sentence(words.told, isAny ? words.toldAsk : words.toldNothing)}
    <ul class="to-do told">
      ${told.answers.map(
        (answer) =>
          html`<li>${answerLine(inHand, answer)} ${without(shown, inHand, { told, answer })}</li>`,
      )}
    </ul>
    ${
      left.length === 0
        ? nothing
        : html`<section class="not-told" role="alert">
            <h3>${words.toldLeft}</h3>
            <ul class="to-do">
              ${left.map((line) => html`<li>${line}</li>`)}
            </ul>
          </section>`
    }
    ${numbered(isAny ? [take, leave] : [leave])}`;
}

function answerLine({ speaker }: InHand, answer: AnswerInput): TemplateResult {
  return html`${speaker.checkName(answer.check)}: <b>${valueIn(speaker, answer)}</b>`;
}

/** Leaves one thing out that was not meant so; the only one is refused with all of it. */
function without(
  { words, act }: Shown,
  { speaker }: InHand,
  { told, answer }: { readonly told: HeardLine; readonly answer: AnswerInput },
): TemplateResult | typeof nothing {
  if (told.answers.length < 2) return nothing;
  const label = fill(words.toldWithout, { what: speaker.checkName(answer.check) });
  return html`<button
    type="button"
    class="fix"
    aria-label=${label}
    title=${label}
    @click=${() => {
      act.hand({ told: { ...told, answers: told.answers.filter((one) => one !== answer) } });
    }}
  >
    ×
  </button>`;
}

function valueIn(speaker: InHand['speaker'], { check, value }: AnswerInput): string {
  if ('value' in value) return speaker.formatQuantity(value);
  return value
    .map((id) => (/^\d{4}-/u.test(id) ? speaker.formatDay(id) : speaker.answerLabel(check, id)))
    .join(', ');
}

function refusedLines({ speaker }: InHand, { refused }: HeardLine): readonly string[] {
  return refused.map(({ answer, refused: messages }) => {
    const why = speaker.render(messages).flatMap((one) => ('text' in one ? [one.text] : []));
    return `${speaker.checkName(answer.check)}: ${why.join(' ')}`;
  });
}

function leftLines({ words }: Shown, { speaker }: InHand, { left }: HeardLine): readonly string[] {
  return left.map(({ said, unclear }) => {
    const why = unclear === undefined ? [] : speaker.askBack(unclear);
    const asked = why.flatMap((one) => ('text' in one ? [one.text] : []));
    return [fill(words.quoted, { said }), ...asked].join(' ');
  });
}
