import { contextFields, looksLikeDay, type Case, type Flow } from '@keyturn/core';
import { toLetters } from './base32.ts';
import { ByteWriter } from './byte-writer.ts';
import { crc32 } from './crc32.ts';
import { inSteps } from './decimal.ts';
import { foundIn, type CodedFindings } from './found.ts';
import { markOf, statementsOf, type Statements } from './statements.ts';

/** What every code begins with. */
export const codeBegins = 'KT';

/** The version of its form that is written now. */
export const codeVersion = 1;

/** Milliseconds of a day of Coordinated Universal Time. */
export const dayLength = 86_400_000;

/** An id of the form that `crypto.randomUUID` gives. */
const uuid = /^[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}$/;

/**
 * The findings of a case as one short text: what was known and answered, by which the case can be
 * made again. Letters and digits alone, so that a QR code holds it densely, and closed by a
 * checksum. Nothing personal and no free text is in it. Pure; the same case gives the same code.
 *
 * Throws RangeError for a case that is not of this flow.
 */
export function encodeFindings(flow: Flow, kase: Case): string {
  const found = foundIn(flow, kase);
  if (found.flow !== flow.id) {
    throw new RangeError(`the case belongs to ${found.flow}; this is ${flow.id}`);
  }
  const writer = new ByteWriter();
  writer.fixed(markOf(flow.id), 3);
  writeId(writer, found.id);
  writer.whole(Math.floor(Date.parse(found.at) / 60_000));
  const statements = statementsOf(flow);
  writeFacts(writer, statements, found);
  for (const given of found.answers) writeAnswer(writer, statements, { flow, ...given });
  const check = new ByteWriter();
  check.fixed(crc32([codeVersion, ...writer.bytes]), 4);
  return `${codeBegins}${String(codeVersion)}${toLetters([...writer.bytes, ...check.bytes])}`;
}

/** A UUID as its sixteen bytes behind a zero, any other id as text. */
function writeId(writer: ByteWriter, id: string): void {
  if (!uuid.test(id)) {
    writer.whole(1);
    writer.text(id);
    return;
  }
  writer.whole(0);
  for (const pair of id.replaceAll('-', '').match(/../g) ?? []) {
    writer.fixed(Number.parseInt(pair, 16), 1);
  }
}

function writeFacts(writer: ByteWriter, { markOf: mark }: Statements, found: CodedFindings): void {
  for (const [path, value] of Object.entries(found.context)) {
    if (Array.isArray(value)) {
      const items = value as readonly string[];
      writer.fixed(mark({ says: 'context', path }), 3);
      writer.whole(items.length);
      for (const item of items) writer.fixed(mark({ says: 'context', path, value: item }), 3);
    } else if (contextFields[path]?.kind === 'limits') {
      writer.fixed(mark({ says: 'context', path }), 3);
      writer.text(JSON.stringify(value));
    } else if (typeof value === 'number' && contextFields[path]?.kind === 'number') {
      writer.fixed(mark({ says: 'context', path }), 3);
      writer.number(value);
    } else {
      const one = value as string | number | boolean;
      writer.fixed(mark({ says: 'context', path, value: one }), 3);
    }
  }
  for (const id of found.notAsked) writer.fixed(mark({ says: 'not-asked', id }), 3);
  for (const id of found.raised) writer.fixed(mark({ says: 'raised', id }), 3);
  for (const id of found.doubted) writer.fixed(mark({ says: 'doubted', id }), 3);
}

function writeAnswer(
  writer: ByteWriter,
  { markOf: mark }: Statements,
  { flow, check, answer }: CodedFindings['answers'][number] & { readonly flow: Flow },
): void {
  if (answer === 'unknown' || answer === 'cannot') {
    writer.fixed(mark({ says: answer, id: check }), 3);
    return;
  }
  if (!('unit' in answer)) {
    const [day = '', ...bands] = answer;
    if (flow.checks[check]?.form.kind === 'date' && looksLikeDay(day)) {
      writer.fixed(mark({ says: 'day', check }), 3);
      writer.signed(BigInt(Date.parse(`${day}T00:00:00Z`) / dayLength));
      writer.whole(bands.length);
      for (const band of bands) writer.fixed(mark({ says: 'answer', check, answer: band }), 3);
      return;
    }
    const choice = (one: string): number => mark({ says: 'answer', check, answer: one });
    if (answer.length !== 1) {
      writer.fixed(mark({ says: 'answers', check }), 3);
      writer.whole(answer.length);
    }
    for (const one of answer) writer.fixed(choice(one), 3);
    return;
  }
  const { value, unit, resolution, meter } = answer;
  const form = flow.checks[check]?.form;
  const isOwnUnit = form?.kind === 'reading' && form.unit === unit;
  const steps = resolution === undefined ? undefined : inSteps(value, resolution);
  if (isOwnUnit && steps !== undefined && meter === undefined) {
    writer.fixed(mark({ says: 'figure', check }), 3);
    writer.decimal(steps);
    return;
  }
  writer.fixed(mark({ says: 'figure-in-full', check }), 3);
  writer.number(value);
  writer.text(unit);
  const told = [resolution, meter?.percent, meter?.digits, meter?.counts];
  writer.fixed(
    told.reduce<number>((bits, one, at) => (one === undefined ? bits : bits | (1 << at)), 0),
    1,
  );
  for (const one of told) if (one !== undefined) writer.number(one);
}
