import type { AnswerInput, Chart } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Card } from '@keyturn/terminal';

/** A card with every answer said in another language, figures and all. */
export function translateCard(
  card: Card,
  { from, to, chart }: { readonly from: Speaker; readonly to: Speaker; readonly chart: Chart },
): Card {
  const say = (check: string, said: string): string => {
    const value = valueOf(said, check, from, chart);
    if (value === undefined) return said;
    if ('value' in value) return to.formatQuantity(value);
    return value.map((id) => to.answerLabel(check, id)).join(', ');
  };
  const answers = Object.entries(card.answers).map(([check, said]) => [
    check,
    typeof said === 'string' ? say(check, said) : said.map((one) => say(check, one)),
  ]);
  return { ...card, answers: Object.fromEntries(answers) as Card['answers'] };
}

/** What a card's answer means in the language that it is written in; undefined for what is talk. */
export function valueOf(
  said: string,
  check: string,
  speaker: Speaker,
  { flow }: Chart,
): AnswerInput['value'] | undefined {
  const form = flow.checks[check]?.form;
  const parts = said.split(',').map((part) => part.trim());
  if (form?.kind === 'choice' && parts.every((part) => form.choices.includes(part))) return parts;
  const understood = speaker.understand(said, {
    awaiting: 'answer',
    check,
    checks: flow.checks,
    interrupts: [],
    answered: [],
    kit: [],
    nominal: 12,
    lamp: false,
  });
  const [input] = understood.type === 'input' ? understood.inputs : [];
  return input?.type === 'answers' && input.answers.length === 1
    ? input.answers[0]?.value
    : undefined;
}
