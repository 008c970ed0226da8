/**
 * The picture that goes with a question or a verdict, as data: a channel that can show one draws
 * it. Pure.
 */
import type { Case, Chart, Message } from '@keyturn/core';
import { circuitOf, isReadWithClamp, type CircuitView, type Probes } from '@keyturn/drawings';
import type { Speaker } from '@keyturn/language';

/** What is to be drawn. */
export type Picture =
  /** Where the leads of the meter go. */
  | { readonly type: 'probes'; readonly probes: Probes }
  /** How a clamp meter is held. */
  | { readonly type: 'clamp' }
  /** The start circuit with what was measured, and what is at fault. */
  | { readonly type: 'circuit'; readonly view: CircuitView };

/** A picture, the line under it, and what it goes with. */
export interface Pictured {
  /** The check that is asked, or the verdict. */
  readonly of: string;
  readonly goes: 'before-question' | 'after-verdict';
  readonly picture: Picture;
  readonly title: string;
}

/** The picture of what is said; undefined where words say it all. */
export function pictureOf(
  messages: readonly Message[],
  { chart, case: kase, speaker }: { chart: Chart; case: Case; speaker: Speaker },
): Pictured | undefined {
  const verdict = messages.find((one) => one.kind === 'verdict');
  if (verdict === undefined) {
    const ask = messages.findLast((one) => one.kind === 'ask');
    return ask === undefined || ask.remembered ? undefined : pictureToAsk(ask, chart, speaker);
  }
  const view = circuitOf(chart, kase, speaker.faultName);
  if (view.found?.length === 0) return undefined;
  return {
    of: `verdict ${verdict.fault}`,
    goes: 'after-verdict',
    picture: { type: 'circuit', view },
    title: speaker.drawing('circuit'),
  };
}

function pictureToAsk(
  { check, probes }: Extract<Message, { kind: 'ask' }>,
  chart: Chart,
  speaker: Speaker,
): Pictured | undefined {
  const goes = 'before-question';
  if (probes !== undefined) {
    const title = speaker.drawing('probes');
    return { of: check, goes, picture: { type: 'probes', probes }, title };
  }
  return isReadWithClamp(chart.flow.checks[check])
    ? { of: check, goes, picture: { type: 'clamp' }, title: speaker.drawing('clamp') }
    : undefined;
}
