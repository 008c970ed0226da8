/**
 * The language that the counter speaks now.
 */
import type { Flow, FlowByHand, SoldPart } from '@keyturn/core';
import type { FlowTexts, Speaker } from '@keyturn/language';
import {
  counterSpeaker,
  type CounterPack,
  type LoadCounterPack,
  type VehicleNames,
} from './counter-pack.ts';
import { flowOf } from './return/counter-return.ts';
import type { CounterWords } from './words/counter-words.ts';

interface Spoken {
  readonly pack: CounterPack;
  /** By the ids of the flows. */
  readonly speakers: Readonly<Record<string, Speaker>>;
}

/** The words of one language, for every flow. */
export class CounterVoice {
  readonly #loadPack: LoadCounterPack;
  readonly #flows: Readonly<Record<string, Flow>>;
  /** Of the no-start flow what asks for readings by hand. */
  readonly vehicle: FlowByHand;
  #spoken: Spoken | undefined;

  constructor(
    loadPack: LoadCounterPack,
    flows: Readonly<Record<string, Flow>>,
    vehicle: FlowByHand,
  ) {
    this.#loadPack = loadPack;
    this.#flows = flows;
    this.vehicle = vehicle;
  }

  /** Goes on in another language. Rejects, and stays with the one before, where it cannot be loaded. */
  async speak(tag: string): Promise<void> {
    const pack = await this.#loadPack(tag);
    const speakers = Object.fromEntries(
      [...Object.values(this.#flows), this.vehicle].map((flow) => [
        flow.id,
        counterSpeaker(pack, flow),
      ]),
    );
    this.#spoken = { pack, speakers };
  }

  /** BCP 47 tag. */
  get tag(): string {
    return this.#now.pack.tag;
  }

  /** The counter's own words. */
  get words(): CounterWords {
    return this.#now.pack.counter;
  }

  /** Names of what a no-start case speaks of. */
  get vehicleNames(): VehicleNames {
    return this.#now.pack.vehicle;
  }

  /** Puts messages about a part into words. */
  speakerFor(part: SoldPart): Speaker {
    return found(this.#now.speakers[flowOf[part]]);
  }

  /** Puts readings of the vehicle into words. */
  get vehicleSpeaker(): Speaker {
    return found(this.#now.speakers[this.vehicle.id]);
  }

  /** The texts of a part's flow. */
  textsFor(part: SoldPart): FlowTexts {
    return found(this.#now.pack.texts[flowOf[part]]);
  }

  get #now(): Spoken {
    return found(this.#spoken);
  }
}

function found<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error('no language has been loaded');
  return value;
}
