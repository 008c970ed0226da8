/**
 * A case card played through its flow: whatever is asked, in whatever order, the card answers.
 */
import {
  expected,
  optionsOf,
  openCase,
  positionOf,
  turn,
  type Case,
  type CaseState,
  type Chart,
  type Input,
  type Message,
  type Step,
  type VerdictMessage,
} from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Card } from './card.ts';

/** What replaying a card gives; printed as one line of JSON. */
export interface Replayed extends Played {
  readonly id: string;
  readonly fault: string;
  readonly probability: number;
  readonly strength: VerdictMessage['strength'];
  readonly remedy: string;
  readonly send: string;
  readonly ranking: VerdictMessage['ranking'];
}

/** The same for a flow that ends in decisions: `decision` or `outcome`, as the flow calls it. */
export interface ReplayedDecision extends Played {
  readonly id: string;
  readonly decision?: string;
  readonly outcome?: string;
  readonly reason: string;
}

/** How a card was played. */
interface Played {
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
  const verdict = player.play(({ verdict: given }) => given);
  const { fault, remedy, strength, send } = verdict;
  return {
    id: card.id,
    fault,
    probability: rounded(verdict.probability),
    strength,
    remedy,
    send,
    ranking: verdict.ranking.map(([id, share]) => [id, rounded(share)]),
    ...player.played(
      accepts(card.accept.fault, fault) &&
        accepts(card.accept.remedy, remedy) &&
        accepts(card.accept.strength, strength) &&
        accepts(card.accept.send, send),
    ),
  };
}

/**
 * Plays a card of a flow that ends in decisions to its end: what is asked once more is answered as
 * often as the card has answers for it.
 *
 * @throws ContextError when the card's context is not one.
 */
export function replayDecision(chart: Chart, speaker: Speaker, card: Card): ReplayedDecision {
  const player = new CardPlayer(chart, speaker, card);
  const { called, decide, reason } = player.play(({ decision, outcome }) =>
    outcome === null ? null : decision,
  );
  return {
    id: card.id,
    [called]: decide,
    reason,
    ...player.played(accepts(card.accept[called], decide) && accepts(card.accept.reason, reason)),
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

  /** Plays until something is found in the state of the case. */
  play<Found>(find: (state: CaseState) => Found | null): Found {
    for (;;) {
      const found = find(this.case.state);
      if (found !== null) return found;
      if (this.turns > mostTurns) throw new Error(`the card ${this.#card.id} never ends`);
      this.#take(this.#next());
    }
  }

  /** How it was played; it is right where nothing was asked that the card forbids. */
  played(isAccepted: boolean): Played {
    const { asked, turns } = this;
    return {
      asked,
      minutes: rounded(this.minutes),
      cautions: [...this.#cautions],
      turns,
      ok: isAccepted && !asked.some((check) => this.#card.forbid.includes(check)),
    };
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
    const asked = this.#chart.flow.checks[check];
    const parts = said.split(',').map((part) => part.trim());
    // An id is no typed text: a choice, or a band that stands for a figure or a day.
    if (asked !== undefined && parts.every((part) => optionsOf(asked).includes(part))) {
      return { type: 'answers', answers: [{ check, value: parts }] };
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
