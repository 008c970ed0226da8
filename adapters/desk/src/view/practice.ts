/**
 * The guide of a practice case: what the invented caller says, and what to press for it.
 */
import { positionOf } from '@keyturn/core';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InventedCaller } from '../demo/town.ts';
import { cardOf } from './card.ts';
import type { InHand, Shown } from './shown.ts';
import { questionOf } from './step-card.ts';
import { fill, listed } from '../wording.ts';

/** The invented caller's answer, and what to press for it. */
export function practice(shown: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const { words } = shown;
  const { invented } = inHand;
  if (invented === undefined) return nothing;
  const lines = guide(shown, inHand, invented);
  return html`<aside class="practice" aria-label=${words.practice}>
    <p class="invented">${words.practiceNote}</p>
    ${lines.map((line) => html`<p>${line}</p>`)}
  </aside>`;
}

function guide(shown: Shown, inHand: InHand, invented: InventedCaller): readonly string[] {
  const { words, speaker, hand } = shown;
  switch (cardOf(hand, inHand.kase)) {
    case 'step':
      return positionOf(inHand.kase.sitting.case).awaiting === 'confirm'
        ? [words.guideConfirm]
        : guideAnswer(shown, invented);
    case 'send':
      return [words.guideSend];
    case 'under-way':
      return [words.guideSent];
    case 'cause':
      return [fill(words.guideCause, { cause: speaker.faultName(invented.cause) })];
    case 'asking':
    case 'danger':
    case 'help':
      return [];
  }
}

function guideAnswer(shown: Shown, { answers: known }: InventedCaller): readonly string[] {
  const { words, speaker, flow } = shown;
  const question = questionOf(shown);
  if (question === undefined) return [];
  const says = (said: string): string => fill(words.callerSays, { said });
  const { check, options, entry } = question;
  const form = flow.checks[check]?.form;
  const answer = known[check];
  if (answer === undefined) {
    const key = entry === 'reading' ? '?' : '0';
    return [says(speaker.key('dontKnow')), fill(words.guideAnswer, { key })];
  }
  if (typeof answer === 'number') {
    const unit = form?.kind === 'reading' ? form.unit : '1';
    return [
      says(speaker.formatQuantity({ value: answer, unit, resolution: 1 })),
      fill(words.guideFigure, { figure: speaker.formatNumber(answer, 0) }),
    ];
  }
  const said = answer.map((id) => {
    const one = shown.texts.checks[check]?.answers?.[id];
    return one?.said?.[0] ?? one?.label ?? id;
  });
  const keys = options.filter(({ id }) => answer.includes(id)).map(({ key }) => key);
  if (entry !== 'choices')
    return [says(said.join()), fill(words.guideAnswer, { key: keys.join() })];
  return [
    says(listed(said, shown.locale)),
    answer.includes('none')
      ? words.guideNone
      : fill(words.guidePick, { keys: listed(keys, shown.locale) }),
  ];
}
