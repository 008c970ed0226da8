import { looksLikeDay, type NotedMessage, type ReadingMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { sayEnds } from './bound.ts';
import { mostLikely } from './most-likely.ts';

/** A reading and what it means, where that can be told; close to a bound, how likely each side is. */
export function renderReading(message: ReadingMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const { check, band, bands } = message;
  const figure = figures.formatQuantity(message.quantity);
  // Its bounds hang on what is not known of the vehicle: an electronic tester's, on the label.
  if (band === '') {
    const { unjudged } = flow.check(check);
    const text =
      unjudged === undefined
        ? say('reading.unjudged', { figure })
        : say('reading.plain', { figure, means: unjudged });
    return [{ kind: 'text', text }];
  }
  const shares = mostLikely(message.weights, message.weights.length).map(([id, share]) =>
    say('reading.share', {
      share: figures.formatShare(share),
      label: flow.answerLabel(check, id),
    }),
  );
  const means = meaning(message, shares, voice);
  const text = wording(message, { figure, means, share: shares[0] ?? '' }, voice);
  const said = [text, settling(message, voice), expectation(message, voice)];
  const bandLabels = bands.map((id) => flow.answerLabel(check, id));
  return [
    {
      kind: 'scale',
      text: said.filter((one) => one !== '').join(' '),
      means,
      reading: message,
      bandLabels,
    },
  ];
}

function meaning(message: ReadingMessage, shares: readonly string[], voice: Voice): string {
  const { flow, figures } = voice;
  if (!message.borderline) return flow.answerMeaning(message.check, message.band);
  return isDecidedByTable(voice) ? betweenBands(message, voice) : figures.listShares(shares);
}

/** To a table of decisions what is too close to call is no answer, however likely one side is. */
const isDecidedByTable = ({ flow }: Voice): boolean => flow.texts.decisions !== undefined;

/** The two bands between which a reading can't be told. */
function betweenBands({ check, weights }: ReadingMessage, { say, flow, figures }: Voice): string {
  const labels = mostLikely(weights, 2).map(([id]) => flow.answerLabel(check, id));
  return say('reading.between', { bands: figures.listAny(labels) });
}

function wording(
  message: ReadingMessage,
  said: { readonly figure: string; readonly means: string; readonly share: string },
  voice: Voice,
): string {
  const { figure, means, share } = said;
  const { say } = voice;
  if (!message.borderline || isDecidedByTable(voice))
    return say('reading.plain', { figure, means });
  return isLikely(message)
    ? say('reading.likely', { figure, share })
    : say('reading.borderline', { figure, shares: means });
}

/** From this share on one side of a bound is called likely, and not too close to call. */
const likely = 0.8;

const isLikely = ({ weights }: ReadingMessage): boolean =>
  weights.some(([, share]) => share >= likely);

/** What settles a reading too close to a bound. */
function settling(message: ReadingMessage, { say, flow }: Voice): string {
  const { check, settling: way } = message;
  // What is likely needs no more, unless it is read again anyway.
  if (isLikely(message) && way?.by !== 'repeat') return '';
  switch (way?.by) {
    case 'repeat':
      return say('reading.repeat');
    case 'time':
      return flow.settling(check);
    case 'check':
      return say('reading.settles', { name: flow.checkName(way.check ?? '') });
    default:
      return '';
  }
}

function expectation({ expected, unit }: ReadingMessage, voice: Voice): string {
  return expected === undefined
    ? ''
    : voice.say('reading.expected', sayEnds(expected, unit, voice));
}

/** What was taken of an answer, said back in short. */
export function renderNoted({ check, answer }: NotedMessage, voice: Voice): Rendered[] {
  const { say, flow, figures } = voice;
  const name = flow.checkName(check);
  const labels = answer.map((id) =>
    looksLikeDay(id) ? figures.formatDay(id) : flow.answerLabel(check, id),
  );
  const text =
    labels.length === 0
      ? say('noted.notKnown', { name })
      : say('noted.answer', { name, answer: figures.listAll(labels) });
  return [{ kind: 'text', text }];
}
