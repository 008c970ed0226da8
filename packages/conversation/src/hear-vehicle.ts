/**
 * What comes of the case of a vehicle that a part comes from. Pure.
 */
import { soldNotBefore, type Input } from '@keyturn/core';
import { hearInputs } from './hear-line.ts';
import { heard } from './heard.ts';
import {
  saying,
  speakerFor,
  standingMessages,
  type HeldCase,
  type Responding,
  type Response,
} from './saying.ts';
import type { VehicleSaid } from './vehicle-said.ts';

/** The check that the case of a vehicle answers. */
const proofCheck = 'vehicle-proof';

/** A code beyond what a context holds is not kept. */
const longestCode = 500;

/** Takes the case of a vehicle, unless it can't be this customer's or is older than the part. */
export function hearVehicle(
  responding: Responding,
  held: HeldCase,
  { at, said }: { readonly at: string; readonly said: VehicleSaid },
): Response {
  const { chart } = responding;
  const speaker = speakerFor(responding, held);
  const { state } = held.case;
  const left = (text: string): Response =>
    saying(responding, held, {
      rendered: [{ kind: 'refused', text }],
      messages: standingMessages(chart, held.case),
    });
  if (said.type !== 'case') return left(speaker.vehicle(faults[said.type]));
  const { code, measured, nominal, proof } = said;
  const part = state.context['part.nominal'];
  if (nominal !== undefined && part !== undefined && nominal !== part) {
    const [found, sold] = [nominal, Number(part)].map(String) as [string, string];
    return left(speaker.vehicle('otherVolts', { found, part: sold }));
  }
  const day = speaker.formatDay(measured.slice(0, 10));
  const sold = soldNotBefore(chart.flow, state, measured);
  if (sold !== undefined) {
    return left(speaker.vehicle('before', { day, sold: speaker.formatDay(sold) }));
  }
  const isAnswered = state.answers[proofCheck] !== undefined;
  const inputs: readonly Input[] = [
    {
      type: 'context',
      set: { 'vehicle.measured': measured, ...(code.length > longestCode ? {} : { case: code }) },
    },
    {
      type: isAnswered ? 'correction' : 'answers',
      answers: [{ check: proofCheck, value: [proof] }],
    },
  ];
  const told = hearInputs(chart, held.case, { at, inputs });
  // That something was learned is said by what the vehicle says.
  const messages = told.messages.filter((one) => one.kind !== 'tell' || one.tell !== 'learned');
  const notices = [speaker.vehicle('taken', { day })];
  return heard(responding, held, { ...told, messages, notices });
}

const faults = { damaged: 'damaged', 'too-new': 'tooNew', 'other-flow': 'otherFlow' } as const;
