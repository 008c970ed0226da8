/**
 * What a case of a vehicle says of the part, or why it is left out, in words.
 */
import type { VehicleProof } from '@keyturn/core';
import type { LeftPart, Speaker } from '@keyturn/language';
import { fill, listed } from '../../wording.ts';
import type { CounterVoice } from '../counter-voice.ts';
import { nameOf } from '../return/part-name.ts';
import type { CounterWords } from '../words/counter-words.ts';
import type { Misfit } from './fit-of-case.ts';
import type { VehicleReading } from './read-vehicle-case.ts';

/** What a case says of the part that came back. */
export function saysWords(words: CounterWords, speaker: Speaker, proof: VehicleProof): string {
  return proof === 'incomplete'
    ? words.caseTooLittle
    : fill(words.caseSays, { what: speaker.answerLabel('vehicle-proof', proof) });
}

/** Why a case is not this customer's. */
export function misfitWords(
  misfit: Misfit,
  { words, vehicleNames }: Pick<CounterVoice, 'words' | 'vehicleNames'>,
): string {
  const { fuels } = vehicleNames;
  switch (misfit.type) {
    case 'fuel':
      return fill(words.caseOtherFuel, {
        found: fuels[misfit.found] ?? misfit.found,
        sold: fuels[misfit.sold] ?? misfit.sold,
      });
    case 'volts':
      return fill(words.caseOtherVolts, { found: misfit.found, part: misfit.part });
    case 'used':
      return fill(words.caseUsed, { who: nameOf({ words }, misfit.by) });
  }
}

/** Why a text is no case. */
export function faultWords(
  words: CounterWords,
  fault: Extract<VehicleReading, { type: 'fault' }>['fault'],
): string {
  switch (fault) {
    case 'empty':
      return words.caseEmpty;
    case 'foreign':
      return words.caseForeign;
    case 'too-new':
    case 'unknown-finding':
      return words.caseTooNew;
    case 'damaged':
      return words.caseDamaged;
    case 'other-flow':
      return words.caseOtherFlow;
    case 'broken-file':
      return words.caseBrokenFile;
    case 'other-version':
      return words.caseOtherVersion;
  }
}

/** What of a line was not understood. */
export function leftWords(words: CounterWords, left: readonly LeftPart[], locale: string): string {
  const quoted = left.map(({ said }) => fill(words.quoted, { said }));
  return fill(words.stillLeft, { said: listed(quoted, locale) });
}
