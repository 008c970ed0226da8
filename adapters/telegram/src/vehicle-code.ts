/**
 * The code of a vehicle's case, wherever it stands in a text.
 */
import type { VehicleSaid } from '@keyturn/conversation/kept';
import { vehicleProof, type Case, type Chart, type SoldPart } from '@keyturn/core';
import { CodeError, decodeFindings, replayFindings } from '@keyturn/sheets';

/** From where a code begins, whatever follows it; its letters may stand in groups, as on a sheet. */
const fromCode = /\bKT\d[\dA-Z]*(?:[\s-]+[\dA-Z]+)*/iu;

/** Fewer letters are no code, in however many groups. */
const leastLetters = 16;

/**
 * What the code in a text says of a part; undefined where no code stands in it.
 *
 * @param chart - That of the flow of vehicles' cases.
 */
export function vehicleSaid(chart: Chart, part: SoldPart, text: string): VehicleSaid | undefined {
  const [found = ''] = fromCode.exec(text) ?? [];
  const groups = found.split(/[\s-]+/u);
  let fault: CodeError['code'] | undefined;
  // Words may follow it; what is too much fails the checksum.
  for (let count = groups.length; count > 0; count -= 1) {
    const code = groups.slice(0, count).join('').toUpperCase();
    if (code.length < leastLetters) break;
    try {
      const kase = replayFindings(chart, decodeFindings([chart.flow], code)).case;
      return { type: 'case', code, ...saysOf(chart, kase, part) };
    } catch (error) {
      if (!(error instanceof CodeError)) throw error;
      if (fault === undefined || fault === 'damaged') fault = error.code;
    }
  }
  switch (fault) {
    case undefined:
    case 'empty':
    case 'foreign':
      return undefined;
    case 'unknown-finding':
      return { type: 'too-new' };
    default:
      return { type: fault };
  }
}

function saysOf(chart: Chart, { state }: Case, part: SoldPart) {
  return {
    measured: state.at,
    nominal: state.context['vehicle.nominal'] as number | undefined,
    proof: vehicleProof(chart.flow, state, part),
  };
}
