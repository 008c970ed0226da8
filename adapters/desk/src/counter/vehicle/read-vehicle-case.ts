/**
 * A no-start case of the vehicle, read from its code or from its file.
 */
import {
  CaseError,
  foldCase,
  proofGrounds,
  stripOf,
  vehicleProof,
  type Case,
  type CaseEvent,
  type Chart,
  type ProofGrounds,
  type ReadingMessage,
  type SoldPart,
  type VehicleProof,
} from '@keyturn/core';
import { CodeError, decodeFindings, encodeFindings, replayFindings } from '@keyturn/sheets';
import type { VehicleCase } from '../return/counter-return.ts';

/** A case, or why a text is none: as a code, or a file that holds no case of this version. */
export type VehicleReading =
  | { readonly type: 'case'; readonly case: VehicleCase }
  | { readonly type: 'fault'; readonly fault: CodeError['code'] | 'broken-file' | 'other-version' };

/** A code wherever it stands in a text, as behind the address of a page; whole or not. */
const anyCode = /(?<![\dA-Z])KT\d[\dA-Z]*/iu;

/** Characters of a file that are read; no case comes near so many. */
const longestFile = 2_000_000;

/** True for a text that can only be meant as a case of a vehicle. */
export function looksLikeCase(text: string): boolean {
  return anyCode.test(text) || isFile(text);
}

/** Reads a case. `chart` is that of the no-start flow. Never throws for a text, whatever it is. */
export function readVehicleCase(chart: Chart, text: string): VehicleReading {
  try {
    const kase = isFile(text) ? caseOfFile(chart, text) : caseOfCode(chart, text);
    return { type: 'case', case: inShort(chart, kase) };
  } catch (error) {
    if (error instanceof CodeError) return { type: 'fault', fault: error.code };
    const isOther = error instanceof CaseError && error.code.startsWith('other-');
    return { type: 'fault', fault: isOther ? 'other-version' : 'broken-file' };
  }
}

/** A file holds an event a line. */
function isFile(text: string): boolean {
  return text.trimStart().startsWith('{');
}

/**
 * What a file holds, taken through the form of a code, which lets nothing in that its flow does not
 * have. A last line that was cut off while it was written is left out.
 */
function caseOfFile(chart: Chart, text: string): Case {
  const lines = text.slice(0, longestFile).split('\n');
  const torn = isJson(lines.at(-1) ?? '') ? lines : lines.slice(0, -1);
  const events = torn
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as CaseEvent);
  return caseOfCode(chart, encodeFindings(chart.flow, foldCase(chart, events)));
}

function isJson(line: string): boolean {
  try {
    JSON.parse(line);
    return true;
  } catch {
    return false;
  }
}

function caseOfCode(chart: Chart, text: string): Case {
  const begins = anyCode.exec(text)?.index ?? 0;
  const close = text.slice(begins).replaceAll(/[\s-]/gu, '');
  const [code] = anyCode.exec(close) ?? [close];
  return replayFindings(chart, decodeFindings([chart.flow], code)).case;
}

/** What a case says of a part, and by which readings. */
export interface JudgedCase {
  readonly readings: readonly ReadingMessage[];
  readonly proof: VehicleProof;
  readonly grounds: ProofGrounds;
}

/** What a case that was read before says of a part, by its code. */
export function judgedCase(chart: Chart, code: string, part: SoldPart): JudgedCase {
  const kase = caseOfCode(chart, code);
  const { findings } = stripOf(chart, kase);
  return {
    readings: findings.flatMap(({ message }) => (message.kind === 'reading' ? [message] : [])),
    proof: vehicleProof(chart.flow, kase.state, part),
    grounds: proofGrounds(chart.flow, kase.state, part),
  };
}

/** What is kept of a case. */
export function inShort(chart: Chart, kase: Case): VehicleCase {
  const { context, verdict, answers } = kase.state;
  const complaint = answers['complaint']?.at(-1);
  return {
    id: kase.id,
    at: kase.state.at,
    code: encodeFindings(chart.flow, kase),
    fault: verdict?.fault ?? null,
    strength: verdict?.strength ?? null,
    complaint: Array.isArray(complaint) ? ((complaint as readonly string[])[0] ?? null) : null,
    fuel: (context['vehicle.fuel'] as string | undefined) ?? null,
    nominal: (context['vehicle.nominal'] as number | undefined) ?? null,
    proof: {
      starter: vehicleProof(chart.flow, kase.state, 'starter'),
      battery: vehicleProof(chart.flow, kase.state, 'battery'),
    },
  };
}
