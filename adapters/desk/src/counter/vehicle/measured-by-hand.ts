/**
 * What was measured on the vehicle and is typed by hand: each figure on its scale, and the case that
 * they make, with what it says of the part. Pure.
 */
import {
  caseByHand,
  proofGrounds,
  type AnswerInput,
  type Chart,
  type ProofGrounds,
  type ReadingMessage,
  type SoldPart,
} from '@keyturn/core';
import { hearingByHand, type VehicleListener } from '@keyturn/language';
import { blankFigure, type TypedFigure } from '../engine/typed-figure.ts';
import type { VehicleCase } from '../return/counter-return.ts';
import { inShort } from './read-vehicle-case.ts';

/** What is typed, and what is known beside it. */
export interface TypedByHand {
  /** Of the case that it makes. */
  readonly id: string;
  /** ISO 8601. */
  readonly at: string;
  /** BCP 47 tag. */
  readonly locale: string;
  readonly part: SoldPart;
  /** What the customer says of the part. */
  readonly claim: string | undefined;
  /** What is known of the vehicle by the part and its sale. */
  readonly vehicle: { readonly nominal?: 12 | 24; readonly fuel?: string };
  /** By check; what is left empty was not read. */
  readonly typed: Readonly<Record<string, string>>;
}

/** What comes of it. */
export interface Measured {
  /** By check. */
  readonly figures: Readonly<Record<string, TypedFigure>>;
  readonly case: VehicleCase;
  readonly grounds: ProofGrounds;
  readonly readings: readonly ReadingMessage[];
}

/** Reads the fields, and judges what can be taken of them. `chart` is that of the no-start flow. */
export function measuredByHand(
  chart: Chart,
  listener: VehicleListener,
  told: TypedByHand,
): Measured {
  const { id, at, part, claim, vehicle, typed } = told;
  const read = listener.flow.readings[part].map(
    (check) => [check, fieldOf(listener, told, check)] as const,
  );
  const readings = read.flatMap(([, { answer }]) => answer ?? []);
  const { case: kase, messages } = caseByHand(
    chart,
    { id, at },
    { part, claim, vehicle, readings },
  );
  const found = messages.filter((one) => one.kind === 'reading');
  const figures = read.map(([check, figure]): readonly [string, TypedFigure] => [
    check,
    {
      ...figure,
      scale: found.find((one) => one.check === check) ?? null,
      refused: messages.filter((one) => one.kind === 'refused' && one.check === check),
    },
  ]);
  return {
    figures: Object.fromEntries(figures),
    // What somebody says was read came to no verdict, whatever is likeliest by it.
    case: { ...inShort(chart, kase), fault: null, strength: null, isByHand: true },
    grounds: proofGrounds(chart.flow, kase.state, part),
    readings: found.filter(({ check }) => Object.hasOwn(typed, check)),
  };
}

/** What stands in a field, short of what it means on this vehicle. */
function fieldOf(
  listener: VehicleListener,
  { part, vehicle: { nominal = 12 }, typed }: TypedByHand,
  check: string,
): TypedFigure {
  const text = typed[check] ?? '';
  if (text.trim() === '') return blankFigure;
  const hearing = hearingByHand(listener, { part, nominal, check });
  const understood = listener.speaker.understand(text, hearing);
  if (understood.type === 'language') return blankFigure;
  if (understood.type !== 'input') return { ...blankFigure, unclear: understood };
  const answers = understood.inputs.flatMap((input): readonly AnswerInput[] =>
    'answers' in input ? input.answers : [],
  );
  const answer = answers.find((one) => one.check === check && 'unit' in one.value);
  return answer === undefined
    ? { ...blankFigure, isOfOther: answers.length > 0 }
    : { ...blankFigure, answer };
}
