/**
 * What is known of a part that comes back before the first question: the shop's terms, and what the
 * case of the vehicle says.
 */
import { existsSync } from 'node:fs';
import { vehicleProof, type Case, type Flow, type Opening } from '@keyturn/core';
import { shippedFlow, shopTerms } from '@keyturn/flows';
import { caseOf, readCaseFile } from './case-file.ts';

/** What a return is opened with. */
export type KnownOfReturn = Pick<Opening, 'policy' | 'answers'>;

/** What the command line tells of a return cannot be used; the message says why. */
export class ReturnError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'ReturnError';
  }
}

/** The check that the case of the vehicle answers. */
const proofCheck = 'vehicle-proof';

/** The flow of a vehicle's case. */
const vehicleFlow = 'no-start';

/**
 * Reads the terms and the case that the command line names.
 *
 * @throws TermsError or CaseFileError when the file cannot be used, ReturnError when the code is none
 *   or the flow takes no part back.
 */
export async function knownOfReturn(
  flow: Flow,
  given: { readonly terms?: string; readonly vehicle?: string },
): Promise<KnownOfReturn> {
  const { terms, vehicle } = given;
  const { part } = flow;
  if (terms === undefined && vehicle === undefined) return {};
  if (part === undefined) throw new ReturnError(`the flow ${flow.id} takes no part back`);
  const policy = terms === undefined ? undefined : shopTerms(terms);
  if (vehicle === undefined) return policy === undefined ? {} : { policy };
  const { chart } = shippedFlow(vehicleFlow, 'en');
  const kase = existsSync(vehicle)
    ? caseOf(chart, vehicle, readCaseFile(vehicle).events)
    : await caseByCode(vehicle);
  const proof = vehicleProof(chart.flow, kase.state, part);
  return {
    ...(policy === undefined ? {} : { policy }),
    answers: [{ check: proofCheck, value: [proof] }],
  };
}

/** Loaded where it is wanted: what makes sheets takes longer to load than the rest of the program. */
async function caseByCode(code: string): Promise<Case> {
  const { CodeError, decodeFindings, replayFindings } = await import('@keyturn/sheets');
  const { chart } = shippedFlow(vehicleFlow, 'en');
  try {
    return replayFindings(chart, decodeFindings([chart.flow], code)).case;
  } catch (error) {
    if (!(error instanceof CodeError)) throw error;
    throw new ReturnError(`${code}: neither a file nor the code of a case: ${error.message}`);
  }
}
