/**
 * The case that a card comes to, played on past its verdict to the end.
 */
import { expected, openCase, positionOf, turn, type Case, type Input } from '@keyturn/core';
import type { Card } from '@keyturn/terminal';
import { noStart, speaker } from './no-start.ts';
import { start } from './play.ts';

const { chart } = noStart;

/** Plays a card to its end: what it does not answer cannot be done. */
export function caseOfCard(card: Card): Case {
  const given = new Map<string, number>();
  let kase = openCase(chart, { id: card.id, at: start, context: card.context }).case;
  for (let turns = 0; turns < 500; turns += 1) {
    const position = positionOf(kase);
    if (position.awaiting === 'nothing') return kase;
    kase = take(kase, inputFor(card, kase, given));
  }
  throw new Error(`the card ${card.id} never ends`);
}

function take(kase: Case, input: Input): Case {
  const step = turn(chart, kase, { at: kase.state.at, input });
  if (!step.messages.some(({ kind }) => kind === 'refused')) return step.case;
  return turn(chart, kase, { at: kase.state.at, input: { type: 'talk', talk: 'cannot' } }).case;
}

function inputFor(card: Card, kase: Case, given: Map<string, number>): Input {
  const position = positionOf(kase);
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting === 'wait') return { type: 'waited' };
  if (position.awaiting !== 'answer') return { type: 'resume' };
  const { check } = position;
  const said = [card.answers[check] ?? []].flat()[given.get(check) ?? 0];
  given.set(check, (given.get(check) ?? 0) + 1);
  if (said === undefined) return { type: 'talk', talk: 'cannot' };
  const form = chart.flow.checks[check]?.form;
  const parts = said.split(',').map((part) => part.trim());
  if (form?.kind === 'choice' && parts.every((part) => form.choices.includes(part))) {
    return { type: 'answers', answers: [{ check, value: parts }] };
  }
  const understood = speaker.understand(said, expected(chart, kase));
  const [first] = understood.type === 'input' ? understood.inputs : [];
  return first ?? { type: 'talk', talk: 'cannot' };
}
