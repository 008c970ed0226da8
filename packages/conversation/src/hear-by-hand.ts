/**
 * Readings of the vehicle that a part comes from, typed where it is asked what was measured on it:
 * judged as its case would be, and never taken for figures of the bench. Pure.
 */
import {
  caseByHand,
  positionOf,
  proofGrounds,
  vehicleProof,
  type Chart,
  type Input,
} from '@keyturn/core';
import { readingsSaid, sayGrounds, type VehicleListener } from '@keyturn/language';
import type { HearByHand } from './hear-line.ts';

/** The check that the vehicle answers. */
const proofCheck = 'vehicle-proof';

/**
 * Makes what hears them in one language.
 *
 * @param vehicleIn - Gives who hears them, with the chart of the flow of vehicles' cases; it is asked
 *   for once the first may be told.
 */
export function hearsByHand(
  vehicleIn: () => VehicleListener & { readonly chart: Chart },
): HearByHand {
  return ({ flow }, kase, { at, line, understood }) => {
    const { part } = flow;
    const position = positionOf(kase);
    const isAsked = 'check' in position && position.check === proofCheck;
    if (part === undefined || !isAsked || position.awaiting !== 'answer') return undefined;
    const vehicle = vehicleIn();
    const { chart, speaker } = vehicle;
    const { context, answers } = kase.state;
    const nominal = context['part.nominal'] === 24 ? 24 : 12;
    const said = readingsSaid(line, vehicle, { part, nominal, meant: understood });
    if (said === undefined) return undefined;
    if (said.type === 'unclear') {
      const asked = speaker.askBack(said.unclear);
      const isFigure = understood.type === 'input' && understood.inputs.some(tellsReading);
      return isFigure ? { inputs: [], notices: asked.flatMap(textOf) } : undefined;
    }
    const claim = answers['claim']?.at(-1);
    const { case: told, messages } = caseByHand(
      chart,
      { id: kase.id, at },
      {
        part,
        claim: Array.isArray(claim) ? (claim as readonly string[])[0] : undefined,
        vehicle: { nominal },
        readings: said.readings,
      },
    );
    const refused = messages.filter(({ kind }) => kind === 'refused');
    if (refused.length > 0) {
      return { inputs: [], notices: speaker.render(refused).flatMap(textOf) };
    }
    const proof = vehicleProof(chart.flow, told.state, part);
    const readings = messages.filter((one) => one.kind === 'reading');
    const heard = readings
      .filter(({ check }) => said.readings.some((one) => one.check === check))
      .map(({ check, quantity }) =>
        [speaker.checkName(check), speaker.formatQuantity(quantity)].join(' '),
      );
    const grounds = proofGrounds(chart.flow, told.state, part);
    return {
      inputs: [{ type: 'answers', answers: [{ check: proofCheck, value: [proof] }] }],
      notices: [
        speaker.vehicle('byHand', { what: speaker.figures.listAll(heard) }),
        ...sayGrounds(speaker, { part, proof, grounds, readings }),
        speaker.vehicle('byHandCounts'),
      ],
    };
  };
}

function tellsReading(input: Input): boolean {
  return input.type === 'answers' && input.answers.some(({ value }) => 'value' in value);
}

function textOf(one: object): readonly string[] {
  return 'text' in one && typeof one.text === 'string' ? [one.text] : [];
}
