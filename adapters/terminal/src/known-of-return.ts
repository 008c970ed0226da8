/**
 * What is known of a part that comes back before the first question: the shop's terms, and what the
 * case of the vehicle says.
 */
import { existsSync } from 'node:fs';
import {
  minorUnits,
  typedAmount,
  vehicleProof,
  type Case,
  type Flow,
  type Opening,
  type Policy,
} from '@keyturn/core';
import { shippedFlow, shopTerms } from '@keyturn/flows';
import { caseOf, readCaseFile } from './case-file.ts';

/** What a return is opened with. */
export interface KnownOfReturn {
  readonly opening: Pick<Opening, 'policy' | 'context' | 'answers'>;
  /** When the vehicle was measured last whose case answers for it. */
  readonly vehicleAt?: string;
}

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

/** What the command line names. */
interface NamedOfReturn {
  readonly terms?: string;
  readonly price?: string;
  readonly isOldUnitOwed: boolean;
  readonly vehicle?: string;
}

/**
 * Reads the terms and the case that the command line names.
 *
 * @throws TermsError or CaseFileError when the file cannot be used, ReturnError when the code or the
 *   price is none or the flow takes no part back.
 */
export async function knownOfReturn(flow: Flow, given: NamedOfReturn): Promise<KnownOfReturn> {
  const { terms, vehicle } = given;
  const { part } = flow;
  if (terms === undefined && vehicle === undefined) return { opening: {} };
  if (part === undefined) throw new ReturnError(`the flow ${flow.id} takes no part back`);
  const sale = terms === undefined ? {} : soldOn(shopTerms(terms), given);
  if (vehicle === undefined) return { opening: sale };
  const { chart } = shippedFlow(vehicleFlow, 'en');
  const kase = existsSync(vehicle)
    ? caseOf(chart, vehicle, readCaseFile(vehicle).events)
    : await caseByCode(vehicle);
  const proof = vehicleProof(chart.flow, kase.state, part);
  return {
    opening: {
      ...sale,
      context: { ...sale.context, 'vehicle.measured': kase.state.at },
      answers: [{ check: proofCheck, value: [proof] }],
    },
    vehicleAt: kase.state.at,
  };
}

/** The terms, and what was paid under them. */
function soldOn(policy: Policy, { price, isOldUnitOwed }: NamedOfReturn): KnownOfReturn['opening'] {
  const paid = price === undefined ? undefined : minorUnits(price, policy.currency);
  if (price !== undefined && paid === undefined) {
    const example = typedAmount(minorUnits('129', policy.currency) ?? 0, policy.currency);
    throw new ReturnError(
      `“${price}” is no amount in ${policy.currency}; expected a figure such as ${example}`,
    );
  }
  const context = {
    ...(paid === undefined ? {} : { 'sale.price': paid }),
    ...(isOldUnitOwed ? { 'sale.oldUnit': 'owed' } : {}),
  };
  return { policy, context };
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
