/**
 * The return in hand as it is shown: what is kept of it, and what was worked out of that.
 */
import type { AskMessage, Flow } from '@keyturn/core';
import type { Rendered } from '@keyturn/language';
import type { Sheet } from '@keyturn/sheets';
import type { Laid, Turned } from '../engine/engine.ts';
import type { CounterVoice } from './counter-voice.ts';
import { inventedReturns } from './demo/invented-shop.ts';
import type { TypedFigure } from './engine/typed-figure.ts';
import type { Measured } from './vehicle/measured-by-hand.ts';
import type { CounterReturn } from './return/counter-return.ts';
import type { InHand } from './view/shown.ts';

/** What was worked out of the return in hand. */
export interface Lying {
  readonly id: string;
  readonly laid: Laid;
  readonly unclear: Turned['unclear'] | undefined;
  /** The figures that are asked for now, by check. */
  readonly figures: Readonly<Record<string, TypedFigure>>;
  /** What is typed by hand of the vehicle, judged; undefined while nothing is. */
  readonly measured?: Measured;
  /** The questions after the one in hand that stand on the same screen. */
  readonly ahead: readonly AskMessage[];
  readonly sheet?: Sheet;
}

/** The return in hand in the language of the counter. */
export function inHandOf(
  lying: Lying,
  given: {
    readonly back: CounterReturn;
    readonly flow: Flow;
    readonly voice: CounterVoice;
    readonly isBusy: boolean;
  },
): InHand {
  const { back, flow, voice, isBusy } = given;
  const speaker = voice.speakerFor(back.part);
  return {
    back,
    laid: lying.laid,
    flow,
    speaker,
    texts: voice.textsFor(back.part),
    vehicle: { flow: voice.vehicle, speaker: voice.vehicleSpeaker },
    figures: lying.figures,
    measured: lying.measured,
    ahead: lying.ahead,
    sheet: lying.sheet,
    offers: lying.unclear?.type === 'offers' ? lying.unclear.offers : [],
    said: saidLast(lying, speaker),
    isBusy,
    invented: inventedReturns.find(({ id }) => id === back.practice),
  };
}

/** The same return, with nothing said of what was refused or not understood. */
export function withoutErrors(lying: Lying): Lying {
  const { laid } = lying;
  const said = laid.sitting.said.filter(({ kind }) => kind !== 'refused');
  return {
    ...lying,
    unclear: undefined,
    laid: { ...laid, sitting: { ...laid.sitting, said } },
  };
}

/**
 * What was said last and has no place of its own: what was found, what was told of part and sale, and
 * the decision have theirs.
 */
function saidLast({ laid, unclear }: Lying, speaker: InHand['speaker']): readonly Rendered[] {
  const said = laid.sitting.said.filter(
    (message) =>
      message.kind !== 'reading' &&
      message.kind !== 'noted' &&
      message.kind !== 'decision' &&
      (message.kind !== 'tell' || !['opening', 'learned'].includes(message.tell)),
  );
  return [...(unclear === undefined ? [] : speaker.askBack(unclear)), ...speaker.render(said)];
}
