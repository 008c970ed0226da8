import type { NumbersMessage, ReadingMessage } from '@keyturn/core';
import type { Rendered, RenderedSection } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { sayBound, sayExpected, stepFor } from './bound.ts';

/** Two standard uncertainties: the true value is in there 19 times out of 20. */
const coverage = 2;

/** The numbers behind a case: each reading with its spread, and where the volts are lost. */
export function renderNumbers(message: NumbersMessage, voice: Voice): Rendered[] {
  const sections = [
    ...message.readings.map((reading) => readingSection(reading, voice)),
    lossSection(message, voice),
  ].filter(({ lines }) => lines.length > 0);
  return sections.length === 0
    ? [{ kind: 'text', text: voice.say('numbers.none') }]
    : [{ kind: 'numbers', sections }];
}

function readingSection(reading: ReadingMessage, voice: Voice): RenderedSection {
  const { say, flow, figures } = voice;
  const { check, quantity, uncertainty, expected, unit, bounds, weights } = reading;
  const spread = coverage * uncertainty;
  const shares = weights
    .filter(([, share]) => share >= 0.005)
    .map(([band, share]) =>
      say('numbers.share', {
        label: flow.answerLabel(check, band),
        share: figures.formatShare(share),
      }),
    );
  return {
    id: check,
    heading: say('numbers.reading', {
      name: flow.checkName(check),
      figure: figures.formatQuantity(quantity),
      spread: figures.formatQuantity({
        value: spread,
        unit: quantity.unit,
        resolution: stepFor(spread / 4),
      }),
    }),
    lines: [
      ...(expected === undefined ? [] : [sayExpected(expected, unit, voice)]),
      ...bounds.map((bound) => sayBound(bound, unit, voice)),
      ...(shares.length === 0 ? [] : [say('numbers.shares', { shares: figures.listAll(shares) })]),
    ],
  };
}

function lossSection(
  { losses: { losses, atMotor } }: NumbersMessage,
  voice: Voice,
): RenderedSection {
  const { say, figures } = voice;
  const lines = losses.map(({ part, loss, resistance, share }) => {
    const spread = (loss.high - loss.low) / 2;
    const resolution = Math.max(1, stepFor(spread));
    const said = {
      part: say(`numbers.${part}`),
      loss: figures.formatQuantity({ value: loss.best, unit: loss.unit, resolution }),
      spread: figures.formatQuantity({ value: spread, unit: loss.unit, resolution }),
      share: figures.formatShare(share),
    };
    if (resistance === undefined) return say('numbers.loss', said);
    const milliohms = { value: resistance.best, unit: resistance.unit, resolution: 0.1 };
    return say('numbers.lossResistance', {
      ...said,
      resistance: figures.formatQuantity(milliohms),
    });
  });
  const rest =
    atMotor === undefined
      ? []
      : [
          say('numbers.atMotor', {
            volts: figures.formatQuantity({ value: atMotor.best, unit: 'V', resolution: 0.01 }),
          }),
        ];
  return { id: 'losses', heading: say('numbers.losses'), lines: [...lines, ...rest] };
}
