/**
 * What somebody types who measured on a vehicle, where a part of it comes back: the readings in it.
 */
import type {
  AnswerInput,
  FlowByHand,
  ProofGrounds,
  ReadingMessage,
  SoldPart,
  VehicleProof,
} from '@keyturn/core';
import type { FlowTexts } from './flow-texts.ts';
import type { Speaker } from './speaker.ts';
import type { Teller } from './teller.ts';
import type { LeftPart } from './understand/told-each.ts';
import { dangersIn } from './understand/understand.ts';
import type { Hearing, Understood } from './understand/understood.ts';

/** Who hears them: the flow of vehicles' cases, and a speaker of it. */
export interface VehicleListener {
  readonly flow: FlowByHand;
  readonly speaker: Speaker;
}

/** The readings that a text tells; or why a figure in it is none of them. */
export type ReadingsSaid =
  | {
      readonly type: 'readings';
      readonly readings: readonly AnswerInput[];
      /** The parts of the text that tell no reading. */
      readonly left: readonly LeftPart[];
    }
  | {
      readonly type: 'unclear';
      readonly unclear: Exclude<Understood, { type: 'input' | 'language' }>;
    };

/**
 * The texts of the flow of vehicles' cases as far as readings by hand need them: those of the
 * readings, and of everything else that is measured its name.
 */
export function textsByHand({ checks }: Pick<FlowByHand, 'checks'>, texts: FlowTexts): FlowTexts {
  const of = ([id, check]: [string, FlowTexts['checks'][string]]) =>
    [id, Object.hasOwn(checks, id) ? check : { name: check.name }] as const;
  return {
    name: texts.name,
    opening: texts.opening,
    checks: Object.fromEntries(Object.entries(texts.checks).map(of)),
    ...(texts.lamp === undefined ? {} : { lamp: texts.lamp }),
    kit: texts.kit,
    probes: texts.probes,
    stages: {},
    cautions: {},
    stops: {},
    interrupts: {},
    faults: {},
    roots: {},
    remedies: {},
    send: {},
  };
}

/** What a check is heard with that is asked for by hand; `check`: the one whose field it is. */
export function hearingByHand(
  { flow }: Pick<VehicleListener, 'flow'>,
  {
    part,
    nominal,
    check = null,
  }: { readonly part: SoldPart; readonly nominal: 12 | 24; readonly check?: string | null },
): Hearing {
  const ofPart = Object.entries(flow.checks).filter(([id]) => flow.readings[part].includes(id));
  return {
    awaiting: 'answer',
    check,
    checks: Object.fromEntries(ofPart),
    interrupts: [],
    answered: [],
    kit: [],
    nominal,
    lamp: false,
  };
}

/** What is known where a text is heard for readings. */
export interface ToldBeside {
  readonly part: SoldPart;
  readonly nominal: 12 | 24;
  /** What the text means to the return itself: a danger and a correction come before readings. */
  readonly meant: Understood;
}

/**
 * Hears the readings in a text; undefined where there is no figure in it, or it tells another thing.
 * Pure; never throws.
 */
export function readingsSaid(
  text: string,
  listener: VehicleListener,
  told: ToldBeside,
): ReadingsSaid | undefined {
  if (!/\p{Nd}/u.test(text) || isOther(told.meant)) return undefined;
  const { speaker } = listener;
  const hearing = hearingByHand(listener, told);
  const whole = speaker.understand(text, hearing);
  const each = speaker.understandEach(text, hearing);
  const readings = whole.type === 'input' ? whole.inputs.flatMap(readingsIn) : [];
  if (readings.length > 0) {
    const isSame = JSON.stringify(each?.answers) === JSON.stringify(readings);
    return { type: 'readings', readings, left: isSame ? (each?.left ?? []) : [] };
  }
  const parts = (each?.answers ?? []).filter(isReading);
  if (each !== undefined && parts.length > 0) {
    return { type: 'readings', readings: parts, left: each.left };
  }
  return whole.type === 'input' || whole.type === 'language'
    ? undefined
    : { type: 'unclear', unclear: whole };
}

function isOther(meant: Understood): boolean {
  if (dangersIn(meant).length > 0) return true;
  return meant.type === 'input' && meant.inputs.some(({ type }) => type === 'correction');
}

function readingsIn(input: object): readonly AnswerInput[] {
  return 'answers' in input ? (input.answers as readonly AnswerInput[]).filter(isReading) : [];
}

function isReading({ value }: AnswerInput): boolean {
  return 'value' in value;
}

/** What readings of a vehicle say of a part, and why. */
export interface JudgedReadings {
  readonly part: SoldPart;
  readonly proof: VehicleProof;
  readonly grounds: ProofGrounds;
  /** The readings, as their case tells them. */
  readonly readings: readonly ReadingMessage[];
}

/** Why they say it, a sentence or two a line. `teller` is that of the flow of vehicles' cases. */
export function sayGrounds(
  teller: Teller,
  { part, proof, grounds, readings }: JudgedReadings,
): readonly string[] {
  const { elsewhere, lacking } = grounds;
  const found = (checks: readonly string[]): readonly string[] =>
    readings.filter(({ check }) => checks.includes(check)).map((one) => sayInShort(teller, one));
  switch (proof) {
    case 'against-part':
      return [];
    case 'points-elsewhere':
      return said(teller, 'elsewhere', found(elsewhere));
    case 'incomplete': {
      if (part === 'battery') return [teller.vehicle('charging')];
      const isRead = (check: string): boolean => readings.some((one) => one.check === check);
      const missing = lacking.filter((check) => !isRead(check) && check !== complaint);
      return [
        ...said(teller, 'notGood', found(lacking)),
        ...said(teller, 'missing', missing.map(teller.checkName)),
        ...(lacking.includes(complaint) ? [teller.vehicle('claim')] : []),
      ];
    }
  }
}

/** One sentence of a list; none where there is nothing in it. */
function said(
  teller: Teller,
  what: 'elsewhere' | 'notGood' | 'missing',
  list: readonly string[],
): readonly string[] {
  return list.length === 0 ? [] : [teller.vehicle(what, { what: teller.figures.listAll(list) })];
}

/** A reading by its name and figure, with what that is. */
function sayInShort(teller: Teller, reading: ReadingMessage): string {
  const [name, figure] = [teller.checkName(reading.check), teller.formatQuantity(reading.quantity)];
  const what = teller.readingFound(reading);
  return what === '' ? `${name} ${figure}` : teller.vehicle('reading', { name, figure, what });
}

/** What the vehicle does is not read by a meter: the customer says it of the part. */
const complaint = 'complaint';
