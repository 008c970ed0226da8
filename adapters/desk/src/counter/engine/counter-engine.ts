/**
 * What takes returns further, for a worker: the engine of each flow, figures while they are typed,
 * and the case of a vehicle. Pure; what goes in and out is plain JSON.
 */
import {
  expected,
  judgeFigure,
  optionsOf,
  turn,
  type AnswerInput,
  type AskMessage,
  type Chart,
  type Message,
  type Opening,
  type FlowByHand,
  type ReadingMessage,
  type RefusedMessage,
  type SoldPart,
} from '@keyturn/core';
import type { Sitting } from '@keyturn/element/sittings';
import {
  readingsSaid,
  sayGrounds,
  type ReadingsSaid,
  type Speaker,
  type ToldEach,
  type Understood,
  type VehicleListener,
} from '@keyturn/language';
import { returnSlip, type OnVehicle, type Sheet, type Sold } from '@keyturn/sheets';
import { createEngine, type Engine, type Laid, type Turned } from '../../engine/engine.ts';
import { measuredByHand, type Measured, type TypedByHand } from '../vehicle/measured-by-hand.ts';
import { judgedCase, readVehicleCase, type VehicleReading } from '../vehicle/read-vehicle-case.ts';
import { askedAhead } from './asked-ahead.ts';
import { blankFigure, type TypedFigure } from './typed-figure.ts';

/** What a line tells of a return. */
export interface HeardLine extends Pick<ToldEach, 'left'> {
  /** What can be taken of it. */
  readonly answers: readonly AnswerInput[];
  /** What was understood and cannot be taken, with why. */
  readonly refused: readonly {
    readonly answer: AnswerInput;
    readonly refused: readonly Message[];
  }[];
}

/** A day as it was typed: ISO 8601, or the term that it lies in; or what was not understood of it. */
type TypedDay =
  | { readonly type: 'day'; readonly day: string }
  | { readonly type: 'unclear'; readonly unclear: NonNullable<Turned['unclear']> };

/** What the counter can ask for. */
export interface CounterEngine {
  /** Opens a case of a flow. */
  readonly open: (flow: string, opening: Opening) => Promise<Laid>;
  readonly lay: (sitting: Sitting) => Promise<Laid>;
  /** The questions after the one in hand that stand on the same screen; nothing is taken. */
  readonly ahead: (sitting: Sitting) => Promise<readonly AskMessage[]>;
  readonly take: Engine['take'];
  readonly say: Engine['say'];
  /**
   * All that a typed line tells of a return, in the language of a BCP 47 tag, as the answer to the
   * check that is being corrected or else to the one in hand; undefined where it tells no answers.
   * Nothing is taken.
   */
  readonly hear: (
    sitting: Sitting,
    given: {
      readonly at: string;
      readonly line: string;
      readonly locale: string;
      readonly correcting: string | null;
    },
  ) => Promise<HeardLine | undefined>;
  /** Figures that are being typed in the language of a BCP 47 tag, by check; nothing is taken. */
  readonly figures: (
    sitting: Sitting,
    given: {
      readonly at: string;
      readonly locale: string;
      readonly typed: Readonly<Record<string, string>>;
    },
  ) => Promise<Readonly<Record<string, TypedFigure>>>;
  /** The day that was typed for a check in the language of a BCP 47 tag; nothing is taken. */
  readonly day: (
    sitting: Sitting,
    given: {
      readonly at: string;
      readonly check: string;
      readonly locale: string;
      readonly text: string;
    },
  ) => Promise<TypedDay>;
  readonly readCase: (text: string) => Promise<VehicleReading>;
  /** What was measured on the vehicle, as it is typed by hand; nothing is taken. */
  readonly measured: (told: TypedByHand) => Promise<Measured>;
  /** The readings of the vehicle in a line; undefined where it tells none. Nothing is taken. */
  readonly readings: (
    sitting: Sitting,
    given: Pick<TypedByHand, 'at' | 'locale' | 'part' | 'vehicle'> & { readonly line: string },
  ) => Promise<ReadingsSaid | undefined>;
  /** The return slip of a return, in the language of a BCP 47 tag. */
  readonly slip: (
    sitting: Sitting,
    given: {
      readonly made: string;
      readonly locale: string;
      readonly timeZone: string;
      readonly sold: Sold;
      /** Since when it is put aside, ISO 8601. */
      readonly aside?: string;
      /** The case of the vehicle, as a code. */
      readonly vehicleCode?: string;
    },
  ) => Promise<Sheet>;
}

/** The calls, by name. */
export const counterCalls = [
  'open',
  'lay',
  'ahead',
  'take',
  'say',
  'hear',
  'figures',
  'day',
  'readCase',
  'measured',
  'readings',
  'slip',
] as const;

/** What an engine is made with. */
interface CounterEngineParts {
  /** The flows of returns, by id. */
  readonly charts: Readonly<Record<string, Chart>>;
  /** Of the no-start flow what asks for readings by hand. */
  readonly vehicle: FlowByHand;
  /** All of it, which is loaded once a case of it comes in. */
  readonly noStart: () => Promise<Chart>;
  readonly speakerFor: (flow: string, locale: string) => Promise<Speaker>;
}

/** The engine itself. */
export function createCounterEngine(parts: CounterEngineParts): CounterEngine {
  const { charts, vehicle, noStart, speakerFor } = parts;
  const chartOf = (flow: string): Chart => {
    const chart = Object.hasOwn(charts, flow) ? charts[flow] : undefined;
    if (chart === undefined) throw new RangeError(`there is no flow ${flow} at the counter`);
    return chart;
  };
  const engineOf = (flow: string): Engine =>
    createEngine(chartOf(flow), (locale) => speakerFor(flow, locale));
  const listenerIn = async (locale: string): Promise<VehicleListener> => ({
    flow: vehicle,
    speaker: await speakerFor(vehicle.id, locale),
  });
  /** Of a case of the vehicle, however it came, what is asked for by hand, and what points elsewhere. */
  const readOnVehicle = async (
    part: SoldPart,
    code: string,
    locale: string,
  ): Promise<OnVehicle> => {
    const judged = judgedCase(await noStart(), code, part);
    const { speaker: teller } = await listenerIn(locale);
    const isElsewhere = judged.proof === 'points-elsewhere';
    return {
      readings: judged.readings.filter(({ check }) => vehicle.readings[part].includes(check)),
      elsewhere: isElsewhere ? sayGrounds(teller, { ...judged, part }) : [],
      teller,
    };
  };
  const of = ({ case: kase }: Sitting): Engine => engineOf(kase.flow.id);
  return {
    open: (flow, opening) => engineOf(flow).open(opening),
    lay: (sitting) => of(sitting).lay(sitting),
    ahead: ({ case: kase }) => Promise.resolve(askedAhead(chartOf(kase.flow.id), kase)),
    take: (sitting, given) => of(sitting).take(sitting, given),
    say: (sitting, given) => of(sitting).say(sitting, given),
    hear: async (sitting, { at, line, locale, correcting }) => {
      const flow = sitting.case.flow.id;
      const speaker = await speakerFor(flow, locale);
      return heardLine({ chart: chartOf(flow), speaker, sitting, at }, { line, correcting });
    },
    figures: async (sitting, { at, locale, typed }) => {
      const flow = sitting.case.flow.id;
      const speaker = await speakerFor(flow, locale);
      const here = { chart: chartOf(flow), speaker, sitting, at };
      return Object.fromEntries(
        Object.entries(typed).map(([check, text]) => [check, figureOf(here, check, text)]),
      );
    },
    day: async (sitting, { at, check, locale, text }) => {
      const flow = sitting.case.flow.id;
      const speaker = await speakerFor(flow, locale);
      const understood = understoodOf({ chart: chartOf(flow), speaker, sitting, at }, check, text);
      const [day] = answersIn(understood).flatMap(({ check: of, value }) =>
        of === check && Array.isArray(value) ? (value as readonly string[]) : [],
      );
      if (day !== undefined) return { type: 'day', day };
      // A day that reads two ways is asked back with both.
      if (understood.type === 'offers') return { type: 'unclear', unclear: understood };
      const possible = termsOf(chartOf(flow), check).map((one) => speaker.answerLabel(check, one));
      const unclear = { type: 'unclear', code: 'not-a-day', given: text, possible } as const;
      return { type: 'unclear', unclear };
    },
    readCase: async (text) => readVehicleCase(await noStart(), text),
    measured: async (told) => measuredByHand(await noStart(), await listenerIn(told.locale), told),
    readings: async (sitting, { at, line, locale, part, vehicle: { nominal = 12 } }) => {
      const flow = sitting.case.flow.id;
      const speaker = await speakerFor(flow, locale);
      const meant = speaker.understand(line, expected(chartOf(flow), sitting.case, at));
      return readingsSaid(line, await listenerIn(locale), { part, nominal, meant });
    },
    slip: async ({ case: kase }, { locale, vehicleCode, ...given }) => {
      const speaker = await speakerFor(kase.flow.id, locale);
      const chart = chartOf(kase.flow.id);
      const onVehicle =
        vehicleCode === undefined || chart.flow.part === undefined
          ? {}
          : { onVehicle: await readOnVehicle(chart.flow.part, vehicleCode, locale) };
      return returnSlip({ chart, case: kase, speaker, ...onVehicle, ...given });
    },
  };
}

/** The terms in which a day may lie, by the check that asks for it. */
function termsOf({ flow }: Chart, check: string): readonly string[] {
  const asked = flow.checks[check];
  return asked === undefined ? [] : optionsOf(asked);
}

/** What a line tells that can be taken, and what of it cannot. */
function heardLine(
  here: Here,
  { line, correcting }: { readonly line: string; readonly correcting: string | null },
): HeardLine | undefined {
  const { chart, speaker, sitting } = here;
  const waiting = expected(chart, sitting.case, here.at);
  const asked = waiting.awaiting === 'answer' ? waiting.check : null;
  const told = speaker.understandEach(line, {
    ...waiting,
    ...(correcting === null ? { check: asked } : { awaiting: 'answer', check: correcting }),
  });
  if (told === undefined) return undefined;
  const alone = told.answers.map((answer) => ({ answer, refused: refusedOf(here, answer) }));
  const fit = alone.filter(isTaken).map(({ answer }) => answer);
  // A load is held against the label that was told with it.
  const together = fit.length === 0 ? [] : refusedOf(here, ...fit);
  const judged = alone.map(({ answer, refused }) => ({
    answer,
    refused: [...refused, ...together.filter(({ check }) => check === answer.check)],
  }));
  return {
    answers: judged.filter(isTaken).map(({ answer }) => answer),
    refused: judged.filter((one) => !isTaken(one)),
    left: told.left,
  };
}

function isTaken({ refused }: HeardLine['refused'][number]): boolean {
  return refused.length === 0;
}

/** Why answers that are given together would not be taken. */
function refusedOf(here: Here, ...answers: readonly AnswerInput[]): readonly RefusedMessage[] {
  return supposed(here, ...answers).filter((one) => one.kind === 'refused');
}

interface Here {
  readonly chart: Chart;
  readonly speaker: Speaker;
  readonly sitting: Sitting;
  readonly at: string;
}

function figureOf(here: Here, check: string, text: string): TypedFigure {
  const blank = { ...blankFigure, scale: bareScale(here, check) };
  if (text.trim() === '') return blank;
  const understood = understoodOf(here, check, text);
  if (understood.type === 'language') return blank;
  if (understood.type !== 'input') return { ...blank, unclear: understood };
  const answers = answersIn(understood);
  const answer = answers.find((one) => one.check === check && 'unit' in one.value);
  if (answer === undefined) return { ...blank, isOfOther: answers.length > 0 };
  const beside = answers.filter((one) => one.check !== check && !('unit' in one.value));
  const messages = supposed(here, answer);
  const scale = messages.find((one) => one.kind === 'reading' && one.check === check);
  const refused = messages.filter(({ kind }) => kind === 'refused');
  return { ...blank, answer, beside, refused, ...(scale?.kind === 'reading' ? { scale } : {}) };
}

/** What a text means as the answer to a check. */
function understoodOf(
  { chart, speaker, sitting, at }: Here,
  check: string,
  text: string,
): Understood {
  return speaker.understand(text, {
    ...expected(chart, sitting.case, at),
    check,
    awaiting: 'answer',
  });
}

function answersIn(understood: Understood): readonly AnswerInput[] {
  if (understood.type !== 'input') return [];
  return understood.inputs.flatMap((input) => ('answers' in input ? input.answers : []));
}

/** The scale before anything is typed: that of a figure in the middle of what a meter can show. */
function bareScale(here: Here, check: string): ReadingMessage | null {
  const form = here.chart.flow.checks[check]?.form;
  if (form?.kind !== 'reading') return null;
  const { unit } = form;
  const { nominal } = expected(here.chart, here.sitting.case);
  const judged = judgeFigure({ value: Number.MAX_SAFE_INTEGER, unit }, form, nominal);
  if (judged.type !== 'implausible') return null;
  const middle = (judged.range.low + judged.range.high) / 2;
  const found = supposed(here, { check, value: { value: middle, unit } }).find(
    (one) => one.kind === 'reading' && one.check === check,
  );
  return found?.kind === 'reading' ? found : null;
}

/** What would be said of answers; the case stays as it is. */
function supposed(
  { chart, sitting, at }: Here,
  ...answers: readonly AnswerInput[]
): readonly Message[] {
  const input = { type: 'answers', answers };
  return turn(chart, sitting.case, { at, input }).messages;
}
