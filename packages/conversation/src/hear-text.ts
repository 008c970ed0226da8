/**
 * What comes of a text that was typed, or put into other words afterwards. Pure.
 */
import { expected, positionOf, type CaseEvent, type Input, type Message } from '@keyturn/core';
import { heard } from './heard.ts';
import { asksOfDanger, hearInputs, hearLine } from './hear-line.ts';
import { hearVehicle } from './hear-vehicle.ts';
import {
  saying,
  speakerFor,
  standingMessages,
  type HeldCase,
  type Responding,
  type Response,
} from './saying.ts';
import { withTaken } from './standing.ts';

/** A text, and when it came. */
export interface Typed {
  readonly at: string;
  readonly writtenAt?: string | undefined;
  readonly text: string;
  readonly id?: string | undefined;
  /** What is said before the answer. */
  readonly before?: readonly Message[];
}

/** Takes a typed text. */
export function hearText(responding: Responding, held: HeldCase, typed: Typed): Response {
  const { chart } = responding;
  const { standing } = held;
  const line = cleanText(typed.text);
  const said = responding.vehicleOf?.(line);
  if (said !== undefined) return hearVehicle(responding, held, { at: typed.at, said });
  const isConfirmed = positionOf(held.case).awaiting === 'confirm' && !asksOfDanger(standing);
  const thumb = isConfirmed ? thumbInput(line) : undefined;
  const told =
    thumb === undefined
      ? hearLine(
          {
            chart,
            speaker: speakerFor(responding, held),
            byHand: responding.byHandIn?.(held.standing.locale),
          },
          { case: held.case, offers: standing.offers },
          { at: typed.at, line },
        )
      : hearInputs(chart, held.case, { at: typed.at, inputs: [thumb] });
  const confirms = told.events.some(({ type }) => type === 'confirmed');
  if (confirms && isTooEarly(held, typed)) {
    const first = saying(responding, held, {
      rendered: [{ kind: 'refused', text: speakerFor(responding, held).key('readFirst') }],
      messages: standingMessages(chart, held.case),
    });
    // Clocks may differ: said once more it counts.
    return { ...first, standing: { ...first.standing, cautionedAt: null } };
  }
  const messages = [...(typed.before ?? []), ...told.messages];
  const response = heard(responding, held, { ...told, messages });
  return remembering(response, typed.id, told.events);
}

/** What a thumb says to a caution, whatever its colour: that it was read, or that it can't be done. */
function thumbInput(line: string): Input | undefined {
  const thumb = /^(?:([👍👌])|👎)\p{Emoji_Modifier}?\uFE0F?$/u.exec(line);
  if (thumb === null) return undefined;
  return thumb[1] === undefined ? { type: 'talk', talk: 'cannot' } : { type: 'confirm' };
}

/** A “yes” that was on its way while the caution was written is no answer to it. */
function isTooEarly({ standing }: HeldCase, { writtenAt }: Typed): boolean {
  const { cautionedAt } = standing;
  if (writtenAt === undefined || cautionedAt === null) return false;
  return Date.parse(writtenAt) < Date.parse(cautionedAt);
}

/** Takes an earlier text in its new words: what it answered is corrected, and nothing else. */
export function hearEdited(
  responding: Responding,
  held: HeldCase,
  edited: { readonly at: string; readonly of: string; readonly text: string },
): Response {
  const { chart } = responding;
  const { at, of, text } = edited;
  const checks = held.standing.taken.find(({ id }) => id === of)?.checks;
  const [check] = checks ?? [];
  // Nothing was taken of it then, so that its new words are heard for the first time.
  if (checks !== undefined && check === undefined) {
    return hearText(responding, held, { at, text, id: of });
  }
  const speaker = speakerFor(responding, held);
  const unplaced = (): Response =>
    saying(responding, held, {
      rendered: [{ kind: 'refused', text: speaker.key('oldEdit') }],
      messages: standingMessages(chart, held.case),
    });
  if (check === undefined) return unplaced();
  const understood = speaker.understand(cleanText(text), {
    ...expected(chart, held.case),
    awaiting: 'answer',
    check,
    // Whatever the text told is put right.
    said: {},
  });
  if (understood.type === 'language') return unplaced();
  if (understood.type !== 'input') {
    return saying(responding, held, { rendered: speaker.askBack(understood) });
  }
  const inputs = understood.inputs.map((input) => corrected(input, held.case.state.order));
  if (!inputs.some(({ type }) => type !== 'talk')) return unplaced();
  const told = hearInputs(chart, held.case, { at, inputs });
  return remembering(heard(responding, held, told), of, told.events);
}

/** Answers to what was answered before, as the corrections that they are. */
function corrected(input: Input, answered: readonly string[]): Input {
  if (input.type !== 'answers') return input;
  return input.answers.every(({ check }) => answered.includes(check))
    ? { ...input, type: 'correction' }
    : input;
}

function remembering(
  response: Response,
  id: string | undefined,
  events: readonly CaseEvent[],
): Response {
  if (id === undefined) return response;
  // What was told in passing answered nothing yet.
  const checks = events.flatMap((event) =>
    (event.type === 'answered' && !event.isPart) || event.type === 'corrected' ? [event.check] : [],
  );
  return { ...response, standing: withTaken(response.standing, { id, checks }) };
}

/** A text without what would move a cursor, turn its direction or hide a part of it. */
export function cleanText(text: string): string {
  return text
    .replaceAll(/[\p{Cc}\p{Cf}\p{Cs}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
