/**
 * A case card played through its flow: whatever is asked, in whatever order, the card answers.
 */
import {
  expected,
  openCase,
  positionOf,
  turn,
  type Case,
  type Chart,
  type Input,
  type Message,
  type Step,
  type VerdictMessage,
} from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Card } from './card.ts';

/** What replaying a card gives; printed as one line of JSON. */
export interface Replayed {
  readonly id: string;
  readonly fault: string;
  readonly probability: number;
  readonly strength: VerdictMessage['strength'];
  readonly remedy: string;
  readonly send: string;
  readonly ranking: VerdictMessage['ranking'];
  /** Checks in the order asked, up to the verdict. */
  readonly asked: readonly string[];
  /** The stated minutes of the checks that were done. */
  readonly minutes: number;
  readonly cautions: readonly string[];
  readonly turns: number;
  readonly ok: boolean;
}

/** Cards have no clock of their own. */
const cardTime = '2026-01-01T08:00:00.000Z';

/** A card that takes more turns than this is not getting anywhere. */
const mostTurns = 500;

/**
 * Plays a card up to its verdict. What the card does not say of the context is taken as not known
 * and is not asked for, since nobody is there to say it.
 *
 * @throws ContextError when the card's context is not one.
 */
export function replayCard(chart: Chart, speaker: Speaker, card: Card): Replayed {
  const player = new CardPlayer(chart, speaker, card);
  const verdict = player.play();
  const { asked } = player;
  const { fault, remedy, strength, send } = verdict;
  return {
    id: card.id,
    fault,
    probability: rounded(verdict.probability),
    strength,
    remedy,
    send,
    ranking: verdict.ranking.map(([id, share]) => [id, rounded(share)]),
    asked,
    minutes: rounded(player.minutes),
    cautions: player.cautions,
    turns: player.turns,
    ok:
      accepts(card.accept.fault, fault) &&
      accepts(card.accept.remedy, remedy) &&
      accepts(card.accept.strength, strength) &&
      accepts(card.accept.send, send) &&
      !asked.some((check) => card.forbid.includes(check)),
  };
}

function accepts(list: readonly string[] | undefined, value: string): boolean {
  return list === undefined || list.includes(value);
}

function rounded(value: number): number {
  return Number(value.toFixed(4));
}

/** Checks that fill the context, but for those that the card answers. */
function unaskedChecks(chart: Chart, card: Card): readonly string[] {
  return Object.values(chart.flow.checks)
    .filter(({ sets, writes }) => writes !== undefined || Object.keys(sets).length > 0)
    .map(({ id }) => id)
    .filter((id) => card.answers[id] === undefined);
}

class CardPlayer {
  readonly #chart: Chart;
  readonly #speaker: Speaker;
  readonly #card: Card;
  readonly #given = new Map<string, number>();
  readonly #cautions = new Set<string>();
  #step: Step;
  readonly asked: string[] = [];
  turns = 1;
  minutes = 0;

  constructor(chart: Chart, speaker: Speaker, card: Card) {
    this.#chart = chart;
    this.#speaker = speaker;
    this.#card = card;
    this.#step = openCase(chart, {
      id: card.id,
      at: cardTime,
      context: card.context,
      notAsked: unaskedChecks(chart, card),
    });
    this.#note(this.#step.messages);
  }

  get case(): Case {
    return this.#step.case;
  }

  get cautions(): readonly string[] {
    return [...this.#cautions];
  }

  play(): VerdictMessage {
    while (this.case.state.verdict === null) {
      if (this.turns > mostTurns) throw new Error(`the card ${this.#card.id} never ends`);
      this.#take(this.#next());
    }
    return this.case.state.verdict;
  }

  #next(): Input {
    const position = positionOf(this.case);
    switch (position.awaiting) {
      case 'confirm':
        return { type: 'confirm' };
      case 'wait':
        return { type: 'waited' };
      case 'answer':
        if (!this.asked.includes(position.check)) this.asked.push(position.check);
        return this.#answer(position.check);
      default:
        return { type: 'resume' };
    }
  }

  /** The card's answer, understood as a person's would be; nothing said is "cannot do". */
  #answer(check: string): Input {
    const cannot: Input = { type: 'talk', talk: 'cannot' };
    const said = this.#said(check);
    if (said === undefined) return cannot;
    const options = this.#chart.flow.checks[check];
    if (options?.form.kind === 'choice') {
      const parts = said.split(',').map((part) => part.trim());
      const { choices } = options.form;
      if (parts.every((part) => choices.includes(part))) {
        return { type: 'answers', answers: [{ check, value: parts }] };
      }
    }
    const understood = this.#speaker.understand(said, expected(this.#chart, this.case));
    const [first] = understood.type === 'input' ? understood.inputs : [];
    return first ?? cannot;
  }

  #said(check: string): string | undefined {
    const answers = this.#card.answers[check];
    const time = this.#given.get(check) ?? 0;
    this.#given.set(check, time + 1);
    const list = typeof answers === 'string' ? [answers] : answers;
    return list?.[time];
  }

  #take(input: Input): void {
    const before = this.case;
    const position = positionOf(before);
    this.#step = turn(this.#chart, before, { at: before.state.at, input });
    if (this.#step.messages.some(({ kind }) => kind === 'refused')) {
      this.#step = turn(this.#chart, before, {
        at: before.state.at,
        input: { type: 'talk', talk: 'cannot' },
      });
    } else if (input.type === 'answers' && 'check' in position) {
      this.minutes += this.#chart.flow.checks[position.check]?.minutes ?? 0;
    }
    this.turns += 1;
    this.#note(this.#step.messages);
  }

  #note(messages: readonly Message[]): void {
    for (const message of messages) {
      if (message.kind === 'caution') this.#cautions.add(message.caution);
    }
  }
}
