/**
 * The case of the vehicle as evidence of the return in hand: read, offered, taken or left out.
 */
import { fill } from '../../wording.ts';
import type { CounterVoice } from '../counter-voice.ts';
import type { ReturnWork } from '../return-work.ts';
import type { CounterEngine } from '../engine/counter-engine.ts';
import type { CounterBook } from '../store/counter-book.ts';
import { emptyHand, type WhoseCase } from '../view/shown.ts';
import type { CounterWords } from '../words/counter-words.ts';
import { caseTaken, ofAnotherPart, olderCase } from './case-taken.ts';
import { faultWords, misfitWords } from './case-words.ts';
import { misfitOf } from './fit-of-case.ts';

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

  /** The case that was offered is this vehicle's, or it is left out. */
  async useCase(which: WhoseCase): Promise<void> {
    const { work } = this.#setup;
    const { offered } = work.hand;
    const { back, flow } = work;
    work.hold(emptyHand);
    if (offered === null || back === undefined || flow === undefined || which === 'other-vehicle') {
      work.notice(this.#words.caseLeft);
      return;
    }
    const { change, inputs } =
      which === 'this-part'
        ? caseTaken(flow, offered, back)
        : { change: ofAnotherPart(offered), inputs: [] };
    work.alter(change);
    if (inputs.length === 0) work.hold(emptyHand);
    else await work.take(...inputs);
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
