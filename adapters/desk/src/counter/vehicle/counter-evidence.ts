/**
 * The case of the vehicle as evidence of the return in hand: read, offered, taken or left out.
 */
import type { AnswerInput } from '@keyturn/core';
import { convert, isUnit } from '@keyturn/electrics';
import type { ReadingsSaid } from '@keyturn/language';
import { fill } from '../../wording.ts';
import type { CounterVoice } from '../counter-voice.ts';
import type { ReturnWork } from '../return-work.ts';
import type { CounterEngine } from '../engine/counter-engine.ts';
import type { CounterReturn, VehicleCase } from '../return/counter-return.ts';
import type { CounterBook } from '../store/counter-book.ts';
import { emptyHand, type WhoseCase } from '../view/shown.ts';
import type { CounterWords } from '../words/counter-words.ts';
import { caseTaken, ofAnotherPart, olderCase } from './case-taken.ts';
import { faultWords, leftWords, misfitWords } from './case-words.ts';
import { misfitOf } from './fit-of-case.ts';
import type { TypedByHand } from './measured-by-hand.ts';

/** What the evidence is worked with. */
export interface CounterEvidenceSetup {
  readonly engine: CounterEngine;
  readonly book: CounterBook;
  readonly voice: CounterVoice;
  readonly work: ReturnWork;
}

/** The cases of vehicles at one counter. */
export class CounterEvidence {
  readonly #setup: CounterEvidenceSetup;

  constructor(setup: CounterEvidenceSetup) {
    this.#setup = setup;
  }

  /** A case of a vehicle from its file. */
  async caseFile(file: File): Promise<void> {
    await this.#setup.work.trying(async () => {
      await this.offer(await file.text());
    });
  }

  /** Reads a case of a vehicle; whether it is this customer's is asked. */
  async offer(text: string): Promise<void> {
    const { work, engine } = this.#setup;
    const id = work.back?.id ?? '';
    await work.trying(async () => {
      const reading = await work.whileBusy(id, () => engine.readCase(text));
      const { back } = work;
      if (back === undefined) return;
      if (reading.type === 'fault') {
        work.notice(faultWords(this.#words, reading.fault));
        return;
      }
      const sale = this.#setup.book.shop?.sales.find(({ receipt }) => receipt === back.receipt);
      const others = this.#setup.book.all;
      const misfit = misfitOf(reading.case, { back, sale, others });
      if (misfit !== undefined) {
        work.notice(misfitWords(misfit, this.#setup.voice));
        return;
      }
      work.hold({ ...emptyHand, offered: reading.case });
    });
  }

  /** What is typed of the vehicle by hand, with what is known beside it. */
  told(back: CounterReturn): TypedByHand {
    const { context, answers } = back.sitting.case.state;
    const sale = this.#setup.book.shop?.sales.find(({ receipt }) => receipt === back.receipt);
    const nominal = (context['part.nominal'] ?? sale?.vehicle?.nominal) as 12 | 24 | undefined;
    const fuel = sale?.vehicle?.fuel;
    const claim = answers['claim']?.at(-1);
    return {
      id: crypto.randomUUID(),
      at: new Date().toISOString(),
      locale: this.#setup.voice.tag,
      part: back.part,
      claim: Array.isArray(claim) ? (claim as readonly string[])[0] : undefined,
      vehicle: {
        ...(nominal === undefined ? {} : { nominal }),
        ...(fuel === undefined ? {} : { fuel }),
      },
      typed: back.typed,
    };
  }

  /** Takes the readings that were typed by hand; where they do not judge the part, shows why first. */
  async takeByHand(): Promise<void> {
    const { work } = this.#setup;
    const { measured, back } = work.inHand ?? {};
    if (measured === undefined || back === undefined) return;
    if (measured.case.proof[back.part] === 'incomplete') work.hold({ offered: measured.case });
    else await this.#take(measured.case);
  }

  /** Puts the readings of a line into their fields, where they are seen before they are judged. */
  typeReadings({ readings, left }: Extract<ReadingsSaid, { type: 'readings' }>): void {
    const { work, voice } = this.#setup;
    const { back, hand } = work;
    if (back === undefined) return;
    const typed = readings.map(
      ({ check, value }) => [check, inField(voice, check, value)] as const,
    );
    work.alter({ typed: { ...back.typed, ...Object.fromEntries(typed) } });
    work.hold({ ...emptyHand, asking: hand.asking, byHand: true });
    if (left.length > 0) work.notice(leftWords(this.#words, left, voice.tag), true);
  }

  /** The case that was offered is this vehicle's, or it is left out. */
  async useCase(which: WhoseCase): Promise<void> {
    const { work } = this.#setup;
    const { offered } = work.hand;
    if (offered === null) return;
    if (which === 'this-part') {
      await this.#take(offered);
      return;
    }
    if (which === 'other-part') work.alter(ofAnotherPart(offered));
    work.hold(emptyHand);
    if (which === 'other-vehicle') work.notice(this.#words.caseLeft);
  }

  /** A case that was measured with the part in the vehicle. */
  async #take(offered: VehicleCase): Promise<void> {
    const { work } = this.#setup;
    const { back, flow } = work;
    if (back === undefined || flow === undefined) return;
    const { change, inputs } = caseTaken(flow, offered, back);
    work.alter(change);
    work.hold(emptyHand);
    if (inputs.length > 0) await work.take(...inputs);
  }

  /** A day of sale told afterwards may show that the case is older than the part. */
  async dropOlder(): Promise<void> {
    const { work } = this.#setup;
    const { back, flow } = work;
    const older = back === undefined || flow === undefined ? undefined : olderCase(flow, back);
    if (older === undefined) return;
    work.alter(older.change);
    await work.take(...older.inputs);
    work.notice(fill(this.#words.caseBefore, { sold: older.sold }));
  }

  get #words(): CounterWords {
    return this.#setup.voice.words;
  }
}

/** A reading as it is typed into its field: in the unit of the field, which stands beside it. */
function inField(
  { vehicle, tag }: CounterVoice,
  check: string,
  value: AnswerInput['value'],
): string {
  const form = vehicle.checks[check]?.form;
  if (form?.kind !== 'reading' || !('value' in value)) return '';
  const { value: figure, unit } = value;
  if (!isUnit(unit)) return '';
  const figures = new Intl.NumberFormat(tag, { maximumFractionDigits: 3, useGrouping: false });
  return figures.format(convert({ value: figure, unit }, form.unit).value);
}
