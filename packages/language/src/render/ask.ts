import type { AskMessage } from '@keyturn/core';
import { LanguageError } from '../language-error.ts';
import type { Rendered, RenderedOption } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { knowingLines } from './knowing.ts';

/**
 * A question: how it is asked this time, how to do it, where the leads go, and what can be picked.
 * Choices have number keys; a reading has none, so that a figure is never taken for a key. What a
 * test lamp shows is answered in words.
 */
export function renderAsk(message: AskMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const { check, form, probes, unit } = message;
  const { how = [], withoutTerms } = flow.check(check);
  // Only a day has such words, and it is asked as a choice where there are no terms.
  const told = withoutTerms !== undefined && form === 'choice' ? [withoutTerms] : how;
  const steps = message.remembered ? [] : knowingLines(told, message.known, figures);
  // The steps say where the leads go; where there are none, their places are said alone.
  if (probes !== undefined && how.length === 0 && !message.remembered) {
    steps.push(
      say('question.probes', { red: flow.probe(probes.red), black: flow.probe(probes.black) }),
    );
  }
  if (steps.length > 0 && message.minutes >= longMinutes) {
    steps.push(say('question.lasts', { time: figures.formatMinutes(message.minutes) }));
  }
  return [
    {
      kind: 'question',
      check,
      text: wording(message, voice),
      how: steps,
      entry: form,
      options: options(message, voice),
      ...(form === 'reading' && unit !== undefined && message.lamp.length === 0
        ? { unit: figures.unitSign(unit) }
        : {}),
    },
  ];
}

/** From this many minutes on it is worth saying how long a check takes. */
const longMinutes = 5;

function wording(message: AskMessage, { say, flow, figures }: Voice): string {
  const { check, time, remembered, mentioned } = message;
  const words = flow.check(check);
  if (words.ask === undefined) throw new LanguageError('text-missing', `checks.${check}.ask`);
  if (remembered) return words.remembered ?? say('question.remembered', { ask: words.ask });
  if (time > 1) return words.again ?? say('question.again', { ask: words.ask });
  if (mentioned === undefined) return words.ask;
  const list = figures.listAll(mentioned.map((id) => flow.answerLabel(check, id)));
  return say('question.mentioned', { list, ask: words.ask });
}

function options(message: AskMessage, { flow }: Voice): RenderedOption[] {
  const { check, form } = message;
  if (form === 'reading') {
    return message.lamp.map((id) => {
      const label = flow.answerLabel(check, id);
      return { id, key: label, label };
    });
  }
  const ids = form === 'work' ? ['done'] : message.options;
  return ids.map((id, index) => ({
    id,
    key: String(index + 1),
    label: flow.answerLabel(check, id),
  }));
}
