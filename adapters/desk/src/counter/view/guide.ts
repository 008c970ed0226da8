/**
 * The guide of an invented return: what the part shows, and what to press for it.
 */
import { positionOf } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import { fill, listed } from '../../wording.ts';
import { isHydrometerAsked } from './hydrometer.ts';
import type { InHand, Shown } from './shown.ts';
import { figuresInHand, questionOf } from './step-card.ts';
import { usualOf, type UsualLines } from './usual-list.ts';

/** Draws the guide; nothing for a part that is not invented. */
export function guide(shown: Shown): TemplateResult | typeof nothing {
  const { words, inHand, shop, hand } = shown;
  if (shop?.isInvented !== true) return nothing;
  const line =
    inHand === undefined
      ? ''
      : hand.open === null && hand.told === null && hand.offered === null
        ? lineFor(shown, inHand)
        : '';
  return html`<aside class="practice" aria-label=${words.practice}>
    ${
      line === ''
        ? html`<p><b>${words.inventedShop}</b></p>`
        : html`<p>${line}</p>
            <p class="invented">${words.practice}</p>`
    }
  </aside>`;
}

function lineFor(shown: Shown, inHand: InHand): string {
  const { words } = shown;
  const { invented, back } = inHand;
  if (invented === undefined) return '';
  const usual = usualOf(shown, inHand);
  if (usual.length > 0) return listLine(shown, inHand, usual);
  const { awaiting } = positionOf(back.sitting.case);
  if (awaiting === 'nothing') return words.guideDecided;
  if (awaiting === 'confirm') return words.guideConfirm;
  const isToBeAnswered = awaiting === 'answer' && !isHydrometerAsked(shown, inHand);
  return isToBeAnswered ? answerLine(shown, inHand) : '';
}

/** Of a list: that all of it is so, or the first line that is otherwise. */
function listLine({ words }: Shown, { invented, speaker }: InHand, usual: UsualLines): string {
  const otherwise = usual.findIndex(([check, answer]) => {
    const found = invented?.answers[check];
    return found !== undefined && (typeof found === 'number' || !found.includes(answer));
  });
  const [check] = usual[otherwise] ?? [];
  if (check === undefined) return words.guideUsual;
  return fill(words.guideLine, { what: speaker.checkName(check), key: otherwise + 1 });
}

function answerLine(shown: Shown, inHand: InHand): string {
  const { words, locale } = shown;
  const { invented, speaker } = inHand;
  const question = questionOf(shown, inHand);
  if (question === undefined || invented === undefined) return '';
  const figures = figuresInHand(shown.hand, inHand).flatMap((check) => figureWords(inHand, check));
  if (figures.length > 0) {
    return fill(words.guideFigure, { figures: listed(figures, locale) });
  }
  const answer = invented.answers[question.check];
  if (answer === undefined || typeof answer === 'number') return words.guideUnknown;
  const keys = question.options.filter(({ id }) => answer.includes(id)).map(({ key }) => key);
  const said = listed(
    answer.map((id) => speaker.answerLabel(question.check, id)),
    locale,
  );
  return question.entry === 'choices'
    ? fill(words.guidePick, { said, keys: listed(keys, locale) })
    : fill(words.guideAnswer, { said, key: keys.join() });
}

function figureWords({ invented, flow, speaker }: InHand, check: string): readonly string[] {
  const value = invented?.answers[check];
  const form = flow.checks[check]?.form;
  if (typeof value !== 'number' || form?.kind !== 'reading') return [];
  const { unit } = form;
  const said = speaker.formatQuantity({ value, unit, resolution: value > 20 ? 1 : 0.01 });
  return [said.replaceAll(' ', '\u00a0')];
}
