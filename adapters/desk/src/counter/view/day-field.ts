/**
 * A day that is typed: as ISO 8601 has it, or as the language writes it; under it the days, or the
 * terms, that what was typed may mean.
 */
import { looksLikeDay } from '@keyturn/core';
import type { TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import type { InHand, Shown } from './shown.ts';
import { typedAnswer, type TypedAnswer } from './typed-answer.ts';

/** Draws the field, and under it what may be meant. */
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

function daysMeant(
  { act, today }: Shown,
  { offers }: InHand,
  check: string,
): TypedAnswer['others'] {
  return offers.flatMap((offer) => {
    if (!('value' in offer) || typeof offer.value !== 'string') return [];
    if (looksLikeDay(offer.value) && offer.value > today) return [];
    const { label, value } = offer;
    const press = (): void => {
      act.answer(check, [value]);
    };
    return [{ label, press }];
  });
}
