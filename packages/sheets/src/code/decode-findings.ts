import {
  contextFields,
  judgeFigure,
  readContext,
  type Answer,
  type ContextValue,
  type Flow,
} from '@keyturn/core';
import { isUnit, type Quantity } from '@keyturn/electrics';
import { fromLetters } from './base32.ts';
import { ByteReader, OutOfBytes } from './byte-reader.ts';
import { CodeError } from './code-error.ts';
import { crc32 } from './crc32.ts';
import { numberOf } from './decimal.ts';
import { codeBegins, codeVersion, dayLength } from './encode-findings.ts';
import type { CodedFindings } from './found.ts';
import { markOf, statementsOf, type Statement } from './statements.ts';

/** No case comes near so many letters; what is longer is something else. */
const mostLetters = 4000;

/** The bytes of the checksum, and the fewest that stand before it. */
const checkBytes = 4;
const leastBytes = 6;

/**
 * The findings that a code carries, of whichever of these flows it speaks. Small letters, spaces
 * and hyphens in between are taken as well, and O, I and L for what they look like.
 *
 * @throws CodeError where the text is no code, is damaged or cut off, comes from a newer version,
 *   or speaks of a flow or of findings that are not known here.
 */
export function decodeFindings(flows: readonly Flow[], text: string): CodedFindings {
  const bytes = bytesOf(text);
  const reader = new ByteReader(bytes);
  try {
    const flowMark = reader.fixed(3);
    const flow = flows.find(({ id }) => markOf(id) === flowMark);
    if (flow === undefined) {
      const here = flows.map(({ id }) => id).join(', ');
      throw new CodeError('other-flow', `the code is of a flow that is not known here: ${here}`);
    }
    return readFindings(reader, flow);
  } catch (cause) {
    if (!(cause instanceof OutOfBytes)) throw cause;
    throw new CodeError('damaged', 'the code ends in the middle of a finding');
  }
}

/** The bytes of a code without their checksum, which holds. */
function bytesOf(text: string): readonly number[] {
  const letters = text.replace(/[\s-]/gu, '').toUpperCase();
  if (letters === '') throw new CodeError('empty', 'no code was given');
  const [, version, rest = ''] =
    letters.length > mostLetters ? [] : (/^KT(\d)(.*)$/u.exec(letters) ?? []);
  if (version === undefined) {
    throw new CodeError('foreign', `this is no code of findings: those begin with ${codeBegins}`);
  }
  if (Number(version) > codeVersion) {
    throw new CodeError(
      'too-new',
      `the code has form ${version}; this version reads forms up to ${String(codeVersion)}`,
    );
  }
  const bytes = fromLetters(rest);
  if ('letter' in bytes) {
    const at = String(bytes.at + codeBegins.length + 1);
    throw new CodeError('damaged', `the code has “${bytes.letter}” at ${at}, which no code has`);
  }
  const body = bytes.slice(0, -checkBytes);
  const check = new ByteReader(bytes.slice(-checkBytes));
  if (body.length < leastBytes || check.fixed(checkBytes) !== crc32([Number(version), ...body])) {
    throw new CodeError('damaged', 'letters of the code are wrong or missing: its checksum fails');
  }
  return body;
}

/** Findings while they are being read. */
interface Reading {
  readonly reader: ByteReader;
  readonly flow: Flow;
  readonly context: Record<string, ContextValue>;
  readonly ids: Record<'not-asked' | 'raised' | 'doubted', string[]>;
  readonly answers: { readonly check: string; readonly answer: Answer }[];
}

function readFindings(reader: ByteReader, flow: Flow): CodedFindings {
  const id = reader.whole() === 0n ? readUuid(reader) : reader.text();
  const minutes = Number(reader.whole());
  const at = new Date(minutes * 60_000);
  if (Number.isNaN(at.getTime())) throw new CodeError('damaged', 'the code has an impossible date');
  const reading: Reading = {
    reader,
    flow,
    context: {},
    ids: { 'not-asked': [], raised: [], doubted: [] },
    answers: [],
  };
  while (!reader.isAtEnd) take(nextStatement(reading), reading);
  const { context, ids, answers } = reading;
  return {
    flow: flow.id,
    id,
    at: at.toISOString(),
    context,
    notAsked: ids['not-asked'],
    raised: ids.raised,
    doubted: ids.doubted,
    answers,
  };
}

function readUuid(reader: ByteReader): string {
  const hex = Array.from({ length: 16 }, () => reader.fixed(1).toString(16).padStart(2, '0'));
  return hex.join('').replace(/^(.{8})(.{4})(.{4})(.{4})/u, '$1-$2-$3-$4-');
}

function nextStatement({ reader, flow }: Reading): Statement {
  const statement = statementsOf(flow).byMark.get(reader.fixed(3));
  if (statement !== undefined) return statement;
  throw new CodeError(
    'unknown-finding',
    `the code holds a finding that ${flow.id} ${flow.version} does not know: another version wrote it`,
  );
}

function take(statement: Statement, reading: Reading): void {
  const { reader, context, ids, answers } = reading;
  switch (statement.says) {
    case 'not-asked':
    case 'raised':
    case 'doubted':
      ids[statement.says].push(statement.id);
      return;
    case 'unknown':
    case 'cannot':
      answers.push({ check: statement.id, answer: statement.says });
      return;
    case 'answer':
      answers.push({ check: statement.check, answer: [statement.answer] });
      return;
    case 'answers':
      answers.push({ check: statement.check, answer: readChoices(statement.check, reading) });
      return;
    case 'day': {
      const day = new Date(Number(reader.signed()) * dayLength);
      if (Number.isNaN(day.getTime())) throw notWhatFollows();
      const bands = readChoices(statement.check, reading);
      answers.push({ check: statement.check, answer: [day.toISOString().slice(0, 10), ...bands] });
      return;
    }
    case 'figure': {
      const form = reading.flow.checks[statement.check]?.form;
      const unit = form?.kind === 'reading' ? form.unit : '1';
      const decimal = reader.decimal();
      const resolution = Number(`1e${String(decimal.power)}`);
      takeFigure(statement.check, { value: numberOf(decimal), unit, resolution }, reading);
      return;
    }
    case 'figure-in-full':
      takeFigure(statement.check, readFigure(reader), reading);
      return;
    case 'context':
      context[statement.path] = statement.value ?? readField(statement.path, reading);
  }
}

function readChoices(check: string, reading: Reading): readonly string[] {
  const count = Number(reading.reader.whole());
  const choices: string[] = [];
  while (choices.length < count) {
    const next = nextStatement(reading);
    if (next.says !== 'answer' || next.check !== check) throw notWhatFollows();
    choices.push(next.answer);
  }
  return choices;
}

/** A number, the items of a list or a maker's figures, that stand behind a field of the context. */
function readField(path: string, reading: Reading): ContextValue {
  const { kind } = contextFields[path] ?? {};
  if (kind === 'limits') return readLimits(path, reading);
  if (kind !== 'list') return reading.reader.number();
  const count = Number(reading.reader.whole());
  const items: string[] = [];
  while (items.length < count) {
    const next = nextStatement(reading);
    if (next.says !== 'context' || next.path !== path) throw notWhatFollows();
    items.push(String(next.value));
  }
  return items;
}

function readLimits(path: string, { reader }: Reading): ContextValue {
  const text = reader.text();
  const read = readContext({ [path]: parsed(text) });
  const value = read.type === 'context' ? read.context[path] : undefined;
  if (value === undefined) throw notWhatFollows();
  return value;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw notWhatFollows();
  }
}

function readFigure(reader: ByteReader): Quantity {
  const value = reader.number();
  const unit = reader.text();
  if (!isUnit(unit)) throw new CodeError('unknown-finding', `the code has the unit “${unit}”`);
  const bits = reader.fixed(1);
  const told = [0, 1, 2, 3].map((at) => ((bits >> at) & 1 ? reader.number() : undefined));
  const [resolution, percent, digits, counts] = told;
  const meter =
    percent === undefined || digits === undefined
      ? undefined
      : { percent, digits, ...(counts === undefined ? {} : { counts }) };
  return {
    value,
    unit,
    ...(resolution === undefined ? {} : { resolution }),
    ...(meter === undefined ? {} : { meter }),
  };
}

/** Takes a figure that a meter can show there. The checksum keeps off chance, not ill will. */
function takeFigure(check: string, quantity: Quantity, { flow, answers }: Reading): void {
  const form = flow.checks[check]?.form;
  const isPlausible =
    form?.kind === 'reading' &&
    ([12, 24] as const).some(
      (nominal) => judgeFigure(quantity, form, nominal).type === 'plausible',
    );
  if (!isPlausible) {
    throw new CodeError(
      'damaged',
      `the code has ${String(quantity.value)} ${quantity.unit} for ${check}, which no meter shows there`,
    );
  }
  answers.push({ check, answer: quantity });
}

function notWhatFollows(): CodeError {
  return new CodeError('damaged', 'the code has a list with something else in it');
}
