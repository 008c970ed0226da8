/**
 * A day that is typed: as ISO 8601 has it, or as the language writes it; under it the days that what
 * was typed may mean, or the terms, of which one is known without the day.
 */
import { looksLikeDay, optionsOf } from '@keyturn/core';
import type { TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import type { InHand, Shown } from './shown.ts';
import { typedAnswer, type TypedAnswer } from './typed-answer.ts';

/** Draws the field, and under it what can be picked in its place. */
export function dayField(shown: Shown, inHand: InHand, check: string): TemplateResult {
  const { words, act, today } = shown;
  return typedAnswer(shown, inHand, {
    field: {
      name: 'day',
      label: inHand.speaker.checkName(check),
      isLabelShown: false,
      inputmode: 'numeric',
      value: '',
      form: fill(words.dayForm, { day: today }),
    },
    take: words.takeDay,
    others: daysMeant(shown, inHand, check),
    typed: (text) => {
      if (text === '') act.notice(fill(words.dayNeeded, { day: today }));
      else act.day(check, text);
    },
  });
}

function daysMeant({ act, today }: Shown, inHand: InHand, check: string): TypedAnswer['others'] {
  const { offers } = inHand;
  const meant = offers.length > 0 ? offers : termsOf(inHand, check);
  return meant.flatMap((offer) => {
    if (!('value' in offer) || typeof offer.value !== 'string') return [];
    if (looksLikeDay(offer.value) && offer.value > today) return [];
    const { label, value } = offer;
    const press = (): void => {
      act.answer(check, [value]);
    };
    return [{ label, press }];
  });
}

/** The terms in which a day may lie, each with its words. */
function termsOf(
  { flow, speaker }: InHand,
  id: string,
): readonly { readonly value: string; readonly label: string }[] {
  const check = flow.checks[id];
  const terms = check === undefined ? [] : optionsOf(check);
  return terms.map((value) => ({ value, label: speaker.answerLabel(id, value) }));
}
