/**
 * What comes of a key that was tapped. Pure.
 */
import type { Part } from './channel.ts';
import type { HeldCase, Responding, Response } from './saying.ts';
import { partsOf, saying, speakerFor, standingMessages } from './saying.ts';
import { heard } from './heard.ts';
import { hearInputs } from './hear-line.ts';
import { draftParts } from './parts.ts';
import { tapOf } from './standing.ts';

/** The key that was tapped, and on what. */
export interface Tapped {
  readonly at: string;
  readonly id: string;
  readonly on: Part['replaces'];
}

/** A key does what it did when it was shown; one of an earlier question does nothing. */
export function tapped(responding: Responding, held: HeldCase, given: Tapped): Response | 'begin' {
  const { standing } = held;
  const speaker = speakerFor(responding, held);
  const tap = tapOf(standing, given.id);
  if (tap === undefined || tap === 'old') {
    // An impatient finger taps twice; the first tap has had its answer.
    if (given.id === standing.tapped) return { ...held, events: [], parts: [] };
    return saying(responding, held, {
      rendered: [{ kind: 'refused', text: speaker.key('oldKey') }],
      messages: standingMessages(responding.chart, held.case),
    });
  }
  if (tap.type === 'begin') return 'begin';
  if (tap.type === 'pick') return pick(responding, held, { option: tap.option, on: given.on });
  const response =
    tap.type === 'take'
      ? takePicked(responding, held, { at: given.at, check: tap.check })
      : heard(
          responding,
          held,
          hearInputs(responding.chart, held.case, { at: given.at, inputs: [tap.input] }),
        );
  const isTaken = response.events.length > 0 || tap.type === 'input';
  return isTaken ? { ...response, standing: { ...response.standing, tapped: given.id } } : response;
}

/** Takes those that are picked as the answer, where any are. */
export function takePicked(
  responding: Responding,
  held: HeldCase,
  { at, check }: { readonly at: string; readonly check: string },
): Response {
  const { picked } = held.standing;
  if (picked.length === 0) {
    return saying(responding, held, {
      rendered: [{ kind: 'refused', text: speakerFor(responding, held).key('pickFirst') }],
    });
  }
  const input = { type: 'answers', answers: [{ check, value: picked }] };
  return heard(responding, held, hearInputs(responding.chart, held.case, { at, inputs: [input] }));
}

/** Marks one of several answers, on the very message that it was tapped on. */
function pick(
  responding: Responding,
  held: HeldCase,
  { option, on }: { readonly option: string; readonly on: Part['replaces'] },
): Response {
  const { limits, chart } = responding;
  const { picked } = held.standing;
  const now = picked.includes(option)
    ? picked.filter((one) => one !== option)
    : [...picked, option];
  const standing = { ...held.standing, picked: now };
  const speaker = speakerFor(responding, held);
  const question = speaker
    .render(standingMessages(chart, held.case))
    .filter(({ kind }) => kind === 'question');
  const canGoBack = held.case.state.order.length > 0;
  const drafts = draftParts(question, { speaker, limits, canGoBack });
  const { parts } = partsOf(responding, standing, { drafts });
  const replacing = parts.map((part) => (on === undefined ? part : { ...part, replaces: on }));
  return { standing, case: held.case, events: [], parts: replacing };
}
