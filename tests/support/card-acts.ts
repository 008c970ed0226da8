/**
 * What somebody whose vehicle is that of a case card does next on a channel with keys.
 */
import { expected, openCase, positionOf, repeat, type AskMessage, type Case } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Card } from '@keyturn/terminal';
import { noStart, speaker } from './no-start.ts';

const { chart } = noStart;

/** A key tapped, by its number or the beginning of its label, or a text typed. */
export type Act =
  | { readonly type: 'tap'; readonly key: number | string }
  | { readonly type: 'say'; readonly text: string };

/** A figure as it is read. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly resolution?: number;
}

/** Somebody with a card. */
export interface Holder {
  readonly card: Card;
  readonly spoken: Speaker;
  /** The checks that were put before. */
  readonly asked: readonly string[];
  /**
   * What is read where the card says this.
   *
   * @defaultValue what the card says
   */
  readonly read?: (figure: Figure) => Figure;
}

/** The acts that answer what stands: more than one where several answers are picked and taken. */
export function nextActs(kase: Case, holder: Holder): readonly Act[] {
  const position = positionOf(kase);
  if (position.awaiting !== 'answer') return [{ type: 'tap', key: 0 }];
  const { card, spoken, asked, read = (figure: Figure) => figure } = holder;
  const { check } = position;
  const time = asked.filter((one) => one === check).length;
  const given: string | readonly string[] | undefined =
    card.answers[check] ?? knownAnswer(card, check);
  const said = typeof given === 'string' ? [given][time] : given?.[time];
  const ask = repeat(chart, kase).find((message): message is AskMessage => message.kind === 'ask');
  const meant = said === undefined || ask === undefined ? undefined : meaningOf(said, ask, kase);
  if (ask === undefined || meant === undefined) {
    return [{ type: 'tap', key: spoken.key('cannot') }];
  }
  if (!isListed(meant)) return [{ type: 'say', text: spoken.formatQuantity(read(meant)) }];
  const keys = ask.lamp.length > 0 ? ask.lamp : ask.options;
  const picked = meant.map((option): Act => ({ type: 'tap', key: keys.indexOf(option) }));
  const isOpen = ask.form === 'choices' && !meant.includes('none');
  return isOpen ? [...picked, { type: 'tap', key: spoken.key('take') }] : picked;
}

function isListed(meant: readonly string[] | Figure): meant is readonly string[] {
  return Array.isArray(meant);
}

/** Choice ids, or a figure, as the card's words mean it; undefined where they are not understood. */
function meaningOf(
  said: string,
  ask: AskMessage,
  kase: Case,
): readonly string[] | Figure | undefined {
  const parts = said.split(',').map((part) => part.trim());
  if (parts.every((part) => ask.options.includes(part))) return parts;
  const understood = speaker.understand(said, expected(chart, kase));
  const [input] = understood.type === 'input' ? understood.inputs : [];
  const [given] = input?.type === 'answers' ? input.answers : [];
  return given?.check === ask.check ? (given.value as readonly string[] | Figure) : undefined;
}

/** What the card's context says of a check, as it is answered; undefined where it says nothing. */
function knownAnswer(card: Card, check: string): string | undefined {
  const { context } = openCase(chart, { id: card.id, at: opened, context: card.context }).case
    .state;
  const { sets = {}, writes } = chart.flow.checks[check] ?? {};
  const written = writes === undefined ? undefined : context[writes];
  if (written !== undefined) return [written].flat().map(String).join(', ');
  const known = Object.entries(sets).find(([, set]) =>
    Object.entries(set).every(
      ([field, value]) => JSON.stringify(context[field]) === JSON.stringify(value),
    ),
  );
  return known?.[0];
}

const opened = '2026-01-01T08:00:00.000Z';
