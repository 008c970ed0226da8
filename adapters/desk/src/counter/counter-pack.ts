/**
 * What one language brings to the counter.
 */
import type { Flow } from '@keyturn/core';
import { speakerOf, type FlowTexts, type Locale, type Speaker } from '@keyturn/language';
import type { CounterWords } from './words/counter-words.ts';

/** Names of what a no-start case speaks of, by id. */
export interface VehicleNames {
  readonly faults: Readonly<Record<string, string>>;
  readonly complaints: Readonly<Record<string, string>>;
  readonly fuels: Readonly<Record<string, string>>;
}

/** All words of one language. */
export interface CounterPack {
  /** BCP 47 tag. */
  readonly tag: string;
  readonly language: Locale;
  readonly counter: CounterWords;
  /** The texts of each flow of returns, and those of readings of a vehicle, by the id of the flow. */
  readonly texts: Readonly<Record<string, FlowTexts>>;
  readonly vehicle: VehicleNames;
}

/** Loads a language by its tag. Rejects where it cannot be loaded. */
export type LoadCounterPack = (tag: string) => Promise<CounterPack>;

/** The counter's speaker of a language for one flow. */
export function counterSpeaker(
  { tag, language, texts }: CounterPack,
  flow: Pick<Flow, 'id' | 'checks'>,
): Speaker {
  const flowTexts = texts[flow.id];
  if (flowTexts === undefined) throw new RangeError(`${tag} has no texts of ${flow.id}`);
  return speakerOf(language, { locale: tag, flowTexts, checks: flow.checks, role: 'clerk' });
}
