/**
 * A day that is typed: as ISO 8601 has it, or as the language writes it; under it the days that what
 * was typed may mean, or the terms, of which one is known without the day.
 */
import { looksLikeDay, optionsOf, type Flow } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import type { InHand, Shown } from './shown.ts';
import { typedAnswer, type TypedAnswer } from './typed-answer.ts';

/** The terms in which a day may lie, each with its words. */
export function termsOf(
  check: Flow['checks'][string],
  speaker: Speaker,
): readonly { readonly check: string; readonly value: string; readonly label: string }[] {
  return optionsOf(check).map((value) => ({
    check: check.id,
    value,
    label: speaker.answerLabel(check.id, value),
  }));
}

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

function daysMeant(
  { act, today }: Shown,
  { offers, flow, speaker }: InHand,
  check: string,
): TypedAnswer['others'] {
  const meant =
    offers.length > 0
      ? offers
      : [flow.checks[check] ?? []].flat().flatMap((one) => termsOf(one, speaker));
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
